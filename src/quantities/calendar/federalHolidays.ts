import { Problem } from "../problem";
import { dayOfWeek, serialOf } from "./calendarDay";
import { calendarMessages } from "./messages";
import { DAYS_PER_WEEK, MONDAY, SATURDAY, SUNDAY, THURSDAY } from "./week";

/** A holiday of the federal government: the day it falls on by law, and the weekday on which it is kept. */
export interface FederalHoliday {
  readonly name: string;
  /** Serial number of the day by law. */
  readonly onDate: number;
  /** Serial number of the day on which no one works for it: the day by law unless that is a Saturday or Sunday. */
  readonly keptOn: number;
}

interface Rule {
  readonly name: string;
  readonly month: number;
  /** A day of the month, or the nth such weekday of it, counted from its end where n is under 0. */
  readonly falls: { readonly day: number } | { readonly nth: number; readonly weekday: number };
  /** First year in which it was kept, where that is after the first year known here. */
  readonly since?: number;
}

/** From this year on Veterans Day is on November 11 again (from memory), so the rules below hold. */
export const FIRST_YEAR = 1978;
export const LAST_YEAR = 9999;

/**
 * 5 U.S.C. 6103(a), with the names of the law. That King's birthday was first kept in 1986 and Juneteenth in 2021 is
 * from memory. Inauguration Day (6103(c)) is left out: it is a holiday in and around Washington alone.
 */
const RULES: readonly Rule[] = [
  { name: "New Year’s Day", month: 1, falls: { day: 1 } },
  { name: "Birthday of Martin Luther King, Jr.", month: 1, falls: { nth: 3, weekday: MONDAY }, since: 1986 },
  { name: "Washington’s Birthday", month: 2, falls: { nth: 3, weekday: MONDAY } },
  { name: "Memorial Day", month: 5, falls: { nth: -1, weekday: MONDAY } },
  { name: "Juneteenth National Independence Day", month: 6, falls: { day: 19 }, since: 2021 },
  { name: "Independence Day", month: 7, falls: { day: 4 } },
  { name: "Labor Day", month: 9, falls: { nth: 1, weekday: MONDAY } },
  { name: "Columbus Day", month: 10, falls: { nth: 2, weekday: MONDAY } },
  { name: "Veterans Day", month: 11, falls: { day: 11 } },
  { name: "Thanksgiving Day", month: 11, falls: { nth: 4, weekday: THURSDAY } },
  { name: "Christmas Day", month: 12, falls: { day: 25 } },
];

/** Names of the federal holidays, in the order of the year, for a list to choose from. */
export const federalHolidayNames: readonly string[] = RULES.map(({ name }) => name);

/**
 * The federal holidays of a year and the weekdays on which they are kept: for a Saturday the Friday before (5 U.S.C.
 * 6103(b)), for a Sunday the Monday after (Executive Order 11582). New Year's Day may so be kept in the year before.
 *
 * @param year 1978 to 9999.
 * @returns the holidays that fall in the year, in its order.
 * @throws Problem for another year.
 * @example federalHolidays(2026).find(({ name }) => name === "Independence Day") // falls on July 4, kept on July 3
 */
export function federalHolidays(year: number): FederalHoliday[] {
  if (!(Number.isInteger(year) && year >= FIRST_YEAR && year <= LAST_YEAR))
    throw new Problem("value", calendarMessages.noHolidaysOf(year, FIRST_YEAR), "year");
  return RULES.filter(({ since = FIRST_YEAR }) => since <= year).map((rule) => {
    const onDate = dateIn(year, rule);
    return { name: rule.name, onDate, keptOn: onDate + shiftFor(dayOfWeek(onDate)) };
  });
}

function dateIn(year: number, { month, falls }: Rule): number {
  if ("day" in falls) return serialOf(year, month, falls.day);
  const { nth, weekday } = falls;
  // The weekday in the week that begins on the first of this month, or of the next to count back from.
  const first = nth > 0 ? serialOf(year, month, 1) : serialOf(year, month + 1, 1);
  const weekdayFromFirst = first + ((weekday - dayOfWeek(first) + DAYS_PER_WEEK) % DAYS_PER_WEEK);
  return weekdayFromFirst + (nth > 0 ? nth - 1 : nth) * DAYS_PER_WEEK;
}

function shiftFor(weekday: number): number {
  if (weekday === SATURDAY) return -1;
  return weekday === SUNDAY ? 1 : 0;
}
