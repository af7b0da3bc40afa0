import { messages } from "./messages";
import { Problem } from "./problem";
import { WHOLE_TOLERANCE } from "./whole";

/** What one rounded corner takes off the way round it, as a share of its radius: two radii become a quarter circle. */
const CORNER_SHORTCUT = 2 - Math.PI / 2;

/**
 * Length of an edge along its sides, with some of the corners between them rounded.
 *
 * @param sidesFt the sides as if the corners were square, each more than 0, at least one.
 * @param cornerRadiusFt 0 or more.
 * @param roundedCorners how many corners are rounded, a whole number, 0 or more.
 * @returns feet, more than 0: Σ sides − n(2 − π/2)r.
 * @throws Problem where the corners take up more than the sides are long (each uses its radius of two sides).
 * @example edgeLength([5, 18.5, 5], 2, 2) // 26.7832
 */
export function edgeLength(sidesFt: readonly number[], cornerRadiusFt = 0, roundedCorners = 0): number {
  let length = 0;
  for (const side of sidesFt) length += side;
  // Without a rounded corner there is room for any radius.
  const most = length / 2 / roundedCorners;
  if (cornerRadiusFt > most * (1 + WHOLE_TOLERANCE))
    throw new Problem("value", messages.radiusTooLarge(cornerRadiusFt, most), "corner_radius");
  return length - roundedCorners * CORNER_SHORTCUT * cornerRadiusFt;
}
