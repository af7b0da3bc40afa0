import { expect, test } from "vitest";
import { digYards, spoilYards } from "./digging";

test("a scrape of 324 square feet an inch deep is a cubic yard", () => {
  expect(digYards(324, 1)).toBe(1);
  expect(digYards(108, 3)).toBe(1);
});

test("the trench is cut below the scrape and adds to it", () => {
  // By hand: a trench 81 ft × 4 in × 12 in = 81 × 1/3 × 1 = 27 ft³ = 1 yd³
  expect(digYards(324, 1, 81, 4, 12)).toBeCloseTo(2, 12);
});

test("soil takes more room once it is dug", () => {
  expect(spoilYards(10, 0.3)).toBe(13);
  expect(spoilYards(0, 0.3)).toBe(0);
});
