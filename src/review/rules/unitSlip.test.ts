import { describe, expect, test } from "vitest";
import { timesOff, unitSlip } from "./units";

describe("a factor that comes from a mistaken unit", () => {
  // Exact by NIST Handbook 44, Appendix C: 12 in = 1 ft, 27 cu ft = 1 cu yd, 2,000 lb = 1 short ton, 25.4 mm = 1 in.
  test.each([
    [12, "feet and inches"],
    [144, "square feet and square inches"],
    [1728, "feet and inches, three times over"],
    [27, "cubic feet and cubic yards"],
    // A cubic yard covers 27 x 12 = 324 sq ft an inch deep.
    [324, "square feet times inches and cubic yards"],
    [9, "square feet and square yards"],
    [3, "feet and yards"],
    [36, "inches and yards"],
    [2000, "pounds and tons"],
    [54000, "pounds per cubic foot and tons per cubic yard"],
    // 2,000 / 27
    [74.074, "pounds per cubic foot and tons per cubic yard"],
    // 1 m = 1,000 / 25.4 in
    [39.37, "inches and meters"],
    [25.4, "inches and millimeters"],
    [304.8, "feet and millimeters"],
    [2.54, "inches and centimeters"],
    // 1 m = 1 / 0.3048 ft
    [3.28084, "feet and meters"],
    [10.7639, "square feet and square meters"],
  ])("%f: %s, either way", (times, words) => {
    expect(unitSlip(times)?.words).toBe(words);
    expect(unitSlip(1 / times)?.words).toBe(words);
  });

  test("may be typed with few digits", () => {
    // 1 ft = 0.3048 m exactly (NIST Handbook 44, Appendix C).
    expect(unitSlip(3.28)).toEqual({ times: 1 / 0.3048, words: "feet and meters" });
    expect(unitSlip(1 / 39.4)?.times).toBeCloseTo(25.4 / 1000, 10);
  });

  test.each([
    [12.03, true],
    [12.04, false],
    [11.97, true],
    [11.96, false],
  ])("is within 0.3%% of it: %f", (times, isSlip) => {
    expect(unitSlip(times) !== undefined).toBe(isSlip);
  });

  test.each([1, 2, 4, 10, 100, 0.5, 0])("%f is none", (times) => {
    expect(unitSlip(times)).toBeUndefined();
  });
});

test.each([
  [12, "12 times too large"],
  [1 / 12, "12 times too small"],
  [1, "1 times too large"],
  [54000, "54,000 times too large"],
  [1000 / 25.4, "39.37 times too large"],
])("%f is said as %s", (times, words) => {
  expect(timesOff(times)).toBe(words);
});
