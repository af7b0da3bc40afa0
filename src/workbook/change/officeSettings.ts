import { textToKeep } from "../../sheets/kept";
import type { OfficeRecord } from "../../sheets/office/record";
import { WorkbookFailure } from "../failure";
import { keepOfficeRecord, OFFICE, restoreOfficeText } from "../settings/office";
import { type CellWrite, undoChanges, type WrittenChanges, writeChanges } from "./cells";
import { applyChange, leftoverMessage } from "./change";
import { insertPlans, type NewSheet } from "./insert";
import { undoLastInsert } from "./undo";

/** What loading office settings writes into a workbook. */
export interface OfficeWrites {
  readonly record: OfficeRecord;
  /** Whether a note that can't be read is replaced. */
  readonly startOver: boolean;
  /** Cells that are there: rates, the row with the version, and lines below a list of past jobs. */
  readonly cells: readonly CellWrite[];
  /** Sheets that the workbook doesn't have yet. */
  readonly sheets: readonly NewSheet[];
}

/** What was written, with what it takes to undo it. */
export interface WrittenOffice {
  readonly record: { readonly before: string; readonly after: string; readonly kept: OfficeRecord };
  readonly cells: WrittenChanges | undefined;
  /** The id of the insert of the new sheets. */
  readonly insertId: string | undefined;
  readonly sheetNames: readonly string[];
}

const TITLE = "office settings";
const NAMES_TAKEN =
  "Names of rates are already used in this workbook, so nothing was changed. Check its names (Formulas, Name Manager), then load again.";
const LEFTOVER = leftoverMessage("the Rates sheet and the list of past jobs");

/**
 * Writes office settings: the note of which they are, then cells, then new sheets. Each of the three undoes itself where
 * it fails, and those before it are undone then.
 *
 * @throws WorkbookFailure.
 */
export async function writeOffice({ record, startOver, cells, sheets }: OfficeWrites): Promise<WrittenOffice> {
  const after = textToKeep(record, OFFICE);
  let before: string | undefined;
  let written: WrittenChanges | undefined;
  return applyChange<WrittenOffice>({
    apply: async () => {
      before = await keepOfficeRecord(record, startOver);
      if (cells.length > 0) written = await writeChanges(TITLE, cells);
      const inserted = sheets.length > 0 ? await insertPlans(TITLE, sheets) : undefined;
      if (inserted && !inserted.done) throw new WorkbookFailure(NAMES_TAKEN);
      return {
        record: { before, after, kept: record },
        cells: written,
        insertId: inserted?.id,
        sheetNames: inserted?.sheets.map(({ sheetName }) => sheetName) ?? [],
      };
    },
    undo: async () => {
      if (written) await hostErrors(undoChanges(written));
      written = undefined;
      if (before !== undefined) await hostErrors(restoreOfficeText(before, after));
      return undefined;
    },
    leftover: LEFTOVER,
  });
}

/**
 * Undoes the loading of office settings, unless cells have been changed since. Where it fails halfway, the settings stay
 * loaded.
 *
 * @throws WorkbookFailure that names what was changed.
 */
export async function undoOffice({ record, cells, insertId }: WrittenOffice): Promise<void> {
  const { before, after, kept } = record;
  let isRestored = false;
  let undone: WrittenChanges | undefined;
  await applyChange<true>({
    apply: async () => {
      await restoreOfficeText(before, after);
      isRestored = true;
      if (cells) await undoChanges(cells);
      undone = cells;
      // Last, since only this can't be done again.
      if (insertId !== undefined) await undoLastInsert(insertId);
      return true;
    },
    undo: async () => {
      if (undone) await hostErrors(writeChanges(TITLE, undone.cells));
      undone = undefined;
      if (isRestored) await hostErrors(keepOfficeRecord(kept, true));
      return undefined;
    },
    leftover: LEFTOVER,
  });
}

/** Has the host's own error thrown, by which it's known whether a retry may get past it. */
async function hostErrors<T>(action: Promise<T>): Promise<T> {
  try {
    return await action;
  } catch (error) {
    throw error instanceof WorkbookFailure && error.cause !== undefined ? error.cause : error;
  }
}
