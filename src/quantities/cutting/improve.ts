import { must } from "../must";
import { eachPattern } from "./eachPattern";
import type { Incumbent } from "./incumbent";
import { type Cut, type Job, type Pattern, type Pieces, sumOfPieces, sumOver, timesWithin, without } from "./job";
import { Steps, StepsSpent } from "./steps";

/** Prices as whole numbers are this many times the share of a stock they stand for. */
const PRICE_OF_A_STOCK = 2 ** 20;
const STEPS_FOR_A_STOCK = 500;

/**
 * Plans made stock after stock, each filled with what is dearest at the prices of the day. Where a stock was filled
 * badly its pieces become dearer, so that the next round cuts them sooner.
 *
 * After the sequential value correction of Mukhacheva and others, as Belov and Scheithauer use it (A Branch-and-Cut-
 * and-Price Algorithm for One-Dimensional Stock Cutting, 2006): from memory.
 */
export function improve(job: Job, pieces: Pieces, rounds: number, incumbent: Incumbent, steps: Steps): void {
  const prices = job.sizes.map((length) => overrated(length / job.capacity));
  for (let round = 0; round < rounds && incumbent.isOpen; round++) {
    const plan: Cut[] = [];
    let stocks = 0;
    let rest: number[] = [...pieces];
    let total = sumOfPieces(pieces, job.sizes);
    while (total > 0 && stocks + Math.ceil(total / job.capacity) < incumbent.stocks) {
      const pattern = dearest(job, rest, prices, steps);
      const times = Math.max(1, Math.floor(timesWithin(rest, pattern) / 2));
      plan.push({ pattern, times });
      stocks += times;
      const used = sumOver(pattern, job.sizes);
      total -= used * times;
      pattern.at.forEach((size, n) => {
        const share = must(pattern.copies[n]) / (must(pieces[size]) + must(rest[size]));
        const fresh = overrated(must(job.sizes[size]) / job.capacity) * (job.capacity / used);
        prices[size] = (1 - share) * must(prices[size]) + share * fresh;
      });
      rest = without(rest, pattern, times);
    }
    if (total === 0) incumbent.offer(plan);
  }
}

/** A little over its length for a long piece against short ones: length^(33/32), by square roots alone. */
function overrated(length: number): number {
  let root = length;
  for (let n = 0; n < 5; n++) root = Math.sqrt(root);
  return length * root;
}

/** The dearest pattern, as far as a few steps show. */
function dearest(job: Job, rest: Pieces, prices: readonly number[], steps: Steps): Pattern {
  const worth = prices.map((price) => Math.ceil(price * PRICE_OF_A_STOCK));
  const few = new Steps(STEPS_FOR_A_STOCK + 8 * job.sizes.length);
  let best: Pattern | undefined;
  try {
    eachPattern(job, rest, { room: job.capacity, worth, least: 1, want: "dearest" }, few, (pattern, sum) => {
      best = pattern;
      return sum + 1;
    });
  } catch (reason) {
    if (!(reason instanceof StepsSpent)) throw reason;
  }
  steps.spend(few.taken);
  // The first walk down meets a pattern at once, long before the few steps are spent.
  return must(best);
}
