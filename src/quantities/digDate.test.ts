import { describe, expect, test } from "vitest";
import { readDate } from "./dateText";
import { digDate, isWorkingDay, LAST_DATE } from "./digDate";

const day = (text: string) => readDate(text, "day");

describe("the first day to dig", () => {
  test("comes after that many full working days, the day of notice not counted", () => {
    expect(digDate(day("2026-03-02"), 2)).toBe(day("2026-03-05")); // Mon; Tue, Wed full; Thu
    expect(digDate(day("2026-03-06"), 2)).toBe(day("2026-03-11")); // Fri; Mon, Tue full; Wed
    expect(digDate(day("2026-03-04"), 2)).toBe(day("2026-03-09")); // Wed; Thu, Fri full; Mon
  });

  test("does not count a weekend day of notice either", () => {
    expect(digDate(day("2026-03-07"), 2)).toBe(day("2026-03-11"));
    expect(digDate(day("2026-03-08"), 2)).toBe(day("2026-03-11"));
  });

  test("passes over holidays, and never falls on one", () => {
    expect(digDate(day("2026-07-02"), 2, [day("2026-07-03")])).toBe(day("2026-07-08"));
    expect(digDate(day("2026-03-02"), 2, [day("2026-03-05")])).toBe(day("2026-03-06"));
    expect(digDate(day("2026-03-02"), 2, [day("2026-03-07")])).toBe(day("2026-03-05"));
  });

  test("may be the last day of the calendar, a Friday", () => {
    expect(digDate(LAST_DATE - 2, 1)).toBe(LAST_DATE);
  });

  test("must be in the calendar", () => {
    expect(() => digDate(LAST_DATE - 1, 10)).toThrow(/too far in the future/);
  });
});

test("Monday to Friday are working days, unless they are holidays", () => {
  const week = ["2026-03-01", "2026-03-02", "2026-03-03", "2026-03-04", "2026-03-05", "2026-03-06", "2026-03-07"].map(
    day,
  );
  expect(week.map((date) => isWorkingDay(date))).toEqual([false, true, true, true, true, true, false]);
  expect(isWorkingDay(day("2026-03-02"), [day("2026-03-02")])).toBe(false);
});

describe("a date as text", () => {
  // Serial numbers by hand: 2026-03-02 is 20,514 days after 1970-01-01, which is day 25,569 of the calendar.
  test.each([
    ["2026-03-02", 46083],
    ["2026-3-2", 46083],
    ["March 2, 2026", 46083],
    ["mar 2 2026", 46083],
    ["Mar. 2, 2026", 46083],
    ["2 March 2026", 46083],
    ["Sept 1, 2026", 46266],
    ["3/13/2026", 46094],
    ["5/5/2026", 46147],
    ["2028-02-29", 46812],
    ["1900-03-01", 61],
    // 2026-12-25 is 298 days after 2026-03-02: 29 + 30 + 31 + 30 + 31 + 31 + 30 + 31 + 30 + 25.
    ["12/25/2026", 46381],
    ["December 25, 2026", 46381],
    ["25 Dec. 2026", 46381],
    [" March   2,  2026 ", 46083],
    [`${" ".repeat(30)}2026-03-02`, 46083],
    ["9999-12-31", LAST_DATE],
  ])("%s", (text, serial) => {
    expect(day(text)).toBe(serial);
  });

  test.each([
    "2026-02-29",
    "2026-13-01",
    "2026-00-10",
    "13/3/2026",
    "3/13/26",
    "Marx 2, 2026",
    "soon",
    "1900-02-28",
    "0000-01-01",
    "46083",
    "#N/A",
    "x2026-03-02",
    "2026-03-021",
    "12026-03-02",
    "13/13/2026",
    "113/3/2026",
    "3/13/20267",
    "2 march 2, 2026",
    "march 2, 20267",
    "112 march 2026",
    "2 march 20267",
    "0099-03-02",
    "2026-04-31",
    "2026-03-00",
  ])("%s is refused", (text) => {
    expect(() => day(text)).toThrow(`day: can't read “${text}” as a date`);
  });

  test("longer than any date is not looked at", () => {
    expect(() => day(`${" ".repeat(31)}2026-03-02`)).toThrow(/as a date/);
  });

  test.each(["3/2/2026", "12/2/2026", "2/12/2026"])("that may be two dates is asked about: %s", (text) => {
    expect(() => day(text)).toThrow(/could be 20\d\d-\d+-\d+ or 20\d\d-\d+-\d+\. Type the one you mean/);
  });
});
