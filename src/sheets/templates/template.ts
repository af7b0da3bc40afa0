import type { CellStyle } from "../plan";

/** What every file of a template says it is. */
export const TEMPLATE_FORMAT = "bedrow-template";
/** Rises when a template holds what earlier versions of the add-in cannot read. */
export const TEMPLATE_VERSION = 1;

/**
 * Cells to be put anywhere, as a file holds them. Addresses and formulas are written as if the template's first cell
 * were A1; wherever it is opened, every reference into the template moves with it, with or without "$".
 */
export interface Template {
  readonly format: typeof TEMPLATE_FORMAT;
  readonly version: typeof TEMPLATE_VERSION;
  readonly name: string;
  readonly note?: string;
  /** The day it was saved on, as 2026-03-31. */
  readonly saved?: string;
  /** Who saved it. */
  readonly by?: string;
  readonly rows: number;
  readonly columns: number;
  /** Column widths in characters of the standard font. */
  readonly widths: readonly number[];
  readonly cells: readonly TemplateCell[];
  readonly looks?: readonly TemplateLook[];
  readonly merged?: readonly string[];
  readonly choices?: readonly { readonly at: string; readonly names: readonly string[] }[];
  /** Cells that stand out while a plain formula holds, written for the first of them. */
  readonly warnings?: readonly { readonly at: string; readonly when: string }[];
  readonly outside?: readonly TemplateOutside[];
}

/** A cell with contents: one of formula, text, number and truth. */
export interface TemplateCell {
  readonly at: string;
  readonly formula?: string;
  readonly text?: string;
  readonly number?: number;
  readonly truth?: boolean;
}

/** How some cells look. */
export interface TemplateLook extends CellStyle {
  /** Areas of the template: `A1:I1`. */
  readonly at: readonly string[];
  readonly numberFormat?: string;
}

/** Something outside the template that its formulas read, by its name or its address with the sheet. */
export interface TemplateOutside {
  /** `Rates!$B$2`, or a name of the workbook. */
  readonly reads: string;
  /** Whether it is read where the template is opened, or asked about then. */
  readonly opened: "keep" | "ask";
  /** What it showed when the template was saved. */
  readonly value?: string | number | boolean;
}

/** Names like those of the sheet of rates are read by name in every workbook, and need not be listed. */
export function isOfRatesSheet(name: string): boolean {
  return /^(Rate|Whose)_\w{1,60}$/i.test(name);
}

/** Whether a name of the sheet of rates tells whose a rate is, and is no rate. */
export function isWhose(name: string): boolean {
  return /^whose_/i.test(name);
}
