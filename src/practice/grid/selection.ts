import { fromRange } from "./geometry";
import type { OpenGrid } from "./library";
import type { Area, SelectionPort } from "./port";
import { makeRoom, rangeOf } from "./sheetOf";

/** The cells that are selected on the sheet in front. */
export class GridSelection implements SelectionPort {
  constructor(private readonly grid: OpenGrid) {}

  get(): Area {
    const sheet = this.grid.workbook.getActiveSheet();
    const sheetId = sheet.getSheetId();
    const range = sheet.getActiveRange()?.getRange();
    return range ? fromRange(sheetId, range) : { sheetId, row: 0, column: 0, rowCount: 1, columnCount: 1 };
  }

  set(area: Area): void {
    makeRoom(this.grid, area);
    this.grid.workbook.setActiveRange(rangeOf(this.grid, area));
  }
}
