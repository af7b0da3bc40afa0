import { shifted } from "../formula/shift";
import { type Family, readBy } from "../sheet/family";
import type { Study } from "../study";
import { addressFrom, localAddress, nameOf, short } from "../words";
import { change, type Observation, type Rule } from "./rule";

export const sliding: Rule = {
  id: "sliding-reference",
  title: "A formula slid off the rate it reads",
  level: "slip",
  rank: 80,
  matters: "Filled down without a $, each line reads one cell further, and soon reads nothing.",
  covers: ["blank", "unlike-neighbors"],
  *look(study) {
    for (const family of study.families) {
      if (!study.isChecked(family.line.sheet)) continue;
      yield undefined;
      for (const place of family.slots.keys()) {
        const seen = observe(study, family, place);
        if (seen) yield* seen;
      }
    }
  },
};

/** A reference that goes along, from a typed number that stands alone into blanks. */
function observe(study: Study, family: Family, place: number): Observation[] | undefined {
  const { book } = study;
  const [first, ...rest] = family.members;
  const start = first && readBy(book, family, first)[place];
  if (!start?.moves || start.rows * start.columns !== 1) return undefined;
  const isOutside =
    start.sheet !== first!.sheet ||
    (family.line.direction === "down" ? start.row !== first!.row : start.column !== first!.column);
  if (!isOutside || !book.grids[start.sheet]!.isTypedNumber(start.row, start.column)) return undefined;
  const astray = rest.filter((member) => {
    const target = readBy(book, family, member)[place];
    return target !== undefined && typeof study.valueAt(target) !== "number";
  });
  if (astray.length < rest.length / 2 || astray.length === 0) return undefined;
  const rate = `${addressFrom(book, first!, start)} (${nameOf(book, start)}, ${short(book.grids[start.sheet]!.number(start.row, start.column)!)})`;
  return rest.map((cell): Observation => {
    const target = readBy(book, family, cell)[place]!;
    const formula = book.grids[cell.sheet]!.formula(cell.row, cell.column)!;
    const pattern = book.patternAt(cell.sheet, cell.row, cell.column)!;
    const by = family.line.direction === "down" ? start.row - target.row : start.column - target.column;
    const move =
      family.line.direction === "down"
        ? { top: by, bottom: by, left: 0, right: 0 }
        : { top: 0, bottom: 0, left: by, right: by };
    const mended = shifted(formula, pattern.references, (_, at) => (at === place ? move : undefined));
    return {
      cell,
      group: `${cell.sheet}:${family.line.direction}:${family.line.at}:${place}`,
      about: formula,
      seen: `${localAddress(first!)} reads ${rate}; ${localAddress(cell)} below it reads ${addressFrom(book, cell, target)}, where no number stands.`,
      todo: "Make all lines read the same cell, and fix it with $.",
      ...(mended !== undefined && { fix: [change(study, cell, mended)] }),
    };
  });
}
