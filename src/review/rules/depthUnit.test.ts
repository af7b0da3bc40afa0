import { describe, expect, test } from "vitest";
import { findWith } from "../../../test/findWith";
import { depthUnit } from "./depth";

/** What a depth would be changed to, below a heading. */
function fixOf(heading: string, depth: number | string): unknown {
  const [found] = findWith(depthUnit, [
    ["Bed", "Area (sq ft)", heading],
    ["Front walk", 90, depth],
  ]);
  return found?.fix?.C2;
}

describe("a depth in a column of inches", () => {
  // 1 to 12 in are dug and filled (common practice), which is 0.0833 to 1 ft. Under 0.76 in is no depth of stone.
  test.each([
    [0.08, undefined],
    [0.0834, 1.0008],
    [0.25, 3],
    [0.75, 9],
    [0.76, undefined],
    [1, undefined],
    [3, undefined],
    [-0.25, undefined],
    [0, undefined],
  ])("of %f looks like feet, or not", (typed, fixed) => {
    expect(fixOf("Stone depth (in)", typed)).toEqual(fixed);
  });

  test("is also one where no unit is named", () => {
    expect(fixOf("Stone depth", 0.25)).toBe(3);
  });
});

describe("a depth in a column of feet", () => {
  // 3 in are 0.25 ft, 12 in are 1 ft; 1.5 ft and more is no depth of a bed.
  test.each([
    [0.25, undefined],
    [1.49, undefined],
    [1.5, 0.125],
    [3, 0.25],
    [12, 1],
    [12.1, undefined],
  ])("of %f looks like inches, or not", (typed, fixed) => {
    expect(fixOf("Stone depth (ft)", typed)).toEqual(fixed);
  });
});

test.each([
  ["dig depth", "Dig depth (in)", 0.25, 3],
  ["border height", "Border height (in)", 0.5, 6],
  ["trench depth without a unit", "Trench depth", 0.25, 3],
  // A trench may be a fraction of an inch deep where inches are named.
  ["trench depth in inches", "Trench depth (in)", 0.25, undefined],
  ["trench depth in feet", "Trench depth (ft)", 3, 0.25],
  ["depth in centimeters", "Stone depth (cm)", 0.25, undefined],
  ["depth in a few centimeters", "Stone depth (cm)", 8, undefined],
  ["stone size", "Stone size (in)", 0.5, undefined],
  ["worked out depth", "Stone depth (in)", "=3/12", undefined],
])("%s", (_, heading, typed, fixed) => {
  expect(fixOf(heading, typed)).toEqual(fixed);
});

test("the finding names both units and both numbers", () => {
  const rows = [
    ["Bed", "Area (sq ft)", "Stone depth (in)", "Dig depth (ft)"],
    ["Front walk", 90, 0.25, 4],
    ["Side yard", 90, 0.25, 0.25],
  ];
  expect(findWith(depthUnit, rows)).toMatchObject([
    {
      level: "error",
      rank: 95,
      cells: ["C2", "C3"],
      seen: "“Front walk”, “Stone depth (in)” holds 0.25 in, which looks like feet: 3 in. The same in 1 more cell: C3.",
      todo: 'Type 3, or type it with its unit, like 3".',
      fix: { C2: 3, C3: 3 },
    },
    {
      cells: ["D2"],
      // 4 / 12 = 0.333333
      seen: "“Front walk”, “Dig depth (ft)” holds 4 ft, which looks like inches: 4 in.",
      todo: 'Type 0.333, or type it with its unit, like 4".',
      fix: { D2: 0.333333 },
    },
  ]);
});
