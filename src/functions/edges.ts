import { edgeLength } from "../quantities/edge";
import { edgePoints } from "../quantities/outline";
import { edgeWidths } from "../quantities/widths";
import { cellError, sound } from "./cellError";
import { count, feet, feetOrZero, flag } from "./read";
import { points as readPoints, sides as readSides, widths as readWidths } from "./readRanges";

/**
 * Length of edging along the sides of a bed, with some corners rounded.
 * @customfunction EDGE_LENGTH
 * @param sides The sides to edge, as if corners were square: one cell or a range, feet or text such as 18' 6".
 * @param corner_radius Radius of the rounded corners: feet, or text such as 24". Left out: 0.
 * @param rounded_corners How many corners are rounded. Left out: 0.
 * @returns Feet.
 * @example =BED.EDGE_LENGTH(A2:A4, 2, 2) gives 26.7832 for sides 5, 18.5, 5
 * @source Plane geometry: a rounded corner saves (2 − π/2) of its radius.
 * @see BED.AREA_RECTANGLE, BED.EDGING_PIECES, BED.STAKES
 */
export function EDGE_LENGTH(sides: unknown[][], corner_radius?: unknown, rounded_corners?: unknown): number {
  try {
    return sound(
      edgeLength(
        readSides(sides, "sides"),
        feetOrZero(corner_radius, "corner_radius", 0),
        count(rounded_corners, "rounded_corners", Number.POSITIVE_INFINITY, 0),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Length of the outer edge through widths taped from a base line, straight from one to the next.
 * @customfunction EDGE_WIDTHS
 * @param spacing Distance along the base line from one width to the next: feet, or text such as 3'.
 * @param widths The widths in order, one row or column: feet or tape text. 0 where the bed runs to a point.
 * @returns Feet.
 * @example =BED.EDGE_WIDTHS(4, A2:A3) gives 5 for widths 0, 3
 * @source Plane geometry, chord by chord; a curved edge is a little longer.
 * @see BED.AREA_WIDTHS, BED.EDGING_PIECES, BED.STAKES
 */
export function EDGE_WIDTHS(spacing: unknown, widths: unknown[][]): number {
  try {
    return sound(edgeWidths(feet(spacing, "spacing"), readWidths(widths, "widths")));
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Length along an outline from the points of its corners.
 * @customfunction EDGE_POINTS
 * @param points Two columns, x and y, in feet or tape text, one corner a row. Blank rows at the end are skipped.
 * @param closed TRUE if the way back from the last point to the first counts too, else FALSE. Left out: TRUE.
 * @returns Feet.
 * @example =BED.EDGE_POINTS(A2:B4) gives 12 for 0, 0; 4, 0; 0, 3
 * @source Plane geometry.
 * @see BED.AREA_POINTS, BED.EDGING_PIECES, BED.STAKES
 */
export function EDGE_POINTS(points: unknown[][], closed?: unknown): number {
  try {
    return sound(edgePoints(readPoints(points, "points"), flag(closed, "closed", true)));
  } catch (reason) {
    throw cellError(reason);
  }
}
