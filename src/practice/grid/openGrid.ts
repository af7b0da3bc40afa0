import type { Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/lib/facade";
import type { GridLibrary, OpenGrid } from "./library";
import { type PracticeOffice, workbookOf } from "./practiceOffice";

let workbooksOpened = 0;

/**
 * Opens an office, or a workbook that was kept, in a grid whose plugins are registered.
 *
 * @param kept The grid's own file, as it was saved; the office counts where there is none.
 */
export function openGrid(
  library: GridLibrary,
  univer: Univer,
  api: FUniver,
  office: PracticeOffice,
  kept?: ReturnType<OpenGrid["workbook"]["save"]>,
): OpenGrid {
  workbooksOpened += 1;
  // The engine remembers formulas by the workbook's id for as long as the page or the process lives.
  const id = `practice-${workbooksOpened}`;
  const workbook = api.createWorkbook(kept ? { ...kept, id } : workbookOf(library, office, id));
  return { library, api, injector: univer.__getInjector(), workbook };
}
