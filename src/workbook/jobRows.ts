import { type CellChange, isMerged } from "../sheets/jobRows/fill";
import type { ListFit } from "../sheets/jobRows/fit";
import type { CellContent, ListSheet, ListTable } from "../sheets/jobRows/listSheet";
import { namesOfList, productLists } from "../sheets/jobRows/products";
import { STONE_MINIMUMS, STONE_STEPS, STONE_WEIGHTS } from "../sheets/jobRows/setting";
import { type Area, areasOfAddresses } from "../spreadsheet/areas";
import { type NewHeadings, type WrittenChanges, writeChanges } from "./change/cells";
import { inWorkbook, WorkbookFailure } from "./failure";
import { areaOf, queueUsed, rangeAt } from "./read/areas";
import { contentsOf } from "./read/cells";

/** This sheet as it was read for a list of beds, and what is selected on it. */
export interface ReadListSheet {
  readonly sheet: ListSheet;
  readonly selection: Area;
}

/** The host takes 5 MB a request; a cell with its formula and value is some 30 bytes. */
const MOST_CELLS = 150_000;

/**
 * Reads the sheet in front with all that fitting a list takes, in two requests, whatever the size.
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
    const usedArea = queueUsed(worksheet, true);
    worksheet.tables.load("items/name,items/showHeaders,items/showTotals");
    const { names } = context.workbook;
    names.load("items/name");
    await context.sync();

    const used = checkedArea(worksheet, usedArea());
    const range = rangeAt(worksheet, used);
    range.load("formulas,values,valueTypes");
    const rows = range.getRowProperties({ rowHidden: true });
    const merged = range.getMergedAreasOrNullObject();
    merged.load("address");
    const tables = worksheet.tables.items.map(queueTable);
    const queueNamed = (wanted: string) => {
      const range = names.items.find(({ name }) => name.toLowerCase() === wanted.toLowerCase())?.getRangeOrNullObject();
      range?.load("values");
      return () => (range === undefined || range.isNullObject ? undefined : range.values.flat());
    };
    const weights = queueNamed(STONE_WEIGHTS);
    const steps = [STONE_STEPS, STONE_MINIMUMS].map(queueNamed);
    const lists = productLists.map((list) => [list, queueNamed(namesOfList(list))] as const);
    await context.sync();

    return {
      selection: areaOf(selection),
      sheet: {
        name: worksheet.name,
        row: used.row,
        column: used.column,
        formulas: contentsOf(range),
        values: range.values as CellContent[][],
        hiddenRows: rows.value.flatMap(({ rowHidden }, index) => (rowHidden ? [used.row + index] : [])),
        merged: merged.isNullObject ? [] : areasOfAddresses(merged.address),
        tables: tables.map((read) => read()),
        names: names.items.map(({ name }) => name),
        weighsStone: isFilled(weights()),
        stonesHaveSteps: steps.some((read) => isFilled(read())),
        products: Object.fromEntries(
          lists.flatMap(([list, read]) => {
            const found = read();
            return found ? [[list, found.filter((name) => typeof name === "string" && name !== "")]] : [];
          }),
        ),
      },
    };
  });
}

const isFilled = (cells: readonly unknown[] = []): boolean => cells.some((value) => value !== "");

/** @throws WorkbookFailure where a sheet can't be read. */
function checkedArea(worksheet: Excel.Worksheet, used: Area | undefined): Area {
  if (worksheet.protection.protected) {
    throw new WorkbookFailure(`The sheet “${worksheet.name}” is protected. Unprotect it, or choose another sheet.`);
  }
  if (!used) {
    throw new WorkbookFailure(
      `The sheet “${worksheet.name}” has nothing on it. Go to the sheet with your list of beds.`,
    );
  }
  if (used.rows * used.columns > MOST_CELLS) {
    throw new WorkbookFailure(
      `The sheet “${worksheet.name}” has more than ${MOST_CELLS.toLocaleString("en-US")} cells in use, too many to read at once. Put the list on its own sheet.`,
    );
  }
  return used;
}

function queueTable(table: Excel.Table): () => ListTable {
  const range = table.getRange();
  range.load("rowIndex,columnIndex,rowCount,columnCount");
  const { name, showHeaders, showTotals } = table;
  return () => ({ name, area: areaOf(range), headingRow: showHeaders, totalsRow: showTotals });
}

/**
 * Writes what was proposed for a list: two requests, however many rows. Every cell of the list must still hold what it
 * held when it was read, headings and measurements, too, since the formulas go by their places. New headings look like
 * the last one of the list.
 *
 * @throws WorkbookFailure where something has changed since, naming the cell; nothing is written then.
 */
export async function writeRows(fit: ListFit, changes: readonly CellChange[]): Promise<WrittenChanges> {
  const { cells, heading, rows } = fit;
  const sheet = cells.sheet.name;
  const area = {
    row: heading.row,
    column: heading.first,
    rows: rows.last - heading.row + 1,
    columns: heading.last - heading.first + 1,
  };
  const formulas = Array.from({ length: area.rows }, (_, row) =>
    Array.from({ length: area.columns }, (_, column) => cells.content(area.row + row, area.column + column)),
  );
  const headings = newHeadings(fit, changes);
  return writeChanges(`job rows on ${sheet}`, changes, {
    expected: { sheet, area, formulas },
    ...(headings && { headings }),
  });
}

/** The headings among the changes; they are side by side. */
function newHeadings({ cells, heading }: ListFit, changes: readonly CellChange[]): NewHeadings | undefined {
  const fresh = changes.filter(({ row }) => row === heading.row).sort((one, other) => one.column - other.column);
  const [first] = fresh;
  if (!first || isMerged(cells.sheet, heading.row, heading.last)) return undefined;
  const { sheet, row, column } = first;
  const widths = fresh.map(({ after }) => String(after).length + PADDING_CHARACTERS);
  return { sheet, row, column, like: { row, column: heading.last }, widths };
}

/** Room beside a heading, so that it does not touch the next. */
const PADDING_CHARACTERS = 2;
