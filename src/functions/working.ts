import { must } from "../quantities/must";
import type { Point } from "../quantities/outline";
import { INCHES_PER_FOOT } from "../quantities/units";
import { wholeUp } from "../quantities/whole";

/* What the lines of a working have in common: how numbers are shown, and sums. */

/** A number as a working shows it: six digits, thousands apart. */
export const shown = (value: number): string => value.toLocaleString("en-US", { maximumSignificantDigits: 6 });

export const shareShown = (share: number): string => `${shown(share * 100)}%`;

const DAYS_TO_1970 = 25_569;
const MS_PER_DAY = 86_400_000;

/** A serial number of the host as a day: `Mon 2026-03-02`. */
export function dayShown(serial: number): string {
  const day = new Date((Math.floor(serial) - DAYS_TO_1970) * MS_PER_DAY);
  if (Number.isNaN(day.getTime())) return shown(serial);
  const name = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"][day.getUTCDay()];
  return `${name} ${day.toISOString().slice(0, 10)}`;
}

/** `4.63 ÷ 5 = 0.926, so 1`. */
export function roundedUp(how: string, amount: number): string {
  const whole = wholeUp(amount);
  return `${how} = ${shown(amount)}${whole === amount ? "" : `, so ${shown(whole)}`}`;
}

/** Inches as feet, in words: `6 in = 0.5 ft`. */
export const inFeet = (inches: number): string => `${shown(inches)} in = ${shown(inches / INCHES_PER_FOOT)} ft`;

const MOST_PARTS_SHOWN = 8;

/** A sum of lengths; of many only the first. */
export function sumLines(what: string, parts: readonly number[], answer: number): string[] {
  const listed =
    parts.length > MOST_PARTS_SHOWN ? [...parts.slice(0, MOST_PARTS_SHOWN - 1).map(shown), "…"] : parts.map(shown);
  return [what, `${listed.join(" + ")} = ${shown(answer)} ft`];
}

/** The corners of an outline, of which the first may be given again at the end. */
export function outlineCorners(points: readonly Point[]): readonly Point[] {
  const [first, last] = [points[0], points.at(-1)];
  const isAgain = points.length > 1 && must(first)[0] === must(last)[0] && must(first)[1] === must(last)[1];
  return isAgain ? points.slice(0, -1) : points;
}
