import { describe, expect, test } from "vitest";
import { parseValue } from "../../src/practice/browser/numberParser";
import { readTypedDate } from "../../src/quantities/calendar/typedDate";
import { Problem } from "../../src/quantities/problem";
import { readTape } from "../../src/quantities/tape";
import { stoneOfYard } from "../../src/quantities/yardStones";
import { iso, serial } from "../dates";

/*
 * Ways people write what goes into a field: each is read right, asked about, or refused in one line, and none is read
 * wrong. What is right was worked out by hand: feet plus inches over 12.
 */

/** Two readings are named; the person types the one that's meant. */
const ASKED = "asked";
const REFUSED = "refused";

/** What came of a text: what it reads as, or how it is turned down. */
function outcomeOf(read: () => unknown): unknown {
  try {
    return read();
  } catch (reason) {
    if (!(reason instanceof Problem)) throw reason;
    expect(reason.message, "one line that says where").toMatch(/^width[: ][^\n]{10,160}\.$/);
    return reason.message.includes("could be") ? ASKED : REFUSED;
  }
}

type Way = readonly [text: string, reads: number | typeof ASKED | typeof REFUSED];

const IN_FEET: readonly Way[] = [
  // Whole and decimal feet.
  ["18", 18],
  ["18.5", 18.5],
  [".5", 0.5],
  ["0.75", 0.75],
  ["18.0", 18],
  ["5.5'", 5.5],
  ["5.5 ft", 5.5],
  ["5.5ft.", 5.5],
  ["18'", 18],
  ["18 '", 18],
  ["18 ft", 18],
  ["18ft", 18],
  ["18 FT", 18],
  ["18 Feet", 18],
  ["18 foot", 18],
  ["18 LF", 18],
  ["18lf", 18],
  ["1,250.5 ft", 1250.5],
  // Feet and inches with marks.
  [`4'6`, 4.5],
  [`4' 6`, 4.5],
  [`4'6"`, 4.5],
  [`4' 6"`, 4.5],
  [`4' 6 "`, 4.5],
  [`4'-6"`, 4.5],
  [`4' - 6"`, 4.5],
  [`4'-6`, 4.5],
  [`4', 6"`, 4.5],
  [`4'0"`, 4],
  [`4'00"`, 4],
  [`4'06"`, 4.5],
  [`6'-2 1/2"`, 6 + 2.5 / 12],
  [`6'-2-1/2"`, 6 + 2.5 / 12],
  [`6' 2.5"`, 6 + 2.5 / 12],
  [`6'2½"`, 6 + 2.5 / 12],
  [`6' 2 ½"`, 6 + 2.5 / 12],
  [`6' ½"`, 6 + 0.5 / 12],
  [`6' 0-1/2"`, 6 + 0.5 / 12],
  [`6' 11 15/16"`, 6 + 11.9375 / 12],
  // Curly quotes, primes, and what phones and word processors make of marks.
  ["4’6”", 4.5],
  ["4‘6“", 4.5],
  ["4′6″", 4.5],
  ["4' 6''", 4.5],
  ["4´6", 4.5],
  ["4` 6``", 4.5],
  ["4’–6”", 4.5],
  ["4 ft 6 in", 4.5],
  // Feet and inches in words.
  ["4ft6", 4.5],
  ["4ft6in", 4.5],
  ["4 ft 6", 4.5],
  ["4 ft. 6 in.", 4.5],
  ["6 ft. 2 in.", 6 + 2 / 12],
  ["4 ft., 6 in.", 4.5],
  ["4 feet 6 inches", 4.5],
  ["4 foot 6", 4.5],
  ["4 Feet, 6 Inches", 4.5],
  ["1 foot 1 inch", 13 / 12],
  ["4-ft 6-in", REFUSED],
  ["4 feet and 6 inches", 4.5],
  ["18ft 6in", 18.5],
  ["18ft,6in", 18.5],
  ["18ft-6in", 18.5],
  ["18' & 6\"", 18.5],
  ["18 ft. - 6 in.", 18.5],
  ["18f", 18],
  ["18 l.f.", 18],
  ["18.5 L.F.", 18.5],
  ["18 lin ft", 18],
  ["18 lin. ft.", 18],
  ["18 linear feet", 18],
  ["18 lineal ft 6 in", 18.5],
  ["18 line", REFUSED],
  ["18 & 6", REFUSED],
  ["18' even", REFUSED],
  ["18' long", REFUSED],
  // The shorthand of the trade.
  ["18-6", 18.5],
  ["28-0", 28],
  ["6-0", 6],
  ["18 6", 18.5],
  ["18  6", 18.5],
  ["18 - 6", 18.5],
  ["18–6", 18.5],
  ["18—6", 18.5],
  ["18-06", 18.5],
  [`18-6"`, 18.5],
  [`18 6"`, 18.5],
  ["18-6 1/2", 18 + 6.5 / 12],
  ["18-6-1/2", 18 + 6.5 / 12],
  ["18-6½", 18 + 6.5 / 12],
  ["18-11.5", 18 + 11.5 / 12],
  ["18-12", REFUSED],
  ["18-14", REFUSED],
  ["18 30", REFUSED],
  ["18-6-2", REFUSED],
  ["18.5-6", REFUSED],
  ["18--6", REFUSED],
  ["18-6'", REFUSED],
  ["18-", REFUSED],
  // Inches in a field of feet.
  [`54"`, 4.5],
  ["54 in", 4.5],
  ["54in.", 4.5],
  [`6 1/2"`, 6.5 / 12],
  [`6-1/2"`, 6.5 / 12],
  [`6½"`, 6.5 / 12],
  [`3/4"`, 0.75 / 12],
  [`3/4'`, 0.75],
  ["3/4 ft", 0.75],
  // A fraction by itself may be of a foot or of an inch; with a whole number in front it is of what is typed here.
  ["3/4", ASKED],
  ["½", ASKED],
  ["6 1/2", 6.5],
  ["6-1/2", 6.5],
  ["6½", 6.5],
  ["6 ½", 6.5],
  ["6 3/2", REFUSED],
  // Metric and yards.
  ["2 yd", 6],
  ["2 yds 1 ft", 7],
  ["3.048 m", 10],
  ["304.8 cm", 10],
  ["3048mm", 10],
  ["3,048 m", ASKED],
  ["9,8 m", 9.8 / 0.3048],
  // Commas and points that can be two things, and typing error.
  ["1,200", ASKED],
  ["18,6", ASKED],
  ["18, 6", REFUSED],
  ["18.5.6", REFUSED],
  ["5'.5", REFUSED],
  ["18;6", REFUSED],
  [`18:6`, REFUSED],
  [`5' 14"`, REFUSED],
  [`6" 4'`, REFUSED],
  [`6.5' 3"`, REFUSED],
  [`4'6'`, REFUSED],
  ["4 x 8", REFUSED],
  ["4x8", REFUSED],
  ["18 +/-", REFUSED],
  ["~18", REFUSED],
  ["about 18", REFUSED],
  ["seven", REFUSED],
  ["a dozen", REFUSED],
  ["18k", REFUSED],
  ["1e3", REFUSED],
  ["l8", REFUSED],
  ["1O", REFUSED],
  ["3/4/2026", REFUSED],
  ["6-Apr", REFUSED],
  ["$18", REFUSED],
  ["18%", REFUSED],
  ["6²", REFUSED],
  ["18 sq ft", REFUSED],
  ["TBD", REFUSED],
  ["?", REFUSED],
  // More from plans, phones, and the backs of envelopes.
  [`18'-6"`, 18.5],
  ["18′ 6″", 18.5],
  ["6.5 ft", 6.5],
  [`78"`, 6.5],
  [`6' 6-1/2"`, 6 + 6.5 / 12],
  [`18'-6 1/2"`, 18 + 6.5 / 12],
  ["18' 6 1/2 in", 18 + 6.5 / 12],
  [`12' 11 7/8"`, 12 + 11.875 / 12],
  ["12-11-7/8", 12 + 11.875 / 12],
  [`18'-0"`, 18],
  [`0'6"`, 0.5],
  ["0-6", 0.5],
  ["5-11", 5 + 11 / 12],
  ["18 1/2'", 18.5],
  ["18½'", 18.5],
  ["24 in.", 2],
  ["6''", 0.5],
  ["5 yds", 15],
  ["18 x 5", REFUSED],
  [`18'x5'`, REFUSED],
  ["18 by 5", REFUSED],
  [`24" o.c.`, REFUSED],
  ["18/6", REFUSED],
  ["10/6", REFUSED],
  ["18_6", REFUSED],
  ["7-Dec", REFUSED],
];

const IN_INCHES: readonly Way[] = [
  ["4", 4],
  ["2.5", 2.5],
  [`4"`, 4],
  ["4 in.", 4],
  ["3/4", 0.75],
  [`3/4"`, 0.75],
  ["¾", 0.75],
  ["6 1/2", 6.5],
  ["6-1/2", 6.5],
  [`6 1/2"`, 6.5],
  [`6½”`, 6.5],
  [`1' 2"`, 14],
  ["1ft2", 14],
  ["1.5'", 18],
  // A depth is often told as a range.
  ["2-3", REFUSED],
  ["2 to 3", REFUSED],
  ["4 6", REFUSED],
  ["4,6", ASKED],
  ["2 in deep", REFUSED],
  ["two", REFUSED],
  ["7/8", 0.875],
  ["2 1/2", 2.5],
  ["1-7/8", 1.875],
  // Feet and inches, or a date, where a fraction would be over 1.
  ["18/6", REFUSED],
  ["10/6", REFUSED],
  [`2"-3"`, REFUSED],
  [`2" +`, REFUSED],
  ["4-6", REFUSED],
];

describe("a length where feet are typed", () => {
  test.each(IN_FEET)("%s", (text, expected) => {
    const outcome = outcomeOf(() => readTape(text, "ft", "width"));
    if (typeof expected === "number") expect(outcome).toBeCloseTo(expected, 10);
    else expect(outcome).toBe(expected);
  });
});

describe("a length where inches are typed", () => {
  test.each(IN_INCHES)("%s", (text, expected) => {
    expect(outcomeOf(() => readTape(text, "in", "width"))).toBe(expected);
  });
});

describe("typed into a cell of the practice workbook", () => {
  /** What every spreadsheet program takes for a date, a time, money, or a power of ten. The check finds such dates. */
  const NOT_A_LENGTH = /^\d+[-/]\d+(?:\/\d+)?$|^\d+:\d+$|^\d+-[A-Z][a-z]+$|^\$|%$|^\de\d$/;

  test.each([...IN_FEET, ...IN_INCHES])("%s", (text, expected) => {
    const taken = parseValue(text);
    // It stays as it was typed, and a function reads it as the pane does.
    if (taken === null) return;
    const { v, z } = taken as { v: number; z?: string };
    if (NOT_A_LENGTH.test(text)) expect(z).toMatch(/[mdh%$E]/);
    else if (z?.includes("#,##")) expect(text).toMatch(/^\d{1,3}(,\d{3})+(\.\d+)?$/);
    else expect(v).toBe(expected);
  });
});

// Thursday, November 19, 2026.
const TODAY = serial("2026-11-19");

describe("a date on a machine of the United States", () => {
  test.each([
    ["12/7/2026", "2026-12-07"],
    ["12/07/2026", "2026-12-07"],
    ["12/7/26", "2026-12-07"],
    ["12-7-2026", "2026-12-07"],
    ["12-7-26", "2026-12-07"],
    ["12.7.2026", "2026-12-07"],
    ["12/7", "2026-12-07"],
    ["12-7", "2026-12-07"],
    ["1/4", "2027-01-04"],
    ["2026-12-07", "2026-12-07"],
    ["2026/12/7", "2026-12-07"],
    ["Dec 7", "2026-12-07"],
    ["dec 7", "2026-12-07"],
    ["DEC. 7", "2026-12-07"],
    ["Dec 7th", "2026-12-07"],
    ["December 7", "2026-12-07"],
    ["December 7, 2026", "2026-12-07"],
    ["Dec 7 2026", "2026-12-07"],
    ["Dec 7, '26", "2026-12-07"],
    ["7 Dec", "2026-12-07"],
    ["7 December 2026", "2026-12-07"],
    ["7-Dec", "2026-12-07"],
    ["7-Dec-26", "2026-12-07"],
    ["Sept 14", "2027-09-14"],
    ["Mon 12/7", "2026-12-07"],
    ["Monday, December 7, 2026", "2026-12-07"],
    ["12/7/2026 (Mon)", "2026-12-07"],
    ["13/12/2026", "2026-12-13"],
    ["12/7/'26", "2026-12-07"],
    ["12 / 7 / 2026", "2026-12-07"],
    ["12.7.26", "2026-12-07"],
    ["Dec7", "2026-12-07"],
    ["Dec-7", "2026-12-07"],
    ["Dec 07", "2026-12-07"],
    ["7th of December", "2026-12-07"],
    ["12/7 Mon", "2026-12-07"],
    ["Mon., Dec. 7", "2026-12-07"],
    ["Thurs 12/10", "2026-12-10"],
    ["Jan 4", "2027-01-04"],
    ["2/29/2028", "2028-02-29"],
    ["2/29/2027", REFUSED],
    ["12/7-12/9", REFUSED],
    ["12/7 or 12/8", REFUSED],
    ["week of 12/7", REFUSED],
    ["12/7 8am", REFUSED],
    ["early Dec", REFUSED],
    ["Dec 32", REFUSED],
    ["Tue 12/7", REFUSED],
    ["2/30", REFUSED],
    ["13/14", REFUSED],
    ["12/7/202", REFUSED],
    ["12/7/2026/1", REFUSED],
    ["12 7", REFUSED],
    ["20261207", REFUSED],
    ["46363", REFUSED],
    ["7", REFUSED],
    ["Dec", REFUSED],
    ["Decent 7", REFUSED],
    ["Monday", REFUSED],
    ["next week", REFUSED],
    ["after the frost", REFUSED],
    ["ASAP", REFUSED],
  ])("%s", (text, expected) => {
    const outcome = outcomeOf(() => readTypedDate(text, "width", TODAY, "mdy"));
    expect(typeof outcome === "number" ? iso(outcome) : outcome).toBe(expected);
  });
});

describe("a yard's name for stone", () => {
  // Undefined: it is asked about once, and remembered with the office's rates.
  test.each<[string, string | undefined]>([
    ["river rock", "river rock"],
    ["River Rock", "river rock"],
    ["RR", "river rock"],
    ["RR 1-1/2", "river rock"],
    ["RR 1 1/2in", "river rock"],
    ['1-1/2" RR', "river rock"],
    ["river rk 3/4", "river rock"],
    ["Riverrock 1-3", "river rock"],
    ["washed river rock", "river rock"],
    ["pea grvl", "pea gravel"],
    ["pea gravel", "pea gravel"],
    ["Pea-gravel 3/8", "pea gravel"],
    ["pea stone", "pea gravel"],
    ["pea rock", "pea gravel"],
    ["#57 limestone", "crushed limestone"],
    ["57 limestone", "crushed limestone"],
    ["limestone #8", "crushed limestone"],
    ["LS 57", "crushed limestone"],
    ["crushed lmst", "crushed limestone"],
    ["crshd stn", "crushed stone"],
    ["crushed granite 3/8", "crushed granite"],
    ["crushed gran", "crushed granite"],
    ["DG", "decomposed granite"],
    ["decomp granite", "decomposed granite"],
    ["lava", "lava rock"],
    ["lava rock 3/4", "lava rock"],
    ["marble chips", "crushed marble"],
    ["white marble", undefined],
    ["gravel", "gravel"],
    ["3/4 gravel", "gravel"],
    ["cobbles 3-6", "cobble"],
    ["pumice", "pumice"],
    ["granite", undefined],
    ["granite boulders", undefined],
    ["stone", undefined],
    ["rock", undefined],
    ["#57", undefined],
    ["#57 stone", undefined],
    ["crusher run", undefined],
    ["item 4", undefined],
    ["mauve mix", undefined],
    ["river bed", undefined],
    ["pea", undefined],
    ["mulch", undefined],
    ["#8 gravel", "gravel"],
    ['1.5" river rock', "river rock"],
    ['2-4" river rock', "river rock"],
    ["#4 RR", "river rock"],
    ["RR1.5", "river rock"],
    ["R.R. 1-3", "river rock"],
    ["Riv. Rk.", "river rock"],
    ["D.G.", "decomposed granite"],
    ["no. 57 limestone", "crushed limestone"],
    ["limestone, crushed", "crushed limestone"],
    ["crushed limestone #57", "crushed limestone"],
    ["washed gravel", "gravel"],
    ["slate chips", "crushed slate"],
    ["no river rock", undefined],
    ["no gravel", undefined],
    ["lime", undefined],
    ["limestone screenings", undefined],
    ["crushed gravel", undefined],
    ["river rock / pea gravel", undefined],
    ["RR tie", undefined],
    ["rip rap", undefined],
    ["#411", undefined],
    ["sand and gravel", undefined],
    ["same as last time", undefined],
    ["", undefined],
  ])("%s", (text, expected) => {
    expect(stoneOfYard(text)).toBe(expected);
  });
});
