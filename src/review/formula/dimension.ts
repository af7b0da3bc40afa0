import type { Kind } from "../../functions/declare";
import { sizeOf, type UnitName, unitNamed, units } from "../../headings/units";
import { must } from "../../quantities/must";
import { CUBIC_FEET_PER_CUBIC_YARD } from "../../quantities/units";
import type { Cell } from "../book";
import { knownFunction } from "../knowledge";

import type { Study } from "../study";
import type { Pattern } from "./pattern";
import { targetOfTree } from "./sums";
import { calledName, factorsOf, isBinary, isCall, isNumber, isReference, type Tree, termsOf } from "./tree";

/**
 * What a part of a formula measures, as the units of the sheet say: powers of feet, tons, hours and money, and how
 * many of those one of its numbers is. `B2*D2/27` with square feet and feet measures feet to the third, 1 × 27.
 */
export interface Dimension {
  readonly feet: number;
  readonly tons: number;
  readonly hours: number;
  readonly money: number;
  readonly size: number;
}

const PLAIN: Dimension = { feet: 0, tons: 0, hours: 0, money: 0, size: 1 };
const ROUNDS = new Set(["ROUND", "ROUNDUP", "ROUNDDOWN", "INT", "TRUNC", "CEILING", "FLOOR", "ABS"]);
const TAKES_RANGE = new Set(["SUM", "AVERAGE", "MAX", "MIN"]);

/** What a unit measures. */
export function dimensionOfUnit(unit: UnitName): Dimension {
  const size = sizeOf(unit);
  switch (units[unit].measures) {
    case "length":
      return { ...PLAIN, feet: 1, size };
    case "area":
      return { ...PLAIN, feet: 2, size };
    case "volume":
      return { ...PLAIN, feet: 3, size: size * CUBIC_FEET_PER_CUBIC_YARD };
    case "weight":
      return { ...PLAIN, tons: 1, size };
    case "density":
      return { ...PLAIN, tons: 1, feet: -3, size: size / CUBIC_FEET_PER_CUBIC_YARD };
    case "time":
      return { ...PLAIN, hours: 1, size };
    case "money":
      return { ...PLAIN, money: 1, size };
    default:
      return PLAIN;
  }
}

/** What a kind of argument or result measures; undefined for names, dates and the like. */
export function dimensionOfKind(kind: Kind): Dimension | undefined {
  if (kind === "stone") return dimensionOfKind("tons/cu yd");
  if (kind === "person-h") return { ...PLAIN, hours: 1 };
  if (kind === "share" || kind === "count") return PLAIN;
  const unit = unitNamed(kind);
  return unit && dimensionOfUnit(unit);
}

/** Whether two measure the same, whatever their units. */
export function isSameKind(one: Dimension, other: Dimension): boolean {
  return one.feet === other.feet && one.tons === other.tons && one.hours === other.hours && one.money === other.money;
}

/** What a part of a formula measures; undefined where a cell in it names no unit, or holds text. */
export function dimensionOf(study: Study, cell: Cell, pattern: Pattern, tree: Tree): Dimension | undefined {
  const inner = (part: Tree) => dimensionOf(study, cell, pattern, part);
  if (isNumber(tree))
    return tree.value === 0 ? undefined : { ...PLAIN, size: isShareMore(tree.value) ? 1 : 1 / tree.value };
  if (isReference(tree)) return dimensionOfCell(study, targetOfTree(study.book, cell, pattern, tree));
  if (isCall(tree)) {
    const name = calledName(tree);
    const known = knownFunction(study.knowledge, name);
    if (known) return dimensionOfKind(known.kind);
    const [first = null] = tree.arguments as Tree[];
    return ROUNDS.has(name) || TAKES_RANGE.has(name) ? inner(first) : undefined;
  }
  if (tree?.type === "UnaryExpression" && tree.operator !== "%") return inner(tree.arguments[0] ?? null);
  if (!isBinary(tree)) return undefined;
  if (tree.operator === "*" || tree.operator === "/") {
    return factorsOf(tree).reduce<Dimension | undefined>((product, { factor, above }) => {
      const part = isGrowth(factor) ? PLAIN : inner(factor);
      return product && part && multiplied(product, part, above ? 1 : -1);
    }, PLAIN);
  }
  if (tree.operator === "+") {
    const [first, ...rest] = (termsOf(tree) ?? []).map(inner);
    return first && rest.every((one) => one && isSameKind(one, first) && one.size === first.size) ? first : undefined;
  }
  return undefined;
}

/** 1.08 is 8 % more of the same; no two units are that close. */
const isShareMore = (number: number): boolean => number > 1 && number <= 1.5;

/** `(1+waste)` and `(1-margin)` change how much there is, and not what it is. */
function isGrowth(tree: Tree): boolean {
  return (
    isBinary(tree) &&
    (tree.operator === "+" || tree.operator === "-") &&
    tree.arguments.some((one) => isNumber(one) && one.value === 1)
  );
}

function multiplied(one: Dimension, other: Dimension, power: 1 | -1): Dimension {
  return {
    feet: one.feet + power * other.feet,
    tons: one.tons + power * other.tons,
    hours: one.hours + power * other.hours,
    money: one.money + power * other.money,
    size: one.size * other.size ** power,
  };
}

/** A typed number in a formula carries no unit: it is there to turn one unit into another. */
function dimensionOfCell(study: Study, target: Cell | undefined): Dimension | undefined {
  if (!target) return undefined;
  const grid = must(study.book.grids[target.sheet]);
  if (grid.kind(target.row, target.column) !== "number") return undefined;
  const { unit, role } = must(study.book.places[target.sheet]).describe(target.row, target.column);
  if (unit) return dimensionOfUnit(unit);
  return role === "waste" || role === "markup" || role === "margin" ? PLAIN : undefined;
}
