import { contentsOf } from "./contents";
import { inWorkbook, WorkbookTrouble } from "./trouble";

/** A cell by its place, with what stands in it. */
export interface NamedCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly before: string | number | boolean;
}

const AGAIN = "Nothing was changed. Look at the sheet of rates, put back what is missing, then try again.";

/**
 * The cell of a name of the workbook, wherever it stands.
 *
 * @throws WorkbookTrouble where the workbook has no such name, or its cell is gone.
 */
export async function namedCell(name: string): Promise<NamedCell> {
  return inWorkbook(async (context) => {
    const item = context.workbook.names.getItemOrNullObject(name);
    await context.sync();
    if (item.isNullObject) throw new WorkbookTrouble(`No cell of this workbook is called ${name} any more. ${AGAIN}`);
    const range = item.getRangeOrNullObject();
    range.load("rowIndex,columnIndex,formulas,values,valueTypes");
    range.worksheet.load("name");
    await context.sync();
    if (range.isNullObject) throw new WorkbookTrouble(`The cell that was called ${name} is gone. ${AGAIN}`);
    const { rowIndex: row, columnIndex: column, worksheet } = range;
    return { sheet: worksheet.name, row, column, before: contentsOf(range)[0]?.[0] ?? "" };
  });
}
