import type { IWorkbookData } from "@univerjs/core";
import type { OpenGrid } from "../../grid/library";
import type { CellsPort } from "../../grid/port";
import type { FunctionNames } from "../formula/functionNames";
import type { Findings } from "../open/findings";

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
