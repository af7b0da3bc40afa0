import { WorkbookTrouble } from "./trouble";

const NOT_OPENED =
  "The spreadsheet program did not open a new workbook. Nothing was changed here. Try again, or put it on a new sheet.";

/** Whether the host opens files of ours as workbooks of their own. */
export function canOpenWorkbooks(): boolean {
  return Office.context.requirements.isSetSupported("ExcelApi", "1.8") && typeof Excel.createWorkbook === "function";
}

/**
 * Opens a file as a workbook of its own, beside the one that is open, which stays as it is. Nothing is saved by it.
 *
 * @param base64 an .xlsx file.
 * @throws WorkbookTrouble where the host refuses, in words for the person.
 */
export async function openAsWorkbook(base64: string): Promise<void> {
  try {
    await Excel.createWorkbook(base64);
  } catch (cause) {
    throw new WorkbookTrouble(NOT_OPENED, { cause });
  }
}
