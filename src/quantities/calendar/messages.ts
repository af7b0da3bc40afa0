import { quoted } from "../messages";

/** What the calendar says about a date it cannot count from. Part of the one catalogue. */
export const calendarMessages = {
  notADate: (argument: string, given: string) =>
    `${argument}: can't read ${quoted(given)} as a date. Try 12/7/2026, Dec 7, or 2026-12-07.`,
  otherWeekday: (argument: string, given: string, date: string) =>
    `${argument}: ${quoted(given)} is ${date}. Type the date or the day of the week you mean.`,
  noHolidaysOf: (year: number, first: number) =>
    `Federal holidays for ${year} aren't known. Type a date from ${first} to 9999.`,
  beforeFirstDate: () => "start_date is too early. Type the day you want to start.",
  tooMuchWork: (days: number, most: number) =>
    `These beds come to ${days.toLocaleString("en-US")} days of work, and a notice covers ${most} at most. ` +
    "Remove beds from the job, or check their sizes.",
} as const;

/**
 * Warnings about a notice, for the sheet and the pane; dates arrive in words. They say what the count gives and leave
 * the last word to the ticket and the state's rule.
 */
export const noticeWords = {
  startInPast: (start: string) => `The start date, ${start}, is in the past. Type a later date.`,
  startOnWeekend: (start: string) =>
    `The start date, ${start}, isn't a business day. Make sure locators and the dump are open.`,
  startOnHoliday: (start: string, holiday: string) =>
    `The start date, ${start}, is a holiday (${holiday}). Make sure locators and the dump are open.`,
  noticeAhead: (notice: string) => `Notice is planned for ${notice}. Until you give it, no dig date is certain.`,
  noticeOnDayOff: (notice: string) =>
    `${notice}, the day of notice, isn't a business day. Many states count it as given the next business day.`,
  tooLate: (notice: string, earliest: string, start: string) =>
    `Notice on ${notice} lets you dig from ${earliest}, not from ${start}. Move the start date.`,
  lastChance: (start: string) => `Today is the last day to give notice to start on ${start}.`,
  marksEndFirst: (last: string, start: string) =>
    `Marks are good through ${last}, before the start on ${start}. Give notice later, or have them renewed.`,
  marksEndDuring: (last: string, done: string) =>
    `Marks are good through ${last}, and the work runs to ${done}. Have them renewed in time.`,
  ticketRules: () => "Your ticket and your state's rule come before this count.",
} as const;
