import { expect, test } from "vitest";
import { queueWrite } from "./cells";

/** What three cells below one another get, which have the formats 0, @ and 0.0% before. */
function written(formats: readonly (string | undefined)[]) {
  const range: { numberFormat?: unknown[][]; formulas?: unknown[][] } = {};
  const context = { workbook: { worksheets: { getItem: () => ({ getRangeByIndexes: () => range }) } } };
  const cells = ["0", "@", "0.0%"].map((before, index) => {
    const format = formats[index];
    const row = 4 + index;
    return { sheet: "Jobs", row, column: 2, content: row, format: format ?? before, keepsFormat: format === undefined };
  });
  queueWrite(context as unknown as Excel.RequestContext, cells);
  return range;
}

test("a run keeps the format of each cell that gets none", () => {
  expect(written([undefined, undefined, "0.00"]).numberFormat).toEqual([["0"], ["@"], ["0.00"]]);
  expect(written(["0.00", undefined, undefined]).numberFormat).toEqual([["0.00"], ["@"], ["0.0%"]]);
  expect(written([]).numberFormat).toBeUndefined();
});

test("a run's contents go to its cells in their order", () => {
  expect(written([]).formulas).toEqual([[4], [5], [6]]);
});
