import { expect, test } from "vitest";
import {
  INCHES_PER_FOOT,
  KILOGRAMS_PER_POUND,
  METERS_PER_FOOT,
  SQUARE_FOOT_INCHES_PER_CUBIC_YARD,
  TENTH_MILLIMETERS,
} from "./units";
import { wholeUp } from "./whole";

test.each([
  [0, 0],
  [2, 2],
  [2.001, 3],
  [2.9999999999, 3],
  [2.0000000001, 2],
  [5e-10, 0], // under 1 the tolerance is 1e-9 itself
  [2e-9, 1],
  [1_000_000.0005, 1_000_000], // a share of 5e-10
  [1_000_000.002, 1_000_001],
])("%f things to buy are %d", (amount, whole) => {
  expect(wholeUp(amount)).toBe(whole);
});

// NIST Handbook 44, Appendix C: 1 ft = 0.3048 m and 1 in = 25.4 mm exactly. A cubic yard is 27 cu ft.
test("units are exact", () => {
  expect(KILOGRAMS_PER_POUND).toBe(0.45359237);
  expect(METERS_PER_FOOT).toBeCloseTo(0.3048, 15);
  expect(TENTH_MILLIMETERS.ft).toBe(INCHES_PER_FOOT * TENTH_MILLIMETERS.in);
  expect(TENTH_MILLIMETERS.in).toBe(254);
  expect(SQUARE_FOOT_INCHES_PER_CUBIC_YARD).toBe(12 * 27);
});
