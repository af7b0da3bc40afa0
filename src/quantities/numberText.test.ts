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
  ])("%s", (text, number) => {
    expect(readNumber(text, "area")).toBe(number);
  });

  test.each(["", "1e3", "0x10", "1.2.3", "1,23,4", "1 2", "$5", "NaN", "Infinity", "--1", "9".repeat(400)])(
    "%s is refused",
    (text) => {
      expect(() => readNumber(text, "area")).toThrow(/^area arrived as .* which is no number. Type a number/);
    },
  );

  test("with a comma that can be read two ways is asked about", () => {
    expect(() => readNumber("1,200", "area")).toThrow(/two ways/);
  });
});

describe("a share as text", () => {
  test("may have a percent sign", () => {
    expect(readShare("8%", "waste")).toBe(0.08);
    expect(readShare("12.5 %", "waste")).toBe(0.125);
    expect(readShare("0.08", "waste")).toBe(0.08);
  });

  test("that is no number is refused", () => {
    for (const text of ["%", "8%%", "eight"]) expect(() => readShare(text, "waste")).toThrow(/^waste arrived as/);
  });
});
