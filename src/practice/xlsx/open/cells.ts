import { parseA1Ref, tokenize } from "@borgar/fx";
import type { ICellData } from "@univerjs/core";
import { cellAddress, SHEET_COLUMNS } from "../../../spreadsheet/areas";
import { intersecting } from "../../../spreadsheet/intersecting";
import { rectangleOf } from "../../../xlsx/addresses";
import { longestFormula, mostCellsOfFormula, mostCellsOfFormulas } from "../../../xlsx/limits";
import type { FileCell, FileValue } from "../../../xlsx/read/cells";
import type { Steps } from "../../../xlsx/steps";
import { showsDate } from "../../../xlsx/style";
import { counted, type Opening } from "../context";
import { fromFile, movedFormula, type Unreadable } from "../formulas";

/** A formula's result as the file holds it. */
export interface ShownResult {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  readonly value: string | number | boolean;
  /** The cells of an array formula. */
  readonly area?: string;
  /** The cell of the array formula of which it shows a part. */
  readonly partOf?: { readonly row: number; readonly column: number };
}

/** What the sheets of a file have in common while their cells are read. */
export interface CellsReading {
  readonly formats: readonly string[];
  readonly styleIds: readonly (string | undefined)[];
  /** The id of a style for cells in a column that has another one, which the grid would mix with theirs. */
  readonly styleOver: (style: number, column: number) => string | undefined;
  /** Takes down the results of formulas. */
  readonly shown: ShownResult[];
  formulas: number;
  cells: number;
  /** How many cells the formulas read so far. */
  work: number;
}

/** Days between the first days of the two calendars of spreadsheets: 1904-01-01 less 1899-12-31, with a day that never was. */
const daysTo1904 = 1462;

const refusals: Readonly<Record<Unreadable | "large", (count: number) => string>> = {
  outside: (count) =>
    counted(count, "formula that reads another workbook or program", "formulas that read another workbook or program"),
  table: (count) =>
    counted(count, "formula with a table that isn't in the file", "formulas with a table that isn't in the file"),
  unreadable: (count) => counted(count, "formula that can't be read here", "formulas that can't be read here"),
  large: (count) => counted(count, "formula too large to work out here", "formulas too large to work out here"),
};

/** The sheet of some cells, with how many rows of a whole column there are to be read. */
interface ReadInto {
  /** The numbers of the styles of columns that have one. */
  readonly columnStyles: ReadonlyMap<number, number>;
  readonly id: string;
  readonly name: string;
  readonly rows: number;
}

/** The cells of one sheet, as the grid keeps them. */
export function* readCells(
  opening: Opening,
  reading: CellsReading,
  sheet: ReadInto,
  cells: readonly FileCell[],
): Steps<Record<number, Record<number, ICellData>>> {
  const shared = sharedFormulas(cells);
  const spilled = spilledCells(cells);
  const rows: Record<number, Record<number, ICellData>> = {};
  for (const [number, cell] of cells.entries()) {
    if (number % cellsAStep === 0) yield number / cells.length;
    const { row, column, style } = cell;
    const reader = new CellReader(opening, reading, sheet, cell);
    const partOf = spilled.get(`${row},${column}`);
    const data = partOf ? {} : reader.read(shared);
    if (partOf) reader.noteShown({ partOf });
    const columnStyle = sheet.columnStyles.get(column);
    const s =
      columnStyle === undefined || columnStyle === style
        ? reading.styleIds[style]
        : reading.styleOver(style, columnStyle);
    if (s === undefined && Object.keys(data).length === 0) continue;
    rows[row] ??= {};
    rows[row][column] = s === undefined ? data : { ...data, s };
    if (Object.keys(data).length > 0) reading.cells += 1;
  }
  return rows;
}

/** The cells that are read before the work stops for a moment. */
const cellsAStep = 2_000;

/** The cells that hold a formula for others, too, by what they have in common. */
function sharedFormulas(cells: readonly FileCell[]): ReadonlyMap<string, FileCell> {
  return new Map(
    cells.flatMap((cell) => {
      const { shared, text } = cell.formula ?? {};
      return shared !== undefined && text ? [[shared, cell] as const] : [];
    }),
  );
}

/** The cells of array formulas but their first ones: they show a part of the result, and hold nothing of their own. */
function spilledCells(cells: readonly FileCell[]): ReadonlyMap<string, FileCell> {
  const spilled = new Map<string, FileCell>();
  for (const cell of cells) {
    const { row, column, formula } = cell;
    const area = formula?.kind === "array" && formula.area ? rectangleOf(formula.area) : undefined;
    if (!area) continue;
    // A file may name whole columns; the cells that it then holds are those that count.
    for (let down = area.row; down < area.row + Math.min(area.rowCount, mostSpilled); down += 1) {
      for (let across = area.column; across < area.column + Math.min(area.columnCount, mostSpilled); across += 1) {
        if (down !== row || across !== column) spilled.set(`${down},${across}`, cell);
      }
    }
  }
  return spilled;
}

const mostSpilled = 500;

class CellReader {
  constructor(
    private readonly opening: Opening,
    private readonly reading: CellsReading,
    private readonly sheet: ReadInto,
    private readonly cell: FileCell,
  ) {}

  read(shared: ReadonlyMap<string, FileCell>): ICellData {
    const { row, column, formula, value } = this.cell;
    if (!formula) return this.constant(value);
    const text = formula.text || this.sharedText(shared.get(formula.shared ?? ""));
    if (text === undefined || formula.kind === "dataTable") return this.keptAsValue("unreadable");
    const read = fromFile(text, { sheetName: this.sheet.name, row, column }, this.opening);
    if ("refused" in read) return this.keptAsValue(read.refused);
    const work = workOf(read.formula, this.cell, this.sheet.rows);
    if (work > mostCellsOfFormula || this.reading.work + work > mostCellsOfFormulas) return this.keptAsValue("large");
    this.reading.work += work;
    for (const name of read.foreign) {
      this.opening.findings.place("foreign", this.where, (count) => {
        return `${counted(count, "formula")} of an add-in that isn't here, such as ${name}, which will show #NAME?`;
      });
    }
    this.reading.formulas += 1;
    this.noteShown(formula.kind === "array" && formula.area ? { area: formula.area } : {});
    // The grid gives a format of its own to a formula that had no result before.
    const { isSeveral } = this.opening;
    const f = formula.kind === "array" ? read.formula : intersecting(read.formula, isSeveral);
    return { v: "", ...this.constant(value), f };
  }

  /** Takes down what the cell shows in the file. */
  noteShown(more: Pick<ShownResult, "area" | "partOf">): void {
    const { row, column, value } = this.cell;
    if (value === undefined) return;
    const shown = typeof value === "number" ? this.inOneCalendar(value) : plainValue(value);
    this.reading.shown.push({ sheetId: this.sheet.id, row, column, value: shown, ...more });
  }

  private get where(): string {
    return `${this.sheet.name}!${cellAddress(this.cell)}`;
  }

  private sharedText(master: FileCell | undefined): string | undefined {
    return master?.formula && movedFormula(master.formula.text, cellAddress(master), cellAddress(this.cell));
  }

  private keptAsValue(why: Unreadable | "large"): ICellData {
    this.opening.findings.place(why, this.where, (count) => `${refusals[why](count)}, shown as the value in the file`);
    return this.constant(this.cell.value);
  }

  private constant(value: FileValue | undefined): ICellData {
    const { CellValueType, numfmt } = this.opening.library.core;
    if (this.cell.isRich)
      this.opening.findings.count(
        "cell with several fonts in its text, shown in one",
        1,
        "cells with several fonts in their text, shown in one",
      );
    if (value === undefined || value === "") return {};
    if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
    if (typeof value === "number") return { v: this.inOneCalendar(value), t: CellValueType.NUMBER };
    if (typeof value === "object") return { v: value.error, t: CellValueType.STRING };
    // Text that looks like something else, such as an error, must be marked as text.
    const mayBeNumber = /\d|^\s*(?:true|false)\s*$/i.test(value);
    const readsOtherwise = /^[='@#]/.test(value) || (mayBeNumber && numfmt.parseValue(value) !== null);
    return { v: value, t: readsOtherwise ? CellValueType.FORCE_STRING : CellValueType.STRING };
  }

  private inOneCalendar(value: number): number {
    if (!this.opening.book.startsIn1904 || this.cell.isDay) return value;
    return showsDay(this.reading.formats[this.cell.style]) && value >= 0 ? value + daysTo1904 : value;
  }
}

/** Whether a number format shows a day, and not only a time or how long something took. */
function showsDay(format = "General"): boolean {
  return showsDate(format) && /[yd]|mmm|m+[/.-]|[/.-]m+/i.test(format.replace(/"[^"]*"|\\.|\[[^\]]*\]|General/gi, ""));
}

/**
 * The number of a day in a file whose days count from 1904; that of anything else as it is.
 *
 * @param format how the cell shows it.
 */
export function dayInFile(value: number, format: string | undefined): number {
  return showsDay(format) && value >= daysTo1904 ? value - daysTo1904 : value;
}

/**
 * How many cells a formula reads and fills; more than any for one that is too long to be worked out.
 *
 * @param usedRows how many rows of a whole column hold anything.
 */
function workOf(formula: string, { formula: inFile }: FileCell, usedRows: number): number {
  const filled = inFile?.kind === "array" && inFile.area ? rectangleOf(inFile.area) : undefined;
  let read = filled ? filled.rowCount * filled.columnCount : 1;
  const tokens = tokenize(formula, { mergeRefs: true });
  if (tokens.length > longestFormula) return Number.POSITIVE_INFINITY;
  for (const { type, value } of tokens) {
    if (type === "range" || type === "range_beam") {
      const reference = parseA1Ref(value);
      if (!reference || !("range" in reference) || !reference.range) continue;
      const { top, bottom, left, right } = reference.range;
      const rows = top === null || bottom === null ? usedRows : (bottom ?? top ?? 0) - (top ?? 0) + 1;
      const columns = left === null || right === null ? SHEET_COLUMNS : (right ?? left ?? 0) - (left ?? 0) + 1;
      read += rows * columns;
    }
  }
  return read;
}

function plainValue(value: FileValue): ShownResult["value"] {
  return typeof value === "object" ? value.error : value;
}
