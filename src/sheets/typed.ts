const PLAIN_NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;
const PLAIN_SHARE = /^(\d+\.?\d*|\.\d+)\s*%$/;
/** A length with its mark or unit at the end, which no host takes for anything else: 5 m, but not 5 pm. */
const TAPE_TEXT = /^[\d½¼¾⅛⅜⅝⅞][^=]*(?:['"′″’”]|(?<![a-z])(?:ft|feet|foot|in|inch|inches|yd|yards?|cm|mm|m))$/i;
/** What begins a formula, the text mark itself, and their likes of full width, also behind spaces. */
const COULD_BEGIN = /^\s*[=+\-@'＝＋－＠]/;
/** What the host takes for a truth value or an error. */
const COULD_BE_VALUE = /^\s*(?:true|false|#.*)\s*$/is;
/** Longer text is never taken for a number or a date: "Wednesday, September 30, 2026 12:00:00" is. */
const LONGEST_NUMBER = 40;

/**
 * What to write into a cell so that it holds what a person typed, and nothing else: a plain number or share
 * as a number, anything else as text with the host's text mark, so that `1/2` does not turn into a date and
 * `=cmd` does not turn into a formula. `typed("6-8")` gives `'6-8`; `typed("8%")` gives 0.08.
 */
export function typed(text: string): string | number {
  const trimmed = text.trim();
  if (trimmed === "") return "";
  if (PLAIN_NUMBER.test(trimmed) && Number.isFinite(Number(trimmed))) return Number(trimmed);
  if (PLAIN_SHARE.test(trimmed)) return Number.parseFloat(trimmed) / 100;
  return TAPE_TEXT.test(trimmed) ? trimmed : `'${trimmed}`;
}

/** What to write so that a cell shows a sentence, whatever it begins with. */
export function sentence(text: string): string {
  const couldTurn =
    COULD_BEGIN.test(text) || COULD_BE_VALUE.test(text) || (text.length <= LONGEST_NUMBER && /\p{Nd}/u.test(text));
  return couldTurn ? `'${text}` : text;
}

/** What to write so that a cell holds a name, and never a number: a bed may be called 7. */
export function named(text: string): string {
  const trimmed = text.trim();
  return trimmed === "" ? "" : `'${trimmed}`;
}
