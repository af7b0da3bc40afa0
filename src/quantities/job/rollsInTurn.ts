import { endLapOf } from "../fabric";
import { WHOLE_TOLERANCE } from "../whole";
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
  const rolls: StockCut[][] = [];
  const leftOver: number[] = [];
  let leftFt = 0;
  let pieces = 0;
  for (const { bed, part, lengthFt, endLapIn } of strips) {
    const lapFt = endLapOf(rollLengthFt, endLapIn);
    const slack = WHOLE_TOLERANCE * lengthFt;
    let toLayFt = lengthFt;
    for (let done = false; !done; ) {
      if (leftFt <= lapFt + slack) {
        rolls.push([]);
        leftFt = rollLengthFt;
      }
      done = leftFt >= toLayFt - slack;
      const cutFt = done ? toLayFt : leftFt;
      rolls.at(-1)!.push({ bed, part, lengthFt: cutFt });
      pieces++;
      leftFt = Math.max(0, leftFt - cutFt);
      leftOver[rolls.length - 1] = leftFt;
      toLayFt -= cutFt - lapFt;
    }
  }
  return {
    stocks: rolls.map((cuts, roll) => ({ cuts, leftOverFt: leftOver[roll] ?? 0 })),
    moreJoints: pieces - strips.length,
  };
}
