import { areaAddress, cellAddress } from "../sheets/address";
import { type DrawingRecord, drawingAt, queueReadDrawings, queueWriteDrawings } from "./drawingRecords";
import { areaOf } from "./place";
import { queueReadReceipt, queueReceiptText, type ReceiptPart } from "./receipt";
import { queueTakeOff } from "./takeOff";
import { inWorkbook, WorkbookTrouble } from "./trouble";

/** What would be taken back: what the person is asked about; undefined where there is nothing. */
export async function lastInsert(): Promise<{ readonly title: string } | undefined> {
  return inWorkbook(async (context) => {
    const { receipt: read } = queueReadReceipt(context);
    await context.sync();
    const receipt = read();
    return receipt && { title: receipt.title };
  });
}

/**
 * Takes the last insert back, with all that came with it, unless somebody has typed into it since.
 *
 * @returns what was taken back and from where.
 * @throws WorkbookTrouble where there is nothing to take back, or cells have changed; it names them.
 */
export async function takeBackLastInsert(): Promise<{ readonly title: string; readonly where: string }> {
  return inWorkbook(async (context) => {
    const { receipt: read } = queueReadReceipt(context);
    const readRecords = queueReadDrawings(context);
    await context.sync();
    const receipt = read();
    if (!receipt) throw new WorkbookTrouble("There is nothing to take back.");
    const { title } = receipt;
    const records = readRecords();
    const parts = receipt.parts.map((part) => queueInserted(context, part, records));
    await context.sync();

    const there = parts.filter(({ worksheet }) => !worksheet.isNullObject);
    if (there.length === 0) {
      throw new WorkbookTrouble(`The sheet with the ${title} is gone, so there is nothing to take back.`);
    }
    const changed = there.flatMap((part) => part.changed(receipt.parts.length > 1));
    if (changed.length > 0) {
      const named = changed.slice(0, 3).join(", ") + (changed.length > 3 ? ` and ${changed.length - 3} more` : "");
      throw new WorkbookTrouble(
        `The ${title} was changed or moved since it was inserted (${named}), so it stays. Delete it by hand.`,
      );
    }
    for (const part of parts) part.takeOff();
    const drawings = parts.map(({ drawing }) => drawing);
    if (drawings.some((drawing) => drawing)) {
      queueWriteDrawings(
        context,
        records.filter((record) => !drawings.includes(record)),
      );
    }
    queueReceiptText(context, "");
    await context.sync();
    return { title, where: there.map(({ where }) => where()).join(", ") };
  });
}

/** What there is by now of a part that was inserted; readable after a sync. */
function queueInserted(context: Excel.RequestContext, part: ReceiptPart, records: readonly DrawingRecord[]) {
  const { sheetId, area, newSheet } = part;
  const worksheet = context.workbook.worksheets.getItemOrNullObject(sheetId);
  const drawing = drawingAt(records, sheetId, area);
  const pictures = [...part.pictures, ...(drawing ? [drawing.shapeName] : [])];
  const { target, takeOff } = queueTakeOff(context, worksheet, part, ({ name }) => pictures.includes(name));
  target.load("formulas");
  const used = worksheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,rowCount,columnCount");
  const holdsNothingElse = () => {
    if (used.isNullObject) return true;
    const { row, column, rows, columns } = areaOf(used);
    return row + rows <= area.row + area.rows && column + columns <= area.column + area.columns;
  };
  return {
    worksheet,
    drawing,
    takeOff: () => takeOff(!worksheet.isNullObject && newSheet && holdsNothingElse()),
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
