import { FIRST_DATE } from "./digDate";
import { messages } from "./messages";
import { must } from "./must";
import { Problem } from "./problem";

const MILLISECONDS_PER_DAY = 86_400_000;
/** Serial number of 1970-01-01, where the computer's calendar begins. */
const SERIAL_OF_1970 = 25_569;

const ISO = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const SLASHED = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/;
const MONTH_FIRST = /^([a-z]{3,9})\.? (\d{1,2}),? (\d{4})$/;
const DAY_FIRST = /^(\d{1,2}) ([a-z]{3,9})\.?,? (\d{4})$/;
const MONTHS = "january february march april may june july august september october november december".split(" ");

/**
 * The date that a text says, as a serial number of the workbook's 1900 calendar.
 *
 * Reads 2026-03-02, March 2, 2026, 2 Mar 2026, and 3/13/2026 where the day cannot be taken for the month.
 *
 * @param text what was typed.
 * @param argument the name to use in the message.
 * @throws Problem "value" that quotes a text which is no date, or may be two dates.
 * @example readDate("2026-03-02", "notice_date") // 46083
 */
export function readDate(text: string, argument: string): number {
  const plain = text.length > 40 ? "" : text.trim().toLowerCase().replace(/\s+/g, " ");
  const serial = serialOf(...(partsOf(plain, text, argument) ?? [0, 0, 0]));
  if (serial === undefined) throw new Problem("value", messages.notADate(argument, text), argument);
  return serial;
}

function partsOf(plain: string, text: string, argument: string): [number, number, number] | undefined {
  const iso = ISO.exec(plain);
  if (iso) return [Number(iso[1]), Number(iso[2]), Number(iso[3])];
  const slashed = SLASHED.exec(plain);
  if (slashed) {
    const [month, day] = [Number(slashed[1]), Number(slashed[2])];
    if (month <= 12 && day <= 12 && month !== day) {
      const [one, other] = [`${slashed[3]}-${month}-${day}`, `${slashed[3]}-${day}-${month}`];
      throw new Problem("value", messages.twoReadings(argument, text, one, other), argument);
    }
    return [Number(slashed[3]), month, day];
  }
  const named = MONTH_FIRST.exec(plain);
  if (named) return [Number(named[3]), monthNamed(must(named[1])), Number(named[2])];
  const dayFirst = DAY_FIRST.exec(plain);
  if (dayFirst) return [Number(dayFirst[3]), monthNamed(must(dayFirst[2])), Number(dayFirst[1])];
  return undefined;
}

/** 1 to 12, or 0 for no month. */
function monthNamed(name: string): number {
  return (
    1 +
    MONTHS.findIndex(
      (month) => month === name || month.slice(0, 3) === name || (name === "sept" && month === "september"),
    )
  );
}

/** The serial number of a day that is in the calendar; undefined for one that is not, such as 30 February. */
function serialOf(year: number, month: number, day: number): number | undefined {
  const date = new Date(Date.UTC(year, month - 1, day));
  // A month or day that is none moves the date into another year, or to another day of the month.
  if (date.getUTCFullYear() !== year || date.getUTCDate() !== day) return undefined;
  // Four digits go no further than the last date of the calendar.
  const serial = date.getTime() / MILLISECONDS_PER_DAY + SERIAL_OF_1970;
  return serial >= FIRST_DATE ? serial : undefined;
}
