import { Problem } from "../problem";
import { dayOfWeek, isoDate, serialOf, yearOf } from "./calendarDay";
import { calendarMessages } from "./messages";

/** In which order a machine's locale writes day, month, and year. */
export type DateOrder = "mdy" | "dmy" | "ymd";

const MONTHS = "january february march april may june july august september october november december".split(" ");
const WEEKDAYS = "sun mon tue wed thu fri sat".split(" ");
const LONGEST_TEXT = 40;

const YEAR_FIRST = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/;
const IN_FIGURES = /^(\d{1,2}) ?([-/.]) ?(\d{1,2})(?: ?\2 ?'?(\d{4}|\d\d))?$/;
const MONTH_FIRST = /^([a-z]{3,9})\.?[ -]?(\d{1,2})(?:st|nd|rd|th)?(?:(?:,? ?|-)'?(\d{4}|(?<=['-])\d\d))?$/;
const DAY_FIRST = /^(\d{1,2})(?:st|nd|rd|th)?(?:[ -]| of )?([a-z]{3,9})\.?(?:(?:,? ?|-)'?(\d{4}|(?<=['-])\d\d))?$/;
/** A day of the week in front of the date or behind it. */
const WEEKDAY = /^\(?(sun|mon|tue|wed|thu|fri|sat)[a-z]*\.?\)?,? +|,? +\(?(sun|mon|tue|wed|thu|fri|sat)[a-z]*\.?\)?$/;

interface Day {
  readonly year: number | undefined;
  readonly month: number;
  readonly day: number;
}

/**
 * The day that a person typed, as a serial number of the workbook's 1900 calendar.
 *
 * Reads `12/7/2026`, `12/7/26`, `12-7`, `Dec 7`, `7 December 2026`, `Mon, Dec 7`, and `2026-12-07`. Figures are taken in
 * the machine's order; where that gives no day, such as `25/12` in the order of the United States, the other way round.
 * Without a year it is the next such day from today on, within this year and the next. A day of the week that doesn't fit the date is refused.
 *
 * @param text what was typed.
 * @param argument the name to use in the message.
 * @param today serial number of today.
 * @param order of the machine's locale; year first counts as month before day.
 * @throws Problem "value" that quotes a text that is no date.
 * @example readTypedDate("Dec 7", "Start date", 46345, "mdy") // 46363: Monday, December 7, 2026
 */
export function readTypedDate(text: string, argument: string, today: number, order: DateOrder): number {
  const plain =
    text.length > LONGEST_TEXT
      ? ""
      : text
          .trim()
          .toLowerCase()
          .replace(/[\s,]+/g, (gap) => (gap.includes(",") ? ", " : " "));
  const [said, before, behind] = WEEKDAY.exec(plain) ?? [""];
  const bare = said ? plain.replace(said, "") : plain;
  const date =
    serialFrom(dayFrom(bare, order), today) ?? serialFrom(dayFrom(bare, order === "dmy" ? "mdy" : "dmy"), today);
  if (date === undefined) throw new Problem("value", calendarMessages.notADate(argument, text), argument);
  const weekday = before ?? behind;
  if (weekday && WEEKDAYS[dayOfWeek(date)] !== weekday)
    throw new Problem("value", calendarMessages.otherWeekday(argument, text, shownDate(date, order)), argument);
  return date;
}

/** The day, month, and year that a text names; undefined where it's no date at all. */
function dayFrom(plain: string, order: DateOrder): Day | undefined {
  const iso = YEAR_FIRST.exec(plain);
  if (iso) return { year: Number(iso[1]), month: Number(iso[2]), day: Number(iso[3]) };
  const figures = IN_FIGURES.exec(plain);
  if (figures) {
    const [first, second] = [Number(figures[1]), Number(figures[3])];
    const [month, day] = order === "dmy" ? [second, first] : [first, second];
    return { year: yearFrom(figures[4]), month, day };
  }
  const [, name = "", day, year] = MONTH_FIRST.exec(plain) ?? reordered(DAY_FIRST.exec(plain)) ?? [];
  const month = 1 + MONTHS.findIndex((whole) => whole.startsWith(name === "sept" ? "sep" : name));
  return name && month > 0 ? { year: yearFrom(year), month, day: Number(day) } : undefined;
}

const reordered = (found: RegExpExecArray | null) => found && [found[0], found[2], found[1], found[3]];

const CENTURY = 2000;

const yearFrom = (year: string | undefined): number | undefined =>
  year === undefined ? undefined : year.length === 2 ? CENTURY + Number(year) : Number(year);

function serialFrom(day: Day | undefined, today: number): number | undefined {
  if (!day) return undefined;
  if (day.year !== undefined) return inCalendar(day.year, day);
  const years = [yearOf(today), yearOf(today) + 1];
  return years.map((year) => inCalendar(year, day)).find((date) => date !== undefined && date >= today);
}

function inCalendar(year: number, { month, day }: Day): number | undefined {
  try {
    return serialOf(year, month, day);
  } catch (reason) {
    if (reason instanceof Problem) return undefined;
    throw reason;
  }
}

/** A day in figures, in the order of a locale. */
function writtenDate(date: number, order: DateOrder): string {
  const iso = isoDate(date);
  const [year, month, day] = iso.split("-").map(Number);
  if (order === "ymd") return iso;
  return order === "dmy" ? `${day}/${month}/${year}` : `${month}/${day}/${year}`;
}

/**
 * A day as it's shown beside what was typed, with its day of the week.
 *
 * @param date serial number of the workbook's 1900 calendar, from 61 on.
 * @example shownDate(46363, "mdy") // "12/7/2026 (Mon)"
 */
export function shownDate(date: number, order: DateOrder): string {
  const short = WEEKDAYS[dayOfWeek(date)] ?? "";
  const weekday = short.slice(0, 1).toUpperCase() + short.slice(1);
  return `${writtenDate(date, order)} (${weekday})`;
}

/**
 * In which order a locale writes a date in figures.
 *
 * @param locale such as "en-US"; the machine's own where left out.
 * @example dateOrder("en-GB") // "dmy"
 */
export function dateOrder(locale?: string): DateOrder {
  const parts = new Intl.DateTimeFormat(locale).formatToParts().map(({ type }) => type);
  const before = (one: Intl.DateTimeFormatPartTypes, other: Intl.DateTimeFormatPartTypes) =>
    parts.indexOf(one) < parts.indexOf(other);
  if (before("year", "month")) return "ymd";
  return before("day", "month") ? "dmy" : "mdy";
}
