import { toCol } from "@borgar/fx";
import { areaAddress, quotedSheet } from "../../spreadsheet/areas";
import type { Cell, Target } from "../book";
import type { Sum } from "../formula/sums";
import type { Study, SummingCell } from "../study";
import { list, nameOf, short } from "../words";
import { eachSum } from "./each";
import { leftOutOf } from "./leftOut";
import { change, type Observation, offBy, type Rule } from "./rule";

export const shortSum: Rule = {
  id: "short-sum",
  title: "A sum leaves out cells beside those it takes",
  level: "slip",
  rank: 30,
  matters: "What is left out is done and bought, and not charged.",
  covers: ["unlike-neighbors"],
  look: (study) => eachSum(study, (summing) => summing.sums.flatMap((sum) => observe(study, summing, sum) ?? [])),
};

function observe(study: Study, summing: SummingCell, sum: Sum): Observation | undefined {
  const { book } = study;
  const { cell, pattern } = summing;
  const left = leftOutOf(study, summing, sum);
  if (left.length === 0) return undefined;
  const grid = book.grids[left[0]!.sheet]!;
  const amount = left.reduce((total, { row, column }) => total + (grid.number(row, column) ?? 0), 0);
  const isKnown = left.every(({ row, column }) => grid.number(row, column) !== undefined);
  const total = book.grids[cell.sheet]!.number(cell.row, cell.column);
  const takes = list(sum.targets.map((target) => areaAddress(target)));
  const fixed = sum.name === "SUM" || sum.name === "AVERAGE" ? wholeRange(study, cell, sum, left) : undefined;
  return {
    cell,
    more: left,
    group: `${cell.sheet}:${pattern.id}`,
    about: takes,
    seen:
      `${areaAddress(cell)} (${nameOf(book, cell)}) takes ${takes}, but not ${list(left.map((one) => areaAddress(one)))}` +
      ` beside it${isKnown ? ` (${left.length > 1 ? "together " : ""}${short(amount)})` : ""}.`,
    todo:
      left.length > 1
        ? "Take them in, or dismiss this with the reason why they stay out."
        : "Take it in, or dismiss this with the reason why it stays out.",
    rank: Math.max(10, offBy((total ?? 0) - amount, total, shortSum.rank)),
    ...(fixed !== undefined && { fix: [change(study, cell, fixed)] }),
  };
}

/** The formula with one range over all that is taken and all that is left out, where the call is nothing else. */
function wholeRange(study: Study, cell: Cell, sum: Sum, left: readonly Cell[]): string | undefined {
  const formula = study.book.grids[cell.sheet]!.formula(cell.row, cell.column)!;
  const read = /^(=.*?\b(?:SUM|AVERAGE)\()([^()]*)(\).*)$/i.exec(formula);
  const [, before, inside, after] = read ?? [];
  if (!inside || /\bSUM\(|\bAVERAGE\(/i.test(after!)) return undefined;
  const hull = hullOf([...sum.targets, ...left.map((one) => ({ ...one, rows: 1, columns: 1 }))]);
  // A "$" that was there stays where it was.
  const [, startColumn = "", startRow = ""] = /(?:^|!)(\$?)[A-Z]+(\$?)\d/i.exec(inside.trim()) ?? [];
  const at = (column: number, row: number) => `${startColumn}${toCol(column)}${startRow}${row + 1}`;
  const sheet = hull.sheet === cell.sheet ? "" : `${quotedSheet(study.book.grids[hull.sheet]!.name)}!`;
  const range = `${at(hull.column, hull.row)}:${at(hull.column + hull.columns - 1, hull.row + hull.rows - 1)}`;
  return `${before}${sheet}${range}${after}`;
}

/** The area from the first to the last of some cells, all on one sheet. */
function hullOf(targets: readonly Target[]): Target {
  const row = Math.min(...targets.map((target) => target.row));
  const column = Math.min(...targets.map((target) => target.column));
  const bottom = Math.max(...targets.map((target) => target.row + target.rows));
  const right = Math.max(...targets.map((target) => target.column + target.columns));
  return { sheet: targets[0]!.sheet, row, column, rows: bottom - row, columns: right - column };
}
