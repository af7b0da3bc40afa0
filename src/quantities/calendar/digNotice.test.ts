import { describe, expect, test } from "vitest";
import { dateWords, serialOf } from "./calendarDay";
import { digNotice, type NoticeOptions } from "./digNotice";
import { lastNoticeDate } from "./lastNoticeDate";
import { marksLastDay } from "./marksLastDay";

const day = serialOf;
const thursday = day(2026, 3, 5);

const notice = (options: Partial<NoticeOptions> = {}) =>
  digNotice({
    startDate: thursday,
    workingDays: 2,
    today: day(2026, 2, 25),
    holidays: { federal: true, own: [] },
    ...options,
  });
const kinds = (options: Partial<NoticeOptions>) => notice(options).warnings.map(({ kind }) => kind);

describe("the last day to give notice", () => {
  test("leaves the full working days between it and the start", () => {
    expect(lastNoticeDate(day(2026, 3, 5), 2)).toBe(day(2026, 3, 2)); // Thu; Wed, Tue full; Mon
    expect(lastNoticeDate(day(2026, 3, 11), 2)).toBe(day(2026, 3, 6)); // Wed; Tue, Mon full; Fri
  });

  test("for a start on a day off is that of the working day before it", () => {
    expect(lastNoticeDate(day(2026, 3, 7), 2)).toBe(lastNoticeDate(day(2026, 3, 6), 2));
    expect(lastNoticeDate(day(2026, 3, 8), 2)).toBe(lastNoticeDate(day(2026, 3, 6), 2));
  });

  test("passes over the holiday kept on Friday, July 3, 2026", () => {
    expect(dateWords(notice({ startDate: day(2026, 7, 8), today: day(2026, 6, 1) }).lastNoticeDate)).toBe(
      "Thursday, July 2, 2026",
    );
  });

  test("is worked out for a start that is far ahead of today", () => {
    const found = notice({ startDate: day(2026, 7, 8), today: day(2025, 1, 2) });
    expect(found.lastNoticeDate).toBe(day(2026, 7, 2));
    expect(found.lastDayOfWork).toBe(day(2026, 7, 8));
  });

  test("may be the first day of the calendar", () => {
    // 1900-03-05 is a Monday: Friday is full, and notice is given on Thursday, 1900-03-01, day 61.
    expect(lastNoticeDate(65, 1)).toBe(61);
  });

  test("passes over the office's own days", () => {
    const own = [{ date: day(2026, 11, 27), name: "Friday after Thanksgiving" }];
    const found = notice({ startDate: day(2026, 12, 1), today: day(2026, 11, 2), holidays: { federal: true, own } });
    // Tue Dec 1; Mon Nov 30 and Wed Nov 25 full; Tue Nov 24
    expect(found.lastNoticeDate).toBe(day(2026, 11, 24));
    expect(found.holidays.map(({ name }) => name)).toEqual([
      "Veterans Day",
      "Thanksgiving Day",
      "Friday after Thanksgiving",
    ]);
  });

  test("must be in the calendar", () => {
    expect(() => lastNoticeDate(63, 2)).toThrow(/start_date is too early/);
  });
});

describe("marks", () => {
  const monday = day(2026, 3, 2);
  test("are good for so many calendar days after the day from which they count", () => {
    expect(marksLastDay(monday, { days: 14, counted: "calendar", from: "notice" })).toBe(day(2026, 3, 16));
  });

  test("or for so many working days", () => {
    const life = { days: 10, counted: "working", from: "notice" } as const;
    expect(marksLastDay(monday, life)).toBe(day(2026, 3, 16)); // two weeks of five days
    expect(marksLastDay(monday, life, [day(2026, 3, 16)])).toBe(day(2026, 3, 17));
    expect(marksLastDay(day(2026, 3, 6), { ...life, days: 1 })).toBe(day(2026, 3, 9)); // Fri; Mon
  });

  test("count from the notice or from the first day to dig", () => {
    const life = { days: 14, counted: "calendar" } as const;
    const found = (from: "notice" | "first day to dig") =>
      notice({ noticeDate: monday, marks: { ...life, from } }).marksLastDay;
    expect(found("notice")).toBe(day(2026, 3, 16));
    expect(found("first day to dig")).toBe(day(2026, 3, 19));
  });
});

describe("a notice says", () => {
  test("nothing where all is well", () => {
    expect(notice()).toMatchObject({ isInTime: true, warnings: [], marksLastDay: undefined, lastDayOfWork: thursday });
  });

  test("that the start lies in the past", () => {
    expect(kinds({ today: thursday + 1, noticeDate: day(2026, 3, 2) })).toEqual(["startInPast"]);
    expect(kinds({ today: thursday, noticeDate: day(2026, 3, 2) })).toEqual([]);
  });

  test("that it is too late, and from when digging is allowed", () => {
    expect(kinds({ today: day(2026, 3, 3) })).toEqual(["tooLate"]);
    const late = notice({ today: day(2026, 3, 3) });
    expect(late.isInTime).toBe(false);
    expect(late.earliestIfToday).toBe(day(2026, 3, 6));
    expect(late.warnings.map(({ text }) => text)).toEqual([
      "Notice on Tuesday, March 3, 2026 lets you dig from Friday, March 6, 2026, not from Thursday, March 5, 2026. " +
        "Move the start date.",
    ]);
  });

  test("that today is the last day for it", () => {
    expect(kinds({ today: day(2026, 3, 2) })).toEqual(["lastChance"]);
    expect(kinds({ today: day(2026, 3, 4), noticeDate: day(2026, 3, 2) })).toEqual([]);
    expect(kinds({ today: day(2026, 3, 2), noticeDate: day(2026, 2, 26) })).toEqual([]);
  });

  test("that it is not given yet", () => {
    expect(kinds({ noticeDate: day(2026, 3, 2) })).toEqual(["noticeAhead"]);
  });

  test("that it is given on a day off", () => {
    expect(kinds({ today: day(2026, 3, 1) })).toEqual(["noticeOnDayOff"]);
    const onHoliday = { startDate: day(2026, 7, 15), today: day(2026, 7, 3) };
    expect(kinds(onHoliday)).toEqual(["noticeOnDayOff"]);
    expect(notice(onHoliday).holidays.map(({ name }) => name)).toEqual(["Independence Day"]);
  });

  test("that the start is on a weekend or a holiday, which it names", () => {
    expect(kinds({ startDate: day(2026, 3, 7) })).toEqual(["startOnWeekend"]);
    const onHoliday = notice({ startDate: day(2026, 7, 3), today: day(2026, 6, 1) });
    expect(onHoliday.warnings.map(({ kind }) => kind)).toEqual(["startOnHoliday"]);
    expect(onHoliday.holidays.at(-1)).toEqual({ date: day(2026, 7, 3), name: "Independence Day" });
    expect(onHoliday.warnings[0]!.text).toMatch(
      /^The start date, Friday, July 3, 2026, is a holiday \(Independence Day\)/,
    );
  });

  test("that marks run out before the start, or before the work is done", () => {
    const marks = { days: 14, counted: "calendar", from: "notice" } as const;
    expect(kinds({ noticeDate: day(2026, 2, 18), marks })).toEqual(["marksEndFirst"]);
    // Notice Thu Feb 19, good to Thu Mar 5: the second day of work is a Friday.
    expect(kinds({ noticeDate: day(2026, 2, 19), marks, daysOfWork: 1 })).toEqual([]);
    expect(kinds({ noticeDate: day(2026, 2, 19), marks, daysOfWork: 2 })).toEqual(["marksEndDuring"]);
  });

  test("when the work is done: the start is a day of it, whatever day it is", () => {
    expect(notice({ daysOfWork: 3 }).lastDayOfWork).toBe(day(2026, 3, 9)); // Thu, Fri, Mon
    expect(notice({ startDate: day(2026, 3, 7), daysOfWork: 2 }).lastDayOfWork).toBe(day(2026, 3, 9)); // Sat, Mon
  });
});

test("366 days of notice and of work are the most", () => {
  // 366 working days are 73 weeks and a day.
  const { lastNoticeDate: last, lastDayOfWork } = notice({
    ...{ workingDays: 366, daysOfWork: 366, today: day(2024, 1, 2), holidays: { federal: false, own: [] } },
  });
  // Back from Thursday 2026-03-05: 366 full days are from Wednesday, and notice is on the one before them.
  expect(last).toBe(thursday - 367 - 2 * 73);
  expect(lastDayOfWork).toBe(thursday + 365 + 2 * 73);
});

test.each([
  [{ workingDays: 0 }, /working_days is blank or 0/],
  [{ workingDays: 1.5 }, /working_days: can't use 1\.5\. Type a whole number, 366 or less/],
  [{ workingDays: 400 }, /366 or less/],
  [{ workingDays: -2 }, /working_days: -2 is less than 0\. Type more than 0/],
  [{ daysOfWork: 0 }, /days_of_work/],
  [{ daysOfWork: 400 }, /These beds come to 400 days of work.*check their sizes/],
  [{ marks: { days: -1, counted: "working", from: "notice" } as const }, /marks_days: -1 is less/],
])("a notice is refused for %o", (options, message) => {
  expect(() => notice(options)).toThrow(message);
});
