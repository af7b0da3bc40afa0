import { expect, test } from "vitest";
import { inWholeUnits } from "./units";

test("takes the largest part that all lengths are made of", () => {
  // Feet and inches: twelfths. 1/3 and 1/4: twelfths as well. 0.1 and 0.25: twentieths.
  expect(inWholeUnits(8, 0, [2 + 5 / 12, 6.5])).toMatchObject({ lengths: [29, 78], stock: 96, capacity: 96 });
  expect(inWholeUnits(1, 0, [1 / 3, 0.25]).lengths).toEqual([4, 3]);
  expect(inWholeUnits(1, 0, [0.1, 0.25]).lengths).toEqual([2, 5]);
  // 0.1 + 0.2 is 0.30000000000000004 in binary, and 3 tenths all the same.
  expect(inWholeUnits(1, 0, [0.1 + 0.2]).lengths).toEqual([3]);
});

test("counts the loss of one cut to the capacity, since n pieces need n - 1 cuts", () => {
  expect(inWholeUnits(8, 0.125 / 12, [3])).toMatchObject({ stock: 768, loss: 1, capacity: 769 });
});

test("gives lengths back in the caller's unit", () => {
  const { lengthOf, stock } = inWholeUnits(1, 0, [1 / 3]);
  expect(lengthOf(stock)).toBe(1);
  expect(lengthOf(1)).toBe(1 / 3);
});

test("divides the stock finely where lengths have no common part, and lets it be longer by a 1e-9th", () => {
  const { lengths, stock, capacity, lengthOf } = inWholeUnits(Math.PI, 0, [Math.SQRT2]);
  expect(stock).toBe(1e12);
  expect(capacity).toBe(1e12 + 1000);
  expect(lengths[0]).toBe(Math.round((Math.SQRT2 / Math.PI) * 1e12));
  expect(lengthOf(lengths[0]!)).toBeCloseTo(Math.SQRT2, 8);
});

test("copes with the smallest and the largest numbers there are", () => {
  expect(inWholeUnits(5e-324, 0, [5e-324])).toMatchObject({ lengths: [1e12], stock: 1e12 });
  expect(inWholeUnits(8e307, 8e307, [4e307])).toMatchObject({ lengths: [25e10], stock: 5e11 });
});
