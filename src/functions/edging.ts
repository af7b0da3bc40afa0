import { edgingPieces, stakes } from "../quantities/edging";
import { cellError, sound } from "./cellError";
import { count, feet, feetOrZero, flag, inches, inchesOrZero } from "./read";

/**
 * Pieces of edging for one run, each lapping the next.
 * @customfunction EDGING_PIECES
 * @param edge_length Length of the run: feet, or text such as 26' 9". 0 needs no pieces.
 * @param piece_length Length of one piece: feet, or text such as 8'.
 * @param lap_in Lap of one piece over the next: inches, or text. Left out: 0.
 * @param closed TRUE if the run comes back to where it began, else FALSE. Left out: FALSE.
 * @returns Whole pieces.
 * @example =BED.EDGING_PIECES("26' 9""", 8, 2) gives 4
 * @source Plain arithmetic over pieces and laps.
 * @see BED.EDGE_LENGTH, BED.STAKES, BED.CUT_COUNT
 */
export function EDGING_PIECES(edge_length: unknown, piece_length: unknown, lap_in?: unknown, closed?: unknown): number {
  try {
    return sound(
      edgingPieces(
        feetOrZero(edge_length, "edge_length"),
        feet(piece_length, "piece_length"),
        inchesOrZero(lap_in, "lap_in", 0),
        flag(closed, "closed", false),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Stakes for one run of edging: at its ends, through both pieces at joints, between, and at corners.
 * @customfunction STAKES
 * @param edge_length Length of the run: feet, or text such as 26' 9". 0 needs no stakes.
 * @param piece_length Length of one piece: feet, or text such as 8'.
 * @param stake_spacing_in Widest gap between two stakes: inches, or text such as 4'.
 * @param lap_in Lap of one piece over the next: inches, or text. Left out: 0.
 * @param corners How many corners get one more stake. Left out: 0.
 * @param closed TRUE if the run comes back to where it began, else FALSE. Left out: FALSE.
 * @returns Whole stakes.
 * @example =BED.STAKES(20, 8, 48) gives 6
 * @source Common practice: at the ends, through both pieces at a joint, between, and at corners.
 * @see BED.EDGING_PIECES, BED.EDGE_LENGTH
 */
export function STAKES(
  edge_length: unknown,
  piece_length: unknown,
  stake_spacing_in: unknown,
  lap_in?: unknown,
  corners?: unknown,
  closed?: unknown,
): number {
  try {
    return sound(
      stakes(
        feetOrZero(edge_length, "edge_length"),
        feet(piece_length, "piece_length"),
        inches(stake_spacing_in, "stake_spacing_in"),
        inchesOrZero(lap_in, "lap_in", 0),
        count(corners, "corners", Number.POSITIVE_INFINITY, 0),
        flag(closed, "closed", false),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}
