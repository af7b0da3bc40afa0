import type { IWorkbookData } from "@univerjs/core";
import type { ColorReader } from "../../xlsx/colors";
import type { BookParts } from "../../xlsx/read/bookParts";
import type { GridLibrary, OpenGrid } from "../grid/library";
import type { CellsPort } from "../grid/port";
import type { Findings } from "./findings";
import type { FunctionNames } from "./functionNames";
import type { FileTable } from "./tableReferences";

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

/** What the makers of a file's parts share. */
export interface Saving {
  readonly grid: OpenGrid;
  readonly cells: Pick<CellsPort, "read">;
  readonly functions: FunctionNames;
  /** The workbook as the grid keeps it. */
  readonly kept: IWorkbookData;
  /** What the file does not hold. */
  readonly findings: Findings;
}

/** What a part of the grid keeps with the workbook, by the sheets' ids. */
export function keptBySheet<T>({ kept }: Saving, name: string): Readonly<Record<string, T>> {
  const data = kept.resources?.find((one) => one.name === name)?.data;
  return data ? (JSON.parse(data) as Record<string, T>) : {};
}
