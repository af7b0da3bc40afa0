import type { CellValue } from "../review/facts";
import type { Change } from "../review/finding";
import { cellAddress } from "../sheets/address";
import { inWorkbook, WorkbookTrouble } from "./trouble";

/** Changes that were written, with what has to come back to take them back. */
export interface WrittenChanges {
  readonly title: string;
  readonly cells: readonly (Change & { readonly formatBefore: string })[];
}

/**
 * Writes changes to single cells, each only where still stands what stood there when it was proposed. Two syncs; a
 * write that fails is taken back.
 *
 * @param title what they are, for the person.
 * @returns what {@link takeBackChanges} takes.
 * @throws WorkbookTrouble where a cell has changed since; it names it, and nothing is written.
 */
export async function writeChanges(title: string, changes: readonly Change[]): Promise<WrittenChanges> {
  return inWorkbook(async (context) => {
    const cells = queueCells(context, changes);
    await context.sync();
    refuseChanged(cells, ({ before }) => before);
    const written = cells.map(({ change, range }) => ({ ...change, formatBefore: String(range.numberFormat[0]?.[0]) }));
    try {
      for (const { change, range } of cells) {
        if (change.numberFormat !== undefined) range.numberFormat = [[change.numberFormat]];
        range.formulas = [[asWritten(change.after)]];
      }
      await context.sync();
    } catch (error) {
      queueBack(context, written);
      await context.sync();
      throw error;
    }
    return { title, cells: written };
  });
}

/** Puts back what stood in the cells before, unless somebody has typed into one of them since. */
export async function takeBackChanges({ cells }: WrittenChanges): Promise<void> {
  return inWorkbook(async (context) => {
    const now = queueCells(context, cells);
    await context.sync();
    refuseChanged(now, ({ after }) => after);
    queueBack(context, cells);
    await context.sync();
  });
}

function queueCells<C extends Change>(context: Excel.RequestContext, changes: readonly C[]) {
  return changes.map((change) => {
    const range = context.workbook.worksheets.getItem(change.sheet).getCell(change.row, change.column);
    range.load("formulas,numberFormat");
    return { change, range };
  });
}

function refuseChanged<C extends Change>(
  cells: readonly { readonly change: C; readonly range: Excel.Range }[],
  expected: (change: C) => CellValue,
): void {
  const changed = cells.find(({ change, range }) => String(range.formulas[0]?.[0]) !== String(expected(change)));
  if (changed) {
    throw new WorkbookTrouble(
      `${changed.change.sheet}!${cellAddress(changed.change)} has changed in the meantime, so nothing was written. Check again.`,
    );
  }
}

function queueBack(context: Excel.RequestContext, cells: WrittenChanges["cells"]): void {
  for (const { sheet, row, column, before, formatBefore } of cells) {
    const range = context.workbook.worksheets.getItem(sheet).getCell(row, column);
    range.numberFormat = [[formatBefore]];
    range.formulas = [[asWritten(before)]];
  }
}

/** Text that would turn into something else keeps its text mark. */
function asWritten(value: CellValue): CellValue {
  const turns = typeof value === "string" && value !== "" && !value.startsWith("=") && Number.isFinite(Number(value));
  return turns ? `'${value}` : value;
}
