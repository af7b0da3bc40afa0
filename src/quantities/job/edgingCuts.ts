import { edgingPieces } from "../edging";
import { INCHES_PER_FOOT } from "../units";
import { WHOLE_TOLERANCE } from "../whole";
import type { BorderRunNeed } from "./bedNeeds";

/** What a run of border is set from. */
export interface RunCuts {
  /** Pieces used as they are bought. */
  readonly whole: number;
  /** The last piece, cut to what is left; undefined where that is a whole one too. */
  readonly lastFt: number | undefined;
}

/**
 * The pieces of one run, as BED.EDGING_PIECES counts them: whole ones, each lapping the next, and a last one cut to
 * reach the end; in a closed run the last reaches over the first by a lap as well. A cut piece stands nowhere but at the
 * end of its run, so a run has the same joints whether its last piece comes off a new piece or off another bed's.
 *
 * @param pieceLengthFt more than 0.
 * @param lapIn 0 or more, less than a piece is long.
 * @throws Problem where the lap is no shorter than the piece.
 * @example edgingCuts({ feet: 20, closed: false }, 8, 0) // { whole: 2, lastFt: 4 }
 */
export function edgingCuts({ feet, closed }: BorderRunNeed, pieceLengthFt: number, lapIn: number): RunCuts {
  const pieces = edgingPieces(feet, pieceLengthFt, lapIn, closed);
  if (pieces === 0) return { whole: 0, lastFt: undefined };
  const lapFt = lapIn / INCHES_PER_FOOT;
  const lastFt = feet - (pieces - 1) * (pieceLengthFt - lapFt) + (closed ? lapFt : 0);
  return cutsOf(pieces, lastFt, pieceLengthFt);
}

/** Pieces of which the last is so long: cut, unless that is a whole one too. */
export function cutsOf(pieces: number, lastFt: number, stockFt: number): RunCuts {
  const isWhole = lastFt >= stockFt * (1 - WHOLE_TOLERANCE);
  return { whole: isWhole ? pieces : pieces - 1, lastFt: isWhole ? undefined : lastFt };
}
