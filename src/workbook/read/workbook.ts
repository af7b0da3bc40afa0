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

/**
 * Reads everything that a check looks at, and what was dismissed before, in two requests. Of a sheet that reaches too far
 * for the host to give all of it, the upper part is read, in a third and fourth, and the facts say where the rest begins.
 */
export async function readForCheck(): Promise<ReadWorkbook & { readonly known: KnownDismissals }> {
  return inWorkbook(async (context) => {
    // Goes along with the first of them.
    const known = queueReadDismissals(context);
    const read = await readAll(context).catch(async (error: Error) => {
      const parts = await upperParts(context);
      if (parts.size === 0) throw error;
      return readAll(context, parts);
    });
    return { ...read, known: known() };
  });
}

/** As many cells of one sheet are read where it has too many: more than the largest estimates have. */
const MOST_CELLS = 250_000;
/** Sheets with no more than this are given at once by every host. */
const ALWAYS_GIVEN = 900_000;

/** By sheet, how many rows are read of those that are too large. */
async function upperParts(context: Excel.RequestContext): Promise<ReadonlyMap<string, number>> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  const all = worksheets.items.map((worksheet) => ({ name: worksheet.name, used: worksheet.getUsedRange(true) }));
  for (const { used } of all) used.load("rowCount,columnCount");
  await context.sync();
  return new Map(
    all.flatMap(({ name, used: { rowCount, columnCount } }) =>
      rowCount * columnCount > ALWAYS_GIVEN ? [[name, Math.ceil(MOST_CELLS / columnCount)] as const] : [],
    ),
  );
}

async function readAll(
  context: Excel.RequestContext,
  upper: ReadonlyMap<string, number> = new Map(),
): Promise<ReadWorkbook> {
  const { workbook } = context;
  const { worksheets, names, tables } = workbook;
  worksheets.load("items/name,items/visibility");
  names.load("items/name,items/formula");
  tables.load("items/name,items/showHeaders,items/showTotals");
  await context.sync();

  const sheets = worksheets.items.map((worksheet) => queueSheet(worksheet, upper.get(worksheet.name)));
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

function queueSheet(worksheet: Excel.Worksheet, rows?: number): { read: () => SheetFacts } {
  // On a blank sheet this is its first cell, so that its rows and columns can be asked for in the same request.
  const whole = worksheet.getUsedRange(true);
  const used = rows === undefined ? whole : whole.getRow(0).getResizedRange(rows - 1, 0);
  used.load("rowIndex,columnIndex,values,formulas,text,numberFormat,valueTypes");
  const merged = used.getMergedAreasOrNullObject();
  merged.load("address");
  const rowProperties = used.getRowProperties({ rowHidden: true });
  const columns = used.getColumnProperties({ columnHidden: true });
  worksheet.protection.load("protected");
  return {
    read: () => {
      const facts = {
        name: worksheet.name,
        visibility: worksheet.visibility as SheetFacts["visibility"],
        protected: worksheet.protection.protected,
        ...(rows !== undefined && { notReadFrom: used.rowIndex + rows }),
      };
      const filled = used.values.findLastIndex((cells) => cells.some((value) => value !== "")) + 1;
      if (filled === 0) return { ...facts, hiddenRows: [], hiddenColumns: [], merged: [] };
      const { rowIndex: row, columnIndex: column, text, numberFormat, valueTypes } = used;
      // Cells far down may be all there is there, and the empty ones above them needn't be looked through.
      const upTo = <Rows extends readonly unknown[]>(all: Rows) =>
        (rows === undefined ? all : all.slice(0, filled)) as Rows;
      return {
        ...facts,
        used: {
          row,
          column,
          text: upTo(text),
          numberFormat: upTo(numberFormat as string[][]),
          valueTypes: upTo(valueTypes as string[][]),
          values: upTo(used.values as CellValue[][]),
          formulas: upTo(contentsOf(used)),
        },
        hiddenRows: placesOf(rowProperties.value, ({ rowHidden }) => rowHidden === true, row),
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
