import type { ICellData } from "@univerjs/core";
import { readAddress } from "../../grid/a1";
import { rectangleOf } from "../formula/cellPlace";
import { fromFile, type Unreadable } from "../formula/fromFile";
import { movedFormula } from "../formula/shared";
import { showsDate, styleNumber } from "../look/formats";
import { counted } from "../words";
import type { Opening } from "./context";

/** A cell as the library gives it. Its own types hide what it keeps of shared and array formulas. */
export interface FileCellModel {
  readonly address: string;
  readonly value?: unknown;
  readonly formula?: string;
  /** The cell that holds the formula for this one, too. */
  readonly sharedFormula?: string;
  readonly shareType?: string;
  /** The cells of an array formula. */
  readonly ref?: string;
  readonly result?: unknown;
  readonly style?: { readonly numFmt?: string };
}

/** A formula's result as the file holds it. */
export interface ShownResult {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  readonly value: string | number | boolean;
}

/** What the sheets of a file have in common while their cells are read. */
export interface CellsReading {
  readonly formats: readonly string[];
  readonly styleIds: readonly (string | undefined)[];
  /** Takes down the results of formulas. */
  readonly shown: ShownResult[];
  formulas: number;
  cells: number;
}

/** Days between the first days of the two calendars of spreadsheets: 1904-01-01 less 1899-12-31, with a day that never was. */
const daysTo1904 = 1462;

const refusals: Readonly<Record<Unreadable, (count: number) => string>> = {
  outside: (count) =>
    counted(count, "formula that reads another workbook or program", "formulas that read another workbook or program"),
  table: (count) =>
    counted(count, "formula with a table that is not in the file", "formulas with a table that is not in the file"),
  unreadable: (count) => counted(count, "formula that cannot be read here", "formulas that cannot be read here"),
};

/** The cells of one sheet, as the grid keeps them. */
export function readCells(
  opening: Opening,
  reading: CellsReading,
  sheet: { readonly id: string; readonly name: string },
  models: readonly FileCellModel[],
): Record<number, Record<number, ICellData>> {
  const masters = new Map(models.map((model) => [model.address, model.formula]));
  const spilled = new Set(models.flatMap(spilledCells));
  const rows: Record<number, Record<number, ICellData>> = {};
  for (const model of models) {
    const place = readAddress(model.address)?.rectangle;
    if (!place) continue;
    const data = spilled.has(model.address) ? {} : new CellReader(opening, reading, sheet, model, place).read(masters);
    const number = styleNumber(model.style?.numFmt);
    const s = reading.styleIds[number];
    if (s === undefined && Object.keys(data).length === 0) continue;
    const row = rows[place.row] ?? {};
    row[place.column] = s === undefined ? data : { ...data, s };
    rows[place.row] = row;
    if (Object.keys(data).length > 0) reading.cells += 1;
  }
  return rows;
}

/** The cells of an array formula but its first, which show a part of its result and hold nothing of their own. */
function spilledCells({ address, ref, shareType }: FileCellModel): string[] {
  const area = shareType === "array" && ref ? rectangleOf(ref) : undefined;
  if (!area) return [];
  const cells: string[] = [];
  // A file may name whole columns; the cells that it then holds are those that count.
  for (let row = area.row; row < area.row + Math.min(area.rowCount, mostSpilled); row += 1) {
    for (let column = area.column; column < area.column + Math.min(area.columnCount, mostSpilled); column += 1) {
      cells.push(`${columnName(column)}${row + 1}`);
    }
  }
  return cells.filter((one) => one !== address);
}

const mostSpilled = 500;

function columnName(column: number): string {
  const rest = Math.floor(column / 26);
  return (rest > 0 ? columnName(rest - 1) : "") + String.fromCharCode(65 + (column % 26));
}

class CellReader {
  constructor(
    private readonly opening: Opening,
    private readonly reading: CellsReading,
    private readonly sheet: { readonly id: string; readonly name: string },
    private readonly model: FileCellModel,
    private readonly place: { readonly row: number; readonly column: number },
  ) {}

  read(masters: ReadonlyMap<string, string | undefined>): ICellData {
    const { formula, sharedFormula, shareType } = this.model;
    if (formula === undefined && sharedFormula === undefined && shareType === undefined)
      return this.constant(this.model.value);
    const text = formula ?? this.shared(sharedFormula, masters);
    if (text === undefined || shareType === "dataTable") return this.keptAsValue("unreadable");
    const read = fromFile(text, { sheetName: this.sheet.name, ...this.place }, this.opening);
    if ("refused" in read) return this.keptAsValue(read.refused);
    for (const name of read.foreign) {
      this.opening.findings.place("foreign", this.where, (count) => {
        return `${counted(count, "formula")} of an add-in that is not here, such as ${name}, which will show #NAME?`;
      });
    }
    this.reading.formulas += 1;
    const value = plainValue(this.model.result);
    if (value !== undefined)
      this.reading.shown.push({ sheetId: this.sheet.id, row: this.place.row, column: this.place.column, value });
    return { ...this.constant(this.model.result), f: read.formula };
  }

  private get where(): string {
    return `${this.sheet.name}!${this.model.address}`;
  }

  private shared(master: string | undefined, masters: ReadonlyMap<string, string | undefined>): string | undefined {
    const formula = master === undefined ? undefined : masters.get(master);
    return formula === undefined || master === undefined
      ? undefined
      : movedFormula(formula, master, this.model.address);
  }

  private keptAsValue(why: Unreadable): ICellData {
    this.opening.findings.place(why, this.where, (count) => `${refusals[why](count)}, kept as the value last shown`);
    return this.constant(this.model.result);
  }

  private constant(value: unknown): ICellData {
    const { CellValueType, numfmt } = this.opening.library.core;
    const plain = plainValue(value);
    if (isRich(value))
      this.opening.findings.count(
        "cell with several fonts in its text, which becomes one",
        1,
        "cells with several fonts in their text, which become one",
      );
    if (plain === undefined || plain === "") return {};
    if (typeof plain === "boolean") return { v: plain ? 1 : 0, t: CellValueType.BOOLEAN };
    if (typeof plain === "number") return { v: this.inOneCalendar(plain), t: CellValueType.NUMBER };
    // Text that reads as something else, such as an error, must be told that it is text.
    const readsOtherwise = !isError(value) && (/^[='@#]/.test(plain) || numfmt.parseValue(plain) !== null);
    return { v: plain, t: readsOtherwise ? CellValueType.FORCE_STRING : CellValueType.STRING };
  }

  private inOneCalendar(value: number): number {
    if (!this.opening.book.startsIn1904) return value;
    const format = this.reading.formats[styleNumber(this.model.style?.numFmt)] ?? "General";
    return showsDate(format) && value >= 0 ? value + daysTo1904 : value;
  }
}

function isRich(value: unknown): value is { richText: readonly { text?: string }[] } {
  return typeof value === "object" && value !== null && "richText" in value && Array.isArray(value.richText);
}

function isError(value: unknown): value is { readonly error: unknown } {
  return typeof value === "object" && value !== null && "error" in value;
}

/** What a cell shows, without its dress; undefined where the file holds none. */
function plainValue(value: unknown): string | number | boolean | undefined {
  if (typeof value === "string" || typeof value === "boolean") return value;
  if (typeof value === "number") return Number.isFinite(value) ? value : undefined;
  if (isRich(value)) return value.richText.map(({ text = "" }) => text).join("");
  if (isError(value)) return String(value.error);
  return undefined;
}
