import { checkDays } from "../../quantities/calendar/checkDays";
import { MOST_WORKING_DAYS } from "../../quantities/digDate";
import { messages } from "../../quantities/messages";
import { readNumber } from "../../quantities/numberText";
import { Problem } from "../../quantities/problem";
import type { JobDetails } from "./details";

/** What a problem calls each field of days; the screen says it at the field. */
export const DAYS = {
  notice: "Business days of notice",
  marks: "Days marks are good",
  valid: "Days the price is good",
} as const;

/** A price that holds longer than a year is a mistake. */
const MOST_VALID_DAYS = 365;

/**
 * The days that were typed.
 *
 * @throws Problem that quotes what is no count of days, and says what to type.
 */
export function noticeDays({ noticeDays: text }: JobDetails): number {
  if (text.trim() === "") throw new Problem("value", messages.missing(DAYS.notice, "2"), DAYS.notice);
  return daysOf(text, DAYS.notice, MOST_WORKING_DAYS);
}

/** The days for which marks are good; undefined where none were typed. Throws as {@link noticeDays} does. */
export function marksDays({ marksDays: text }: JobDetails): number | undefined {
  return text.trim() === "" ? undefined : daysOf(text, DAYS.marks, MOST_WORKING_DAYS);
}

/** The days for which the price holds; undefined where none were typed. Throws as {@link noticeDays} does. */
export function validDays({ validDays: text }: JobDetails): number | undefined {
  return text.trim() === "" ? undefined : daysOf(text, DAYS.valid, MOST_VALID_DAYS);
}

/** Of what is no number, the words for a length would ask for 12.5, which is no count of days. */
const IS_NUMBER = /^-?\d+([.,]\d+)?$/;

function daysOf(text: string, argument: string, most: number): number {
  if (!IS_NUMBER.test(text.trim())) throw new Problem("value", messages.notWhole(argument, text, most), argument);
  const days = readNumber(text, argument);
  checkDays(argument, days, most);
  return days;
}
