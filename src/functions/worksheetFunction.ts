import type { Argument, ValuesOf } from "./argument";
import { cellError, sound } from "./cellError";
import { isPositive } from "./read";

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
 * @param takes the arguments, in the order of the call, up to eight. The host may send more than these; they are
 *   ignored.
 * @example worksheetFunction(stoneYards, area, stoneDepthIn, waste)(108, 3) // 1
 */
export function worksheetFunction<const Arguments extends readonly Argument[]>(
  work: (...values: ValuesOf<Arguments>) => number,
  ...takes: Arguments
): WorksheetFunction<Arguments, number> {
  const call = withRead(work as (...values: unknown[]) => number, takes);
  return Object.assign(call as (...given: unknown[]) => number, { takes });
}

/** A worksheet function that gives a list: a row of headings, and rows below it. */
export function worksheetList<const Arguments extends readonly Argument[]>(
  work: (...values: ValuesOf<Arguments>) => Cell[][],
  ...takes: Arguments
): WorksheetFunction<Arguments, Cell[][]> {
  const called = (...given: unknown[]) => {
    try {
      return work(...(valuesOf(takes, given) as ValuesOf<Arguments>));
    } catch (reason) {
      throw cellError(reason);
    }
  };
  return Object.assign(called, { takes });
}

type Eight<Of> = readonly [Of, Of, Of, Of, Of, Of, Of, Of];
type Call = (...given: Eight<unknown>) => number;

/**
 * The work with what its arguments are read as, written out for each count of them: a list of arguments, and another of
 * what they are read as, take several times as long as all the rest of a call. Errors are caught in each, since one
 * place around all of them takes a third more.
 */
function withRead(work: (...values: unknown[]) => number, takes: readonly Argument[]): Call {
  const [one, two, three, four, five, six, seven, eight] = takes as unknown as Eight<Argument>;
  const calls: readonly (Call | undefined)[] = [
    undefined,
    (a) => {
      try {
        return sound(work(read(one, a)));
      } catch (reason) {
        throw cellError(reason);
      }
    },
    (a, b) => {
      try {
        return sound(work(read(one, a), read(two, b)));
      } catch (reason) {
        throw cellError(reason);
      }
    },
    (a, b, c) => {
      try {
        return sound(work(read(one, a), read(two, b), read(three, c)));
      } catch (reason) {
        throw cellError(reason);
      }
    },
    (a, b, c, d) => {
      try {
        return sound(work(read(one, a), read(two, b), read(three, c), read(four, d)));
      } catch (reason) {
        throw cellError(reason);
      }
    },
    (a, b, c, d, e) => {
      try {
        return sound(work(read(one, a), read(two, b), read(three, c), read(four, d), read(five, e)));
      } catch (reason) {
        throw cellError(reason);
      }
    },
    (a, b, c, d, e, f) => {
      try {
        return sound(work(read(one, a), read(two, b), read(three, c), read(four, d), read(five, e), read(six, f)));
      } catch (reason) {
        throw cellError(reason);
      }
    },
    (a, b, c, d, e, f, g) => {
      try {
        return sound(
          work(read(one, a), read(two, b), read(three, c), read(four, d), read(five, e), read(six, f), read(seven, g)),
        );
      } catch (reason) {
        throw cellError(reason);
      }
    },
    (a, b, c, d, e, f, g, h) => {
      try {
        return sound(
          work(
            read(one, a),
            read(two, b),
            read(three, c),
            read(four, d),
            read(five, e),
            read(six, f),
            read(seven, g),
            read(eight, h),
          ),
        );
      } catch (reason) {
        throw cellError(reason);
      }
    },
  ];
  const call = calls[takes.length];
  if (!call) throw new RangeError("A function of one number takes at most eight arguments.");
  return call;
}

const read = (argument: Argument, given: unknown) =>
  argument.isPlain && isPositive(given) ? given : argument.read(given, argument.name, argument.fallback, argument.most);

/**
 * What arguments are read as.
 *
 * @throws Problem for the first that can't be read.
 */
export function valuesOf(takes: readonly Argument[], given: readonly unknown[]): unknown[] {
  return takes.map(({ name, read, fallback, most }, place) => read(given[place], name, fallback, most));
}
