import { planCuts } from "../cutting/planCuts";
import { endLapOf } from "../fabric";
import { MOST_PIECES } from "../fabricRolls";
import { messages } from "../messages";
import { must } from "../must";
import { Problem } from "../problem";
import { cutRollsInTurn } from "../rollsInTurn";
import { INCHES_PER_FOOT } from "../units";
import type { BorderRunNeed } from "./bedNeeds";
import { STEPS_FOR_A_JOB } from "./cutAcross";
import { edgingCuts, type RunCuts } from "./edgingCuts";
import { stripCuts } from "./stripCuts";

/** What a saw or cut-off wheel takes of an edging piece: common practice, no source. */
export const USUAL_CUT_LOSS_IN = 0.125;

/**
 * Edging pieces for several runs cut together: each run has the whole pieces it has by itself, and the last pieces of
 * all of them come from as few pieces as they fit in.
 *
 * @param runs each over 0 ft long.
 * @param pieceLengthFt more than 0; @param lapIn 0 or more, less than a piece; @param cutLossIn taken by each cut.
 * @throws Problem where the lap is no shorter than the piece.
 * @example piecesTogether([{ feet: 20, closed: false }, { feet: 11, closed: false }], 8, 0, 0) // 4: 2 + 1 and one cut 4 + 3
 */
export function piecesTogether(
  runs: readonly BorderRunNeed[],
  pieceLengthFt: number,
  lapIn: number,
  cutLossIn: number,
): number {
  return fewest(
    pieceLengthFt,
    runs.map((run) => edgingCuts(run, pieceLengthFt, lapIn)),
    cutLossIn,
  );
}

/**
 * Rolls for the strips of several beds: cut without a joint from as few rolls as they fit in or, where that takes fewer,
 * off rolls used up one after another, longest strip first, with a lap where a roll runs out.
 *
 * @param stripsFt lengths to cut, each over 0.
 * @param rollLengthFt more than the end lap; @param endLapIn 0 or more.
 * @throws Problem where the end lap is as long as a roll, or the count shows that a unit is wrong.
 * @example rollsTogether([30, 30, 20, 18], 50, 12) // 2: 30 + 20 and 30 + 18
 */
export function rollsTogether(stripsFt: readonly number[], rollLengthFt: number, endLapIn: number): number {
  const strips = [...stripsFt].sort((a, b) => b - a);
  const endLapFt = endLapOf(rollLengthFt, endLapIn);
  const roughly = strips.reduce((pieces, lengthFt) => pieces + 1 + lengthFt / (rollLengthFt - endLapFt), 0);
  if (!(roughly <= MOST_PIECES)) throw new Problem("value", messages.tooManyPieces(), "strips");
  const parts = strips.map((lengthFt) => stripCuts(lengthFt, rollLengthFt, endLapIn));
  let inTurn = 0;
  cutRollsInTurn(
    strips.length,
    (strip) => ({ lengthFt: must(strips[strip]), endLapFt }),
    rollLengthFt,
    (_strip, _piece, roll) => {
      inTurn = roll;
    },
  );
  return Math.min(fewest(rollLengthFt, parts, 0), inTurn);
}

/** Whole stock lengths, and the fewest that all the last pieces come from; what `cutAcross` counts. */
function fewest(stockLength: number, parts: readonly RunCuts[], lossIn: number): number {
  const lengths = parts.flatMap(({ lastFt }) => lastFt ?? []);
  const { count } = planCuts({ stockLength, lengths, loss: lossIn / INCHES_PER_FOOT }, STEPS_FOR_A_JOB);
  return parts.reduce((sum, { whole }) => sum + whole, count);
}
