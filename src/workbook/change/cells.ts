import type { CellValue } from "../../review/facts";
import type { Change } from "../../review/finding";
import { someOf } from "../../sheets/someOf";
import { type Area, cellAddress } from "../../spreadsheet/areas";
import { codeOf, inWorkbook, WorkbookFailure } from "../failure";
import { pointsOfCharacters } from "../read/cellStyle";
import { asWritten, contentsOf } from "../read/cells";
import { leftoverMessage, writing } from "./change";
import { queueBefore, queueRestore, queueWidths } from "./overwritten";
import type { PlaceBefore } from "./receipt";

const MOST_NAMED = 3;

/** Changes that were written, with what has to come back to take them back. */
export interface WrittenChanges {
  readonly title: string;
  readonly cells: readonly (Change & { readonly formatBefore: string })[];
  readonly headings?: DressedHeadings;
}

/** Cells that the changes rest on: they must still hold what they held when the changes were proposed. */
export interface ExpectedCells {
  readonly sheet: string;
  readonly area: Area;
  readonly formulas: readonly (readonly CellValue[])[];
}

/** What goes with changes: cells that must not have changed either, and new headings among them. */
export interface WithChanges {
  readonly standing?: ExpectedCells;
  readonly headings?: NewHeadings;
}

/**
 * Writes changes to single cells, each only where still stands what stood there when it was proposed. Two syncs,
 * however many they are; a write that fails is taken back.
 *
 * @param title what they are, for the person.
 * @returns what {@link undoChanges} takes.
 * @throws WorkbookFailure where a cell has changed since; it names it, and nothing is written.
 */
export async function writeChanges(
  title: string,
  changes: readonly CellWrite[],
  { standing, headings }: WithChanges = {},
): Promise<WrittenChanges> {
  return inWorkbook(async (context) => {
    const runs = queueRuns(context, changes);
    const stands = standing && queueStanding(context, standing);
    const dressed = headings && queueHeadings(context, headings);
    await context.sync();
    if (standing && stands) refuseMoved(standing, stands);
    refuseChanged(runs, ({ before }) => before);
    const before = new Map(
      runs.flatMap(({ changes: run, range }) =>
        run.map((change, index) => [change, formatBefore(range, index)] as const),
      ),
    );
    const written: WrittenChanges = {
      title,
      cells: changes.map((change) => ({ ...change, formatBefore: before.get(change) ?? "General" })),
      ...(dressed && { headings: dressed() }),
    };
    let covered: readonly Run<Change>[] | undefined;
    const write = async () => {
      queueQuiet(context);
      // Read once more, right before they are written: another pane may have been quicker.
      const there = queueRuns(context, changes);
      const looking = written.headings && queueDressed(context, written.headings);
      for (const run of runs) {
        queueContents(
          run,
          ({ after }) => after,
          (change) => formatAfter(change, before.get(change)),
        );
      }
      await context.sync();
      covered = there;
      refuseChanged(there, ({ before: expected }) => expected);
      return { ...written, ...(looking && { headings: looking() }) };
    };
    const queueBefore = () => (covered ? queueCovered(context, covered, written) : queueBack(context, written));
    return writing(write, (cause) => puttingBack(context, cause, queueBefore), leftoverMessage(placesOf(changes)));
  });
}

/**
 * Puts back what stood in the cells before, unless somebody has typed into one of them since. Two syncs; where the
 * second fails, the changes stand again as they did.
 */
export async function undoChanges(written: WrittenChanges): Promise<void> {
  return inWorkbook(async (context) => {
    const now = queueRuns(context, written.cells);
    const widthsNow = written.headings && queueHeadingWidths(context, written.headings);
    await context.sync();
    refuseChanged(now, ({ after }) => after);
    let covered: readonly Run<Change>[] | undefined;
    const write = async () => {
      queueQuiet(context);
      const there = queueRuns(context, written.cells);
      queueBack(context, written, widthsNow?.());
      await context.sync();
      covered = there;
      refuseChanged(there, ({ after }) => after);
    };
    const queueAgain = () => {
      if (written.headings) queueDressed(context, written.headings);
      queueThere(covered ?? now);
    };
    return writing(write, (cause) => puttingBack(context, cause, queueAgain), leftoverMessage(placesOf(written.cells)));
  });
}

function placesOf(changes: readonly Change[]): string {
  return someOf(
    changes.map((change) => `${change.sheet}!${cellAddress(change)}`),
    MOST_NAMED,
  );
}

/** Formulas are worked out once, when all of them are there. */
function queueQuiet({ application }: Excel.RequestContext): void {
  application.suspendApiCalculationUntilNextSync();
  application.suspendScreenUpdatingUntilNextSync();
}

/** A format that belongs to the change, or one for a cell that has none, or that would turn a formula into text. */
function formatAfter({ numberFormat, formatIfPlain }: CellWrite, before: string | undefined): string | undefined {
  return numberFormat ?? (before === "General" || before === "@" ? formatIfPlain : undefined);
}

function queueStanding(context: Excel.RequestContext, { sheet, area }: ExpectedCells): Excel.Range {
  const range = context.workbook.worksheets
    .getItem(sheet)
    .getRangeByIndexes(area.row, area.column, area.rows, area.columns);
  range.load("formulas,values,valueTypes");
  return range;
}

function refuseMoved({ sheet, area, formulas }: ExpectedCells, range: Excel.Range): void {
  const now = contentsOf(range);
  formulas.forEach((cells, row) => {
    cells.forEach((expected, column) => {
      if (String(now[row]?.[column]) === String(expected)) return;
      throw changedSince({ sheet, row: area.row + row, column: area.column + column });
    });
  });
}

function refuseChanged<C extends Change>(runs: readonly Run<C>[], expected: (change: C) => CellValue): void {
  for (const { changes, range } of runs) {
    const now = contentsOf(range);
    const changed = changes.find((change, index) => String(now[index]?.[0]) !== String(expected(change)));
    if (changed) throw changedSince(changed);
  }
}

function changedSince(cell: Pick<Change, "sheet" | "row" | "column">): WorkbookFailure {
  return new WorkbookFailure(
    `${cell.sheet}!${cellAddress(cell)} has changed in the meantime, so nothing was written. Check again.`,
  );
}

function queueBack(
  context: Excel.RequestContext,
  { cells, headings }: WrittenChanges,
  widthsNow?: readonly number[],
): void {
  for (const run of runsToWrite(context, cells)) {
    queueContents(
      run,
      ({ before }) => before,
      (change) => change.formatBefore,
    );
  }
  if (headings) queueUndressed(context, headings, widthsNow);
}

/** Queues what was read from cells into them again, whoever had written it. */
function queueThere(runs: readonly Run<Change>[]): void {
  for (const run of runs) {
    const formulas = contentsOf(run.range).map(([content = ""]) => content);
    const formats = formulas.map((_, index) => formatBefore(run.range, index));
    queueContents(
      run,
      (_, index) => formulas[index] ?? "",
      (_, index) => formats[index],
    );
  }
}

/** Queues what another pane had written into the cells right before; headings of its own keep their looks. */
function queueCovered(context: Excel.RequestContext, covered: readonly Run<Change>[], { headings }: WrittenChanges) {
  queueThere(covered);
  if (!headings) return;
  const isHeading = ({ sheet, row }: Change) => sheet === headings.sheet && row === headings.row;
  const isBlank = covered.every(({ changes, range }) =>
    changes.every((change, index) => !isHeading(change) || range.formulas[index]?.[0] === ""),
  );
  if (isBlank) queueUndressed(context, headings);
}

/** Has what stood before stand again, after a request that failed for a cause. */
async function puttingBack(context: Excel.RequestContext, cause: unknown, queue: () => void): Promise<undefined> {
  try {
    queue();
    await context.sync();
  } catch (error) {
    // The cells come back in the order in which they were written, so a sheet that refuses both times holds nothing new.
    if (!REFUSED_ALIKE.some((code) => code === codeOf(cause) && code === codeOf(error))) throw error;
  }
}

/** What a sheet that cannot be written to at all answers: it is protected, or gone. */
const REFUSED_ALIKE = ["AccessDenied", "ItemNotFound"];

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

/** Headings of new columns, side by side, that are to look like one that is there. */
export interface NewHeadings {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** The heading that they look like. */
  readonly like: { readonly row: number; readonly column: number };
  /** How wide each column is at least, in characters. */
  readonly widths: readonly number[];
}

/** With how their place looked before. */
export interface DressedHeadings extends NewHeadings {
  readonly before: PlaceBefore;
}

/** Asks how the place of new headings looks; readable after a sync. */
export function queueHeadings(context: Excel.RequestContext, headings: NewHeadings): () => DressedHeadings {
  const before = queueBefore(context, placeOf(context, headings));
  return () => ({ ...headings, before: before.read() });
}

/**
 * Queues that new headings look like the one that is there; columns only ever get wider.
 *
 * @returns the headings with how wide their columns are then, after a sync.
 */
export function queueDressed(context: Excel.RequestContext, headings: DressedHeadings): () => DressedHeadings {
  const { sheet, like, widths, before } = headings;
  const place = placeOf(context, headings);
  place.copyFrom(context.workbook.worksheets.getItem(sheet).getCell(like.row, like.column), "Formats");
  widths.forEach((characters, index) => {
    const width = pointsOfCharacters(characters);
    if ((before.columnWidths[index] ?? width) < width) place.getColumn(index).format.columnWidth = width;
  });
  const widthsWritten = queueWidths(place, widths.length);
  return () => ({ ...headings, before: { ...before, widthsWritten: widthsWritten() } });
}

/** Asks how wide the columns of new headings are by now; readable after a sync. */
export function queueHeadingWidths(context: Excel.RequestContext, headings: NewHeadings): () => readonly number[] {
  return queueWidths(placeOf(context, headings), headings.widths.length);
}

/** Queues that the place of new headings is blank, and looks as it did. @param widthsNow of its columns. */
export function queueUndressed(
  context: Excel.RequestContext,
  headings: DressedHeadings,
  widthsNow?: readonly number[],
): void {
  queueRestore(placeOf(context, headings), headings.before, false, widthsNow);
}

function placeOf(context: Excel.RequestContext, { sheet, row, column, widths }: NewHeadings): Excel.Range {
  return context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, 1, widths.length);
}
