import { CUBIC_FEET_PER_CUBIC_YARD, INCHES_PER_FOOT } from "./units";
import { wholeUp } from "./whole";

/** No joint between pavers is wider: twice what clay pavers on sand have at most, and a mortar joint is under it. */
export const MOST_JOINT_IN = 0.5;

/**
 * Pavers or bricks in one row along an edge, with a joint between each and the next.
 *
 * @param edgeLengthFt length of the row, 0 or more; 0 needs none.
 * @param alongIn how much of the edge one takes up, more than 0: its long side, short side, or thickness.
 * @param jointIn 0 or more. Clay pavers on sand: 1/16 to 3/16 in (Brick Industry Association, Technical Note 14A).
 * @param closed whether the row ends where it starts, so that there is a joint there, too.
 * @returns whole units, the last one cut: open, ceil((E + j)/(d + j)); closed, ceil(E/(d + j)).
 * @example pavers(50, 4, 0.125) // 146
 */
export function pavers(edgeLengthFt: number, alongIn: number, jointIn = 0, closed = false): number {
  if (edgeLengthFt === 0) return 0;
  const edgeIn = edgeLengthFt * INCHES_PER_FOOT;
  return Math.max(1, wholeUp((edgeIn + (closed ? 0 : jointIn)) / (alongIn + jointIn)));
}

/**
 * Sand or base under a row of pavers, as deep as it's compacted.
 *
 * @param edgeLengthFt length of the row, 0 or more.
 * @param widthIn and @param depthIn more than 0.
 * @param waste share more, such as for what compacting takes up, 0 up to 1.
 * @returns cubic yards, 0 or more.
 * @example sandYards(50, 8, 1) // 0.1029
 */
export function sandYards(edgeLengthFt: number, widthIn: number, depthIn: number, waste = 0): number {
  const cubicFeet = (edgeLengthFt * widthIn * depthIn) / (INCHES_PER_FOOT * INCHES_PER_FOOT);
  return (cubicFeet / CUBIC_FEET_PER_CUBIC_YARD) * (1 + waste);
}
