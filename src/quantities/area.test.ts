import { describe, expect, test } from "vitest";
import { areaRectangle, areaRound, areaTriangle } from "./area";
import { Problem } from "./problem";

describe("a rectangle", () => {
  test("has length times width", () => {
    expect(areaRectangle(18.5, 5)).toBe(92.5);
  });

  test("loses (1 − π/4)r² at each rounded corner", () => {
    // By hand: 92.5 − 2 × 0.214602 × 4 = 90.783185
    expect(areaRectangle(18.5, 5, 2, 2)).toBeCloseTo(90.783185, 6);
  });

  test("with four corners of half its side is a disc", () => {
    expect(areaRectangle(10, 10, 5, 4)).toBeCloseTo(Math.PI * 25, 10);
  });

  test("takes one corner up to its shorter side, two or more up to half of it", () => {
    expect(areaRectangle(20, 5, 5, 1)).toBeCloseTo(100 - (1 - Math.PI / 4) * 25, 10);
    expect(() => areaRectangle(20, 5, 5.01, 1)).toThrow(/5.01 ft.*5 ft or less/);
    expect(areaRectangle(20, 5, 2.5, 2)).toBeCloseTo(100 - 2 * (1 - Math.PI / 4) * 6.25, 10);
    expect(() => areaRectangle(20, 5, 2.51, 2)).toThrow(/2.51 ft.*2.5 ft or less/);
  });

  test("takes a radius that fits exactly but for binary arithmetic", () => {
    expect(areaRectangle(9, 3 * 0.2, 0.3 + 1e-16, 4)).toBeGreaterThan(0);
    expect(areaRectangle(9, 0.6, 0.1 + 0.2, 4)).toBeGreaterThan(0);
  });

  test("does not look at a radius of corners that are not there", () => {
    expect(areaRectangle(4, 4, 99, 0)).toBe(16);
  });

  test("loses its cut-outs, and is refused where they leave nothing", () => {
    expect(areaRectangle(10, 10, 0, 0, [4, 6])).toBe(90);
    expect(() => areaRectangle(10, 10, 0, 0, [60, 40])).toThrow(/come to 100 sq ft, and the bed has 100/);
    expect(() => areaRectangle(0.1, 3, 0, 0, [0.3])).toThrow(/nothing is left/);
    expect(() => areaRectangle(100, 40, 0, 0, [4000 - 3e-6])).toThrow(/nothing is left/); // a share of 7.5e-10
    expect(areaRectangle(100, 40, 0, 0, [4000 - 5e-6])).toBeCloseTo(5e-6, 9);
  });

  test("too large for a number is the caller's to refuse", () => {
    expect(areaRectangle(1e200, 1e200)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("a triangle", () => {
  test("of sides 3, 4, 5 in any order has 6", () => {
    for (const [a, b, c] of [
      [3, 4, 5],
      [5, 3, 4],
      [4, 5, 3],
      [5, 4, 3],
    ] as const)
      expect(areaTriangle(a, b, c)).toBe(6);
  });

  test("that is thin as a needle keeps its digits", () => {
    // Sides from W. Kahan, Miscalculating Area and Angles of a Needle-like Triangle (from memory). By hand:
    // √(200000 × 0.00008 × 0.0005 × 200000) / 4 = √1600 / 4 = 10, to six digits.
    expect(areaTriangle(100000, 99999.99979, 0.00029)).toBeCloseTo(10, 4);
  });

  test("whose sides do not meet, or lie flat, is refused with the sides", () => {
    expect(() => areaTriangle(1, 2, 4)).toThrow(/1, 2 and 4 ft, which can't make a triangle/);
    expect(() => areaTriangle(1, 2, 3)).toThrow(Problem);
    expect(() => areaTriangle(0.1, 0.2, 0.3)).toThrow(Problem);
    expect(() => areaTriangle(0.1 + 0.2, 0.1, 0.2)).toThrow(Problem);
    // As flat as a 1e-15th of the longest side.
    expect(() => areaTriangle(1e6, 5e5, 5e5 + 1e-9)).toThrow(Problem);
  });
});

describe("a round bed", () => {
  test("has πd²/4, and a ring the difference of two", () => {
    expect(areaRound(2)).toBeCloseTo(Math.PI, 12);
    expect(areaRound(10, 3)).toBeCloseTo((Math.PI / 4) * (100 - 9), 12);
  });

  test("needs an inner diameter smaller than the outer", () => {
    expect(() => areaRound(3, 3)).toThrow(/inner_diameter is 3 ft.*less than the diameter, 3 ft/);
    expect(() => areaRound(3, 4)).toThrow(Problem);
  });
});
