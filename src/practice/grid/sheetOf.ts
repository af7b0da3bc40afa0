import type { Worksheet } from "@univerjs/core";
import { sheetColumns, sheetRows } from "./a1";
import { fromRange, intersection } from "./geometry";
import type { OpenGrid } from "./library";
import type { Area } from "./port";

type FacadeSheet = ReturnType<OpenGrid["workbook"]["getActiveSheet"]>;
type FacadeRange = ReturnType<FacadeSheet["getRange"]>;

/** A sheet was deleted meanwhile. */
export class SheetGone extends Error {
  override readonly name = "SheetGone";
}

/**
 * The sheet with this id.
 *
 * @throws SheetGone where it was deleted meanwhile.
 */
export function sheetOf({ workbook }: OpenGrid, sheetId: string): FacadeSheet {
  return found(workbook.getSheetBySheetId(sheetId) ?? undefined, sheetId);
}

/** The sheet itself, without the facade that is made again for each {@link sheetOf}: what is asked cell by cell asks this. */
export function worksheetOf({ workbook }: OpenGrid, sheetId: string): Worksheet {
  return found(workbook.getWorkbook().getSheetBySheetId(sheetId) ?? undefined, sheetId);
}

function found<Sheet>(sheet: Sheet | undefined, sheetId: string): Sheet {
  if (!sheet) throw new SheetGone(`The sheet ${sheetId} is gone.`);
  return sheet;
}

/** The part of the area that the grid holds: its sheets are smaller than the host's until something is written. */
export function heldPart(grid: OpenGrid, area: Area): Area | undefined {
  const sheet = worksheetOf(grid, area.sheetId);
  const held = { startRow: 0, startColumn: 0, endRow: sheet.getRowCount() - 1, endColumn: sheet.getColumnCount() - 1 };
  return intersection(area, fromRange(area.sheetId, held));
}

/** The grid's own range object for an area that the grid holds. */
export function rangeOf(grid: OpenGrid, { sheetId, row, column, rowCount, columnCount }: Area): FacadeRange {
  return sheetOf(grid, sheetId).getRange(row, column, rowCount, columnCount);
}

/** The grid's own range object for the part of the area that the grid holds. */
export function heldRange(grid: OpenGrid, area: Area): FacadeRange | undefined {
  const held = heldPart(grid, area);
  return held && rangeOf(grid, held);
}

/** Makes the sheet large enough for the area, with a margin so that a person can type on below it.
 * Whole rows and columns are taken as large as they are. */
export function makeRoom(grid: OpenGrid, area: Area): void {
  if (area.rowCount >= sheetRows || area.columnCount >= sheetColumns) return;
  const sheet = sheetOf(grid, area.sheetId);
  const margin = { rows: 50, columns: 5 };
  const lastRow = area.row + area.rowCount;
  const lastColumn = area.column + area.columnCount;
  if (lastRow > sheet.getMaxRows()) sheet.setRowCount(lastRow + margin.rows);
  if (lastColumn > sheet.getMaxColumns()) sheet.setColumnCount(lastColumn + margin.columns);
}
