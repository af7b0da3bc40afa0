import type { Area } from "../spreadsheet/areas";

/**
 * What is to be written into a workbook, as data: one rectangle of cells with their contents and looks.
 * Everything the product inserts is such a plan; `workbook/` has the one writer for it.
 */

/** How a cell looks. The colors of each are in `looks.ts`. */
export type LookName =
  | "title"
  | "section"
  | "textHeading"
  | "numberHeading"
  | "label"
  | "input"
  | "inputWords"
  | "result"
  | "total"
  | "note"
  | "aside"
  | "warning"
  | "wrapped"
  | "wrappedNext"
  | "wrappedNote"
  | "topNumber"
  | "topTotal"
  | "topUnit"
  | "topLabel"
  | "blankToFill"
  | "checkBox"
  | "heading"
  | "rightHeading"
  | "rightTitle"
  | "rightLabel"
  | "rightWords"
  | "rightNumber"
  | "rightTotal"
  | "underLine"
  | "caution";

export const numberFormats = {
  general: "General",
  whole: "#,##0",
  two: "#,##0.00",
  money: "#,##0.00",
  dollars: "$#,##0.00;-$#,##0.00",
  /** A difference says which way it goes. */
  dollarsMore: "+$#,##0.00;-$#,##0.00;$0.00",
  share: "0.0%",
  /** Dollars over 1, a share otherwise. */
  dollarsOrShare: "[>1]$#,##0.00;0.0%",
  date: "yyyy-mm-dd",
} as const;
export type FormatName = keyof typeof numberFormats;

/** How one cell looks, exactly: what was read from a sheet and is to be written again. What is absent is left. */
export interface CellStyle {
  readonly fill?: string;
  readonly color?: string;
  readonly font?: string;
  readonly size?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underline?: boolean;
  readonly align?: "Left" | "Center" | "Right";
  readonly vertical?: "Top" | "Center" | "Bottom";
  readonly indent?: number;
  readonly wrap?: boolean;
  /** Colors of the rules at the cell's sides. */
  readonly rules?: Readonly<Partial<Record<"top" | "bottom" | "left" | "right", string>>>;
}

/** How a sheet is printed. */
export interface PageSetup {
  /** Left out: the paper that the program prints on. */
  readonly paper?: "letter" | "a4";
  readonly landscape: boolean;
  /** Shrinks the print to so many pages across, and as many down as it takes unless `pagesTall` says. */
  readonly pagesWide: number;
  readonly pagesTall?: number;
  /** Rows at the top of the plan that are repeated on each page. */
  readonly headingRows?: number;
  /** Rows of the plan above which a new page begins. */
  readonly breaksAbove?: readonly number[];
  readonly marginsIn: { readonly top: number; readonly bottom: number; readonly left: number; readonly right: number };
  /** Text at the foot of each page; `&P` and `&N` are the page and the number of pages. */
  readonly footer?: string;
}

/** Rows of a plan that can be collapsed together. */
export interface RowGroup {
  readonly row: number;
  readonly rows: number;
}

/** A picture that stands over cells of the plan. */
export interface PlacedPicture {
  readonly area: Area;
  /** A PNG, base64. */
  readonly png: string;
  readonly altText: string;
}

/** The longest list of choices, with its commas, that a cell holds without other cells for it; from memory. */
export const MOST_CHOICE_CHARACTERS = 255;

/** As many names of a list as a cell can offer, the first ones. */
export function choicesThatFit(names: readonly string[]): readonly string[] {
  const most = names.findIndex((_, index) => names.slice(0, index + 1).join(",").length > MOST_CHOICE_CHARACTERS);
  return most < 0 ? names : names.slice(0, most);
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
  /** Names, valid in the whole workbook, for cells of the plan. A name that is there already is in the way. */
  readonly names?: readonly { readonly name: string; readonly area: Area }[];
  /** Cells that become a table where the host has tables; its first row holds the headings. */
  readonly table?: { readonly name: string; readonly area: Area };
  /** Exact looks, cell by cell, over the named ones. */
  readonly dress?: readonly (readonly (CellStyle | undefined)[])[];
  readonly merged?: readonly Area[];
  readonly pictures?: readonly PlacedPicture[];
  /** How it is printed where it has a sheet of its own; a sheet that was there keeps its own page setup. */
  readonly page?: PageSetup;
  /** Rows that can be collapsed where it has a sheet of its own. A row of no group is between any two. */
  readonly groups?: readonly RowGroup[];
}
