import { type CellChange, isMerged } from "../../sheets/jobRows/fill";
import type { ListFit } from "../../sheets/jobRows/fit";
import { type NewHeadings, type WrittenChanges, writeChanges } from "./cells";

/**
 * Writes what was proposed for a list: two requests, however many rows. Every cell of the list must still hold what it
 * held when it was read, headings and measurements, too, since the formulas go by their places. New headings look like
 * the last one of the list.
 *
 * @throws WorkbookFailure where something has changed since, naming the cell; nothing is written then.
 */
export async function writeRows(fit: ListFit, changes: readonly CellChange[]): Promise<WrittenChanges> {
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
    expected: { sheet, area, formulas },
    ...(headings && { headings }),
  });
}

/** The headings among the changes; they are side by side. */
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
