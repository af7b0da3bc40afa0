import { readDecimal } from "./decimal";
import { messages } from "./messages";
import { Problem } from "./problem";
import { INCHES_PER_FOOT, TENTH_MILLIMETERS } from "./units";

/** A unit a bare number can be in. */
export type TapeUnit = "ft" | "in";
type Unit = keyof typeof TENTH_MILLIMETERS;

const LONGEST_TEXT = 60;

const SPELLINGS: Readonly<Record<string, Unit>> = {
  "'": "ft",
  ft: "ft",
  foot: "ft",
  feet: "ft",
  '"': "in",
  in: "in",
  inch: "in",
  inches: "in",
  yd: "yd",
  yds: "yd",
  yard: "yd",
  yards: "yd",
  m: "m",
  meter: "m",
  meters: "m",
  metre: "m",
  metres: "m",
  cm: "cm",
  mm: "mm",
};

/** Which unit may follow which in one measure, and from how many on it should have been carried over. */
const FOLLOWERS: Readonly<Partial<Record<Unit, Readonly<Partial<Record<Unit, number>>>>>> = {
  yd: { ft: 3, in: 36 },
  ft: { in: 12 },
  m: { cm: 100, mm: 1000 },
  cm: { mm: 10 },
};

const FRACTION_SIGNS: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅓": "1/3",
  "⅔": "2/3",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/** One amount with the unit behind it: whole or decimal, a fraction, or a whole with a fraction. */
const PART =
  /^(?:(\d+)(?: |-| - )(\d+)\/(\d+)|(\d+)\/(\d+)|([\d.,]*\d))\s*(?:(inches|inch|in|foot|feet|ft|yards|yard|yds|yd|met(?:er|re)s?|mm|cm|m)(?![a-z])\.?|(['"]))?/;
const BETWEEN_PARTS = /^\s*(?:[-,]\s*)?/;

/**
 * The length that a text from the tape says, in feet or in inches.
 *
 * Reads feet and inches (`32' 6 1/2"`, `32 ft 6 in`, `6'-8"`, `18'6`), yards (`2 yd`), metric (`9.8 m`, `75 mm`,
 * `40 cm`), fractions (`6 1/2`, `½`), typographic marks, and a decimal comma where it cannot be a thousands
 * comma (`9,8 m`). A number without a unit is in `unit`; after feet it is inches. Inches after feet stay under
 * 12, as on a tape: `5' 14"` is refused as a likely slip. A leading minus gives a negative length.
 *
 * @param text what was typed.
 * @param unit "ft" or "in": the unit of the answer and of a bare number.
 * @param argument the name to use in the message.
 * @returns the length in `unit`.
 * @throws Problem "value" that quotes a text which cannot be read.
 * @example readTape(`32' 6 1/2"`, "ft") // 32.541666666666664
 */
export function readTape(text: string, unit: TapeUnit, argument = "measure"): number {
  const unreadable = () => new Problem("value", messages.notALength(argument, text), argument);
  if (text.length > LONGEST_TEXT) throw unreadable();
  let rest = plainMarks(text);
  const sign = rest.startsWith("-") ? -1 : 1;
  if (sign < 0) rest = rest.slice(1).trimStart();

  let total = 0;
  let before: Unit | undefined;
  let beforeIsWhole = true;
  do {
    const part = PART.exec(rest);
    if (!part) throw unreadable();
    const amount = amountOf(part, () => new Problem("value", messages.ambiguousComma(argument, text), argument));
    if (amount === undefined || !beforeIsWhole) throw unreadable();
    const spelled = SPELLINGS[part[7] ?? part[8] ?? ""];
    rest = rest.slice(part[0].length);
    if (!spelled && rest !== "") throw unreadable();
    const partUnit = spelled ?? (before === undefined ? unit : before === "ft" ? "in" : undefined);
    if (!partUnit) throw unreadable();
    if (before) {
      const limit = FOLLOWERS[before]?.[partUnit];
      if (limit === undefined) throw unreadable();
      if (amount >= limit)
        throw new Problem("value", messages.smallerUnitTooLarge(argument, text, partUnit, limit), argument);
    }
    total += amount * TENTH_MILLIMETERS[partUnit];
    // A lone amount in the asked unit is the answer digit for digit; converting there and back could lose the last.
    if (before === undefined && rest === "" && partUnit === unit) return sign * amount + 0;
    beforeIsWhole = Number.isInteger(amount);
    before = partUnit;
    if (rest !== "") {
      rest = rest.replace(BETWEEN_PARTS, "");
      if (rest === "") throw unreadable();
    }
  } while (rest !== "");
  return (sign * total) / TENTH_MILLIMETERS[unit] + 0;
}

/** Text that needs no more than lower case: what a keyboard gives, one space at a time, an inch mark typed as one. */
const ORDINARY = /^(?:[!-&(-_a-~]| (?! )|'(?!'))*$/;

/** Lower case, with one kind of foot mark, inch mark, fraction, minus and space. */
function plainMarks(text: string): string {
  const lower = text.toLowerCase();
  if (ORDINARY.test(lower)) return lower.trim();
  return lower
    .replace(/[\u2032\u2018\u2019\u00b4`]/g, "'")
    .replace(/[\u2033\u201c\u201d]|''/g, '"')
    .replace(/[¼½¾⅓⅔⅛⅜⅝⅞]/g, (sign) => ` ${FRACTION_SIGNS[sign]}`)
    .replace(/\u2044/g, "/")
    .replace(/[\u2212\u2013\u2010\u2011]/g, "-")
    .replace(/\s+/g, " ")
    .trim();
}

/** The amount of one matched part; undefined where it is no amount (a fraction over 0, two decimal points). */
function amountOf(part: RegExpExecArray, ambiguous: () => Problem): number | undefined {
  const [, whole, above, below, aloneAbove, aloneBelow, decimal] = part;
  if (decimal !== undefined) {
    const read = readDecimal(decimal);
    if (read === "ambiguous") throw ambiguous();
    return read;
  }
  const share = Number(above ?? aloneAbove) / Number(below ?? aloneBelow);
  if (!Number.isFinite(share) || (whole !== undefined && share >= 1)) return undefined;
  return Number(whole ?? 0) + share;
}

const SIXTEENTHS_PER_INCH = 16;
const SIXTEENTHS_PER_FOOT = INCHES_PER_FOOT * SIXTEENTHS_PER_INCH;
const LONGEST_PRINTED_FEET = 1e9;

/**
 * A length as it is read off a tape, to the nearest sixteenth of an inch; {@link readTape} reads it back.
 *
 * @param feet the length in feet, at most 1,000,000,000 either way.
 * @returns text such as `32' 6 1/2"`, `18'`, `7/16"` or `0"`.
 * @throws Problem "value" where the length is no number or too large for a tape.
 * @example printTape(32.5417) // 32' 6 1/2"
 */
export function printTape(feet: number): string {
  if (!(Math.abs(feet) <= LONGEST_PRINTED_FEET))
    throw new Problem("value", messages.tooLarge("measure", feet, "1,000,000,000 ft"), "measure");
  const sixteenths = Math.round(Math.abs(feet) * SIXTEENTHS_PER_FOOT);
  if (sixteenths === 0) return '0"';
  const wholeFeet = Math.floor(sixteenths / SIXTEENTHS_PER_FOOT);
  const wholeInches = Math.floor((sixteenths % SIXTEENTHS_PER_FOOT) / SIXTEENTHS_PER_INCH);
  let above = sixteenths % SIXTEENTHS_PER_INCH;
  let below = SIXTEENTHS_PER_INCH;
  while (above > 0 && above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  const inches = [wholeInches > 0 ? String(wholeInches) : "", above > 0 ? `${above}/${below}` : ""].filter(Boolean);
  const parts = [wholeFeet > 0 ? `${wholeFeet}'` : "", inches.length > 0 ? `${inches.join(" ")}"` : ""];
  return (feet < 0 ? "-" : "") + parts.filter(Boolean).join(" ");
}
