import type { Role } from "../../headings/roles";
import { units } from "../../headings/units";
import { areaAddress } from "../../spreadsheet/areas";
import { companion, type Measure } from "../sheet/measures";
import type { Study } from "../study";
import { nameOf, short } from "../words";
import { eachMeasure } from "./each";
import type { Observation, Rule } from "./rule";

interface Proportion {
  readonly counted: Role;
  readonly over: Role;
  readonly unit: string;
  /** Common practice, with room either way. */
  readonly usual: readonly [low: number, high: number];
}

export const PROPORTIONS: readonly Proportion[] = [
  // Rows a foot apart across a 6 ft strip come to about 0.4 pins a square foot; specifications for heavier duties to 0.1.
  { counted: "pins", over: "area", unit: "sq ft", usual: [0.05, 4] },
  // Stakes 12 to 48 in apart, and those at joints and corners.
  { counted: "stakes", over: "border", unit: "ft", usual: [0.1, 3] },
];

/** A price, a pack or a spacing of pins is no count of them. */
const NO_COUNT = /\b(box(es)?|packs?|cases?|bags?|bay|rows?|per|price|cost|each|extra|come with|spare)\b/i;

export const proportion: Rule = {
  id: "out-of-proportion",
  title: "Pins or stakes out of proportion to the bed",
  level: "odd",
  rank: 10,
  matters: "Fabric lifts or the border leans; or they were counted for another bed.",
  look: (study) =>
    eachMeasure(study, (measure) => {
      const known = PROPORTIONS.find(({ counted }) => counted === measure.role);
      return known && observe(study, measure, known);
    }),
};

function observe(
  study: Study,
  measure: Measure,
  { over, unit, usual: [low, high], counted }: Proportion,
): Observation | undefined {
  const { cell, amount } = measure;
  if ((measure.unit && units[measure.unit].measures !== "count") || amount <= 0) return undefined;
  const base = companion(study, measure, over);
  if (!base || base.amount <= 0 || (base.unit && units[base.unit].measures === "count")) return undefined;
  const share = amount / base.amount;
  // A handful on a very small bed is no proportion.
  if ((share >= low && share <= high) || (share > high && amount < 20)) return undefined;
  const name = nameOf(study.book, cell);
  if (NO_COUNT.test(name)) return undefined;
  return {
    cell,
    more: [base.cell],
    group: `${cell.sheet}:${cell.column}:${share < low}`,
    about: `${amount} ${base.amount}`,
    seen: `${areaAddress(cell)} (${name}) is ${short(amount)} ${counted} for ${short(base.amount)} ${unit} (${areaAddress(base.cell)}): ${short(share)} a ${unit}, where ${short(low)} to ${short(high)} is ordinary.`,
    todo: "Check the spacing, the unit, and which bed was counted.",
  };
}
