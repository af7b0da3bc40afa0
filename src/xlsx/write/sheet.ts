import { cellAddress, SHEET_COLUMNS } from "../../spreadsheet/areas";
import type { FileValue } from "../read/cells";
import type { FileStyle } from "../style";
import type { StyleSheet } from "./styles";
import { escaped, HEAD, MAIN, RELATIONSHIPS, tag } from "./xml";

/** A cell of a file that is made, counted from 0. */
export interface NewCell {
  readonly row: number;
  readonly column: number;
  readonly style?: FileStyle;
  /** Its constant, or the result of its formula. Blank if left out. */
  readonly value?: FileValue;
  /** Without "=", as files hold it. */
  readonly formula?: string;
  /** The cells of an array formula, and whether it takes as many as it needs. */
  readonly array?: { readonly area: string; readonly spills: boolean };
}

/** How a sheet is printed, but for the names that a print area and title rows are. */
export interface FilePage {
  readonly landscape: boolean;
  /** The number of its size: ECMA-376 18.3.1.63. Left out: whatever the program prints on. */
  readonly paper?: number;
  readonly marginsIn: Readonly<Record<"left" | "right" | "top" | "bottom" | "header" | "footer", number>>;
  /** Pages across and down; 0 is as many as it takes. */
  readonly fit?: { readonly wide: number; readonly tall: number };
  /** Percent. */
  readonly scale?: number;
  readonly header?: string;
  readonly footer?: string;
  /** Rows above which a page begins, counted from 0. */
  readonly breaksAbove: readonly number[];
}

/** A picture over a sheet: from a place in a cell to another one, or of a size in the file's units. */
export interface NewPicture {
  readonly bytes: Uint8Array;
  readonly kind: "png" | "jpeg" | "gif";
  readonly name: string;
  readonly altText: string;
  readonly from: CornerInEmus;
  readonly to?: CornerInEmus;
  readonly size?: { readonly width: number; readonly height: number };
}

export interface CornerInEmus {
  readonly row: number;
  readonly column: number;
  readonly rowOffset: number;
  readonly columnOffset: number;
}

export interface NewTable {
  readonly name: string;
  readonly area: string;
  readonly columns: readonly string[];
  /** "" for none. */
  readonly style: string;
}

/** A sheet of a file that is made. Areas are addresses, or several with blanks between them. */
export interface NewSheet {
  readonly name: string;
  readonly hidden?: boolean;
  /** As files write colors: FF24413A. */
  readonly tabColor?: string;
  readonly hidesGridLines?: boolean;
  readonly frozen?: { readonly rows: number; readonly columns: number };
  /** In digits of the plain font. */
  readonly columnWidth?: number;
  /** In points. */
  readonly rowHeight?: number;
  readonly columns?: ReadonlyMap<
    number,
    { readonly width?: number; readonly hidden?: boolean; readonly style?: FileStyle }
  >;
  readonly rows?: ReadonlyMap<
    number,
    {
      readonly height?: number;
      readonly hidden?: boolean;
      readonly style?: FileStyle;
      /** How many groups of rows it is in: ECMA-376 18.3.1.73, at most 7. */
      readonly outlineLevel?: number;
      /** Whether the group that ends right above it is collapsed. */
      readonly collapsed?: boolean;
    }
  >;
  readonly cells: readonly NewCell[];
  readonly merged?: readonly string[];
  readonly shadings?: readonly {
    readonly area: string;
    readonly formula: string;
    readonly style: FileStyle;
    readonly stopIfTrue?: boolean;
  }[];
  readonly lists?: readonly {
    readonly area: string;
    /** Words in quotes with commas between them, or a reference. */
    readonly source: string;
    readonly allowBlank: boolean;
    readonly hidesArrow?: boolean;
    readonly refusesOthers?: boolean;
  }[];
  readonly page?: FilePage;
  readonly pictures?: readonly NewPicture[];
  readonly tables?: readonly NewTable[];
}

/** What the sheets of a file have in common. */
export interface Shared {
  readonly styles: StyleSheet;
  /** The number of a text of the file; left out where texts are in their cells. */
  readonly textNumber?: (text: string) => number;
  /** The number by which an array formula says that it takes as many cells as it needs. */
  readonly spillNumber?: number;
}

/** The ids by which a sheet points to its drawing and its tables. */
export const DRAWING_ID = "drawing";
export const tableId = (place: number): string => `table${place + 1}`;

const plainRowPoints = 15;

/** The part of a file that holds a sheet. The order of its elements is fixed: ECMA-376 18.3.1.99. */
export function sheetXml(sheet: NewSheet, isFront: boolean, shared: Shared): string {
  const { page, merged = [], pictures = [], tables = [], rowHeight = plainRowPoints } = sheet;
  const inner = [
    propertiesXml(sheet),
    viewXml(sheet, isFront),
    tag("sheetFormatPr", {
      defaultColWidth: sheet.columnWidth,
      defaultRowHeight: rowHeight,
      customHeight: rowHeight !== plainRowPoints,
      outlineLevelRow: deepestLevel(sheet),
    }),
    columnsXml(sheet, shared),
    tag("sheetData", {}, rowsXml(sheet, shared)),
    listed(
      "mergeCells",
      merged.map((ref) => tag("mergeCell", { ref })),
    ),
    ...shadingsXml(sheet, shared),
    listed("dataValidations", listsXml(sheet)),
    page ? pageXml(page) : "",
    pictures.length > 0 ? tag("drawing", { "r:id": DRAWING_ID }) : "",
    listed(
      "tableParts",
      tables.map((_, place) => tag("tablePart", { "r:id": tableId(place) })),
    ),
  ];
  return HEAD + tag("worksheet", { xmlns: MAIN, "xmlns:r": RELATIONSHIPS }, inner.join(""));
}

function listed(name: string, xmls: readonly string[]): string {
  return xmls.length > 0 ? tag(name, { count: xmls.length }, xmls.join("")) : "";
}

function propertiesXml({ tabColor, page }: NewSheet): string {
  const inner =
    (tabColor ? tag("tabColor", { rgb: tabColor }) : "") + (page?.fit ? tag("pageSetUpPr", { fitToPage: true }) : "");
  return inner && tag("sheetPr", {}, inner);
}

function viewXml(
  { frozen: { rows = 0, columns = 0 } = { rows: 0, columns: 0 }, ...sheet }: NewSheet,
  isFront: boolean,
): string {
  const view = {
    ...(sheet.hidesGridLines && { showGridLines: 0 }),
    tabSelected: isFront,
    workbookViewId: 0,
  };
  return tag("sheetViews", {}, tag("sheetView", view, rows > 0 || columns > 0 ? paneXml(rows, columns) : ""));
}

/** The rows and columns that stay in sight. */
export function paneXml(rows: number, columns: number): string {
  return tag("pane", {
    xSplit: columns > 0 && columns,
    ySplit: rows > 0 && rows,
    topLeftCell: cellAddress({ row: rows, column: columns }),
    activePane: rows > 0 ? (columns > 0 ? "bottomRight" : "bottomLeft") : "topRight",
    state: "frozen",
  });
}

function columnsXml({ columns = new Map(), columnWidth = 9.140625 }: NewSheet, { styles }: Shared): string {
  // One element for a run of equal columns: a file may format all 16,384 of them.
  const runs: { min: number; max: number; alike: string; width: number; hidden?: boolean; style?: number }[] = [];
  for (const [place, { width = columnWidth, hidden = false, style }] of [...columns].sort(
    ([one], [other]) => one - other,
  )) {
    const number = styles.ofCell(style);
    const alike = `${width} ${hidden} ${number}`;
    const last = runs.at(-1);
    if (last?.alike === alike && last.max === place) last.max = place + 1;
    else runs.push({ min: place + 1, max: place + 1, alike, width, hidden, ...(number > 0 && { style: number }) });
  }
  const xmls = runs.map(({ alike: _, width, ...run }) => tag("col", { ...run, width, customWidth: true }));
  return xmls.length > 0 ? tag("cols", {}, xmls.join("")) : "";
}

/** How many groups the innermost row is in; undefined where no rows are grouped. */
function deepestLevel({ rows = new Map() }: NewSheet): number | undefined {
  const deepest = [...rows.values()].reduce((most, { outlineLevel = 0 }) => Math.max(most, outlineLevel), 0);
  return deepest > 0 ? deepest : undefined;
}

function rowsXml({ cells, rows = new Map() }: NewSheet, shared: Shared): string {
  const byRow = new Map<number, NewCell[]>([...rows.keys()].map((row) => [row, []]));
  for (const cell of cells) {
    const others = byRow.get(cell.row);
    if (others) others.push(cell);
    else byRow.set(cell.row, [cell]);
  }
  return [...byRow]
    .sort(([one], [other]) => one - other)
    .map(([row, held]) => {
      const { height, hidden, style, outlineLevel, collapsed } = rows.get(row) ?? {};
      const attributes = {
        r: row + 1,
        ...(style && { s: shared.styles.ofCell(style), customFormat: true }),
        ...(height !== undefined && { ht: height, customHeight: true }),
        hidden,
        ...(outlineLevel && { outlineLevel }),
        collapsed,
      };
      const inOrder = held.sort((one, other) => one.column - other.column);
      return tag("row", attributes, inOrder.map((cell) => cellXml(cell, shared)).join(""));
    })
    .join("");
}

function cellXml({ row, column, style, value, formula, array }: NewCell, shared: Shared): string {
  const number = shared.styles.ofCell(style);
  const { textNumber, spillNumber = 1 } = shared;
  const isText = typeof value === "string" && formula === undefined;
  const attributes = { r: cellAddress({ row, column }), ...(number > 0 && { s: number }) };
  const cm = array?.spills && spillNumber;
  const f = formula === undefined ? "" : formulaXml(formula, array);
  if (isText && textNumber) return tag("c", { ...attributes, t: "s", cm }, tag("v", {}, String(textNumber(value))));
  const shown = value === undefined ? { xml: "" } : valueXml(value, formula !== undefined);
  return tag("c", { ...attributes, t: shown.type, cm }, f + shown.xml);
}

/** A formula in its cell. @param formula as files hold it, without "=". */
export function formulaXml(formula: string, array?: { readonly area: string }): string {
  return tag("f", { ...(array && { t: "array", ref: array.area }) }, escaped(formula));
}

/** What a cell shows, and the type that the cell then is of: ECMA-376 18.18.11. */
export function valueXml(value: FileValue, isOfFormula: boolean): { readonly xml: string; readonly type?: string } {
  if (typeof value === "object") return { xml: tag("v", {}, escaped(value.error)), type: "e" };
  if (typeof value === "boolean") return { xml: tag("v", {}, value ? "1" : "0"), type: "b" };
  if (typeof value === "number") return { xml: tag("v", {}, String(value)) };
  const text = escaped(marked(value));
  if (isOfFormula) return { xml: tag("v", {}, text), type: "str" };
  return { xml: tag("is", {}, textXml(text)), type: "inlineStr" };
}

/** @param text escaped. */
export function textXml(text: string): string {
  return tag("t", { "xml:space": /^\s|\s$|\n/.test(text) && "preserve" }, text);
}

/**
 * Text as a file holds it: what looks like a file's own sign for a character (ECMA-376 22.9.2.19) is marked, so that
 * programs don't take it for one.
 *
 * @example marked("_x000D_") // "_x005F_x000D_", which programs show as _x000D_
 */
export function marked(text: string): string {
  return text.replace(/_(?=x[\dA-Fa-f]{4}_)/g, "_x005F_");
}

/** @param first the priority of the first one. */
export function shadingsXml({ shadings = [] }: Pick<NewSheet, "shadings">, { styles }: Shared, first = 1): string[] {
  return shadings.map(({ area, formula, style, stopIfTrue }, place) => {
    const rule = { type: "expression", dxfId: styles.ofRule(style), priority: place + first, stopIfTrue };
    return tag("conditionalFormatting", { sqref: area }, tag("cfRule", rule, tag("formula", {}, escaped(formula))));
  });
}

export function listsXml({ lists = [] }: Pick<NewSheet, "lists">): string[] {
  return lists.map(({ area, source, allowBlank, hidesArrow, refusesOthers }) => {
    // In a file `showDropDown` takes the arrow away.
    const attributes = { type: "list", allowBlank, showDropDown: hidesArrow, showErrorMessage: refusesOthers };
    return tag("dataValidation", { ...attributes, sqref: area }, tag("formula1", {}, escaped(source)));
  });
}

function pageXml({ landscape, paper, marginsIn, fit, scale, header, footer, breaksAbove }: FilePage): string {
  const { left, right, top, bottom } = marginsIn;
  const texts =
    (header ? tag("oddHeader", {}, escaped(header)) : "") + (footer ? tag("oddFooter", {}, escaped(footer)) : "");
  // A file names the last row before a break.
  const breaks = breaksAbove.map((row) => tag("brk", { id: row, max: SHEET_COLUMNS - 1, man: true }));
  return [
    tag("pageMargins", { left, right, top, bottom, header: marginsIn.header, footer: marginsIn.footer }),
    tag("pageSetup", {
      paperSize: paper,
      scale,
      ...(fit && { fitToWidth: fit.wide, fitToHeight: fit.tall }),
      orientation: landscape ? "landscape" : "portrait",
    }),
    texts && tag("headerFooter", {}, texts),
    breaks.length > 0
      ? tag("rowBreaks", { count: breaks.length, manualBreakCount: breaks.length }, breaks.join(""))
      : "",
  ].join("");
}
