import { INCHES_PER_FOOT } from "../../quantities/units";
import { areaAddress } from "../../spreadsheet/areas";
import { companion, type Measure } from "../sheet/measures";
import type { Study } from "../study";
import { nameOf, short } from "../words";
import { eachMeasure } from "./each";
import type { Observation, Rule } from "./rule";

/** An overlap of more than a third of the roll is fabric thrown away; under 1 in strips come apart (common practice). */
export const [LEAST_IN, MOST_OF_ROLL] = [1, 1 / 3];

export const overlapSense: Rule = {
  id: "overlap-sense",
  title: "An overlap that does not suit the roll",
  level: "odd",
  rank: 20,
  matters: "Too little and weeds come through the seam, too much and a roll is bought for nothing.",
  look: (study) => eachMeasure(study, (measure) => (measure.role === "overlap" ? observe(study, measure) : undefined)),
};

function observe(study: Study, overlap: Measure): Observation | undefined {
  const { cell, amount } = overlap;
  const roll = companion(study, overlap, "roll width");
  const rollIn = roll && roll.amount * INCHES_PER_FOOT;
  const name = `${areaAddress(cell)} (${nameOf(study.book, cell)})`;
  const isLittle = amount > 0 && amount < LEAST_IN;
  const isMuch = rollIn !== undefined && amount > rollIn * MOST_OF_ROLL;
  if (!isLittle && !isMuch) return undefined;
  return {
    cell,
    ...(roll && { more: [roll.cell] }),
    group: `${cell.sheet}:${cell.column}`,
    about: String(amount),
    seen: isMuch
      ? `${name} laps ${short(amount)} in of a roll ${short(rollIn)} in wide (${areaAddress(roll!.cell)}).`
      : `${name} laps ${short(amount)} in; it looks like feet: ${short(amount * INCHES_PER_FOOT)} in.`,
    todo: "Check the unit; 6 to 12 in is common practice.",
    ...(isMuch && amount >= rollIn && { level: "slip" as const, rank: 70 }),
  };
}
