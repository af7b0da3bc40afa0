/** What the calendar says about a date it cannot count from. Part of the one catalogue. */
export const calendarMessages = {
  noHolidaysOf: (year: number, first: number) =>
    `The federal holidays of ${year} are not known here. Type a date from ${first} to 9999.`,
  beforeFirstDate: () => "start_date lies so early that the calendar begins after the day of notice. Type the start.",
  tooMuchWork: (days: number, most: number) =>
    `The work of these beds comes to ${days.toLocaleString("en-US")} days, and a notice counts ${most} at most. ` +
    "Take beds out of the job, or look at their sizes.",
} as const;

/**
 * Warnings about a notice, for the sheet and the pane; dates arrive in words. They say what the count gives and leave
 * the last word to the ticket and the law of the place.
 */
export const noticeWords = {
  startInPast: (start: string) => `The start, ${start}, lies in the past. Type a later one.`,
  startOnWeekend: (start: string) => `The start, ${start}, is no working day. Ask whether locators and tip are there.`,
  startOnHoliday: (start: string, holiday: string) =>
    `The start, ${start}, is a holiday (${holiday}). Ask whether locators and tip are there.`,
  noticeAhead: (notice: string) => `Notice is planned for ${notice}; until it is given, no day to dig is sure.`,
  noticeOnDayOff: (notice: string) =>
    `${notice}, the day of notice, is no working day. Many places count it as given on the next working day.`,
  tooLate: (notice: string, earliest: string, start: string) =>
    `Notice on ${notice} allows digging from ${earliest}, not from ${start}. Move the start.`,
  lastChance: (start: string) => `Today is the last day to give notice for a start on ${start}.`,
  marksEndFirst: (last: string, start: string) =>
    `Marks are good to ${last}, before the start on ${start}. Give notice later, or ask for them to be renewed.`,
  marksEndDuring: (last: string, done: string) =>
    `Marks are good to ${last}, and the work goes on to ${done}. Ask in time for them to be renewed.`,
  ticketRules: () => "The ticket and the law of the place rule over this count.",
} as const;
