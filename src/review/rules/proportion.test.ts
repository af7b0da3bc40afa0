import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import { proportion } from "./ratios";

const counted = (heading: string, count: number, base: string, size: number) => [
  ["Bed", base, heading],
  ["Front walk", size, count],
];

describe("pins in proportion to the area", () => {
  // 0.05 to 4 pins a sq ft (common practice, with room either way): 5 to 400 on 100 sq ft.
  test.each([
    [4, ["C2"]],
    [5, []],
    [40, []],
    [400, []],
    [401, ["C2"]],
    [0, []],
    [-3, []],
  ])("%i on 100 sq ft", (pins, found) => {
    expect(cellsFound(proportion, counted("Pins", pins, "Area (sq ft)", 100))).toEqual(found);
  });

  // 19 pins on 4 sq ft are 4.75 a sq ft, 20 are 5.
  test.each([
    [19, []],
    [20, ["C2"]],
  ])("a handful on a very small bed is fine: %i on 4 sq ft", (pins, found) => {
    expect(cellsFound(proportion, counted("Pins", pins, "Area (sq ft)", 4))).toEqual(found);
  });

  test("a few on a large bed are too few", () => {
    expect(cellsFound(proportion, counted("Pins", 4, "Area (sq ft)", 1000))).toEqual(["C2"]);
  });

  test.each([
    ["Pins (boxes)"],
    ["Pins by the box"],
    ["Pins per box"],
    ["Pin price"],
    ["Pins (lb)"],
    ["Extra pins"],
    ["Pin rows"],
    ["Pins each"],
    ["Pin packs"],
    ["Pin case"],
    ["Pin bag"],
    ["Pins a bay"],
    ["Spare pins"],
    ["Pin cost"],
    ["Pins come with it"],
  ])("%s are no count of pins", (heading) => {
    expect(cellsFound(proportion, counted(heading, 4, "Area (sq ft)", 1000))).toEqual([]);
  });

  test.each([
    ["no area", "Length (ft)", 1000],
    ["an area of 0", "Area (sq ft)", 0],
    ["an area below 0", "Area (sq ft)", -50],
  ])("nothing is found with %s", (_, base, size) => {
    expect(cellsFound(proportion, counted("Pins", 40, base, size))).toEqual([]);
  });
});

describe("stakes in proportion to the border", () => {
  // 0.1 to 3 stakes a ft (common practice): 10 to 300 on 100 ft.
  test.each([
    [9, ["C2"]],
    [10, []],
    [300, []],
    [301, ["C2"]],
  ])("%i on 100 ft", (stakes, found) => {
    expect(cellsFound(proportion, counted("Stakes", stakes, "Edging (ft)", 100))).toEqual(found);
  });

  test("are not compared with pieces of edging", () => {
    expect(cellsFound(proportion, counted("Stakes", 9, "Edging (pieces)", 100))).toEqual([]);
  });

  test("in units of count are stakes, too", () => {
    expect(cellsFound(proportion, counted("Stakes (each)", 301, "Edging (ft)", 100))).toEqual([]);
    expect(cellsFound(proportion, counted("Stakes (pcs)", 301, "Edging (ft)", 100))).toEqual(["C2"]);
  });
});

test("the finding names both numbers and the ordinary range", () => {
  expect(findWith(proportion, counted("Pins", 4, "Area (sq ft)", 1000))).toMatchObject([
    {
      level: "warning",
      rank: 10,
      cells: ["C2"],
      related: ["B2"],
      seen: "“Front walk”, “Pins” is 4 pins for 1,000 sq ft (B2): 0.004 per sq ft; 0.05 to 4 is typical.",
      todo: "Check the spacing, the unit, and which bed it counts.",
    },
  ]);
  expect(findWith(proportion, counted("Stakes", 9, "Edging (ft)", 100))[0]!.seen).toBe(
    "“Front walk”, “Stakes” is 9 stakes for 100 ft (B2): 0.09 per ft; 0.1 to 3 is typical.",
  );
});

test("too few and too many in one column are two findings", () => {
  const rows = [
    ["Bed", "Area (sq ft)", "Pins", "Edging (ft)", "Stakes"],
    ["Front walk", 1000, 4, 100, 9],
    ["Side yard", 1000, 5, 100, 40],
    ["Patio", 1000, 4001, 100, 40],
  ];
  expect(findWith(proportion, rows).map(({ cells }) => cells)).toEqual([["C2", "C3"], ["C4"], ["E2"]]);
});
