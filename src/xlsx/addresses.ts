import { parseA1Range, parseA1Ref, stringifyA1Ref } from "@borgar/fx";
import { type Anchor, areaAddress, SHEET_COLUMNS, SHEET_ROWS } from "../spreadsheet/areas";

/** Cells of a sheet, counted from 0. */
export interface Rectangle {
  readonly row: number;
  readonly column: number;
  readonly rowCount: number;
  readonly columnCount: number;
}

/** The cell of an address like `B2`; undefined for anything else, or past the edges of a sheet. */
export function placeOf(address: string): Anchor | undefined {
  const [, letters = "", digits] = /^([A-Z]{1,3})(\d{1,7})$/i.exec(address) ?? [];
  let column = 0;
  for (const letter of letters.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  const row = Number(digits);
  return row >= 1 && row <= SHEET_ROWS && column <= SHEET_COLUMNS ? { row: row - 1, column: column - 1 } : undefined;
}

/** A cell or a range as a file names it, without a sheet: `B2`, `$A$1:C4`; undefined for anything else. */
export function rectangleOf(address: string): Rectangle | undefined {
  const range = parseA1Range(address);
  if (!range || range.top === null || range.left === null) return undefined;
  const { top, left, bottom = top, right = left } = range;
  if (bottom === null || right === null) return undefined;
  return { row: top, column: left, rowCount: bottom - top + 1, columnCount: right - left + 1 };
}

/** The rectangles of a list of addresses with blanks between them, as files have them. */
export function rectanglesOf(list: string): Rectangle[] {
  return list.split(/\s+/).flatMap((address) => rectangleOf(address) ?? []);
}

/** The address of a rectangle as files write it, with rows and columns even if it has all of them. */
export function addressOf({ row, column, rowCount, columnCount }: Rectangle): string {
  return areaAddress({ row, column, rows: rowCount, columns: columnCount });
}

/** Adds dollar signs to all parts of a reference; returns any other text unchanged. */
export function fixedRange(reference: string): string {
  const parsed = parseA1Ref(reference);
  if (!parsed || !("range" in parsed) || !parsed.range) return reference;
  return stringifyA1Ref({
    ...parsed,
    range: { ...parsed.range, $top: true, $left: true, $bottom: true, $right: true },
  });
}
