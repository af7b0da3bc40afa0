import { describe, expect, test } from "vitest";
import { iso, serial } from "../../../test/dates";
import { type DateOrder, dateOrder, readTypedDate, shownDate } from "./typedDate";

// A Thursday; what each text says is by the calendar of 2026 and 2027.
const TODAY = serial("2026-11-19");
const day = (text: string, order: DateOrder = "mdy") => iso(readTypedDate(text, "Start date", TODAY, order));

test("figures are read in the machine's order, and the other way round where that gives no day", () => {
  expect(day("12/7/2026")).toBe("2026-12-07");
  expect(day("12/7/2026", "dmy")).toBe("2026-07-12");
  expect(day("12/7/2026", "ymd")).toBe("2026-12-07");
  expect(day("25/12/2026")).toBe("2026-12-25");
  expect(day("12/25/2026", "dmy")).toBe("2026-12-25");
  expect(day("2026-12-07", "dmy")).toBe("2026-12-07");
});

test("a day without a year is the next one from today on", () => {
  expect(day("12/7")).toBe("2026-12-07");
  expect(day("11/19")).toBe("2026-11-19");
  expect(day("11/18")).toBe("2027-11-18");
  expect(day("Mar 2")).toBe("2027-03-02");
  // Neither 2026 nor 2027 has the day.
  expect(() => day("2/29")).toThrow("Start date: can't read “2/29” as a date. Try 12/7/2026, Dec 7, or 2026-12-07.");
});

test("a day of the week has to fit the date", () => {
  expect(day("Mon, Dec 7")).toBe("2026-12-07");
  expect(() => day("Sat 12/7/2026")).toThrow(
    "Start date: “Sat 12/7/2026” is 12/7/2026 (Mon). Type the date or the day of the week you mean.",
  );
});

describe("a date is shown with its day of the week", () => {
  test.each([
    ["mdy", "12/7/2026 (Mon)"],
    ["dmy", "7/12/2026 (Mon)"],
    ["ymd", "2026-12-07 (Mon)"],
  ] as const)("in the order %s", (order, text) => {
    expect(shownDate(serial("2026-12-07"), order)).toBe(text);
    expect(day(text, order)).toBe("2026-12-07");
  });
});

test.each([
  ["en-US", "mdy"],
  ["en-GB", "dmy"],
  ["de-DE", "dmy"],
  ["sv-SE", "ymd"],
  ["ja-JP", "ymd"],
])("%s writes dates in the order %s", (locale, order) => {
  expect(dateOrder(locale)).toBe(order);
});
