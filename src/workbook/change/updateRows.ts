import type { Content, RowOperation } from "../../sheets/blockRows";
import type { Plan } from "../../sheets/plan";
import { type Area, areaAddress, cellAddress } from "../../spreadsheet/areas";
import { inWorkbook, WorkbookFailure } from "../failure";
import { rangeAt } from "../read/areas";
import { queuePlainFont, queuePlainStyle } from "../read/cellStyle";
import { asWritten, contentsOf } from "../read/cells";
import { applyChange, leftoverMessage, suspendCalculation } from "./change";
import { queueBefore, queueLooksBack } from "./overwritten";
import type { PlaceBefore } from "./receipt";
import { queueLooks } from "./writePlan";

/** Cells with their new contents. */
interface CellContents {
  readonly row: number;
  readonly column: number;
  readonly content: Content;
  readonly format?: string | undefined;
}

/** Rows of a block that come into the sheet: as a plan prints them, or as they were before they were deleted. */
interface ComingRows {
  readonly area: Area;
  readonly contents: readonly (readonly Content[])[];
  readonly formats: readonly (readonly string[])[];
  readonly plan: Pick<Plan, "looks" | "warnings" | "choices">;
  /** How they looked; left out for rows that are new. */
  readonly before?: PlaceBefore;
}

/** A change of a block by which whole rows of its sheet come and go. Other cells have to be above it. */
export interface RowsUpdate {
  readonly title: string;
  readonly sheetId: string;
  readonly sheetName: string;
  /** Where the block is before, and what its cells hold there. */
  readonly area: Area;
  readonly contents: readonly (readonly Content[])[];
  readonly operations: readonly RowOperation[];
  /** Cells that change, by their places once rows have come and gone. */
  readonly cells: readonly CellContents[];
  /** All that the block is to hold, where it is to be exactly as it was. */
  readonly whole?: Pick<ComingRows, "area" | "contents" | "formats">;
  readonly coming: readonly ComingRows[];
  /** Rows that go, and how the product prints their looks. */
  readonly going: readonly { readonly row: number; readonly plan: ComingRows["plan"] }[];
}

const MOVED = "Rows of the estimate were moved at the same time.";

/**
 * Inserts and deletes rows of a block and writes its cells that differ: references to its other cells go on pointing at
 * them. Two requests. If it fails, or the block was changed meanwhile, all of it is undone.
 *
 * @returns the change that undoes it, for the same function.
 * @throws WorkbookFailure.
 */
export async function updateRows(update: RowsUpdate): Promise<RowsUpdate> {
  return inWorkbook(async (context) => {
    const { sheetId, area, operations } = update;
    const worksheet = context.workbook.worksheets.getItem(sheetId);
    const looked = queueLook(context, worksheet, update);
    const plainFont = queuePlainFont(context);
    await context.sync();
    refuseChanged(update, looked.contents());
    let back = looked.back();
    /** What was there right before the write. */
    let held = update.contents;
    const after = { ...area, rows: area.rows + growthOf(operations) };
    return applyChange<RowsUpdate>({
      apply: async () => {
        suspendCalculation(context);
        const overwritten = queueLook(context, worksheet, update);
        for (const one of operations) queueOperation(worksheet, one, after.columns);
        queueContents(worksheet, update, plainFont());
        const written = rangeAt(worksheet, after);
        written.load("formulas,values,valueTypes");
        await context.sync();
        back = overwritten.back();
        held = overwritten.contents();
        refuseChanged(update, held);
        return { ...back, contents: contentsOf(written) };
      },
      undo: async () => {
        const sheet = context.workbook.worksheets.getItemOrNullObject(sheetId);
        const rows = Math.max(area.rows, after.rows) + mostComing(operations);
        const there = rangeAt(sheet, { ...area, rows });
        there.load("formulas,values,valueTypes");
        await context.sync();
        // Where the sheet is gone, so is what was written.
        if (sheet.isNullObject) return undefined;
        const now = contentsOf(there);
        const state = stateOf({ ...update, contents: held }, now);
        if (!state) throw new WorkbookFailure(MOVED);
        const isSame = back.whole?.contents.every((cells, row) =>
          cells.every((content, column) => String(now[row]?.[column]) === String(content)),
        );
        if (state.made === 0 && state.gone.size === 0 && isSame) return undefined;
        suspendCalculation(context);
        const undone = operations.slice(0, state.made).reverse().map(inverseOf);
        for (const one of undone) queueOperation(worksheet, one, after.columns);
        const coming = back.coming.filter(({ area: place }) => state.gone.has(place.row - area.row));
        queueContents(worksheet, { ...back, coming }, plainFont());
        await context.sync();
        return undefined;
      },
      leftover: leftoverMessage(`${update.sheetName}!${areaAddress(area)}`),
    });
  });
}

type PlainFont = ReturnType<ReturnType<typeof queuePlainFont>>;

/** Asks for what the update overwrites, in the same request as what follows; readable after it. */
function queueLook(context: Excel.RequestContext, worksheet: Excel.Worksheet, update: RowsUpdate) {
  const { area, going, operations, coming } = update;
  const there = rangeAt(worksheet, area);
  there.load("formulas,values,valueTypes,numberFormat");
  const looks = going.map(({ row, plan }) => {
    const place: Area = { ...area, row, rows: 1 };
    return { place, plan, before: queueBefore(context, rangeAt(worksheet, place)) };
  });
  const contents = () => contentsOf(there);
  return {
    contents,
    back: (): RowsUpdate => {
      const held = contents();
      return {
        ...update,
        area: { ...area, rows: area.rows + growthOf(operations) },
        operations: [...operations].reverse().map(inverseOf),
        cells: [],
        whole: { area, contents: held, formats: there.numberFormat as string[][] },
        coming: looks.map(({ place, plan, before }) => ({
          area: place,
          contents: held.slice(place.row - area.row, place.row - area.row + 1),
          formats: there.numberFormat.slice(place.row - area.row, place.row - area.row + 1) as string[][],
          plan,
          before: before(),
        })),
        going: coming.flatMap(({ area: place, plan }) =>
          Array.from({ length: place.rows }, (_, index) => ({ row: place.row + index, plan: rowOf(plan, index) })),
        ),
      };
    },
  };
}

/** The looks of one row of a plan, as a plan of that row. */
function rowOf({ looks, warnings, choices }: ComingRows["plan"], row: number): ComingRows["plan"] {
  const inRow = <T extends { readonly area: Area }>(items: readonly T[]): T[] =>
    items
      .filter(({ area }) => area.row <= row && row < area.row + area.rows)
      .map((item) => ({ ...item, area: { ...item.area, row: 0, rows: 1 } }));
  return { looks: inRow(looks), warnings: inRow(warnings), choices: inRow(choices) };
}

/** Where a row was before rows came and went. */
function rowsBeforeOf({ operations }: RowsUpdate): (row: number) => number {
  const inverse = [...operations].reverse();
  return (row) =>
    inverse.reduce((at, { kind, row: first, count }) => {
      if (kind === "insert") return at >= first + count ? at - count : at;
      return at >= first ? at + count : at;
    }, row);
}

const inverseOf = ({ kind, ...rest }: RowOperation): RowOperation => ({
  kind: kind === "insert" ? "delete" : "insert",
  ...rest,
});

const growthOf = (operations: readonly RowOperation[]) =>
  operations.reduce((sum, { kind, count }) => sum + (kind === "insert" ? count : -count), 0);

const mostComing = (operations: readonly RowOperation[]) =>
  operations.reduce((sum, { kind, count }) => sum + (kind === "insert" ? count : 0), 0);

function queueOperation(worksheet: Excel.Worksheet, { kind, row, count }: RowOperation, columns: number): void {
  const rows = rangeAt(worksheet, { row, column: 0, rows: count, columns }).getEntireRow();
  if (kind === "insert") rows.insert("Down");
  else rows.delete("Up");
}

function queueContents(
  worksheet: Excel.Worksheet,
  { cells, coming, whole }: Pick<RowsUpdate, "cells" | "coming" | "whole">,
  plainFont: PlainFont,
): void {
  for (const { area, contents, formats, plan, before } of coming) {
    const range = rangeAt(worksheet, area);
    // A row that is inserted looks like the one above it. Color rules around it hold for it, too.
    queuePlainStyle(range, plainFont);
    range.dataValidation.clear();
    range.numberFormat = formats as string[][];
    range.formulas = contents.map((row) => row.map(asWritten));
    queueLooks(range, before ? { ...plan, looks: [] } : plan);
    if (before) queueLooksBack(range, { ...before, columnWidths: [] });
  }
  if (whole) {
    const range = rangeAt(worksheet, whole.area);
    range.formulas = whole.contents.map((row) => row.map(asWritten));
    // A formula written to a plain cell takes the format of what it reads.
    range.numberFormat = whole.formats as string[][];
  }
  for (const { row, column, content, format } of cells) {
    const range = rangeAt(worksheet, { row, column, rows: 1, columns: 1 });
    if (format !== undefined) range.numberFormat = [[format]];
    range.formulas = [[asWritten(content)]];
  }
}

/** A state that the row operations lead through. */
interface RowsState {
  /** How many of them were made. */
  readonly made: number;
  /** The rows that have gone by then, or that are back and blank. */
  readonly gone: ReadonlySet<number>;
}

/**
 * How many of the row operations were made, by which of the block's labels are where.
 *
 * @param now what is at the block's place, and as many rows below as could have come.
 * @returns undefined where none of the states that they lead through is there.
 */
function stateOf(update: RowsUpdate, now: readonly (readonly Content[])[]): RowsState | undefined {
  const { area, contents, operations, going, cells, whole } = update;
  const isGoing = new Set(going.map(({ row }) => row - area.row));
  const rowsBefore = rowsBeforeOf(update);
  const isWritten = new Set(
    cells.filter(({ column }) => column === area.column).map(({ row }) => rowsBefore(row) - area.row),
  );
  /** Which of the block's rows are where after some of the operations; undefined for one that has come. */
  const rowsAfter = (made: number) => {
    const rows = contents.map((_, row): number | undefined => row);
    for (const { kind, row, count } of operations.slice(0, made)) {
      const fresh = kind === "insert" ? Array.from({ length: count }, () => undefined) : [];
      rows.splice(row - area.row, kind === "delete" ? count : 0, ...fresh);
    }
    return rows;
  };
  // A label that is a formula reads other cells by where they are now.
  const labelOf = (cells: readonly Content[] | undefined) => String(cells?.[0]).replace(/^=.*/s, "=");
  if (whole) {
    rowsAfter(operations.length).forEach((row, place) => {
      if (row !== undefined && labelOf(contents[row]) !== labelOf(whole.contents[place])) isWritten.add(row);
    });
  }
  const isBlank = (place: number) => (now[place] ?? []).every((cell) => cell === "");
  const fits = (row: number | undefined, place: number) =>
    row === undefined ||
    isWritten.has(row) ||
    labelOf(contents[row]) === labelOf(now[place]) ||
    (isGoing.has(row) && isBlank(place));
  for (let made = operations.length; made >= 0; made -= 1) {
    const rows = rowsAfter(made);
    if (!rows.every(fits)) continue;
    const isThere = (row: number) => rows.includes(row) && !isBlank(rows.indexOf(row));
    return { made, gone: new Set([...isGoing].filter((row) => !isThere(row))) };
  }
  return undefined;
}

/** @throws WorkbookFailure where the block holds something else than was looked at. */
function refuseChanged({ area, contents, sheetName }: RowsUpdate, now: readonly (readonly Content[])[]): void {
  contents.forEach((cells, row) => {
    cells.forEach((cell, column) => {
      if (String(cell) === String(now[row]?.[column])) return;
      const at = cellAddress({ row: area.row + row, column: area.column + column });
      throw new WorkbookFailure(
        `${sheetName}!${at} was just changed, so nothing was written. Check it, then try again.`,
      );
    });
  });
}
