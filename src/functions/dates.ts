import { digDate, MOST_WORKING_DAYS } from "../quantities/digDate";
import { cellError, sound } from "./cellError";
import { count } from "./read";
import { date } from "./readNamed";
import { dates } from "./readRanges";

/**
 * First day digging may start after notice. A guide only: the utility ticket and local law rule.
 * @customfunction DIG_DATE
 * @param notice_date Day of notice, which is not counted: a date, or text such as 2026-03-02.
 * @param working_days Full working days of notice, as your one-call center asks, such as 2.
 * @param holidays Dates that are no working days: one cell or a range. Blanks are skipped.
 * @returns A date as a serial number; format the cell as a date.
 * @example =BED.DIG_DATE("2026-03-02", 2) gives 2026-03-05
 * @source 49 CFR 196.103 asks for the call before digging and counts no days; states do. The ticket rules.
 * @see BED.DIG_YARDS
 */
export function DIG_DATE(notice_date: unknown, working_days: unknown, holidays?: unknown[][]): number {
  try {
    return sound(
      digDate(
        date(notice_date, "notice_date"),
        count(working_days, "working_days", MOST_WORKING_DAYS),
        dates(holidays, "holidays"),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}
