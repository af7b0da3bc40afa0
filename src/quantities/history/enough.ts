import { orderUp } from "../stoneAmounts";
import { WHOLE_TOLERANCE } from "../whole";
import { jobRatios } from "./jobRatios";
import { FEWEST_JOBS } from "./learn";
import { measureOf } from "./measures";
import type { PastEntry } from "./pastEntry";

/** A stone order as it is about to be placed. */
export interface StoneOrder {
  /** Short tons without waste. */
  readonly netTons: number;
  readonly orderTons: number;
  /** The yard sells in steps of so many tons, more than 0. */
  readonly stepTons: number;
}

/**
 * How an order like this would have fared on the office's past jobs: each took so much more or less stone than its net
 * amount, and the order covers so much.
 *
 * @param entries of past jobs; @param wasteNow for jobs that don't say by which share they were estimated.
 * @returns a sentence; undefined for fewer past jobs than a rate is learned from.
 * @source Common practice: the order is held against what past jobs took.
 * @example // "Short on 2 of your last 14 jobs; 0.5 tons more would have covered all 14."
 */
export function wouldBeEnough(
  entries: readonly PastEntry[],
  wasteNow: number,
  { netTons, orderTons, stepTons }: StoneOrder,
): string | undefined {
  const { jobs } = jobRatios(
    entries.filter(({ measure }) => measure === "stoneTons"),
    measureOf("stoneTons"),
    wasteNow,
  );
  if (jobs.length < FEWEST_JOBS || netTons <= 0) return undefined;
  const taken = jobs.map(({ ratio }) => ratio * netTons);
  const short = taken.filter((tons) => tons > orderTons * (1 + WHOLE_TOLERANCE)).length;
  if (short === 0) return `An order like this would have covered all ${jobs.length} of your past jobs.`;
  const more = orderUp(Math.max(...taken) - orderTons, stepTons);
  const of = `short on ${short} of your last ${jobs.length} jobs`;
  return `An order like this would have been ${of}; ${more} tons more would have covered all ${jobs.length}.`;
}
