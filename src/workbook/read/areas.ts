import type { Anchor, Area } from "../../sheets/plan";

/** Names of sheets, in quotes where they have more than letters and figures; a quote within is doubled. */
const SHEETS = /(?:'(?:[^']|'')*'|[^,!']+)!/g;
const CELLS = /^\$?([A-Z]+)\$?(\d+)(?::\$?([A-Z]+)\$?(\d+))?$/i;

/** An address without its sheets, such as `B2:D7,F1`. */
export function withoutSheets(address: string): string {
  return address.replace(SHEETS, "");
}

/**
 * The area of an address of one run of cells; undefined for whole columns, and for what is no address of cells.
 *
 * @example areaIn("Rates!$B$2") // { row: 1, column: 1, rows: 1, columns: 1 }
 */
export function areaIn(address: string): Area | undefined {
  const [, letters, row, lastLetters = letters, lastRow = row] = CELLS.exec(withoutSheets(address)) ?? [];
  if (!letters || !row || !lastLetters || !lastRow) return undefined;
  const first = { row: Number(row) - 1, column: columnOf(letters) };
  return { ...first, rows: Number(lastRow) - first.row, columns: columnOf(lastLetters) + 1 - first.column };
}

/**
 * The area of an address that the host gives.
 *
 * @example areaOfAddress("Jobs!B2:D7") // { row: 1, column: 1, rows: 6, columns: 3 }
 */
export function areaOfAddress(address: string): Area {
  const area = areaIn(address);
  if (!area) throw new RangeError(`${address} is no address of cells.`);
  return area;
}

/**
 * The areas of an address of several runs of cells, each with its sheet; the name of a sheet may hold commas.
 *
 * @example areasOfAddresses("'Smith, front'!A1:B1,'Smith, front'!D4").length // 2
 */
export function areasOfAddresses(address: string): Area[] {
  return withoutSheets(address).split(",").map(areaOfAddress);
}

function columnOf(letters: string): number {
  return [...letters.toUpperCase()].reduce((column, letter) => column * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/**
 * The sheet of an address that the host gives.
 *
 * @example sheetOfAddress("'Our rates'!B5") // "Our rates"
 */
export function sheetOfAddress(address: string): string {
  const sheet = address.slice(0, Math.max(0, address.lastIndexOf("!")));
  return /^'.*'$/s.test(sheet) ? sheet.slice(1, -1).replaceAll("''", "'") : sheet;
}

/** Rows and columns of a worksheet. */
export const SHEET_ROWS = 1_048_576;
export const SHEET_COLUMNS = 16_384;

/**
 * The free place nearest to a wanted one: straight below it or straight to its right, with a blank row and
 * column around it.
 *
 * @param taken areas that something stands in.
 * @param wanted the area that was wanted.
 * @returns its new top left cell, or undefined where the sheet has no room.
 */
export function nearestFreePlace(taken: readonly Area[], wanted: Area): Anchor | undefined {
  const below = firstFree(taken, wanted, (area, by) => ({ ...area, row: by.row + by.rows + 1 }));
  const right = firstFree(taken, wanted, (area, by) => ({ ...area, column: by.column + by.columns + 1 }));
  const fits = [below, right].filter(isOnSheet);
  const distance = (area: Area) => area.row - wanted.row + (area.column - wanted.column);
  const [nearest] = fits.sort((one, other) => distance(one) - distance(other));
  return nearest && { row: nearest.row, column: nearest.column };
}

/** Whether an area ends before the sheet does. */
export function isOnSheet({ row, rows, column, columns }: Area): boolean {
  return row + rows <= SHEET_ROWS && column + columns <= SHEET_COLUMNS;
}

/** Whether two areas overlap, or touch when `apart` cells must stay blank between them. */
export function overlap(one: Area, other: Area, apart = 0): boolean {
  return (
    one.row < other.row + other.rows + apart &&
    other.row < one.row + one.rows + apart &&
    one.column < other.column + other.columns + apart &&
    other.column < one.column + one.columns + apart
  );
}

/** The cells that two areas share; undefined where they share none. */
export function common(one: Area, other: Area): Area | undefined {
  const row = Math.max(one.row, other.row);
  const column = Math.max(one.column, other.column);
  const rows = Math.min(one.row + one.rows, other.row + other.rows) - row;
  const columns = Math.min(one.column + one.columns, other.column + other.columns) - column;
  return rows > 0 && columns > 0 ? { row, column, rows, columns } : undefined;
}

function firstFree(taken: readonly Area[], wanted: Area, moveBehind: (area: Area, by: Area) => Area): Area {
  let area = wanted;
  for (;;) {
    const inTheWay = taken.find((other) => overlap(area, other, 1));
    if (!inTheWay) return area;
    area = moveBehind(area, inTheWay);
  }
}

/**
 * The cells of a read range that hold something, as few areas: runs of filled cells side by side, joined with the
 * run right above where that is as wide.
 *
 * @param formulas what was read; "" is a blank cell.
 * @param at where the read range begins.
 */
export function filledAreas(formulas: readonly (readonly unknown[])[], at: Anchor): Area[] {
  const areas: Area[] = [];
  let above = new Map<number, number>();
  formulas.forEach((cells, row) => {
    const here = new Map<number, number>();
    for (const { column, columns } of filledRuns(cells, at.column)) {
      const index = above.get(column) ?? -1;
      const joined = areas[index];
      if (joined?.columns === columns) {
        areas[index] = { ...joined, rows: joined.rows + 1 };
        here.set(column, index);
      } else {
        here.set(column, areas.push({ row: at.row + row, column, rows: 1, columns }) - 1);
      }
    }
    above = here;
  });
  return areas;
}

function* filledRuns(cells: readonly unknown[], firstColumn: number): Generator<{ column: number; columns: number }> {
  let start = 0;
  while (start < cells.length) {
    let end = start;
    while (end < cells.length && cells[end] !== "") end += 1;
    if (end > start) yield { column: firstColumn + start, columns: end - start };
    start = end + 1;
  }
}

/** The first cell of a range whose place was loaded. */
export function anchorOf(range: Excel.Range): Anchor {
  return { row: range.rowIndex, column: range.columnIndex };
}

/** The area of a range whose place and size were loaded. */
export function areaOf(range: Excel.Range): Area {
  return { ...anchorOf(range), rows: range.rowCount, columns: range.columnCount };
}
