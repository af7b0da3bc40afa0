// biome-ignore-all lint/style/noNonNullAssertion: the innermost loops of the search, where each place is within its array

import { type Cut, type Job, type Pattern, type Pieces, sumOver } from "./job";
import type { Steps } from "./steps";

/** Below this a number is what binary arithmetic left over from 0. */
const NOISE = 1e-9;
/** Nearer than this, two rows run out together, and the larger step is the safer divisor. */
const TIE = 1e-12;
/** By how much pieces are overstated so that no two rows run out at once, which would let the method go in rings. */
const NUDGE = 1e-6;
const GOLDEN_RATIO = (Math.sqrt(5) - 1) / 2;
const STEPS_PER_TERM = 1 / 8;

export interface Tableau {
  /** What a piece of each size is worth while the plan is as it is. */
  readonly prices: Float64Array;
  readonly cost: () => number;
  /** What a pattern saves for each time it is cut, once it is taken in; over 0 where that is worth while. */
  readonly gainOf: (pattern: Pattern) => number;
  /** Takes the pattern in, in place of the one it drives out; false where rounding has left none to drive out. */
  readonly take: (pattern: Pattern, gain: number) => boolean;
  /** Lets more pieces of a size be cut than are asked for. */
  readonly takeSurplus: (size: number, gain: number) => boolean;
  readonly plan: () => Cut[];
}

/**
 * The cheapest plan in fractions from the patterns taken in so far: the revised simplex method with an explicit
 * inverse. It begins with a pattern for each size alone; every size has a row, and needs a piece at least.
 */
export function tableauOf(job: Job, pieces: Pieces, steps: Steps): Tableau {
  const rows = pieces.length;
  /** Element (row, column) is at column × rows + row. */
  const inverse = new Float64Array(rows ** 2);
  const amounts = new Float64Array(rows);
  const prices = new Float64Array(rows);
  const way = new Float64Array(rows);
  let cost = 0;
  /** The pattern of each row; null where more than the pieces are cut, which costs nothing. */
  const basis = job.sizes.map((length, size): Pattern | null => {
    const copies = Math.min(pieces[size]!, Math.floor(job.capacity / length));
    inverse[size * rows + size] = 1 / copies;
    prices[size] = 1 / copies;
    amounts[size] = (pieces[size]! + NUDGE * (1 + ((size * GOLDEN_RATIO) % 1))) / copies;
    cost += amounts[size]!;
    return { at: [size], copies: [copies] };
  });

  function addToWay(size: number, copies: number): void {
    for (let row = 0; row < rows; row++) way[row]! += copies * inverse[size * rows + row]!;
  }

  /** The row that limits how often what comes in can be cut. */
  function firstToRunOut(): number {
    let found = -1;
    let fewest = Number.POSITIVE_INFINITY;
    for (let row = 0; row < rows; row++) {
      const step = way[row]!;
      if (step <= NOISE) continue;
      const times = amounts[row]! / step;
      const isTie = Math.abs(times - fewest) <= TIE;
      if (isTie ? step > way[found]! : times < fewest) {
        found = row;
        fewest = times;
      }
    }
    return found;
  }

  function exchange(pattern: Pattern | null, gain: number): boolean {
    const leaving = firstToRunOut();
    if (leaving < 0) return false;
    const step = way[leaving]!;
    const times = amounts[leaving]! / step;
    let terms = rows;
    for (let start = 0; start < rows ** 2; start += rows) {
      const share = inverse[start + leaving]! / step;
      if (share === 0) continue;
      terms += rows;
      for (let row = 0; row < rows; row++) inverse[start + row]! -= way[row]! * share;
      inverse[start + leaving] = share;
      prices[start / rows]! -= gain * share;
    }
    for (let row = 0; row < rows; row++) amounts[row] = Math.max(0, amounts[row]! - way[row]! * times);
    amounts[leaving] = times;
    basis[leaving] = pattern;
    cost -= gain * times;
    steps.spend(1 + terms * STEPS_PER_TERM);
    return true;
  }

  return {
    prices,
    cost: () => cost,
    gainOf: (pattern) => sumOver(pattern, prices) - 1,
    take: (pattern, gain) => {
      way.fill(0);
      pattern.at.forEach((size, n) => {
        addToWay(size, pattern.copies[n]!);
      });
      return exchange(pattern, gain);
    },
    takeSurplus: (size, gain) => {
      way.fill(0);
      addToWay(size, -1);
      return exchange(null, gain);
    },
    // From the pieces as they are, without the nudge.
    plan: () =>
      basis.flatMap((pattern, row) => {
        const times = pieces.reduce((sum, count, column) => sum + count * inverse[column * rows + row]!, 0);
        return pattern && times > NUDGE ? [{ pattern, times }] : [];
      }),
  };
}
