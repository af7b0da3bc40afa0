import { type CellChange, isMerged } from "../../sheets/jobRows/fill";
import type { ListFit } from "../../sheets/jobRows/fit";
import { type NewHeadings, undoChanges, type WrittenChanges, writeChanges } from "./cells";

/** What was written into a list of beds, to be taken back. */
export type WrittenRows = WrittenChanges;

/**
 * Writes what was proposed for a list: two syncs, however many rows. Every cell of the list must still hold what it
 * held when it was read, headings and measurements, too, since the formulas go by their places. New headings look like
 * the last one of the list.
 *
 * @throws WorkbookFailure where something has changed since, naming the cell; nothing is written then.
 */
export async function writeRows(fit: ListFit, changes: readonly CellChange[]): Promise<WrittenRows> {
  const { cells, heading, rows } = fit;
  const sheet = cells.sheet.name;
  const area = {
    row: heading.row,
    column: heading.first,
    rows: rows.last - heading.row + 1,
    columns: heading.last - heading.first + 1,
  };
  const formulas = Array.from({ length: area.rows }, (_, row) =>
    Array.from({ length: area.columns }, (_, column) => cells.content(area.row + row, area.column + column)),
  );
  const headings = newHeadings(fit, changes);
  return writeChanges(`job rows on ${sheet}`, changes, {
    standing: { sheet, area, formulas },
    ...(headings && { headings }),
  });
}

/** The headings among the changes; they stand side by side. */
function newHeadings({ cells, heading }: ListFit, changes: readonly CellChange[]): NewHeadings | undefined {
  const fresh = changes.filter(({ row }) => row === heading.row).sort((one, other) => one.column - other.column);
  const [first] = fresh;
  if (!first || isMerged(cells.sheet, heading.row, heading.last)) return undefined;
  const { sheet, row, column } = first;
  const widths = fresh.map(({ after }) => String(after).length + PADDING_CHARACTERS);
  return { sheet, row, column, like: { row, column: heading.last }, widths };
}

/** Room beside a heading, so that it does not touch the next. */
const PADDING_CHARACTERS = 2;

/**
 * Puts back what stood in the list before, unless somebody has typed into one of the cells since.
 *
 * @throws WorkbookFailure that names the cell; nothing is changed then.
 */
export async function undoRows(written: WrittenRows): Promise<void> {
  return undoChanges(written);
}
