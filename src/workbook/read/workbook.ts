import type { CellValue, Scope, SheetFacts, TableFacts, WorkbookFacts } from "../../review/facts";
import { areasOfAddresses, type Area as ReviewArea } from "../../spreadsheet/areas";
import { inWorkbook } from "../failure";
import { type KnownDismissals, queueReadDismissals } from "../settings/dismissals";
import { areaOf } from "./areas";
import { contentsOf } from "./cells";

/** A workbook as it was read for a check, and what is selected in it. */
export interface ReadWorkbook {
  readonly facts: WorkbookFacts;
  readonly sheet: string;
  readonly selection: ReviewArea;
}

/** What of a workbook is to be checked. */
export function scopeOf({ sheet, selection }: ReadWorkbook, kind: Scope["kind"]): Scope {
  if (kind === "workbook") return { kind };
  return kind === "sheet" ? { kind, sheet } : { kind, sheet, area: selection };
}

/** Reads all cells with contents, in two requests, whatever the size. */
export async function readWorkbook(): Promise<ReadWorkbook> {
  return inWorkbook(readAll);
}

/** Reads everything that a check looks at, and what was dismissed before, in two requests, whatever the size. */
export async function readForCheck(): Promise<ReadWorkbook & { readonly known: KnownDismissals }> {
  return inWorkbook(async (context) => {
    // Goes along with the first of them.
    const known = queueReadDismissals(context);
    return { ...(await readAll(context)), known: known() };
  });
}

async function readAll(context: Excel.RequestContext): Promise<ReadWorkbook> {
  const { workbook } = context;
  const { worksheets, names, tables } = workbook;
  worksheets.load("items/name,items/visibility");
  names.load("items/name,items/formula");
  tables.load("items/name,items/showHeaders,items/showTotals");
  await context.sync();

  const sheets = worksheets.items.map(queueSheet);
  const tableRanges = tables.items.map((table) => ({ table, range: queueTableRange(table) }));
  const selection = workbook.getSelectedRange();
  selection.load("rowIndex,columnIndex,rowCount,columnCount");
  selection.worksheet.load("name");
  await context.sync();
  return {
    facts: {
      sheets: sheets.map(({ read }) => read()),
      names: names.items.map(({ name, formula }) => ({ name, formula: String(formula) })),
      tables: tableRanges.map(({ table, range }) => tableFacts(table, range)),
    },
    sheet: selection.worksheet.name,
    selection: areaOf(selection),
  };
}

function queueSheet(worksheet: Excel.Worksheet): { read: () => SheetFacts } {
  // On a blank sheet this is its first cell, so that its rows and columns can be asked for in the same request.
  const used = worksheet.getUsedRange(true);
  used.load("rowIndex,columnIndex,values,formulas,text,numberFormat,valueTypes");
  const merged = used.getMergedAreasOrNullObject();
  merged.load("address");
  const rows = used.getRowProperties({ rowHidden: true });
  const columns = used.getColumnProperties({ columnHidden: true });
  worksheet.protection.load("protected");
  return {
    read: () => {
      const facts = {
        name: worksheet.name,
        visibility: worksheet.visibility as SheetFacts["visibility"],
        protected: worksheet.protection.protected,
      };
      if (used.values.every((row) => row.every((value) => value === "")))
        return { ...facts, hiddenRows: [], hiddenColumns: [], merged: [] };
      const { rowIndex: row, columnIndex: column, text, numberFormat, valueTypes } = used;
      return {
        ...facts,
        used: {
          row,
          column,
          text,
          numberFormat: numberFormat as string[][],
          valueTypes: valueTypes as string[][],
          values: used.values as CellValue[][],
          formulas: contentsOf(used),
        },
        hiddenRows: placesOf(rows.value, ({ rowHidden }) => rowHidden === true, row),
        hiddenColumns: placesOf(columns.value, ({ columnHidden }) => columnHidden === true, column),
        merged: merged.isNullObject ? [] : areasOfAddresses(merged.address),
      };
    },
  };
}

function placesOf<T>(properties: readonly T[], isHidden: (property: T) => boolean, first: number): number[] {
  return properties.flatMap((property, index) => (isHidden(property) ? [first + index] : []));
}

function queueTableRange(table: Excel.Table): Excel.Range {
  const range = table.getRange();
  range.load("rowIndex,columnIndex,rowCount,columnCount,values");
  range.worksheet.load("name");
  return range;
}

function tableFacts({ name, showHeaders, showTotals }: Excel.Table, range: Excel.Range): TableFacts {
  return {
    name,
    sheet: range.worksheet.name,
    area: areaOf(range),
    columnNames: showHeaders ? (range.values[0] ?? []).map(String) : [],
    headingRow: showHeaders,
    totalsRow: showTotals,
  };
}
