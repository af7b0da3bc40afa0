import type { Area } from "../sheets/plan";

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
