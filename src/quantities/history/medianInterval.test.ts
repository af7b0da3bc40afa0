import { describe, expect, test } from "vitest";
import { medianInterval } from "./medianInterval";

const upTo = (count: number) => Array.from({ length: count }, (_, n) => n + 1);

describe("the interval of a median", () => {
  // Places from either end and coverage by hand from the rows of Pascal's triangle: 1 − 2·(1 + n + …)/2^n.
  test.each([
    [1, 1, 1, 0],
    [4, 1, 4, 1 - 2 / 16],
    [5, 1, 5, 1 - 2 / 32],
    [6, 1, 6, 1 - 2 / 64],
    [8, 1, 8, 1 - 2 / 256],
    [9, 2, 8, 1 - 20 / 512],
    [12, 3, 10, 1 - (2 * (1 + 12 + 66)) / 4096],
    [20, 6, 15, 1 - (2 * (1 + 20 + 190 + 1140 + 4845 + 15504)) / 2 ** 20],
  ])("of %d values goes from the value at place %d to that at %d", (count, low, high, coverage) => {
    const found = medianInterval(upTo(count));
    expect([found.low, found.high]).toEqual([low, high]);
    expect(found.coverage).toBeCloseTo(coverage, 12);
  });

  test("does not mind the order of the values", () => {
    expect(medianInterval([3, 1, 2])).toEqual(medianInterval([1, 2, 3]));
    expect(medianInterval([4, 1, 3, 2]).median).toBe(2.5);
  });

  test("is hardly moved by a value that is far off", () => {
    expect(medianInterval([0.9, 1, 1.1, 1.2, 1.3, 1.4, 250]).median).toBe(1.2);
  });

  test("works for thousands of values", () => {
    const found = medianInterval(upTo(3000));
    expect(found.coverage).toBeGreaterThanOrEqual(0.95);
    expect(found.coverage).toBeLessThan(0.96);
    // About 1.96·√n/2 places to either side of the middle: 54.
    expect(found.high - found.median).toBeGreaterThan(50);
    expect(found.high - found.median).toBeLessThan(58);
  });

  test("needs a value", () => {
    expect(() => medianInterval([])).toThrow(RangeError);
  });
});
