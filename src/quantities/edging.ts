import { messages } from "./messages";
import { Problem } from "./problem";
import { INCHES_PER_FOOT } from "./units";
import { wholeUp } from "./whole";

/** A piece that is bought for less than this is worth a word: an inch. */
export const SHORTEST_PIECE_FT = 1 / INCHES_PER_FOOT;

/**
 * Edging pieces for one run, each lapping the next. In a closed run the last piece laps the first as well.
 *
 * @param edgeLengthFt length of the run, 0 or more; 0 needs no pieces.
 * @param pieceLengthFt more than 0.
 * @param lapIn 0 or more, less than a piece is long.
 * @param closed whether the run comes back to where it began.
 * @returns whole pieces n: open, n·P − (n − 1)·lap ≥ E; closed, n·(P − lap) ≥ E.
 * @throws Problem where the lap is no shorter than the piece.
 * @example edgingPieces(26.78, 8, 2) // 4
 */
export function edgingPieces(edgeLengthFt: number, pieceLengthFt: number, lapIn = 0, closed = false): number {
  const lapFt = lapIn / INCHES_PER_FOOT;
  const gain = gainOf(pieceLengthFt, lapIn);
  if (edgeLengthFt === 0) return 0;
  if (closed) return wholeUp(edgeLengthFt / gain);
  return Math.max(1, wholeUp((edgeLengthFt - lapFt) / gain));
}

/**
 * Stakes for one run of edging: one at each end of the run, one through both pieces at each joint, enough
 * between that no gap exceeds the spacing, and one more at each corner.
 *
 * @param edgeLengthFt length of the run, 0 or more; 0 needs no stakes.
 * @param pieceLengthFt more than 0.
 * @param stakeSpacingIn the widest gap between two stakes, more than 0.
 * @param lapIn 0 or more, less than a piece is long.
 * @param corners how many corners get a stake of their own, a whole number, 0 or more.
 * @param closed whether the run comes back to where it began: then no end needs one.
 * @returns whole stakes: Σ over pieces ⌈segment/spacing⌉, + 1 if open, + corners; a segment is P − lap, the last
 *   one what is left.
 * @throws Problem where the lap is no shorter than the piece.
 * @example stakes(20, 8, 48) // 6: segments of 8, 8 and 4 ft take 2 + 2 + 1, and one more for the end
 */
export function stakes(
  edgeLengthFt: number,
  pieceLengthFt: number,
  stakeSpacingIn: number,
  lapIn = 0,
  corners = 0,
  closed = false,
): number {
  const pieces = edgingPieces(edgeLengthFt, pieceLengthFt, lapIn, closed);
  if (pieces === 0) return 0;
  const spacingFt = stakeSpacingIn / INCHES_PER_FOOT;
  const segment = gainOf(pieceLengthFt, lapIn);
  const lastSegment = edgeLengthFt - (pieces - 1) * segment;
  return (
    (pieces - 1) * wholeUp(segment / spacingFt) +
    Math.max(1, wholeUp(lastSegment / spacingFt)) +
    (closed ? 0 : 1) +
    corners
  );
}

/** How much further each next piece reaches. */
function gainOf(pieceLengthFt: number, lapIn: number): number {
  const lapFt = lapIn / INCHES_PER_FOOT;
  if (lapFt >= pieceLengthFt) {
    const mostIn = pieceLengthFt * INCHES_PER_FOOT;
    throw new Problem("value", messages.lapTooLong("lap_in", lapIn, mostIn, "piece_length is"), "lap_in");
  }
  return pieceLengthFt - lapFt;
}
