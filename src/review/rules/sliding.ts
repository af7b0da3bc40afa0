import { areaAddress } from "../../spreadsheet/areas";
import type { Cell, Target } from "../book";
import { shifted } from "../formula/shift";
import { type Family, readBy } from "../sheet/family";
import { alongOf } from "../sheet/lines";
import type { Study } from "../study";
import { addressFrom, nameOf, short } from "../words";
import { change, type Observation, type Rule } from "./rule";

export const sliding: Rule = {
  id: "sliding-reference",
  title: "A formula slid off the rate it reads",
  level: "slip",
  rank: 80,
  matters: "Filled down without a $, each line reads one cell further, and soon reads nothing.",
  *look(study) {
    for (const family of study.families) {
      if (!study.isChecked(family.line.sheet)) continue;
      yield undefined;
      for (const place of family.slots.keys()) yield* observe(study, family, place);
    }
  },
};

/** A reference that goes along, from a typed number that stands alone into blanks. */
function observe(study: Study, family: Family, place: number): Observation[] {
  const { book } = study;
  const [first, ...rest] = family.members as [Cell, ...Cell[]];
  const start = readBy(book, family, first)[place];
  if (!start?.moves || start.rows * start.columns !== 1) return [];
  const isOutside = start.sheet !== first.sheet || alongOf(family.line, start) !== alongOf(family.line, first);
  if (!isOutside || !book.grids[start.sheet]!.isTypedNumber(start.row, start.column)) return [];
  const astray = rest.filter((member) => typeof study.valueAt(readBy(book, family, member)[place]!) !== "number");
  if (astray.length < rest.length / 2) return [];
  const rate = `${addressFrom(book, first, start)} (${nameOf(book, start)}, ${short(book.grids[start.sheet]!.number(start.row, start.column)!)})`;
  const mend = (cell: Cell, target: Target) => {
    const [down, across] = [start.row - target.row, start.column - target.column];
    const shift = { top: down, bottom: down, left: across, right: across, fixed: true };
    const pattern = book.patternAt(cell.sheet, cell.row, cell.column)!;
    const formula = book.grids[cell.sheet]!.formula(cell.row, cell.column)!;
    const mended = shifted(formula, pattern.references, (_, at) => (at === place ? shift : undefined));
    return mended === undefined ? [] : [change(study, cell, mended)];
  };
  return rest.map((cell): Observation => {
    const target = readBy(book, family, cell)[place]!;
    // The first line is right as it is, and fixed with the others so that the next filling down holds.
    const fix = [...(cell === rest[0] ? mend(first, start) : []), ...mend(cell, target)];
    return {
      cell,
      more: [start],
      group: `${cell.sheet}:${family.line.direction}:${family.line.at}:${place}`,
      about: `${place} ${book.grids[cell.sheet]!.formula(cell.row, cell.column)}`,
      seen: `${areaAddress(first)} reads ${rate}; ${areaAddress(cell)} reads ${addressFrom(book, cell, target)}, where no number stands.`,
      todo: "Make all lines read the same cell, and fix it with $.",
      ...(fix.length > 0 && { fix }),
    };
  });
}
