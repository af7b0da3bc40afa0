import { eachPattern } from "./eachPattern";
import { isOutdone } from "./isOutdone";
import {
  isDone,
  type Job,
  type Pattern,
  type Pieces,
  type Plan,
  stocksIn,
  sumOfPieces,
  timesWithin,
  without,
} from "./job";
import { quickBound } from "./quickBound";
import { quickPlan } from "./quickPlan";
import { type Relaxed, relax } from "./relax";
import type { Steps } from "./steps";

/** A fractional plan this near to the stocks at hand cannot prove that they are too few. */
const NEAR = 1e-4;

/**
 * Whether the pieces can be cut from so many stock lengths, for certain: each stock in turn takes the longest piece
 * left, filled up in every way that can matter (bin completion), and relaxed plans show where that is hopeless.
 *
 * @returns a plan, or null where there is none.
 */
export function search(job: Job, pieces: Pieces, stocks: number, pool: Pattern[], steps: Steps): Plan | null {
  /** The most stocks that were found too few for the pieces of the key. */
  const tooFew = new Map<string, number>();

  function cut(rest: Pieces, left: number): Plan | null {
    if (isDone(rest)) return [];
    const quick = quickPlan(job, rest);
    if (stocksIn(quick) <= left) return quick;
    if (quickBound(job, rest) > left) return null;
    const key = rest.join();
    if (left <= (tooFew.get(key) ?? -1)) return null;
    const relaxed = relax(job, rest, pool, steps, (value, cost) => value > left || cost < left + NEAR);
    const found = relaxed.value > left ? null : firstThatWorks(rest, left, relaxed);
    if (!found) tooFew.set(key, left);
    return found;
  }

  function firstThatWorks(rest: Pieces, left: number, relaxed: Relaxed): Plan | null {
    const longest = rest.findIndex((count) => count > 0);
    const tried = new Set<string>();
    const attempt = (pattern: Pattern): Plan | null => {
      const key = without(rest, pattern).join();
      if (tried.has(key)) return null;
      tried.add(key);
      const others = cut(without(rest, pattern), left - 1);
      return others && [{ pattern, times: 1 }, ...others];
    };
    const likely = relaxed.plan
      .filter(({ pattern }) => pattern.at.includes(longest) && timesWithin(rest, pattern) > 0)
      .sort((a, b) => b.times - a.times);
    for (const { pattern } of likely) {
      const plan = attempt(pattern);
      if (plan) return plan;
    }
    for (const pattern of fillings(rest, left, longest, relaxed)) {
      const plan = attempt(pattern);
      if (plan) return plan;
    }
    return null;
  }

  /** Every way to fill up a stock with the longest piece in it that can matter, the dearest first. */
  function fillings(rest: Pieces, left: number, longest: number, { worth, most }: Relaxed): Pattern[] {
    const one: Pattern = { at: [longest], copies: [1] };
    const others = without(rest, one);
    // The other stocks hold no more than `most` each, so this one must hold what is over.
    const least = sumOfPieces(rest, worth) - (left - 1) * most - worth[longest]!;
    const found: { pattern: Pattern; worth: number }[] = [];
    const wish = { room: job.capacity - job.sizes[longest]!, worth, least, want: "all" } as const;
    eachPattern(job, others, wish, steps, (pattern, sum, room) => {
      steps.spend(job.sizes.length);
      if (!isOutdone(job, others, pattern, room)) found.push({ pattern: withOneMore(pattern, longest), worth: sum });
      return least;
    });
    return found.sort((a, b) => b.worth - a.worth).map(({ pattern }) => pattern);
  }

  return cut(pieces, stocks);
}

function withOneMore({ at, copies }: Pattern, size: number): Pattern {
  if (!at.includes(size)) return { at: [size, ...at], copies: [1, ...copies] };
  return { at, copies: copies.map((count, n) => (at[n] === size ? count + 1 : count)) };
}
