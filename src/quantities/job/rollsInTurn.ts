import { endLapOf } from "../fabric";
import { must } from "../must";
import { cutRollsInTurn } from "../rollsInTurn";
import type { Stock, StockCut } from "./order";

/** A strip to be cut off rolls. */
export interface StripOfBed {
  readonly bed: string;
  /** Which strip of the bed, from 1. */
  readonly part: number;
  readonly lengthFt: number;
  readonly endLapIn: number;
}

/**
 * Rolls used up one after another, by the rule of BED.FABRIC_ROLLS, for strips of any lengths: where a roll runs out
 * inside a strip the next piece laps it by the strip's end lap, and a remnant no longer than that is scrap.
 *
 * @param strips in the order in which they are cut; each over 0 long.
 * @param rollLengthFt more than every end lap.
 * @returns the rolls, and how many pieces there are more than strips.
 * @throws Problem where an end lap is as long as a roll.
 * @example two strips of 30 ft off rolls of 50 ft, end lap 12 in: 30 + 20 off the first, 11 off the second, 1 more joint
 */
export function rollsInTurn(
  strips: readonly StripOfBed[],
  rollLengthFt: number,
): { readonly stocks: readonly Stock[]; readonly moreJoints: number } {
  const rolls: { readonly cuts: StockCut[]; leftOverFt: number }[] = [];
  let pieces = 0;
  cutRollsInTurn(
    strips.length,
    (strip) => {
      const { lengthFt, endLapIn } = must(strips[strip]);
      return { lengthFt, endLapFt: endLapOf(rollLengthFt, endLapIn) };
    },
    rollLengthFt,
    (strip, _piece, roll, _startsAtFt, lengthFt, leftFt) => {
      const { bed, part } = must(strips[strip]);
      if (roll > rolls.length) rolls.push({ cuts: [], leftOverFt: 0 });
      const last = must(rolls.at(-1));
      last.cuts.push({ bed, part, lengthFt });
      last.leftOverFt = leftFt;
      pieces++;
    },
  );
  return { stocks: rolls, moreJoints: pieces - strips.length };
}
