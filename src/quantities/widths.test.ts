import { describe, expect, test } from "vitest";
import { areaWidths, edgeWidths } from "./widths";

describe("area from widths", () => {
  test("of even width is length times width by either rule, for any number of widths", () => {
    for (const count of [2, 3, 4, 5, 8])
      for (const rule of ["simpson", "trapezoid"] as const)
        expect(areaWidths(3, Array(count).fill(4), rule)).toBeCloseTo(3 * (count - 1) * 4, 10);
  });

  test("by Simpson's rule is exact for a parabola and a cubic", () => {
    // ∫ x² from 0 to 4 = 64/3, ∫ x³ = 64
    expect(areaWidths(1, [0, 1, 4, 9, 16])).toBeCloseTo(64 / 3, 12);
    expect(areaWidths(1, [0, 1, 8, 27, 64])).toBeCloseTo(64, 12);
    expect(areaWidths(1, [0, 1, 4, 9, 16], "trapezoid")).toBe(22);
  });

  test("takes the last interval straight where their number is odd", () => {
    // By hand: Simpson on 2, 3, 2 at 1: (2 + 12 + 2)/3 = 16/3; then (2 + 0)/2 = 1
    expect(areaWidths(1, [2, 3, 2, 0])).toBeCloseTo(16 / 3 + 1, 12);
    expect(areaWidths(6, [2, 4])).toBe(18);
  });

  test("may run to a point at its ends, but not be nothing all along", () => {
    expect(areaWidths(5, [0, 3, 0])).toBe(20);
    expect(() => areaWidths(5, [0, 0, 0])).toThrow(/all 0/);
  });

  test("needs two widths", () => {
    expect(() => areaWidths(5, [3])).toThrow(/widths has 1. Give at least 2/);
  });
});

describe("outer edge through widths", () => {
  test("goes straight from one width to the next", () => {
    expect(edgeWidths(4, [0, 3, 0])).toBe(10); // two 3-4-5 triangles
    expect(edgeWidths(3, [2, 2, 2])).toBe(6);
  });

  test("needs two widths", () => {
    expect(() => edgeWidths(4, [1])).toThrow(/Give at least 2/);
  });
});
