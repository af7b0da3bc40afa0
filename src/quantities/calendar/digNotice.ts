import { digDate, LAST_DATE, MOST_WORKING_DAYS } from "../digDate";
import { Problem } from "../problem";
import { checkDays } from "./checkDays";
import { type Holiday, type HolidayRules, holidaysBetween } from "./holidaysBetween";
import { lastNoticeDate } from "./lastNoticeDate";
import { type MarksLife, marksLastDay } from "./marksLastDay";
import { calendarMessages } from "./messages";
import { type NoticeWarning, noticeWarnings } from "./noticeWarnings";

/** What the office knows and asks for. All dates are whole serial numbers of the workbook's 1900 calendar. */
export interface NoticeOptions {
  readonly startDate: number;
  /** Full working days of notice that the place asks for, a whole number, 1 to 366. */
  readonly workingDays: number;
  readonly today: number;
  /** The day on which notice was or will be given; today where it is left out. */
  readonly noticeDate?: number;
  readonly holidays: HolidayRules;
  /** Left out where the office has entered no life of marks: then nothing is said about them. */
  readonly marks?: MarksLife;
  /** Working days that the work takes from the start on, 1 or more. Left out: 1. */
  readonly daysOfWork?: number;
}

/** A notice worked out. All dates are serial numbers. */
export interface DigNotice {
  readonly startDate: number;
  readonly noticeDate: number;
  /** The last working day on which notice is in time for the start. */
  readonly lastNoticeDate: number;
  /** First day on which digging may start with notice on `noticeDate`. */
  readonly earliestDate: number;
  /** The same if notice were given today. */
  readonly earliestIfToday: number;
  readonly isInTime: boolean;
  /** The last working day of the work, begun on the requested day. */
  readonly lastDayOfWork: number;
  /** The last day on which marks are good; undefined where the office entered no life of marks. */
  readonly marksLastDay: number | undefined;
  /** Holidays from the first to the last of these days, which the counts passed over. */
  readonly holidays: readonly Holiday[];
  readonly warnings: readonly NoticeWarning[];
}

/** Calendar days in which so many working days lie for certain, beside weekends and federal holidays so many days off. */
const reachOf = (workingDays: number, daysOff: number) => 60 + 2 * (workingDays + daysOff);

/**
 * The notice before digging: by when to give it, from when to dig, how long marks are good, and what is in the way.
 * Working days are counted as BED.DIG_DATE counts them. A guide only: the ticket and your state's rule come first.
 *
 * @throws Problem for days of notice, of marks or of work that are not whole or not over 0, and where the calendar ends.
 * @example digNotice({ startDate: 46086, workingDays: 2, today: 46080, holidays: { federal: true, own: [] } })
 *   .lastNoticeDate // 46083: notice by Monday 2026-03-02 for a start on Thursday
 */
export function digNotice(options: NoticeOptions): DigNotice {
  const { startDate, workingDays, today, noticeDate = today, marks, daysOfWork = 1 } = options;
  checkDays("working_days", workingDays, MOST_WORKING_DAYS);
  // No one types these: they are what the beds come to.
  if (daysOfWork > MOST_WORKING_DAYS)
    throw new Problem("value", calendarMessages.tooMuchWork(daysOfWork, MOST_WORKING_DAYS), "days_of_work");
  checkDays("days_of_work", daysOfWork, MOST_WORKING_DAYS);
  if (marks) checkDays("marks_days", marks.days, MOST_WORKING_DAYS);

  const dates = [startDate, today, noticeDate];
  const own = options.holidays.own.length;
  const before = reachOf(workingDays, own);
  const after = before + reachOf(daysOfWork, own) + reachOf(marks?.days ?? 0, own);
  const all = holidaysBetween(
    Math.min(...dates) - before,
    Math.min(Math.max(...dates) + after, LAST_DATE),
    options.holidays,
  );
  const daysOff = all.map(({ date }) => date);

  const earliestDate = digDate(noticeDate, workingDays, daysOff);
  const last = lastNoticeDate(startDate, workingDays, daysOff);
  const counts = {
    startDate,
    noticeDate,
    lastNoticeDate: last,
    earliestDate,
    earliestIfToday: digDate(today, workingDays, daysOff),
    isInTime: earliestDate <= startDate,
    lastDayOfWork: lastDayOfWork(startDate, daysOfWork, daysOff),
    marksLastDay: marks && marksLastDay(marks.from === "notice" ? noticeDate : earliestDate, marks, daysOff),
  };
  const named = Object.values(counts).filter((value) => typeof value === "number");
  const [from, to] = [Math.min(...named), Math.max(...named)];
  return {
    ...counts,
    holidays: all.filter(({ date }) => date >= from && date <= to),
    warnings: noticeWarnings(counts, today, all),
  };
}

/** The day on which work of so many days ends. The start is a day of work whatever day it is; the others are working days. */
function lastDayOfWork(startDate: number, daysOfWork: number, daysOff: readonly number[]): number {
  // Digging after n full days takes n + 2 days, the first and the last included; for a single day none are passed.
  return digDate(startDate, daysOfWork - 2, daysOff);
}
