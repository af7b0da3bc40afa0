import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import { argumentUnit } from "./units";

/** Tons of one bed, with headings for its area and depth. */
const ordered = (
  { area = "Area (sq ft)", depth = "Depth (in)", rock = "Density (tons/cu yd)", waste = "Waste" },
  formula = "=BED.STONE_TONS(B2,C2,D2,E2)",
) => [
  ["Bed", area, depth, rock, waste, "Order"],
  ["Front walk", 90, 3, 1.35, 0.08, formula],
];

describe("a cell that a function takes in another unit", () => {
  test.each([
    ["nothing where units agree", {}, undefined],
    ["a depth in feet", { depth: "Depth (ft)" }, "error"],
    ["a depth in millimeters", { depth: "Depth (mm)" }, "error"],
    ["an area in square yards", { area: "Area (sq yd)" }, "error"],
    ["an area in square inches", { area: "Area (sq in)" }, "error"],
    ["a length for an area", { area: "Length (ft)" }, "warning"],
    ["a weight for a depth", { depth: "Stone (tons)" }, "warning"],
    ["pounds a cubic foot for the stone", { rock: "Density (lb/cu ft)" }, "error"],
    ["nothing where no unit is named", { area: "Size", depth: "Depth" }, undefined],
    ["nothing for a share", { waste: "Waste (ft)" }, undefined],
    ["nothing for money, which measures no bed", { depth: "Price ($)" }, undefined],
    ["nothing for a count", { depth: "Beds (each)" }, undefined],
  ])("%s", (_, headings, level) => {
    expect(findWith(argumentUnit, ordered(headings)).map((one) => one.level)).toEqual(level ? [level] : []);
  });

  test.each([
    ["a depth turned into inches in the formula", "=BED.STONE_TONS(B2,C2*12,D2,E2)", []],
    ["a depth turned the wrong way", "=BED.STONE_TONS(B2,C2/12,D2,E2)", ["F2"]],
    ["a depth left out", "=BED.STONE_TONS(B2,,D2,E2)", []],
    ["a depth typed into the formula", "=BED.STONE_TONS(B2,3,D2,E2)", []],
    ["another function's argument", "=SUM(C2)", []],
    ["a function inside another", "=ROUNDUP(BED.STONE_TONS(B2,C2,D2),0)", ["F2"]],
  ])("%s", (_, formula, found) => {
    expect(cellsFound(argumentUnit, ordered({ depth: "Depth (ft)" }, formula))).toEqual(found);
  });

  test("counts and pairs of the roll are not measures", () => {
    const rows = [
      ["Bed", "Trips (ft)", "Distance (ft)", "Hours"],
      ["Front walk", 12, 60, "=BED.HAUL_HOURS(B2,C2)"],
    ];
    expect(cellsFound(argumentUnit, rows)).toEqual([]);
  });

  test("says which cell, which argument, and how far off", () => {
    expect(findWith(argumentUnit, ordered({ depth: "Depth (ft)" }))).toMatchObject([
      {
        level: "error",
        rank: 90,
        cells: ["F2"],
        related: ["C2"],
        // A number of feet taken as inches gives a twelfth of the stone.
        seen:
          "“Front walk”, “Order” gives C2 (“Front walk”, “Depth (ft)”, in ft) to depth_in of BED.STONE_TONS, " +
          "which takes inches: 12 times too small.",
        todo: "Convert it to inches in the formula, or correct the heading.",
        fix: undefined,
      },
    ]);
    expect(findWith(argumentUnit, ordered({ area: "Length (ft)" }))).toMatchObject([
      {
        level: "warning",
        rank: 60,
        seen:
          "“Front walk”, “Order” gives B2 (“Front walk”, “Length (ft)”, in ft) to area of BED.STONE_TONS, " +
          "which takes square feet: that's a different kind of measurement.",
        todo: "Check that it reads the right cell.",
      },
    ]);
  });

  test("has no cell to name where the argument is worked out", () => {
    expect(findWith(argumentUnit, ordered({ depth: "Depth (ft)" }, "=BED.STONE_TONS(B2,C2/12,D2,E2)"))).toMatchObject([
      {
        related: [],
        seen:
          "“Front walk”, “Order” gives what it is given to depth_in of BED.STONE_TONS, which takes inches: " +
          "144 times too small.",
      },
    ]);
  });

  test("is one finding for each argument where it was filled down", () => {
    const rows = [
      ["Bed", "Area (sq yd)", "Depth (ft)", "Order"],
      ["Front walk", 90, 3, "=BED.STONE_YARDS(B2,C2)"],
      ["Side yard", 80, 3, "=BED.STONE_YARDS(B3,C3)"],
    ];
    expect(findWith(argumentUnit, rows).map(({ cells, related }) => [cells, related])).toEqual([
      [
        ["D2", "D3"],
        ["B2", "B3"],
      ],
      [
        ["D2", "D3"],
        ["C2", "C3"],
      ],
    ]);
  });
});
