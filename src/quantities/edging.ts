import { messages } from "./messages";
import { Problem } from "./problem";
import { INCHES_PER_FOOT } from "./units";
import { WHOLE_TOLERANCE, wholeUp } from "./whole";

/** A piece that covers less of the run than this is worth a word: an inch. */
export const SHORTEST_PIECE_FT = 1 / INCHES_PER_FOOT;
/** What is said of such a piece, after what it is called. */
export const SHORT_PIECE_WORDS = "covers less than an inch. Lap the rest less, or leave it off.";

/** A stake this near a corner holds the corner, too; common practice, a hand's breadth. */
export const HOLDS_CORNER_FT = 3 / INCHES_PER_FOOT;

/** Whether a corner so far from the nearest stake takes one of its own. A hair of rounding doesn't decide it. */
export const takesOwnStake = (apartFt: number): boolean => apartFt > HOLDS_CORNER_FT * (1 + WHOLE_TOLERANCE);

/**
 * Edging pieces for one run, each lapping the next. In a closed run the last piece laps the first as well.
 *
 * @param edgeLengthFt length of the run, 0 or more; 0 needs no pieces.
 * @param pieceLengthFt more than 0.
 * @param lapIn less than a piece is long; under 0 where pieces stand a joint apart.
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
 * The pieces that are bought to cover less than an inch, by their numbers in the bed's drawing: a run that is an inch
 * shorter would take one less.
 *
 * @param runs in the order of the drawing; @param pieceLengthFt and @param lapIn as for {@link edgingPieces}. Pavers, a
 *   joint apart, are cut to less than an inch as soon as to half.
 * @example shortPieces([{ feet: 16.04, closed: false }], 8, 0) // [3]
 */
export function shortPieces(
  runs: readonly { readonly feet: number; readonly closed: boolean }[],
  pieceLengthFt: number,
  lapIn: number,
): number[] {
  let pieces = 0;
  if (lapIn < 0) return [];
  return runs.flatMap(({ feet, closed }) => {
    const count = edgingPieces(feet, pieceLengthFt, lapIn, closed);
    const without = edgingPieces(Math.max(0, feet - SHORTEST_PIECE_FT), pieceLengthFt, lapIn, closed);
    pieces += count;
    // A run of its own needs its one piece, however short it is.
    return without > 0 && without < count ? [pieces] : [];
  });
}

/**
 * Stakes for one run of edging: one at each end of the run, one through both pieces at each joint, enough
 * between that no gap exceeds the spacing, and one more at each corner. Where the sides are given, a stake within 3 in
 * of a corner holds it, too, and counts once.
 *
 * @param edgeLengthFt length of the run, 0 or more; 0 needs no stakes.
 * @param pieceLengthFt more than 0.
 * @param stakeSpacingIn the widest gap between two stakes, more than 0.
 * @param lapIn 0 or more, less than a piece is long.
 * @param corners how many corners get a stake of their own, a whole number, 0 or more.
 * @param closed whether the run comes back to where it began: then no end needs one.
 * @param firstSideFt the run's first side, in feet; 0 for not known.
 * @param nextSideFt the side after it; around a rectangle the two take turns.
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
  firstSideFt = 0,
  nextSideFt = 0,
): number {
  const pieces = edgingPieces(edgeLengthFt, pieceLengthFt, lapIn, closed);
  if (pieces === 0) return 0;
  const spacingFt = stakeSpacingIn / INCHES_PER_FOOT;
  const segment = gainOf(pieceLengthFt, lapIn);
  const lastSegment = edgeLengthFt - (pieces - 1) * segment;
  const [each, last] = [wholeUp(segment / spacingFt), Math.max(1, wholeUp(lastSegment / spacingFt))];
  const isFree = (corner: number) => {
    const at = firstSideFt * Math.ceil(corner / 2) + nextSideFt * Math.floor(corner / 2);
    const toEnd = edgeLengthFt - at;
    return takesOwnStake(toEnd > lastSegment ? offGrid(at, segment / each) : offGrid(toEnd, lastSegment / last));
  };
  // Around a closed run the fourth corner is where it starts, which a joint holds.
  const own = firstSideFt > 0 ? [1, 2, 3].slice(0, corners).filter(isFree).length : corners;
  return (pieces - 1) * each + last + (closed ? 0 : 1) + own;
}

/** How far a place is from the nearest whole multiple of a step. */
const offGrid = (at: number, step: number) => Math.abs(at - step * Math.round(at / step));

/** How much further each next piece reaches. */
function gainOf(pieceLengthFt: number, lapIn: number): number {
  const lapFt = lapIn / INCHES_PER_FOOT;
  if (lapFt >= pieceLengthFt) {
    const mostIn = pieceLengthFt * INCHES_PER_FOOT;
    throw new Problem("value", messages.lapTooLong("lap_in", lapIn, mostIn, "piece_length is"), "lap_in");
  }
  return pieceLengthFt - lapFt;
}
