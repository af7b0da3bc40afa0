import type { ICellData, IObjectMatrixPrimitiveType, IStyleData } from "@univerjs/core";
import { borderFrom, borderTo, edgeKeys } from "./borders";
import { command } from "./command";
import { eachCell, toRange } from "./geometry";
import { pixelsToPoints, pointsToPixels } from "./lengths";
import type { OpenGrid } from "./library";
import type { Area, Border, CellLook, Edge, LooksPort } from "./port";
import { heldPart, makeRoom, sheetOf, worksheetOf } from "./sheetOf";
import { lookFrom, styleFrom } from "./styles";

/** How the grid's cells look. */
export class GridLooks implements LooksPort {
  constructor(private readonly grid: OpenGrid) {}

  read(sheetId: string, row: number, column: number): CellLook {
    return lookFrom(this.grid.library, worksheetOf(this.grid, sheetId).getComposedCellStyle(row, column));
  }

  set(area: Area, look: Partial<CellLook>): void {
    this.setStyle(area, () => styleFrom(this.grid.library, look));
  }

  setEach(area: Area, looks: (Partial<CellLook> | undefined)[][]): void {
    this.setStyle(area, (row, column) => {
      const look = looks[row - area.row]?.[column - area.column];
      return look && styleFrom(this.grid.library, look);
    });
  }

  private setStyle(area: Area, style: (row: number, column: number) => IStyleData | undefined): void {
    makeRoom(this.grid, area);
    const held = heldPart(this.grid, area);
    if (!held) return;
    const value: IObjectMatrixPrimitiveType<ICellData> = {};
    eachCell(held, (row, column) => {
      const s = style(row, column);
      if (s) value[row] = { ...value[row], [column]: { s } };
    });
    if (Object.keys(value).length === 0) return;
    const { SetRangeValuesCommand } = this.grid.library.sheets;
    command(this.grid, SetRangeValuesCommand.id, area.sheetId, { range: toRange(held), value });
  }

  border(sheetId: string, row: number, column: number, edge: Edge): Border {
    const style = worksheetOf(this.grid, sheetId).getComposedCellStyle(row, column);
    return borderFrom(style.bd?.[edgeKeys[edge]]);
  }

  setBorder(area: Area, edge: Edge, border: Border): void {
    const bd = { [edgeKeys[edge]]: borderTo(border) };
    this.setStyle(area, () => ({ bd }));
  }

  columnWidth(sheetId: string, column: number): number {
    return pixelsToPoints(sheetOf(this.grid, sheetId).getColumnWidth(column));
  }

  setColumnWidth(area: Area, points: number): void {
    makeRoom(this.grid, { ...area, rowCount: 1 });
    sheetOf(this.grid, area.sheetId).setColumnWidths(area.column, area.columnCount, pointsToPixels(points));
  }

  rowHeight(sheetId: string, row: number): number {
    return pixelsToPoints(sheetOf(this.grid, sheetId).getRowHeight(row));
  }

  setRowHeight(area: Area, points: number): void {
    makeRoom(this.grid, { ...area, columnCount: 1 });
    sheetOf(this.grid, area.sheetId).setRowHeightsForced(area.row, area.rowCount, pointsToPixels(points));
  }

  fitRows(area: Area): void {
    const held = heldPart(this.grid, area);
    if (held) sheetOf(this.grid, area.sheetId).setRowAutoHeight(held.row, held.rowCount);
  }
}
