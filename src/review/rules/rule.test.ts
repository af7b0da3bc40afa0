import { expect, test } from "vitest";
import { offBy } from "./rule";

test.each([
  [110, 100, 10],
  [90, 100, 10],
  [-90, -100, 10],
  [100, 100, 0],
  [100.4, 100, 0],
  [100.5, 100, 1],
  [350, 100, 100],
  [0, 100, 100],
  [0, 0, 0],
  [5, 0, 100],
])("%f where %f should be is off by %i percent", (is, shouldBe, percent) => {
  expect(offBy(is, shouldBe, 40)).toBe(percent);
});

test("a number that isn't known is off by what usually is", () => {
  expect(offBy(undefined, 100, 40)).toBe(40);
  expect(offBy(100, undefined, 40)).toBe(40);
});
