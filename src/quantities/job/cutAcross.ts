import { planCuts } from "../cutting/planCuts";
import { must } from "../must";
import { INCHES_PER_FOOT } from "../units";
import { addedUp } from "./addedUp";
import type { Cutting, StockCut, WholePieces } from "./order";

/** What the runs or strips of beds are made of, before anything is put together. */
export interface CutsOfPart {
  readonly bed: string;
  /** The number in the bed's drawing: of the last piece of a run, or of a cut of fabric. */
  readonly part: number;
  readonly whole: number;
  readonly lastFt: number | undefined;
}

/**
 * Work allowed for one list of cuts, in steps of the solver: well under a second. The list of a job of twenty beds
 * takes a small part of it; where it runs out, the best plan found stands, and says that it is not proven.
 */
export const STEPS_FOR_A_JOB = 2_000_000;

/**
 * Cuts the last pieces of all runs or strips from as few stock lengths as they fit in, whichever bed they belong to.
 * As each last piece fits a stock of its own, this never takes more than cutting bed by bed.
 *
 * @param stockLengthFt more than 0.
 * @param lossIn what each cut takes, 0 or more.
 */
export function cutAcross(
  stockLengthFt: number,
  parts: readonly CutsOfPart[],
  lossIn: number,
  steps = STEPS_FOR_A_JOB,
): Cutting & { readonly count: number } {
  const cuts: StockCut[] = parts.flatMap(({ bed, part, lastFt }) =>
    lastFt === undefined ? [] : [{ bed, part, lengthFt: lastFt }],
  );
  const lengths = cuts.map(({ lengthFt }) => lengthFt);
  const plan = planCuts({ stockLength: stockLengthFt, lengths, loss: lossIn / INCHES_PER_FOOT }, steps);
  const whole = wholePieces(stockLengthFt, parts);
  return {
    count: plan.count + addedUp(whole.map(({ count }) => count)),
    whole,
    stocks: plan.stocks.map((stock) => ({
      cuts: stock.cuts.map((place) => must(cuts[place])),
      leftOverFt: stock.leftOver,
    })),
    moreJoints: 0,
    proven: plan.proven,
  };
}

/** Each last piece from a stock of its own. */
export function cutBedByBed(stockLengthFt: number, parts: readonly CutsOfPart[]): Cutting {
  return {
    whole: wholePieces(stockLengthFt, parts),
    stocks: parts.flatMap(({ bed, part, lastFt }) =>
      lastFt === undefined ? [] : [{ cuts: [{ bed, part, lengthFt: lastFt }], leftOverFt: stockLengthFt - lastFt }],
    ),
    moreJoints: 0,
    proven: true,
  };
}

function wholePieces(lengthFt: number, parts: readonly CutsOfPart[]): WholePieces[] {
  return parts.flatMap(({ bed, part, whole }) => (whole > 0 ? [{ bed, part, count: whole, lengthFt }] : []));
}
