import { parseStructRef, stringifyA1Ref } from "@borgar/fx";
import type { Rectangle } from "../../xlsx/addresses";

/** A table of a file, as formulas refer to it. */
export interface FileTable {
  readonly name: string;
  readonly sheetName: string;
  /** With its headings and totals. */
  readonly area: Rectangle;
  readonly columns: readonly string[];
  readonly headingRows: number;
  readonly totalRows: number;
  readonly style: string;
  /** The part that holds it, and the id by which its sheet points there. */
  readonly part: string;
  readonly pointer: string;
}

/** A cell on a sheet of a file. */
export interface FileCellPlace {
  readonly sheetName: string;
  readonly row: number;
  readonly column: number;
}

/**
 * The cells that a formula means by a table and its headings, as an ordinary reference; undefined where the file has
 * none such.
 *
 * @param reference such as `Beds[Length]`, `Beds[[#This Row],[Length]]`, `Beds[[#Headers],[Length]:[Depth]]`.
 * @param cell the formula's cell.
 */
export function tableCells(reference: string, tables: readonly FileTable[], cell: FileCellPlace): string | undefined {
  const parsed = parseStructRef(reference);
  if (!parsed) return undefined;
  const { columns = [], sections = [] } = parsed;
  const table = parsed.table ? tables.find(isNamed(parsed.table)) : tables.find(isAround(cell));
  if (!table) return undefined;
  const across = acrossOf(table, columns);
  const down = downOf(
    table,
    sections.map((one) => one.toLowerCase()),
    cell,
  );
  if (!across || !down) return undefined;
  const isHere = table.sheetName === cell.sheetName;
  return stringifyA1Ref({
    ...(isHere ? {} : { context: [table.sheetName] }),
    range: { ...across, ...down, $left: true, $right: true, $top: !down.isRow, $bottom: !down.isRow },
  });
}

const isNamed = (name: string) => (table: FileTable) => table.name.toLowerCase() === name.toLowerCase();

const isAround = (cell: FileCellPlace) => (table: FileTable) =>
  table.sheetName === cell.sheetName &&
  cell.row >= table.area.row &&
  cell.row < table.area.row + table.area.rowCount &&
  cell.column >= table.area.column &&
  cell.column < table.area.column + table.area.columnCount;

function acrossOf({ area, columns }: FileTable, wanted: readonly string[]) {
  if (wanted.length === 0) return { left: area.column, right: area.column + area.columnCount - 1 };
  const places = wanted.map((name) => columns.findIndex((one) => one.toLowerCase() === name.toLowerCase()));
  if (places.includes(-1)) return undefined;
  return { left: area.column + Math.min(...places), right: area.column + Math.max(...places) };
}

function downOf({ area, headingRows, totalRows }: FileTable, sections: readonly string[], { row }: FileCellPlace) {
  const first = area.row + headingRows;
  const last = area.row + area.rowCount - 1 - totalRows;
  const rows = (top: number, bottom: number) => (top > bottom ? undefined : { top, bottom, isRow: false });
  switch (sections.join(" ")) {
    case "":
    case "data":
      return rows(first, last);
    case "this row":
    case "@":
      return { top: row, bottom: row, isRow: true };
    case "all":
      return rows(area.row, area.row + area.rowCount - 1);
    case "headers":
      return rows(area.row, first - 1);
    case "totals":
      return rows(last + 1, area.row + area.rowCount - 1);
    case "headers data":
      return rows(area.row, last);
    case "data totals":
      return rows(first, area.row + area.rowCount - 1);
    default:
      return undefined;
  }
}
