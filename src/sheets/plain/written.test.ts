import { expect, test } from "vitest";
import { levelsOf, refuseTooLong } from "./limits";
import { written } from "./written";

test("text that could be read as a number, a date or a formula is marked as text", () => {
  for (const text of ["6-8", "1/2", "March 2", "TRUE", "=SUM(A1)", "+1", "'quoted", "8%", "@home"])
    expect(written(text)).toBe(`'${text}`);
});

test("words, numbers, truths, errors and blanks stand as they are", () => {
  expect(["North bed", "Tons, loose", 4.5, true, false, "#N/A", ""].map(written)).toEqual([
    "North bed",
    "Tons, loose",
    4.5,
    "TRUE",
    "FALSE",
    "#N/A",
    "",
  ]);
});

test("levels are counted outside of text", () => {
  expect(levelsOf(`=IF((A1)>0,"((((",'A (b)'!B1)`)).toBe(2);
  expect(() => refuseTooLong(`=${"(".repeat(65)}1${")".repeat(65)}`)).toThrow("65 levels deep; the limit is 64");
  expect(() => refuseTooLong(`=${"1+".repeat(4100)}1`)).toThrow("8202 characters; the limit is 8192");
});
