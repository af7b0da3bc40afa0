import { fabricArea, fabricStrips } from "../quantities/fabric";
import { fabricRolls } from "../quantities/fabricRolls";
import { pins } from "../quantities/pins";
import { cellError, sound } from "./cellError";
import { feet, feetOrZero, inches, inchesOrZero } from "./read";
import { USUAL_BAY_FT, USUAL_END_LAP_IN, USUAL_PIN_SPACING_IN } from "./usual";

/**
 * Strips of fabric side by side across a bed, each lapping the one beside it.
 * @customfunction FABRIC_STRIPS
 * @param bed_width Width of the bed, across the strips: feet, or text such as 11'.
 * @param roll_width Width of the roll: feet, or text such as 72".
 * @param overlap_in Lap of strips side by side: inches, or text. Less than the roll is wide.
 * @returns Whole strips.
 * @example =BED.FABRIC_STRIPS(11, 6, 12) gives 2
 * @source Plain arithmetic over strips and overlaps.
 * @see BED.FABRIC_AREA, BED.FABRIC_ROLLS, BED.PINS
 */
export function FABRIC_STRIPS(bed_width: unknown, roll_width: unknown, overlap_in: unknown): number {
  try {
    return sound(
      fabricStrips(
        feet(bed_width, "bed_width"),
        feet(roll_width, "roll_width"),
        inchesOrZero(overlap_in, "overlap_in"),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Fabric that lies in the bed, with the laps counted twice.
 * @customfunction FABRIC_AREA
 * @param length Length of the bed, along the strips: feet, or text such as 18' 6".
 * @param width Width of the bed, across the strips: feet, or text such as 5'.
 * @param roll_width Width of the roll: feet, or text such as 72".
 * @param overlap_in Lap of strips side by side: inches, or text. Less than the roll is wide.
 * @param roll_length Length of the roll: feet, or text such as 50'. Left out: strips are laid without a joint.
 * @param end_lap_in Lap of pieces end to end within a strip: inches, or text. Left out: 12.
 * @returns Square feet.
 * @example =BED.FABRIC_AREA(30, 11, 6, 12) gives 360
 * @source Plain arithmetic over strips and laps. An end lap of 12 in: common practice.
 * @see BED.FABRIC_ROLLS, BED.FABRIC_STRIPS, BED.LAYOUT
 */
export function FABRIC_AREA(
  length: unknown,
  width: unknown,
  roll_width: unknown,
  overlap_in: unknown,
  roll_length?: unknown,
  end_lap_in?: unknown,
): number {
  try {
    return sound(
      fabricArea(
        feet(length, "length"),
        feet(width, "width"),
        feet(roll_width, "roll_width"),
        inchesOrZero(overlap_in, "overlap_in"),
        feet(roll_length, "roll_length", Number.POSITIVE_INFINITY),
        inchesOrZero(end_lap_in, "end_lap_in", USUAL_END_LAP_IN),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Rolls of fabric to buy, cut in full-width strips and used up one roll after another.
 * @customfunction FABRIC_ROLLS
 * @param length Length of the bed, along the strips: feet, or text such as 18' 6".
 * @param width Width of the bed, across the strips: feet, or text such as 5'.
 * @param roll_width Width of the roll: feet, or text such as 72".
 * @param roll_length Length of the roll: feet, or text such as 50'.
 * @param overlap_in Lap of strips side by side: inches, or text. Less than the roll is wide.
 * @param end_lap_in Lap of pieces end to end within a strip: inches, or text. Left out: 12.
 * @returns Whole rolls.
 * @example =BED.FABRIC_ROLLS(30, 11, 6, 50, 12) gives 2
 * @source Plain arithmetic, roll after roll. An end lap of 12 in: common practice.
 * @see BED.FABRIC_CUTS, BED.FABRIC_AREA, BED.LAYOUT
 */
export function FABRIC_ROLLS(
  length: unknown,
  width: unknown,
  roll_width: unknown,
  roll_length: unknown,
  overlap_in: unknown,
  end_lap_in?: unknown,
): number {
  try {
    return sound(
      fabricRolls(
        feet(length, "length"),
        feet(width, "width"),
        feet(roll_width, "roll_width"),
        feet(roll_length, "roll_length"),
        inchesOrZero(overlap_in, "overlap_in"),
        inchesOrZero(end_lap_in, "end_lap_in", USUAL_END_LAP_IN),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Pins to hold the fabric: pairs and singles in turn, at every corner, and along every overlap.
 * @customfunction PINS
 * @param length Length of the bed, along the strips: feet, or text such as 18' 6".
 * @param width Width of the bed, across the strips: feet, or text such as 5'.
 * @param roll_width Width of the roll: feet, or text such as 72".
 * @param overlap_in Lap of strips side by side: inches, or text. Less than the roll is wide.
 * @param spacing_in From one row of pins to the next, at most: inches, or text. Left out: 12.
 * @param cut_around_ft Edge of what the fabric is cut around, all together: feet, or text. Left out: 0.
 * @param bay_ft Widest bay across a strip between pairs of pins: feet, or text. Left out: 4.
 * @returns Whole pins.
 * @example =BED.PINS(12, 12, 12, 0, 18, 0, 3) gives 41
 * @source Common practice: rows like the five on a die, 12 in apart, in bays of 4 ft.
 * @see BED.PIN_MAP, BED.LAYOUT_PINS, BED.FABRIC_STRIPS
 */
export function PINS(
  length: unknown,
  width: unknown,
  roll_width: unknown,
  overlap_in: unknown,
  spacing_in?: unknown,
  cut_around_ft?: unknown,
  bay_ft?: unknown,
): number {
  try {
    return sound(
      pins(
        feet(length, "length"),
        feet(width, "width"),
        feet(roll_width, "roll_width"),
        inchesOrZero(overlap_in, "overlap_in"),
        inches(spacing_in, "spacing_in", USUAL_PIN_SPACING_IN),
        feetOrZero(cut_around_ft, "cut_around_ft", 0),
        feet(bay_ft, "bay_ft", USUAL_BAY_FT),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}
