import type { Area } from "../grid/port";
import { refuse } from "./error";

/** The largest request that the host takes, in cells; a whole column or sheet is beyond it. */
const mostCells = 1_000_000;

/**
 * Lets an area through whose cells can be carried in one request.
 *
 * @throws HostError where it is too large, such as a whole sheet.
 */
export function carriable(area: Area): Area {
  if (area.rowCount * area.columnCount > mostCells) throw refuse("InvalidArgument", "The range is too large to carry.");
  return area;
}

/**
 * What is written into a range, cell by cell: one value is meant for every cell, and a table must have the range's
 * shape. null and undefined stand for "leave it alone".
 *
 * @param isAllowed Tells a value that a cell can take.
 * @throws HostError with the host's code where the shape or a value is wrong.
 */
export function shaped<T>(area: Area, given: unknown, isAllowed: (value: unknown) => value is T): (T | undefined)[][] {
  const { rowCount, columnCount } = carriable(area);
  const one = (value: unknown): T | undefined => {
    if (value === null || value === undefined) return undefined;
    if (!isAllowed(value)) throw refuse("InvalidArgument", "A cell takes text, a number or a truth value.");
    return value;
  };
  if (!Array.isArray(given)) {
    const value = one(given);
    return Array.from({ length: rowCount }, () => Array.from({ length: columnCount }, () => value));
  }
  const fits = given.length === rowCount && given.every((row) => Array.isArray(row) && row.length === columnCount);
  if (!fits) {
    const advice =
      "The number of rows or columns in the input array doesn't match the size or dimensions of the range.";
    throw refuse("InvalidArgument", advice);
  }
  return given.map((row: unknown[]) => Array.from(row, one));
}

export function isCellValue(value: unknown): value is string | number | boolean {
  return (
    typeof value === "string" || typeof value === "boolean" || (typeof value === "number" && Number.isFinite(value))
  );
}

export function isText(value: unknown): value is string {
  return typeof value === "string";
}
