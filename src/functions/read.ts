import { messages } from "../quantities/messages";
import { readNumber, readShare } from "../quantities/numberText";
import { MOST_JOINT_IN } from "../quantities/pavers";
import { Problem } from "../quantities/problem";
import { readTape, type TapeUnit } from "../quantities/tape";
import { cellValue } from "./cell";

/*
 * Readers of one argument each. They take what the host sent and give a number the arithmetic can use, or
 * throw a Problem that names the argument. Each has a quick way for a plain number, since that is what nearly
 * all cells hold, and leaves the rest to one slow way.
 *
 * With a fallback the argument is optional: a blank takes it. Where zero makes no sense, 0 is a blank, because
 * some hosts send blank cells as 0.
 */

/** A length over 0, in feet. */
export function feet(value: unknown, argument: string, fallback?: number): number {
  return isPositive(value) ? value : read(value, argument, "ft", "blank", fallback);
}

/** A length of 0 or more, in feet. */
export function feetOrZero(value: unknown, argument: string, fallback?: number): number {
  return isPositive(value) ? value : read(value, argument, "ft", "value", fallback);
}

/** A length over 0, in inches. */
export function inches(value: unknown, argument: string, fallback?: number): number {
  return isPositive(value) ? value : read(value, argument, "in", "blank", fallback);
}

/** A lap in inches, or under 0 a joint as pavers have it. */
export function lapOrJoint(value: unknown, argument: string, fallback?: number): number {
  const given = isPositive(value) ? value : read(value, argument, "in", "place", fallback);
  if (given >= -MOST_JOINT_IN) return given;
  throw new Problem("value", messages.negative(argument, given), argument);
}

/** A length of 0 or more, in inches. */
export function inchesOrZero(value: unknown, argument: string, fallback?: number): number {
  return isPositive(value) ? value : read(value, argument, "in", "value", fallback);
}

/** A measure by itself, in feet: 0 only as text with a unit or mark to it, since a number 0 may be a blank cell. */
export function measureInFeet(value: unknown, argument: string): number {
  return isPositive(value) ? value : read(value, argument, "ft", "text");
}

/** The same, in inches. */
export function measureInInches(value: unknown, argument: string): number {
  return isPositive(value) ? value : read(value, argument, "in", "text");
}

/** A place in plan, in feet, either side of the origin. */
export function coordinate(value: unknown, argument: string): number {
  return isPositive(value) ? value : read(value, argument, "ft", "place");
}

/** A number over 0. */
export function positive(value: unknown, argument: string, fallback?: number): number {
  return isPositive(value) ? value : read(value, argument, "number", "blank", fallback);
}

/** A number of 0 or more. */
export function positiveOrZero(value: unknown, argument: string, fallback?: number): number {
  return isPositive(value) ? value : read(value, argument, "number", "value", fallback);
}

/** A whole number over 0. */
export function count(value: unknown, argument: string, fallback?: number, most = Number.POSITIVE_INFINITY): number {
  const given = positive(value, argument, fallback);
  if (given <= most && Number.isInteger(given)) return given;
  throw new Problem("value", messages.notWhole(argument, given, most), argument);
}

/** A share under 1, such as waste or margin. */
export function shareUnderOne(value: unknown, argument: string, fallback?: number): number {
  const given = isPositive(value) ? value : read(value, argument, "share", "value", fallback);
  if (given < 1) return given;
  throw new Problem("value", messages.shareTooLarge(argument, given, 1), argument);
}

const MOST_SHARE = 2;

/** A share up to 2, such as a markup or a swell. */
export function share(value: unknown, argument: string): number {
  const given = isPositive(value) ? value : read(value, argument, "share", "value");
  if (given <= MOST_SHARE) return given;
  throw new Problem("value", messages.shareTooLarge(argument, given, MOST_SHARE), argument);
}

/** TRUE or FALSE; also 1 and 0, and yes and no. */
export function flag(value: unknown, argument: string, fallback = false): boolean {
  if (typeof value === "boolean") return value;
  const given = cellValue(value, argument);
  if (given === undefined) return fallback;
  if (given === true || given === 1 || (typeof given === "string" && /^\s*(true|yes)\s*$/i.test(given))) return true;
  if (given === false || given === 0 || (typeof given === "string" && /^\s*(false|no)\s*$/i.test(given))) return false;
  throw new Problem("value", messages.notYesOrNo(argument, given), argument);
}

/** What a 0 means for an argument: a blank, a value, a value only where it was typed as text, or a place in plan. */
type Zero = "blank" | "value" | "text" | "place";

type Kind = TapeUnit | "number" | "share";

/** An example of each kind, to put in messages. */
const EXAMPLES: Readonly<Record<Kind, string>> = { ft: "18' 6\" or 18.5", in: '4 or 4"', number: "12.5", share: "10%" };

export function isPositive(value: unknown): value is number {
  return typeof value === "number" && value > 0 && value <= Number.MAX_VALUE;
}

function read(value: unknown, argument: string, kind: Kind, zero: Zero, fallback?: number): number {
  const given = cellValue(value, argument);
  const zeroIsBlank = zero === "blank" || (zero === "text" && typeof given === "number");
  if (given === undefined || (given === 0 && zeroIsBlank)) {
    if (fallback !== undefined) return fallback;
    const blank = zeroIsBlank ? messages.zero : messages.missing;
    throw new Problem("value", blank(argument, EXAMPLES[kind]), argument);
  }
  const number = typeof given === "string" ? readText(given, argument, kind) : given;
  if (typeof number !== "number" || !Number.isFinite(number)) {
    const isLength = kind === "ft" || kind === "in";
    const message = isLength
      ? messages.notALength(argument, given)
      : messages.notANumber(argument, given, EXAMPLES[kind]);
    throw new Problem("value", message, argument);
  }
  if (number < 0 && zero !== "place")
    throw new Problem("value", messages.negative(argument, given, zeroIsBlank), argument);
  if (number === 0 && zeroIsBlank) throw new Problem("value", messages.zero(argument, EXAMPLES[kind]), argument);
  return number;
}

function readText(text: string, argument: string, kind: Kind): number {
  if (kind === "number") return readNumber(text, argument);
  if (kind === "share") return readShare(text, argument);
  return readTape(text, kind, argument);
}
