import Qty from "js-quantities";
import { describe, expect, test } from "vitest";
import { FEET, INCHES } from "../../src/functions/index";

// 1 yd = 0.9144 m exactly (NIST Handbook 44, Appendix C; seen), so 1 in = 25.4 mm.
describe("tape text against exact conversions from NIST Handbook 44, Appendix C", () => {
  test.each([
    ["9.8 m", 9.8 / 0.3048],
    ["75 mm", 0.075 / 0.3048],
    ["40 cm", 0.4 / 0.3048],
    ["2 yd", 6],
    ["25.4 mm", 1 / 12],
    ["0.9144 m", 3],
  ])("%s", (text, feet) => {
    expect(FEET(text)).toBeCloseTo(feet, 12);
    expect(INCHES(text)).toBeCloseTo(feet * 12, 11);
  });
});

describe("tape text against js-quantities", () => {
  const texts = ["32 ft", "6.5 in", "9.8 m", "75 mm", "40 cm", "2 yd", "123.456 m", "0.3 mm", "17.25 yd"];
  test.each(texts)("%s", (text) => {
    const feet = Qty(text).to("ft").scalar;
    expect(FEET(text) / feet).toBeCloseTo(1, 9);
    expect(INCHES(text) / Qty(text).to("in").scalar).toBeCloseTo(1, 9);
  });

  test("feet and inches together", () => {
    const together = Qty("32 ft").add(Qty("6.5 in")).to("ft").scalar;
    expect(FEET(`32' 6 1/2"`)).toBeCloseTo(together, 9);
  });
});
