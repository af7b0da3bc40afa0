import type { CellChange } from "../sheets/jobRows/fillList";
import type { ListFit } from "../sheets/jobRows/fitList";
import { takeBackChanges, type WrittenChanges, writeChanges } from "./changes";

/** What was written into a list of beds, to be taken back. */
export type WrittenRows = WrittenChanges;

/**
 * Writes what was proposed for a list: two syncs, however many rows. Every cell of the list must still hold what it
 * held when it was read, headings and measurements, too, since the formulas go by their places.
 *
 * @throws WorkbookTrouble where something has changed since, naming the cell; nothing is written then.
 */
export async function writeRows(
  { cells, heading, rows }: ListFit,
  changes: readonly CellChange[],
): Promise<WrittenRows> {
  const area = {
    row: heading.row,
    column: heading.first,
    rows: rows.last - heading.row + 1,
    columns: heading.last - heading.first + 1,
  };
  const formulas = Array.from({ length: area.rows }, (_, row) =>
    Array.from({ length: area.columns }, (_, column) => cells.content(area.row + row, area.column + column)),
  );
  return writeChanges(`job rows on ${cells.sheet.name}`, changes, [{ sheet: cells.sheet.name, area, formulas }]);
}

/**
 * Puts back what stood in the list before, unless somebody has typed into one of the cells since.
 *
 * @throws WorkbookTrouble that names the cell; nothing is changed then.
 */
export async function takeBackRows(written: WrittenRows): Promise<void> {
  return takeBackChanges(written);
}
