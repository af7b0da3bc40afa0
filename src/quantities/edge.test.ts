import { expect, test } from "vitest";
import { edgeLength } from "./edge";

test("an edge is as long as its sides together", () => {
  expect(edgeLength([5, 18.5, 5])).toBe(28.5);
  expect(edgeLength([12])).toBe(12);
});

test("each rounded corner saves (2 − π/2)r", () => {
  // By hand: 28.5 − 2 × 0.429204 × 2 = 26.783185
  expect(edgeLength([5, 18.5, 5], 2, 2)).toBeCloseTo(26.783185, 6);
});

test("a square of four corners of half its side is a circle", () => {
  expect(edgeLength([10, 10, 10, 10], 5, 4)).toBeCloseTo(Math.PI * 10, 10);
});

test("corners that need more of the sides than there is are refused", () => {
  expect(() => edgeLength([10, 10, 10, 10], 5.1, 4)).toThrow(/5.1 ft.*5 ft or less/);
  expect(edgeLength([4], 2, 1)).toBeCloseTo(Math.PI, 10);
});
