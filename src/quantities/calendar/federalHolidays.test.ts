import { describe, expect, test } from "vitest";
import { dateWords, dayOfWeek, serialOf } from "./calendarDay";
import { federalHolidayNames, federalHolidays } from "./federalHolidays";

const keptOn = (year: number, name: string) =>
  dateWords(federalHolidays(year).find((holiday) => holiday.name === name)!.keptOn);

describe("a federal holiday", () => {
  test("on a Saturday is kept on the Friday before (5 U.S.C. 6103)", () => {
    expect(keptOn(2026, "Independence Day")).toBe("Friday, July 3, 2026");
    expect(keptOn(2021, "Juneteenth National Independence Day")).toBe("Friday, June 18, 2021");
  });

  test("on a Sunday is kept on the Monday after", () => {
    expect(keptOn(2027, "Independence Day")).toBe("Monday, July 5, 2027");
  });

  test("may be kept in the year before", () => {
    expect(keptOn(2022, "New Year’s Day")).toBe("Friday, December 31, 2021");
  });

  test("on a weekday of a month is found by counting weeks", () => {
    expect(keptOn(2026, "Memorial Day")).toBe("Monday, May 25, 2026");
    expect(keptOn(2027, "Memorial Day")).toBe("Monday, May 31, 2027");
    expect(keptOn(2026, "Thanksgiving Day")).toBe("Thursday, November 26, 2026");
    expect(keptOn(2025, "Labor Day")).toBe("Monday, September 1, 2025");
  });

  test("counts from the year in which it was first kept (from memory)", () => {
    const names = (year: number) => federalHolidays(year).map(({ name }) => name);
    expect(names(1985)).not.toContain("Birthday of Martin Luther King, Jr.");
    expect(names(1986)).toContain("Birthday of Martin Luther King, Jr.");
    expect(names(2020)).toHaveLength(10);
    expect(names(2021)).toEqual(federalHolidayNames);
  });

  test("is never kept on a Saturday or Sunday, and at most a day from its own", () => {
    for (let year = 1978; year <= 2400; year++)
      for (const { onDate, keptOn: kept } of federalHolidays(year)) {
        expect([1, 2, 3, 4, 5]).toContain(dayOfWeek(kept));
        expect(Math.abs(kept - onDate)).toBeLessThanOrEqual(1);
      }
  });

  test.each([1977, 10_000, 2026.5, Number.NaN])("is not known for %s", (year) => {
    expect(() => federalHolidays(year)).toThrow(/aren't known. Type a date from 1978/);
  });
});

test("days of the week go by the real calendar", () => {
  for (let date = 61; date < 80_000; date += 97)
    expect(dayOfWeek(date)).toBe(new Date(Date.UTC(1899, 11, 30 + date)).getUTCDay());
  expect(dateWords(serialOf(1900, 3, 1))).toBe("Thursday, March 1, 1900");
});
