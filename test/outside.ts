import { expect, test } from "vitest";
import * as worksheet from "../src/functions/index";

/** The worksheet functions by their ids. A check is handed them as `BED`, so that one of them can be spoiled. */
export type Functions = typeof worksheet;
export type FunctionId = keyof Functions;

/** A comparison of worksheet functions with something that is not ours. */
export interface OutsideCheck {
  readonly what: string;
  /** The standard, table, book or library; or how it was worked by hand. "From memory" and "common practice" in those words. */
  readonly source: string;
  /** Fails where the functions and the source differ. */
  readonly compare: (BED: Functions) => void;
}

/**
 * A single figure from outside, and the call that must give it.
 *
 * @param source where the figure comes from.
 * @param is the figure as published or worked.
 * @param within how far off the call may be; left out, a billionth of the figure.
 * @example figure("NIST Handbook 44, Appendix C", (BED) => BED.FEET("2 yd"), 6)
 */
export function figure(
  source: string,
  call: (BED: Functions) => number,
  is: number,
  within = Math.abs(is) * 1e-9,
): OutsideCheck {
  const formula = call
    .toString()
    .replace(/^\(?BED\)? => /, "")
    .replace(/\s+/g, " ");
  const compare = (BED: Functions) => expect(Math.abs(call(BED) - is)).toBeLessThanOrEqual(within);
  return { what: `${formula} is ${is}`, source, compare };
}

/** The tests of test/references: each names the source that it compares with. */
export function outside(source: string, what: string, compare: () => void | Promise<void>): void {
  if (!hasSource(source)) throw new Error(`Name the source of "${what}".`);
  test(`${what} (${source})`, compare);
}

const hasSource = (source: string | undefined) => /\p{L}{3}/u.test(source ?? "");

/**
 * The functions that are truly held to something from outside: of these, at least one check with a source passes as
 * things are, and fails once the function gives 1 % more. An import, or a call whose result no one looks at, is no check.
 */
export function heldFromOutside(checks: readonly OutsideCheck[]): Set<FunctionId> {
  const held = new Set<FunctionId>();
  for (const { source, compare } of checks) {
    if (!hasSource(source)) continue;
    const called = new Set<FunctionId>();
    const recording = withEach((id, given) => {
      called.add(id);
      return callOf(id)(...given);
    });
    if (!passes(() => compare(recording))) continue;
    for (const id of called) {
      if (held.has(id)) continue;
      const spoiled = { ...worksheet, [id]: (...given: unknown[]) => onePercentMore(callOf(id)(...given)) };
      if (!passes(() => compare(spoiled as Functions))) held.add(id);
    }
  }
  return held;
}

const callOf = (id: FunctionId) => worksheet[id] as (...given: unknown[]) => unknown;

function withEach(call: (id: FunctionId, given: unknown[]) => unknown): Functions {
  const ids = Object.keys(worksheet) as FunctionId[];
  return Object.fromEntries(ids.map((id) => [id, (...given: unknown[]) => call(id, given)])) as unknown as Functions;
}

function onePercentMore(result: unknown): unknown {
  if (Array.isArray(result)) return result.map(onePercentMore);
  return typeof result === "number" ? result * 1.01 : result;
}

function passes(compare: () => void): boolean {
  try {
    compare();
    return true;
  } catch {
    return false;
  }
}
