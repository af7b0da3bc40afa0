import { type Area, areaIn, columnLetters } from "../../spreadsheet/areas";

const PLAIN = /^[A-Z]{1,3}[1-9]\d{0,6}(?::[A-Z]{1,3}[1-9]\d{0,6})?$/;

/**
 * The area of an address inside a template.
 *
 * @param text such as `B3` or `A1:I1`, first cell first, without sheet and "$".
 * @returns undefined for anything else.
 * @example areaOf("B3:C4") // { row: 2, column: 1, rows: 2, columns: 2 }
 */
export function areaOf(text: string): Area | undefined {
  const area = PLAIN.test(text) ? areaIn(text) : undefined;
  return area && area.rows > 0 && area.columns > 0 ? area : undefined;
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

/** The name of a column for the person: `column C`. */
export const columnName = (column: number): string => `column ${columnLetters(column)}`;
