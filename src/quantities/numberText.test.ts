import { describe, expect, test } from "vitest";
import { readNumber, readShare } from "./numberText";

describe("a number as text", () => {
  test.each([
    ["12.5", 12.5],
    [" 3 ", 3],
    [".5", 0.5],
    ["-3", -3],
    ["12,5", 12.5],
    ["0,125", 0.125],
    ["1,234.5", 1234.5],
    ["1,234,567", 1234567],
    ["12,345,678", 12_345_678],
    ["123,456,789", 123_456_789],
    ["12,345.67", 12_345.67],
    ["123,456,789.25", 123_456_789.25],
    ["0,123.5", 123.5],
    // Four digits before a comma, or other than three behind it, part no thousands.
    ["1234,567", 1234.567],
    ["1,2345", 1.2345],
    ["0,123", 0.123],
  ])("%s", (text, number) => {
    expect(readNumber(text, "area")).toBe(number);
  });

  test.each(["", "1e3", "0x10", "1.2.3", "1,23,4", "1 2", "$5", "NaN", "Infinity", "--1", "9".repeat(400)])(
    "%s is refused",
    (text) => {
      expect(() => readNumber(text, "area")).toThrow(/^area: can't read .* as a number\. Try 12\.5/);
    },
  );

  test.each(["1,200", "12,200", "123,200", "-1,200"])(
    "with a comma that can be read two ways is asked about: %s",
    (text) => {
      expect(() => readNumber(text, "area")).toThrow(/could be \S+ or \S+\. Type/);
    },
  );

  test.each([
    ...["x1,234.5", "1,234.5x", "1,23.5", "1234,567.5", "x1,234,567", "1,234,567x", "1,234,56", "1,,234"],
    ...["x1,200", "1,200x", "1.2.3", "1.", "--1", "1e3"],
  ])("that is none is refused: %s", (text) => {
    expect(() => readNumber(text, "area")).toThrow(/as a number/);
  });

  test("longer than sixty characters is not looked at", () => {
    expect(readNumber(`${" ".repeat(58)}12`, "area")).toBe(12);
    expect(() => readNumber(`${" ".repeat(59)}12`, "area")).toThrow(/as a number/);
  });
});

describe("a share as text", () => {
  test("may have a percent sign", () => {
    expect(readShare("8%", "waste")).toBe(0.08);
    expect(readShare("12.5 %", "waste")).toBe(0.125);
    expect(readShare("0.08", "waste")).toBe(0.08);
  });

  test("that is no number is refused", () => {
    for (const text of ["%", "8%%", "eight"]) expect(() => readShare(text, "waste")).toThrow(/^waste: can't read/);
  });
});
