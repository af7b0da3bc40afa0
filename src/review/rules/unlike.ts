import { areaAddress } from "../../spreadsheet/areas";
import { cellKey } from "../book";
import { formulaFor } from "../sheet/family";
import type { Outlier } from "../sheet/outliers";
import { asNumber, type Study } from "../study";
import { nameOf, short } from "../words";
import { change, type Observation, offBy, type Rule } from "./rule";
import { isMixed } from "./typedOver";

/** More formulas of another kind than this, as a share of the family, are a choice and no slip. */
export const MOST_OTHERS = 0.25;

export const unlike: Rule = {
  id: "unlike-neighbors",
  title: "A formula differs from those beside it",
  level: "slip",
  rank: 30,
  covers: ["error"],
  matters: "One line is reckoned in another way than the rest, and looks the same.",
  *look(study) {
    const members = new Set(study.families.flatMap((family) => family.members.map(cellKey)));
    const others = new Map<Outlier["family"], number>();
    for (const { family, holds } of study.outliers) {
      if (holds === "formula") others.set(family, (others.get(family) ?? 0) + 1);
    }
    for (const outlier of study.outliers) {
      const { family, cell, holds } = outlier;
      if (holds !== "formula" || !study.isChecked(cell.sheet) || members.has(cellKey(cell))) continue;
      if (others.get(family)! > Math.max(1, MOST_OTHERS * family.members.length) || isMixed(study, family)) continue;
      yield observe(study, outlier);
    }
  },
};

function observe(study: Study, { cell, family }: Outlier): Observation | undefined {
  const { book } = study;
  const grid = book.grids[cell.sheet]!;
  const own = grid.formula(cell.row, cell.column)!;
  const formula = formulaFor(book, family, cell);
  if (formula === undefined) return undefined;
  const [is, would] = [grid.number(cell.row, cell.column), asNumber(study.wouldGive(cell, formula))];
  const isError = grid.kind(cell.row, cell.column) === "error";
  const gives = isError
    ? ` It shows ${grid.value(cell.row, cell.column)}.`
    : is === undefined || would === undefined
      ? ""
      : is === would
        ? " Both give the same now."
        : ` It gives ${short(is)}, the other ${short(would)}.`;
  return {
    cell,
    group: `${cell.sheet}:${family.line.direction}:${family.line.at}:${book.patternAt(cell.sheet, cell.row, cell.column)!.id}`,
    about: own,
    seen: `${areaAddress(cell)} (${nameOf(book, cell)}) has ${own}; like its neighbors it would be ${formula}.${gives}`,
    todo: "Take the neighbors' formula, or dismiss this with the reason for the difference.",
    rank: isError ? 90 : Math.max(5, offBy(is, would, unlike.rank)),
    fix: [change(study, cell, formula)],
  };
}
