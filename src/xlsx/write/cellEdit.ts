import { cellAddress } from "../../spreadsheet/areas";
import { placeOf, rectangleOf } from "../addresses";
import type { FileValue } from "../read/cells";
import { elements, type XmlElement, type XmlSpan } from "../read/xml";
import type { XmlEdit } from "./edit";
import { formulaXml, valueXml } from "./sheet";
import { tag } from "./xml";

/** What is other in a cell than in the file; what is left out stays as it is there, and null is taken away. */
export interface CellEdit {
  readonly row: number;
  readonly column: number;
  /** The number of its style. */
  readonly style?: number;
  readonly formula?: string | null;
  /** The cells of an array formula, and the number by which it says that it takes as many as it needs. */
  readonly array?: { readonly area: string; readonly cm?: number };
  readonly value?: FileValue | null;
}

/** What is other in rows or columns than in the file. */
export interface LineEdit {
  /** In points for a row and in digits for a column; null for as high as its text. */
  readonly size?: number | null;
  readonly hidden?: boolean;
  readonly style?: number;
  readonly outlineLevel?: number;
  readonly collapsed?: boolean;
}

/** Finds the cells and rows that are to be changed while a sheet is read, and changes them. */
export class CellsEdit {
  private readonly wanted = new Map<number, Map<number, CellEdit>>();
  private readonly lines: { readonly row: number; readonly element: Pick<XmlElement, "span" | "attributes"> }[] = [];
  private readonly found = new Map<number, { readonly column: number; readonly element: XmlElement }[]>();
  private row = -1;
  private column = -1;

  constructor(
    cells: readonly CellEdit[],
    private readonly rows: ReadonlyMap<number, LineEdit>,
  ) {
    for (const cell of cells) {
      const inRow = this.wanted.get(cell.row) ?? new Map<number, CellEdit>();
      this.wanted.set(cell.row, inRow.set(cell.column, cell));
    }
  }

  opened(name: string, attributes: XmlElement["attributes"]): void {
    if (name === "row") {
      this.row = attributes.r === undefined ? this.row + 1 : Number(attributes.r) - 1;
      this.column = -1;
    } else if (name === "c") {
      const place = attributes.r === undefined ? undefined : placeOf(attributes.r);
      this.column = place ? place.column : this.column + 1;
    }
  }

  closed(element: XmlElement): boolean {
    if (element.name === "c") {
      if (!this.wanted.has(this.row)) return true;
      const inRow = this.found.get(this.row);
      if (inRow) inRow.push({ column: this.column, element });
      else this.found.set(this.row, [{ column: this.column, element }]);
      return true;
    }
    if (element.name !== "row") return false;
    this.lines.push({ row: this.row, element: { span: element.span, attributes: element.attributes } });
    return true;
  }

  write(edit: XmlEdit): void {
    if (this.wanted.size === 0 && this.rows.size === 0) return;
    const data = [...elements(edit.root, "sheetData")][0];
    if (!data) return;
    const known = new Map(this.lines.map(({ row, element }) => [row, element]));
    const all = [...new Set([...this.wanted.keys(), ...this.rows.keys()])].sort((one, other) => one - other);
    const inOrder = this.lines.map(({ row }) => row);
    let next = 0;
    for (const row of all) {
      const line = known.get(row);
      if (line) this.editRow(edit, row, line);
      else {
        const xml = this.newRow(row);
        while (next < inOrder.length && (inOrder[next] ?? 0) < row) next += 1;
        const after = known.get(inOrder[next] ?? -1);
        if (!xml) continue;
        if (after) edit.insertBefore(after, xml);
        else edit.append(data, xml);
      }
    }
    this.editDimension(edit);
  }

  private editRow(edit: XmlEdit, row: number, { span }: { readonly span: XmlSpan }): void {
    const found = this.found.get(row) ?? [];
    const cells = [...(this.wanted.get(row)?.values() ?? [])].sort((one, other) => one.column - other.column);
    const appended: string[] = [];
    for (const cell of cells) {
      const own = found.find(({ column }) => column === cell.column);
      if (own) {
        edit.piece(own.element.span.start, own.element.span.end, editedCell(edit, own.element, cell));
        continue;
      }
      const xml = newCell(cell);
      const after = found.find(({ column }) => column > cell.column);
      if (after) edit.insertBefore(after.element, xml);
      else appended.push(xml);
    }
    const isWider = cells.some(({ column }) => !found.some((one) => one.column === column));
    const change = this.rows.get(row);
    if (!change && !isWider) return;
    const attributes = { ...(change && lineAttributes(change)), ...(isWider && { spans: undefined }) };
    const tagText = edit.tagWith({ span }, attributes);
    if (span.inside === span.end && appended.length > 0) {
      const name = /^<([^\s/>]+)/.exec(tagText)?.[1] ?? "row";
      edit.piece(span.start, span.end, `${tagText.replace(/\s*\/>$/, ">")}${edit.named(appended.join(""))}</${name}>`);
      return;
    }
    edit.piece(span.start, span.inside, tagText);
    if (appended.length > 0) edit.piece(span.insideEnd, span.insideEnd, edit.named(appended.join("")));
  }

  private newRow(row: number): string {
    const cells = [...(this.wanted.get(row)?.values() ?? [])].sort((one, other) => one.column - other.column);
    const change = this.rows.get(row);
    const xml = cells.map(newCell).join("");
    return tag("row", { r: row + 1, ...(change && lineAttributes(change)) }, xml);
  }

  /** A file may say how far its cells reach, and some programs read no further. */
  private editDimension(edit: XmlEdit): void {
    const dimension = edit.root.children.find(({ name }) => name === "dimension");
    const area = rectangleOf(dimension?.attributes.ref ?? "");
    if (!dimension || !area) return;
    let { row: top, column: left } = area;
    let [bottom, right] = [top + area.rowCount - 1, left + area.columnCount - 1];
    for (const inRow of this.wanted.values()) {
      for (const { row, column } of inRow.values()) {
        [top, left] = [Math.min(top, row), Math.min(left, column)];
        [bottom, right] = [Math.max(bottom, row), Math.max(right, column)];
      }
    }
    const ref = `${cellAddress({ row: top, column: left })}:${cellAddress({ row: bottom, column: right })}`;
    const isWider = bottom - top + 1 > area.rowCount || right - left + 1 > area.columnCount;
    if (isWider) edit.set(dimension, { ref });
  }
}

function lineAttributes({ size, hidden, style, outlineLevel, collapsed }: LineEdit) {
  return {
    ...(size !== undefined && { ht: size ?? undefined, customHeight: size === null ? undefined : 1 }),
    ...(hidden !== undefined && { hidden: hidden ? 1 : undefined }),
    ...(style !== undefined && { s: style, customFormat: 1 }),
    ...(outlineLevel !== undefined && { outlineLevel: outlineLevel || undefined }),
    ...(collapsed !== undefined && { collapsed: collapsed ? 1 : undefined }),
  };
}

function newCell({ row, column, style = 0, formula, array, value }: CellEdit): string {
  const shown = value === undefined || value === null ? { xml: "" } : valueXml(value, typeof formula === "string");
  const f = typeof formula === "string" ? formulaXml(formula, array) : "";
  const attributes = { r: cellAddress({ row, column }), ...(style > 0 && { s: style }), t: shown.type };
  return tag("c", { ...attributes, cm: array?.cm }, f + shown.xml);
}

/** A cell of the file with changes in it, as text of its part. */
function editedCell(edit: XmlEdit, element: XmlElement, cell: CellEdit): string {
  const { formula, value, style, array } = cell;
  const child = (name: string) => element.children.find((one) => one.name === name);
  const [f, v, is] = [child("f"), child("v"), child("is")];
  const hasFormula = formula === undefined ? f !== undefined : formula !== null;
  const attributes: Record<string, string | number | undefined> = {};
  if (style !== undefined) attributes.s = style === 0 ? undefined : style;
  let inner = "";
  if (formula === undefined) inner += f ? edit.source(f) : "";
  else {
    if (formula !== null) inner += edit.named(formulaXml(formula, array));
    attributes.cm = array?.cm;
  }
  if (value === undefined) inner += (v ? edit.source(v) : "") + (is ? edit.source(is) : "");
  else {
    const shown = value === null ? { xml: "" } : valueXml(value, hasFormula);
    inner += edit.named(shown.xml);
    Object.assign(attributes, { t: shown.type, vm: undefined });
  }
  inner += element.children
    .filter((one) => one !== f && one !== v && one !== is)
    .map((one) => edit.source(one))
    .join("");
  const first = edit.tagWith(element, attributes);
  if (!inner) return first.replace(/\s*\/?>$/, "/>");
  const name = /^<([^\s/>]+)/.exec(first)?.[1] ?? "c";
  return `${first.replace(/\s*\/?>$/, ">")}${inner}</${name}>`;
}
