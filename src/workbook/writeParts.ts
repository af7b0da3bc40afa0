import { type Part, type QueuedPart, queuePart } from "./part";
import { queueReceipt, queueReceiptText } from "./receipt";
import { queueTakeOff } from "./takeOff";
import { inWords, WorkbookTrouble } from "./trouble";

/**
 * Writes plans to their places, which are known to be free: two syncs, and the first of them is brought to the front.
 * If either fails, all of it is taken off again.
 *
 * @param title what is written, for the person.
 * @param earlier the receipt of the insert before, which comes back where this one fails.
 */
export async function writeParts(
  context: Excel.RequestContext,
  title: string,
  parts: readonly Part[],
  earlier: string,
): Promise<void> {
  let shapesBefore: readonly (readonly string[])[] | undefined;
  try {
    context.application.suspendApiCalculationUntilNextSync();
    context.application.suspendScreenUpdatingUntilNextSync();
    const queued = parts.map((part) => queuePart(context, part));
    bringToFront(queued[0]);
    await context.sync();
    shapesBefore = queued.map((part) => part.shapesBefore());
    queueReceipt(context, { title, parts: queued.map((part) => part.finish()) });
    await context.sync();
  } catch (error) {
    await takingBack(error, () => takeOff(context, parts, shapesBefore, earlier));
    throw error;
  }
}

function bringToFront(first: QueuedPart | undefined): void {
  first?.worksheet.activate();
  first?.target.getCell(0, 0).select();
}

/** Takes off whatever a failed write has left. */
async function takeOff(
  context: Excel.RequestContext,
  parts: readonly Part[],
  shapesBefore: readonly (readonly string[])[] | undefined,
  earlier: string,
): Promise<void> {
  const { worksheets } = context.workbook;
  const found = parts.map(({ plan, area, before, sheetId, sheetName }, index) => {
    const names = (plan.names ?? []).map(({ name }) => name);
    const hasPictures = plan.pictures !== undefined && shapesBefore !== undefined;
    return queueTakeOff(
      context,
      worksheets.getItemOrNullObject(sheetId ?? sheetName),
      { area, before, names },
      ({ id }) => hasPictures && !shapesBefore[index]!.includes(id),
    );
  });
  await context.sync();
  found.forEach((part, index) => {
    part.takeOff(parts[index]!.sheetId === undefined);
  });
  queueReceiptText(context, earlier);
  await context.sync();
}

/** Runs what takes a failed write back; if that fails, too, the person has to know. */
async function takingBack(cause: unknown, deed: () => Promise<void>): Promise<void> {
  try {
    await deed();
  } catch {
    throw new WorkbookTrouble(
      `${inWords(cause).message} What was already written could not be taken back. Undo it in the sheet (Ctrl+Z).`,
    );
  }
}
