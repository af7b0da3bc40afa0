import { FIRST_DATE, isWorkingDay } from "../digDate";
import { Problem } from "../problem";
import { calendarMessages } from "./messages";

/**
 * The last working day on which notice can be given so that digging may start on the requested day: `digDate` the other
 * way round. The day of notice is not counted, and all the working days of notice have passed before the start.
 *
 * A start on a Saturday, Sunday or holiday counts as one on the working day before it, since notice that is early
 * enough for that day is early enough for the requested one.
 *
 * @param startDate requested start, as a serial number of the workbook's 1900 calendar.
 * @param workingDays full working days of notice, a whole number, 1 to 366.
 * @param holidays serial numbers of days that are no working days.
 * @returns serial number of a working day; notice on the working day after it would be too late.
 * @throws Problem where the calendar begins after that day.
 * @example lastNoticeDate(46086, 2) // 46083: to dig on Thursday 2026-03-05, notice by Monday
 */
export function lastNoticeDate(startDate: number, workingDays: number, holidays: readonly number[] = []): number {
  let date = startDate + 1;
  // The start itself, the days of notice, and the day on which it is given.
  for (let toPass = workingDays + 2; toPass > 0; ) {
    date--;
    if (date < FIRST_DATE) throw new Problem("value", calendarMessages.beforeFirstDate(), "start_date");
    if (isWorkingDay(date, holidays)) toPass--;
  }
  return date;
}
