import { must } from "../quantities/must";
import { Problem } from "../quantities/problem";
import { cutRollsInTurn } from "../quantities/rollsInTurn";
import { layoutMessages as messages } from "./messages";

/** A piece of a cut, as it comes off a roll. */
export interface RollPiece {
  /** Which roll, from 1. */
  readonly roll: number;
  /** Where the piece begins along its cut, in feet. */
  readonly startsAtFt: number;
  readonly lengthFt: number;
}

/** More pieces than any bed takes: beyond it some unit is wrong. */
const MOST_PIECES = 10_000;

/**
 * Takes cuts off rolls, one roll after another, by the rule of BED.FABRIC_ROLLS: where a roll runs out inside a cut
 * the next piece laps it by the end lap, and a remnant no longer than the end lap is scrap.
 *
 * @param lengthsFt the cuts in the order in which they are laid.
 * @returns for each cut its pieces; one piece of each where rolls have no end.
 * @example takeOffRolls([30, 30], 50, 1)[1] // [{ roll: 1, startsAtFt: 0, lengthFt: 20 }, { roll: 2, startsAtFt: 19, lengthFt: 11 }]
 */
export function takeOffRolls(lengthsFt: readonly number[], rollLengthFt: number, endLapFt: number): RollPiece[][] {
  const total = lengthsFt.reduce((sum, length) => sum + length, 0);
  const pieces = lengthsFt.length + total / (rollLengthFt - endLapFt);
  if (pieces > MOST_PIECES)
    throw new Problem("value", messages.tooMuch("pieces of fabric", Math.ceil(pieces), MOST_PIECES), "roll_length");
  const taken: RollPiece[][] = lengthsFt.map(() => []);
  cutRollsInTurn(
    lengthsFt.length,
    (cut) => ({ lengthFt: must(lengthsFt[cut]), endLapFt }),
    rollLengthFt,
    (cut, _piece, roll, startsAtFt, lengthFt) => {
      must(taken[cut]).push({ roll, startsAtFt, lengthFt });
    },
  );
  return taken;
}
