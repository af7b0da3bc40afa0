import { areaRectangle, areaRound, areaTriangle } from "../quantities/area";
import { areaPoints } from "../quantities/outline";
import { areaWidths } from "../quantities/widths";
import { cellError, sound } from "./cellError";
import { count, feet, feetOrZero } from "./read";
import { widthRule } from "./readNamed";
import { areas, points as readPoints, widths as readWidths } from "./readRanges";

const CORNERS_OF_A_RECTANGLE = 4;

/**
 * Area of a rectangular bed, less its rounded corners and what is cut out of it.
 * @customfunction AREA_RECTANGLE
 * @param length Length of the bed: feet, or text such as 18' 6".
 * @param width Width of the bed: feet, or text such as 5'.
 * @param corner_radius Radius of the rounded corners: feet, or text such as 24". Left out: 0.
 * @param rounded_corners How many corners are rounded, 0 to 4. Left out: 0.
 * @param cut_outs Areas that stay out of the bed, in square feet: one cell or a range. Blanks are skipped.
 * @returns Square feet.
 * @example =BED.AREA_RECTANGLE("18' 6""", 5, 2, 2) gives 90.7832
 * @source Plane geometry: a rounded corner takes off (1 − π/4) of its radius squared.
 * @see BED.EDGE_LENGTH, BED.STONE_TONS, BED.DIG_YARDS, BED.LAYOUT_RECTANGLE
 */
export function AREA_RECTANGLE(
  length: unknown,
  width: unknown,
  corner_radius?: unknown,
  rounded_corners?: unknown,
  cut_outs?: unknown[][],
): number {
  try {
    return sound(
      areaRectangle(
        feet(length, "length"),
        feet(width, "width"),
        feetOrZero(corner_radius, "corner_radius", 0),
        count(rounded_corners, "rounded_corners", CORNERS_OF_A_RECTANGLE, 0),
        areas(cut_outs, "cut_outs"),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Area of a triangular bed from its three sides.
 * @customfunction AREA_TRIANGLE
 * @param side_a First side: feet, or text such as 10' 6".
 * @param side_b Second side: feet, or text such as 15'.
 * @param side_c Third side: feet, or text such as 7' 3".
 * @returns Square feet.
 * @example =BED.AREA_TRIANGLE(3, 4, 5) gives 6
 * @source Heron's formula, as W. Kahan writes it for thin triangles (Miscalculating Area of a Needle-like Triangle).
 * @see BED.AREA_POINTS, BED.AREA_RECTANGLE
 */
export function AREA_TRIANGLE(side_a: unknown, side_b: unknown, side_c: unknown): number {
  try {
    return sound(areaTriangle(feet(side_a, "side_a"), feet(side_b, "side_b"), feet(side_c, "side_c")));
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Area of a round bed, or of a ring around a tree or the like.
 * @customfunction AREA_ROUND
 * @param diameter Distance across the bed: feet, or text such as 10'.
 * @param inner_diameter Distance across what stays out in the middle: feet, or text such as 30". Left out: 0.
 * @returns Square feet.
 * @example =BED.AREA_ROUND(10, 3) gives 71.4712
 * @source Plane geometry.
 * @see BED.LAYOUT_ROUND, BED.STONE_TONS
 */
export function AREA_ROUND(diameter: unknown, inner_diameter?: unknown): number {
  try {
    return sound(areaRound(feet(diameter, "diameter"), feetOrZero(inner_diameter, "inner_diameter", 0)));
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Area of a bed from widths taped square to a base line at even spacing, end to end.
 * @customfunction AREA_WIDTHS
 * @param spacing Distance along the base line from one width to the next: feet, or text such as 3'.
 * @param widths The widths in order, one row or column: feet or tape text. 0 where the bed runs to a point.
 * @param rule "simpson" for a curved edge, "trapezoid" for straight stretches. Left out: "simpson".
 * @returns Square feet.
 * @example =BED.AREA_WIDTHS(15, A2:A8) gives 476 for widths 3.9, 4.5, 5.1, 6.5, 6.3, 5.1, 4.1
 * @source Simpson's 1/3 rule and the trapezoidal rule, as surveying textbooks give them.
 * @see BED.EDGE_WIDTHS, BED.LAYOUT_WIDTHS
 */
export function AREA_WIDTHS(spacing: unknown, widths: unknown[][], rule?: unknown): number {
  try {
    return sound(areaWidths(feet(spacing, "spacing"), readWidths(widths, "widths"), widthRule(rule, "rule")));
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Area within an outline from the points of its corners, either way around.
 * @customfunction AREA_POINTS
 * @param points Two columns, x and y, in feet or tape text, one corner a row. Blank rows at the end are skipped.
 * @returns Square feet.
 * @example =BED.AREA_POINTS(A2:B4) gives 6 for 0, 0; 4, 0; 0, 3
 * @source The surveyor's (shoelace) formula.
 * @see BED.EDGE_POINTS, BED.LAYOUT
 */
export function AREA_POINTS(points: unknown[][]): number {
  try {
    return sound(areaPoints(readPoints(points, "points")));
  } catch (reason) {
    throw cellError(reason);
  }
}
