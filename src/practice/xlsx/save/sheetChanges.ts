import type { IColumnData, IRowData, IWorksheetData, Nullable } from "@univerjs/core";
import { addressOf, rectangleOf } from "../../../xlsx/addresses";
import { elements, firstElement } from "../../../xlsx/read/xml";
import { digitPixels } from "../../../xlsx/style";
import type { LineEdit } from "../../../xlsx/write/cellEdit";
import type { ListEdit, SheetEdits } from "../../../xlsx/write/sheetEdit";
import type { StyleSheet } from "../../../xlsx/write/styles";
import { fromRange } from "../../grid/geometry";
import { rowGroupsIn } from "../../grid/groups";
import { pixelsToPoints } from "../../grid/lengths";
import type { Saving } from "../context";
import { withGroups } from "../groups";
import { pageToFile } from "../page";
import { styleToFile } from "../styles";
import { numbered } from "./cells";
import type { FileInGrid } from "./fileInGrid";
import { listsToFile, shadingsToFile } from "./rules";
import { pageOf } from "./sheet";

/** Lengths closer than this are the same: grids count in whole pixels, and files in parts of them. */
const pixel = 1;

/**
 * Finds what is other in a sheet than in its file, but for its cells, pictures, and tables.
 *
 * @param before the workbook as it was when the file was opened.
 * @param place the sheet's among the file's sheets of cells.
 */
export function sheetChanges(
  saving: Saving,
  before: Saving,
  file: FileInGrid,
  place: number,
  id: string,
  styles: StyleSheet,
): SheetEdits {
  const [one, now] = [before.kept.sheets[id] ?? {}, saving.kept.sheets[id] ?? {}];
  const styled = (style: LineStyle, next: LineStyle, number: number): Pick<LineEdit, "style"> => {
    const [was, is] = [lookOf(before, style), lookOf(saving, next)];
    if (JSON.stringify(was) === JSON.stringify(is)) return {};
    const { library } = saving.grid;
    return { style: styles.changed(number, styleToFile(library, was, false), styleToFile(library, is, false)) };
  };
  const columns = linesOf(one.columnData, now.columnData, (column, was, is) => ({
    ...(is?.w !== undefined &&
      Math.abs(is.w - (was?.w ?? one.defaultColumnWidth ?? 0)) >= pixel && { size: is.w / digitPixels }),
    ...((is?.hd === 1) !== (was?.hd === 1) && { hidden: is?.hd === 1 }),
    ...styled(was?.s, is?.s, file.blankStyle(place, -1, column)),
  }));
  const rows = linesOf(one.rowData, now.rowData, (row, was, is) => ({
    ...rowHeight(was, is),
    ...((is?.hd === 1) !== (was?.hd === 1) && { hidden: is?.hd === 1 }),
    ...styled(was?.s, is?.s, file.blankStyle(place, row, -1)),
  }));
  addGroups(rows, one, now);
  const frozen = (data: Partial<IWorksheetData>) => ({
    rows: Math.max(0, data.freeze?.ySplit ?? 0),
    columns: Math.max(0, data.freeze?.xSplit ?? 0),
  });
  const page = pageOf(now);
  const edits: SheetEdits = {
    columns,
    rows,
    merged: mergedChanges(file, place, one, now),
    shadings: listChanges(shadingsToFile(before, id), shadingsToFile(saving, id)),
    lists: listChanges(listsToFile(before, id), listsToFile(saving, id)),
    ...(!isAlike(frozen(one), frozen(now)) && { frozen: frozen(now) }),
    ...((one.showGridlines === 0) !== (now.showGridlines === 0) && { hidesGridLines: now.showGridlines === 0 }),
    ...((one.tabColor || "") !== (now.tabColor || "") && { tabColor: tabOf(now.tabColor) }),
    ...(page && !isAlike(withoutNames(pageOf(one)), withoutNames(page)) && { page: pageToFile(page) }),
  };
  return edits;
}

type LineStyle = Nullable<IColumnData["s"] | IRowData["s"]>;

function lookOf({ kept }: Saving, style: LineStyle) {
  return (typeof style === "string" ? kept.styles[style] : style) ?? {};
}

function linesOf<Line>(
  one: Readonly<Record<number, Line>> | undefined,
  now: Readonly<Record<number, Line>> | undefined,
  changed: (place: number, was: Line | undefined, is: Line | undefined) => LineEdit,
): Map<number, LineEdit> {
  const [was, is] = [new Map(numbered(one)), new Map(numbered(now))];
  const edits = new Map<number, LineEdit>();
  for (const place of new Set([...was.keys(), ...is.keys()])) {
    const [before, after] = [was.get(place) ?? undefined, is.get(place) ?? undefined];
    const edit = before === after ? {} : changed(place, before, after);
    if (Object.keys(edit).length > 0) edits.set(place, edit);
  }
  return edits;
}

/** A height that fits the text is the grid's own affair; only one that someone set counts. */
function rowHeight(was: Partial<IRowData> | undefined, is: Partial<IRowData> | undefined): Pick<LineEdit, "size"> {
  if (is?.ia === 0 && is.h !== undefined && (was?.h === undefined || Math.abs(is.h - was.h) >= pixel))
    return { size: pixelsToPoints(is.h) };
  return was?.ia === 0 && is?.ia === 1 ? { size: null } : {};
}

function addGroups(rows: Map<number, LineEdit>, one: Partial<IWorksheetData>, now: Partial<IWorksheetData>): void {
  const [was, is] = [rowGroupsIn(one.custom), rowGroupsIn(now.custom)];
  if (isAlike(was, is) && [...rows.values()].every(({ hidden }) => hidden === undefined)) return;
  const marksOf = (groups: typeof was, data: Partial<IWorksheetData>) =>
    withGroups(new Map(numbered(data.rowData).map(([row, line]) => [row, { hidden: line?.hd === 1 }])), groups);
  const [before, after] = [marksOf(was, one), marksOf(is, now)];
  for (const row of new Set([...before.keys(), ...after.keys()])) {
    const [from, to] = [before.get(row), after.get(row)];
    const edit = {
      ...((from?.outlineLevel ?? 0) !== (to?.outlineLevel ?? 0) && { outlineLevel: to?.outlineLevel ?? 0 }),
      ...((from?.collapsed ?? false) !== (to?.collapsed ?? false) && { collapsed: to?.collapsed ?? false }),
    };
    if (Object.keys(edit).length > 0) rows.set(row, { ...rows.get(row), ...edit });
  }
}

/** The grid may have less of an area than the file, so those of the file are named by their places in it. */
function mergedChanges(
  file: FileInGrid,
  place: number,
  one: Partial<IWorksheetData>,
  now: Partial<IWorksheetData>,
): ListEdit<string> {
  const listed = [...elements(firstElement(file.book.sheets[place]?.xml, "mergeCells"), "mergeCell")];
  const places = listed.flatMap(({ attributes }, number) => (rectangleOf(attributes.ref ?? "") ? [number] : []));
  const addresses = ({ mergeData = [] }: Partial<IWorksheetData>) =>
    mergeData.map((range) => addressOf(fromRange("", range)));
  const [before, after] = [addresses(one), addresses(now)];
  const still = new Set(after);
  const known = new Set(before);
  return {
    removed: new Set(before.flatMap((address, index) => (still.has(address) ? [] : [places[index] ?? -1]))),
    added: after.filter((address) => !known.has(address)),
  };
}

/** What came and went of a list whose entries from the file end in their places there, from 1. */
function listChanges<T extends { readonly id: string }>(before: readonly T[], now: readonly T[]): ListEdit<T> {
  const after = new Map(now.map((one) => [one.id, one]));
  const known = new Map(before.map((one) => [one.id, one]));
  const gone = before.filter((one) => !isAlike(one, after.get(one.id)));
  return {
    removed: new Set(gone.map(({ id }) => Number(/\d+$/.exec(id)?.[0] ?? 0) - 1)),
    added: now.filter((one) => !isAlike(one, known.get(one.id))),
  };
}

function isAlike(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

/** The print area and the title rows are names of the workbook. */
function withoutNames(page: ReturnType<typeof pageOf>) {
  return page && { ...page, printArea: undefined, titleRows: undefined };
}

function tabOf(color: string | undefined): string | null {
  const hex = /^#([\da-f]{6})$/i.exec(color ?? "")?.[1];
  return hex ? `FF${hex.toUpperCase()}` : null;
}
