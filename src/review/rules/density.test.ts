import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import { density } from "./density";

/*
 * 1 lb per cu ft is 27 / 2,000 = 0.0135 tons per cu yd. Ordinary stone, loose, is 75 to 125 lb per cu ft and lava 30 to
 * 60 (common practice): 1.0125 to 1.6875 and 0.405 to 0.81 tons per cu yd.
 */
const weighs = (tons: number | string, label = "Stone density (tons/cu yd)") => [
  ["Bed", "Front walk"],
  [label, tons],
];

describe("the weight of a stone", () => {
  test.each([
    [0.4, "error"],
    [0.405, undefined],
    [0.81, undefined],
    [0.82, "question"],
    [1.0, "question"],
    [1.0125, undefined],
    [1.35, undefined],
    [1.6875, undefined],
    [1.7, "error"],
  ])("of %f tons per cubic yard is a %s", (tons, level) => {
    expect(findWith(density, weighs(tons)).map((one) => one.level)).toEqual(level === undefined ? [] : [level]);
  });

  test.each([
    // Printed limits are rounded to four digits: 0.8100 is 60 lb per cu ft, and so is 0.8105 within 0.1%.
    [0.4047, []],
    [0.8105, []],
    [1.0118, []],
    [1.689, []],
  ])("may be rounded by 0.1%%: %f", (tons, found) => {
    expect(cellsFound(density, weighs(tons))).toEqual(found);
  });

  test("costs more than a question where no stone weighs that", () => {
    const ranks = [1.7, 0.9].map((tons) => findWith(density, weighs(tons))[0]!.rank);
    expect(ranks).toEqual([60, 15]);
  });

  // CalRecycle: shredded, dry wood chips weigh 300 lb a cubic yard, 0.15 tons.
  test.each([
    [0.15, "Stone density, wood chips (tons/cu yd)", []],
    [0.15, "Stone density (tons/cu yd)", ["B2"]],
    [0.1, "Stone density, bark (tons/cu yd)", ["B2"]],
    [300, "Stone density, mulch (tons/cu yd)", ["B2"]],
  ])("of %f tons is fine for wood, bark, mulch, and rubber alone: %s", (tons, label, found) => {
    expect(cellsFound(density, weighs(tons, label))).toEqual(found);
  });

  test("names the range and what to type", () => {
    expect(findWith(density, weighs(1.9))).toMatchObject([
      {
        cells: ["B2"],
        seen:
          "“Stone density (tons/cu yd)”, “Front walk” makes the stone 1.9 tons/cu yd; ordinary stone is 1.013 to 1.688, " +
          "lava and pumice 0.405 to 0.81.",
        todo: "Type the weight from your supplier's scale ticket, in tons per loose cubic yard.",
      },
    ]);
  });

  test.each([
    // 2,700 lb / 2,000 = 1.35 tons; 100 lb per cu ft x 27 / 2,000 = 1.35 tons.
    [2700, " It looks like pounds per cubic yard: 1.35 tons."],
    [1001, " It looks like pounds per cubic yard: 0.501 tons."],
    [1000, " It looks like pounds per cubic foot: 13.5 tons."],
    [100, " It looks like pounds per cubic foot: 1.35 tons."],
    [21, " It looks like pounds per cubic foot: 0.284 tons."],
    [20, ""],
  ])("of %i says which unit it may be in", (typed, says) => {
    const [found] = findWith(density, weighs(typed));
    expect(found!.seen.split("0.81.")[1]).toBe(says);
  });

  test.each([
    ["in pounds where the label says so", 2700, "Stone density (lb/cu yd)", []],
    ["in pounds per cubic foot where the label says so", 100, "Stone density (lb/cu ft)", []],
    ["of soil is not asked about", 0.9, "Soil density (tons/cu yd)", []],
    ["that a formula works out is told where it comes from", "=1+0.9", "Stone density", []],
  ])("%s", (_, typed, label, found) => {
    expect(cellsFound(density, weighs(typed, label))).toEqual(found);
  });

  test("is one finding down a column", () => {
    const rows = [["Bed", "Area (sq ft)", "Density"], ...[2, 2, 1.35].map((tons) => ["Bed", 100, tons])];
    expect(findWith(density, rows)).toMatchObject([{ cells: ["C2", "C3"] }]);
  });
});

describe("a cell that a function takes as its stone", () => {
  const ordered = (stone: number | string, formula = "=BED.STONE_TONS(B2,C2,D2)", heading = "Rock") => [
    ["Bed", "Area (sq ft)", "Depth (in)", heading, "Order"],
    ["Front walk", 100, 3, stone, formula],
    ["Side yard", 80, 3, stone, formula.replaceAll("2", "3")],
  ];

  test("is checked whatever its heading says", () => {
    expect(cellsFound(density, ordered(2700))).toEqual(["D2", "D3"]);
    expect(cellsFound(density, ordered(1.35))).toEqual([]);
  });

  test("may hold a name from the table", () => {
    expect(cellsFound(density, ordered("river rock"))).toEqual([]);
  });

  test.each([
    ["another argument is no weight", "=BED.STONE_TONS(B2,C2,1.35,D2)"],
    ["a function without a stone", "=BED.STONE_YARDS(B2,C2,D2)"],
    ["ordinary arithmetic", "=B2*C2/324*D2"],
    ["an ordinary function", "=MAX(B2,C2,D2)"],
    ["a stone that is left out", "=BED.STONE_TONS(B2,C2)"],
    ["a stone that is typed in", "=BED.STONE_TONS(B2,C2,2.7)+D2"],
  ])("is not %s", (_, formula) => {
    expect(cellsFound(density, ordered(2700, formula))).toEqual([]);
  });

  test("goes by the unit of its heading first", () => {
    expect(cellsFound(density, ordered(2700, undefined, "Density (lb/cu yd)"))).toEqual([]);
  });

  test("is left alone when the sheet with the function is protected", () => {
    const sheets = (isProtected: boolean) => ({
      sheets: [
        {
          name: "Jobs",
          rows: [
            ["Bed", "Area (sq ft)", "Rock"],
            ["Front walk", 100, 2700],
          ],
        },
        { name: "Order", rows: [["Tons"], ["=BED.STONE_TONS(Jobs!B2,3,Jobs!C2)"]], protected: isProtected },
      ],
    });
    expect(cellsFound(density, sheets(false))).toEqual(["C2"]);
    expect(cellsFound(density, sheets(true))).toEqual([]);
  });
});
