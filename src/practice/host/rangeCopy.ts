import type { Area, CellsPort, CopyPart } from "../grid/port";
import { refuse } from "./error";

const parts = new Map<string, CopyPart>([
  ["All", "all"],
  ["Formulas", "formulas"],
  ["Values", "values"],
  ["Formats", "formats"],
]);

/**
 * Copies cells as a person would: into the place that starts at the target's first cell, or over and over where the
 * target is a whole number of times as large.
 *
 * @throws HostError for a way of copying that the practice workbook does not carry.
 */
export function copyInto(
  cells: CellsPort,
  source: Area,
  target: Area,
  copyType: string,
  options: { skipBlanks: boolean | undefined; transpose: boolean | undefined },
): void {
  const part = parts.get(copyType);
  if (!part || options.skipBlanks || options.transpose) {
    throw refuse("InvalidArgument", "The practice workbook copies all, formulas, values or formats, the plain way.");
  }
  const fits = target.rowCount % source.rowCount === 0 && target.columnCount % source.columnCount === 0;
  const down = fits ? target.rowCount / source.rowCount : 1;
  const across = fits ? target.columnCount / source.columnCount : 1;
  for (let row = 0; row < down; row += 1) {
    for (let column = 0; column < across; column += 1) {
      const to = {
        ...source,
        sheetId: target.sheetId,
        row: target.row + row * source.rowCount,
        column: target.column + column * source.columnCount,
      };
      cells.copy(source, to, part);
    }
  }
}
