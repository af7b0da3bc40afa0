import { readDecimal } from "./decimal";
import { messages } from "./messages";
import { Problem } from "./problem";
import { INCHES_PER_FOOT, TENTH_MILLIMETERS } from "./units";

/** A unit a bare number can be in. */
export type TapeUnit = "ft" | "in";
type Unit = keyof typeof TENTH_MILLIMETERS;

const LONGEST_TEXT = 60;

/** How each unit is written, between spaces. */
const SPELLINGS: Readonly<Record<Unit, string>> = {
  ft: " ' ft f foot feet lf ",
  in: ' " in inch inches ',
  yd: " yd yds yard yards ",
  m: " m meter meters metre metres ",
  cm: " cm ",
  mm: " mm ",
};

/** Which unit may follow which in one measure, and from how many on it should have been carried over. */
const FOLLOWERS: Readonly<Partial<Record<Unit, Readonly<Partial<Record<Unit, number>>>>>> = {
  yd: { ft: 3, in: 36 },
  ft: { in: 12 },
  m: { cm: 100, mm: 1000 },
  cm: { mm: 10 },
};

/** One amount with the unit behind it: whole or decimal, a fraction, or a whole with a fraction. */
const PART = /^(?:(\d+)(?: | ?- ?)(\d+)\/(\d+)|(\d+)\/(\d+)|([\d.,]*\d)) ?(?:([a-z]+)(?:\.(?!\d))?|(['"]))?/;
const BETWEEN_PARTS = /^ ?(?:(?:[-,&]|and) ?)?/;
/** What follows a bare number of feet where inches come next: `18-6`, `18 6`. */
const MORE = /^(?:- ?)?\d/;
/** What goes without saying in front of feet: `lin ft`, `linear feet`, `L.F.` */
const LINEAR = /\bl(?:in(?:ea[lr])?|\.)\.? ?(?=f)/;
/** A comma between two numbers of which the second may be inches. */
const COMMA = /^\d+,(?:\d|1[01])$/;

/**
 * The length that a text from the tape says, in feet or in inches.
 *
 * Reads feet and inches (`32' 6 1/2"`, `32 ft 6 in`, `6'-8"`, `18'6`, `4ft6`), yards (`2 yd`), metric (`9.8 m`,
 * `75 mm`, `40 cm`), fractions (`6 1/2`, `½`), typographic marks, and a decimal comma in front of a unit (`9,8 m`).
 * A leading minus gives a negative length. Where a text could be read two ways:
 *
 * - A number without a unit is in `unit`; after feet it is inches.
 * - In feet, two numbers with a dash or a space between them are feet and inches: `18-6`, `18 6`, `6-2 1/2`. In inches
 *   they are refused: `4-6` may be a range.
 * - A fraction stays under 1: `18/6` is refused.
 * - A whole number with a fraction is one number: `6 1/2` and `6-1/2` are six and a half of `unit`.
 * - Inches after feet stay under 12, as on a tape: `5' 14"` and `18-14` are refused as a likely mistake.
 * - A bare fraction is inches on a tape, so in feet `3/4` is refused: it takes `3/4"` or `3/4'`.
 * - A comma that may part thousands, decimals or feet from inches is refused: `1,200`, `18,6`.
 *
 * @param text what was typed.
 * @param unit "ft" or "in": the unit of the answer and of a bare number.
 * @param argument the name to use in the message.
 * @returns the length in `unit`.
 * @throws Problem "value" that quotes a text which can't be read, or names both of its readings.
 * @source Common practice on a tape and on American plans; no standard says how a length is typed.
 * @example readTape(`32' 6 1/2"`, "ft") // 32.541666666666664
 */
export function readTape(text: string, unit: TapeUnit, argument = "measure"): number {
  const unreadable = () => new Problem("value", messages.notALength(argument, text), argument);
  const twoWays = (one: string, other: string) =>
    new Problem("value", messages.twoReadings(argument, text, one, other), argument);
  if (text.length > LONGEST_TEXT) throw unreadable();
  let rest = plainMarks(text).replace(LINEAR, "");
  const sign = rest.startsWith("-") ? -1 : 1;
  if (sign < 0) rest = rest.slice(1).trimStart();

  let total = 0;
  let before: Unit | undefined;
  let beforeIsWhole = true;
  do {
    const part = PART.exec(rest);
    if (!part) throw unreadable();
    const [all, , , , above, below, decimal = "", word, mark] = part;
    const spelling = word ?? mark;
    const amount = amountOf(part);
    rest = rest.slice(all.length);
    if (amount === "ambiguous") throw twoWays(decimal.replace(",", ""), decimal.replace(",", "."));
    // In `5'.5` the point may part feet, too.
    if (amount === undefined || !beforeIsWhole || rest.startsWith(".")) throw unreadable();
    let partUnit: Unit | undefined;
    if (spelling) partUnit = unitSpelled(spelling);
    else if (before) partUnit = before === "ft" && rest === "" ? "in" : undefined;
    else if (rest === "") {
      if (above && unit === "ft") throw twoWays(`${above}/${below}"`, `${above}/${below}'`);
      if (COMMA.test(decimal)) throw twoWays(decimal.replace(",", "."), `${decimal.replace(",", "' ")}"`);
      partUnit = unit;
    } else if (unit === "ft" && MORE.test(rest)) partUnit = "ft";
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

function unitSpelled(spelling: string): Unit | undefined {
  for (const [unit, spellings] of Object.entries(SPELLINGS))
    if (spellings.includes(` ${spelling} `)) return unit as Unit;
  return undefined;
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
    .replace(/[¼-¾⅐-⅞]/g, (sign) => ` ${sign.normalize("NFKC")}`)
    .replace(/\u2044/g, "/")
    .replace(/[\u2012-\u2015\u2212\u2010\u2011]/g, "-")
    .replace(/\s+/g, " ")
    .trim();
}

/** The amount of one matched part; undefined where it is no amount (a fraction over 0, two decimal points). */
function amountOf(part: RegExpExecArray): number | "ambiguous" | undefined {
  const [, whole, above, below, aloneAbove, aloneBelow, decimal] = part;
  if (decimal !== undefined) return readDecimal(decimal);
  const share = Number(above ?? aloneAbove) / Number(below ?? aloneBelow);
  // 18/6 is a date or feet and inches more likely than three; over 0 it is no amount at all.
  if (!(share < 1)) return undefined;
  return Number(whole ?? 0) + share;
}

export const SIXTEENTHS_PER_INCH = 16;
const SIXTEENTHS_PER_FOOT = INCHES_PER_FOOT * SIXTEENTHS_PER_INCH;
const LONGEST_PRINTED_FEET = 1e9;

/** A length in feet as far as it's typed; undefined where it can't be read yet. */
export function feetIn(text: string): number | undefined {
  try {
    return readTape(text, "ft");
  } catch {
    return undefined;
  }
}

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
