import type { IStyleData } from "@univerjs/core";
import { borderFrom, bordersTo, borderTo, edgeKeys } from "./borders";
import { command } from "./command";
import { toRange } from "./geometry";
import { pixelsToPoints, pointsToPixels } from "./lengths";
import type { OpenGrid } from "./library";
import { isUnlocked, setLocked } from "./locked";
import type { Area, Border, CellBorders, CellLook, Edge, LooksPort } from "./port";
import { setStyles } from "./setStyle";
import { heldPart, makeRoom, sheetOf, worksheetOf } from "./sheetOf";
import { lookFrom, styleFrom } from "./styles";

/** How the grid's cells look. */
export class GridLooks implements LooksPort {
  constructor(private readonly grid: OpenGrid) {}

  read(sheetId: string, row: number, column: number): CellLook {
    const { library } = this.grid;
    const locked = !isUnlocked(worksheetOf(this.grid, sheetId).getCellRaw(row, column));
    return { ...lookFrom(library, this.style(sheetId, row, column)), locked };
  }

  /** The cell's own style over its row's and column's, without what rules and number formats add when it's shown. */
  private style(sheetId: string, row: number, column: number): IStyleData {
    const sheet = worksheetOf(this.grid, sheetId);
    return sheet.getComposedCellStyleByCellData(row, column, sheet.getCellRaw(row, column));
  }

  set(area: Area, look: Partial<CellLook>): void {
    const style = styleFrom(this.grid.library, look);
    setStyles(this.grid, area, () => style);
    if (look.locked !== undefined) setLocked(this.grid, area, () => look.locked);
  }

  setEach(area: Area, looks: (Partial<CellLook> | undefined)[][]): void {
    const styles = looks.map((row) => row.map((look) => styleFrom(this.grid.library, look ?? {})));
    setStyles(this.grid, area, (row, column) => styles[row - area.row]?.[column - area.column]);
    setLocked(this.grid, area, (row, column) => looks[row - area.row]?.[column - area.column]?.locked);
  }

  border(sheetId: string, row: number, column: number, edge: Edge): Border {
    return borderFrom(this.style(sheetId, row, column).bd?.[edgeKeys[edge]]);
  }

  borders(sheetId: string, row: number, column: number): Record<Edge, Border> {
    const { bd } = this.style(sheetId, row, column);
    return { top: borderFrom(bd?.t), bottom: borderFrom(bd?.b), left: borderFrom(bd?.l), right: borderFrom(bd?.r) };
  }

  setBorder(area: Area, edge: Edge, border: Border): void {
    setStyles(this.grid, area, () => ({ bd: { [edgeKeys[edge]]: borderTo(border) } }));
  }

  setBorders(area: Area, borders: (CellBorders | undefined)[][]): void {
    setStyles(this.grid, area, (row, column) => {
      const cell = borders[row - area.row]?.[column - area.column];
      return cell && Object.keys(cell).length > 0 ? { bd: bordersTo(cell) } : undefined;
    });
  }

  columnWidth(sheetId: string, column: number): number {
    return pixelsToPoints(worksheetOf(this.grid, sheetId).getColumnWidth(column));
  }

  setColumnWidth(area: Area, points: number): void {
    makeRoom(this.grid, { ...area, rowCount: 1 });
    const { id } = this.grid.library.sheets.SetWorksheetColWidthMutation;
    const ranges = [toRange({ ...area, row: 0, rowCount: 1 })];
    // The grid's command fits the rows of the whole sheet anew as well, which a spreadsheet program doesn't (from memory).
    command(this.grid, id, area.sheetId, { ranges, colWidth: pointsToPixels(points) });
  }

  rowHeight(sheetId: string, row: number): number {
    return pixelsToPoints(worksheetOf(this.grid, sheetId).getRowHeight(row));
  }

  setRowHeight(area: Area, points: number): void {
    makeRoom(this.grid, { ...area, columnCount: 1 });
    sheetOf(this.grid, area.sheetId).setRowHeightsForced(area.row, area.rowCount, pointsToPixels(points));
  }

  rowHidden(sheetId: string, row: number): boolean {
    return !worksheetOf(this.grid, sheetId).getRowVisible(row);
  }

  columnHidden(sheetId: string, column: number): boolean {
    return !worksheetOf(this.grid, sheetId).getColVisible(column);
  }

  setRowsHidden(area: Area, hidden: boolean): void {
    const sheet = sheetOf(this.grid, area.sheetId);
    if (hidden) sheet.hideRows(area.row, area.rowCount);
    else sheet.showRows(area.row, area.rowCount);
  }

  fitRows(area: Area): void {
    const held = heldPart(this.grid, area);
    if (held) sheetOf(this.grid, area.sheetId).setRowAutoHeight(held.row, held.rowCount);
  }
}
