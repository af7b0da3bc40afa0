import { describe, expect, test } from "vitest";
import { type Estimate, estimateBed } from "./estimate";
import type { FieldKey } from "./fields";
import { type BedForm, blankForm } from "./form";
import { readForm } from "./read";

type Typed = Partial<Record<FieldKey, string>>;
type Shape = Estimate["amounts"] & { readonly closed: boolean };
const shapeOf = (form: Partial<BedForm>): Shape => {
  const { bed, problems } = readForm({ ...blankForm(), ...form });
  expect(problems).toEqual([]);
  const { amounts, runs } = estimateBed(bed!);
  return { ...amounts, closed: runs.some(({ closed }) => closed) };
};
const expectShape = (found: Shape, wanted: Partial<Shape>) => {
  for (const [key, value] of Object.entries(wanted)) {
    const amount = found[key as keyof Shape];
    if (typeof value === "number") expect(amount, key).toBeCloseTo(value, 9);
    else expect(amount, key).toBe(value);
  }
};

describe("a rectangle of 20 by 6 ft", () => {
  const { PI } = Math;
  const rectangle = (typed: Typed) => shapeOf({ typed: { length: "20", width: "6", ...typed } });

  test.each<[Typed, Partial<Shape>]>([
    // One long side and both ends unless typed: 20 + 6 + 6.
    // A stake at 5' 10 1/2" holds the corner at 6 ft; none is near the one at 26.
    [{}, { stoneArea: 120, fabricLength: 20, fabricWidth: 6, borderRun: 32, cornerStakes: 1, closed: false }],
    [
      { length: "6", width: "20" },
      { stoneArea: 120, fabricLength: 20, fabricWidth: 6, borderRun: 32 },
    ],
    // It starts in one corner; stakes every 1' 11 1/2" are near the one at 6 ft, and the last ones, 1' 8" apart, near none.
    [{ longBorders: "2" }, { borderRun: 52, cornerStakes: 2, closed: true, innerRun: 0 }],
    [
      { longBorders: "2", shortBorders: "1" },
      { borderRun: 46, closed: false },
    ],
    [
      { longBorders: "0", shortBorders: "0" },
      { borderRun: 0, cornerStakes: 0, closed: false },
    ],
    // A corner of radius 2 takes (1 − π/4) × 4 off the area. The plan says what it takes off the edging.
    [{ cornerRadius: "2", roundedCorners: "2" }, { stoneArea: 112 + 2 * PI }],
    [{ cornerRadius: "2", roundedCorners: "4" }, { stoneArea: 104 + 4 * PI }],
    [{ cutOuts: "10" }, { stoneArea: 110 }],
  ])("with %j", (typed, wanted) => {
    expectShape(rectangle(typed), wanted);
  });

  test("loses what is placed in it", () => {
    const cutOuts = [
      ["4", "3", "2", ""], // round, 2 ft across: π
      ["8", "3", "2", "3"], // 2 by 3 ft
    ] as const;
    const found = shapeOf({ typed: { length: "20", width: "6", cutOuts: "10" }, cutOuts });
    expectShape(found, { stoneArea: 120 - 10 - PI - 6, fabricLength: 20 });
  });
});

test.each<[Typed, Partial<Shape>]>([
  [{}, { stoneArea: 25 * Math.PI, fabricLength: 10, fabricWidth: 10, borderRun: 10 * Math.PI, innerRun: 0 }],
  [{ innerDiameter: "4" }, { stoneArea: 21 * Math.PI, innerRun: 0, closed: true, cornerStakes: 0 }],
  [
    { innerDiameter: "4", innerBorder: "1" },
    { borderRun: 10 * Math.PI, innerRun: 4 * Math.PI },
  ],
  [{ cutOuts: "10" }, { stoneArea: 25 * Math.PI - 10 }],
])("a round bed of 10 ft with %j", (typed, wanted) => {
  expectShape(shapeOf({ way: "round", typed: { diameter: "10", ...typed } }), wanted);
});

describe("a bed by widths of 3, 5 and 4 ft every 4 ft", () => {
  // Simpson: 4 ÷ 3 × (3 + 4 × 5 + 4) = 36. The edge runs √(4² + 2²) + √(4² + 1²).
  const edge = Math.sqrt(20) + Math.sqrt(17);
  const byWidths = (typed: Typed) =>
    shapeOf({ way: "widths", typed: { spacing: "4", ...typed }, widths: ["3", "5", "4", "", ""] });

  test.each<[Typed, Partial<Shape>]>([
    [{}, { stoneArea: 36, fabricLength: 8, fabricWidth: 5, borderRun: edge + 3 + 4, innerRun: 0, closed: false }],
    [{ endBorders: "1" }, { borderRun: edge + 3 }],
    [{ endBorders: "0" }, { borderRun: edge }],
    [{ cutOuts: "10" }, { stoneArea: 26 }],
  ])("with %j", (typed, wanted) => {
    expectShape(byWidths(typed), wanted);
  });
});

test("an outline has border after the points that say so, and is closed where all do", () => {
  // A right triangle of 3, 4 and 5 ft, away from the stake.
  const outline = (...borders: string[]) =>
    shapeOf({
      way: "points",
      typed: {},
      points: [
        ["10", "-5", borders[0]!],
        ["14", "-5", borders[1]!],
        ["10", "-2", borders[2]!],
      ],
    });
  expectShape(outline("1", "1", "1"), { stoneArea: 6, fabricLength: 4, fabricWidth: 3, borderRun: 12, closed: true });
  expectShape(outline("1", "1", "0"), { borderRun: 9, closed: false, innerRun: 0 });
  expectShape(outline("0", "0", "1"), { borderRun: 3 });
});

describe("a bed whose area is known", () => {
  const known = { area: "100", edge: "30", longest: "8", widest: "20" };

  test("spans its longest run by its widest place", () => {
    const wanted = { stoneArea: 100, fabricLength: 20, fabricWidth: 8, borderRun: 30, innerRun: 0, closed: false };
    expectShape(shapeOf({ way: "area", typed: known }), wanted);
  });

  test("has to be larger than what is deducted", () => {
    expectShape(shapeOf({ way: "area", typed: { ...known, cutOuts: "99" } }), { stoneArea: 1 });
    expect(() => shapeOf({ way: "area", typed: { ...known, cutOuts: "100" } })).toThrow(
      expect.objectContaining({ kind: "value", argument: "cut_outs" }),
    );
  });
});
