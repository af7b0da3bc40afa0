import { type Area, overlap, SHEET_COLUMNS } from "../../spreadsheet/areas";
import type { ListFit } from "./fitList";
import type { ListSheet } from "./listSheet";

/**
 * Where new columns go: right beside the list, else to the right of everything that stands there.
 *
 * @param count how many.
 * @returns the first of them; undefined where the sheet has no room.
 */
export function freeColumns({ cells, heading, rows }: ListFit, count: number): number | undefined {
  const isFree = (first: number, columns: number) => {
    const area: Area = { row: heading.row, column: first, rows: rows.last - heading.row + 1, columns };
    const { tables, merged } = cells.sheet;
    if ([...tables.map((table) => table.area), ...merged].some((other) => overlap(other, area))) return false;
    for (let column = first; column < first + columns; column += 1) {
      for (let row = heading.row; row <= rows.last; row += 1) if (!cells.isBlank(row, column)) return false;
    }
    return true;
  };
  const beside = Math.max(heading.last, heading.table ? lastOf(heading.table.area) : 0) + 1;
  // What stands to the right keeps a blank column before it.
  const first =
    isFree(beside, count + 1) || beside + count === SHEET_COLUMNS ? beside : beyond(cells.sheet, cells.right);
  return count === 0 || first + count <= SHEET_COLUMNS ? first : undefined;
}

/** Whether a cell is part of merged cells. */
export function isMerged({ merged }: ListSheet, row: number, column: number): boolean {
  return merged.some((area) => overlap(area, { row, column, rows: 1, columns: 1 }));
}

function beyond({ tables, merged }: ListSheet, right: number): number {
  return Math.max(right, ...tables.map(({ area }) => lastOf(area)), ...merged.map(lastOf)) + 2;
}

const lastOf = ({ column, columns }: Area) => column + columns - 1;
