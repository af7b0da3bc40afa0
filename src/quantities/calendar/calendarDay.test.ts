import { expect, test } from "vitest";
import { dateLine, dateWords, serialOf } from "./calendarDay";

// March 2, 2026 is a Monday; September 30, 2026 a Wednesday: by hand from January 1, 2026, a Thursday.
test.each([
  [2026, 3, 2, "March 2, 2026", "Monday, March 2, 2026"],
  [2026, 9, 30, "September 30, 2026", "Wednesday, September 30, 2026"],
])("the day %d-%d-%d is written %s in a letter, and %s on a sheet", (year, month, day, line, words) => {
  const date = serialOf(year, month, day);
  expect([dateLine(date), dateWords(date)]).toEqual([line, words]);
});
