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
 * shape. null and undefined stand for "leave it alone", and so do NaN and the infinities: on the host's wire they become
 * null.
 *
 * @param isAllowed Tells a value that a cell can take.
 * @throws HostError with the host's code where the shape or a value is wrong.
 */
export function shaped<T>(area: Area, given: unknown, isAllowed: (value: unknown) => value is T): (T | undefined)[][] {
  const { rowCount, columnCount } = carriable(area);
  const one = (value: unknown): T | undefined => {
    if (value === null || value === undefined || isNoNumber(value)) return undefined;
    if (!isAllowed(value)) throw refuse("InvalidArgument", "A cell takes text, a number or a truth value.");
    return value;
  };
  if (!Array.isArray(given)) {
    const value = one(given);
    return Array.from({ length: rowCount }, () => Array.from({ length: columnCount }, () => value));
  }
  if (!given.every((row) => Array.isArray(row))) throw wrongSize();
  for (const row of given) checkSize(area, given.length, row.length);
  return given.map((row: unknown[]) => Array.from(row, one));
}

/**
 * @throws HostError where a table has not as many rows and columns as the area that it is written into.
 */
export function checkSize(area: Area, rowCount: number, columnCount: number): void {
  if (rowCount !== area.rowCount || columnCount !== area.columnCount) throw wrongSize();
}

function wrongSize() {
  const advice = "The number of rows or columns in the input array doesn't match the size or dimensions of the range.";
  return refuse("InvalidArgument", advice);
}

/** The most cells that the host's client library writes at once. */
const mostAtOnce = 1500;

/**
 * The parts in which a large table is written, whole rows of about {@link mostAtOnce} cells together; none for a table
 * that is written at once. The host's client library does so, and sends the parts in one request.
 */
export function partsOf(given: unknown): { readonly row: number; readonly rows: readonly unknown[] }[] {
  if (!Array.isArray(given) || !Array.isArray(given[0]) || given.length * given[0].length <= mostAtOnce) return [];
  const size = Math.max(1, Math.round(mostAtOnce / given[0].length));
  return Array.from({ length: Math.ceil(given.length / size) }, (_, part) => {
    return { row: part * size, rows: given.slice(part * size, (part + 1) * size) };
  });
}

export function isCellValue(value: unknown): value is string | number | boolean {
  return typeof value === "string" || typeof value === "boolean" || typeof value === "number";
}

function isNoNumber(value: unknown): boolean {
  return typeof value === "number" && !Number.isFinite(value);
}

export function isText(value: unknown): value is string {
  return typeof value === "string";
}
