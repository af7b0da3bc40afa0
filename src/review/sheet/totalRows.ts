import { must } from "../../quantities/must";
import type { Book } from "../book";
import type { Sum } from "../formula/sums";
import type { SummingCell } from "../study";

/** How far above a total its last line may be; a rule or a blank row often comes between. */
const MOST_BETWEEN = 3;

/**
 * Rows of totals, told by what their formulas do and not by their labels: in one of them stands a sum of a range
 * right above it, in its own column. The rows of each sheet, by the sheet's place.
 */
export function totalRowsOf(book: Book, summing: readonly SummingCell[]): ReadonlySet<number>[] {
  const rows = book.grids.map(() => new Set<number>());
  for (const { cell, sums } of summing)
    if (sums.some((sum) => endsAbove(cell, sum))) must(rows[cell.sheet]).add(cell.row);
  return rows;
}

/** Whether a sum takes a range of rows in its own column that ends right above it. */
export function endsAbove({ sheet, row, column }: SummingCell["cell"], { targets }: Sum): boolean {
  return targets.some((target) => {
    const below = row - (target.row + target.rows);
    const isOwn = target.sheet === sheet && target.column <= column && column < target.column + target.columns;
    return isOwn && target.rows > 1 && below >= 0 && below <= MOST_BETWEEN;
  });
}
