import { areaAddress, cellAddress } from "../sheets/address";
import type { Kept } from "../sheets/kept";
import { type DrawingRecord, drawingAt, queueReadDrawings } from "./drawingRecords";
import { areaOf } from "./place";
import { queueReadReceipt, queueReceiptText, type Receipt, type ReceiptPart } from "./receipt";
import { queueTakeOff } from "./takeOff";
import { codeOf, inWorkbook, WorkbookTrouble, whatHappened } from "./trouble";
import { withPatience } from "./writing";

/** What was taken back, and from where. */
interface TakenBack {
  readonly title: string;
  readonly where: string;
}

/**
 * Takes the last insert back, with all that came with it, unless somebody has typed into it since. Where the host fails
 * half-way it is finished by trying again.
 *
 * @param id of the insert that is meant; the last one of all where left out.
 * @returns what was taken back and from where.
 * @throws WorkbookTrouble where there is nothing to take back, something else was inserted since, or cells have changed;
 *   it names them.
 */
export async function takeBackLastInsert(id?: string): Promise<TakenBack> {
  return inWorkbook(async (context) => {
    let begun: TakenBack | undefined;
    const begin = (what: TakenBack) => {
      begun = what;
    };
    try {
      return await withPatience(() => takeBack(context, id, begun, begin));
    } catch (error) {
      if (error instanceof WorkbookTrouble || !begun) throw error;
      const first = codeOf(error) === "AccessDenied" ? "Lift the protection, then take" : "Take";
      throw new WorkbookTrouble(
        `${whatHappened(error)} It may be taken back only in part. ${first} it back once more to finish.`,
      );
    }
  });
}

/** Tries it once. @param begun set where it was tried before, and may have been done in part or as a whole. */
async function takeBack(
  context: Excel.RequestContext,
  id: string | undefined,
  begun: TakenBack | undefined,
  begin: (what: TakenBack) => void,
): Promise<TakenBack> {
  const read = queueReadReceipt(context);
  const known = queueReadDrawings(context);
  context.workbook.protection.load("protected");
  await context.sync();
  const kept = read.kept();
  // The note goes last, so all the rest is done.
  if (begun && kept.state === "none") return begun;
  const receipt = receiptOf(kept);
  const { title } = receipt;
  if (id !== undefined && receipt.id !== id) {
    throw new WorkbookTrouble(
      `Something else was inserted since: the ${title}. Only the last insert can be taken back, so nothing was changed. Delete the one before it by hand.`,
    );
  }
  const records = known.records();
  const parts = receipt.parts.map((part) => queueInserted(context, part, records));
  await context.sync();

  const there = parts.filter(({ worksheet }) => !worksheet.isNullObject);
  if (there.length === 0 && !begun) {
    throw new WorkbookTrouble("The sheet on which it stood is gone, so there is nothing to take back.");
  }
  refuseProtected(there, context.workbook.protection.protected);
  refuseChanged(title, there, receipt.parts.length > 1);
  const what = begun ?? { title, where: there.map(({ where }) => where()).join(", ") };
  begin(what);
  for (const part of parts) part.takeOff();
  const drawings = parts.map(({ drawing }) => drawing);
  if (drawings.some((drawing) => drawing)) {
    known.queueChange(records.filter((record) => !drawings.includes(record)));
  }
  queueReceiptText(context, "");
  await context.sync();
  return what;
}

type Inserted = ReturnType<typeof queueInserted>;

/** @throws WorkbookTrouble where the host would refuse, half-way it may be. */
function refuseProtected(parts: readonly Inserted[], isStructureProtected: boolean): void {
  const locked = parts.find((part) => part.isProtected());
  if (locked) {
    throw new WorkbookTrouble(
      `The sheet “${locked.worksheet.name}” is protected, so nothing was taken back. Lift the protection, then take it back.`,
    );
  }
  if (isStructureProtected && parts.some((part) => part.goesWithSheet())) {
    throw new WorkbookTrouble(
      "The structure of this workbook is protected, so its sheets stay, and nothing was taken back. Lift the protection of the workbook, then take it back.",
    );
  }
}

/** @throws WorkbookTrouble where somebody has typed into it since. */
function refuseChanged(title: string, parts: readonly Inserted[], withSheet: boolean): void {
  const changed = parts.flatMap((part) => part.changed(withSheet));
  if (changed.length === 0) return;
  const named = changed.slice(0, 3).join(", ") + (changed.length > 3 ? ` and ${changed.length - 3} more` : "");
  throw new WorkbookTrouble(
    `The ${title} was changed or moved since it was inserted (${named}), so it stays. Delete it by hand.`,
  );
}

/** @throws WorkbookTrouble where there is none, or none that can be believed. */
function receiptOf(kept: Kept<Receipt>): Receipt {
  if (kept.state === "kept") return kept.value;
  if (kept.state === "none") throw new WorkbookTrouble("There is nothing to take back.");
  throw new WorkbookTrouble(
    kept.state === "later"
      ? "What was inserted last was inserted by a later version of this add-in. Use that version to take it back, or delete it by hand."
      : "What this workbook keeps of the last insert is damaged and cannot be read, so nothing was taken back. Delete it by hand.",
  );
}

/** What there is by now of a part that was inserted; readable after a sync. */
function queueInserted(context: Excel.RequestContext, part: ReceiptPart, records: readonly DrawingRecord[]) {
  const { sheetId, area, newSheet } = part;
  const worksheet = context.workbook.worksheets.getItemOrNullObject(sheetId);
  const drawing = drawingAt(records, sheetId, area);
  const pictures = [...part.pictures, ...(drawing ? [drawing.shapeName] : [])];
  const found = queueTakeOff(context, worksheet, part, ({ name }) => pictures.includes(name));
  const { target, isProtected } = found;
  target.load("formulas");
  const used = worksheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,rowCount,columnCount");
  const holdsNothingElse = () => {
    if (found.hasOtherPictures()) return false;
    if (used.isNullObject) return true;
    const { row, column, rows, columns } = areaOf(used);
    return row + rows <= area.row + area.rows && column + columns <= area.column + area.columns;
  };
  const goesWithSheet = () => !worksheet.isNullObject && newSheet && holdsNothingElse();
  return {
    worksheet,
    drawing,
    isProtected,
    goesWithSheet,
    takeOff: () => found.takeOff(goesWithSheet()),
    where: () => `${worksheet.name} ${areaAddress(area)}`,
    changed: (withSheet: boolean) =>
      changedCells(part, target.formulas).map((address) => (withSheet ? `${worksheet.name}!${address}` : address)),
  };
}

function changedCells({ area, formulas }: ReceiptPart, now: readonly (readonly unknown[])[]): string[] {
  const changed: string[] = [];
  formulas.forEach((cells, row) => {
    cells.forEach((formula, column) => {
      const cell = now[row]?.[column];
      // A cell that was emptied since holds nothing that could be lost.
      if (cell !== formula && cell !== "") {
        changed.push(cellAddress({ row: area.row + row, column: area.column + column }));
      }
    });
  });
  return changed;
}
