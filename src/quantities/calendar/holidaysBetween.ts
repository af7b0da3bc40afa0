import { yearOf } from "./calendarDay";
import { federalHolidays, LAST_YEAR } from "./federalHolidays";

/** A day that does not count as a working day. */
export interface Holiday {
  /** Serial number of the workbook's 1900 calendar. */
  readonly date: number;
  readonly name: string;
}

/** Which days the law of the place leaves out of the count, as the office has set it up. */
export interface HolidayRules {
  /** Whether the federal holidays count as holidays; some places keep their own list alone. */
  readonly federal: boolean;
  /** Federal holidays, by their names in `federalHolidayNames`, that count as working days in the place. */
  readonly exceptFederal?: readonly string[];
  /** The office's own: days that the place or the office keeps besides, such as the Friday after Thanksgiving. */
  readonly own: readonly Holiday[];
}

/**
 * The holidays in a stretch of days: the federal ones on the days on which they are kept, and the office's own.
 *
 * @param firstDate serial number of the first day; `lastDate` of the last, both included.
 * @returns each day once, the earliest first; where two holidays meet on a day it has both names.
 * @throws Problem where federal holidays are asked for before 1978.
 * @example holidaysBetween(46204, 46210, { federal: true, own: [] }) // Independence Day, kept on Friday 2026-07-03
 */
export function holidaysBetween(firstDate: number, lastDate: number, rules: HolidayRules): Holiday[] {
  const found = [...(rules.federal ? federalBetween(firstDate, lastDate, rules.exceptFederal ?? []) : []), ...rules.own]
    .filter(({ date }) => date >= firstDate && date <= lastDate)
    .sort((a, b) => a.date - b.date);
  const days = new Map<number, string[]>();
  for (const { date, name } of found) {
    const names = days.get(date) ?? [];
    const isNew = name.trim() !== "" && !names.some((one) => one.toLowerCase() === name.trim().toLowerCase());
    days.set(date, isNew ? [...names, name.trim()] : names);
  }
  return [...days].map(([date, names]) => ({ date, name: names.join(" and ") || "Holiday" }));
}

function federalBetween(firstDate: number, lastDate: number, except: readonly string[]): Holiday[] {
  const days: Holiday[] = [];
  // New Year's Day of the year after may be kept on the last day of December.
  const lastYear = Math.min(yearOf(lastDate) + 1, LAST_YEAR);
  for (let year = yearOf(firstDate); year <= lastYear; year++)
    for (const { name, keptOn } of federalHolidays(year)) if (!except.includes(name)) days.push({ name, date: keptOn });
  return days;
}
