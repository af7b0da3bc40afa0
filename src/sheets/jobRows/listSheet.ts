import { readTape } from "../../quantities/tape";
import type { Anchor, Area } from "../../spreadsheet/areas";

/** What the host gives for a cell: "" for a blank one, the text of the error for an error. */
export type CellContent = string | number | boolean;

/** A table as it lies on the sheet, with its heading row and its row of totals where they show. */
export interface ListTable {
  readonly name: string;
  readonly area: Area;
  readonly headingRow: boolean;
  readonly totalsRow: boolean;
}

/** What is known of a sheet that may hold a list of beds. Rows and columns are counted from 0, on the sheet. */
export interface ListSheet extends Anchor {
  readonly name: string;
  /** What is in the used cells, from `row` and `column` on; a formula with its "=", in English, with commas. */
  readonly formulas: readonly (readonly CellContent[])[];
  readonly values: readonly (readonly CellContent[])[];
  /** Rows that do not show, by hand or by a filter. */
  readonly hiddenRows: readonly number[];
  readonly merged: readonly Area[];
  readonly tables: readonly ListTable[];
  /** Names that the workbook has, as far as formulas may use them. */
  readonly names: readonly string[];
  /** Whether the office has weighed stone of its own, in its sheet of rates. */
  readonly weighsStone: boolean;
  /** Whether it has typed the yard's own step or minimum for a stone. */
  readonly stonesHaveSteps?: boolean;
  readonly products?: ProductNames;
}

/** What the office's lists call their rows, for those that job rows name; a list that the workbook lacks is absent. */
export type ProductNames = Readonly<Partial<Record<"edging" | "fabric", readonly string[]>>>;

/** The cells of a sheet, asked for by their place on it. */
export class ListCells {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;

  constructor(readonly sheet: ListSheet) {
    this.top = sheet.row;
    this.left = sheet.column;
    this.bottom = sheet.row + sheet.formulas.length - 1;
    this.right = sheet.column + (sheet.formulas[0]?.length ?? 0) - 1;
  }

  /** What the cell shows; "" where nothing stands. */
  value(row: number, column: number): CellContent {
    return this.sheet.values[row - this.top]?.[column - this.left] ?? "";
  }

  /** What was typed into the cell, a formula with its "="; "" where nothing stands. */
  content(row: number, column: number): CellContent {
    return this.sheet.formulas[row - this.top]?.[column - this.left] ?? "";
  }

  isBlank(row: number, column: number): boolean {
    const content = this.content(row, column);
    return typeof content === "string" && content.trim() === "";
  }

  formula(row: number, column: number): string | undefined {
    const content = this.content(row, column);
    return typeof content === "string" && content.startsWith("=") ? content : undefined;
  }

  /** The number that the cell shows, typed or worked out. */
  number(row: number, column: number): number | undefined {
    const value = this.value(row, column);
    return typeof value === "number" ? value : undefined;
  }

  /** Text that was typed into the cell; undefined for numbers, formulas and blanks. */
  typedText(row: number, column: number): string | undefined {
    const content = this.content(row, column);
    if (typeof content !== "string" || content.trim() === "" || content.startsWith("=")) return undefined;
    return content;
  }
}

/** Whether a text is a length off the tape, which heads nothing. */
export function isMeasure(text: string): boolean {
  try {
    return Number.isFinite(readTape(text, "ft"));
  } catch {
    return false;
  }
}

/** What is in a column of a list, below its heading. */
export interface ColumnFacts {
  readonly filled: number;
  readonly blank: number;
  readonly formulas: number;
  /** Numbers that were typed, in their order on the sheet. */
  readonly numbers: readonly number[];
  /** Texts that read as a length, and others. */
  readonly tape: number;
  readonly otherTexts: readonly string[];
}

/** Looks through the rows of a column. */
export function columnFacts(cells: ListCells, column: number, rows: readonly number[]): ColumnFacts {
  const numbers: number[] = [];
  const otherTexts: string[] = [];
  let [filled, formulas, tape] = [0, 0, 0];
  for (const row of rows) {
    if (cells.isBlank(row, column)) continue;
    filled += 1;
    const content = cells.content(row, column);
    if (cells.formula(row, column) !== undefined) formulas += 1;
    else if (typeof content === "number") numbers.push(content);
    else if (isMeasure(String(content))) tape += 1;
    else otherTexts.push(String(content));
  }
  return { filled, blank: rows.length - filled, formulas, numbers, tape, otherTexts };
}

/** Whether every bed has a number that was typed, so that nothing is left to be worked out. */
export function isTyped({ numbers, formulas, blank }: ColumnFacts): boolean {
  return numbers.length > 0 && formulas === 0 && blank === 0;
}

/** The middle of some numbers; 0 of none. */
export function middle(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
