import { CUBIC_FEET_PER_CUBIC_YARD, INCHES_PER_FOOT, SQUARE_FOOT_INCHES_PER_CUBIC_YARD } from "./units";

/**
 * Soil to dig, measured in the ground: the scrape, and below it the trench that the edging is set in.
 *
 * @param areaSqFt area of the bed, more than 0.
 * @param depthIn depth of the scrape, more than 0.
 * @param trenchLengthFt length of the trench, 0 or more; `trenchWidthIn` and `trenchDepthIn` likewise, the depth
 *   below the scraped floor.
 * @returns bank cubic yards, more than 0.
 * @example digYards(400, 3) // 3.7037
 */
export function digYards(
  areaSqFt: number,
  depthIn: number,
  trenchLengthFt = 0,
  trenchWidthIn = 0,
  trenchDepthIn = 0,
): number {
  const trenchCubicFt = trenchLengthFt * (trenchWidthIn / INCHES_PER_FOOT) * (trenchDepthIn / INCHES_PER_FOOT);
  return (areaSqFt * depthIn) / SQUARE_FOOT_INCHES_PER_CUBIC_YARD + trenchCubicFt / CUBIC_FEET_PER_CUBIC_YARD;
}

/**
 * Soil to haul: what was dug takes more room once it is loose.
 *
 * @param bankYards cubic yards in the ground, 0 or more.
 * @param swell how much more room it takes, as a share, 0 to 2; `SOILS` lists common ones.
 * @returns loose cubic yards, 0 or more.
 * @example spoilYards(3.7037, 0.25) // 4.6296
 */
export function spoilYards(bankYards: number, swell: number): number {
  return bankYards * (1 + swell);
}
