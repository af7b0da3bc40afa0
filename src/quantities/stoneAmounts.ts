import { messages } from "./messages";
import { Problem } from "./problem";
import { CUBIC_FEET_PER_CUBIC_YARD, SQUARE_FOOT_INCHES_PER_CUBIC_YARD } from "./units";
import { WHOLE_TOLERANCE, wholeUp } from "./whole";

/**
 * Depth of the finished stone: the border above the scraped floor, less the gap left below its top edge.
 *
 * @param borderHeightIn more than 0.
 * @param trenchDepthIn how deep the border is set below the scraped floor, 0 or more.
 * @param topGapIn 0 or more.
 * @returns inches, more than 0.
 * @throws Problem where no depth is left.
 * @example stoneDepth(4, 1.5, 0.5) // 2
 */
export function stoneDepth(borderHeightIn: number, trenchDepthIn: number, topGapIn: number): number {
  const depth = borderHeightIn - trenchDepthIn - topGapIn;
  if (depth <= WHOLE_TOLERANCE * borderHeightIn)
    throw new Problem("value", messages.noDepth(borderHeightIn, trenchDepthIn + topGapIn), "border_height_in");
  return depth;
}

/**
 * Stone by volume: one cubic yard covers 324 square feet an inch deep.
 *
 * @param areaSqFt more than 0.
 * @param depthIn more than 0.
 * @param waste share more for low spots and what stays behind, 0 up to 1.
 * @returns loose cubic yards, more than 0: A·d/324·(1 + waste).
 * @example stoneYards(108, 3) // 1
 */
export function stoneYards(areaSqFt: number, depthIn: number, waste = 0): number {
  return ((areaSqFt * depthIn) / SQUARE_FOOT_INCHES_PER_CUBIC_YARD) * (1 + waste);
}

/**
 * Stone by weight. Parameters as in {@link stoneYards}.
 *
 * @param tonsPerYard short tons a loose cubic yard, more than 0; `STONES` lists common ones.
 * @returns short tons, more than 0.
 * @example stoneTons(108, 3, 1.35) // 1.35
 */
export function stoneTons(areaSqFt: number, depthIn: number, tonsPerYard: number, waste = 0): number {
  return stoneYards(areaSqFt, depthIn, waste) * tonsPerYard;
}

/**
 * Area that an amount of stone covers.
 *
 * @param tons short tons, 0 or more.
 * @param depthIn more than 0.
 * @param tonsPerYard short tons a loose cubic yard, more than 0.
 * @returns square feet, 0 or more.
 * @example stoneCovers(1.35, 3, 1.35) // 108
 */
export function stoneCovers(tons: number, depthIn: number, tonsPerYard: number): number {
  return ((tons / tonsPerYard) * SQUARE_FOOT_INCHES_PER_CUBIC_YARD) / depthIn;
}

/**
 * Bags of stone. Parameters as in {@link stoneYards}.
 *
 * @param bagCubicFt what one bag holds, in cubic feet, more than 0.
 * @returns whole bags.
 * @example stoneBags(20, 2, 0.5) // 7
 */
export function stoneBags(areaSqFt: number, depthIn: number, bagCubicFt: number, waste = 0): number {
  return wholeUp((stoneYards(areaSqFt, depthIn, waste) * CUBIC_FEET_PER_CUBIC_YARD) / bagCubicFt);
}

/**
 * Bulk bags of stone. Parameters as in {@link stoneYards}.
 *
 * @param bagCubicYd what one bulk bag holds, in cubic yards, more than 0; 1 is common practice.
 * @returns whole bulk bags.
 * @example stoneBulkBags(500, 3) // 5
 */
export function stoneBulkBags(areaSqFt: number, depthIn: number, bagCubicYd = 1, waste = 0): number {
  return wholeUp(stoneYards(areaSqFt, depthIn, waste) / bagCubicYd);
}

/**
 * An amount as the yard sells it: whole steps, and never less than its minimum.
 *
 * @param amount what is needed, 0 or more; nothing is ordered for 0.
 * @param step the yard sells in steps of this, more than 0, in the same unit.
 * @param minimum the least it delivers, 0 or more, in the same unit.
 * @returns whole steps that reach both the amount and the minimum.
 * @example orderUp(6.02, 0.5) // 6.5
 * @example orderUp(1.2, 0.5, 3) // 3
 */
export function orderUp(amount: number, step: number, minimum = 0): number {
  if (amount === 0) return 0;
  const steps = Math.max(1, wholeUp(Math.max(amount, minimum) / step));
  // Steps such as 0.1 stand inexact in binary: 3 / 10 is the number that 0.3 reads as, 3 × 0.1 is not.
  const stepsPerUnit = Math.round(1 / step);
  const isEvenPart = Math.abs(stepsPerUnit * step - 1) <= WHOLE_TOLERANCE;
  return isEvenPart ? steps / stepsPerUnit : steps * step;
}
