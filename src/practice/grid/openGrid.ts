import type { IWorkbookData, Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/lib/facade";
import type { GridLibrary, OpenGrid } from "./library";
import { type PracticeOffice, workbookOf } from "./practiceOffice";

let workbooksOpened = 0;

/**
 * Opens an office, or a workbook that was kept, in a grid whose plugins are registered.
 *
 * @param kept The grid's own file, as it was saved or made of another file; the office counts where there is none.
 */
export function openGrid(
  library: GridLibrary,
  univer: Univer,
  api: FUniver,
  office: PracticeOffice,
  kept?: Partial<IWorkbookData>,
): OpenGrid {
  workbooksOpened += 1;
  // The engine remembers formulas by the workbook's id for as long as the page or the process lives.
  const id = `practice-${workbooksOpened}`;
  const workbook = api.createWorkbook(kept ? withId(kept, id) : workbookOf(library, office, id));
  const grid = { library, api, injector: univer.__getInjector(), workbook };
  if (!kept) fitWrappedRows(grid, office);
  return grid;
}

/** A kept workbook under another id. What plugins keep names the workbook once more, a picture for one. */
function withId(kept: Partial<IWorkbookData>, id: string): Partial<IWorkbookData> {
  const before = `"unitId":${JSON.stringify(kept.id)}`;
  const resources = kept.resources?.map((resource) => ({
    ...resource,
    data: resource.data.replaceAll(before, `"unitId":${JSON.stringify(id)}`),
  }));
  return { ...kept, id, ...(resources && { resources }) };
}

/** A file says how high a row is only where someone set it, so rows with text that wraps are measured once. */
function fitWrappedRows({ workbook }: OpenGrid, office: PracticeOffice): void {
  for (const { name, looks = [] } of office.sheets) {
    for (const { range } of looks.filter(({ wrap }) => wrap)) {
      const rows = workbook.getSheetByName(name)?.getRange(range).getRange();
      if (rows) workbook.getSheetByName(name)?.setRowAutoHeight(rows.startRow, rows.endRow - rows.startRow + 1);
    }
  }
}
