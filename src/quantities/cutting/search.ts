import { fillings } from "./fillings";
import { isDone, type Job, type Pattern, type Pieces, type Plan, stocksIn, timesWithin, without } from "./job";
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
    const found = relaxed.value > left ? null : cutOneAfterAnother(rest, left, relaxed);
    if (!found) tooFew.set(key, left);
    return found;
  }

  function cutOneAfterAnother(rest: Pieces, left: number, relaxed: Relaxed): Plan | null {
    const tried = new Set<string>();
    for (const pattern of likelyFirst(rest, left, relaxed)) {
      const others = without(rest, pattern);
      const key = others.join();
      if (tried.has(key)) continue;
      tried.add(key);
      const plan = cut(others, left - 1);
      if (plan) return [{ pattern, times: 1 }, ...plan];
    }
    return null;
  }

  /** What the fractional plan cuts the longest piece with; only when that fails, all that can matter. */
  function* likelyFirst(rest: Pieces, left: number, relaxed: Relaxed): Generator<Pattern> {
    const longest = rest.findIndex((count) => count > 0);
    const likely = relaxed.plan
      .filter(({ pattern }) => pattern.at.includes(longest) && timesWithin(rest, pattern) > 0)
      .sort((a, b) => b.times - a.times);
    for (const { pattern } of likely) yield pattern;
    yield* fillings(job, rest, left, relaxed, steps);
  }

  return cut(pieces, stocks);
}
