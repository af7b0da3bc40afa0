import { inWorkbook } from "./trouble";

/** The host's id of a sheet, which outlives a new name. */
export async function sheetId(name: string): Promise<string> {
  return inWorkbook(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(name);
    worksheet.load("id");
    await context.sync();
    return worksheet.id;
  });
}
