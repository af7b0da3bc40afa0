/** What the stand-in host asks of a grid about how cells look, and about the rules that hold for them. */

import type { Area, CellsChanged } from "./port";

export type Edge = "top" | "bottom" | "left" | "right";

export interface Border {
  readonly style: "None" | "Continuous" | "Dash" | "Dot" | "Double";
  readonly weight: "Hairline" | "Thin" | "Medium" | "Thick";
  readonly color: string;
}

/** The borders of one cell. */
export type CellBorders = Readonly<Partial<Record<Edge, Border>>>;

/** How a cell looks. Lengths are in points; undefined is the grid's own default. */
export interface CellLook {
  fill: string | undefined;
  fontColor: string | undefined;
  fontName: string | undefined;
  fontSize: number | undefined;
  bold: boolean;
  italic: boolean;
  /** True is one line. */
  underline: boolean | "Double";
  strikethrough: boolean;
  wrap: boolean;
  horizontal: "General" | "Left" | "Center" | "Right";
  vertical: "Top" | "Center" | "Bottom";
  indent: number;
  /** By how many degrees text is turned, upwards where positive; 180 where its letters are below one another. */
  turned: number;
  numberFormat: string;
  /** Whether the cell can not be typed into once its sheet is protected. */
  locked: boolean;
}

export interface LooksPort {
  read(sheetId: string, row: number, column: number): CellLook;
  /** Sets what is given, leaves the rest; an undefined value goes back to the default. */
  set(area: Area, look: Partial<CellLook>): void;
  /** The same cell by cell; `looks` has the shape of `area`, and undefined leaves a cell alone. */
  setEach(area: Area, looks: (Partial<CellLook> | undefined)[][]): void;
  border(sheetId: string, row: number, column: number, edge: Edge): Border;
  /** All four borders of a cell. */
  borders(sheetId: string, row: number, column: number): Readonly<Record<Edge, Border>>;
  setBorder(area: Area, edge: Edge, border: Border): void;
  /** The same cell by cell; edges that are left out are left alone. */
  setBorders(area: Area, borders: (CellBorders | undefined)[][]): void;
  columnWidth(sheetId: string, column: number): number;
  setColumnWidth(area: Area, points: number): void;
  rowHeight(sheetId: string, row: number): number;
  setRowHeight(area: Area, points: number): void;
  fitRows(area: Area): void;
  /** Whether the row does not show, by hand or by a filter. */
  rowHidden(sheetId: string, row: number): boolean;
  columnHidden(sheetId: string, column: number): boolean;
  setRowsHidden(area: Area, hidden: boolean): void;
}

/** A rule that dresses cells where a plain formula, written for the first cell of the area, holds. */
export interface ShadingRule {
  readonly formula: string;
  readonly fill: string | undefined;
  readonly fontColor: string | undefined;
  readonly bold: boolean | undefined;
}

export interface Shading {
  readonly id: string;
  readonly area: Area;
  readonly rule: ShadingRule;
}

/** What may be typed into a cell: one of a list, written out with commas or as a reference with its "=". */
export interface ListRule {
  readonly source: string;
  readonly dropDown: boolean;
  readonly ignoreBlanks: boolean;
  /** Whether anything else is refused. */
  readonly strict: boolean;
}

export interface RulesPort {
  /** Adds the rule, or replaces the one with this id. */
  putShading(shading: Shading): void;
  /** The rules that touch the area. */
  shadings(area: Area): Shading[];
  removeShading(sheetId: string, id: string): void;
  /** Takes the area out of every rule. */
  /** Has shadings move with their cells where rows came or went: each grows with what comes inside. */
  followRows(before: readonly Shading[], change: CellsChanged): void;
  clearShadings(area: Area): void;
  putList(area: Area, rule: ListRule): void;
  /** The rules that touch the area, each with the part of the area that it holds for. */
  lists(area: Area): { readonly area: Area; readonly rule: ListRule }[];
  clearLists(area: Area): void;
}
