import { expect, test } from "vitest";
import { isUnusualName, numberRead } from "./textReading";

test("a text is read in the argument's own way", () => {
  expect(numberRead(`18' 6"`, "ft")).toBe(18.5);
  expect(numberRead(`1' 6"`, "in")).toBe(18);
  expect(numberRead("12.5", "number")).toBe(12.5);
  expect(numberRead("8%", "share")).toBe(0.08);
  expect(numberRead("25%", "soil")).toBe(0.25);
  // Serial number of 2026-03-02 in the 1900 calendar (computed).
  expect(numberRead("2026-03-02", "date")).toBe(46_083);
});

test("a name, and text that the function refuses, is no number", () => {
  for (const reading of ["stone", "soil"] as const) expect(numberRead("river rock", reading)).toBeUndefined();
  expect(numberRead("12 cows", "ft")).toBeUndefined();
  expect(numberRead("1,200", "number")).toBeUndefined();
  expect(numberRead("yes", "flag")).toBeUndefined();
});

test("a name with other marks than hyphens has to be rewritten for the ordinary lookup", () => {
  expect(["River-Rock", " pea  gravel "].some(isUnusualName)).toBe(false);
  expect(["river_rock", "lava, rock", "río\u00a0rock"].every(isUnusualName)).toBe(true);
  expect(isUnusualName(`-3"`)).toBe(false);
});
