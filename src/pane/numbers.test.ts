import { expect, test } from "vitest";
import { amountWithUnit, dollarText, shareText } from "./numbers";

test.each([
  [1, "boxes", "1 box"],
  [2, "boxes", "2 boxes"],
  [1, "pieces", "1 piece"],
  [1, "stakes", "1 stake"],
  [0.82, "tons", "0.82 tons"],
  [1234.567, "sq ft", "1,234.57 sq ft"],
  [1, "sq ft", "1 sq ft"],
])("%d %s are shown as %s", (value, unit, text) => {
  expect(amountWithUnit(value, unit)).toBe(text);
});

test("money has two decimals, and a share one", () => {
  expect(dollarText(1203.5)).toBe("$1,203.50");
  expect(shareText(0.2)).toBe("20.0%");
  expect(shareText(undefined)).toBe("none");
});
