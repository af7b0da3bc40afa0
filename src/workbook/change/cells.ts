import type { CellValue } from "../../review/facts";
import type { Change as CellChange } from "../../review/finding";
import { pointsOfCharacters } from "../../sheets/points";
import { someOf } from "../../sheets/someOf";
import { type Area, cellAddress } from "../../spreadsheet/areas";
import { codeOf, inWorkbook, WorkbookFailure } from "../failure";
import { asWritten, contentsOf } from "../read/cells";
import { applyChange, leftoverMessage, suspendCalculation } from "./change";
import { queueBefore, queueRestore, queueWidths } from "./overwritten";
import type { PlaceBefore } from "./receipt";

/** A change of one cell, with the number format for a cell that has none of its own. */
export interface CellWrite extends CellChange {
  readonly formatIfPlain?: string;
}

/** Changes that were written, with what it takes to undo them. */
export interface WrittenChanges {
  readonly title: string;
  readonly cells: readonly (CellChange & { readonly formatBefore: string })[];
  readonly headings?: StyledHeadings;
}

/** Cells that the changes depend on: they must hold what they held when the changes were proposed. */
export interface ExpectedCells {
  readonly sheet: string;
  readonly area: Area;
  readonly formulas: readonly (readonly CellValue[])[];
}

/** Headings of new columns, side by side, that get the style of one that is there. */
export interface NewHeadings {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** The heading whose style they get. */
  readonly like: { readonly row: number; readonly column: number };
  /** The least width of each column, in characters. */
  readonly widths: readonly number[];
}

interface StyledHeadings extends NewHeadings {
  readonly before: PlaceBefore;
}

/**
 * Writes changes to single cells, each only where the cell holds what it held when the change was proposed. Two
 * requests, however many cells.
 *
 * @param title what they are, for the person.
 * @param options.expected cells that must not have changed either.
 * @param options.headings new headings among the changes.
 * @returns what {@link undoChanges} takes.
 * @throws WorkbookFailure where a cell has changed since; it names the cell, and nothing is written.
 */
export async function writeChanges(
  title: string,
  changes: readonly CellWrite[],
  { expected, headings }: { readonly expected?: ExpectedCells; readonly headings?: NewHeadings } = {},
): Promise<WrittenChanges> {
  return inWorkbook(async (context) => {
    const look = queueRead(context, changes);
    const refuseUnexpected = expected && queueExpected(context, expected);
    const placeBefore = headings && queueBefore(context, rangeOfHeadings(context, headings));
    await context.sync();
    refuseUnexpected?.();
    const before = look();
    refuseChanged(before, (change) => change.before);
    const styled = headings && placeBefore && { ...headings, before: placeBefore() };
    // biome-ignore lint/style/noNonNullAssertion: all of them were read
    const formatOf = (change: CellWrite) => before.get(change)!.format;
    const cells = changes.map((change) => ({ ...change, formatBefore: formatOf(change) }));
    const states = changes.map((change) => {
      const format = formatOf(change);
      const newFormat = formatAfter(change, format);
      return { ...change, content: change.after, format: newFormat ?? format, keepsFormat: newFormat === undefined };
    });
    return changeCells(context, changes, {
      before,
      expected: (change) => change.before,
      queueApply: () => {
        const widthsWritten = styled && queueStyle(context, styled);
        queueWrite(context, states);
        // biome-ignore lint/style/noNonNullAssertion: what is styled has its widths queued
        return () => ({ title, cells, ...(styled && { headings: withWidths(styled, widthsWritten!()) }) });
      },
      queueUndo: (restored) => {
        queueWrite(context, [...restored.values()]);
        // Where another pane has put headings of its own there, they keep their style.
        const isHeading = ({ sheet, row }: CellState) => sheet === styled?.sheet && row === styled.row;
        const isOurs =
          restored === before || [...restored.values()].every((cell) => !isHeading(cell) || cell.content === "");
        if (styled && isOurs) queueUnstyle(context, styled);
      },
    });
  });
}

/**
 * Restores what the cells held before, unless someone has typed into one of them since. Two requests.
 *
 * @throws WorkbookFailure that names the cell; nothing is changed then.
 */
export async function undoChanges({ cells, headings }: WrittenChanges): Promise<void> {
  return inWorkbook(async (context) => {
    const look = queueRead(context, cells);
    const widthsNow = headings && queueWidths(rangeOfHeadings(context, headings), headings.widths.length);
    await context.sync();
    const before = look();
    refuseChanged(before, ({ after }) => after);
    await changeCells(context, cells, {
      before,
      expected: ({ after }) => after,
      queueApply: () => {
        queueWrite(
          context,
          cells.map((cell) => ({ ...cell, content: cell.before, format: cell.formatBefore })),
        );
        if (headings) queueUnstyle(context, headings, widthsNow?.());
        return () => undefined;
      },
      queueUndo: (restored) => {
        if (headings) queueStyle(context, headings);
        queueWrite(context, [...restored.values()]);
      },
    });
  });
}

/**
 * Changes cells that were looked at before.
 *
 * @param before what they held then.
 * @param expected what each has to hold, still, right before it is written.
 * @param queueUndo restores what was overwritten: another pane's work, or what was there at the look.
 */
function changeCells<C extends CellChange, T>(
  context: Excel.RequestContext,
  cells: readonly C[],
  change: {
    readonly before: ReadonlyMap<C, CellState>;
    readonly expected: (cell: C) => CellValue;
    readonly queueApply: () => () => T;
    readonly queueUndo: (restored: ReadonlyMap<C, CellState>) => void;
  },
): Promise<T> {
  let overwritten: ReadonlyMap<C, CellState> | undefined;
  return applyChange<T>({
    apply: async () => {
      suspendCalculation(context);
      const look = queueRead(context, cells);
      const result = change.queueApply();
      await context.sync();
      overwritten = look();
      refuseChanged(overwritten, change.expected);
      return result();
    },
    undo: async (cause) => {
      try {
        change.queueUndo(overwritten ?? change.before);
        await context.sync();
      } catch (error) {
        // Cells are restored in the order in which they were written, so a sheet that refuses both holds nothing new.
        if (!REFUSED_ALIKE.some((code) => code === codeOf(cause) && code === codeOf(error))) throw error;
      }
      return undefined;
    },
    leftover: leftoverMessage(
      someOf(
        cells.map((cell) => `${cell.sheet}!${cellAddress(cell)}`),
        MOST_NAMED,
      ),
    ),
  });
}

const MOST_NAMED = 3;

/** The answers of a sheet that can't be written to at all: it is protected, or gone. */
const REFUSED_ALIKE = ["AccessDenied", "ItemNotFound"];

interface Cell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** What a cell holds, or is to hold. */
interface CellState extends Cell {
  readonly content: CellValue;
  readonly format: string;
  /** Whether it has that number format already. */
  readonly keepsFormat?: boolean;
}

/** Queues a read of cells; what they hold is known after the request. */
function queueRead<C extends Cell>(context: Excel.RequestContext, cells: readonly C[]): () => Map<C, CellState> {
  const runs = runsOf(cells).map((run) => {
    const range = rangeOf(context, run);
    range.load("formulas,values,valueTypes,numberFormat");
    return { run, range };
  });
  return () =>
    new Map(
      runs.flatMap(({ run, range }) => {
        const contents = contentsOf(range);
        return run.map((cell, index): [C, CellState] => {
          const { sheet, row, column } = cell;
          const format = String(range.numberFormat[index]?.[0]);
          return [cell, { sheet, row, column, content: contents[index]?.[0] ?? "", format }];
        });
      }),
    );
}

/** Queues contents and number formats; the formats only where one of a run changes. */
export function queueWrite(context: Excel.RequestContext, cells: readonly CellState[]): void {
  for (const run of runsOf(cells)) {
    const range = rangeOf(context, run);
    if (!run.every(({ keepsFormat }) => keepsFormat)) range.numberFormat = run.map(({ format }) => [format]);
    range.formulas = run.map(({ content }) => [asWritten(content)]);
  }
}

/** Cells right below one another, for which the host is asked once. */
function runsOf<C extends Cell>(cells: readonly C[]): C[][] {
  const sorted = [...cells].sort(
    (one, other) => compare(one.sheet, other.sheet) || one.column - other.column || one.row - other.row,
  );
  const runs: C[][] = [];
  for (const cell of sorted) {
    const run = runs.at(-1);
    const above = run?.at(-1);
    if (above?.sheet === cell.sheet && above.column === cell.column && above.row + 1 === cell.row) run?.push(cell);
    else runs.push([cell]);
  }
  return runs;
}

const compare = (one: string, other: string) => (one < other ? -1 : Number(one > other));

function rangeOf(context: Excel.RequestContext, run: readonly Cell[]): Excel.Range {
  // biome-ignore lint/style/noNonNullAssertion: a run has at least one cell
  const { sheet, row, column } = run[0]!;
  return context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, run.length, 1);
}

/** A format that belongs to the change, or one for a cell that has none, or that would turn a formula into text. */
function formatAfter({ numberFormat, formatIfPlain }: CellWrite, before: string): string | undefined {
  return numberFormat ?? (before === "General" || before === "@" ? formatIfPlain : undefined);
}

function queueExpected(context: Excel.RequestContext, { sheet, area, formulas }: ExpectedCells): () => void {
  const { row, column, rows, columns } = area;
  const range = context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, rows, columns);
  range.load("formulas,values,valueTypes");
  return () => {
    const now = contentsOf(range);
    formulas.forEach((cells, down) => {
      cells.forEach((expected, right) => {
        if (String(now[down]?.[right]) === String(expected)) return;
        throw changedSince({ sheet, row: row + down, column: column + right });
      });
    });
  };
}

function refuseChanged<C extends Cell>(states: ReadonlyMap<C, CellState>, expected: (cell: C) => CellValue): void {
  for (const [cell, { content }] of states) {
    if (String(content) !== String(expected(cell))) throw changedSince(cell);
  }
}

function changedSince(cell: Cell): WorkbookFailure {
  return new WorkbookFailure(
    `${cell.sheet}!${cellAddress(cell)} was just changed, so nothing was written. Check again.`,
  );
}

/** Queues the style of new headings; columns only ever get wider. @returns their widths, after the request. */
function queueStyle(context: Excel.RequestContext, headings: StyledHeadings): () => readonly number[] {
  const { sheet, like, widths, before } = headings;
  const place = rangeOfHeadings(context, headings);
  place.copyFrom(context.workbook.worksheets.getItem(sheet).getCell(like.row, like.column), "Formats");
  widths.forEach((characters, index) => {
    const width = pointsOfCharacters(characters);
    if ((before.columnWidths[index] ?? width) < width) place.getColumn(index).format.columnWidth = width;
  });
  return queueWidths(place, widths.length);
}

function withWidths(headings: StyledHeadings, widthsWritten: readonly number[]): StyledHeadings {
  return { ...headings, before: { ...headings.before, widthsWritten } };
}

/** Queues that the place of new headings is blank, and looks as it did. @param widthsNow of its columns. */
function queueUnstyle(context: Excel.RequestContext, headings: StyledHeadings, widthsNow?: readonly number[]): void {
  queueRestore(rangeOfHeadings(context, headings), headings.before, false, widthsNow);
}

function rangeOfHeadings(context: Excel.RequestContext, { sheet, row, column, widths }: NewHeadings): Excel.Range {
  return context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, 1, widths.length);
}
