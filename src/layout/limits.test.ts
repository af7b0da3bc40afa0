import { describe, expect, test } from "vitest";
import type { CutOut, PointsBed } from "./bed";
import { layOutBed } from "./layOutBed";

const rules = { rollWidthFt: 6, rollLengthFt: 50, overlapIn: 6 };
const field: PointsBed["points"] = [
  { x: 0, y: 0 },
  { x: 100, y: 0 },
  { x: 120, y: 50 },
  { x: 0, y: 60 },
];
const bed: PointsBed = { kind: "points", points: field };
const square: PointsBed = { ...bed, points: [field[0]!, { x: 100, y: 0 }, { x: 100, y: 60 }, { x: 0, y: 60 }] };

/** Corners on a circle, so that no sides cross. */
const ring = (corners: number): PointsBed => ({
  kind: "points",
  points: Array.from({ length: corners }, (_, place) => {
    const turn = (2 * Math.PI * place) / corners;
    return { x: 40 * Math.cos(turn), y: 40 * Math.sin(turn) };
  }),
});

describe("what can only be a mistake of units is refused before the work is done", () => {
  test.each([0.02, 2e-11, 2e-302])("pins %d in apart over a field", (pinSpacingIn) => {
    for (const one of [bed, square])
      expect(() => layOutBed(one, { ...rules, pinSpacingIn })).toThrow(
        /^This would take (\d+ pins, more|more pins) than the \d+ that can be laid out\. Check your units/,
      );
  });

  test("bays of a hair", () => {
    expect(() => layOutBed(bed, { ...rules, bayFt: 1e-4 })).toThrow(/places for pins, more than the 1000000/);
  });

  test("corners by the thousand, while a few hundred are fine", () => {
    expect(layOutBed(ring(400), rules).counts.pins).toBeGreaterThan(1000);
    expect(() => layOutBed(ring(2001), rules)).toThrow(/2001 corners, more than the 2000/);
    expect(() => layOutBed({ kind: "widths", spacingFt: 1, widthsFt: Array(2001).fill(4) }, rules)).toThrow(
      /2001 widths, more than the 2000/,
    );
  });

  test("cut-outs by the hundred", () => {
    const cutOuts = Array.from({ length: 101 }, (_, place): CutOut => {
      return { kind: "circle", center: { x: 2 + (place % 25) * 3, y: 2 + Math.floor(place / 25) * 3 }, diameterFt: 1 };
    });
    expect(() => layOutBed({ ...square, cutOuts }, rules)).toThrow(/101 cut-outs, more than the 100/);
    expect(layOutBed({ ...square, cutOuts: cutOuts.slice(0, 20) }, rules).cutAroundFt).toBeGreaterThan(20 * 3);
  });

  test("a measure beyond all beds, and no message ever says Infinity", () => {
    const far = { kind: "circle", center: { x: 5, y: 5 }, diameterFt: Number.MAX_VALUE } as const;
    expect(() => layOutBed({ ...square, cutOuts: [far] }, rules)).toThrow(
      /^A bed measurement: 1\.79\S* is too large\. Type 1,000,000 ft or less\.$/,
    );
    expect(() => layOutBed({ kind: "rectangle", lengthFt: 1e300, widthFt: 4 }, rules)).toThrow(/too large/);
  });
});
