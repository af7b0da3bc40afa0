import type { Cell } from "../book";
import { type Family, formulaFor, readBy } from "../sheet/family";
import type { Study } from "../study";
import { localAddress, nameOf } from "../words";
import { change, type Observation, type Rule } from "./rule";

/** As many formulas of a family have to find something in a place for a blank there to be a gap. */
const USUALLY = 0.8;

export const blanks: Rule = {
  id: "blank",
  title: "A blank feeds a total",
  level: "slip",
  rank: 40,
  matters: "A blank counts as nothing: the line looks reckoned, and is worth 0.",
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
    seen: `${localAddress(cell)} (${nameOf(study.book, cell)}) is blank; the cells beside it have a formula, and what it reads is there.`,
    todo: "Put the formula back, or dismiss this with the reason.",
    ...(formula !== undefined && { fix: [change(study, cell, formula)] }),
  };
}

/** Cells that nearly all formulas of a family find filled, and one finds blank. */
function* gaps(study: Study, family: Family): Generator<Observation> {
  const { book } = study;
  const reads = family.members.map((member) => readBy(book, family, member));
  const filled = family.slots.map((_, place) => reads.filter((read) => isFilled(study, read[place])).length);
  const needed = filled.flatMap((count, place) => (count >= USUALLY * family.members.length ? [place] : []));
  for (const [index, member] of family.members.entries()) {
    const read = reads[index]!;
    const blank = needed.filter((place) => read[place]?.moves && !isFilled(study, read[place]));
    const given = needed.filter((place) => read[place]?.moves && isFilled(study, read[place]));
    // Nothing given is a line that is not used; text as the answer is a formula that expects blanks.
    if (blank.length === 0 || given.length === 0) continue;
    const value = study.valueAt(member);
    if (typeof value === "string" || (typeof value === "object" && value !== null)) continue;
    if (book.places[member.sheet]!.isTotalRow(member.row, member.column)) continue;
    for (const place of blank) {
      const target = read[place]!;
      const cell: Cell = target;
      if (target.rows * target.columns !== 1 || study.isOutlier(cell)) continue;
      const isQuantity = book.places[cell.sheet]!.describe(cell.row, cell.column).role === "quantity";
      yield {
        cell,
        more: [member],
        group: `${cell.sheet}:${cell.column}`,
        about: "blank",
        seen: `${localAddress(cell)} (${nameOf(book, cell)}) is blank, and ${localAddress(member)} reckons without it.`,
        todo: isQuantity ? "Type the quantity, or dismiss this if the line is not wanted." : "Type what belongs there.",
        ...(isQuantity && { level: "question" as const }),
      };
    }
  }
}

function isFilled(study: Study, target: ReturnType<typeof readBy>[number]): boolean {
  return target !== undefined && study.valueAt(target) !== null;
}
