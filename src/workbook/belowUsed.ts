import type { Anchor } from "../sheets/plan";
import { inWorkbook } from "./trouble";

/** The first cell below everything on a sheet, with a blank row between. One sync. */
export async function belowUsed(sheet: string): Promise<{ readonly sheetId: string; readonly at: Anchor }> {
  return inWorkbook(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet);
    worksheet.load("id");
    const used = worksheet.getUsedRangeOrNullObject(false);
    used.load("rowIndex,rowCount");
    await context.sync();
    const row = used.isNullObject ? 0 : used.rowIndex + used.rowCount + 1;
    return { sheetId: worksheet.id, at: { row, column: 0 } };
  });
}
