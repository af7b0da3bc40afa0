import { fabricStrips } from "./fabric";
import { INCHES_PER_FOOT } from "./units";
import { wholeUp } from "./whole";

/** How a bed is divided for pinning: the strips, the bays across one strip, and the intervals between rows. */
export interface PinGrid {
  readonly strips: number;
  /** b = ⌈min(R, W)/bay⌉ bays across each strip. */
  readonly bays: number;
  /** m = ⌈L/p⌉ intervals along the bed, so rows 0 to m. */
  readonly intervals: number;
}

/**
 * The grid of the dice-five pattern. Parameters as in {@link pins}.
 *
 * @example pinGrid(12, 12, 12, 0, 18, 3) // { strips: 1, bays: 4, intervals: 8 }
 */
export function pinGrid(
  lengthFt: number,
  widthFt: number,
  rollWidthFt: number,
  overlapIn: number,
  spacingIn = 12,
  bayFt = 4,
): PinGrid {
  return {
    strips: fabricStrips(widthFt, rollWidthFt, overlapIn),
    bays: wholeUp(Math.min(rollWidthFt, widthFt) / bayFt),
    intervals: Math.max(1, wholeUp(lengthFt / (spacingIn / INCHES_PER_FOOT))),
  };
}

/**
 * Pins in the dice-five pattern: pairs at every even row, singles in the middle of the bays at odd rows, one
 * in every corner, and along every overlap one at each row, through both layers (common practice).
 *
 * @param lengthFt length of the bed along the strips, more than 0.
 * @param widthFt width of the bed, more than 0.
 * @param rollWidthFt more than 0.
 * @param overlapIn lap of strips side by side, 0 or more, less than the roll is wide.
 * @param spacingIn from row to row at most, more than 0.
 * @param cutAroundFt edge of what the fabric is cut around, 0 or more: pinned at the same spacing.
 * @param bayFt bays across a strip are at most this wide, more than 0.
 * @returns whole pins: 2E + n(b − 1)E + n·b·C + (n − 1)(m + 1) + ⌈cut-around/p⌉ with E = ⌊m/2⌋ + 1 + (m mod 2)
 *   and C = ⌊m/2⌋.
 * @throws Problem where the overlap is no narrower than the roll.
 * @example pins(12, 12, 12, 0, 18, 0, 3) // 41
 */
export function pins(
  lengthFt: number,
  widthFt: number,
  rollWidthFt: number,
  overlapIn: number,
  spacingIn = 12,
  cutAroundFt = 0,
  bayFt = 4,
): number {
  const { strips, bays, intervals } = pinGrid(lengthFt, widthFt, rollWidthFt, overlapIn, spacingIn, bayFt);
  const centerRows = Math.floor(intervals / 2);
  const edgeRows = centerRows + 1 + (intervals % 2);
  const edges = 2 * edgeRows;
  const betweenBays = strips * (bays - 1) * edgeRows;
  const centers = strips * bays * centerRows;
  const seams = (strips - 1) * (intervals + 1);
  return edges + betweenBays + centers + seams + wholeUp(cutAroundFt / (spacingIn / INCHES_PER_FOOT));
}
