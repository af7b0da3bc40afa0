import type { ICellData, IObjectMatrixPrimitiveType, Nullable } from "@univerjs/core";
import { command } from "./command";
import { eachCell, toRange } from "./geometry";
import type { OpenGrid } from "./library";
import type { Area } from "./port";
import { heldPart, worksheetOf } from "./sheetOf";

/** The grid has no locks of cells; a cell that is not locked carries this note. */
const UNLOCKED = { unlocked: true };

export function isUnlocked(cell: Nullable<ICellData>): boolean {
  return cell?.custom?.unlocked === true;
}

/** Which cells of an area are locked, as they are now. */
export function readLocks(grid: OpenGrid, area: Area): (row: number, column: number) => boolean {
  const held = heldPart(grid, area);
  const sheet = worksheetOf(grid, area.sheetId);
  const unlocked = new Set<string>();
  if (held) {
    eachCell(held, (row, column) => {
      if (isUnlocked(sheet.getCellRaw(row, column))) unlocked.add(`${row},${column}`);
    });
  }
  return (row, column) => !unlocked.has(`${row},${column}`);
}

/** Locks cells, or takes their locks off; undefined leaves a cell alone. */
export function setLocked(
  grid: OpenGrid,
  area: Area,
  isLocked: (row: number, column: number) => boolean | undefined,
): void {
  const value: IObjectMatrixPrimitiveType<ICellData> = {};
  const held = heldPart(grid, area);
  if (!held) return;
  const sheet = worksheetOf(grid, area.sheetId);
  eachCell(held, (row, column) => {
    const locked = isLocked(row, column);
    if (locked === undefined || locked === !isUnlocked(sheet.getCellRaw(row, column))) return;
    value[row] = { ...value[row], [column]: { custom: locked ? null : UNLOCKED } };
  });
  if (Object.keys(value).length === 0) return;
  const { SetRangeValuesCommand } = grid.library.sheets;
  command(grid, SetRangeValuesCommand.id, area.sheetId, { range: toRange(held), value });
}
