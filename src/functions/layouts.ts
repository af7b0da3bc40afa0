import type { Bed } from "../layout/bed";
import { cellError } from "./cellError";
import { cutsOf, fabricOptions, laid, pinsOf, summaryOf } from "./laying";
import { count, feet, feetOrZero } from "./read";
import { cutOuts } from "./readCutOuts";
import { points as readPoints, widths as readWidths } from "./readRanges";

const CORNERS_OF_A_RECTANGLE = 4;

const corners = (range: unknown) => readPoints(range, "points").map(([x, y]) => ({ x, y }));

/**
 * Lays a bed of any shape out in plan, and counts fabric and pins as the crew will set them.
 * @customfunction LAYOUT
 * @param points Corners in order round the bed: a range of x and y in feet, a corner a row.
 * @param roll_width Width of the roll: feet, or text such as 72".
 * @param roll_length Length of the roll: feet, or text such as 50'.
 * @param overlap_in Lap of strips side by side: inches, or text. Less than the roll is wide.
 * @param end_lap_in Lap of pieces end to end within a strip: inches, or text. Left out: 12.
 * @param spacing_in Pins at most this far apart: inches, or text. Left out: 12.
 * @param cut_outs What stands in the bed, one a row: x, y, width, and depth if it is no circle; feet. Left out: nothing.
 * @param bay_ft Widest bay across a strip between pairs of pins: feet, or text. Left out: 4.
 * @param direction Degrees of the strips from the base line. Left out: the way that takes the least fabric.
 * @returns A heading row, then area, edge, strips, fabric, rolls, overlaps and pins.
 * @example =INDEX(BED.LAYOUT(A1:B4, 12, 50, 0, 12, 18), 2, 7) gives 32 for 0, 0; 12, 0; 12, 12; 0, 12
 * @source Common practice for laps and pins; areas and lengths by plane geometry. The bed is drawn in plan and counted.
 * @see BED.LAYOUT_CUTS, BED.LAYOUT_PINS, BED.AREA_POINTS
 */
export function LAYOUT(
  points: unknown[][],
  roll_width: unknown,
  roll_length: unknown,
  overlap_in: unknown,
  end_lap_in?: unknown,
  spacing_in?: unknown,
  cut_outs?: unknown[][],
  bay_ft?: unknown,
  direction?: unknown,
): unknown[][] {
  try {
    const bed: Bed = { kind: "points", points: corners(points), cutOuts: cutOuts(cut_outs, "cut_outs") };
    return summaryOf(
      laid(bed, fabricOptions(roll_width, roll_length, overlap_in, end_lap_in, spacing_in, bay_ft, direction)),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Lays a bed taped by widths from a base line out in plan, and counts fabric and pins.
 * @customfunction LAYOUT_WIDTHS
 * @param spacing Even spacing of the widths along the base line: feet, or text such as 4'.
 * @param widths Widths taped square to the base line, in one row or column: feet or text. 0 where it runs to a point.
 * @param roll_width Width of the roll: feet, or text such as 72".
 * @param roll_length Length of the roll: feet, or text such as 50'.
 * @param overlap_in Lap of strips side by side: inches, or text. Less than the roll is wide.
 * @param end_lap_in Lap of pieces end to end within a strip: inches, or text. Left out: 12.
 * @param spacing_in Pins at most this far apart: inches, or text. Left out: 12.
 * @param cut_outs What stands in the bed, one a row: x, y, width, and depth if it is no circle; feet. Left out: nothing.
 * @param bay_ft Widest bay across a strip between pairs of pins: feet, or text. Left out: 4.
 * @param direction Degrees of the strips from the base line. Left out: the way that takes the least fabric.
 * @returns A heading row, then area, edge, strips, fabric, rolls, overlaps and pins.
 * @example =INDEX(BED.LAYOUT_WIDTHS(10, A1:A3, 6, 50, 6), 2, 1) gives 120 for widths 6, 6, 6
 * @source Common practice for laps and pins; areas and lengths by plane geometry. The bed is drawn in plan and counted.
 * @see BED.AREA_WIDTHS, BED.EDGE_WIDTHS, BED.LAYOUT
 */
export function LAYOUT_WIDTHS(
  spacing: unknown,
  widths: unknown[][],
  roll_width: unknown,
  roll_length: unknown,
  overlap_in: unknown,
  end_lap_in?: unknown,
  spacing_in?: unknown,
  cut_outs?: unknown[][],
  bay_ft?: unknown,
  direction?: unknown,
): unknown[][] {
  try {
    const bed: Bed = {
      kind: "widths",
      spacingFt: feet(spacing, "spacing"),
      widthsFt: readWidths(widths, "widths"),
      cutOuts: cutOuts(cut_outs, "cut_outs"),
    };
    return summaryOf(
      laid(bed, fabricOptions(roll_width, roll_length, overlap_in, end_lap_in, spacing_in, bay_ft, direction)),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Lays a rectangular bed with rounded corners out in plan, and counts fabric and pins.
 * @customfunction LAYOUT_RECTANGLE
 * @param length Length of the bed: feet, or text such as 18' 6".
 * @param width Width of the bed: feet, or text such as 5'.
 * @param corner_radius Radius of the rounded corners: feet, or text such as 24". Blank: 0.
 * @param rounded_corners How many corners are rounded, 0 to 4, those away from the base line first. Blank: 0.
 * @param roll_width Width of the roll: feet, or text such as 72".
 * @param roll_length Length of the roll: feet, or text such as 50'.
 * @param overlap_in Lap of strips side by side: inches, or text. Less than the roll is wide.
 * @param end_lap_in Lap of pieces end to end within a strip: inches, or text. Left out: 12.
 * @param spacing_in Pins at most this far apart: inches, or text. Left out: 12.
 * @param cut_outs What stands in the bed, one a row: x, y, width, and depth if it is no circle; feet. Left out: nothing.
 * @param bay_ft Widest bay across a strip between pairs of pins: feet, or text. Left out: 4.
 * @param direction Degrees of the strips from the base line. Left out: the way that takes the least fabric.
 * @returns A heading row, then area, edge, strips, fabric, rolls, overlaps and pins.
 * @example =INDEX(BED.LAYOUT_RECTANGLE(18.5, 5, 2, 2, 6, 50, 6), 2, 1) gives 90.7832
 * @source Common practice for laps and pins; areas and lengths by plane geometry. The bed is drawn in plan and counted.
 * @see BED.AREA_RECTANGLE, BED.FABRIC_ROLLS, BED.PINS, BED.LAYOUT
 */
export function LAYOUT_RECTANGLE(
  length: unknown,
  width: unknown,
  corner_radius: unknown,
  rounded_corners: unknown,
  roll_width: unknown,
  roll_length: unknown,
  overlap_in: unknown,
  end_lap_in?: unknown,
  spacing_in?: unknown,
  cut_outs?: unknown[][],
  bay_ft?: unknown,
  direction?: unknown,
): unknown[][] {
  try {
    const bed: Bed = {
      kind: "rectangle",
      lengthFt: feet(length, "length"),
      widthFt: feet(width, "width"),
      cornerRadiusFt: feetOrZero(corner_radius, "corner_radius", 0),
      roundedCorners: count(rounded_corners, "rounded_corners", CORNERS_OF_A_RECTANGLE, 0),
      cutOuts: cutOuts(cut_outs, "cut_outs"),
    };
    return summaryOf(
      laid(bed, fabricOptions(roll_width, roll_length, overlap_in, end_lap_in, spacing_in, bay_ft, direction)),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Lays a round bed or a ring out in plan, and counts fabric and pins.
 * @customfunction LAYOUT_ROUND
 * @param diameter Diameter of the bed: feet, or text such as 7' 6".
 * @param inner_diameter Diameter of the ground left free in its middle: feet, or text. Blank: 0.
 * @param roll_width Width of the roll: feet, or text such as 72".
 * @param roll_length Length of the roll: feet, or text such as 50'.
 * @param overlap_in Lap of strips side by side: inches, or text. Less than the roll is wide.
 * @param end_lap_in Lap of pieces end to end within a strip: inches, or text. Left out: 12.
 * @param spacing_in Pins at most this far apart: inches, or text. Left out: 12.
 * @param cut_outs What stands in the bed, one a row: x, y, width, and depth if it is no circle; feet. Left out: nothing.
 * @param bay_ft Widest bay across a strip between pairs of pins: feet, or text. Left out: 4.
 * @param direction Degrees of the strips from the base line. Left out: the way that takes the least fabric.
 * @returns A heading row, then area, edge, strips, fabric, rolls, overlaps and pins.
 * @example =INDEX(BED.LAYOUT_ROUND(10, 3, 6, 50, 6), 2, 1) gives 71.4712
 * @source Common practice for laps and pins; areas and lengths by plane geometry. The bed is drawn in plan and counted.
 * @see BED.AREA_ROUND, BED.LAYOUT
 */
export function LAYOUT_ROUND(
  diameter: unknown,
  inner_diameter: unknown,
  roll_width: unknown,
  roll_length: unknown,
  overlap_in: unknown,
  end_lap_in?: unknown,
  spacing_in?: unknown,
  cut_outs?: unknown[][],
  bay_ft?: unknown,
  direction?: unknown,
): unknown[][] {
  try {
    const bed: Bed = {
      kind: "round",
      diameterFt: feet(diameter, "diameter"),
      innerDiameterFt: feetOrZero(inner_diameter, "inner_diameter", 0),
      cutOuts: cutOuts(cut_outs, "cut_outs"),
    };
    return summaryOf(
      laid(bed, fabricOptions(roll_width, roll_length, overlap_in, end_lap_in, spacing_in, bay_ft, direction)),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * The lengths of fabric to cut for a bed of any shape, and off which roll each comes.
 * @customfunction LAYOUT_CUTS
 * @param points Corners in order round the bed: a range of x and y in feet, a corner a row.
 * @param roll_width Width of the roll: feet, or text such as 72".
 * @param roll_length Length of the roll: feet, or text such as 50'.
 * @param overlap_in Lap of strips side by side: inches, or text. Less than the roll is wide.
 * @param end_lap_in Lap of pieces end to end within a strip: inches, or text. Left out: 12.
 * @param spacing_in Pins at most this far apart: inches, or text. Left out: 12.
 * @param cut_outs What stands in the bed, one a row: x, y, width, and depth if it is no circle; feet. Left out: nothing.
 * @param bay_ft Widest bay across a strip between pairs of pins: feet, or text. Left out: 4.
 * @param direction Degrees of the strips from the base line. Left out: the way that takes the least fabric.
 * @returns A heading row, then a row for each piece.
 * @example =INDEX(BED.LAYOUT_CUTS(A1:B4, 12, 50, 0), 2, 6) gives 12 for 0, 0; 12, 0; 12, 12; 0, 12
 * @source Common practice for laps and pins; areas and lengths by plane geometry. The bed is drawn in plan and counted.
 * @see BED.LAYOUT, BED.FABRIC_CUTS
 */
export function LAYOUT_CUTS(
  points: unknown[][],
  roll_width: unknown,
  roll_length: unknown,
  overlap_in: unknown,
  end_lap_in?: unknown,
  spacing_in?: unknown,
  cut_outs?: unknown[][],
  bay_ft?: unknown,
  direction?: unknown,
): unknown[][] {
  try {
    const bed: Bed = { kind: "points", points: corners(points), cutOuts: cutOuts(cut_outs, "cut_outs") };
    return cutsOf(
      laid(bed, fabricOptions(roll_width, roll_length, overlap_in, end_lap_in, spacing_in, bay_ft, direction)),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Every pin of a bed of any shape, by its place in plan.
 * @customfunction LAYOUT_PINS
 * @param points Corners in order round the bed: a range of x and y in feet, a corner a row.
 * @param roll_width Width of the roll: feet, or text such as 72".
 * @param roll_length Length of the roll: feet, or text such as 50'.
 * @param overlap_in Lap of strips side by side: inches, or text. Less than the roll is wide.
 * @param end_lap_in Lap of pieces end to end within a strip: inches, or text. Left out: 12.
 * @param spacing_in Pins at most this far apart: inches, or text. Left out: 12.
 * @param cut_outs What stands in the bed, one a row: x, y, width, and depth if it is no circle; feet. Left out: nothing.
 * @param bay_ft Widest bay across a strip between pairs of pins: feet, or text. Left out: 4.
 * @param direction Degrees of the strips from the base line. Left out: the way that takes the least fabric.
 * @returns A heading row, then a row for each pin.
 * @example =INDEX(BED.LAYOUT_PINS(A1:B4, 12, 50, 0, 12, 18), 2, 1) gives 0 for 0, 0; 12, 0; 12, 12; 0, 12
 * @source Common practice for laps and pins; areas and lengths by plane geometry. The bed is drawn in plan and counted.
 * @see BED.LAYOUT, BED.PIN_MAP, BED.PINS
 */
export function LAYOUT_PINS(
  points: unknown[][],
  roll_width: unknown,
  roll_length: unknown,
  overlap_in: unknown,
  end_lap_in?: unknown,
  spacing_in?: unknown,
  cut_outs?: unknown[][],
  bay_ft?: unknown,
  direction?: unknown,
): unknown[][] {
  try {
    const bed: Bed = { kind: "points", points: corners(points), cutOuts: cutOuts(cut_outs, "cut_outs") };
    return pinsOf(
      laid(bed, fabricOptions(roll_width, roll_length, overlap_in, end_lap_in, spacing_in, bay_ft, direction)),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}
