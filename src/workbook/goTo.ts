import type { Area } from "../sheets/plan";
import { inWorkbook } from "./trouble";

/** Brings cells to the person: their sheet to the front, and selected. */
export async function goTo({ sheet, ...area }: Area & { readonly sheet: string }): Promise<void> {
  return inWorkbook(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet);
    worksheet.activate();
    worksheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns).select();
    await context.sync();
  });
}
