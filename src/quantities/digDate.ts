import { messages } from "./messages";
import { Problem } from "./problem";

/** The first serial number from which the workbook's calendar and the real one agree: 1900-03-01. */
export const FIRST_DATE = 61;
/** 9999-12-31, the last date a workbook knows. */
export const LAST_DATE = 2_958_465;
/** The longest notice that is still a number of days and no mistake. */
export const MOST_WORKING_DAYS = 366;

const DAYS_PER_WEEK = 7;
/** Serial numbers count on from a Sunday, so in weeks Saturday is 0 and Sunday is 1. */
const MONDAY_IN_WEEK = 2;

/**
 * Whether work is done on a day: Monday to Friday, and no holiday.
 *
 * @param date serial number of the workbook's 1900 calendar, FIRST_DATE to LAST_DATE.
 * @param holidays serial numbers.
 * @example isWorkingDay(46083) // true: Monday 2026-03-02
 */
export function isWorkingDay(date: number, holidays: readonly number[] = []): boolean {
  return date % DAYS_PER_WEEK >= MONDAY_IN_WEEK && !holidays.includes(date);
}

/**
 * The first day on which digging may start: after the day of notice, which is not counted, and that many full
 * working days. It is a working day itself. A guide only: the utility ticket and the law of the place rule.
 *
 * @param noticeDate day of notice, as a serial number of the workbook's 1900 calendar.
 * @param workingDays full working days of notice, a whole number, 1 to 366.
 * @param holidays serial numbers of days that are no working days.
 * @returns serial number of the day.
 * @throws Problem where the calendar ends before that day.
 * @example digDate(46083, 2) // 46086: notice on Monday 2026-03-02, digging from Thursday
 */
export function digDate(noticeDate: number, workingDays: number, holidays: readonly number[] = []): number {
  let date = noticeDate;
  for (let toPass = workingDays + 1; toPass > 0; ) {
    date++;
    if (date > LAST_DATE) throw new Problem("value", messages.afterLastDate(), "notice_date");
    if (isWorkingDay(date, holidays)) toPass--;
  }
  return date;
}
