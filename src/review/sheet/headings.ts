import { unitIn } from "../../headings/heading";
import { unitNamed } from "../../headings/units";
import { isHeadingWord } from "../../headings/words";
import type { SheetGrid } from "./grid";

/** A row of headings, and the columns from its first to its last text. */
export interface HeadingRow {
  readonly row: number;
  readonly first: number;
  readonly last: number;
  /** A row of units, or of narrower headings, stands below this one: both are read together. */
  readonly above?: HeadingRow;
}

/** How far below a heading its first number may stand. */
const REACH = 3;

/**
 * The rows of a sheet that head columns: at least two texts and no numbers, with numbers below. Right below data
 * a row has to use the words of headings, too, since a row such as "Stone, river rock" is data without numbers.
 */
export function headingRows(grid: SheetGrid): HeadingRow[] {
  const texts = new Map<number, { first: number; last: number; columns: number[] }>();
  for (let row = grid.top; row <= grid.bottom; row++) {
    const found = textsOnly(grid, row);
    if (found) texts.set(row, found);
  }
  const headings: HeadingRow[] = [];
  for (const [row, { first, last, columns }] of texts) {
    if (columns.length < 2 || !headsNumbers(grid, row, first, last)) continue;
    if (hasNumbers(grid, row - 1, first, last) && !soundsLikeHeadings(grid, row, columns)) continue;
    const above = texts.get(row - 1);
    const unitsOnly =
      columns.filter((column) => unitNamed(String(grid.value(row, column)))).length * 2 >= columns.length;
    const group =
      above && (unitsOnly || isMergedAcross(grid, row - 1))
        ? { row: row - 1, first: above.first, last: Math.max(above.last, last) }
        : undefined;
    headings.push({
      row,
      first: Math.min(first, group?.first ?? first),
      last: Math.max(last, group?.last ?? last),
      ...(group && { above: group }),
    });
  }
  return headings;
}

function textsOnly(grid: SheetGrid, row: number) {
  const columns: number[] = [];
  for (let column = grid.left; column <= grid.right; column++) {
    if (grid.isBlank(row, column)) continue;
    if (!grid.isTypedText(row, column)) return undefined;
    columns.push(column);
  }
  const [first, last] = [columns[0], columns.at(-1)];
  return first === undefined || last === undefined ? undefined : { first, last, columns };
}

function headsNumbers(grid: SheetGrid, row: number, first: number, last: number): boolean {
  for (let below = row + 1; below <= Math.min(row + REACH, grid.bottom); below++) {
    if (hasNumbers(grid, below, first, last)) return true;
    // Another row of texts in between is what heads the numbers.
    if ((textsOnly(grid, below)?.columns.length ?? 0) > 1) return false;
  }
  return false;
}

function hasNumbers(grid: SheetGrid, row: number, first: number, last: number): boolean {
  for (let column = first; column <= last; column++) {
    if (grid.number(row, column) !== undefined || grid.formula(row, column) !== undefined) return true;
  }
  return false;
}

function soundsLikeHeadings(grid: SheetGrid, row: number, columns: readonly number[]): boolean {
  const later = columns.slice(1).map((column) => String(grid.value(row, column)));
  const sounding = later.filter((text) => isHeadingWord(text) || (text.length < 30 && unitIn(text) !== undefined));
  return sounding.length >= Math.min(2, later.length) && sounding.length * 2 >= later.length;
}

function isMergedAcross(grid: SheetGrid, row: number): boolean {
  return grid.facts.merged.some((area) => area.row === row && area.rows === 1 && area.columns > 1);
}
