import type { Anchor, Area } from "../spreadsheet/areas";

/*
 * What is known of a workbook when it is checked. Everything here can be read from the host in two rounds,
 * whatever the size: first the sheets with the addresses of their used ranges, the names and the tables; then
 * the contents of all used ranges at once. Rows and columns are counted from 0, on the sheet.
 */

/** What the host gives for a cell; "" for a blank one, the text of the error for an error. */
export type CellValue = string | number | boolean;

/** The contents of a used range, as the host's properties of the same names give them. */
export interface UsedFacts extends Anchor {
  readonly values: readonly (readonly CellValue[])[];
  /** English names and comma separators; a constant stands here as it is in `values`. */
  readonly formulas: readonly (readonly CellValue[])[];
  readonly text: readonly (readonly string[])[];
  readonly numberFormat: readonly (readonly string[])[];
  /** "Empty", "String", "Integer", "Double", "Boolean", "Error", "RichValue" or "Unknown". */
  readonly valueTypes: readonly (readonly string[])[];
}

export interface SheetFacts {
  readonly name: string;
  readonly visibility: "Visible" | "Hidden" | "VeryHidden";
  readonly protected: boolean;
  /** Absent for a sheet on which nothing stands. */
  readonly used?: UsedFacts;
  /** Rows and columns that do not show, by hand or by a filter. */
  readonly hiddenRows: readonly number[];
  readonly hiddenColumns: readonly number[];
  readonly merged: readonly Area[];
  /** The first row that was not read, where the sheet has more cells than can be read. */
  readonly notReadFrom?: number;
}

export interface NameFacts {
  readonly name: string;
  /** The sheet it belongs to; absent where it belongs to the workbook. */
  readonly sheet?: string;
  /** What it stands for, with its "=": `=Rates!$B$3`. */
  readonly formula: string;
}

export interface TableFacts {
  readonly name: string;
  readonly sheet: string;
  /** The whole table, with its heading row and its row of totals where they show. */
  readonly area: Area;
  readonly columnNames: readonly string[];
  readonly headingRow: boolean;
  readonly totalsRow: boolean;
}

export interface WorkbookFacts {
  readonly sheets: readonly SheetFacts[];
  readonly names: readonly NameFacts[];
  readonly tables: readonly TableFacts[];
}

/** What of the workbook is asked about. All of it is read in any case, since formulas reach across it. */
export type Scope =
  | { readonly kind: "workbook" }
  | { readonly kind: "sheet"; readonly sheet: string }
  | { readonly kind: "area"; readonly sheet: string; readonly area: Area };
