import { must } from "../../quantities/must";
import type { Area } from "../../spreadsheet/areas";
import type { Replacement } from "./taped";

/** Finds replaced cells in an area without looking at all of them. */
export class ReplacedCells {
  /** The rows of the replaced cells by column, from the top down. */
  private readonly rows = new Map<number, number[]>();

  /** @param replacements by `row,column`, counted from the region's first cell. */
  constructor(private readonly replacements: ReadonlyMap<string, Replacement>) {
    for (const key of replacements.keys()) {
      const [row = 0, column = 0] = key.split(",").map(Number);
      const known = this.rows.get(column);
      if (known) known.push(row);
      else this.rows.set(column, [row]);
    }
    for (const rows of this.rows.values()) rows.sort((one, other) => one - other);
  }

  /** Whether an area holds a replaced cell that counts. */
  any(area: Area, counts: (replacement: Replacement) => boolean = () => true): boolean {
    const inColumn = (column: number, rows: readonly number[]): boolean => {
      for (const row of rows.slice(firstFrom(rows, area.row))) {
        if (row >= area.row + area.rows) return false;
        if (counts(must(this.replacements.get(`${row},${column}`)))) return true;
      }
      return false;
    };
    return [...this.rows].some(
      ([column, rows]) => column >= area.column && column < area.column + area.columns && inColumn(column, rows),
    );
  }
}

/** Where in ascending rows the first one stands that is not above `row`. */
function firstFrom(rows: readonly number[], row: number): number {
  let [low, high] = [0, rows.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (must(rows[middle]) < row) low = middle + 1;
    else high = middle;
  }
  return low;
}
