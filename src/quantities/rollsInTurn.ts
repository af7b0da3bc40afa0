import { WHOLE_TOLERANCE } from "./whole";

/** A strip to be cut, and the lap of two pieces of it end to end, in feet; the lap is shorter than a roll. */
export interface StripToCut {
  readonly lengthFt: number;
  readonly endLapFt: number;
}

/**
 * Told of each piece as it is cut: its strip from 0, which piece of that and which roll from 1, where it begins along
 * the strip, how long it is, and what is left of the roll after it.
 */
export type TellPiece = (
  strip: number,
  piece: number,
  roll: number,
  startsAtFt: number,
  lengthFt: number,
  leftFt: number,
) => void;

/**
 * The rule of BED.FABRIC_ROLLS: rolls are used up one after another; where one runs out inside a strip the next piece
 * laps it by the end lap, and a remnant no longer than the end lap is scrap.
 *
 * @param strips how many there are; `stripAt` gives each, in the order in which they are cut, over 0 long.
 * @param rollLengthFt more than every end lap.
 * @example two strips of 30 ft off rolls of 50 ft, end lap 1 ft: 30 and 20 off the first, 11 off the second
 */
export function cutRollsInTurn(
  strips: number,
  stripAt: (strip: number) => StripToCut,
  rollLengthFt: number,
  tell: TellPiece,
): void {
  let roll = 0;
  let leftFt = 0;
  for (let strip = 0; strip < strips; strip++) {
    const { lengthFt, endLapFt } = stripAt(strip);
    const slack = WHOLE_TOLERANCE * lengthFt;
    let startsAtFt = 0;
    for (let piece = 1, done = false; !done; piece++) {
      if (leftFt <= endLapFt + slack) {
        roll++;
        leftFt = rollLengthFt;
      }
      const wantedFt = lengthFt - startsAtFt;
      done = leftFt >= wantedFt - slack;
      const pieceFt = done ? wantedFt : leftFt;
      leftFt = Math.max(0, leftFt - pieceFt);
      tell(strip, piece, roll, startsAtFt, pieceFt, leftFt);
      startsAtFt += pieceFt - endLapFt;
    }
  }
}
