import type { Role } from "../../headings/roles";
import { units } from "../../headings/units";
import { must } from "../../quantities/must";
import { INCHES_PER_FOOT } from "../../quantities/units";
import { areaAddress } from "../../spreadsheet/areas";
import type { Cell } from "../book";
import { calledName, isCall, walk } from "../formula/tree";
import { fullName } from "../knowledge";
import { companion, type Measure } from "../sheet/measures";
import type { Study } from "../study";
import { addressFrom, nameOf, short } from "../words";
import { eachFormula, eachMeasure, type Observation, type Rule } from "./rule";

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
  title: "Too many or too few pins or stakes for the bed",
  level: "warning",
  rank: 10,
  matters: "Fabric lifts or edging leans, or they were counted for another bed.",
  look: (study) =>
    eachMeasure(study, (measure) => {
      const known = PROPORTIONS.find(({ counted }) => counted === measure.role);
      return known && observeProportion(study, measure, known);
    }),
};

function observeProportion(
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
    echoOf: study.book.restsOn(cell),
    seen: `is ${short(amount)} ${counted} for ${short(base.amount)} ${unit} (${areaAddress(base.cell)}): ${short(share)} per ${unit}; ${short(low)} to ${short(high)} is typical.`,
    todo: "Check the spacing, the unit, and which bed it counts.",
  };
}

/** An overlap of more than a third of the roll is fabric thrown away; under 1 in strips come apart (common practice). */
export const [LEAST_IN, MOST_OF_ROLL] = [1, 1 / 3];

/** No one laps more by intent (common practice: 6 to 12). */
const USUAL_IN = 12;

export const overlapSense: Rule = {
  id: "overlap-sense",
  title: "An overlap that doesn't fit the roll",
  level: "warning",
  rank: 20,
  matters: "Too little and weeds come through the seam; too much and you waste fabric.",
  look: (study) =>
    eachMeasure(study, (measure) => (measure.role === "overlap" ? observeOverlapSense(study, measure) : undefined)),
};

function observeOverlapSense(study: Study, overlap: Measure): Observation | undefined {
  const { cell, amount } = overlap;
  const roll = companion(study, overlap, "roll width");
  const rollIn = roll && roll.amount * INCHES_PER_FOOT;
  const isLittle = amount > 0 && amount < LEAST_IN;
  const isMuch = rollIn !== undefined && amount > rollIn * MOST_OF_ROLL;
  if (!isLittle && !isMuch) return undefined;
  return {
    cell,
    // An overlap that is usual is right, and the roll is not.
    cause: study.book.shownBy(roll && isMuch && amount <= USUAL_IN ? roll.cell : cell),
    ...(roll && { more: [roll.cell] }),
    group: `${cell.sheet}:${cell.column}`,
    about: String(amount),
    seen: isMuch
      ? `laps ${short(amount)} in of a roll ${short(rollIn)} in wide (${areaAddress(must(roll).cell)}).`
      : `laps ${short(amount)} in; it looks like feet: ${short(amount * INCHES_PER_FOOT)} in.`,
    todo: "Check the unit; 6 to 12 in is common practice.",
    ...(isMuch && amount >= rollIn && { level: "error" as const, rank: 70 }),
  };
}

const SLACK = 1.001;

export const payload: Rule = {
  id: "over-payload",
  title: "A load is over the payload",
  level: "warning",
  rank: 20,
  matters:
    "Stone hits the payload long before the bed looks full: an overloaded truck, or a trip you didn't charge for.",
  *look(study) {
    const payloads = study.measures.filter(({ role, amount }) => role === "payload" && amount > 0);
    const [only] = payloads;
    if (!only) return;
    yield* eachMeasure(study, (measure) => {
      if (measure.role !== "loads" || measure.amount <= 0 || (measure.unit && units[measure.unit].measures !== "count"))
        return undefined;
      const limit = companion(study, measure, "payload") ?? (payloads.length === 1 ? only : undefined);
      return limit && overloaded(study, measure, limit);
    });
    const loads = fullName(study.knowledge, "LOADS").toUpperCase();
    yield* eachFormula(study, (cell, pattern) =>
      [...walk(pattern.tree ?? null)].some(
        ({ part }) => isCall(part) && calledName(part) === loads && part.arguments.length < 4,
      )
        ? byVolumeOnly(study, cell, pattern.id, only)
        : undefined,
    );
  },
};

function overloaded(study: Study, loads: Measure, limit: Measure): Observation | undefined {
  const { cell } = loads;
  const tons = companion(study, loads, "tons");
  if (!tons || tons.amount <= loads.amount * limit.amount * SLACK) return undefined;
  const each = tons.amount / loads.amount;
  return {
    cell,
    more: [tons.cell, limit.cell],
    group: `${cell.sheet}:${cell.column}`,
    about: `${loads.amount} ${tons.amount} ${limit.amount}`,
    seen:
      `is ${short(loads.amount)} for ${short(tons.amount)} tons: ${short(each)} tons each, ` +
      `over the ${short(limit.amount)}-ton payload in ${addressFrom(study.book, cell, limit.cell)}.`,
    todo: `Count ${Math.ceil(tons.amount / limit.amount)} loads, or use a bigger truck.`,
  };
}

function byVolumeOnly(study: Study, cell: Cell, pattern: number, limit: Measure): Observation {
  const { book } = study;
  return {
    cell,
    more: [limit.cell],
    group: `${cell.sheet}:${pattern}`,
    about: "by volume only",
    seen: `counts loads by volume only, but there's a payload in ${addressFrom(book, cell, limit.cell)} (${short(limit.amount)} tons).`,
    todo: "Include tons/cu yd and the payload.",
  };
}
