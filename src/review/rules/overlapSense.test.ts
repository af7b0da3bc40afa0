import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import { overlapSense } from "./ratios";

const lapped = (overlap: number, rollFt: number | "" = 6, heading = "Overlap (in)") => [
  ["Bed", heading, "Roll width (ft)"],
  ["Front walk", overlap, rollFt],
  ["Side yard", "", 6],
];

describe("an overlap of fabric", () => {
  // Under 1 in strips come apart; over a third of a 6 ft (72 in) roll, 24 in, is fabric thrown away (common practice).
  test.each([
    [0, undefined],
    [0.5, "warning"],
    [0.99, "warning"],
    [1, undefined],
    [6, undefined],
    [24, undefined],
    [24.1, "warning"],
    [71, "warning"],
    [72, "error"],
    [80, "error"],
  ])("of %f in on a 6 ft roll", (overlap, level) => {
    expect(findWith(overlapSense, lapped(overlap)).map((one) => one.level)).toEqual(level === undefined ? [] : [level]);
  });

  test("can be too little, but not too much, where no one says how wide the roll is", () => {
    expect(cellsFound(overlapSense, lapped(0.5, ""))).toEqual(["B2"]);
    expect(cellsFound(overlapSense, lapped(80, ""))).toEqual([]);
  });

  test("in feet is turned into inches first", () => {
    expect(cellsFound(overlapSense, lapped(0.5, 6, "Overlap (ft)"))).toEqual([]);
  });

  test("is not looked for in other measures", () => {
    expect(cellsFound(overlapSense, lapped(0.5, 6, "Stone depth (in)"))).toEqual([]);
  });

  test("that is too little looks like feet", () => {
    expect(findWith(overlapSense, lapped(0.5))).toMatchObject([
      {
        rank: 20,
        cells: ["B2"],
        related: ["C2"],
        seen: "“Front walk”, “Overlap (in)” laps 0.5 in; it looks like feet: 6 in.",
        todo: "Check the unit; 6 to 12 in is common practice.",
      },
    ]);
  });

  test("that is too much is compared with the roll", () => {
    expect(findWith(overlapSense, lapped(72))).toMatchObject([
      { rank: 70, related: ["C2"], seen: "“Front walk”, “Overlap (in)” laps 72 in of a roll 72 in wide (C2)." },
    ]);
  });

  test("has nothing to point to where there is no roll", () => {
    expect(findWith(overlapSense, lapped(0.5, ""))[0]!.related).toEqual([]);
  });

  test("is one finding down a column", () => {
    const rows = [
      ["Bed", "Overlap (in)", "Bed", "Overlap (in)"],
      ["Front walk", 0.5, "Patio", 0.5],
      ["Side yard", 0.5, "Gate", 6],
    ];
    expect(findWith(overlapSense, rows).map(({ cells }) => cells)).toEqual([["B2", "B3"], ["D2"]]);
  });
});
