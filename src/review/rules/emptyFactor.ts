import { areaAddress } from "../../spreadsheet/areas";
import { type Cell, cellKey } from "../book";
import type { Pattern } from "../formula/pattern";
import { isBinary, isNumber, type Tree } from "../formula/tree";
import { asksFirst, usesOf } from "../formula/uses";
import type { Study } from "../study";
import { addressFrom, nameOf } from "../words";
import { eachFormula } from "./each";
import type { Observation, Rule } from "./rule";

export const emptyFactor: Rule = {
  id: "empty-factor",
  title: "A formula reckons with an empty cell",
  level: "odd",
  rank: 35,
  matters: "An empty cell is 0: the line is worth nothing, or the share is not added.",
  covers: ["blank"],
  *look(study) {
    // Lines that are filled down have spare ones among them; they are looked at together, elsewhere.
    const members = new Set(study.families.flatMap((family) => family.members.map(cellKey)));
    yield* eachFormula(study, (cell, pattern) =>
      members.has(cellKey(cell)) || typeof study.valueAt(cell) !== "number" ? [] : observe(study, cell, pattern),
    );
  },
};

function observe(study: Study, cell: Cell, pattern: Pattern): Observation[] {
  const { book } = study;
  return usesOf(pattern).flatMap(({ reference, around }) => {
    const target = isFactor(around) ? book.targetOf(reference, cell) : undefined;
    if (!target || target.rows * target.columns !== 1 || study.valueAt(target) !== null) return [];
    if (study.isOutlier(target) || asksFirst(pattern, reference.text)) return [];
    const { sheet, row, column } = target;
    const isNamed = book.places[sheet]!.labelOf(row, column) !== "";
    return [
      {
        cell: { sheet, row, column },
        more: [cell],
        group: `${sheet}:${row}:${column}`,
        about: "empty",
        seen: `${areaAddress(target)}${isNamed ? ` (${nameOf(book, target)})` : ""} is empty, and ${addressFrom(book, target, cell)} (${nameOf(book, cell)}) reckons with it.`,
        todo: isNamed ? "Type what belongs there, or dismiss this if nothing does." : "Check which cell is meant.",
        // A place that is labelled may have been left empty on purpose.
        ...(isNamed && { level: "question" as const }),
      },
    ];
  });
}

/** A part of a product, also as `1+x`, `1-x`, and with x over 100. */
function isFactor(around: readonly Tree[]): boolean {
  const [first = null, second = null, third = null] = around.toReversed();
  const isOneOf = (part: Tree, operators: string) => isBinary(part) && operators.includes(part.operator);
  const isProduct = (part: Tree) => isOneOf(part, "*/");
  const has = (part: Tree, number: number) =>
    isBinary(part) && part.arguments.some((one) => isNumber(one) && one.value === number);
  const isGrowth = (part: Tree) => isOneOf(part, "+-") && has(part, 1);
  const isOfHundred = isProduct(first) && has(first, 100);
  if (isOfHundred) return isProduct(second) || (isGrowth(second) && isProduct(third));
  return isProduct(first) || (isGrowth(first) && isProduct(second));
}
