import { must } from "../must";
import { eachPattern } from "./eachPattern";
import { type Cut, type Job, type Pattern, type Pieces, sumOfPieces, timesWithin } from "./job";
import type { Steps } from "./steps";
import { tableauOf } from "./tableau";

/** What one stock length is worth, in the whole numbers that the proof is done in. */
const STOCK = 2 ** 30;
/** A pattern worth less than this is worth no more than a stock, but for the rounding of prices. */
const OVER_A_STOCK = STOCK + 2 ** 8;
const LEAST_GAIN = 1e-7;
/** How far prices are drawn back to the best proven ones, to keep them from swinging; less each time, then not. */
const PULL = 0.8;
const LEAST_PULL = 0.1;

export interface Relaxed {
  /** The fractional plan, as good as it got. */
  readonly plan: readonly Cut[];
  /** A whole-number worth of each size, of which no pattern gathers more than `most`. */
  readonly worth: readonly number[];
  readonly most: number;
  /** What the pieces are worth in stocks, at that worth: rounded up, the stocks they need at least. */
  readonly value: number;
}

/**
 * The cheapest plan when patterns may be cut in fractions, and what it proves about whole plans: column generation
 * after Gilmore and Gomory, A Linear Programming Approach to the Cutting-Stock Problem (1961).
 *
 * The proof does not lean on binary fractions: prices are rounded down to whole numbers, the dearest pattern at these
 * is found exactly, and worth of all pieces ÷ worth of that pattern is a lower bound for any prices (Farley, A Note on
 * Bounding a Class of Linear Programming Problems, 1990). Both from memory.
 *
 * @param pool patterns to begin with; new ones are added.
 * @param isEnough told the value proven and the cost of the plan so far, says whether to stop before the best.
 */
export function relax(
  whole: Job,
  allPieces: Pieces,
  pool: Pattern[],
  steps: Steps,
  isEnough: (value: number, cost: number) => boolean,
): Relaxed {
  const present = allPieces.flatMap((count, size) => (count > 0 ? [size] : []));
  const place = new Map(present.map((size, n) => [size, n]));
  const job = { capacity: whole.capacity, sizes: present.map((size) => must(whole.sizes[size])) };
  const pieces = present.map((size) => must(allPieces[size]));
  const narrow = ({ at, copies }: Pattern): Pattern => ({ at: at.map((size) => must(place.get(size))), copies });
  const widen = ({ at, copies }: Pattern): Pattern => ({ at: at.map((n) => must(present[n])), copies });

  const known = pool.filter((pattern) => timesWithin(allPieces, pattern) > 0).map(narrow);
  const tableau = tableauOf(job, pieces, steps);
  let trusted = job.sizes.map((length) => length / job.capacity);
  let best = { worth: pieces.map(() => 0), most: OVER_A_STOCK, value: 0 };

  /** The dearest pattern at prices drawn towards the trusted ones, if it is worth taking in at the true ones. */
  function priceOut(pull: number): Pattern | undefined {
    const worth = trusted.map((price, size) =>
      Math.floor((pull * price + (1 - pull) * Math.max(0, must(tableau.prices[size]))) * STOCK),
    );
    let most = OVER_A_STOCK;
    let dearest: Pattern | undefined;
    const options = { room: job.capacity, worth, least: most + 1, want: "dearest" } as const;
    eachPattern(job, pieces, options, steps, (pattern, sum) => {
      most = sum;
      dearest = pattern;
      return sum + 1;
    });
    const value = sumOfPieces(pieces, worth) / most;
    if (value > best.value) {
      best = { worth, most, value };
      trusted = worth.map((each) => each / most);
    }
    return dearest && tableau.gainOf(dearest) > LEAST_GAIN ? dearest : undefined;
  }

  /** Takes in what gains most of all that is known; false where nothing gains. */
  function improve(): boolean {
    steps.spend(1 + known.length / 2);
    let gain = LEAST_GAIN;
    let pattern: Pattern | undefined;
    let surplus = -1;
    tableau.prices.forEach((price, size) => {
      if (-price > gain) {
        gain = -price;
        surplus = size;
      }
    });
    for (const each of known) {
      const its = tableau.gainOf(each);
      if (its > gain) {
        gain = its;
        pattern = each;
      }
    }
    if (pattern) return tableau.take(pattern, gain);
    return surplus >= 0 && tableau.takeSurplus(surplus, gain);
  }

  for (;;) {
    while (improve());
    let fresh: Pattern | undefined;
    for (let pull = PULL; ; pull = pull > LEAST_PULL ? pull / 2 : 0) {
      fresh = priceOut(pull);
      if (fresh || pull === 0 || isEnough(best.value, tableau.cost())) break;
    }
    if (!fresh || isEnough(best.value, tableau.cost())) break;
    known.push(fresh);
    pool.push(widen(fresh));
  }

  const worth = allPieces.map(() => 0);
  present.forEach((size, n) => {
    worth[size] = must(best.worth[n]);
  });
  return {
    plan: tableau.plan().map(({ pattern, times }) => ({ pattern: widen(pattern), times })),
    worth,
    most: best.most,
    value: best.value,
  };
}
