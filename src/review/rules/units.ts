import { type DeclaredArgument, kindWords } from "../../functions/declare";
import { units } from "../../headings/units";
import { must } from "../../quantities/must";
import {
  CUBIC_FEET_PER_CUBIC_YARD,
  FEET_PER_YARD,
  INCHES_PER_FOOT,
  METERS_PER_FOOT,
  POUNDS_PER_SHORT_TON,
  SQUARE_FOOT_INCHES_PER_CUBIC_YARD,
} from "../../quantities/units";
import type { Cell } from "../book";
import { dimensionOf, dimensionOfKind, dimensionOfUnit, isSameKind } from "../formula/dimension";
import type { Pattern } from "../formula/pattern";
import { targetOfTree } from "../formula/sums";
import { calledName, factorsOf, isBinary, isCall, isNumber, isReference, type Tree, walk } from "../formula/tree";
import { fullName, knownFunction } from "../knowledge";
import type { Study } from "../study";
import { addressFrom, nameOf } from "../words";
import { eachFormula, type Observation, type Rule } from "./rule";

/** Factors by which a quantity is off when a unit was mistaken, each with what to do about it. */
const FACTORS: readonly (readonly [factor: number, words: string])[] = [
  [INCHES_PER_FOOT, "feet and inches"],
  [INCHES_PER_FOOT ** 2, "square feet and square inches"],
  [INCHES_PER_FOOT ** 3, "feet and inches, three times over"],
  [CUBIC_FEET_PER_CUBIC_YARD, "cubic feet and cubic yards"],
  [SQUARE_FOOT_INCHES_PER_CUBIC_YARD, "square feet times inches and cubic yards"],
  [FEET_PER_YARD ** 2, "square feet and square yards"],
  [FEET_PER_YARD, "feet and yards"],
  [INCHES_PER_FOOT * FEET_PER_YARD, "inches and yards"],
  [POUNDS_PER_SHORT_TON, "pounds and tons"],
  [CUBIC_FEET_PER_CUBIC_YARD * POUNDS_PER_SHORT_TON, "pounds per cubic foot and tons per cubic yard"],
  [POUNDS_PER_SHORT_TON / CUBIC_FEET_PER_CUBIC_YARD, "pounds per cubic foot and tons per cubic yard"],
  [INCHES_PER_FOOT / METERS_PER_FOOT, "inches and meters"],
  [(1000 * METERS_PER_FOOT) / INCHES_PER_FOOT, "inches and millimeters"],
  [1000 * METERS_PER_FOOT, "feet and millimeters"],
  [(100 * METERS_PER_FOOT) / INCHES_PER_FOOT, "inches and centimeters"],
  [1 / METERS_PER_FOOT, "feet and meters"],
  [METERS_PER_FOOT ** -2, "square feet and square meters"],
];

/** Conversions are typed with few digits. */
const CLOSE = 0.003;

export interface UnitSlip {
  /** The number is this many times what it should be. */
  readonly times: number;
  readonly words: string;
}

/**
 * The mistaken unit behind a factor; undefined where it is none.
 *
 * @param times how many times too large a number is, by its units.
 * @example unitSlip(12) // { times: 12, words: "feet and inches" }
 */
export function unitSlip(times: number): UnitSlip | undefined {
  for (const [factor, words] of FACTORS) {
    for (const one of [factor, 1 / factor]) if (Math.abs(times / one - 1) < CLOSE) return { times: one, words };
  }
  return undefined;
}

/** `12 times too large`, `12 times too small`. */
export function timesOff(times: number): string {
  const many = times >= 1 ? times : 1 / times;
  return `${Number(many.toPrecision(4)).toLocaleString("en-US")} times too ${times >= 1 ? "large" : "small"}`;
}

export const unitFactor: Rule = {
  id: "unit-factor",
  title: "A formula's result doesn't match its heading's unit",
  level: "error",
  rank: 90,
  matters: "Going by the headings, the number is off by the factor between the units.",
  covers: ["unlike-neighbors"],
  look: (study) =>
    eachFormula(study, (cell, pattern) =>
      isProduct(study, pattern) ? observeUnitFactor(study, cell, pattern) : undefined,
    ),
};

/** Native arithmetic with at least one reference in a product; our own functions give their unit themselves. */
function isProduct({ knowledge }: Study, { tree = null }: Pattern): boolean {
  const parts = [...walk(tree)].map(({ part }) => part);
  const ofOurs = isCall(tree) && knownFunction(knowledge, calledName(tree)) !== undefined;
  return !ofOurs && (parts.some((part) => isBinary(part) && /[*/]/.test(part.operator)) || isReference(tree));
}

/** A small whole number that alone makes the difference counts beds or sides, and turns no unit. */
const MOST_COUNTED = 12;

function isCount({ tree = null }: Pattern, times: number): boolean {
  if (!Number.isInteger(times) || times > MOST_COUNTED) return false;
  return factorsOf(tree).some(({ factor, above }) => above && isNumber(factor) && factor.value === times);
}

function observeUnitFactor(study: Study, cell: Cell, pattern: Pattern): Observation | undefined {
  const { book } = study;
  const unit = must(book.places[cell.sheet]).unitOf(cell.row, cell.column);
  if (!unit || ["share", "count", "money"].includes(units[unit].measures)) return undefined;
  const says = dimensionOfUnit(unit);
  const is = dimensionOf(study, cell, pattern, pattern.tree ?? null);
  const slip = is && isSameKind(is, says) ? unitSlip(says.size / is.size) : undefined;
  if (!slip || isCount(pattern, slip.times)) return undefined;
  const formula = must(must(book.grids[cell.sheet]).formula(cell.row, cell.column));
  const factor = Number((slip.times >= 1 ? slip.times : 1 / slip.times).toPrecision(6));
  return {
    cell,
    group: `${cell.sheet}:${pattern.id}`,
    about: `${pattern.relative} ${unit}`,
    seen: `is in ${unit}; by the units it reads, ${formula} is ${timesOff(slip.times)} (${slip.words}).`,
    todo: `${slip.times >= 1 ? "Divide" : "Multiply"} by ${factor} more, or correct the unit in a heading.`,
  };
}

export const argumentUnit: Rule = {
  id: "argument-unit",
  title: "A cell isn't in the unit the function takes",
  level: "error",
  rank: 90,
  matters: "The function reads a plain number in its own unit, whatever the heading says.",
  look: (study) => eachFormula(study, (cell, pattern) => observeArgumentUnit(study, cell, pattern)),
};

function* observeArgumentUnit(study: Study, cell: Cell, pattern: Pattern): Generator<Observation> {
  for (const { part } of walk(pattern.tree ?? null)) {
    const known = isCall(part) ? knownFunction(study.knowledge, calledName(part)) : undefined;
    if (!known || !isCall(part)) continue;
    for (const [place, argument] of known.arguments.entries()) {
      const given = (part.arguments[place] ?? null) as Tree;
      const seen =
        given && observeArgument(study, cell, pattern, given, argument, fullName(study.knowledge, known.name));
      if (seen) yield seen;
    }
  }
}

function observeArgument(
  study: Study,
  cell: Cell,
  pattern: Pattern,
  given: Tree,
  { name, kind }: DeclaredArgument,
  called: string,
): Observation | undefined {
  const takes = dimensionOfKind(kind);
  const is = dimensionOf(study, cell, pattern, given);
  // A plain number without a unit says nothing.
  if (!takes || !is || kind === "share" || kind === "count" || (is.feet === 0 && is.tons === 0)) return undefined;
  const slip = unitSlip(takes.size / is.size);
  const isOther = !isSameKind(is, takes);
  if (!isOther && !slip) return undefined;
  const { book } = study;
  const target = targetOfTree(book, cell, pattern, given);
  const unit = target && must(book.places[target.sheet]).unitOf(target.row, target.column);
  const from = target
    ? `${addressFrom(book, cell, target)} (${nameOf(book, target)}${unit ? `, in ${unit}` : ""})`
    : "what it is given";
  return {
    cell,
    ...(target && { more: [target] }),
    group: `${cell.sheet}:${pattern.id}:${name}`,
    about: `${pattern.relative} ${name} ${unit ?? ""}`,
    seen:
      `gives ${from} to ${name} of ${called}, which takes ${kindWords(kind)}` +
      (slip && !isOther ? `: ${timesOff(slip.times)}.` : ": that's a different kind of measurement."),
    todo:
      slip && !isOther
        ? `Convert it to ${kindWords(kind)} in the formula, or correct the heading.`
        : "Check that it reads the right cell.",
    ...(isOther && { level: "warning" as const, rank: 60 }),
  };
}
