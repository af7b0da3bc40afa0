import type { GridLibrary } from "../../grid/library";
import type { FunctionNames } from "../formula/functionNames";
import type { FileTable } from "../formula/tables";
import type { ColorReader } from "../look/colors";
import type { BookParts } from "../package/bookParts";
import type { Findings } from "./findings";

/** What the readers of a file's parts share. */
export interface Opening {
  readonly library: GridLibrary;
  readonly functions: FunctionNames;
  readonly book: BookParts;
  readonly tables: readonly FileTable[];
  readonly colorOf: ColorReader;
  readonly findings: Findings;
}

/** The id that a sheet of a file gets in the grid, by its place among the sheets of cells. */
export const sheetId = (place: number): string => `sheet-${place + 1}`;

/** The id that the page's workbook has, and its pictures name. */
export const unitId = "practice-1";
