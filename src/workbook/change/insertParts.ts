import { tooLong } from "../../sheets/tooLong";
import { areaAddress } from "../../spreadsheet/areas";
import { codeOf, WorkbookFailure } from "../failure";
import { applyChange, leftoverMessage, suspendCalculation } from "./change";
import { type OverwrittenContent, queueTypedSince } from "./overwritten";
import { headingMoved } from "./place";
import { queueReadReceipt, queueReceipt, queueReceiptText } from "./receipt";
import { type Ownership, queueRemoval } from "./remove";
import { type Part, type QueuedPart, queuePart } from "./writePlan";

/** What the name of a new sheet begins with until all of the insert is in place. */
const TEMP_NAME = "Bedrow";

/** How far an insert got, for undoing it. */
interface Progress {
  /** Once the cells are written: the record of the insert before. */
  receiptBefore?: string;
  /** Once the cells are written, of each part: what it overwrote, and where it is. */
  cells?: readonly {
    readonly sheetId: string;
    readonly overwritten: OverwrittenContent | undefined;
    readonly shapesBefore: readonly string[];
    readonly formulas: readonly (readonly unknown[])[];
  }[];
  /** Whether tables and pictures can have been written, too: before that, those in its place are someone else's. */
  isFinishing?: boolean;
}

/**
 * Writes plans to their places, which were free when they were looked at: two requests. The first of them is brought to
 * the front. If either request fails, or someone else was quicker, all of it is undone.
 *
 * @param title what is written, for the person.
 * @returns the id under which it can be undone.
 * @throws WorkbookFailure also for what no cell would hold.
 */
export async function insertParts(
  context: Excel.RequestContext,
  title: string,
  wanted: readonly Omit<Part, "tempName">[],
): Promise<string> {
  const tooMuch = wanted.map(({ plan }) => tooLong(plan)).find((message) => message !== undefined);
  if (tooMuch) throw new WorkbookFailure(`Nothing was written. ${tooMuch}`);
  const id = crypto.randomUUID();
  const parts = wanted.map(
    (part, index): Part => ({ ...part, tempName: `${TEMP_NAME} ${index + 1} ${id.slice(0, 8)}` }),
  );
  const progress: Progress = {};
  let missed: readonly Part[] = [];
  const inserted = await applyChange({
    apply: async () => {
      suspendCalculation(context);
      const queued = parts.map((part) => queuePart(context, part));
      const receiptBefore = queueReadReceipt(context);
      await context.sync();
      progress.receiptBefore = receiptBefore.text();
      progress.cells = queued.map((part) => ({
        sheetId: part.worksheet.id,
        overwritten: part.overwritten(),
        shapesBefore: part.shapesBefore(),
        formulas: part.target.formulas,
      }));
      refuseOverwritten(queued);
      const moved = queued.find((part) => !part.isUnder());
      if (moved) throw headingMoved(moved.part.sheetName);
      progress.isFinishing = true;
      suspendCalculation(context);
      queueReceipt(context, { id, title, parts: queued.map((part) => part.finish()) });
      // Last of all, so that the selection stays where it is for as long as something can fail.
      bringToFront(queued[0]);
      await context.sync();
      missed = queued.filter((part) => part.isMissed()).map(({ part }) => part);
      return id;
    },
    undo: (cause) => undoInsert(context, id, parts, progress, cause),
    leftover: leftoverMessage(parts.map(whereIs).join(" and "), "delete what's left there"),
  });
  if (missed.length > 0) throw missedMessage(title, missed);
  return inserted;
}

/**
 * Removes whatever a failed insert has left, unless all of it is in place, and only the answer was lost.
 *
 * @returns the id, where it is in place.
 */
async function undoInsert(
  context: Excel.RequestContext,
  id: string,
  parts: readonly Part[],
  { cells, receiptBefore, isFinishing = false }: Progress,
  cause: unknown,
): Promise<string | undefined> {
  const found = parts.map(({ plan, area, before, sheetId, tempName = "" }, index) => {
    const written = cells?.[index];
    const overwritten = written?.overwritten;
    const isPicture: Ownership["isPicture"] = (shape) =>
      isFinishing && plan.pictures !== undefined && written?.shapesBefore.includes(shape.id) === false;
    const part = queueRemoval(
      context,
      context.workbook.worksheets.getItemOrNullObject(written?.sheetId ?? sheetId ?? tempName),
      { area, before, names: (plan.names ?? []).map(({ name }) => name), overwritten },
      { isPicture, hasTables: isFinishing },
    );
    return { ...part, before, overwritten, typed: queueTypedSince(part.target, plan, written?.formulas) };
  });
  const receipt = queueReadReceipt(context);
  await context.sync();
  const last = receipt.kept();
  const isRecorded = last.state === "kept" && last.value.id === id;
  // The record is written last; someone can still have deleted the sheet right before it.
  if (isRecorded && found.every((part) => part.isThere())) return id;
  if (isRecorded) queueReceiptText(context, receiptBefore ?? "");
  for (const { before, overwritten, typed, ...part } of found) {
    if (!before || !part.isThere()) part.remove(before === undefined);
    else if (!cells && part.isProtected()) part.removeNames();
    else if (cells || (typed.isBegun() && !isAboutName(cause))) {
      part.remove(false);
      if (!overwritten) typed.queueTheirs(part.target);
    } else if (typed.isBlank() || !isAboutName(cause)) {
      typed.queueFormatsBack(part.target, before);
      part.removeNames();
    }
  }
  await context.sync();
  return undefined;
}

/** Names come first: where one was taken, what is in the cells, and the names there, are someone else's. */
function isAboutName(cause: unknown): boolean {
  const { debugInfo } = cause as { readonly debugInfo?: { readonly errorLocation?: string } };
  return codeOf(cause) === "ItemAlreadyExists" || /^NamedItem/.test(debugInfo?.errorLocation ?? "");
}

function bringToFront(first: QueuedPart | undefined): void {
  first?.worksheet.activate();
  first?.target.getCell(0, 0).select();
}

/** @throws WorkbookFailure where someone else has written to the place of a part since it was looked at. */
function refuseOverwritten(queued: readonly QueuedPart[]): void {
  const { part } = queued.find((one) => one.overwritten()) ?? {};
  if (!part) return;
  throw new WorkbookFailure(
    `Someone else, or another window, wrote to ${areaAddress(part.area)} on ${part.sheetName} at the same time. What they wrote stays, and nothing was added. Check it, then try again or choose another place.`,
  );
}

function missedMessage(title: string, missed: readonly Part[]): WorkbookFailure {
  const places = missed.map(({ sheetName, area }) => `${sheetName}!${areaAddress(area)}`).join(" and ");
  return new WorkbookFailure(
    `The ${title} was inserted only in part: someone added rows or columns at the same time, so a table or pictures are left at ${places}, where the cells were. Delete those and the cells that moved, then insert it again.`,
  );
}

/** Where something of a part may be left, for the person; a new sheet gets its own name last. */
function whereIs({ sheetId, sheetName, area }: Part, index: number): string {
  if (sheetId !== undefined) return `${sheetName}!${areaAddress(area)}`;
  return `the sheet “${sheetName}” or one whose name begins with “${TEMP_NAME} ${index + 1}”`;
}
