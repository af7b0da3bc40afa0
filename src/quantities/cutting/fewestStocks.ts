import { dive } from "./dive";
import { improve } from "./improve";
import { Incumbent } from "./incumbent";
import type { Job, Pieces } from "./job";
import { quickBound } from "./quickBound";
import { quickPlan } from "./quickPlan";
import { search } from "./search";
import { Steps, StepsSpent } from "./steps";

/** With more sizes than this, haggling comes before fractional plans, which take longer the more sizes there are. */
const FEW_SIZES = 24;
/** More sizes than this are more than can be searched within the steps. */
const MOST_SIZES = 600;
/** Each stock is a level of the search; deeper than this no machine should go. */
const DEEPEST_SEARCH = 500;
const ROUNDS = 20;
const MORE_ROUNDS = 40;

/**
 * The fewest stock lengths for the pieces: quick answers first, and a proof as soon as one of them meets the bound.
 *
 * @param allowed steps that may be taken; where they run out, the plan is the best found.
 */
export function fewestStocks(job: Job, pieces: Pieces, allowed: number): Incumbent {
  const incumbent = new Incumbent(quickPlan(job, pieces), quickBound(job, pieces));
  const steps = new Steps(allowed);
  const isLong = job.sizes.length > FEW_SIZES;
  const pool = incumbent.plan.map(({ pattern }) => pattern);
  try {
    if (job.sizes.length > MOST_SIZES) return incumbent;
    if (isLong) improve(job, pieces, ROUNDS, incumbent, steps);
    for (const roundUp of [0.5, 1]) dive(job, pieces, roundUp, pool, incumbent, steps);
    if (isLong) improve(job, pieces, MORE_ROUNDS, incumbent, steps);
    while (incumbent.isOpen && incumbent.atLeast <= DEEPEST_SEARCH) {
      const plan = search(job, pieces, incumbent.atLeast, pool, steps);
      if (plan) incumbent.offer(plan);
      else incumbent.prove(incumbent.atLeast + 1);
    }
  } catch (reason) {
    if (!(reason instanceof StepsSpent)) throw reason;
  }
  return incumbent;
}
