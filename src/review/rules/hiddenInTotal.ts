import { areaAddress } from "../../spreadsheet/areas";
import type { Cell, Target } from "../book";
import type { Sum } from "../formula/sums";
import type { Study } from "../study";
import { counted, list, nameOf, short } from "../words";
import { eachSum } from "./each";
import { type Observation, offBy, type Rule } from "./rule";

/** SUBTOTAL and AGGREGATE have their own way with hidden rows, which whoever chose them knows. */
const COUNTS_HIDDEN = new Set(["SUM", "AVERAGE", "SUMPRODUCT", "SUMIF", "SUMIFS", "AVERAGEIF"]);

export const hiddenInTotal: Rule = {
  id: "hidden-in-total",
  title: "Hidden rows count in a total",
  level: "odd",
  rank: 25,
  matters: "Whoever reads or prints the sheet cannot see what the total is made of.",
  look: (study) =>
    eachSum(study, ({ cell, sums }) => {
      const grid = study.book.grids[cell.sheet]!;
      // A hidden total belongs to hidden helpers.
      if (grid.isRowHidden(cell.row) || grid.isColumnHidden(cell.column)) return undefined;
      return sums.filter(({ name }) => COUNTS_HIDDEN.has(name)).flatMap((sum) => observe(study, cell, sum) ?? []);
    }),
};

function observe(study: Study, cell: Cell, sum: Sum): Observation | undefined {
  const { book } = study;
  const hidden: Cell[] = [];
  let showing = false;
  for (const target of sum.targets) {
    if (target.sheet !== cell.sheet) return undefined;
    hidden.push(...hiddenIn(study, target));
    showing ||= showsANumber(study, target);
  }
  if (hidden.length === 0 || !showing) return undefined;
  const amount = hidden.reduce((sum, { sheet, row, column }) => sum + book.grids[sheet]!.number(row, column)!, 0);
  const total = book.grids[cell.sheet]!.number(cell.row, cell.column);
  const rows = [...new Set(hidden.map(({ row }) => row + 1))];
  const isRows = rows.every((row) => book.grids[cell.sheet]!.isRowHidden(row - 1));
  const what = isRows ? `${counted(rows.length, "hidden row")} (${list(rows.map(String))})` : "hidden columns";
  return {
    cell,
    more: hidden,
    group: `${cell.sheet}:${isRows ? rows.join(",") : "columns"}`,
    about: `${hidden.length}`,
    seen: `${areaAddress(cell)} (${nameOf(book, cell)}) takes ${what} with ${short(amount)} of ${short(total ?? 0)}.`,
    todo: "Show the rows, or take them out of the sum, or dismiss this with the reason.",
    rank: Math.max(10, offBy((total ?? 0) - amount, total, hiddenInTotal.rank)),
  };
}

/** The numbers of a range that do not show: in hidden rows of one that goes down, in hidden columns of one across. */
function* hiddenIn({ book }: Study, { sheet, row, column, rows, columns }: Target): Generator<Cell> {
  const grid = book.grids[sheet]!;
  const within = (at: number, from: number, count: number) => at >= from && at < from + count;
  const [left, right] = [Math.max(column, grid.left), Math.min(column + columns - 1, grid.right)];
  const [top, bottom] = [Math.max(row, grid.top), Math.min(row + rows - 1, grid.bottom)];
  const hiddenRows = rows > 1 ? grid.facts.hiddenRows.filter((at) => within(at, row, rows)) : [];
  for (const r of hiddenRows)
    for (let c = left; c <= right; c++) if (grid.number(r, c)) yield { sheet, row: r, column: c };
  const hiddenColumns = columns > 1 ? grid.facts.hiddenColumns.filter((at) => within(at, column, columns)) : [];
  for (const c of hiddenColumns) {
    for (let r = top; r <= bottom; r++) {
      if (grid.number(r, c) && !(rows > 1 && grid.isRowHidden(r))) yield { sheet, row: r, column: c };
    }
  }
}

function showsANumber({ book }: Study, { sheet, row, column, rows, columns }: Target): boolean {
  const grid = book.grids[sheet]!;
  for (let r = Math.max(row, grid.top); r < row + rows && r <= grid.bottom; r++) {
    if (rows > 1 && grid.isRowHidden(r)) continue;
    for (let c = Math.max(column, grid.left); c < column + columns && c <= grid.right; c++) {
      if (!(columns > 1 && grid.isColumnHidden(c)) && grid.number(r, c)) return true;
    }
  }
  return false;
}
