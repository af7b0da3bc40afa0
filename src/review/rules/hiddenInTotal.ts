import type { Cell } from "../book";
import type { Sum } from "../formula/sums";
import type { Study, SummingCell } from "../study";
import { counted, list, localAddress, nameOf, short } from "../words";
import { type Observation, offBy, type Rule } from "./rule";

/** SUBTOTAL and AGGREGATE have their own way with hidden rows, which whoever chose them knows. */
const COUNTS_HIDDEN = new Set(["SUM", "AVERAGE", "SUMPRODUCT", "SUMIF", "SUMIFS", "AVERAGEIF", "+"]);

export const hiddenInTotal: Rule = {
  id: "hidden-in-total",
  title: "Hidden rows count in a total",
  level: "odd",
  rank: 25,
  matters: "Whoever reads or prints the sheet cannot see what the total is made of.",
  *look(study) {
    for (const summing of study.summing) {
      const { cell } = summing;
      if (!study.isChecked(cell.sheet)) continue;
      const grid = study.book.grids[cell.sheet]!;
      // A hidden total belongs to hidden helpers.
      if (grid.isRowHidden(cell.row) || grid.isColumnHidden(cell.column)) continue;
      for (const sum of summing.sums) {
        if (!COUNTS_HIDDEN.has(sum.name)) continue;
        const seen = observe(study, summing, sum);
        if (seen) yield seen;
      }
    }
  },
};

function observe(study: Study, { cell }: SummingCell, sum: Sum): Observation | undefined {
  const { book } = study;
  const hidden: Cell[] = [];
  let showing = 0;
  for (const { sheet, row, column, rows, columns } of sum.targets) {
    const grid = book.grids[sheet]!;
    if (sheet !== cell.sheet || (grid.facts.hiddenRows.length === 0 && grid.facts.hiddenColumns.length === 0))
      return undefined;
    for (let r = Math.max(row, grid.top); r < row + rows && r <= grid.bottom; r++) {
      for (let c = Math.max(column, grid.left); c < column + columns && c <= grid.right; c++) {
        if (!grid.number(r, c)) continue;
        const isHidden = (rows > 1 && grid.isRowHidden(r)) || (columns > 1 && grid.isColumnHidden(c));
        if (isHidden) hidden.push({ sheet, row: r, column: c });
        else showing++;
      }
    }
  }
  if (hidden.length === 0 || showing === 0) return undefined;
  const amount = hidden.reduce(
    (total, { sheet, row, column }) => total + (book.grids[sheet]!.number(row, column) ?? 0),
    0,
  );
  const total = book.grids[cell.sheet]!.number(cell.row, cell.column);
  const rows = [...new Set(hidden.map(({ row }) => row + 1))];
  const isRows = rows.every((row) => book.grids[cell.sheet]!.isRowHidden(row - 1));
  const what = isRows ? `${counted(rows.length, "hidden row")} (${list(rows.map(String))})` : "hidden columns";
  return {
    cell,
    more: hidden.slice(0, 50),
    group: `${cell.sheet}:${isRows ? rows.join(",") : "columns"}`,
    about: `${hidden.length}`,
    seen: `${localAddress(cell)} (${nameOf(book, cell)}) takes ${what} with ${short(amount)} of ${short(total ?? 0)}.`,
    todo: "Show the rows, or take them out of the sum, or dismiss this with the reason.",
    rank: Math.max(10, offBy((total ?? 0) - amount, total, hiddenInTotal.rank)),
  };
}
