import { isWorkingDay } from "../digDate";
import { dateWords } from "./calendarDay";
import type { Holiday } from "./holidaysBetween";
import { noticeWords } from "./messages";

export interface NoticeWarning {
  readonly kind: Exclude<keyof typeof noticeWords, "ticketRules">;
  /** A sentence or two for the sheet and the pane. */
  readonly text: string;
}

interface NoticeDates {
  readonly startDate: number;
  readonly noticeDate: number;
  readonly lastNoticeDate: number;
  readonly earliestDate: number;
  readonly isInTime: boolean;
  readonly lastDayOfWork: number;
  readonly marksLastDay: number | undefined;
}

/**
 * What is in the way of a start, the gravest first.
 *
 * @param dates as worked out by `digNotice`.
 * @param today serial number.
 * @param holidays the days off around these dates, with their names.
 */
export function noticeWarnings(dates: NoticeDates, today: number, holidays: readonly Holiday[]): NoticeWarning[] {
  const { startDate, noticeDate, earliestDate, lastDayOfWork, marksLastDay: marksEnd } = dates;
  const daysOff = holidays.map(({ date }) => date);
  const start = dateWords(startDate);
  const notice = dateWords(noticeDate);
  const warnings: NoticeWarning[] = [];
  const warn = (kind: NoticeWarning["kind"], text: string) => warnings.push({ kind, text });

  if (startDate < today) warn("startInPast", noticeWords.startInPast(start));
  if (!dates.isInTime) warn("tooLate", noticeWords.tooLate(notice, dateWords(earliestDate), start));
  else if (noticeDate === today && today === dates.lastNoticeDate) warn("lastChance", noticeWords.lastChance(start));
  if (noticeDate > today) warn("noticeAhead", noticeWords.noticeAhead(notice));
  if (!isWorkingDay(noticeDate, daysOff)) warn("noticeOnDayOff", noticeWords.noticeOnDayOff(notice));

  const holiday = holidays.find(({ date }) => date === startDate);
  if (holiday) warn("startOnHoliday", noticeWords.startOnHoliday(start, holiday.name));
  else if (!isWorkingDay(startDate)) warn("startOnWeekend", noticeWords.startOnWeekend(start));

  if (marksEnd !== undefined && marksEnd < startDate)
    warn("marksEndFirst", noticeWords.marksEndFirst(dateWords(marksEnd), start));
  else if (marksEnd !== undefined && marksEnd < lastDayOfWork)
    warn("marksEndDuring", noticeWords.marksEndDuring(dateWords(marksEnd), dateWords(lastDayOfWork)));
  return warnings;
}
