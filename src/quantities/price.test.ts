import { expect, test } from "vitest";
import { markupForMargin, priceFromMargin, priceFromMarkup } from "./price";

test("a markup is a share of the cost, a margin a share of the price", () => {
  expect(priceFromMarkup(100, 0.25)).toBe(125);
  expect(priceFromMargin(100, 0.2)).toBe(125);
  expect(markupForMargin(0.2)).toBe(0.25);
  expect(priceFromMarkup(100, 0)).toBe(100);
  expect(priceFromMargin(0, 0.2)).toBe(0);
});

test("no price leaves a margin of all of it", () => {
  for (const call of [() => priceFromMargin(100, 1), () => markupForMargin(1)])
    expect(call).toThrow(/margin: 1 must be under 1/);
});
