import { leftoverMessage } from "../../workbook/change/change";
import { insertPlans, type NewSheet } from "../../workbook/change/insert";
import { undoLastInsert } from "../../workbook/change/undo";
import { updateBlock, type WrittenBlock } from "../../workbook/change/updateBlock";
import { WorkbookFailure } from "../../workbook/failure";
import type { KeptChange } from "../updateWords";
import type { JobUpdatePreview } from "./updateJob";

/**
 * Writes an update, only where the estimates still hold what the preview showed: the sheets that it needs, the version
 * that is looked at, then the others. Where one of them fails, all of it is undone. One step to undo.
 *
 * @throws WorkbookFailure.
 */
export async function writeJobUpdate(
  { sheets, options, ...main }: JobUpdatePreview,
  replaced: readonly KeptChange[],
): Promise<WrittenBlock> {
  const undos: (() => Promise<unknown>)[] = [];
  let count = 0;
  /** From the last one back; where one fails, the next try goes on from there. */
  const undo = async () => {
    for (let last = undos.at(-1); last; last = undos.at(-1)) {
      await last();
      undos.pop();
    }
  };
  try {
    if (sheets.length > 0) undos.push(await insertEstimates(main.title, sheets));
    for (const [version, { title, there, update }] of [main, ...options].entries()) {
      const cells = version === 0 ? replaced.flatMap((one) => one.cells) : [];
      const written = await updateBlock(title, there, update, cells);
      undos.push(written.undo);
      count += written.count;
    }
  } catch (error) {
    const where = [
      ...sheets.map(({ name }) => name),
      main.there.sheetName,
      ...options.map((one) => one.there.sheetName),
    ];
    await undo().catch(() => {
      throw new WorkbookFailure(leftoverMessage(where.join(", ")));
    });
    throw error;
  }
  return { count, undo };
}

const TAKEN = "A sheet was added or renamed at the same time, so nothing was changed. Try again.";

/** @returns what undoes it. */
async function insertEstimates(title: string, sheets: readonly NewSheet[]): Promise<() => Promise<unknown>> {
  const inserted = await insertPlans(title, sheets);
  if (!inserted.done) throw new WorkbookFailure(TAKEN);
  const undo = () => undoLastInsert(inserted.id);
  // The job's formulas are for sheets of just these names.
  if (inserted.sheets.some(({ sheetName }, index) => sheetName !== sheets[index]?.name)) {
    await undo();
    throw new WorkbookFailure(TAKEN);
  }
  return undo;
}
