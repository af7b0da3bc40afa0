import { readDate } from "../quantities/dateText";
import { FIRST_DATE, LAST_DATE } from "../quantities/digDate";
import { messages } from "../quantities/messages";
import { Problem } from "../quantities/problem";
import { soilNamed } from "../quantities/soil";
import { MOST_TONS_PER_YARD, stoneNamed } from "../quantities/stone";
import type { WidthRule } from "../quantities/widths";
import { cellValue } from "./cell";
import { positive, positiveOrZero, share } from "./read";

/** Short tons a loose cubic yard, from a number or from the name of a stone. */
export function stoneWeight(value: unknown, argument: string): number {
  if (typeof value === "number" && value > 0 && value <= MOST_TONS_PER_YARD) return value;
  const given = cellValue(value, argument);
  if (isName(given)) return stoneNamed(given, argument).tonsPerYard;
  if (given === undefined || given === 0)
    throw new Problem("value", messages.zero(argument, "1.35 or “river rock”"), argument);
  return notTooHeavy(positive(given, argument), argument);
}

/** Short tons a loose cubic yard, 0 where the weight doesn't matter. */
export function weightOrZero(value: unknown, argument: string, fallback?: number): number {
  return notTooHeavy(positiveOrZero(value, argument, fallback), argument);
}

/** Refuses a weight that can only be pounds typed for tons. */
function notTooHeavy(tonsPerYard: number, argument: string): number {
  if (tonsPerYard <= MOST_TONS_PER_YARD) return tonsPerYard;
  throw new Problem("value", messages.tooHeavy(argument, tonsPerYard, MOST_TONS_PER_YARD), argument);
}

/** Swell as a share, from a number or from the name of a soil. Soil always swells, so a 0 is a blank: loam. */
export function soilSwell(value: unknown, argument: string): number {
  if (typeof value === "number" && value > 0) return share(value, argument);
  const given = cellValue(value, argument);
  if (given === undefined || given === 0) return soilNamed("loam").swell;
  return isName(given) ? soilNamed(given, argument).swell : share(given, argument);
}

/** The rule by which widths become an area; Simpson's where none is given. */
export function widthRule(value: unknown, argument: string): WidthRule {
  const given = cellValue(value, argument);
  if (given === undefined || given === 0) return "simpson";
  const name = typeof given === "string" ? given.trim().toLowerCase() : "";
  if (name === "simpson" || name === "trapezoid") return name;
  throw new Problem("value", messages.notARule(argument, given), argument);
}

/** A date as a serial number: a date cell with or without a time of day, or text. */
export function date(value: unknown, argument: string): number {
  const given = cellValue(value, argument);
  if (given === undefined || given === 0)
    throw new Problem("value", messages.missing(argument, "2026-03-02"), argument);
  if (typeof given === "string") return readDate(given, argument);
  const day = typeof given === "number" ? Math.floor(given) : Number.NaN;
  if (day >= FIRST_DATE && day <= LAST_DATE) return day;
  throw new Problem("value", messages.notADate(argument, given), argument);
}

/** Text with a letter in it is a name, also one that begins with a size: 3/4 in gravel. */
function isName(value: unknown): value is string {
  return typeof value === "string" && /\p{L}/u.test(value);
}
