import type { NamedRates } from "../../sheets/office/officeRates";
import { isRateName, type NamedCells, ratesFrom } from "../../sheets/rates/ratesFrom";
import { sheetOfAddress } from "../../spreadsheet/areas";
import { inWorkbook, WorkbookFailure } from "../failure";
import { contentsOf } from "./cells";

/** The office's rates, and where they are. */
export interface FoundRates {
  readonly rates: NonNullable<ReturnType<typeof ratesFrom>>;
  /** Names of the sheets that hold them; one, unless someone moved some. */
  readonly sheets: readonly string[];
  /** Which of our names the workbook has, so that no second one is made. */
  readonly names: readonly string[];
}

/**
 * Reads the office's rates by the names of their cells, wherever these are and whatever their sheet is called. Two
 * requests; one where the workbook has none.
 *
 * @returns undefined where the workbook has none of them.
 */
export async function readRates(): Promise<FoundRates | undefined> {
  return (await readRateCells())?.found;
}

/** The office's rates, and each cell of theirs: where it is, what it holds, and what it shows. */
export interface FoundRateCells {
  readonly found: FoundRates;
  readonly named: NamedRates;
}

/** The same as {@link readRates}, with the cells. */
export async function readRateCells(): Promise<FoundRateCells | undefined> {
  return inWorkbook(async (context) => {
    const { names } = context.workbook;
    names.load("items/name");
    await context.sync();
    const ours = names.items.filter(({ name }) => isRateName(name));
    if (ours.length === 0) return undefined;

    const cells = ours.map((item) => {
      const range = item.getRangeOrNullObject();
      range.load("values,formulas,valueTypes,address,rowIndex,columnIndex");
      return { name: item.name, range };
    });
    await context.sync();
    const there = cells.filter(({ range }) => !range.isNullObject);
    const named = new Map(
      cells.map(({ name, range }): [string, NamedCells] => [name, range.isNullObject ? undefined : range.values]),
    );
    const rates = ratesFrom(named);
    if (!rates) return undefined;
    const sheets = [...new Set(there.map(({ range }) => sheetOfAddress(range.address)))];
    return {
      found: { rates, sheets, names: ours.map(({ name }) => name) },
      named: new Map(
        there.map(({ name, range }) => {
          const { rowIndex: row, columnIndex: column, values } = range;
          const place = { sheet: sheetOfAddress(range.address), row, column };
          return [name.toLowerCase(), { ...place, contents: contentsOf(range), values }];
        }),
      ),
    };
  });
}

/** A cell, and what it holds. */
export interface NamedCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly before: string | number | boolean;
}

const AGAIN = "Nothing was changed. Check the Rates sheet, add what's missing, then try again.";

/**
 * The cell of a name of the workbook, wherever it is.
 *
 * @throws WorkbookFailure where the workbook has no such name, or its cell is gone.
 */
export async function namedCell(name: string): Promise<NamedCell> {
  return inWorkbook(async (context) => {
    const item = context.workbook.names.getItemOrNullObject(name);
    await context.sync();
    if (item.isNullObject) throw new WorkbookFailure(`No cell in this workbook is named ${name} anymore. ${AGAIN}`);
    const range = item.getRangeOrNullObject();
    range.load("rowIndex,columnIndex,formulas,values,valueTypes");
    range.worksheet.load("name");
    await context.sync();
    if (range.isNullObject) throw new WorkbookFailure(`The cell named ${name} is gone. ${AGAIN}`);
    const { rowIndex: row, columnIndex: column, worksheet } = range;
    return { sheet: worksheet.name, row, column, before: contentsOf(range)[0]?.[0] ?? "" };
  });
}
