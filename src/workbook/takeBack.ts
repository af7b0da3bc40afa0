import { areaAddress, cellAddress } from "../sheets/address";
import { queueRestore } from "./before";
import { drawingAt, queueReadDrawings, queueWriteDrawings } from "./drawingRecords";
import { queueReadReceipt, queueReceiptText, type Receipt } from "./receipt";
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
 * Takes the last insert back, unless somebody has typed into it since.
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
    const worksheet = context.workbook.worksheets.getItemOrNullObject(receipt.sheetId);
    const { row, column, rows, columns } = receipt.area;
    worksheet.load("name");
    const target = worksheet.getRangeByIndexes(row, column, rows, columns);
    target.load("formulas");
    const records = readRecords();
    const drawing = drawingAt(records, receipt.sheetId, receipt.area);
    const shape = drawing && worksheet.shapes.getItemOrNullObject(drawing.shapeName);
    shape?.load("name");
    const used = worksheet.getUsedRangeOrNullObject(true);
    used.load("rowIndex,columnIndex,rowCount,columnCount");
    await context.sync();
    if (worksheet.isNullObject) {
      throw new WorkbookTrouble(`The sheet with the ${receipt.title} is gone, so there is nothing to take back.`);
    }

    const changed = changedCells(receipt, target.formulas);
    if (changed.length > 0) {
      const named = changed.slice(0, 3).join(", ") + (changed.length > 3 ? ` and ${changed.length - 3} more` : "");
      throw new WorkbookTrouble(
        `The ${receipt.title} was changed or moved since it was inserted (${named}), so it stays. Delete it by hand.`,
      );
    }
    const nothingElse =
      used.isNullObject ||
      (used.rowIndex + used.rowCount <= row + rows && used.columnIndex + used.columnCount <= column + columns);
    if (receipt.newSheet && nothingElse) {
      worksheet.delete();
    } else {
      queueRestore(target, receipt.before);
      if (shape && !shape.isNullObject) shape.delete();
    }
    if (drawing) {
      queueWriteDrawings(
        context,
        records.filter((record) => record !== drawing),
      );
    }
    queueReceiptText(context, "");
    await context.sync();
    return { title: receipt.title, where: `${worksheet.name} ${areaAddress(receipt.area)}` };
  });
}

function changedCells({ area, formulas }: Receipt, now: readonly (readonly unknown[])[]): string[] {
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
