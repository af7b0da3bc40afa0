import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import { dateAsLength } from "./dateAsLength";

// Days of 2026 in the 1900 calendar: April 6 is 46118, March 4 is 46085, May 30 is 46172 (2026-03-02 is 46083).
const APRIL_6 = 46_118;

const bed = (heading: string, value: number, format: string) => ({
  rows: [
    ["Bed", heading],
    ["Walk", value],
  ],
  formats: { B2: format },
});

describe("a date in a column of lengths", () => {
  test("is made the feet and inches that were typed", () => {
    expect(findWith(dateAsLength, bed("Width (ft)", APRIL_6, "d-mmm"))).toMatchObject([
      {
        level: "error",
        rank: 100,
        cells: ["B2"],
        seen: "“Walk”, “Width (ft)” holds the date 4/6/2026, not a length.",
        todo: `If you typed 4-6, change it to 4' 6".`,
        fix: { B2: `4' 6"` },
        formats: { B2: "General" },
      },
    ]);
  });

  test.each([
    ["of a fraction", "Width", 46_085, "m/d"],
    ["of more than 11 inches", "Width", 46_172, "d-mmm"],
    ["in inches, where 2-3 is a range", "Depth (in)", APRIL_6, "d-mmm"],
    ["of a month and a year", "Width", APRIL_6, "mmm-yy"],
  ])("is typed again where it is %s", (_, heading, value, format) => {
    const [found] = findWith(dateAsLength, bed(heading, value, format));
    expect(found).toMatchObject({ todo: `Type the length with its marks, like 4' 6".`, fix: undefined });
  });

  test("is found where only a formula takes it for a length", () => {
    const rows = [
      ["Bed", "Taped", "Feet"],
      ["Walk", APRIL_6, "=BED.FEET(B2)"],
    ];
    expect(cellsFound(dateAsLength, { rows, formats: { B2: "m-d" } })).toEqual(["B2"]);
    expect(
      cellsFound(dateAsLength, { rows: [["Bed", "Taped"], rows[1]!.slice(0, 2)], formats: { B2: "m-d" } }),
    ).toEqual([]);
  });

  test.each([
    ["a length in a plain format", "Width (ft)", 12, "0.0"],
    ["a format that only names days or months", "Width (ft)", APRIL_6, `0 "days"`],
    ["a time of day", "Length", APRIL_6, "h:mm"],
    ["a date in a column of dates", "Measured on", APRIL_6, "m/d/yyyy"],
    ["a date in a column that says so", "Date of the tape (ft)", APRIL_6, "d-mmm"],
    ["the day a bed was started", "Started, width 4 ft", APRIL_6, "d-mmm"],
    ["an area", "Area (sq ft)", APRIL_6, "d-mmm"],
    ["a length of 12 in a cell that once held a date", "Width (ft)", 12, "d-mmm"],
  ])("isn't %s", (_, heading, value, format) => {
    expect(cellsFound(dateAsLength, bed(heading, value, format))).toEqual([]);
  });
});
