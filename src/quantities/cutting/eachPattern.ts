// biome-ignore-all lint/style/noNonNullAssertion: the innermost loops of the search, where each place is within its array

import type { Job, Pattern, Pieces } from "./job";
import { seenBefore } from "./seen";
import type { Steps } from "./steps";

/** Added to a bound worked out in binary arithmetic, so that it may come out high but never low. */
const SAFE_SIDE = 2 ** -10;
/** Steps that it takes to set the sizes in order, for each of them. */
const STEPS_TO_SORT = 4;

export interface PatternOptions {
  /** Length to cut from: a whole stock, or what is left of one. */
  readonly room: number;
  /** A whole number for each size, 0 or more. */
  readonly worth: ArrayLike<number>;
  /** What a pattern must be worth at least. */
  readonly least: number;
  /**
   * "dearest" passes over patterns that are no better than one already found; "all" gives every pattern to which
   * no further piece can be added, sizes worth nothing included.
   */
  readonly want: "dearest" | "all";
}

/**
 * Walks the patterns that fit into a length, are made of the pieces, and are worth enough: best value for its
 * length first.
 *
 * @param found is given each pattern, its worth and the length left over, and answers with the new least worth.
 */
export function eachPattern(
  job: Job,
  pieces: Pieces,
  options: PatternOptions,
  steps: Steps,
  found: (pattern: Pattern, worth: number, room: number) => number,
): void {
  const { worth, want } = options;
  const valueForLength = (size: number) => worth[size]! / job.sizes[size]!;
  const order = job.sizes
    .map((_, size) => size)
    .filter((size) => pieces[size]! > 0 && job.sizes[size]! <= options.room && (want === "all" || worth[size]! > 0))
    .sort((a, b) => valueForLength(b) - valueForLength(a) || a - b);
  const count = order.length;
  steps.spend(1 + STEPS_TO_SORT * count);
  const length = order.map((size) => job.sizes[size]!);
  const value = order.map((size) => worth[size]!);
  const supply = order.map((size) => pieces[size]!);
  const chosen = new Array<number>(count).fill(0);
  /** Shortest length, and length of all pieces, from each place in the order on. */
  const shortest = new Array<number>(count + 1).fill(Number.POSITIVE_INFINITY);
  const total = new Array<number>(count + 1).fill(0);
  for (let n = count - 1; n >= 0; n--) {
    shortest[n] = Math.min(shortest[n + 1]!, length[n]!);
    total[n] = total[n + 1]! + length[n]! * supply[n]!;
  }
  let least = options.least;
  const isAsGood = seenBefore(count);

  function report(sum: number, left: number): void {
    const used = order.map((_, n) => n).filter((n) => chosen[n]! > 0);
    least = found({ at: used.map((n) => order[n]!), copies: used.map((n) => chosen[n]!) }, sum, left);
  }

  /** spurned: the shortest length of which a piece at hand was left out. A full pattern has no room for it. */
  function walk(from: number, left: number, sum: number, spurned: number): void {
    steps.spend(1);
    let n = from;
    while (n < count && length[n]! > left) n = left < shortest[n]! ? count : n + 1;
    if (n === count) {
      if (sum >= least && (want === "dearest" || left < spurned)) report(sum, left);
      return;
    }
    if (want === "dearest" && isAsGood(n, left, sum)) return;
    for (let copies = Math.min(supply[n]!, Math.floor(left / length[n]!)); copies >= 0; copies--) {
      const rest = left - copies * length[n]!;
      const sumSoFar = sum + copies * value[n]!;
      // What comes next in the order is the best value for its length, so no filling is worth more than this.
      const ahead = n + 1 < count ? Math.floor((rest * value[n + 1]!) / length[n + 1]! + SAFE_SIDE) : 0;
      if (sumSoFar + ahead < least) break;
      const spurnedSoFar = copies < supply[n]! ? Math.min(spurned, length[n]!) : spurned;
      if (want === "all" && rest - total[n + 1]! >= spurnedSoFar) break;
      chosen[n] = copies;
      walk(n + 1, rest, sumSoFar, spurnedSoFar);
    }
    chosen[n] = 0;
  }

  walk(0, options.room, 0, Number.POSITIVE_INFINITY);
}
