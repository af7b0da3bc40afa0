import type { Kept } from "../../sheets/kept";
import { someOf } from "../../sheets/someOf";
import { queueDrawingsOff } from "../drawing/drawing";
import { type KnownDrawings, queueReadDrawings } from "../drawing/records";
import { codeOf, inWorkbook, WorkbookFailure, whatHappened } from "../failure";
import { withRetry } from "./change";
import { queueReadReceipt, queueReceiptText, type Receipt } from "./receipt";
import { type PendingRemoval, queueReaders } from "./references";
import { type InsertedPart, queueInsertedPart } from "./remove";

/** What was taken back, and from where. */
interface UndoneInsert {
  readonly title: string;
  readonly where: string;
  /** Whether its cells held nothing any more: emptied by hand, or moved. */
  readonly wasEmpty?: boolean;
}

/** A try that may have changed something. */
interface PartialUndo {
  readonly what: UndoneInsert;
  /** Looks once more whether all of it is as it was when it was begun; one sync. */
  readonly isAsItWas: () => Promise<boolean>;
}

/**
 * Takes the last insert back, with all that came with it, unless somebody has typed into it since. Where the host fails
 * half-way it is finished by trying again.
 *
 * @param id of the insert that is meant; the last one of all where left out.
 * @returns what was taken back and from where.
 * @throws WorkbookFailure where there is nothing to take back, something else was inserted since, or cells have changed;
 *   it names them.
 */
export async function undoLastInsert(id?: string): Promise<UndoneInsert> {
  return inWorkbook(async (context) => {
    let begun: PartialUndo | undefined;
    const begin = (now: PartialUndo) => {
      begun ??= now;
    };
    try {
      return await withRetry(() => takeBack(context, id, begun, begin));
    } catch (error) {
      if (error instanceof WorkbookFailure || !begun) throw error;
      if (await begun.isAsItWas().catch(() => false)) throw error;
      const first = codeOf(error) === "AccessDenied" ? "Lift the protection, then take" : "Take";
      throw new WorkbookFailure(
        `${whatHappened(error)} It may be taken back only in part. ${first} it back once more to finish.`,
      );
    }
  });
}

/**
 * Tries it once: looks twice, empties the cells, then takes off all the rest.
 *
 * @param begun set where it was tried before, and may have been done in part or as a whole.
 */
async function takeBack(
  context: Excel.RequestContext,
  id: string | undefined,
  begun: PartialUndo | undefined,
  begin: (now: PartialUndo) => void,
): Promise<UndoneInsert> {
  const { worksheets, protection } = context.workbook;
  const read = queueReadReceipt(context);
  const known = queueReadDrawings(context);
  protection.load("protected");
  worksheets.load("items/id,items/name,items/visibility");
  await context.sync();
  const kept = read.kept();
  // The note goes last, so all the rest is done.
  if (begun && kept.state === "none") return begun.what;
  const receipt = receiptOf(kept);
  const { title } = receipt;
  if (id !== undefined && receipt.id !== id) {
    throw new WorkbookFailure(
      `Something else was inserted since: the ${title}. Only the last insert can be taken back, so nothing was changed. Delete the one before it by hand.`,
    );
  }
  const records = known.records();
  const parts = receipt.parts.map((part) => queueInsertedPart(context, part, records));
  const canBeRead = receipt.parts.some(({ newSheet, names }) => newSheet || names.length > 0);
  const readers = queueReaders(canBeRead ? worksheets.items : []);
  await context.sync();

  const there = parts.filter((part) => part.isThere());
  if (there.length === 0 && !begun) {
    throw new WorkbookFailure("The sheet on which it stood is gone, so there is nothing to take back.");
  }
  const going = goingSheets(there, worksheets.items);
  const withSheet = receipt.parts.length > 1;
  refuseProtected(there, protection.protected && going.length > 0);
  refuseChanged(
    title,
    there.flatMap((part) => part.changed(withSheet)),
  );
  refuseRead(title, readers.cells(whatGoes(there, going)));
  const where = there.map((part) => part.where()).join(", ");
  const wasEmpty = there.every((part) => part.isBlank());
  const what = begun?.what ?? { title, where, ...(wasEmpty && { wasEmpty }) };
  const seen = seenOf(parts, known);
  // Of cells that held nothing it can not be seen whether their looks are gone.
  const canBeSeen = there.every((part) => going.includes(part) || !part.isBlank());
  const isAsItWas = async () => {
    if (!canBeSeen) return false;
    const now = queueReadDrawings(context);
    const again = receipt.parts.map((part) => queueInsertedPart(context, part, records));
    await context.sync();
    return seenOf(again, now) === seen;
  };
  begin({ what, isAsItWas });

  const emptied = there.filter((part) => !going.includes(part)).map((part) => part.queueEmptied());
  const seenAgain = going.map(({ part }) => queueInsertedPart(context, part, records));
  const drawings = queueReadDrawings(context);
  await context.sync();
  const overtaken = [...emptied, ...seenAgain.filter((part) => part.isThere())].flatMap((one) =>
    one.changed(withSheet),
  );
  const filled = seenAgain.find((part) => part.isThere() && !part.isWholeSheet());
  const isMoved = emptied.some((part) => part.isMoved());
  if (overtaken.length > 0 || filled || isMoved) {
    for (const one of emptied) one.queueBack();
    const noteNow = queueReadReceipt(context);
    await context.sync();
    // Another pane was quicker with the same.
    if (isMoved && noteNow.kept().state === "none") return what;
    refuseChanged(title, overtaken);
    throw overtakenWords(title, filled?.worksheet.name);
  }

  const late = queueDrawingsOff(context, drawings, parts);
  const missed = emptied.map((part) => part.queueMissed());
  for (const part of parts) part.takeOff(going.includes(part));
  const noteThere = queueReadReceipt(context);
  queueReceiptText(context, "");
  await context.sync();
  await late.takeOff();
  // Where there is no note any more, another pane has finished the same.
  if (noteThere.kept().state !== "none" && missed.some((isMissed) => isMissed())) throw missedWords(title, what.where);
  return what;
}

/** The parts that go with their sheets. A workbook has a sheet to be seen: the last one is only emptied. */
function goingSheets(there: readonly InsertedPart[], worksheets: readonly Excel.Worksheet[]): InsertedPart[] {
  const whole = there.filter((part) => part.isWholeSheet());
  const visible = worksheets.filter(({ visibility }) => visibility === "Visible").map(({ id }) => id);
  const isGoing = (id: string) => whole.some(({ part }) => part.sheetId === id);
  return visible.every(isGoing) ? whole.filter(({ part }) => part.sheetId !== visible[0]) : whole;
}

function whatGoes(there: readonly InsertedPart[], going: readonly InsertedPart[]): PendingRemoval {
  return {
    names: there.flatMap((part) => part.ownNames()),
    sheets: going.map(({ worksheet }) => worksheet.name),
    goes: (sheetId, cell) =>
      there.some((part) => part.part.sheetId === sheetId && (going.includes(part) || part.holds(cell))),
  };
}

/** What tells whether taking back has changed anything where cells are emptied first, to be compared. */
function seenOf(parts: readonly InsertedPart[], drawings: KnownDrawings): string {
  return JSON.stringify([drawings.text(), parts.map((part) => part.seen())]);
}

const MOST_NAMED = 3;

/** @throws WorkbookFailure where the host would refuse, half-way it may be. */
export function refuseProtected(parts: readonly InsertedPart[], wouldTakeSheets: boolean): void {
  const locked = parts.find((part) => part.isProtected());
  if (locked) {
    throw new WorkbookFailure(
      `The sheet “${locked.worksheet.name}” is protected, so nothing was taken back. Lift the protection, then take it back.`,
    );
  }
  if (wouldTakeSheets) {
    throw new WorkbookFailure(
      "The structure of this workbook is protected, so its sheets stay, and nothing was taken back. Lift the protection of the workbook, then take it back.",
    );
  }
}

/** @throws WorkbookFailure where somebody has typed into it since. */
export function refuseChanged(title: string, changed: readonly string[]): void {
  if (changed.length === 0) return;
  throw new WorkbookFailure(
    `Cells of the ${title} were changed or moved since the insert (${someOf(changed, MOST_NAMED)}), so nothing was taken back. Delete them by hand.`,
  );
}

/** @throws WorkbookFailure where formulas elsewhere would turn into errors. */
export function refuseRead(title: string, readers: readonly string[]): void {
  if (readers.length === 0) return;
  throw new WorkbookFailure(
    `Formulas elsewhere read cells of the ${title} (${someOf(readers, MOST_NAMED)}) and would show errors without them, so nothing was taken back. Put those formulas back first, or delete them, then take it back.`,
  );
}

/** @throws WorkbookFailure where there is none, or none that can be believed. */
export function receiptOf(kept: Kept<Receipt>): Receipt {
  if (kept.state === "kept") return kept.value;
  if (kept.state === "none") throw new WorkbookFailure("There is nothing to take back.");
  throw new WorkbookFailure(
    kept.state === "later"
      ? "What was inserted last was inserted by a later version of this add-in. Use that version to take it back, or delete it by hand."
      : "What this workbook keeps of the last insert is damaged and cannot be read, so nothing was taken back. Delete it by hand.",
  );
}

/** What is said where somebody was quicker. @param filled the sheet onto which something was put; undefined where cells were emptied. */
export function overtakenWords(title: string, filled: string | undefined): WorkbookFailure {
  return new WorkbookFailure(
    filled === undefined
      ? `The cells of the ${title} were emptied or moved at the same moment, so nothing was taken back. Look where they are, then take back what is left.`
      : `Somebody else has just put something onto the sheet “${filled}”, so it stays. Look at it, then take the ${title} back again.`,
  );
}

/** What is said where rows came in between, and the looks were taken off another place. */
export function missedWords(title: string, where: string): WorkbookFailure {
  return new WorkbookFailure(
    `The ${title} could be taken back only in part: somebody put rows or columns in at the same moment, or gave its place other colors. Its cells are empty; look around ${where} for colors, lines and drawings that are left, or that are missing from other cells, and put them right by hand.`,
  );
}
