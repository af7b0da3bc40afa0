import { must } from "../../quantities/must";
import { areaAddress } from "../../spreadsheet/areas";
import { type Cell, cellKey } from "../book";
import type { Pattern } from "../formula/pattern";
import { asksFirst, usesOf } from "../formula/readers";
import { calledName, isBinary, isCall, isNumber, type Tree } from "../formula/tree";
import { knownFunction } from "../knowledge";
import { alongOf, type Family, formulaFor, readBy } from "../sheet/family";
import type { Study } from "../study";
import { addressFrom, nameOf } from "../words";
import { change, eachFormula, type Observation, type Rule } from "./rule";

/** As many formulas of a family have to find something in a place for a blank there to be a gap. */
export const USUALLY = 0.8;

export const blanks: Rule = {
  id: "blank",
  title: "A blank feeds a total",
  level: "error",
  rank: 40,
  matters: "A blank counts as 0, so the line looks priced but adds nothing.",
  *look(study) {
    for (const { cell, family, holds } of study.outliers) {
      if (holds === "blank" && study.isChecked(cell.sheet)) yield cleared(study, cell, family);
    }
    for (const family of study.families) {
      if (!study.isChecked(family.line.sheet)) continue;
      yield undefined;
      yield* gaps(study, family);
    }
  },
};

function cleared(study: Study, cell: Cell, family: Family): Observation {
  const formula = formulaFor(study.book, family, cell);
  return {
    cell,
    group: `${cell.sheet}:${family.line.at}:${family.skeleton}`,
    about: "formula gone",
    seen: `is blank, but the cells next to it have a formula and the cells it reads are filled in.`,
    todo: "Put the formula back, or ignore this and say why.",
    ...(formula !== undefined && { fix: [change(study, cell, formula)] }),
  };
}

/** Cells that nearly all formulas of a family find filled, and one finds blank. */
function* gaps(study: Study, family: Family): Generator<Observation> {
  const { book } = study;
  const moving = movingOf(study, family);
  const needed = neededBy(study, family, moving);
  for (const member of family.members) {
    const blank = needed.filter((place) => !isFilled(study, family, place, member));
    // Nothing given is a line that is not used; text as the answer is a formula that expects blanks.
    if (blank.length === 0 || !isUsed(study, family, moving, member)) continue;
    if (
      typeof study.valueAt(member) !== "number" ||
      must(book.places[member.sheet]).isTotalRow(member.row, member.column)
    ) {
      continue;
    }
    const pattern = must(book.patternAt(member.sheet, member.row, member.column));
    for (const place of blank) {
      const cell = must(readBy(book, family, member)[place]);
      if (study.isOutlier(cell) || asksFirst(pattern, must(pattern.references[place]).text)) continue;
      if (isNotNeeded(study, pattern, must(pattern.references[place]).start)) continue;
      yield observeBlanks(study, cell, member);
    }
  }
}

/** Functions that go on without a blank. */
const ADDS = new Set(["SUM", "AVERAGE", "ROUND", "MAX", "MIN", "COUNT", "SUBTOTAL"]);

/**
 * Whether a formula goes on without a reference: it only adds it to others, which is a part that this line doesn't have,
 * or hands it to a function that isn't ours, which may have a value of its own for a blank.
 */
function isNotNeeded({ knowledge }: Study, pattern: Pattern, start: number): boolean {
  const { around = [] } = usesOf(pattern).find(({ reference }) => reference.start === start) ?? {};
  const parent = around.at(-1) ?? null;
  if (isCall(parent) && !knownFunction(knowledge, calledName(parent))) return true;
  const isSum = (part: Tree) =>
    (isBinary(part) && "+-".includes(part.operator)) ||
    part?.type === "UnaryExpression" ||
    (isCall(part) && ADDS.has(calledName(part)));
  return around.length > 0 && around.every(isSum);
}

/** Whether anything that goes along with a line is filled in, or it has a name and there is only one such thing. */
function isUsed(study: Study, family: Family, moving: readonly number[], member: Cell): boolean {
  if (moving.length === 1) return must(study.book.places[member.sheet]).labelOf(member.row, member.column) !== "";
  return moving.some((place) => isFilled(study, family, place, member));
}

/** The references of a family to single cells that go along with each formula. */
function movingOf({ book }: Study, family: Family): number[] {
  const first = readBy(book, family, must(family.members[0]));
  return family.slots.flatMap((_, place) => {
    const target = first[place];
    return target?.moves && target.rows * target.columns === 1 ? [place] : [];
  });
}

function observeBlanks(study: Study, { sheet, row, column }: Cell, member: Cell): Observation {
  const { book } = study;
  const cell = { sheet, row, column };
  const isQuantity = must(book.places[sheet]).roleAt(row, column).role === "quantity";
  return {
    cell,
    more: [member],
    group: `${sheet}:${column}`,
    about: "blank",
    seen: `is blank, so ${areaAddress(member)} is worked out without it.`,
    todo: isQuantity ? "Type the quantity, or ignore this if you don't need the line." : "Type a value.",
    ...(isQuantity && { level: "question" as const }),
  };
}

/** The single cells that a family's formulas read along with them, and that are mostly filled. */
function neededBy(study: Study, family: Family, moving: readonly number[]): number[] {
  const { members } = family;
  // Spare lines, in which nothing is typed yet, tell nothing of what a line needs.
  const used = members.filter((member) => moving.some((place) => isFilled(study, family, place, member, "typed")));
  // Where one cell is all that a line reads, the lines in use are told by their names.
  const named = members.filter(({ sheet, row, column }) => must(study.book.places[sheet]).labelOf(row, column) !== "");
  const counted = moving.length === 1 && named.length > 0 ? named : used.length > 0 ? used : members;
  return moving.filter(
    (place) => counted.filter((member) => isFilled(study, family, place, member)).length >= USUALLY * counted.length,
  );
}

/** Whether something is where one moving reference of a member points; "typed" asks for more than a formula. */
function isFilled({ book }: Study, family: Family, place: number, member: Cell, how?: "typed"): boolean {
  const { start, sheet, side } = must(family.slots[place]);
  const along = start.at + alongOf(family.line, member);
  const [row, column] = family.line.direction === "down" ? [along, side] : [side, along];
  if (book.patternAt(must(sheet), row, column)) return how !== "typed";
  return !must(book.grids[must(sheet)]).isBlank(row, column);
}

export const emptyFactor: Rule = {
  id: "empty-factor",
  title: "A formula reads an empty cell",
  level: "warning",
  rank: 35,
  matters: "An empty cell is 0, so the line comes to nothing or the % isn't added.",
  covers: ["blank"],
  *look(study) {
    // Lines that are filled down have spare ones among them; they are looked at together, elsewhere.
    const members = new Set(study.families.flatMap((family) => family.members.map(cellKey)));
    yield* eachFormula(study, (cell, pattern) =>
      members.has(cellKey(cell)) || typeof study.valueAt(cell) !== "number"
        ? []
        : observeEmptyFactor(study, cell, pattern),
    );
  },
};

function observeEmptyFactor(study: Study, cell: Cell, pattern: Pattern): Observation[] {
  const { book } = study;
  return usesOf(pattern).flatMap(({ reference, around }) => {
    const target = isFactor(around) ? book.targetOf(reference, cell) : undefined;
    if (!target || target.rows * target.columns !== 1 || study.valueAt(target) !== null) return [];
    if (study.isOutlier(target) || asksFirst(pattern, reference.text)) return [];
    const { sheet, row, column } = target;
    const isNamed = must(book.places[sheet]).labelOf(row, column) !== "";
    return [
      {
        cell: { sheet, row, column },
        more: [cell],
        group: `${sheet}:${row}:${column}`,
        about: "empty",
        seen: `is empty, and ${addressFrom(book, target, cell)} (${nameOf(book, cell)}) reads it.`,
        todo: isNamed ? "Type a value, or ignore this if it should be empty." : "Check that it reads the right cell.",
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
