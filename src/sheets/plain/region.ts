import type { Anchor, Area } from "../../spreadsheet/areas";
import type { CellStyle } from "../plan";

export type CellContent = string | number | boolean;

/** What is in the cells that are copied, as the host reads them. */
export interface Region extends Anchor {
  readonly sheetName: string;
  /** Formulas with their "=", in English and with commas; a constant where a cell has none, "" where it is blank. */
  readonly formulas: readonly (readonly CellContent[])[];
  readonly values: readonly (readonly CellContent[])[];
  readonly formats: readonly (readonly string[])[];
  /** How the cells look, where that is to be copied, too. */
  readonly dress?: readonly (readonly (CellStyle | undefined)[])[];
  /** Column widths in characters. */
  readonly widths?: readonly number[];
  /** Merged cells, counted from the region's first cell. */
  readonly merged?: readonly Area[];
}

/** A region as `workbook/readRegion` reads it: with all that its cells look like, and what the workbook's names mean. */
export interface RegionRead extends Required<Region> {
  /** The host's id of the sheet, which outlives a new name. */
  readonly sheetId: string;
  /** What the workbook's names refer to, without "=", such as `Rates!$B$2`. */
  readonly names: Readonly<Record<string, string>>;
}

/** A rectangle of a sheet, zero-based. */
export interface SheetArea extends Anchor {
  readonly sheetName: string;
  readonly rows: number;
  readonly columns: number;
}

/** A table of the workbook: its rows of data, without headings and totals. */
export interface TableFacts {
  readonly name: string;
  readonly headings: readonly string[];
  readonly data: SheetArea;
}

/** What is known of the workbook around the cells. What is left out is taken for harmless. */
export interface Surroundings {
  /** What a cell outside shows, so that taped text in it is noticed. */
  readonly valueAt?: (sheetName: string, row: number, column: number) => CellContent | undefined;
  /** What the workbook's names refer to, such as `Rates!$B$2`. */
  readonly names?: Readonly<Record<string, string>>;
  readonly tables?: readonly TableFacts[];
  /** Where a formula's list spills: from its own cell on. */
  readonly spills?: readonly SheetArea[];
}

/** Where the copy will stand. */
export interface Destination {
  readonly at: Anchor;
  /** On the sheet it was taken from; references to other cells of that sheet get its name elsewhere. */
  readonly sameSheet: boolean;
  /** The region is all that its sheet holds, so that every reference to the sheet stays within the copy. */
  readonly wholeSheet?: boolean;
  /** In a workbook of its own: single cells that formulas read elsewhere are brought along as values. */
  readonly isElsewhere?: boolean;
}

/** Whether a cell's content is a formula. */
export function isFormula(content: CellContent | undefined): content is `=${string}` {
  return typeof content === "string" && content.startsWith("=") && content.length > 1;
}
