import { units } from "../../headings/units";
import { areaAddress } from "../../spreadsheet/areas";
import type { Cell } from "../book";
import { dimensionOf, dimensionOfUnit, isSameKind } from "../formula/dimension";
import type { Pattern } from "../formula/pattern";
import { calledName, factorsOf, isBinary, isCall, isNumber, isReference, walk } from "../formula/tree";
import { knownFunction } from "../knowledge";
import type { Study } from "../study";
import { nameOf } from "../words";
import { eachFormula } from "./each";
import type { Observation, Rule } from "./rule";
import { timesOff, unitSlip } from "./unitSlip";

export const unitFactor: Rule = {
  id: "unit-factor",
  title: "A formula does not come out in the unit of its heading",
  level: "slip",
  rank: 90,
  matters: "By the units of the headings the number is off by the factor between them.",
  covers: ["unlike-neighbors"],
  look: (study) =>
    eachFormula(study, (cell, pattern) => (isProduct(study, pattern) ? observe(study, cell, pattern) : undefined)),
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

function observe(study: Study, cell: Cell, pattern: Pattern): Observation | undefined {
  const { book } = study;
  const unit = book.places[cell.sheet]!.unitOf(cell.row, cell.column);
  if (!unit || ["share", "count", "money"].includes(units[unit].measures)) return undefined;
  const says = dimensionOfUnit(unit);
  const is = dimensionOf(study, cell, pattern, pattern.tree ?? null);
  const slip = is && isSameKind(is, says) ? unitSlip(says.size / is.size) : undefined;
  if (!slip || isCount(pattern, slip.times)) return undefined;
  const formula = book.grids[cell.sheet]!.formula(cell.row, cell.column)!;
  const factor = Number((slip.times >= 1 ? slip.times : 1 / slip.times).toPrecision(6));
  return {
    cell,
    group: `${cell.sheet}:${pattern.id}`,
    about: `${pattern.relative} ${unit}`,
    seen: `${areaAddress(cell)} (${nameOf(book, cell)}) is in ${unit}; by the units it reads, ${formula} is ${timesOff(slip.times)} (${slip.words}).`,
    todo: `${slip.times >= 1 ? "Divide" : "Multiply"} by ${factor} more, or correct the unit in a heading.`,
  };
}
