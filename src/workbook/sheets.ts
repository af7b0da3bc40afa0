import { type Anchor, type Area, SHEET_ROWS } from "../spreadsheet/areas";
import { inWorkbook, WorkbookFailure } from "./failure";
import { queueUsed, rangeAt } from "./read/areas";

/** The host's id of a sheet, which outlives a new name. */
export async function sheetId(name: string): Promise<string> {
  return inWorkbook(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(name);
    worksheet.load("id");
    await context.sync();
    return worksheet.id;
  });
}

/** The first cell below everything on a sheet, with a blank row between. One request. */
export async function belowUsed(sheet: string): Promise<{ readonly sheetId: string; readonly at: Anchor }> {
  return inWorkbook(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet);
    worksheet.load("id");
    const formatted = queueUsed(worksheet, false);
    const filled = queueUsed(worksheet, true);
    await context.sync();
    const rowBelow = (used: Area | undefined) => (used ? used.row + used.rows + 1 : 0);
    // Where whole columns are formatted, the sheet is used to its end; then only cells with contents count.
    const row = rowBelow(formatted()) < SHEET_ROWS ? rowBelow(formatted()) : rowBelow(filled());
    return { sheetId: worksheet.id, at: { row, column: 0 } };
  });
}

/** Shows cells: brings their sheet to the front, and selects them. */
export async function goTo({ sheet, ...area }: Area & { readonly sheet: string }): Promise<void> {
  return inWorkbook(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet);
    worksheet.activate();
    rangeAt(worksheet, area).select();
    await context.sync();
  });
}

const NOT_OPENED =
  "The spreadsheet program didn't open a new workbook. Nothing was changed here. Try again, or choose a new sheet.";

/** Whether the host opens files of ours as workbooks of their own. */
export function canOpenWorkbooks(): boolean {
  return Office.context.requirements.isSetSupported("ExcelApi", "1.8") && typeof Excel.createWorkbook === "function";
}

/**
 * Opens a file as a separate workbook, beside the one that is open, which stays as it is. Nothing is saved by it.
 *
 * @param base64 an .xlsx file.
 * @throws WorkbookFailure where the host refuses, in words for the person.
 */
export async function openAsWorkbook(base64: string): Promise<void> {
  try {
    await Excel.createWorkbook(base64);
  } catch (cause) {
    throw new WorkbookFailure(NOT_OPENED, { cause });
  }
}
