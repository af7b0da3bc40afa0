import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { digNotice } from "../../src/quantities/calendar/digNotice";
import { holidaysBetween } from "../../src/quantities/calendar/holidaysBetween";
import { lastNoticeDate } from "../../src/quantities/calendar/lastNoticeDate";
import { digDate, isWorkingDay } from "../../src/quantities/digDate";
import { serial } from "../dates";

const federal = { federal: true, own: [] };

const date = fc.integer({ min: serial("1980-01-01"), max: serial("2100-12-31") });
const daysOfNotice = fc.integer({ min: 1, max: 30 });
const offsets = fc.array(fc.integer({ min: -60, max: 60 }), { maxLength: 12 });
const around = (middle: number, list: readonly number[]) => list.map((offset) => middle + offset);

describe("the last day to give notice", () => {
  test("is digDate the other way round, for any start, notice and holidays", () => {
    fc.assert(
      fc.property(date, daysOfNotice, offsets, (start, days, list) => {
        const holidays = around(start, list);
        const last = lastNoticeDate(start, days, holidays);
        expect(isWorkingDay(last, holidays)).toBe(true);
        expect(digDate(last, days, holidays)).toBeLessThanOrEqual(start);
        let next = last + 1;
        while (!isWorkingDay(next, holidays)) next++;
        expect(digDate(next, days, holidays)).toBeGreaterThan(start);
        if (isWorkingDay(start, holidays)) expect(digDate(last, days, holidays)).toBe(start);
      }),
    );
  });

  test("of the first day to dig is the day of notice, if that is a working day", () => {
    fc.assert(
      fc.property(date, daysOfNotice, offsets, (notice, days, list) => {
        const holidays = around(notice, list);
        const last = lastNoticeDate(digDate(notice, days, holidays), days, holidays);
        if (isWorkingDay(notice, holidays)) expect(last).toBe(notice);
        else expect(last).toBeLessThan(notice);
      }),
    );
  });
});

test("a notice knows every holiday that its counts need, far enough to both sides", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: serial("1985-01-01"), max: serial("2100-12-31") }),
      fc.integer({ min: -200, max: 400 }),
      fc.integer({ min: 1, max: 366 }),
      fc.integer({ min: 1, max: 366 }),
      (today, ahead, workingDays, markDays) => {
        const startDate = today + ahead;
        const marks = { days: markDays, counted: "working", from: "first day to dig" } as const;
        const found = digNotice({ startDate, workingDays, today, holidays: federal, marks, daysOfWork: markDays });
        const all = holidaysBetween(serial("1978-01-01"), serial("2110-12-31"), federal).map((day) => day.date);
        expect(found.earliestDate).toBe(digDate(today, workingDays, all));
        expect(found.lastNoticeDate).toBe(lastNoticeDate(startDate, workingDays, all));
        expect(found.marksLastDay).toBe(digDate(found.earliestDate, markDays - 1, all));
      },
    ),
    { numRuns: 40 },
  );
});
