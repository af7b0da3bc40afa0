import { messages } from "../messages";
import { must } from "../must";
import { Problem } from "../problem";
import { fewestStocks } from "./fewestStocks";
import type { Pattern } from "./job";
import { cuttingMessages } from "./messages";
import { inWholeUnits } from "./units";

export interface CutList {
  /** Length of each stock length as it is bought, in feet, over 0. */
  readonly stockLength: number;
  /** Lengths of the pieces, in feet, each over 0 and no longer than the stock. */
  readonly lengths: readonly number[];
  /** How many of each length, whole, 0 or more. Left out: 1 each. */
  readonly counts?: readonly number[];
  /** What each cut takes, in feet, 0 or more. Left out: 0. */
  readonly loss?: number;
}

export interface CutStock {
  /** What is cut from it, longest first: places in the list of lengths. */
  readonly cuts: readonly number[];
  /** What remains of it after the last cut, in feet. */
  readonly leftOver: number;
}

export interface CutPlan {
  /** Stock lengths in the plan. */
  readonly count: number;
  /** No plan takes fewer than this. */
  readonly atLeast: number;
  /** Whether the plan is the best there is: count and atLeast are the same. */
  readonly proven: boolean;
  /** A stock length each, the fullest first. */
  readonly stocks: readonly CutStock[];
}

/** More pieces than any job has; beyond it some number is a typing error. */
const MOST_PIECES = 10_000;
/** About two seconds on a slow machine. A list of a real job takes a few thousandths of it. */
export const USUAL_STEPS = 50_000_000;

/**
 * The fewest stock lengths (rolls, edging pieces) from which all the pieces can be cut without joints, and how. The
 * true minimum, proven; where the proof would take too long, the best plan found and how few it might be.
 *
 * A cut parts the piece from what is left, and takes the loss. A piece that ends where the stock ends, or within one
 * loss of it, needs nothing left behind it: so n pieces fit where they and n − 1 losses are no longer than the stock.
 * What is left over is the stock less the pieces and n losses, and nothing where that is under 0.
 *
 * An exact fit is one: a stock counts as longer by a share of 1e-9, the tolerance of all counts here.
 *
 * @param list what to cut from what; all lengths in feet.
 * @param steps how much work may be done. Steps and not time, so that the same list gives the same plan anywhere.
 * @throws Problem that names a length over the stock, a length not over 0, or a count not whole.
 * @example planCuts({ stockLength: 16, lengths: [8, 7, 6, 5, 4, 2] }).count // 2: 8 6 2 and 7 5 4
 */
export function planCuts(list: CutList, steps = USUAL_STEPS): CutPlan {
  const { stockLength, lengths, counts = lengths.map(() => 1), loss = 0 } = list;
  check(stockLength, lengths, counts, loss);
  const wanted = lengths.map((_, place) => place).filter((place) => must(counts[place]) > 0);
  if (wanted.length === 0) return { count: 0, atLeast: 0, proven: true, stocks: [] };
  const whole = inWholeUnits(
    stockLength,
    // With any larger loss one piece comes from each stock, as with this one.
    Math.min(loss, stockLength),
    wanted.map((place) => must(lengths[place])),
  );

  /** For each size the places in the list that are still to be served, one for each piece, the last one first. */
  const waiting = new Map<number, number[]>();
  wanted.forEach((place, n) => {
    const size = must(whole.lengths[n]) + whole.loss;
    if (size > whole.capacity) {
      const message = cuttingMessages.overTheStock(nameOf("lengths", place), must(lengths[place]), stockLength);
      throw new Problem("value", message, "lengths");
    }
    if (!waiting.has(size)) waiting.set(size, []);
    for (let piece = 0; piece < must(counts[place]); piece++) must(waiting.get(size)).push(place);
  });
  for (const places of waiting.values()) places.reverse();
  const sizes = [...waiting.keys()].sort((a, b) => b - a);
  const pieces = sizes.map((size) => must(waiting.get(size)).length);
  const { plan, atLeast, stocks } = fewestStocks({ capacity: whole.capacity, sizes }, pieces, steps);

  const cutOne = ({ at, copies }: Pattern): CutStock => {
    const inOrder = at.map((size, n) => ({ size, copies: must(copies[n]) })).sort((a, b) => a.size - b.size);
    const used = inOrder.reduce((sum, cut) => sum + cut.copies * must(sizes[cut.size]), 0);
    return {
      cuts: inOrder.flatMap((cut) =>
        must(waiting.get(must(sizes[cut.size])))
          .splice(-cut.copies)
          .reverse(),
      ),
      leftOver: whole.lengthOf(Math.max(0, whole.stock - used)),
    };
  };
  const cut = plan.flatMap(({ pattern, times }) => Array.from({ length: times }, () => cutOne(pattern)));
  cut.sort((a, b) => a.leftOver - b.leftOver);
  return { count: stocks, atLeast, proven: stocks === atLeast, stocks: cut };
}

const nameOf = (argument: string, place: number) => `${argument} (place ${place + 1})`;

function check(stockLength: number, lengths: readonly number[], counts: readonly number[], loss: number): void {
  const refuse = (argument: string, message: string): never => {
    throw new Problem("value", message, argument);
  };
  const isLength = (value: number | undefined) => value !== undefined && value > 0 && value <= Number.MAX_VALUE / 2;
  if (!isLength(stockLength)) refuse("stock_length", messages.notALength("stock_length", stockLength));
  if (!(loss >= 0)) refuse("loss_in", messages.negative("loss_in", loss));
  let total = 0;
  // Up to the longer list, so that a count without a length is refused like a length without a count.
  for (let place = 0; place < Math.max(lengths.length, counts.length); place++) {
    if (!isLength(lengths[place])) refuse("lengths", messages.notALength(nameOf("lengths", place), lengths[place]));
    const count = counts[place] ?? Number.NaN;
    if (!(Number.isInteger(count) && count >= 0))
      refuse("counts", messages.notWhole(nameOf("counts", place), counts[place], Number.POSITIVE_INFINITY));
    total += count;
  }
  if (total > MOST_PIECES) refuse("counts", cuttingMessages.tooMany(MOST_PIECES));
}
