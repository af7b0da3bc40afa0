import { expect, test } from "vitest";
import { reads } from "./references";

test.each([
  ["=Rate_waste*2", true],
  ["=rate_WASTE", true],
  ["=Rates!B5", true],
  ["=SUM(First:Rates!B5)", true],
  ["='Our rates'!B5+1", true],
  ["='Smith''s'!A1", true],
  ["=Rate_waste_2", false],
  ['="Rate_waste"&"Rates!B5"', false],
  ["=Other!B5", false],
  ["='Rate_waste of old'!A1", false],
  ["=[Book]Rates!B5", false],
  ["Rate_waste", false],
  [7, false],
])("%s reads what goes: %s", (formula, isReader) => {
  expect(reads(formula, ["Rate_waste"], ["Rates", "Our rates", "Smith's"])).toBe(isReader);
});
