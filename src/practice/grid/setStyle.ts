import type { ICellData, IObjectMatrixPrimitiveType, IStyleData } from "@univerjs/core";
import { command } from "./command";
import { eachCell, toRange } from "./geometry";
import type { OpenGrid } from "./library";
import type { Area } from "./port";
import { heldPart, makeRoom } from "./sheetOf";

/** Parts of a style by which a row's height follows from what is in it. */
const FITTING = ["ff", "fs", "tr", "tb"] as const;

/**
 * Sets parts of cells' own styles. The parts that a style leaves out, or has as undefined, are left alone; null undoes
 * one to the default.
 *
 * @param of the style of a cell; undefined leaves it alone.
 */
export function setStyles(
  grid: OpenGrid,
  area: Area,
  of: (row: number, column: number) => IStyleData | undefined,
): void {
  makeRoom(grid, area);
  const held = heldPart(grid, area);
  if (!held) return;
  const cellValue: IObjectMatrixPrimitiveType<ICellData> = {};
  const parts = new Set<string>();
  eachCell(held, (row, column) => {
    const style = of(row, column);
    if (!style) return;
    const keys = Object.keys(style);
    if (keys.length === 0) return;
    cellValue[row] ??= {};
    cellValue[row][column] = { s: style };
    for (const key of keys) parts.add(key);
  });
  if (parts.size === 0) return;
  const { SetRangeValuesMutation, SetStyleCommand } = grid.library.sheets;
  // All parts at once, and without a calculation, since only looks change: the grid's command does this part by part.
  command(grid, SetRangeValuesMutation.id, area.sheetId, { cellValue, trigger: SetStyleCommand.id });
  const type = FITTING.find((part) => parts.has(part));
  if (!type) return;
  // The command also has rows fit what is in them.
  const value = eachCell(held, (row, column) => of(row, column)?.[type]);
  command(grid, SetStyleCommand.id, area.sheetId, { range: toRange(held), style: { type, value } });
}
