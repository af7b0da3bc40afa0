import type { CellContent, ListSheet, ListTable } from "../../sheets/jobRows/listSheet";
import { STONE_WEIGHTS } from "../../sheets/jobRows/setting";
import { type Area, areasOfAddresses } from "../../spreadsheet/areas";
import { inWorkbook, WorkbookFailure } from "../failure";
import { areaOf } from "./areas";
import { contentsOf } from "./cells";

/** The sheet in front as it was read for a list of beds, and where on it the person stood. */
export interface ReadListSheet {
  readonly sheet: ListSheet;
  readonly selection: Area;
}

/** The host takes 5 MB a request; a cell with its formula and value is some 30 bytes. */
const MOST_CELLS = 150_000;

/**
 * Reads the sheet in front with all that fitting a list takes, in two syncs, whatever the size.
 *
 * @throws WorkbookFailure where the sheet is blank, protected, or larger than 150,000 cells.
 */
export async function readListSheet(): Promise<ReadListSheet> {
  return inWorkbook(async (context) => {
    const selection = context.workbook.getSelectedRange();
    selection.load("rowIndex,columnIndex,rowCount,columnCount");
    const { worksheet } = selection;
    worksheet.load("name");
    worksheet.protection.load("protected");
    const used = worksheet.getUsedRangeOrNullObject(true);
    used.load("rowIndex,columnIndex,rowCount,columnCount");
    worksheet.tables.load("items/name,items/showHeaders,items/showTotals");
    const { names } = context.workbook;
    names.load("items/name");
    await context.sync();

    refuse(worksheet, used);
    const range = worksheet.getRangeByIndexes(used.rowIndex, used.columnIndex, used.rowCount, used.columnCount);
    range.load("formulas,values,valueTypes");
    const rows = range.getRowProperties({ rowHidden: true });
    const merged = range.getMergedAreasOrNullObject();
    merged.load("address");
    const tables = worksheet.tables.items.map(queueTable);
    const weights = names.items
      .find(({ name }) => name.toLowerCase() === STONE_WEIGHTS.toLowerCase())
      ?.getRangeOrNullObject();
    weights?.load("values");
    await context.sync();

    return {
      selection: areaOf(selection),
      sheet: {
        name: worksheet.name,
        row: used.rowIndex,
        column: used.columnIndex,
        formulas: contentsOf(range),
        values: range.values as CellContent[][],
        hiddenRows: rows.value.flatMap(({ rowHidden }, index) => (rowHidden ? [used.rowIndex + index] : [])),
        merged: merged.isNullObject ? [] : areasOfAddresses(merged.address),
        tables: tables.map((read) => read()),
        names: names.items.map(({ name }) => name),
        weighsStone:
          weights !== undefined && !weights.isNullObject && weights.values.flat().some((value) => value !== ""),
      },
    };
  });
}

function refuse(worksheet: Excel.Worksheet, used: Excel.Range): void {
  if (worksheet.protection.protected) {
    throw new WorkbookFailure(
      `The sheet “${worksheet.name}” is protected. Lift the protection, or choose another sheet.`,
    );
  }
  if (used.isNullObject) {
    throw new WorkbookFailure(
      `Nothing stands on the sheet “${worksheet.name}”. Go to the sheet with your list of beds.`,
    );
  }
  if (used.rowCount * used.columnCount > MOST_CELLS) {
    throw new WorkbookFailure(
      `The sheet “${worksheet.name}” has more than ${MOST_CELLS.toLocaleString("en-US")} cells in use, too many to read at once. Put the list on a sheet of its own.`,
    );
  }
}

function queueTable(table: Excel.Table): () => ListTable {
  const range = table.getRange();
  range.load("rowIndex,columnIndex,rowCount,columnCount");
  const { name, showHeaders, showTotals } = table;
  return () => ({ name, area: areaOf(range), headingRow: showHeaders, totalsRow: showTotals });
}
