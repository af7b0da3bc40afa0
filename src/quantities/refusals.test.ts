import { expect, test } from "vitest";
import { areaRectangle, areaRound, areaTriangle } from "./area";
import { serialOf } from "./calendar/calendarDay";
import { checkDays } from "./calendar/checkDays";
import { federalHolidays } from "./calendar/federalHolidays";
import { lastNoticeDate } from "./calendar/lastNoticeDate";
import { readDate } from "./dateText";
import { digDate, FIRST_DATE, LAST_DATE } from "./digDate";
import { edgeLength } from "./edge";
import { edgingPieces } from "./edging";
import { endLapOf, fabricStrips } from "./fabric";
import { fabricRolls } from "./fabricRolls";
import { readNumber } from "./numberText";
import { areaPoints, edgePoints, type Point } from "./outline";
import { markupForMargin, priceFromMargin } from "./price";
import { Problem } from "./problem";
import { soilNamed } from "./soil";
import { stoneNamed } from "./stone";
import { stoneDepth } from "./stoneAmounts";
import { printTape, readTape } from "./tape";
import { areaWidths, edgeWidths } from "./widths";

const corner: Point[] = [
  [0, 0],
  [4, 0],
];
const bowTie: Point[] = [
  [0, 0],
  [4, 4],
  [4, 0],
  [0, 4],
];
const speck: Point[] = [
  [0, 0],
  [1e-170, 0],
  [0, 1e-170],
];
const line: Point[] = [
  [0, 0],
  [1, 1],
  [2, 2],
];

/** A refusal names the value that it is about, so that a cell or a field can show it there. */
test.each<[string, () => unknown, string, "value" | "name", RegExp]>([
  ["a corner with no room", () => areaRectangle(10, 4, 2.1, 2), "corner_radius", "value", /2\.1 ft.* 2 ft or less/],
  ["one corner with no room", () => areaRectangle(10, 4, 4.1, 1), "corner_radius", "value", /Type 4 ft or less/],
  ["cut-outs as large as the bed", () => areaRectangle(10, 4, 0, 0, [30, 10]), "cut_outs", "value", /come to 40 sq ft/],
  ["a triangle that is flat", () => areaTriangle(1, 2, 3), "side_c", "value", /can't make a triangle/],
  ["a ring without width", () => areaRound(3, 3), "inner_diameter", "value", /Type less than the diameter, 3 ft/],
  ["a date that is none", () => readDate("soon", "day"), "day", "value", /“soon”/],
  ["a date that may be two", () => readDate("3/2/2026", "day"), "day", "value", /could be/],
  ["a day that no month has", () => serialOf(2026, 13, 1), "date", "value", /as a date/],
  ["a count past the calendar", () => digDate(LAST_DATE, 1), "notice_date", "value", /too far in the future/],
  [
    "a count before the calendar",
    () => lastNoticeDate(FIRST_DATE + 1, 1),
    "start_date",
    "value",
    /start_date is too early/,
  ],
  ["holidays before the law", () => federalHolidays(1977), "year", "value", /for 1977 aren't known/],
  ["holidays past the calendar", () => federalHolidays(10_000), "year", "value", /for 10000 aren't known/],
  ["no days", () => checkDays("working_days", 0, 366), "working_days", "value", /blank or 0.* such as 2\./],
  ["days under 0", () => checkDays("working_days", -1, 366), "working_days", "value", /less than 0. Type more than 0/],
  ["too many days", () => checkDays("working_days", 367, 366), "working_days", "value", /366 or less/],
  ["an edge without room for its corner", () => edgeLength([4], 2.1, 1), "corner_radius", "value", /2 ft or less/],
  ["a lap as long as a piece", () => edgingPieces(10, 1, 12), "lap_in", "value", /12 in, but piece_length is 12 in/],
  [
    "an overlap as wide as a roll",
    () => fabricStrips(9, 1, 12),
    "overlap_in",
    "value",
    /12 in, but roll_width is 12 in/,
  ],
  ["an end lap as long as a roll", () => endLapOf(1, 12), "end_lap_in", "value", /12 in, but roll_length is 12 in/],
  ["more fabric than any bed has", () => fabricRolls(1e7, 6, 6, 50, 6), "length", "value", /100,000 pieces/],
  ["a number that is none", () => readNumber("ten", "area"), "area", "value", /“ten” as a number/],
  ["a comma that may be two things", () => readNumber("1,200", "area"), "area", "value", /could be/],
  ["an outline of two points", () => areaPoints(corner), "points", "value", /2 different points. Give at least 3/],
  ["an outline that crosses itself", () => areaPoints(bowTie), "points", "value", /side 1 to 2 meets side 3 to 4/],
  ["an outline on one line", () => areaPoints(line), "points", "value", /meets side/],
  ["an outline too small for a number", () => areaPoints(speck), "points", "value", /all on one line/],
  ["an edge of one point", () => edgePoints(corner.slice(1), false), "points", "value", /1 different point. .*least 2/],
  ["a closed edge of two points", () => edgePoints(corner), "points", "value", /least 3/],
  ["a margin of all of the price", () => priceFromMargin(10, 1), "margin", "value", /under 1/],
  ["a markup for such a margin", () => markupForMargin(1.2), "margin", "value", /: 1\.2 must be/],
  ["a stone in no table", () => stoneNamed("granit"), "stone", "name", /“crushed granite”.*tons per cubic yard/],
  ["a soil in no table", () => soilNamed("loamy"), "soil", "name", /“loam”.*the swell as a share/],
  ["a depth left over by binary arithmetic", () => stoneDepth(4, 4 - 1e-9, 0), "border_height_in", "value", /no depth/],
  ["no depth left", () => stoneDepth(4, 3, 1), "border_height_in", "value", /border_height_in is 4 in, .* take 4 in/],
  ["a length that is none", () => readTape("x", "ft", "width"), "width", "value", /can't read “x”/],
  ["a length without a name", () => readTape("x", "ft"), "measure", "value", /^measure: can't read/],
  ["a length with such a comma", () => readTape("1,200", "ft", "width"), "width", "value", /could be/],
  ["inches past a foot", () => readTape(`5' 12"`, "ft", "width"), "width", "value", /has 12 in or more\./],
  ["a length for no tape", () => printTape(1.1e9), "measure", "value", /1,000,000,000 ft or less/],
  ["a single width", () => areaWidths(4, [3]), "widths", "value", /widths has 1\. Give at least 2/],
  ["an edge along a single width", () => edgeWidths(4, [3]), "widths", "value", /widths has 1/],
  ["widths of 0", () => areaWidths(4, [0, 0, 0]), "widths", "value", /are all 0/],
])("%s is refused", (_, ask, argument, kind, words) => {
  expect(ask).toThrow(Problem);
  expect(ask).toThrow(expect.objectContaining({ name: "Problem", kind, argument }));
  expect(ask).toThrow(words);
});
