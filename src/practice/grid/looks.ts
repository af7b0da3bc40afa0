import type { IStyleData } from "@univerjs/core";
import { borderFrom, borderTo, edgeKeys } from "./borders";
import { command } from "./command";
import { toRange } from "./geometry";
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
    for (const [type, value] of Object.entries(styleFrom(this.grid.library, look))) this.setStyle(area, type, value);
  }

  setNumberFormats(area: Area, patterns: (string | undefined)[][]): void {
    makeRoom(this.grid, area);
    const sheet = sheetOf(this.grid, area.sheetId);
    patterns.forEach((cells, row) => {
      cells.forEach((pattern, column) => {
        if (pattern === undefined) return;
        const one = { ...area, row: area.row + row, column: area.column + column, rowCount: 1, columnCount: 1 };
        if (sheet.getSheet().getComposedCellStyle(one.row, one.column).n?.pattern !== pattern) {
          this.set(one, { numberFormat: pattern });
        }
      });
    });
  }

  private setStyle(area: Area, type: string, value: IStyleData[keyof IStyleData]): void {
    makeRoom(this.grid, area);
    const held = heldPart(this.grid, area);
    if (!held) return;
    const { SetStyleCommand } = this.grid.library.sheets;
    command(this.grid, SetStyleCommand.id, area.sheetId, { range: toRange(held), style: { type, value } });
  }

  border(sheetId: string, row: number, column: number, edge: Edge): Border {
    const style = worksheetOf(this.grid, sheetId).getComposedCellStyle(row, column);
    return borderFrom(style.bd?.[edgeKeys[edge]]);
  }

  setBorder(area: Area, edge: Edge, border: Border): void {
    this.setStyle(area, "bd", { [edgeKeys[edge]]: borderTo(border) });
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
