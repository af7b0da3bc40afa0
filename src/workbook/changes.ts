import type { Area, CellValue } from "../review/facts";
import type { Change } from "../review/finding";
import { cellAddress } from "../sheets/address";
import { type CellWrite, formatBefore, queueContents, queueRuns, type Run, runsToWrite } from "./changeRuns";
import { inWords, inWorkbook, WorkbookTrouble } from "./trouble";

/** Changes that were written, with what has to come back to take them back. */
export interface WrittenChanges {
  readonly title: string;
  readonly cells: readonly (Change & { readonly formatBefore: string })[];
}

/** Cells that the changes rest on: they must still hold what they held when the changes were proposed. */
export interface Standing {
  readonly sheet: string;
  readonly area: Area;
  readonly formulas: readonly (readonly CellValue[])[];
}

/**
 * Writes changes to single cells, each only where still stands what stood there when it was proposed. Two syncs,
 * however many they are; a write that fails is taken back.
 *
 * @param title what they are, for the person.
 * @param standing other cells that must not have changed since either.
 * @returns what {@link takeBackChanges} takes.
 * @throws WorkbookTrouble where a cell has changed since; it names it, and nothing is written.
 */
export async function writeChanges(
  title: string,
  changes: readonly CellWrite[],
  standing: readonly Standing[] = [],
): Promise<WrittenChanges> {
  return inWorkbook(async (context) => {
    const runs = queueRuns(context, changes);
    const stands = standing.map((one) => queueStanding(context, one));
    await context.sync();
    for (const { one, range } of stands) refuseMoved(one, range);
    refuseChanged(runs, ({ before }) => before);
    const before = new Map(
      runs.flatMap(({ changes: run, range }) =>
        run.map((change, index) => [change, formatBefore(range, index)] as const),
      ),
    );
    const written = changes.map((change) => ({ ...change, formatBefore: before.get(change) ?? "General" }));
    try {
      context.application.suspendApiCalculationUntilNextSync();
      context.application.suspendScreenUpdatingUntilNextSync();
      for (const run of runs)
        queueContents(
          run,
          ({ after }) => after,
          (change) => formatAfter(change, before.get(change)),
        );
      await context.sync();
    } catch (error) {
      await takingBack(error, async () => {
        queueBack(context, written);
        await context.sync();
      });
      throw error;
    }
    return { title, cells: written };
  });
}

/** Puts back what stood in the cells before, unless somebody has typed into one of them since. */
export async function takeBackChanges({ cells }: WrittenChanges): Promise<void> {
  return inWorkbook(async (context) => {
    const now = queueRuns(context, cells);
    await context.sync();
    refuseChanged(now, ({ after }) => after);
    queueBack(context, cells);
    await context.sync();
  });
}

/** A format that belongs to the change, or one for a cell that has none, or that would turn a formula into text. */
function formatAfter({ numberFormat, formatIfPlain }: CellWrite, before: string | undefined): string | undefined {
  return numberFormat ?? (before === "General" || before === "@" ? formatIfPlain : undefined);
}

function queueStanding(context: Excel.RequestContext, one: Standing) {
  const { row, column, rows, columns } = one.area;
  const range = context.workbook.worksheets.getItem(one.sheet).getRangeByIndexes(row, column, rows, columns);
  range.load("formulas");
  return { one, range };
}

function refuseMoved({ sheet, area, formulas }: Standing, range: Excel.Range): void {
  formulas.forEach((cells, row) => {
    cells.forEach((expected, column) => {
      if (String(range.formulas[row]?.[column]) === String(expected)) return;
      throw changedSince({ sheet, row: area.row + row, column: area.column + column });
    });
  });
}

function refuseChanged<C extends Change>(runs: readonly Run<C>[], expected: (change: C) => CellValue): void {
  for (const { changes, range } of runs) {
    const changed = changes.find((change, index) => String(range.formulas[index]?.[0]) !== String(expected(change)));
    if (changed) throw changedSince(changed);
  }
}

function changedSince(cell: Pick<Change, "sheet" | "row" | "column">): WorkbookTrouble {
  return new WorkbookTrouble(
    `${cell.sheet}!${cellAddress(cell)} has changed in the meantime, so nothing was written. Check again.`,
  );
}

function queueBack(context: Excel.RequestContext, cells: WrittenChanges["cells"]): void {
  for (const run of runsToWrite(context, cells)) {
    queueContents(
      run,
      ({ before }) => before,
      (change) => change.formatBefore,
    );
  }
}

/** Runs what takes a failed write back; if that fails, too, the person has to know. */
async function takingBack(cause: unknown, deed: () => Promise<void>): Promise<void> {
  try {
    await deed();
  } catch {
    const { message } = inWords(cause);
    // Nothing can have been written to a sheet that does not let itself be written to.
    if ((cause as { code?: string }).code === "AccessDenied") throw new WorkbookTrouble(message);
    throw new WorkbookTrouble(
      `${message} What was already written could not be taken back. Undo it in the sheet (Ctrl+Z).`,
    );
  }
}
