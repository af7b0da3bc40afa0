import type { CellValue } from "../review/facts";
import type { Change } from "../review/finding";
import { asWritten } from "./contents";

/** A change of one cell, with the number format for a cell that has none of its own. */
export interface CellWrite extends Change {
  readonly formatIfPlain?: string;
}

/** Changes of cells that stand right below one another: the host is asked once for all of them. */
export interface Run<C extends Change> {
  readonly changes: readonly C[];
  readonly range: Excel.Range;
}

/** Joins changes into runs down the columns, and queues what stands there to be read. */
export function queueRuns<C extends Change>(context: Excel.RequestContext, changes: readonly C[]): Run<C>[] {
  return runsOf(changes).map((run) => {
    const range = rangeOf(context, run);
    range.load("formulas,values,valueTypes,numberFormat");
    return { changes: run, range };
  });
}

/** Queues that the cells of a run hold these contents, and have these formats where any is given. */
export function queueContents<C extends Change>(
  { changes, range }: Run<C>,
  contentOf: (change: C, index: number) => CellValue,
  formatOf: (change: C, index: number) => string | undefined,
): void {
  const formats = changes.map(formatOf);
  if (formats.some((format) => format !== undefined)) {
    range.numberFormat = formats.map((format, index) => [format ?? formatBefore(range, index)]);
  }
  range.formulas = changes.map((change, index) => [asWritten(contentOf(change, index))]);
}

export function formatBefore(range: Excel.Range, index: number): string {
  return String(range.numberFormat[index]?.[0]);
}

/** The same cells, to be written without having been read. */
export function runsToWrite<C extends Change>(context: Excel.RequestContext, changes: readonly C[]): Run<C>[] {
  return runsOf(changes).map((run) => ({ changes: run, range: rangeOf(context, run) }));
}

function runsOf<C extends Change>(changes: readonly C[]): C[][] {
  const sorted = [...changes].sort(
    (one, other) => compare(one.sheet, other.sheet) || one.column - other.column || one.row - other.row,
  );
  const runs: C[][] = [];
  for (const change of sorted) {
    const run = runs.at(-1);
    const above = run?.at(-1);
    if (above?.sheet === change.sheet && above.column === change.column && above.row + 1 === change.row)
      run?.push(change);
    else runs.push([change]);
  }
  return runs;
}

function rangeOf(context: Excel.RequestContext, run: readonly Change[]): Excel.Range {
  const { sheet, row, column } = run[0]!;
  return context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, run.length, 1);
}

const compare = (one: string, other: string) => (one < other ? -1 : Number(one > other));
