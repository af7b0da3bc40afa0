import type { Anchor } from "../sheets/plan";
import { SHEET_ROWS } from "./freePlace";
import { inWorkbook } from "./trouble";

/** The first cell below everything on a sheet, with a blank row between. One sync. */
export async function belowUsed(sheet: string): Promise<{ readonly sheetId: string; readonly at: Anchor }> {
  return inWorkbook(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet);
    worksheet.load("id");
    const dressed = queueRowBelow(worksheet, false);
    const filled = queueRowBelow(worksheet, true);
    await context.sync();
    // Where whole columns are dressed, the sheet is used to its end; then only what stands in cells counts.
    const row = dressed() < SHEET_ROWS ? dressed() : filled();
    return { sheetId: worksheet.id, at: { row, column: 0 } };
  });
}

function queueRowBelow(worksheet: Excel.Worksheet, valuesOnly: boolean): () => number {
  const used = worksheet.getUsedRangeOrNullObject(valuesOnly);
  used.load("rowIndex,rowCount");
  return () => (used.isNullObject ? 0 : used.rowIndex + used.rowCount + 1);
}
