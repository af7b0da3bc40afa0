import { expect, test } from "vitest";
import { serialOf } from "./calendarDay";
import { holidaysBetween } from "./holidaysBetween";

const day = serialOf;
const rules = { federal: true, own: [] };

test("the last days of a year have the New Year's Day that is kept in them", () => {
  expect(holidaysBetween(day(2021, 12, 20), day(2022, 1, 10), rules)).toEqual([
    { date: day(2021, 12, 24), name: "Christmas Day" },
    { date: day(2021, 12, 31), name: "New Year’s Day" },
  ]);
});

test("both ends are included", () => {
  const july3 = day(2026, 7, 3);
  expect(holidaysBetween(july3, july3, rules)).toHaveLength(1);
  expect(holidaysBetween(july3 + 1, july3 + 30, rules)).toEqual([]);
});

test("the office's own days are added, each day once and in order", () => {
  const own = [
    { date: day(2026, 12, 24), name: "Christmas Eve" },
    { date: day(2026, 11, 27), name: " Friday after Thanksgiving" },
    { date: day(2026, 11, 26), name: "thanksgiving day" },
    { date: day(2026, 12, 25), name: "Office closed" },
    { date: day(2027, 5, 1), name: "Too late to matter" },
    { date: day(2026, 12, 28), name: " " },
  ];
  expect(holidaysBetween(day(2026, 11, 20), day(2026, 12, 31), { federal: true, own }).map(({ name }) => name)).toEqual(
    ["Thanksgiving Day", "Friday after Thanksgiving", "Christmas Eve", "Christmas Day and Office closed", "Holiday"],
  );
});

test("a day that the office names again, or not at all, keeps its name", () => {
  const christmas = day(2026, 12, 25);
  const named = (...names: string[]) =>
    holidaysBetween(christmas, christmas, { federal: true, own: names.map((name) => ({ date: christmas, name })) });
  for (const names of [[" "], [" christmas DAY "], ["", "Christmas Day"]])
    expect(named(...names)).toEqual([{ date: christmas, name: "Christmas Day" }]);
  expect(named(" Office closed ")).toEqual([{ date: christmas, name: "Christmas Day and Office closed" }]);
});

test("the last year of the calendar has its eleven holidays", () => {
  expect(holidaysBetween(day(9999, 1, 1), day(9999, 12, 31), rules)).toHaveLength(11);
});

test("federal holidays can be left out, all or by name", () => {
  const october = [day(2026, 10, 1), day(2026, 11, 30)] as const;
  const names = (holidays: Parameters<typeof holidaysBetween>[2]) =>
    holidaysBetween(...october, holidays).map(({ name }) => name);
  expect(names({ ...rules, exceptFederal: ["Columbus Day"] })).toEqual(["Veterans Day", "Thanksgiving Day"]);
  expect(names({ federal: false, own: [] })).toEqual([]);
});
