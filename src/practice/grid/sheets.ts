import type { OpenGrid } from "./library";
import type { SheetFacts, SheetsPort } from "./port";
import { newSheet } from "./practiceOffice";
import { sheetOf } from "./sheetOf";

/** The workbook's sheets, as the tabs show them. */
export class GridSheets implements SheetsPort {
  constructor(private readonly grid: OpenGrid) {}

  list(): SheetFacts[] {
    return this.grid.workbook.getSheets().map((sheet) => ({
      id: sheet.getSheetId(),
      name: sheet.getSheetName(),
      hidden: sheet.isSheetHidden(),
    }));
  }

  activeId(): string {
    return this.grid.workbook.getActiveSheet().getSheetId();
  }

  activate(id: string): void {
    this.grid.workbook.setActiveSheet(id);
  }

  add(name: string): string {
    const front = this.activeId();
    const sheet = this.grid.workbook.insertSheet(name, { sheet: newSheet });
    // The grid brings a new sheet to the front; the host leaves the front one where it is.
    this.activate(front);
    return sheet.getSheetId();
  }

  remove(id: string): void {
    this.grid.workbook.deleteSheet(id);
  }

  rename(id: string, name: string): void {
    sheetOf(this.grid, id).setName(name);
  }

  move(id: string, position: number): void {
    this.grid.workbook.moveSheet(sheetOf(this.grid, id), position);
  }

  hide(id: string, hidden: boolean): void {
    const sheet = sheetOf(this.grid, id);
    if (hidden) {
      sheet.hideSheet();
      return;
    }
    const front = this.activeId();
    sheet.showSheet();
    // The grid brings it to the front; the host leaves the front one where it is.
    this.activate(front);
  }

  freezeRows(id: string, count: number): void {
    sheetOf(this.grid, id).setFrozenRows(count);
  }

  insertRows(id: string, row: number, count: number): void {
    this.inFront(id, () => sheetOf(this.grid, id).insertRows(row, count));
  }

  deleteRows(id: string, row: number, count: number): void {
    this.inFront(id, () => sheetOf(this.grid, id).deleteRows(row, count));
  }

  /** The grid moves merged cells and lists of the sheet in front, whichever sheet gets other rows. */
  private inFront(id: string, work: () => void): void {
    const front = this.activeId();
    if (front !== id) this.activate(id);
    work();
    if (front !== id) this.activate(front);
  }
}
