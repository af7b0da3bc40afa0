import { areaAddress } from "../../spreadsheet/areas";
import { formulaFor } from "../sheet/family";
import type { Outlier } from "../sheet/outliers";
import { asNumber, type Study } from "../study";
import { nameOf, short } from "../words";
import { change, type Observation, offBy, type Rule } from "./rule";

/** In a row of sums every column holds something else, and there a number this far off is no sum typed over. */
export const LIKELY_RATIO = 3;

export const typedOver: Rule = {
  id: "typed-over",
  title: "A number stands where its neighbors have a formula",
  level: "slip",
  rank: 40,
  matters: "The number stays as it is when a measure or a rate changes, and the price goes wrong without a sign.",
  *look(study) {
    for (const outlier of study.outliers) {
      if (outlier.holds !== "number" || !study.isChecked(outlier.cell.sheet)) continue;
      yield observe(study, outlier);
    }
  },
};

function observe(study: Study, { cell, family }: Outlier): Observation | undefined {
  const { book } = study;
  const formula = formulaFor(book, family, cell);
  const typed = book.grids[cell.sheet]!.number(cell.row, cell.column)!;
  if (formula === undefined) return undefined;
  const would = asNumber(study.wouldGive(cell, formula));
  if (isMixed(study, family) && !isNear(typed, would)) return undefined;
  const gives =
    would === undefined
      ? `like its neighbors it would be ${formula}.`
      : offBy(typed, would, 0) === 0
        ? `${formula} gives the same now, and would follow changes.`
        : `${formula} would give ${short(would)}.`;
  return {
    cell,
    group: `${cell.sheet}:${family.line.direction}:${family.line.at}:${family.skeleton}`,
    about: String(typed),
    seen: `${areaAddress(cell)} (${nameOf(book, cell)}) holds ${short(typed)}, typed; ${gives}`,
    todo: "Put the formula back, or dismiss this with the reason for the number.",
    rank: Math.max(5, offBy(typed, would, typedOver.rank)),
    fix: [change(study, cell, formula)],
  };
}

/** Whether a line across runs through columns that hold different things. */
export function isMixed({ book }: Study, { line, members }: Outlier["family"]): boolean {
  if (line.direction === "down") return false;
  const places = book.places[line.sheet]!;
  const kinds = members.map(({ row, column }) => {
    const { unit, role, toldBy } = places.describe(row, column);
    return toldBy === "heading" ? `${role} ${unit}` : `${places.headingOf(row, column) && unit}`;
  });
  return new Set(kinds).size > 1;
}

function isNear(typed: number, would: number | undefined): boolean {
  const ratio = typed / (would ?? 0);
  return ratio > 1 / LIKELY_RATIO && ratio < LIKELY_RATIO;
}
