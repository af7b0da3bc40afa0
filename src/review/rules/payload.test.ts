import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import { payload } from "./ratios";

/** One bed's stone and loads, and what the truck may carry: 2.6 tons. */
const hauled = (tons: number, loads: number, limit = 2.6) => [
  ["Bed", "Stone (tons)", "Loads"],
  ["Front walk", tons, loads],
  ["", "", ""],
  ["Truck payload", limit, ""],
];

describe("a load over the truck's payload", () => {
  // 2 loads of 2.6 tons are 5.2 tons.
  test.each([
    ["exactly at the payload is fine", 5.2, []],
    ["0.05% over is rounding", 5.2026, []],
    ["0.2% over is found", 5.2104, ["C2"]],
    ["10% over is found", 5.72, ["C2"]],
  ])("%s", (_, tons, found) => {
    expect(cellsFound(payload, hauled(tons, 2))).toEqual(found);
  });

  test("names the weight of each load and how many loads it takes", () => {
    // 5.72 / 2 = 2.86 tons each; 5.72 / 2.6 = 2.2, so 3 loads.
    expect(findWith(payload, hauled(5.72, 2))).toMatchObject([
      {
        level: "warning",
        rank: 20,
        cells: ["C2"],
        related: ["B2", "B4"],
        seen: "“Front walk”, “Loads” is 2 for 5.72 tons: 2.86 tons each, over the 2.6-ton payload in B4.",
        todo: "Count 3 loads, or use a bigger truck.",
        fix: undefined,
      },
    ]);
  });

  test("needs a payload and a count of loads, both over 0", () => {
    expect(cellsFound(payload, hauled(5.72, 2, 0))).toEqual([]);
    expect(cellsFound(payload, hauled(5.72, 0))).toEqual([]);
  });

  test("is not looked for where loads are measured in tons", () => {
    const rows = hauled(5.72, 2);
    rows[0] = ["Bed", "Stone (tons)", "Load (tons)"];
    expect(cellsFound(payload, rows)).toEqual([]);
  });

  test("goes by the payload of the same row where each row has its own", () => {
    const rows = [
      ["Bed", "Stone (tons)", "Loads", "Payload (tons)"],
      ["Front walk", 5.72, 2, 2.6],
      ["Side yard", 5.72, 2, 3],
      ["Patio", 9, 2, 3],
    ];
    expect(cellsFound(payload, rows)).toEqual(["C2", "C4"]);
  });

  test("is not guessed where two trucks are listed apart from the beds", () => {
    const rows = [...hauled(5.72, 2), ["Trailer payload", 2.6, ""]];
    expect(cellsFound(payload, rows)).toEqual([]);
  });

  test("needs the tons of the bed", () => {
    const rows = hauled(5.72, 2);
    rows[0] = ["Bed", "Stone (cu yd)", "Loads"];
    expect(cellsFound(payload, rows)).toEqual([]);
  });

  test("is one finding down a column", () => {
    const rows = [...hauled(5.72, 2).slice(0, 2), ["Side yard", 5.72, 2], ...hauled(0, 0).slice(2)];
    expect(findWith(payload, rows)).toMatchObject([{ cells: ["C2", "C3"] }]);
  });
});

describe("loads counted by volume only", () => {
  const counted = (formula: string) => [
    ["Bed", "Spoil (cu yd)", "Loads"],
    ["Front walk", 6, formula],
    ["", "", ""],
    ["Truck payload", 2.6, ""],
  ];

  test("are found where a payload is given", () => {
    expect(findWith(payload, counted("=BED.LOADS(B2,5)"))).toMatchObject([
      {
        level: "warning",
        cells: ["C2"],
        related: ["B4"],
        seen: "“Front walk”, “Loads” counts loads by volume only, but there's a payload in B4 (2.6 tons).",
        todo: "Include tons/cu yd and the payload.",
      },
    ]);
  });

  test.each([
    ["a weight without a payload is not enough", "=BED.LOADS(B2,5,1.2)", ["C2"]],
    ["with weight and payload they are right", "=BED.LOADS(B2,5,1.2,B4)", []],
    ["other arithmetic is not asked about", "=ROUNDUP(B2/5,0)", []],
    ["other functions are not asked about", "=BED.SPOIL_YARDS(B2)", []],
  ])("%s", (_, formula, found) => {
    expect(cellsFound(payload, counted(formula))).toEqual(found);
  });

  test("are fine where no one says what the truck may carry", () => {
    expect(cellsFound(payload, counted("=BED.LOADS(B2,5)").slice(0, 2))).toEqual([]);
  });
});
