import type { IRange } from "@univerjs/core";
import { sheetColumns, sheetRows } from "./a1";
import type { Area } from "./port";

/** The grid's own way to say an area: first and last row and column. */
export function toRange(area: Area): IRange {
  return {
    startRow: area.row,
    startColumn: area.column,
    endRow: area.row + area.rowCount - 1,
    endColumn: area.column + area.columnCount - 1,
  };
}

export function fromRange(sheetId: string, range: IRange): Area {
  const { startRow, startColumn, endRow, endColumn } = range;
  return {
    sheetId,
    row: startRow,
    column: startColumn,
    rowCount: endRow - startRow + 1,
    columnCount: endColumn - startColumn + 1,
  };
}

/** The cells that two areas share, or nothing. */
export function intersection(one: Area, other: Area): Area | undefined {
  if (one.sheetId !== other.sheetId) return undefined;
  const row = Math.max(one.row, other.row);
  const column = Math.max(one.column, other.column);
  const rowCount = Math.min(one.row + one.rowCount, other.row + other.rowCount) - row;
  const columnCount = Math.min(one.column + one.columnCount, other.column + other.columnCount) - column;
  return rowCount > 0 && columnCount > 0 ? { sheetId: one.sheetId, row, column, rowCount, columnCount } : undefined;
}

/** The smallest area round both. */
export function union(one: Area, other: Area): Area {
  const row = Math.min(one.row, other.row);
  const column = Math.min(one.column, other.column);
  return {
    sheetId: one.sheetId,
    row,
    column,
    rowCount: Math.max(one.row + one.rowCount, other.row + other.rowCount) - row,
    columnCount: Math.max(one.column + one.columnCount, other.column + other.columnCount) - column,
  };
}

/** What is left of an area without the cells that it shares with another: up to four areas. */
export function difference(area: Area, taken: Area): Area[] {
  const hole = intersection(area, taken);
  if (!hole) return [area];
  const [bottom, right] = [area.row + area.rowCount, area.column + area.columnCount];
  const [holeBottom, holeRight] = [hole.row + hole.rowCount, hole.column + hole.columnCount];
  const band = { ...area, row: hole.row, rowCount: hole.rowCount };
  return [
    { ...area, rowCount: hole.row - area.row },
    { ...band, columnCount: hole.column - area.column },
    { ...band, column: holeRight, columnCount: right - holeRight },
    { ...area, row: holeBottom, rowCount: bottom - holeBottom },
  ].filter(({ rowCount, columnCount }) => rowCount > 0 && columnCount > 0);
}

export function isWithinSheet(area: Area): boolean {
  return (
    area.row >= 0 &&
    area.column >= 0 &&
    area.rowCount >= 1 &&
    area.columnCount >= 1 &&
    area.row + area.rowCount <= sheetRows &&
    area.column + area.columnCount <= sheetColumns
  );
}

/** One value for each cell of the area, row by row. */
export function eachCell<T>(area: Area, cell: (row: number, column: number) => T): T[][] {
  return Array.from({ length: area.rowCount }, (_, row) =>
    Array.from({ length: area.columnCount }, (_, column) => cell(area.row + row, area.column + column)),
  );
}
