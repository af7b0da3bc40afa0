import { messages } from "../quantities/messages";
import { Problem } from "../quantities/problem";

/**
 * The plain value of one cell: out of its 1×1 range, out of a data type's card, and undefined for a blank,
 * whichever way the host sends blanks. A 0 is left as it is: whether it is a blank depends on the argument.
 *
 * @throws Problem for a range of several cells.
 */
export function cellValue(value: unknown, argument: string): unknown {
  let given = value;
  for (let depth = 0; depth < 2 && Array.isArray(given); depth++) {
    if (given.length > 1) throw new Problem("value", messages.oneCell(argument), argument);
    given = given[0];
  }
  if (typeof given === "object" && given !== null && "basicValue" in given) given = given.basicValue;
  if (given === null || (typeof given === "string" && given.trim() === "")) return undefined;
  return given;
}

/** Whether a cell is blank, for an argument where 0 is a value. */
export function isBlank(value: unknown): boolean {
  return !Array.isArray(value) && cellValue(value, "") === undefined;
}

/** The cells of a range as rows; a single value counts as a range of one cell, a blank as one of none. */
export function rowsOf(range: unknown): unknown[][] {
  if (Array.isArray(range)) return range.map((row) => (Array.isArray(row) ? row : [row]));
  return isBlank(range) ? [] : [[range]];
}
