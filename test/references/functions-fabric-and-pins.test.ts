import { describe, expect, test } from "vitest";
import { FABRIC_STRIPS, PINS } from "../../src/functions/index";

test("strips: width 11, roll 6, overlap 1 ft is 2 exactly; 11.01 is 3; 20, 6, 1.5 ft is 5 (computed)", () => {
  expect(FABRIC_STRIPS(11, 6, 12)).toBe(2);
  expect(FABRIC_STRIPS(11.01, 6, "1 ft")).toBe(3);
  expect(FABRIC_STRIPS(20, 6, 18)).toBe(5);
});

describe("one strip is a five-spot on squares of side s: (L/s + 1)(W/s + 1) + (L/s)(W/s) (computed)", () => {
  test.each([
    [12, 12, 3, 41],
    [24, 12, 3, 77],
    [30, 20, 5, 59],
  ])("%d × %d at %d ft: %d", (length, width, side, pins) => {
    // Rows of pairs stand a side apart, with a row of singles half-way: the spacing is half a side.
    expect(PINS(length, width, width, 0, (side / 2) * 12, 0, side)).toBe(pins);
  });
});

test("common practice: one pin in each corner, rows at most 12 in apart, pairs and singles in turn", () => {
  expect(PINS(18.5, 5, 6, 6)).toBe(2 * 11 + 1 * 11 + 2 * 9); // 19 intervals: 11 rows with edges, 9 of centers, 2 bays
});
