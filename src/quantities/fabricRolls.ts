import { endLapOf, fabricStrips } from "./fabric";
import { messages } from "./messages";
import { Problem } from "./problem";
import { cutRollsInTurn, type TellPiece } from "./rollsInTurn";

/** One piece of fabric as it is cut: where it comes from and where it lies. */
export interface FabricCut {
  /** Which strip across the bed, counted from 1. */
  readonly strip: number;
  /** Which piece of that strip, counted from 1. */
  readonly piece: number;
  /** Which roll it is cut from, counted from 1. */
  readonly roll: number;
  /** Where it begins along the strip, in feet. */
  readonly startsAtFt: number;
  readonly lengthFt: number;
}

/** More pieces than any bed has; beyond it some unit is wrong, and counting on would hang the sheet. */
export const MOST_PIECES = 100_000;

/**
 * Rolls of fabric to buy. Strips are cut full width, and rolls used up one after another: where a roll runs
 * out inside a strip, the next piece laps it by the end lap; a remnant no longer than the end lap is scrap.
 *
 * @param lengthFt length of the bed along the strips, more than 0.
 * @param widthFt width of the bed, more than 0.
 * @param rollWidthFt more than 0; `rollLengthFt` likewise.
 * @param overlapIn lap of strips side by side, 0 or more, less than the roll is wide.
 * @param endLapIn lap of pieces end to end, 0 or more, less than the roll is long.
 * @returns whole rolls, at least 1.
 * @throws Problem where a lap is too long, or the count shows that a unit is wrong.
 * @example fabricRolls(30, 11, 6, 50, 12) // 2
 */
export function fabricRolls(
  lengthFt: number,
  widthFt: number,
  rollWidthFt: number,
  rollLengthFt: number,
  overlapIn: number,
  endLapIn = 12,
): number {
  let rolls = 0;
  unroll(lengthFt, widthFt, rollWidthFt, rollLengthFt, overlapIn, endLapIn, (_strip, _piece, roll) => {
    rolls = roll;
  });
  return rolls;
}

/**
 * The cut list behind {@link fabricRolls}: every piece, in the order it is cut. Parameters as there.
 *
 * @example fabricCuts(30, 11, 6, 50, 12)[1] // { strip: 2, piece: 1, roll: 1, startsAtFt: 0, lengthFt: 20 }
 */
export function fabricCuts(
  lengthFt: number,
  widthFt: number,
  rollWidthFt: number,
  rollLengthFt: number,
  overlapIn: number,
  endLapIn = 12,
): FabricCut[] {
  const cuts: FabricCut[] = [];
  unroll(
    lengthFt,
    widthFt,
    rollWidthFt,
    rollLengthFt,
    overlapIn,
    endLapIn,
    (strip, piece, roll, startsAtFt, pieceFt) => {
      cuts.push({ strip: strip + 1, piece, roll, startsAtFt, lengthFt: pieceFt });
    },
  );
  return cuts;
}

function unroll(
  lengthFt: number,
  widthFt: number,
  rollWidthFt: number,
  rollLengthFt: number,
  overlapIn: number,
  endLapIn: number,
  tell: TellPiece,
): void {
  const strips = fabricStrips(widthFt, rollWidthFt, overlapIn);
  const strip = { lengthFt, endLapFt: endLapOf(rollLengthFt, endLapIn) };
  if (!(strips * (1 + lengthFt / (rollLengthFt - strip.endLapFt)) <= MOST_PIECES))
    throw new Problem("value", messages.tooManyPieces(), "length");
  cutRollsInTurn(strips, () => strip, rollLengthFt, tell);
}
