import type { Role } from "../../headings/roles";
import { INCHES_PER_FOOT } from "../../quantities/units";
import { areaAddress } from "../../spreadsheet/areas";
import type { Measure } from "../sheet/measures";
import type { Study } from "../study";
import { nameOf, short } from "../words";
import { eachMeasure } from "./each";
import { change, type Observation, type Rule } from "./rule";

const DEPTHS = new Set<Role>(["border height", "scrape", "depth", "trench depth"]);
/** Depths that are dug and filled, in inches (common practice: 1 to 9, borders up to 12). */
export const [SHALLOWEST_IN, DEEPEST_IN] = [1, 12];
/** Less than this is no depth in inches, more than this none in feet. */
export const [LEAST_IN, MOST_FT] = [0.76, 1.5];

export const depthUnit: Rule = {
  id: "depth-unit",
  title: "A depth looks like feet among inches, or the reverse",
  level: "slip",
  rank: 95,
  matters: "Stone and digging come out twelve times too small or too large.",
  covers: ["depth-sense", "whole-percent"],
  look: (study) =>
    eachMeasure(study, (measure) =>
      DEPTHS.has(measure.role) && measure.isTyped ? observe(study, measure) : undefined,
    ),
};

function observe(study: Study, { cell, number, unit, role }: Measure): Observation | undefined {
  const isInches = unit === undefined || unit === "in";
  if (!isInches && unit !== "ft") return undefined;
  const looksLikeFeet = isInches && number < LEAST_IN && inRange(number * INCHES_PER_FOOT);
  const looksLikeInches = !isInches && number >= MOST_FT && inRange(number);
  if (!looksLikeFeet && !looksLikeInches) return undefined;
  // A trench or a gap may be a fraction of an inch.
  if (looksLikeFeet && role === "trench depth" && unit) return undefined;
  const inches = looksLikeFeet ? number * INCHES_PER_FOOT : number;
  const mended = Number((looksLikeFeet ? number * INCHES_PER_FOOT : number / INCHES_PER_FOOT).toPrecision(6));
  return {
    cell,
    group: `${cell.sheet}:${role}:${isInches}`,
    about: String(number),
    seen:
      `${areaAddress(cell)} (${nameOf(study.book, cell)}) holds ${short(number)} ${isInches ? "in" : "ft"}, ` +
      `which looks like ${isInches ? "feet" : "inches"}: ${short(inches)} in.`,
    todo: `Type ${short(mended)}, or tape text with its unit, such as ${short(inches)}".`,
    fix: [change(study, cell, mended)],
  };
}

const inRange = (inches: number) => inches >= SHALLOWEST_IN && inches <= DEEPEST_IN;
