import type { IStyleData } from "@univerjs/core";
import { command } from "./command";
import { toRange } from "./geometry";
import type { OpenGrid } from "./library";
import type { Area } from "./port";
import { heldPart, makeRoom } from "./sheetOf";

/**
 * Sets one part of the cells' style: one value for all, or a table of the area's shape in which undefined leaves a
 * cell alone and null undoes it to the default. Only this one of the grid's commands lets formulas be where looks
 * alone change.
 */
export function setStyle(grid: OpenGrid, area: Area, type: string, value: unknown): void {
  makeRoom(grid, area);
  const held = heldPart(grid, area);
  if (!held) return;
  const { SetStyleCommand } = grid.library.sheets;
  command(grid, SetStyleCommand.id, area.sheetId, { range: toRange(held), style: { type, value } });
}

/** Sets each cell's own style; the parts that a style leaves out are left alone. */
export function setStyles(grid: OpenGrid, area: Area, styles: IStyleData[][]): void {
  const types = new Set(styles.flat().flatMap((style) => Object.keys(style) as (keyof IStyleData)[]));
  for (const type of types) {
    setStyle(
      grid,
      area,
      type,
      styles.map((row) => row.map((style) => style[type])),
    );
  }
}
