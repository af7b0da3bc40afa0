/**
 * What is to be written into a workbook, as data: one rectangle of cells with their contents and looks.
 * Everything the product inserts is such a plan; `workbook/` has the one writer for it.
 */

/** How a cell looks. The colours of each stand in `looks.ts`. */
export type LookName =
  | "title"
  | "section"
  | "textHeading"
  | "numberHeading"
  | "label"
  | "input"
  | "result"
  | "total"
  | "note"
  | "aside"
  | "warning"
  | "wrapped"
  | "caution";

export const numberFormats = {
  general: "General",
  whole: "#,##0",
  two: "#,##0.00",
  money: "#,##0.00",
  share: "0.0%",
} as const;
export type FormatName = keyof typeof numberFormats;

/** Where a plan is put: the zero-based row and column of its top left cell. */
export interface Anchor {
  readonly row: number;
  readonly column: number;
}

/** A rectangle inside a plan, zero-based from the plan's top left cell. */
export interface Area extends Anchor {
  readonly rows: number;
  readonly columns: number;
}

export interface Plan {
  /** What it is, for the person: "estimate for Front walk". */
  readonly title: string;
  readonly rows: number;
  readonly columns: number;
  /** Formulas in A1 notation for the anchor the plan was made for, or constants; "" where a cell stays blank. */
  readonly formulas: readonly (readonly (string | number)[])[];
  readonly formats: readonly (readonly string[])[];
  readonly looks: readonly { readonly area: Area; readonly look: LookName }[];
  /** Least column widths in characters of the standard font. */
  readonly widths: readonly number[];
  /**
   * Cells that stand out while a condition holds. The condition is a plain formula for the area's first cell,
   * relative like a cell's: the host allows no custom functions there.
   */
  readonly warnings: readonly { readonly area: Area; readonly when: string }[];
  /** Cells that offer a list to choose from. */
  readonly choices: readonly { readonly area: Area; readonly names: readonly string[] }[];
}
