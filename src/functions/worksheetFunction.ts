import type { Argument, ValuesOf } from "./argument";
import { cellError, sound } from "./cellError";

/** A cell of a list that a function returns. */
export type Cell = string | number;

/** A worksheet function as the host calls it, with the arguments that it reads. */
export interface WorksheetFunction<Arguments extends readonly Argument[] = readonly Argument[], Result = unknown> {
  (...given: unknown[]): Result;
  readonly takes: Arguments;
}

/**
 * A worksheet function that gives one number.
 *
 * @param work the arithmetic. It gets each argument as it was read, in order.
 * @param takes the arguments, in the order of the call. The host may send more than these; they are ignored.
 * @example worksheetFunction(stoneYards, area, stoneDepthIn, waste)(108, 3) // 1
 */
export function worksheetFunction<const Arguments extends readonly Argument[]>(
  work: (...values: ValuesOf<Arguments>) => number,
  ...takes: Arguments
): WorksheetFunction<Arguments, number> {
  return cellFunction((...values) => sound(work(...(values as ValuesOf<Arguments>))), takes);
}

/** A worksheet function that gives a list: a row of headings, and rows below it. */
export function worksheetList<const Arguments extends readonly Argument[]>(
  work: (...values: ValuesOf<Arguments>) => Cell[][],
  ...takes: Arguments
): WorksheetFunction<Arguments, Cell[][]> {
  return cellFunction((...values) => work(...(values as ValuesOf<Arguments>)), takes);
}

function cellFunction<Arguments extends readonly Argument[], Result>(
  work: (...values: unknown[]) => Result,
  takes: Arguments,
): WorksheetFunction<Arguments, Result> {
  const called = (...given: unknown[]) => {
    try {
      return work(...valuesOf(takes, given));
    } catch (reason) {
      throw cellError(reason);
    }
  };
  return Object.assign(called, { takes });
}

/**
 * What arguments are read as.
 *
 * @throws Problem for the first that can't be read.
 */
export function valuesOf(takes: readonly Argument[], given: readonly unknown[]): unknown[] {
  return takes.map(({ name, read, fallback, most }, place) => read(given[place], name, fallback, most));
}
