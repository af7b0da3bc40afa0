import type { CustomData } from "@univerjs/core";
import { rectangleOf } from "../../../xlsx/addresses";
import type { OpenGrid } from "../../grid/library";
import type { CellsPort } from "../../grid/port";
import type { ShownResult } from "../open/cells";
import { differences } from "../openedMessage";
import { Spills } from "./cells";

/**
 * Notes with the workbook which formulas show something else here than in the file that was just opened. What they show
 * here is never written into the file.
 *
 * @param shown what the formulas show in the file.
 */
export function noteDiffering(grid: OpenGrid, cells: Pick<CellsPort, "read">, shown: readonly ShownResult[]): void {
  const differs = differing(grid, cells, shown);
  grid.workbook.setCustomMetadata({ ...grid.workbook.getCustomMetadata(), differs });
}

/** The formulas that were noted, by what is kept with the workbook: `sheet-1!3,4`. */
export function keptDiffering(custom: CustomData | undefined): readonly string[] {
  return Array.isArray(custom?.differs) ? custom.differs : [];
}

function differing(grid: OpenGrid, cells: Pick<CellsPort, "read">, shown: readonly ShownResult[]): string[] {
  const spills = new Map<string, Spills>();
  const others = shown.filter(({ sheetId, row, column, area }) => {
    const rectangle = area === undefined ? undefined : rectangleOf(area);
    if (!rectangle) return false;
    const own = spills.get(sheetId) ?? new Spills({ grid, cells }, sheetId);
    spills.set(sheetId, own);
    return own.differ(row, column, rectangle);
  });
  const parts = new Map(shown.map((one) => [placeOf(one), one.partOf]));
  const differ = differences(cells, shown).map((one) => ({ ...one, ...parts.get(placeOf(one)) }));
  return [...new Set([...differ, ...others].map(placeOf))];
}

function placeOf({ sheetId, row, column }: Pick<ShownResult, "sheetId" | "row" | "column">): string {
  return `${sheetId}!${row},${column}`;
}
