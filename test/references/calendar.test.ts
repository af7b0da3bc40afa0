import { WORKDAY } from "@formulajs/formulajs";
import fc from "fast-check";
import { describe, expect } from "vitest";
import { dayOfWeek, yearOf } from "../../src/quantities/calendar/calendarDay";
import { digNotice } from "../../src/quantities/calendar/digNotice";
import { holidaysBetween } from "../../src/quantities/calendar/holidaysBetween";
import { lastNoticeDate } from "../../src/quantities/calendar/lastNoticeDate";
import { isWorkingDay } from "../../src/quantities/digDate";
import { iso, serial } from "../dates";
import { outside } from "../outside";
import { KEPT_BY_PACKAGE, KEPT_SOURCE } from "./federalHolidays";

const federal = { federal: true, own: [] };

/** Days kept in a year, as month and day. */
const keptIn = (year: number) =>
  holidaysBetween(serial(`${year}-01-01`), serial(`${year}-12-31`), federal).map(({ date }) => iso(date).slice(5));

const OPM = "U.S. Office of Personnel Management, Federal Holidays";

/** Lists of days on which federal holidays are kept. */
const LISTS = [
  {
    year: 2012,
    source: `${OPM}: seen as reprinted that year`,
    days: "01-02 01-16 02-20 05-28 07-04 09-03 10-08 11-12 11-22 12-25",
  },
  {
    year: 2021,
    source: `${OPM}: from memory`,
    days: "01-01 01-18 02-15 05-31 06-18 07-05 09-06 10-11 11-11 11-25 12-24 12-31",
  },
  {
    year: 2023,
    source: `${OPM}: seen as reprinted that year`,
    days: "01-02 01-16 02-20 05-29 06-19 07-04 09-04 10-09 11-10 11-23 12-25",
  },
  {
    year: 2025,
    source: `${OPM}: from memory`,
    days: "01-01 01-20 02-17 05-26 06-19 07-04 09-01 10-13 11-11 11-27 12-25",
  },
  {
    year: 2026,
    source: `${OPM}: from memory`,
    days: "01-01 01-19 02-16 05-25 06-19 07-03 09-07 10-12 11-11 11-26 12-25",
  },
  {
    year: 2027,
    source: `${OPM}: December 31 for the New Year of 2028 seen in the tests of the R package almanac; the rest by 5 U.S.C. 6103`,
    days: "01-01 01-18 02-15 05-31 06-18 07-05 09-06 10-11 11-11 11-25 12-24 12-31",
  },
  {
    year: 2028,
    source: `${OPM}: seen in the tests of the R package almanac, "matches posted list of holidays"`,
    days: "01-17 02-21 05-29 06-19 07-04 09-04 10-09 11-10 11-23 12-25",
  },
];

describe("the days on which federal holidays are kept", () => {
  for (const { year, source, days } of LISTS)
    outside(source, `${year}`, () => {
      expect(keptIn(year)).toEqual(days.split(" "));
    });

  for (const line of KEPT_BY_PACKAGE) {
    const [year, days] = line.split(": ");
    outside(KEPT_SOURCE, year!, () => {
      expect(keptIn(Number(year))).toEqual(days!.split(" "));
    });
  }
});

const date = fc.integer({ min: serial("1980-01-01"), max: serial("2100-12-31") });
const daysOfNotice = fc.integer({ min: 1, max: 30 });
const offsets = fc.array(fc.integer({ min: -60, max: 60 }), { maxLength: 12 });

outside("WORKDAY of @formulajs/formulajs", "the last day to give notice, counted back by one day more", () => {
  fc.assert(
    fc.property(date, daysOfNotice, offsets, (wished, days, list) => {
      const holidays = list.map((offset) => wished + offset);
      let start = wished;
      while (!isWorkingDay(start, holidays)) start++;
      const asDate = (day: number) => new Date(`${iso(day)}T00:00:00`);
      // The library counts forward alone: the day after `days` and one more working days must be the start.
      const forward = WORKDAY(asDate(lastNoticeDate(start, days, holidays)), days + 1, holidays.map(asDate)) as Date;
      const [y, m, d] = [forward.getFullYear(), forward.getMonth(), forward.getDate()];
      expect(serial(new Date(Date.UTC(y, m, d)).toISOString())).toBe(start);
    }),
  );
});

const BY_HAND = "by hand: full working days after the day of notice, federal holidays of 5 U.S.C. 6103";

describe("a dig notice with federal holidays by rule", () => {
  for (const [notice, workingDays, first] of [
    ["2026-03-02", 2, "2026-03-05"],
    ["2026-03-06", 2, "2026-03-11"],
    ["2026-07-02", 2, "2026-07-08"],
    ["2026-05-21", 2, "2026-05-27"],
    ["2026-05-21", 3, "2026-05-28"],
    ["2026-07-01", 3, "2026-07-08"],
    ["2026-09-03", 2, "2026-09-09"],
  ] as const)
    outside(BY_HAND, `given on ${notice}, ${workingDays} full days: dig on ${first}`, () => {
      const found = digNotice({ startDate: serial(first), workingDays, today: serial(notice), holidays: federal });
      expect(iso(found.earliestDate)).toBe(first);
      expect(iso(found.lastNoticeDate)).toBe(notice);
    });

  for (const [notice, last] of [
    ["2026-03-02", "2026-03-16"],
    ["2026-11-23", "2026-12-08"],
  ] as const)
    outside("by hand: the tenth business day after the notice", `given on ${notice}, marks good to ${last}`, () => {
      const today = serial(notice);
      const marks = { days: 10, counted: "working", from: "notice" } as const;
      const found = digNotice({ startDate: today + 7, workingDays: 2, today, holidays: federal, marks });
      expect(iso(found.marksLastDay!)).toBe(last);
    });
});

outside("the calendar of JavaScript's Date", "years and days of the week", () => {
  fc.assert(
    fc.property(date, (day) => {
      const real = new Date(iso(day));
      expect(yearOf(day)).toBe(real.getUTCFullYear());
      expect(dayOfWeek(day)).toBe(real.getUTCDay());
    }),
  );
});
