import { type DeclaredArgument, kindWords } from "../../functions/declare";
import { areaAddress } from "../../spreadsheet/areas";
import type { Cell } from "../book";
import { dimensionOf, dimensionOfKind, isSameKind } from "../formula/dimension";
import type { Pattern } from "../formula/pattern";
import { targetOfTree } from "../formula/sums";
import { calledName, isCall, type Tree, walk } from "../formula/tree";
import { fullName, knownFunction } from "../knowledge";
import type { Study } from "../study";
import { addressFrom, nameOf } from "../words";
import { eachFormula } from "./each";
import type { Observation, Rule } from "./rule";
import { timesOff, unitSlip } from "./unitSlip";

export const argumentUnit: Rule = {
  id: "argument-unit",
  title: "A cell is in another unit than the function takes",
  level: "slip",
  rank: 90,
  matters: "The function takes the bare number in its own unit, whatever the heading says.",
  look: (study) => eachFormula(study, (cell, pattern) => observe(study, cell, pattern)),
};

function* observe(study: Study, cell: Cell, pattern: Pattern): Generator<Observation> {
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
  const unit = target && book.places[target.sheet]!.unitOf(target.row, target.column);
  const from = target
    ? `${addressFrom(book, cell, target)} (${nameOf(book, target)}${unit ? `, in ${unit}` : ""})`
    : "what it is given";
  return {
    cell,
    ...(target && { more: [target] }),
    group: `${cell.sheet}:${pattern.id}:${name}`,
    about: `${pattern.relative} ${name} ${unit ?? ""}`,
    seen:
      `${areaAddress(cell)} (${nameOf(book, cell)}) gives ${from} to ${name} of ${called}, which takes ${kindWords(kind)}` +
      (slip && !isOther ? `: ${timesOff(slip.times)}.` : ": that is another kind of measure."),
    todo:
      slip && !isOther
        ? `Turn it into ${kindWords(kind)} in the formula, or correct the heading.`
        : "Check which cell is meant.",
    ...(isOther && { level: "odd" as const, rank: 60 }),
  };
}
