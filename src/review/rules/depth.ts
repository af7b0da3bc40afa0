import type { Role } from "../../headings/roles";
import { DEPTH_LIMITS } from "../../quantities/bed/depthVerdict";
import { INCHES_PER_FOOT } from "../../quantities/units";
import { areaAddress } from "../../spreadsheet/areas";
import { companion, type Measure } from "../sheet/measures";
import type { Study } from "../study";
import { short } from "../words";
import { change, eachMeasure, type Observation, type Rule } from "./rule";

const DEPTHS = new Set<Role>(["border height", "scrape", "depth", "trench depth"]);
/** Depths that are dug and filled, in inches (common practice: 1 to 9, borders up to 12). */
export const [SHALLOWEST_IN, DEEPEST_IN] = [1, 12];
/** Less than this is no depth in inches, more than this none in feet. */
export const [LEAST_IN, MOST_FT] = [0.76, 1.5];

export const depthUnit: Rule = {
  id: "depth-unit",
  title: "A depth looks like feet instead of inches, or the reverse",
  level: "error",
  rank: 95,
  matters: "Stone and digging come out 12 times too small or too large.",
  covers: ["depth-sense", "whole-percent"],
  look: (study) =>
    eachMeasure(study, (measure) =>
      DEPTHS.has(measure.role) && measure.isTyped ? observeDepthUnit(study, measure) : undefined,
    ),
};

function observeDepthUnit(study: Study, { cell, number, unit, role }: Measure): Observation | undefined {
  const isInches = unit === undefined || unit === "in";
  if (!isInches && unit !== "ft") return undefined;
  const looksLikeFeet = isInches && number < LEAST_IN && inRange(number * INCHES_PER_FOOT);
  const looksLikeInches = !isInches && number >= MOST_FT && inRange(number);
  if (!looksLikeFeet && !looksLikeInches) return undefined;
  // A trench or a gap may be a fraction of an inch.
  if (looksLikeFeet && role === "trench depth" && unit) return undefined;
  const inches = looksLikeFeet ? number * INCHES_PER_FOOT : number;
  const corrected = Number((looksLikeFeet ? number * INCHES_PER_FOOT : number / INCHES_PER_FOOT).toPrecision(6));
  return {
    cell,
    group: `${cell.sheet}:${role}:${isInches}`,
    about: String(number),
    seen:
      `holds ${short(number)} ${isInches ? "in" : "ft"}, ` +
      `which looks like ${isInches ? "feet" : "inches"}: ${short(inches)} in.`,
    todo: `Type ${short(corrected)}, or type it with its unit, like ${short(inches)}".`,
    fix: [change(study, cell, corrected)],
  };
}

const inRange = (inches: number) => inches >= SHALLOWEST_IN && inches <= DEEPEST_IN;

const SLACK = 1.001;

export const depthSense: Rule = {
  id: "depth-sense",
  title: "A depth that doesn't fit the stone or the edging",
  level: "warning",
  rank: 25,
  matters: "Fabric shows, stone spills over the edging, or you pay for stone no one sees.",
  look: (study) =>
    eachMeasure(study, (measure) =>
      measure.role === "depth" && measure.amount > 0 ? observeDepthSense(study, measure) : undefined,
    ),
};

function* observeDepthSense(study: Study, depth: Measure): Generator<Observation> {
  const { cell, amount } = depth;
  const seen = (what: string, words: string, todo: string, more?: Measure): Observation => ({
    cell,
    cause: study.book.shownBy(cell),
    ...(more && { more: [more.cell] }),
    group: `${cell.sheet}:${cell.column}:${what}`,
    about: `${what} ${amount}`,
    seen: words,
    todo,
  });
  const size = companion(study, depth, "stone size");
  const border = companion(study, depth, "border height");
  if (amount < DEPTH_LIMITS.leastIn) {
    yield seen("shallow", `is ${short(amount)} in of stone: fabric will show through.`, "Make it 1.5 in or more.");
  } else if (amount > DEPTH_LIMITS.mostIn) {
    yield seen(
      "deep",
      `is ${short(amount)} in of stone: more than anyone sees.`,
      "Make it 6 in or less, or ignore this and say why.",
    );
  }
  if (size && size.amount > amount * DEPTH_LIMITS.stoneShare * SLACK) {
    yield seen(
      "stone",
      `is ${short(amount)} in deep for stone up to ${short(size.amount)} in (${areaAddress(size.cell)}), over two-thirds of the depth.`,
      "Use smaller stone, or taller edging and more depth.",
      size,
    );
  }
  if (border && amount > border.amount * SLACK) {
    yield seen(
      "border",
      `is ${short(amount)} in deep behind ${short(border.amount)} in edging (${areaAddress(border.cell)}), so it spills over.`,
      "Use taller edging or less depth.",
      border,
    );
  }
}
