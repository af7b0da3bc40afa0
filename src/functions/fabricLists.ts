import { rectanglePins } from "../layout/pinPattern";
import { fabricCuts } from "../quantities/fabricRolls";
import { cellError, sound } from "./cellError";
import { feet, inches, inchesOrZero } from "./read";
import { USUAL_BAY_FT, USUAL_END_LAP_IN, USUAL_PIN_SPACING_IN } from "./usual";

/**
 * The lengths of fabric to cut for a rectangular bed, and off which roll each comes.
 * @customfunction FABRIC_CUTS
 * @param length Length of the bed, along the strips: feet, or text such as 18' 6".
 * @param width Width of the bed, across the strips: feet, or text such as 5'.
 * @param roll_width Width of the roll: feet, or text such as 72".
 * @param roll_length Length of the roll: feet, or text such as 50'.
 * @param overlap_in Lap of strips side by side: inches, or text. Less than the roll is wide.
 * @param end_lap_in Lap of pieces end to end within a strip: inches, or text. Left out: 12.
 * @returns A heading row, then strip, piece, roll, where it starts along the strip and its length, a piece a row.
 * @example =INDEX(BED.FABRIC_CUTS(30, 11, 6, 50, 12), 4, 5) gives 11
 * @source Plain arithmetic, roll after roll. An end lap of 12 in: common practice.
 * @see BED.FABRIC_ROLLS, BED.LAYOUT_CUTS
 */
export function FABRIC_CUTS(
  length: unknown,
  width: unknown,
  roll_width: unknown,
  roll_length: unknown,
  overlap_in: unknown,
  end_lap_in?: unknown,
): unknown[][] {
  try {
    const cuts = fabricCuts(
      feet(length, "length"),
      feet(width, "width"),
      feet(roll_width, "roll_width"),
      feet(roll_length, "roll_length"),
      inchesOrZero(overlap_in, "overlap_in"),
      inchesOrZero(end_lap_in, "end_lap_in", USUAL_END_LAP_IN),
    );
    const rows = cuts.map(({ strip, piece, roll, startsAtFt, lengthFt }) => [strip, piece, roll, startsAtFt, lengthFt]);
    return [["Strip", "Piece", "Roll", "Starts at, ft", "Length, ft"], ...rows];
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Every pin of a rectangular bed by its place: x along the strips, y across them.
 * @customfunction PIN_MAP
 * @param length Length of the bed, along the strips: feet, or text such as 18' 6".
 * @param width Width of the bed, across the strips: feet, or text such as 5'.
 * @param roll_width Width of the roll: feet, or text such as 72".
 * @param overlap_in Lap of strips side by side: inches, or text. Less than the roll is wide.
 * @param spacing_in From one row of pins to the next, at most: inches, or text. Left out: 12.
 * @param bay_ft Widest bay across a strip between pairs of pins: feet, or text. Left out: 4.
 * @returns A heading row, then x and y in feet, a pin a row.
 * @example =INDEX(BED.PIN_MAP(12, 12, 12, 0, 18, 3), 42, 1) gives 12
 * @source Common practice: rows like the five on a die, 12 in apart, in bays of 4 ft.
 * @see BED.PINS, BED.LAYOUT_PINS
 */
export function PIN_MAP(
  length: unknown,
  width: unknown,
  roll_width: unknown,
  overlap_in: unknown,
  spacing_in?: unknown,
  bay_ft?: unknown,
): unknown[][] {
  try {
    const map = rectanglePins(
      feet(length, "length"),
      feet(width, "width"),
      feet(roll_width, "roll_width"),
      inchesOrZero(overlap_in, "overlap_in"),
      inches(spacing_in, "spacing_in", USUAL_PIN_SPACING_IN),
      feet(bay_ft, "bay_ft", USUAL_BAY_FT),
    );
    return [["x, ft", "y, ft"], ...map.map(({ x, y }) => [sound(x), sound(y)])];
  } catch (reason) {
    throw cellError(reason);
  }
}
