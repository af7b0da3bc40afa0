import { digYards, spoilYards } from "../quantities/digging";
import { loads } from "../quantities/hauling";
import { cellError, sound } from "./cellError";
import { feetOrZero, inches, inchesOrZero, positive, positiveOrZero } from "./read";
import { notTooHeavy, soilSwell } from "./readNamed";

const USUAL_TRENCH_WIDTH_IN = 4;

/**
 * Soil to dig, measured in the ground: the scrape, and the edging trench cut below it.
 * @customfunction DIG_YARDS
 * @param area Area of the bed in square feet.
 * @param depth_in Depth of the scrape: inches, or text such as 2 1/2".
 * @param trench_length Length of the edging trench: feet, or text such as 26' 9". Left out: 0.
 * @param trench_width_in Width of the trench: inches, or text. Left out: 4.
 * @param trench_depth_in Depth of the trench below the scraped floor: inches, or text such as 1 1/2". Left out: 0.
 * @returns Cubic yards in the ground (bank).
 * @example =BED.DIG_YARDS(400, 3) gives 3.7037
 * @source 27 cubic feet are a cubic yard (NIST Handbook 44, Appendix C). A trench 4 in wide: common practice.
 * @see BED.SPOIL_YARDS, BED.LOADS
 */
export function DIG_YARDS(
  area: unknown,
  depth_in: unknown,
  trench_length?: unknown,
  trench_width_in?: unknown,
  trench_depth_in?: unknown,
): number {
  try {
    return sound(
      digYards(
        positive(area, "area"),
        inches(depth_in, "depth_in"),
        feetOrZero(trench_length, "trench_length", 0),
        inches(trench_width_in, "trench_width_in", USUAL_TRENCH_WIDTH_IN),
        inchesOrZero(trench_depth_in, "trench_depth_in", 0),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Soil to haul: dug soil swells and takes more room than it did in the ground.
 * @customfunction SPOIL_YARDS
 * @param bank_yards Cubic yards measured in the ground, as from BED.DIG_YARDS.
 * @param soil Swell such as 25%, or a soil: "sand", "loam", "clay", "blasted rock". Left out: "loam".
 * @returns Loose cubic yards.
 * @example =BED.SPOIL_YARDS(3.7037, "loam") gives 4.6296
 * @source Swell of the soils by name: US Army FM 5-434 (2000), Table 1-1 (from memory).
 * @see BED.DIG_YARDS, BED.LOADS
 */
export function SPOIL_YARDS(bank_yards: unknown, soil?: unknown): number {
  try {
    return sound(spoilYards(positiveOrZero(bank_yards, "bank_yards"), soilSwell(soil, "soil")));
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Truck or trailer loads, by volume and by weight: the larger. A weight left out or blank: weight is not looked at.
 * @customfunction LOADS
 * @param yards Loose cubic yards to carry. 0 yards is 0 loads.
 * @param truck_yards Cubic yards that the truck or trailer holds.
 * @param tons_per_yard Weight of the load, short tons a cubic yard. Left out, blank or 0: weight is not looked at.
 * @param payload_tons Short tons that may be loaded: rated gross less empty weight. Left out, blank or 0: weight is not looked at.
 * @returns Whole loads.
 * @example =BED.LOADS(4.63, 5, 1.3, 2.55) gives 3
 * @source Plain arithmetic; that weight rules as well as volume is common practice.
 * @see BED.SPOIL_YARDS, BED.BARROW_TRIPS
 */
export function LOADS(yards: unknown, truck_yards: unknown, tons_per_yard?: unknown, payload_tons?: unknown): number {
  try {
    return sound(
      loads(
        positiveOrZero(yards, "yards"),
        positive(truck_yards, "truck_yards"),
        notTooHeavy(positiveOrZero(tons_per_yard, "tons_per_yard", 0), "tons_per_yard"),
        positiveOrZero(payload_tons, "payload_tons", 0),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}
