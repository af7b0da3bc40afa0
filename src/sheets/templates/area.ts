import { columnLetters } from "../address";
import type { Area } from "../plan";

const AREA = /^([A-Z]{1,3})([1-9]\d{0,6})(?::([A-Z]{1,3})([1-9]\d{0,6}))?$/;

/**
 * The area of an address inside a template.
 *
 * @param text such as `B3` or `A1:I1`, first cell first, without sheet and "$".
 * @returns undefined for anything else.
 * @example areaOf("B3:C4") // { row: 2, column: 1, rows: 2, columns: 2 }
 */
export function areaOf(text: string): Area | undefined {
  const [whole, left, top, right = left, bottom = top] = AREA.exec(text) ?? [];
  if (whole === undefined) return undefined;
  const [column, row] = [columnOf(left!), Number(top) - 1];
  const [columns, rows] = [columnOf(right!) - column + 1, Number(bottom) - row];
  return rows > 0 && columns > 0 ? { row, column, rows, columns } : undefined;
}

/** Whether an area lies wholly in a template of so many rows and columns. */
export function fits(area: Area, { rows, columns }: { readonly rows: number; readonly columns: number }): boolean {
  return area.row + area.rows <= rows && area.column + area.columns <= columns;
}

/** The cells of an area, row by row. */
export function* cellsOf(area: Area): Generator<{ readonly row: number; readonly column: number }> {
  for (let row = area.row; row < area.row + area.rows; row += 1)
    for (let column = area.column; column < area.column + area.columns; column += 1) yield { row, column };
}

function columnOf(letters: string): number {
  return [...letters].reduce((column, letter) => column * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/** The name of a column for the person: `column C`. */
export const columnName = (column: number): string => `column ${columnLetters(column)}`;
