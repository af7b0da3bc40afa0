import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import { priceUnderCost } from "./price";

const sold = (cost: number, price: number | string, headings = ["Cost", "Price"]) => [
  ["Line", ...headings],
  ["Stone", cost, price],
];

describe("a price under its cost", () => {
  // 1% less, and $1 at most, is rounding to whole money.
  test.each([
    [100, "=B2*1.3", []],
    [100, "=B2", []],
    [100, "=B2-1", []],
    [100, "=B2-1.01", ["C2"]],
    [1000, "=B2-1", []],
    [1000, "=B2-1.01", ["C2"]],
    [10, "=B2-0.1", []],
    [10, "=B2-0.11", ["C2"]],
    [0, "=B2-5", []],
    [-10, "=B2-5", []],
  ])("of $%f at %s", (cost, price, found) => {
    expect(cellsFound(priceUnderCost, sold(cost, price))).toEqual(found);
  });

  test("is not found where the neighbors' price has nothing to do with the cost", () => {
    const rows = [
      ["Line", "Cost", "Price", "Quote"],
      ...[2, 3, 4, 5, 6].map((row) => ["Line", 100, row === 4 ? 80 : `=D${row}*1`, 130]),
    ];
    expect(cellsFound(priceUnderCost, rows)).toEqual([]);
  });

  test("is found by the piece, too", () => {
    expect(cellsFound(priceUnderCost, sold(10, "=B2*0.8", ["Unit cost", "Unit price"]))).toEqual(["C2"]);
  });

  test("is not found where the price is worked out of something else", () => {
    const rows = [
      ["Line", "Cost", "Price", "Quote"],
      ["Stone", 100, "=D2", 80],
    ];
    expect(cellsFound(priceUnderCost, rows)).toEqual([]);
    expect(cellsFound(priceUnderCost, sold(100, 80))).toEqual([]);
  });

  test("is not found where the price is for something else than the cost", () => {
    expect(cellsFound(priceUnderCost, sold(100, "=B2*0.8", ["Cost", "Unit price"]))).toEqual([]);
    expect(cellsFound(priceUnderCost, sold(100, "=B2*0.8", ["Stone depth (in)", "Price"]))).toEqual([]);
  });

  test("may be where its neighbors' formula was replaced", () => {
    const line = (row: number, price: number | string = `=B${row}*1.3`) => ["Line", 100, price, 50];
    const rows = (cost = "Cost") => [
      ["Line", cost, "Price", "Fee"],
      line(2),
      line(3),
      line(4),
      line(5, 80),
      line(6),
      ["Line", 100, "=D7*1.3", 50],
    ];
    expect(cellsFound(priceUnderCost, rows())).toEqual(["C5", "C7"]);
    expect(cellsFound(priceUnderCost, rows("Fees"))).toEqual([]);
  });

  test("names both amounts and ranks by the loss", () => {
    expect(findWith(priceUnderCost, sold(100, "=B2*0.6"))).toMatchObject([
      {
        level: "warning",
        // 40 of 100 are lost.
        rank: 40,
        cells: ["C2"],
        related: ["B2"],
        seen: "“Stone”, “Price” is 60; its cost in B2 is 100.",
        todo: "Check the markup and what goes into the price.",
        fix: undefined,
      },
    ]);
    expect(findWith(priceUnderCost, sold(100, "=B2*0.95"))[0]!.rank).toBe(10);
  });

  test("is one finding down a column", () => {
    const rows = [
      ["Line", "Unit cost", "Unit price", "Cost", "Price"],
      ["Stone", 10, "=B2*0.8", 100, "=D2*0.8"],
      ["Fabric", 10, "=B3*0.8", 100, "=D3*1.2"],
    ];
    expect(findWith(priceUnderCost, rows).map(({ cells }) => cells)).toEqual([["C2", "C3"], ["E2"]]);
  });
});
