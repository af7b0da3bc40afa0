import type { Incumbent } from "./incumbent";
import { type Cut, isDone, type Job, type Pattern, type Pieces, stocksIn, timesWithin, without } from "./job";
import { quickPlan } from "./quickPlan";
import { relax } from "./relax";
import type { Steps } from "./steps";

/** How near the cost of a fractional plan must come to what is proven. */
const NEAR = 1e-4;

/**
 * Whole plans by rounding fractional ones: what is cut whole times is settled, of the rest what is cut more than
 * `roundUp` times, and at least one; then the pieces left are planned again. What is proven on the way is kept.
 */
export function dive(
  job: Job,
  pieces: Pieces,
  roundUp: number,
  pool: Pattern[],
  incumbent: Incumbent,
  steps: Steps,
): void {
  const settled: Cut[] = [];
  let rest = pieces;
  while (!isDone(rest) && incumbent.isOpen) {
    const relaxed = relax(
      job,
      rest,
      pool,
      steps,
      (value, cost) => Math.ceil(value) >= Math.ceil(cost - NEAR) || cost - value < NEAR,
    );
    const needed = stocksIn(settled) + Math.ceil(relaxed.value);
    if (settled.length === 0) incumbent.prove(needed);
    if (needed >= incumbent.stocks) return;
    const before = settled.length;
    for (const { pattern, times } of [...relaxed.plan].sort((a, b) => b.times - a.times)) {
      const wholeTimes = Math.floor(times + NEAR);
      const wanted = wholeTimes === 0 && (times >= roundUp || settled.length === before) ? 1 : wholeTimes;
      const possible = Math.min(wanted, timesWithin(rest, pattern));
      if (possible === 0) continue;
      settled.push({ pattern, times: possible });
      rest = without(rest, pattern, possible);
    }
    incumbent.offer([...settled, ...quickPlan(job, rest)]);
  }
}
