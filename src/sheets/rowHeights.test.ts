import { describe, expect, test } from "vitest";
import { compose, type DraftRow } from "./compose";
import { rowHeights, rowsThatWrap } from "./rowHeights";

const planOf = (rows: readonly DraftRow[], widths: readonly number[]) =>
  compose("test", rows, widths, { row: 0, column: 0 });
const wrapped = (content: string, across = 1) => ({ content, look: "wrapped" as const, across });

/** 60 letters and 11 blanks: 60 × 1.05 + 11 × 0.48 = 68.3 digits with 7% to spare 73.1: two lines of 40, four of 20. */
const TEXT = Array.from({ length: 12 }, () => "nnnnn").join(" ");

describe("the height of a row", () => {
  test("is a line of 15 points for each line that its text breaks into", () => {
    expect(rowHeights(planOf([{ cells: [wrapped(TEXT)] }], [40]))).toEqual([30]);
    expect(rowHeights(planOf([{ cells: [wrapped(TEXT)] }], [21]))).toEqual([60]);
  });

  test("counts all columns of a merged cell", () => {
    const row: DraftRow = { cells: [wrapped(TEXT, 2), undefined] };
    expect(rowHeights(planOf([row], [20, 20]))).toEqual([30]);
  });

  test("follows the highest of its cells, and the lines that a person typed", () => {
    const cells = [wrapped("short"), wrapped("one\ntwo\nthree")];
    expect(rowHeights(planOf([{ cells }], [20, 20]))).toEqual([45]);
  });

  test("breaks a word that is longer than its line", () => {
    expect(rowHeights(planOf([{ cells: [wrapped("n".repeat(50))] }], [20]))).toEqual([45]);
  });

  test("is one line for text that runs on, and for a formula whose text isn't known", () => {
    expect(rowHeights(planOf([{ cells: [{ content: TEXT }] }], [10]))).toEqual([15]);
    const formula = planOf([{ cells: [wrapped(`=A2&"${TEXT}"`)] }], [40]);
    expect(rowHeights(formula)).toEqual([15]);
    expect(rowHeights(formula, [[TEXT]])).toEqual([30]);
  });
});

test("only rows with text that may break into lines get a height of their own", () => {
  const rows: DraftRow[] = [{ cells: [{ content: TEXT }] }, { cells: [wrapped(TEXT)] }, { cells: [wrapped("")] }];
  expect(rowsThatWrap(planOf(rows, [40]))).toEqual([{ row: 1, points: 30 }]);
});
