import { dateWords } from "../../quantities/calendar/calendarDay";
import { type DigNotice, digNotice } from "../../quantities/calendar/digNotice";
import type { Holiday } from "../../quantities/calendar/holidaysBetween";
import { readDate } from "../../quantities/dateText";
import type { NoticeFacts } from "../../sheets/papers/noticeSheet";
import { inches } from "../../sheets/papers/scopeOf";
import { marksDays, noticeDays } from "./days";
import { type JobDetails, linesOf } from "./details";
import type { WorkedOutBed } from "./needsOf";
import { today } from "./today";

/** What a problem calls the field of the office's own holidays. */
export const OTHER_HOLIDAYS = "Other holidays";

/** A bed of the job by name. */
export interface NamedBed extends WorkedOutBed {
  readonly name: string;
}

/**
 * The notice before digging, from what was typed.
 *
 * @returns undefined where no start was typed yet.
 * @throws Problem that names what cannot be read.
 */
export function noticeOf(details: JobDetails, daysOfWork: number): DigNotice | undefined {
  if (details.start.trim() === "") return undefined;
  const marks = marksDays(details);
  return digNotice({
    startDate: readDate(details.start, "Start"),
    workingDays: noticeDays(details),
    today: today(),
    holidays: { federal: details.federal === "yes", own: linesOf(details.ownHolidays).map(holidayOf) },
    ...(marks !== undefined && {
      marks: { days: marks, counted: details.marksCounted, from: "first day to dig" as const },
    }),
    daysOfWork: Math.max(1, daysOfWork),
  });
}

/** `2026-11-27 Friday after Thanksgiving`, or a date alone. */
function holidayOf(line: string): Holiday {
  const [first = "", ...name] = line.split(/\s+/);
  // A date such as November 27, 2026 has spaces of its own.
  const isOneWord = /^\d/.test(first) && /[-/]/.test(first);
  return isOneWord
    ? { date: readDate(first, OTHER_HOLIDAYS), name: name.join(" ") || "own holiday" }
    : { date: readDate(line, OTHER_HOLIDAYS), name: "own holiday" };
}

/** What the notice says on paper. */
export function noticeFacts(details: JobDetails, notice: DigNotice, beds: readonly NamedBed[]): NoticeFacts {
  const deepest = Math.max(...beds.map(({ bed: { numbers: n } }) => n.scrapeDepth + n.trenchDepth));
  return {
    job: details.job.trim(),
    place: details.place.trim(),
    start: dateWords(notice.startDate),
    noticeDays: noticeDays(details),
    lastNotice: dateWords(notice.lastNoticeDate),
    noticeOn: dateWords(notice.noticeDate),
    earliestDig: dateWords(notice.earliestDate),
    marksGoodTo: notice.marksLastDay === undefined ? "" : dateWords(notice.marksLastDay),
    holidays: counted(notice).map(({ date, name }) => ({ date: dateWords(date), name })),
    warnings: notice.warnings.map(({ text }) => text),
    beds: beds.map(({ name, estimate: { amounts } }) => ({
      name,
      areaSqFt: amounts.stoneArea,
      extent: `within ${Math.ceil(amounts.fabricLength)} by ${Math.ceil(amounts.fabricWidth)} ft`,
    })),
    deepest: `${inches(deepest)}: the scrape, and the border's trench below it`,
  };
}

/** The holidays that lie in one of the stretches that were counted. */
function counted({ holidays, lastNoticeDate, startDate, noticeDate, earliestDate, lastDayOfWork }: DigNotice) {
  const stretches = [
    [lastNoticeDate, startDate],
    [noticeDate, earliestDate],
    [startDate, lastDayOfWork],
  ] as const;
  return holidays.filter(({ date }) => stretches.some(([from, to]) => from <= date && date <= to));
}
