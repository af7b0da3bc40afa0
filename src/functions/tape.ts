import { cellError, sound } from "./cellError";
import { measure as readMeasure } from "./read";

/**
 * A measure from the tape in decimal feet.
 * @customfunction FEET
 * @param measure Text such as 32' 6 1/2", 9.8 m or 75 mm, or a number, which is feet.
 * @returns Feet.
 * @example =BED.FEET("32' 6 1/2""") gives 32.5417
 * @source Exact units: a foot is 0.3048 m (NIST Handbook 44, Appendix C).
 * @see BED.INCHES
 */
export function FEET(measure: unknown): number {
  try {
    return sound(readMeasure(measure, "measure", "ft"));
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * A measure from the tape in decimal inches.
 * @customfunction INCHES
 * @param measure Text such as 1' 2 1/2", 75 mm or 40 cm, or a number, which is inches.
 * @returns Inches.
 * @example =BED.INCHES("1' 2 1/2""") gives 14.5
 * @source Exact units: an inch is 0.0254 m (NIST Handbook 44, Appendix C).
 * @see BED.FEET
 */
export function INCHES(measure: unknown): number {
  try {
    return sound(readMeasure(measure, "measure", "in"));
  } catch (reason) {
    throw cellError(reason);
  }
}
