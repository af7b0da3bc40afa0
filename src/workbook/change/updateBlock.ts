import type { Content } from "../../sheets/blockRows";
import type { BlockUpdate, CellUpdate } from "../../sheets/blockUpdate";
import { compose, type DraftRow } from "../../sheets/compose";
import type { Area } from "../../spreadsheet/areas";
import { undoChanges, writeChanges } from "./cells";
import { updateRows } from "./updateRows";

/** A block on the sheet, as it was read. */
export interface BlockInSheet {
  readonly sheetId: string;
  readonly sheetName: string;
  readonly area: Area;
  /** What its cells hold, from its first row to its last. */
  readonly contents: readonly (readonly Content[])[];
}

/** An update that was written. */
export interface WrittenBlock {
  /** How many cells and rows it changed. */
  readonly count: number;
  /** Puts it back, unless the block was changed since; throws WorkbookFailure then. */
  readonly undo: () => Promise<unknown>;
}

/**
 * Updates a block where it is: writes only the cells that differ, each only where the block still holds what was read,
 * and the rows that come and go. Two requests, and two more for undo.
 *
 * @param title what it is, for the person.
 * @param update from `blockUpdate`.
 * @param replaced cells among its `byHand` that are to be as the product makes them, all the same.
 * @throws WorkbookFailure where the block was changed meanwhile, or the host refuses; nothing is changed then.
 */
export async function updateBlock(
  title: string,
  { sheetId, sheetName, ...read }: BlockInSheet,
  update: BlockUpdate,
  replaced: readonly CellUpdate[] = [],
): Promise<WrittenBlock> {
  const area = { ...read.area, rows: update.rows };
  const contents = read.contents.slice(0, update.rows);
  const cells = [...update.changes, ...replaced].map(({ row, column, before, after, format }) => ({
    sheet: sheetName,
    row,
    column,
    before,
    after: unmarked(after),
    ...(format !== undefined && { formatIfPlain: format }),
  }));
  if (update.operations.length === 0) {
    const expected = { sheet: sheetName, area, formulas: contents };
    const written = await writeChanges(title, cells, { expected });
    return { count: cells.length, undo: () => undoChanges(written) };
  }
  const rowsOf = (row: number, rows: readonly DraftRow[]) =>
    compose(title, rows, Array(area.columns).fill(0), { row, column: area.column });
  const back = await updateRows({
    title,
    sheetId,
    sheetName,
    area,
    contents,
    operations: update.operations,
    cells: cells.map(({ after, formatIfPlain, ...cell }) => ({ ...cell, content: after, format: formatIfPlain })),
    coming: update.inserted.map(({ row, rows }) => {
      const plan = rowsOf(row, rows);
      const place = { row, column: area.column, rows: plan.rows, columns: plan.columns };
      return { area: place, contents: plan.formulas.map((one) => one.map(unmarked)), formats: plan.formats, plan };
    }),
    going: update.removed.map(({ row, printed }) => ({ row, plan: rowsOf(row, [looksOf(printed)]) })),
  });
  const rows = update.operations.reduce((sum, { count }) => sum + count, 0);
  return { count: cells.length + rows, undo: () => updateRows(back) };
}

/** A row's looks alone: its formulas read cells that are not composed with it. */
function looksOf({ cells, ...row }: DraftRow): DraftRow {
  return {
    ...row,
    cells: cells.map((cell) => {
      if (!cell) return undefined;
      const { key: _, ...looks } = cell;
      return { ...looks, content: "" };
    }),
  };
}

/** The writer marks text by itself; text that would be a formula has its mark in what is read, too. */
function unmarked(content: Content): Content {
  return typeof content === "string" && /^'(?!=|#)/.test(content) ? content.slice(1) : content;
}
