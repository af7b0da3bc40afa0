import type { CellContent, CellsPort } from "../grid/port";
import type { ShownResult } from "./open/cells";

/** A formula that shows something else here than in the file it came from. */
export interface Difference {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  readonly inFile: string;
  readonly here: string;
}

/** Programs work with about fifteen digits, and not all of them in the same order. */
const tolerance = 1e-9;
/** Show something else at any time, in any program. */
const changing = /\b(?:NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)\s*\(/i;

/** Compares what formulas show with what they showed in the file. */
export function differences(cells: Pick<CellsPort, "read">, shown: readonly ShownResult[]): Difference[] {
  return shown.flatMap(({ sheetId, row, column, value }) => {
    const [[content] = []] = cells.read({ sheetId, row, column, rowCount: 1, columnCount: 1 });
    if (!content || changing.test(content.formula ?? "") || isSame(value, content)) return [];
    return [{ sheetId, row, column, inFile: words(value), here: words(content.value) }];
  });
}

function isSame(inFile: ShownResult["value"], { value: here, kind }: CellContent): boolean {
  if (typeof inFile === "number" && typeof here === "number") {
    return Math.abs(inFile - here) <= tolerance * Math.max(1, Math.abs(inFile), Math.abs(here));
  }
  // Files have room for the older errors only.
  if (kind === "error" && typeof inFile === "string" && inFile.startsWith("#")) return true;
  return inFile === here;
}

function words(value: ShownResult["value"]): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return value === "" ? "nothing" : String(value);
}
