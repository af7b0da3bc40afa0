import { listedStrips } from "../quantities/fabric";
import { messages } from "../quantities/messages";
import { must } from "../quantities/must";
import type { Point } from "../quantities/outline";
import { Problem } from "../quantities/problem";
import type { Listed } from "./argument";
import { cellValue, isBlank, rowsOf } from "./cell";
import { coordinate, feet, feetOrZero, flag, positiveOrZero } from "./read";
import { date } from "./readNamed";

const placed = (argument: string, place: number) => `${argument} (place ${place + 1})`;

/** What an omitted range holds; shared, since a list a call would cost more than most of the arithmetic. */
const NONE: readonly number[] = [];

/** What the cells of a range are read as, but for those that are skipped. */
function each(
  cells: readonly unknown[],
  argument: string,
  isSkipped: (cell: unknown) => boolean,
  read: (cell: unknown, where: string) => number | readonly number[],
): number[] {
  return cells.flatMap((cell, place) => (isSkipped(cell) ? [] : read(cell, placed(argument, place))));
}

/** Areas of a range, or one area; blanks are skipped. */
export function areas(range: unknown, argument: string): Listed<"areas"> {
  return isNone(range) ? NONE : each(rowsOf(range).flat(), argument, isBlank, positiveOrZero);
}

/** A range of 1 or 0, TRUE or FALSE, or blank for no, each as 1 or 0. */
export function flags(range: unknown, argument: string): Listed<"flags"> {
  return isNone(range)
    ? NONE
    : rowsOf(range)
        .flat()
        .map((cell) => Number(flag(cell, argument)));
}

/** Lengths in a range, each cell a length or a list such as "2 x 30; 18.5", in feet; 0 and blanks are skipped. */
export function listed(range: unknown, argument: string, fallback?: readonly number[]): Listed<"lengths"> {
  return each(cellsOf(range, argument, "2 x 30", fallback), argument, isBlankOrZero, (cell, where) => {
    const value = cellValue(cell, where);
    return typeof value === "string" ? listedStrips(value, (length) => feet(length, where)) : feet(cell, where);
  });
}

/** Cells of a range of which some may be blank, but not all where there is nothing to take for them. */
function cellsOf(range: unknown, argument: string, example: string, fallback?: readonly unknown[]): readonly unknown[] {
  const cells = rowsOf(range ?? []).flat();
  if (!cells.every(isBlank)) return cells;
  if (fallback) return fallback;
  throw new Problem("value", messages.missing(argument, example), argument);
}

/** Sides of a range, or one side, in feet; blanks at the end are skipped, one among them is refused. */
export function sides(range: unknown, argument: string): Listed<"sides"> {
  const cells = rowsOf(range).flat();
  while (cells.length > 0 && isBlankOrZero(cells.at(-1))) cells.pop();
  if (cells.length === 0) throw new Problem("value", messages.zero(argument, "18' 6\" or 18.5"), argument);
  return cells.map((cell, place) => feet(cell, placed(argument, place)));
}

/** Widths of one row or one column, in feet, each 0 or more; a blank is refused with its place. */
export function widths(range: unknown, argument: string): Listed<"widths"> {
  const rows = rowsOf(range);
  if (rows.length > 1 && rows.some((row) => row.length > 1))
    throw new Problem("value", messages.oneRowOrColumn(argument), argument);
  const cells = rows.flat();
  if (cells.length === 0)
    throw new Problem("value", messages.missing(argument, "4' 6\" in each of its cells"), argument);
  return cells.map((cell, place) => feetOrZero(cell, placed(argument, place)));
}

/** Points of an N×2 range, in feet; blank rows at the end are skipped, a blank elsewhere is refused. */
export function points(range: unknown, argument: string): readonly Point[] {
  const rows = rowsOf(range);
  while (rows.length > 0 && must(rows.at(-1)).every(isBlank)) rows.pop();
  if (rows.length === 0)
    throw new Problem("value", messages.missing(argument, "x and y in feet, one corner per row"), argument);
  return rows.map((row, place): Point => {
    if (row.length !== 2) throw new Problem("value", messages.notPairs(argument, row.length), argument);
    return [
      coordinate(row[0], `${argument} (row ${place + 1}, x)`),
      coordinate(row[1], `${argument} (row ${place + 1}, y)`),
    ];
  });
}

/** Dates of a range, or one date, as serial numbers; blanks are skipped. */
export function dates(range: unknown, argument: string): Listed<"dates"> {
  return isNone(range) ? NONE : each(rowsOf(range).flat(), argument, isBlankOrZero, date);
}

const isNone = (range: unknown) => range === undefined || range === null;

function isBlankOrZero(cell: unknown): boolean {
  return cell === 0 || isBlank(cell) || (!Array.isArray(cell) && cellValue(cell, "") === 0);
}
