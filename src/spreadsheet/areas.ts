/** One cell of a sheet: rows and columns are counted from 0. */
export interface Anchor {
  readonly row: number;
  readonly column: number;
}

/** A rectangle of cells on a sheet. */
export interface Area extends Anchor {
  readonly rows: number;
  readonly columns: number;
}

/** Rows and columns of a worksheet. */
export const SHEET_ROWS = 1_048_576;
export const SHEET_COLUMNS = 16_384;
/** How many characters a cell holds, in any spreadsheet program: published specifications and limits. */
export const MOST_IN_CELL = 32_767;

/** The letters of a zero-based column: 0 is A, 26 is AA. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

/** The relative A1 address of a zero-based cell: row 4, column 1 is B5. */
export function cellAddress({ row, column }: Anchor): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** The relative A1 address of an area: `B5:D7`, or `B5` where it is one cell. */
export function areaAddress({ row, column, rows = 1, columns = 1 }: Anchor & Partial<Area>): string {
  const first = cellAddress({ row, column });
  return rows === 1 && columns === 1
    ? first
    : `${first}:${cellAddress({ row: row + rows - 1, column: column + columns - 1 })}`;
}

/** The name of a sheet as a reference spells it: in quotes where it has more than letters and figures. */
export function quotedSheet(name: string): string {
  return /^[A-Za-z_][\w.]*$/.test(name) && !/^[A-Za-z]{1,3}\d+$/.test(name) ? name : `'${name.replaceAll("'", "''")}'`;
}

/** Names of sheets, in quotes where they have more than letters and figures; a quote within is doubled. */
const SHEETS = /(?:'(?:[^']|'')*'|[^,!']+)!/g;
const CELLS = /^\$?([A-Z]+)\$?(\d+)(?::\$?([A-Z]+)\$?(\d+))?$/i;

/** An address without its sheets, such as `B2:D7,F1`. */
export function withoutSheets(address: string): string {
  return address.replace(SHEETS, "");
}

/**
 * The area of an address of one run of cells; undefined for whole columns, and for what isn't a cell address.
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
  if (!area) throw new RangeError(`${address} isn't a cell address.`);
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
