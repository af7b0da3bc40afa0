import { describe, expect, test } from "vitest";
import { orderUp, stoneBags, stoneCovers, stoneDepth, stoneTons, stoneYards } from "./stoneAmounts";

describe("stone depth", () => {
  test("is what the border leaves above the floor, less the gap", () => {
    expect(stoneDepth(4, 1.5, 0.5)).toBe(2);
    expect(stoneDepth(4, 0, 0)).toBe(4);
  });

  test("must not be used up", () => {
    expect(() => stoneDepth(4, 3.5, 0.5)).toThrow(/4 in, and trench_depth_in and top_gap_in take 4 in of it/);
    // 4 − 3.4 − 0.6 is 1.1e-16 in binary, and still nothing.
    expect(() => stoneDepth(4, 3.4, 0.6)).toThrow(/leaving no depth/);
  });
});

describe("stone", () => {
  test("is a cubic yard for 108 square feet 3 in deep", () => {
    expect(stoneYards(108, 3)).toBe(1);
    expect(stoneYards(108, 3, 0.1)).toBeCloseTo(1.1, 12);
    expect(stoneTons(108, 3, 1.35, 0.1)).toBeCloseTo(1.485, 12);
  });

  test("covers what it was calculated for", () => {
    expect(stoneCovers(stoneTons(90.78, 2, 1.3), 2, 1.3)).toBeCloseTo(90.78, 10);
    expect(stoneCovers(0, 2, 1.3)).toBe(0);
  });

  test("comes in whole bags, and an exact fit is not bumped", () => {
    expect(stoneBags(20, 2, 0.5)).toBe(7); // 3.333 ft³ / 0.5 = 6.67
    expect(stoneBags(6, 2, 0.1)).toBe(10); // 1 ft³ exactly
  });
});

describe("an order", () => {
  test("goes up to the next whole step", () => {
    expect(orderUp(6.02, 0.5)).toBe(6.5);
    expect(orderUp(6.5, 0.5)).toBe(6.5);
    expect(orderUp(6.01, 1)).toBe(7);
    expect(orderUp(0.3, 0.1)).toBe(0.3);
    expect(orderUp(0.25, 0.1)).toBe(0.3);
    expect(orderUp(5, 3)).toBe(6);
  });

  test("reaches the yard's minimum, in whole steps", () => {
    expect(orderUp(1.2, 0.5, 3)).toBe(3);
    expect(orderUp(1.2, 2, 3)).toBe(4);
    expect(orderUp(4, 0.5, 3)).toBe(4);
  });

  test("of nothing stays nothing, and of a trace is a step", () => {
    expect(orderUp(0, 0.5, 3)).toBe(0);
    expect(orderUp(1e-12, 0.5)).toBe(0.5);
  });
});
