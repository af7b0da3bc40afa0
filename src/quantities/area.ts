import { messages } from "./messages";
import { Problem } from "./problem";
import { WHOLE_TOLERANCE } from "./whole";

/** What one rounded corner takes off a square corner, as a share of its radius squared. */
const CORNER_LOSS = 1 - Math.PI / 4;

/** A triangle flatter than this share of its longest side only stands up by binary arithmetic: 0.1, 0.2, 0.3. */
const FLAT = 1e-12;

/**
 * Area of a rectangular bed, less what rounded corners take off and less what is cut out of it.
 *
 * @param lengthFt more than 0.
 * @param widthFt more than 0.
 * @param cornerRadiusFt 0 or more; at most the shorter side for one corner, half of it for two or more.
 * @param roundedCorners how many corners are rounded, 0 to 4.
 * @param cutOutsSqFt areas that stay out of the bed, each 0 or more.
 * @returns square feet, more than 0: L·W − n(1 − π/4)r² − Σ cut-outs.
 * @throws Problem where the corners do not fit the sides, or nothing is left.
 * @example areaRectangle(18.5, 5, 2, 2) // 90.7832
 */
export function areaRectangle(
  lengthFt: number,
  widthFt: number,
  cornerRadiusFt = 0,
  roundedCorners = 0,
  cutOutsSqFt: readonly number[] = [],
): number {
  if (roundedCorners > 0) {
    const shorter = Math.min(lengthFt, widthFt);
    const most = roundedCorners > 1 ? shorter / 2 : shorter;
    if (cornerRadiusFt > most * (1 + WHOLE_TOLERANCE))
      throw new Problem("value", messages.radiusTooLarge(cornerRadiusFt, most), "corner_radius");
  }
  const whole = lengthFt * widthFt - roundedCorners * CORNER_LOSS * cornerRadiusFt ** 2;
  let cutOut = 0;
  for (const area of cutOutsSqFt) cutOut += area;
  if (whole <= Number.MAX_VALUE && whole - cutOut <= WHOLE_TOLERANCE * whole)
    throw new Problem("value", messages.cutOutsTooLarge(whole, cutOut), "cut_outs");
  return whole - cutOut;
}

/**
 * Area of a triangle from its three sides, by Heron's formula, written so that needle-thin triangles keep
 * their digits (W. Kahan, Miscalculating Area and Angles of a Needle-like Triangle).
 *
 * @param a one side, more than 0, all three in the same unit; likewise `b` and `c`.
 * @returns the area in that unit squared, more than 0.
 * @throws Problem where the longest side is no shorter than the other two together.
 * @example areaTriangle(3, 4, 5) // 6
 */
export function areaTriangle(a: number, b: number, c: number): number {
  const longest = Math.max(a, b, c);
  const shortest = Math.min(a, b, c);
  const middle = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  const spare = shortest - (longest - middle);
  if (spare <= FLAT * longest) throw new Problem("value", messages.noTriangle(a, b, c), "side_c");
  const product =
    (longest + (middle + shortest)) * spare * (shortest + (longest - middle)) * (longest + (middle - shortest));
  return Math.sqrt(product) / 4;
}

/**
 * Area of a round bed, or of a ring round something that stays out of it, such as a tree.
 *
 * @param diameterFt more than 0.
 * @param innerDiameterFt 0 for a full disc; less than the outer diameter.
 * @returns square feet, more than 0.
 * @throws Problem where the inner diameter is not the smaller one.
 * @example areaRound(10, 3) // 71.4712
 */
export function areaRound(diameterFt: number, innerDiameterFt = 0): number {
  if (innerDiameterFt >= diameterFt)
    throw new Problem("value", messages.innerNotSmaller(innerDiameterFt, diameterFt), "inner_diameter");
  return (Math.PI / 4) * (diameterFt + innerDiameterFt) * (diameterFt - innerDiameterFt);
}
