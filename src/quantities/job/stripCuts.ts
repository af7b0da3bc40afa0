import { endLapOf } from "../fabric";
import { wholeUp } from "../whole";
import { cutsOf, type RunCuts } from "./edgingCuts";

/**
 * What one strip of fabric is cut from without more joints than it must have: a strip longer than a roll takes whole
 * rolls, each lapping the next by the end lap, and a last piece.
 *
 * @param stripFt more than 0.
 * @param rollLengthFt more than the end lap.
 * @param endLapIn 0 or more.
 * @throws Problem where the end lap is as long as a roll.
 * @example stripCuts(60, 50, 12) // { whole: 1, lastFt: 11 }
 */
export function stripCuts(stripFt: number, rollLengthFt: number, endLapIn: number): RunCuts {
  const lapFt = endLapOf(rollLengthFt, endLapIn);
  const gain = rollLengthFt - lapFt;
  const pieces = stripFt <= rollLengthFt ? 1 : wholeUp((stripFt - lapFt) / gain);
  const lastFt = stripFt - (pieces - 1) * gain;
  return cutsOf(pieces, lastFt, rollLengthFt);
}
