import { sheetColumns, sheetRows } from "./a1";
import { fromRange } from "./geometry";
import type { OpenGrid } from "./library";
import type { Area, SelectionPort } from "./port";
import { heldPart, makeRoom, rangeOf, sheetOf } from "./sheetOf";

/** The cells that are selected on the sheet in front. */
export class GridSelection implements SelectionPort {
  constructor(private readonly grid: OpenGrid) {}

  get(): Area {
    const sheet = this.grid.workbook.getActiveSheet();
    const sheetId = sheet.getSheetId();
    const range = sheet.getActiveRange()?.getRange();
    if (!range) return { sheetId, row: 0, column: 0, rowCount: 1, columnCount: 1 };
    return this.asOnHost(fromRange(sheetId, range));
  }

  /** Whole rows and columns are as long as the host's, also where the grid's own sheet is smaller. */
  private asOnHost(area: Area): Area {
    const sheet = sheetOf(this.grid, area.sheetId);
    const { row, column, rowCount, columnCount } = area;
    return {
      ...area,
      rowCount: row === 0 && rowCount >= sheet.getMaxRows() ? sheetRows : rowCount,
      columnCount: column === 0 && columnCount >= sheet.getMaxColumns() ? sheetColumns : columnCount,
    };
  }

  set(area: Area): void {
    makeRoom(this.grid, area);
    this.grid.workbook.setActiveRange(rangeOf(this.grid, heldPart(this.grid, area) ?? area));
  }
}
