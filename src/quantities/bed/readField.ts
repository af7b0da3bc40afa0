import { messages } from "../messages";
import { readNumber, readShare } from "../numberText";
import { Problem } from "../problem";
import { readTape } from "../tape";
import { type Field, MOST_SHARE } from "./fields";

/**
 * The number that a field's text says: a length in feet or inches as the field says, a share as a fraction.
 *
 * @param field its label, how it is read, and whether 0 or blank is an answer.
 * @throws Problem for a text that cannot be read, is negative, is 0 where that makes no sense, or is no share.
 * @example readField(fields.waste, "8%") // 0.08, with `fields` of `fields.ts`
 */
export function readField(field: Field, text: string): number {
  const { label, mayBeZero } = field;
  const example = field.initial || (field.reads === "feet" ? `18' 6"` : "12");
  if (text.trim() === "") {
    if (mayBeZero) return 0;
    throw new Problem("value", messages.missing(label, example), label);
  }
  const value = readValue(field, text);
  if (value < 0) throw new Problem("value", messages.negative(label, text), label);
  if (value === 0 && !mayBeZero) throw new Problem("value", messages.zero(label, example), label);
  return value;
}

function readValue({ label, reads, shareUnder, most = Number.POSITIVE_INFINITY }: Field, text: string): number {
  switch (reads) {
    case "feet":
      return readTape(text, "ft", label);
    case "inches": {
      const length = readTape(text, "in", label);
      if (length > most) throw new Problem("value", messages.tooLong(label, text, `${most} in`), label);
      return length;
    }
    case "share": {
      const share = readShare(text, label);
      if (shareUnder === undefined ? share > MOST_SHARE : share >= shareUnder) {
        throw new Problem("value", messages.shareTooLarge(label, text, shareUnder ?? MOST_SHARE), label);
      }
      return share;
    }
    case "whole": {
      const value = readNumber(text, label);
      if (!Number.isInteger(value) || value > most)
        throw new Problem("value", messages.notWhole(label, text, most), label);
      return value;
    }
    default:
      return readNumber(text, label);
  }
}
