import { isMeasure } from "./headingRows";
import type { ListCells } from "./listSheet";

/** What stands in a column of a list, below its heading. */
export interface ColumnFacts {
  readonly filled: number;
  readonly blank: number;
  readonly formulas: number;
  /** Numbers that were typed, in their order in the sheet. */
  readonly numbers: readonly number[];
  /** Texts that read as a length, and others. */
  readonly tape: number;
  readonly otherTexts: readonly string[];
}

/** Looks through the rows of a column. */
export function columnFacts(cells: ListCells, column: number, rows: readonly number[]): ColumnFacts {
  const numbers: number[] = [];
  const otherTexts: string[] = [];
  let [filled, formulas, tape] = [0, 0, 0];
  for (const row of rows) {
    if (cells.isBlank(row, column)) continue;
    filled += 1;
    const content = cells.content(row, column);
    if (cells.formula(row, column) !== undefined) formulas += 1;
    else if (typeof content === "number") numbers.push(content);
    else if (isMeasure(String(content))) tape += 1;
    else otherTexts.push(String(content));
  }
  return { filled, blank: rows.length - filled, formulas, numbers, tape, otherTexts };
}

/** Whether every bed has a number that was typed, so that nothing is left to be worked out. */
export function isTyped({ numbers, formulas, blank }: ColumnFacts): boolean {
  return numbers.length > 0 && formulas === 0 && blank === 0;
}

/** The middle of some numbers; 0 of none. */
export function middle(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
