import type { Area } from "../spreadsheet/areas";
import type { CellValue } from "./facts";

/**
 * How sure a finding is. An "error" is a mistake, or very nearly always one; a "warning" looks wrong and may be meant; a
 * "question" asks about something that is missing, and only the estimator knows.
 */
export type Level = "error" | "warning" | "question";

/** Cells of a sheet. */
export interface Place extends Area {
  readonly sheet: string;
}

/** One cell of a fix: what is there, and what would be there. */
export interface Change {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly before: CellValue;
  /** A number, text, or a formula with its "=". */
  readonly after: CellValue;
  /** A number format that has to go with it, where the cell's own would spoil what is written. */
  readonly numberFormat?: string;
}

export interface Finding {
  /** Stays the same while what was found stays the same, wherever rows are inserted. */
  readonly key: string;
  /** The id of the rule that found it. */
  readonly rule: string;
  readonly title: string;
  readonly level: Level;
  /** About how many percent of a quantity or price may be at stake, 0 to 100: findings are ordered by it. */
  readonly rank: number;
  /** The cells it is about, the first of them to go to. */
  readonly places: readonly Place[];
  /** Other cells that it has to do with: what is left out, what is counted twice. */
  readonly related: readonly Place[];
  /** The places in words: `Jobs!F7` or `Jobs!F7, F9 and 3 more`. */
  readonly where: string;
  readonly seen: string;
  readonly matters: string;
  readonly todo: string;
  /** Absent where there is no single safe fix. */
  readonly fix?: readonly Change[];
}
