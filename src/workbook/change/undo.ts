import type { Kept } from "../../sheets/kept";
import { someOf } from "../../sheets/someOf";
import { type Anchor, cellAddress } from "../../spreadsheet/areas";
import { queueRemoveRecords } from "../drawing/drawing";
import { type KnownDrawings, queueReadDrawings } from "../drawing/records";
import { codeOf, inWorkbook, WorkbookFailure, whatHappened } from "../failure";
import { anchorOf } from "../read/areas";
import { withRetry } from "./change";
import { queueReadReceipt, queueReceiptText, type Receipt } from "./receipt";
import { type InsertedPart, queueInsertedPart } from "./remove";

/** What was undone, and where it was. */
interface UndoneInsert {
  readonly title: string;
  readonly where: string;
  /** Whether its cells held nothing any more: emptied by hand, or moved. */
  readonly wasEmpty?: boolean;
}

/** A try that may have changed something. */
interface PartialUndo {
  readonly what: UndoneInsert;
  /** Looks again whether all of it is as it was before the try; one request. */
  readonly isAsItWas: () => Promise<boolean>;
}

/**
 * Undoes the last insert, with all that came with it, unless someone has typed into it since. Where the host fails
 * halfway, a retry finishes it.
 *
 * @param id of the insert that is meant; the last one of all where left out.
 * @throws WorkbookFailure where there is nothing to undo, something else was inserted since, or cells have changed; it
 *   names them.
 */
export async function undoLastInsert(id?: string): Promise<UndoneInsert> {
  return inWorkbook(async (context) => {
    let partial: PartialUndo | undefined;
    const begin = (undo: PartialUndo) => {
      partial ??= undo;
    };
    try {
      return await withRetry(() => tryUndo(context, id, partial, begin));
    } catch (error) {
      if (error instanceof WorkbookFailure || !partial) throw error;
      if (await partial.isAsItWas().catch(() => false)) throw error;
      const first = codeOf(error) === "AccessDenied" ? "Unprotect it, then undo" : "Undo";
      throw new WorkbookFailure(`${whatHappened(error)} It may be undone only in part. ${first} again to finish.`);
    }
  });
}

/**
 * Looks twice, clears the cells, then removes the rest: four requests.
 *
 * @param partial set where it was tried before, and may have been done in part or as a whole.
 */
async function tryUndo(
  context: Excel.RequestContext,
  id: string | undefined,
  partial: PartialUndo | undefined,
  begin: (undo: PartialUndo) => void,
): Promise<UndoneInsert> {
  const { worksheets, protection } = context.workbook;
  const read = queueReadReceipt(context);
  const known = queueReadDrawings(context);
  protection.load("protected");
  worksheets.load("items/id,items/name,items/visibility");
  await context.sync();
  const kept = read.kept();
  // The record goes last, so all the rest is done.
  if (partial && kept.state === "none") return partial.what;
  const receipt = receiptOf(kept);
  const { title } = receipt;
  if (id !== undefined && receipt.id !== id) {
    throw new WorkbookFailure(
      `Something else was inserted since: the ${title}. Only the last insert can be undone, so nothing was changed. Delete the earlier one by hand.`,
    );
  }
  const records = known.records();
  const queueParts = () => receipt.parts.map((part) => queueInsertedPart(context, part, records));
  const parts = queueParts();
  const canBeRead = receipt.parts.some(({ newSheet, names }) => newSheet || names.length > 0);
  const readersOf = queueReaders(canBeRead ? worksheets.items : []);
  await context.sync();

  const there = parts.filter((part) => part.isThere());
  if (there.length === 0 && !partial) {
    throw new WorkbookFailure("Its sheet is gone, so there's nothing to undo.");
  }
  const going = sheetsToDelete(there, worksheets.items);
  const withSheet = receipt.parts.length > 1;
  refuseProtected(there, protection.protected && going.length > 0);
  refuseChanged(
    title,
    there.flatMap((part) => part.changed(withSheet)),
  );
  refuseRead(title, readersOf(pendingRemoval(there, going)));
  const where = there.map((part) => part.where()).join(", ");
  const wasEmpty = there.every((part) => part.isBlank());
  const what = partial?.what ?? { title, where, ...(wasEmpty && { wasEmpty }) };
  const seen = seenOf(parts, known);
  // Of cells that held nothing no one can see whether their looks are gone.
  const canBeSeen = there.every((part) => going.includes(part) || !part.isBlank());
  const isAsItWas = async () => {
    if (!canBeSeen) return false;
    const now = queueReadDrawings(context);
    const again = queueParts();
    await context.sync();
    return seenOf(again, now) === seen;
  };
  begin({ what, isAsItWas });

  const cleared = there.filter((part) => !going.includes(part)).map((part) => part.queueClear());
  const goingAgain = going.map(({ part }) => queueInsertedPart(context, part, records));
  const drawings = queueReadDrawings(context);
  await context.sync();
  const goingNow = goingAgain.filter((part) => part.isThere());
  const changed = [...cleared, ...goingNow].flatMap((one) => one.changed(withSheet));
  const filled = goingNow.find((part) => !part.isWholeSheet());
  const isMoved = cleared.some((part) => part.isMoved());
  if (changed.length > 0 || filled || isMoved) {
    for (const one of cleared) one.queueBack();
    const receiptNow = queueReadReceipt(context);
    await context.sync();
    // Another pane was quicker with the same.
    if (isMoved && receiptNow.kept().state === "none") return what;
    refuseChanged(title, changed);
    throw overtakenMessage(title, filled?.worksheet.name);
  }

  const removeLateDrawings = queueRemoveRecords(context, drawings, parts);
  const missed = cleared.map((part) => part.queueMissed());
  for (const part of parts) part.remove(going.includes(part));
  const receiptThere = queueReadReceipt(context);
  queueReceiptText(context, "");
  await context.sync();
  await removeLateDrawings();
  // Where there is no record any more, another pane has finished the same.
  if (receiptThere.kept().state !== "none" && missed.some((isMissed) => isMissed()))
    throw missedMessage(title, what.where);
  return what;
}

/** The parts that go with their sheets. A workbook needs a visible sheet: the last one is only emptied. */
function sheetsToDelete(there: readonly InsertedPart[], worksheets: readonly Excel.Worksheet[]): InsertedPart[] {
  const whole = there.filter((part) => part.isWholeSheet());
  const visible = worksheets.filter(({ visibility }) => visibility === "Visible").map(({ id }) => id);
  const isGoing = (id: string) => whole.some(({ part }) => part.sheetId === id);
  return visible.every(isGoing) ? whole.filter(({ part }) => part.sheetId !== visible[0]) : whole;
}

function pendingRemoval(there: readonly InsertedPart[], going: readonly InsertedPart[]): PendingRemoval {
  return {
    names: there.flatMap((part) => part.ownNames()),
    sheets: going.map(({ worksheet }) => worksheet.name),
    goes: (sheetId, cell) =>
      there.some((part) => part.part.sheetId === sheetId && (going.includes(part) || part.holds(cell))),
  };
}

/** All by which it is known whether a try has changed anything, to be compared. */
function seenOf(parts: readonly InsertedPart[], drawings: KnownDrawings): string {
  return JSON.stringify([drawings.text(), parts.map((part) => part.seen())]);
}

const MOST_NAMED = 3;

/** @throws WorkbookFailure where the host would refuse, halfway it may be. */
function refuseProtected(parts: readonly InsertedPart[], wouldDeleteSheets: boolean): void {
  const locked = parts.find((part) => part.isProtected());
  if (locked) {
    throw new WorkbookFailure(
      `The sheet “${locked.worksheet.name}” is protected, so nothing was undone. Unprotect it, then undo again.`,
    );
  }
  if (wouldDeleteSheets) {
    throw new WorkbookFailure(
      "This workbook's structure is protected, so its sheets stay and nothing was undone. Unprotect the workbook, then undo again.",
    );
  }
}

/** @throws WorkbookFailure where someone has typed into it since. */
export function refuseChanged(title: string, changed: readonly string[]): void {
  if (changed.length === 0) return;
  throw new WorkbookFailure(
    `Cells of the ${title} were changed or moved since (${someOf(changed, MOST_NAMED)}), so nothing was undone. Delete them by hand.`,
  );
}

/** @throws WorkbookFailure where formulas elsewhere would turn into errors. */
export function refuseRead(title: string, readers: readonly string[]): void {
  if (readers.length === 0) return;
  throw new WorkbookFailure(
    `Formulas elsewhere read cells of the ${title} (${someOf(readers, MOST_NAMED)}) and would show errors without them, so nothing was undone. Change or delete those formulas first, then undo again.`,
  );
}

/** @throws WorkbookFailure where there is no record, or none that can be trusted. */
export function receiptOf(kept: Kept<Receipt>): Receipt {
  if (kept.state === "kept") return kept.value;
  if (kept.state === "none") throw new WorkbookFailure("There's nothing to undo.");
  throw new WorkbookFailure(
    kept.state === "later"
      ? "The last insert was made by a newer version of this add-in. Use that version to undo it, or delete it by hand."
      : "This workbook's record of the last insert is damaged, so nothing was undone. Delete the insert by hand.",
  );
}

/** What is said where someone was quicker. @param filled the sheet that something was put onto; undefined where cells were emptied. */
function overtakenMessage(title: string, filled: string | undefined): WorkbookFailure {
  return new WorkbookFailure(
    filled === undefined
      ? `The cells of the ${title} were cleared or moved at the same time, so nothing was undone. Find them, then undo again.`
      : `Someone else just added something to the sheet “${filled}”, so it stays. Check it, then undo the ${title} again.`,
  );
}

/** What is said where rows came in between, and the looks were removed from another place. */
function missedMessage(title: string, where: string): WorkbookFailure {
  return new WorkbookFailure(
    `The ${title} was undone only in part: someone added rows or columns at the same time, or changed colors there. Its cells are blank; check around ${where} for colors, lines, and drawings left behind or missing from other cells, and fix them by hand.`,
  );
}

/** What formulas elsewhere can read of something that is about to be removed. */
interface PendingRemoval {
  /** Names of the workbook. */
  readonly names: readonly string[];
  /** Names of the sheets that are deleted. */
  readonly sheets: readonly string[];
  /** Whether a cell is removed, too. */
  readonly goes: (sheetId: string, cell: Anchor) => boolean;
}

/**
 * Asks for all formulas of a workbook.
 *
 * @returns gives, after the request, the cells whose formulas would show errors without what is removed.
 */
function queueReaders(worksheets: readonly Excel.Worksheet[]) {
  const sheets = worksheets.map((worksheet) => {
    const used = worksheet.getUsedRangeOrNullObject(true);
    used.load("rowIndex,columnIndex,formulas");
    return { id: worksheet.id, name: worksheet.name, used };
  });
  return ({ names, sheets: goingSheets, goes }: PendingRemoval): string[] =>
    sheets.flatMap(({ id, name, used }) => {
      if (used.isNullObject) return [];
      const { row, column } = anchorOf(used);
      return used.formulas.flatMap((cells, down) =>
        cells.flatMap((formula: unknown, right) => {
          const cell = { row: row + down, column: column + right };
          return reads(formula, names, goingSheets) && !goes(id, cell) ? [`${name}!${cellAddress(cell)}`] : [];
        }),
      );
    });
}

const TEXTS = /"(?:[^"]|"")*"/g;
/** A sheet before its "!", in quotes where it has more than letters and figures. */
const SHEETS = /(?:'((?:[^']|'')*)'|([^\s!'"(),;+\-*/^&=<>{}]+))!/g;
const NAMES = /[\p{L}_\\][\p{L}\d_.\\]*/gu;

/**
 * Whether a formula reads one of some names or sheets.
 *
 * @example reads("=Rate_waste*2", ["Rate_waste"], []) // true
 */
export function reads(formula: unknown, names: readonly string[], sheets: readonly string[]): boolean {
  if (typeof formula !== "string" || !formula.startsWith("=")) return false;
  const bare = formula.replace(TEXTS, '""');
  const isOneOf = (wanted: readonly string[], name: string) =>
    wanted.some((one) => one.toLowerCase() === name.toLowerCase());
  const read = [...bare.matchAll(SHEETS)].flatMap(([, quoted, plain = ""]) =>
    // A formula may read from one sheet to another: First:Last!B2.
    (quoted?.replaceAll("''", "'") ?? plain).split(":"),
  );
  if (read.some((name) => isOneOf(sheets, name))) return true;
  return [...bare.replace(SHEETS, " ").matchAll(NAMES)].some(([name]) => isOneOf(names, name));
}
