import type { WorkedOutBed } from "../../layout/planOfEstimate";
import { dateWords } from "../../quantities/calendar/calendarDay";
import { type DigNotice, digNotice } from "../../quantities/calendar/digNotice";
import type { Holiday } from "../../quantities/calendar/holidaysBetween";
import { dateOrder, readTypedDate } from "../../quantities/calendar/typedDate";
import { Problem } from "../../quantities/problem";
import type { NoticeFacts } from "../../sheets/papers/noticeSheet";
import { inches } from "../../sheets/papers/scopeOf";
import { marksDays, noticeDays } from "./days";
import { type JobDetails, linesOf } from "./details";
import { today } from "./today";

/** What a problem calls the field of the office's own holidays. */
export const OTHER_HOLIDAYS = "Other holidays";

export const START_DATE = "Start date";

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
    startDate: readTypedDate(details.start, START_DATE, today(), dateOrder()),
    workingDays: noticeDays(details),
    today: today(),
    holidays: { federal: details.federal === "yes", own: linesOf(details.ownHolidays).map(holidayOf) },
    ...(marks !== undefined && {
      marks: { days: marks, counted: details.marksCounted, from: "first day to dig" as const },
    }),
    daysOfWork: Math.max(1, daysOfWork),
  });
}

const MOST_WORDS_OF_A_DATE = 4;

/** A date and then a name, `11/27 Friday after Thanksgiving`, or a date alone: the most words that are a date. */
function holidayOf(line: string): Holiday {
  const words = line.split(/\s+/);
  const read = (count: number) => readTypedDate(words.slice(0, count).join(" "), OTHER_HOLIDAYS, today(), dateOrder());
  for (let count = Math.min(words.length, MOST_WORDS_OF_A_DATE); count > 0; count -= 1) {
    try {
      return { date: read(count), name: words.slice(count).join(" ") || "own holiday" };
    } catch (reason) {
      if (!(reason instanceof Problem)) throw reason;
    }
  }
  return { date: read(words.length), name: "" };
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
    deepest: `${inches(deepest)}: the scrape, and the edging trench below it`,
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
