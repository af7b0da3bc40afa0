import { expect, test } from "vitest";
import { queueContents, type Run } from "./cells";

interface Cell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly before: number;
  readonly after: number;
}
const cell = (row: number): Cell => ({ sheet: "Jobs", row, column: 2, before: 0, after: row });

function written(formats: readonly (string | undefined)[]) {
  const range = { numberFormat: [["0"], ["@"], ["0.0%"]], formulas: [] as unknown[] };
  const run = { changes: [cell(4), cell(5), cell(6)], range } as unknown as Run<Cell>;
  queueContents(
    run,
    ({ after }) => after,
    (_, index) => formats[index],
  );
  return range;
}

test("a run keeps the format of each cell that gets none", () => {
  expect(written([undefined, undefined, "0.00"]).numberFormat).toEqual([["0"], ["@"], ["0.00"]]);
  expect(written(["0.00", undefined, undefined]).numberFormat).toEqual([["0.00"], ["@"], ["0.0%"]]);
});

test("a run's contents go to its cells in their order", () => {
  expect(written([]).formulas).toEqual([[4], [5], [6]]);
});
