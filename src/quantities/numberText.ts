import { readDecimal } from "./decimal";
import { messages } from "./messages";
import { Problem } from "./problem";

const LONGEST_TEXT = 60;

/**
 * The number that a text says: digits with a point, or a comma where it can be read one way only.
 *
 * @param text what was typed, such as "12.5" or "-3".
 * @param argument the name to use in the message.
 * @throws Problem "value" that quotes a text which cannot be read.
 * @example readNumber("12.5", "area") // 12.5
 */
export function readNumber(text: string, argument: string): number {
  const digits = text.length > LONGEST_TEXT ? "" : text.trim();
  const isNegative = digits.startsWith("-");
  const amount = readDecimal(isNegative ? digits.slice(1) : digits);
  if (amount === "ambiguous") {
    const [one, other] = [digits.replace(",", ""), digits.replace(",", ".")];
    throw new Problem("value", messages.twoReadings(argument, text, one, other), argument);
  }
  if (amount === undefined) throw new Problem("value", messages.notANumber(argument, text, "12.5"), argument);
  return isNegative ? -amount : amount;
}

/**
 * The share that a text says, with or without a percent sign.
 *
 * @param text what was typed, such as "8%" or "0.08".
 * @param argument the name to use in the message.
 * @returns a fraction: 8 % is 0.08. Whether it is too large is for the caller to say.
 * @throws Problem "value" that quotes a text which cannot be read.
 * @example readShare("8%", "waste") // 0.08
 */
export function readShare(text: string, argument: string): number {
  const plain = text.trim();
  return plain.endsWith("%") ? readNumber(plain.slice(0, -1), argument) / 100 : readNumber(plain, argument);
}
