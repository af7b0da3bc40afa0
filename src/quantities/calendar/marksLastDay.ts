import { digDate } from "../digDate";

/** How long marks on the ground are good for, as the law of the place or the ticket says. */
export interface MarksLife {
  /** A whole number, 1 or more. */
  readonly days: number;
  readonly counted: "calendar" | "working";
  /** From the day of notice, or from the first day on which digging may start. That day is not counted. */
  readonly from: "notice" | "first day to dig";
}

/**
 * The last day on which marks are good.
 *
 * @param fromDate serial number of the day from which they count, which is not counted itself.
 * @param life how many days, and which; `from` is for the caller.
 * @param holidays serial numbers of days that are no working days.
 * @returns serial number of the day.
 * @throws Problem where the calendar ends before that day.
 * @example marksLastDay(46083, { days: 14, counted: "calendar", from: "notice" }) // 46097
 */
export function marksLastDay(fromDate: number, { days, counted }: MarksLife, holidays: readonly number[] = []): number {
  // The first day to dig after a notice of n working days is the working day after the nth.
  return counted === "calendar" ? fromDate + days : digDate(fromDate, days - 1, holidays);
}
