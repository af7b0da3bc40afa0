import { readDate } from "../dateText";
import { DAYS_PER_WEEK } from "./week";

/** Serial number 0 of the workbook's calendar, which agrees with the real one from 1900-03-01 on. */
const START = Date.UTC(1899, 11, 30);
const MILLISECONDS_PER_DAY = 86_400_000;

const usual = new Intl.DateTimeFormat("en-US", { dateStyle: "long", timeZone: "UTC" });
const words = new Intl.DateTimeFormat("en-US", {
  weekday: "long",
  year: "numeric",
  month: "long",
  day: "numeric",
  timeZone: "UTC",
});

/**
 * The serial number of a day of the workbook's 1900 calendar.
 *
 * @param year 1900 to 9999.
 * @param month 1 to 12.
 * @param day 1 to 31, and in that month.
 * @throws Problem for a day that is not in the calendar.
 * @example serialOf(2026, 3, 2) // 46083
 */
export function serialOf(year: number, month: number, day: number): number {
  return readDate(`${year}-${month}-${day}`, "date");
}

/** The year in which a day lies. @example yearOf(46083) // 2026 */
export function yearOf(date: number): number {
  return dayOfComputer(date).getUTCFullYear();
}

/**
 * A day in words, as a sheet or a warning shows it.
 *
 * @param date serial number of the workbook's 1900 calendar.
 * @example dateWords(46083) // "Monday, March 2, 2026"
 */
export function dateWords(date: number): string {
  return words.format(dayOfComputer(date));
}

/**
 * A day as files write it.
 *
 * @param date serial number of the workbook's 1900 calendar, from 61 on.
 * @example isoDate(46083) // "2026-03-02"
 */
export function isoDate(date: number): string {
  return dayOfComputer(date).toISOString().slice(0, "2026-03-02".length);
}

/**
 * A day without its day of the week, as a letter shows it.
 *
 * @param date serial number of the workbook's 1900 calendar.
 * @example dateLine(46083) // "March 2, 2026"
 */
export function dateLine(date: number): string {
  return usual.format(dayOfComputer(date));
}

/**
 * The day of the week: 0 for Sunday to 6 for Saturday.
 *
 * @param date serial number of the workbook's 1900 calendar, from 61 on.
 * @example dayOfWeek(46083) // 1
 */
export function dayOfWeek(date: number): number {
  return (date - 1) % DAYS_PER_WEEK;
}

function dayOfComputer(date: number): Date {
  return new Date(START + date * MILLISECONDS_PER_DAY);
}
