import { areaInPlan } from "../layout/areaInPlan";
import type { Bed } from "../layout/bed";
import { layFabric } from "../layout/layFabric";
import type { FabricLayout } from "../layout/layout";
import { type FabricOptions, fabricRulesOf } from "../layout/options";
import { type Outline, ringLength } from "../layout/outline";
import { borderlessOutlineOf } from "../layout/outlineOf";
import { coordinate, feet, inches, inchesOrZero } from "./read";
import { USUAL_BAY_FT, USUAL_END_LAP_IN, USUAL_PIN_SPACING_IN } from "./usual";

/** How fabric is laid, from the arguments that all layout functions share, in their order. */
export function fabricOptions(
  roll_width: unknown,
  roll_length: unknown,
  overlap_in: unknown,
  end_lap_in: unknown,
  spacing_in: unknown,
  bay_ft: unknown,
  direction: unknown,
): FabricOptions {
  return {
    rollWidthFt: feet(roll_width, "roll_width"),
    rollLengthFt: feet(roll_length, "roll_length"),
    overlapIn: inchesOrZero(overlap_in, "overlap_in"),
    endLapIn: inchesOrZero(end_lap_in, "end_lap_in", USUAL_END_LAP_IN),
    pinSpacingIn: inches(spacing_in, "spacing_in", USUAL_PIN_SPACING_IN),
    bayFt: feet(bay_ft, "bay_ft", USUAL_BAY_FT),
    ...(direction !== undefined && direction !== null && direction !== ""
      ? { directionDegrees: coordinate(direction, "direction") }
      : {}),
  };
}

/** A bed with its fabric and pins in plan. */
export interface Laid {
  readonly outline: Outline;
  readonly areaSqFt: number;
  readonly fabric: FabricLayout;
}

/**
 * Beds that were laid out last. A sheet asks for strips, rolls and pins of the same bed in several cells, and each
 * gets the answer of the one layout.
 */
const recent = new Map<string, Laid>();
const MOST_RECENT = 32;

/** Lays a bed out. The same bed and options give the same layout, so an earlier answer serves again. */
export function laid(bed: Bed, options: FabricOptions): Laid {
  const key = JSON.stringify([bed, options]);
  const known = recent.get(key);
  if (known) return known;
  const outline = borderlessOutlineOf(bed);
  const answer = { outline, areaSqFt: areaInPlan(bed, outline), fabric: layFabric(outline, fabricRulesOf(options)) };
  if (recent.size >= MOST_RECENT) recent.delete(recent.keys().next().value!);
  recent.set(key, answer);
  return answer;
}

const HEADINGS = ["Area, sq ft", "Edge, ft", "Strips", "Fabric, sq ft", "Rolls", "Overlaps, ft", "Pins"];

/** The counts of a layout under their headings. */
export function summaryOf({ outline, areaSqFt, fabric: { counts } }: Laid): (string | number)[][] {
  const { strips, fabricSqFt, rolls, seamLengthFt, pins } = counts;
  return [HEADINGS, [areaSqFt, ringLength(outline.ring), strips, fabricSqFt, rolls, seamLengthFt, pins]];
}

// A place turned back from the strips' frame may be -0, which no cell should show: + 0 makes a plain 0 of it.

/** The lengths to cut, a piece a row. */
export function cutsOf({ fabric }: Laid): (string | number)[][] {
  const rows = fabric.cuts.flatMap(({ number, strip, pieces }) =>
    pieces.map(({ roll, startsAtFt, lengthFt }, piece) => [number, strip, piece + 1, roll, startsAtFt + 0, lengthFt]),
  );
  return [["Cut", "Strip", "Piece", "Roll", "Starts at, ft", "Length, ft"], ...rows];
}

/** Every pin, with why it stands there. */
export function pinsOf({ fabric }: Laid): (string | number)[][] {
  const why = { corner: "corner", edge: "edge", cutOut: "cut-out", seam: "overlap", lap: "end lap", row: "row" };
  return [["x, ft", "y, ft", "Stands at"], ...fabric.pins.map(({ x, y, kind }) => [x + 0, y + 0, why[kind]])];
}
