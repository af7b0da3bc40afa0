import { describe, expect, test } from "vitest";
import { reads, receiptOf, refuseChanged, refuseRead } from "./undo";

describe("an insert that can't be undone", () => {
  test("names three of the cells that were changed", () => {
    const refused = () => refuseChanged("estimate", ["B1", "B2", "B3", "B4", "B5"]);
    expect(refused).toThrow(/\(B1, B2, B3[^B]*2[^B]*\)/);
    expect(refused).not.toThrow(/B4/);
  });

  test("names three of the formulas that read it", () => {
    const refused = () => refuseRead("estimate", ["C1", "C2", "C3", "C4"]);
    expect(refused).toThrow(/\(C1, C2, C3[^C]*1[^C]*\)/);
    expect(refused).not.toThrow(/C4/);
  });

  test("is refused for nothing where nothing changed", () => {
    expect(() => refuseChanged("estimate", [])).not.toThrow();
    expect(() => refuseRead("estimate", [])).not.toThrow();
  });

  test.each([
    ["none", /nothing to undo/],
    ["later", /newer version/],
    ["damaged", /damaged/],
  ] as const)("says why where its record is %s", (state, words) => {
    expect(() => receiptOf({ state })).toThrow(words);
  });
});

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
