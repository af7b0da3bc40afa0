/** Number formats that show a cell as something it is not. */

/** What is in quotes, or behind a backslash, an underscore or an asterisk. */
const QUOTED = /"[^"]*"|\\.|[_*]./g;
const BRACKETED = /\[[^\]]*\]/g;
/** Placeholders of numbers, text, dates and times. */
const SHOWS = /[0#?@]|General|Standard|[dmyhseg]/i;
/** Digits that a format writes by itself, other than a fraction's denominator. */
const OWN_DIGIT = /(?<![/\d])[1-9]/;

/**
 * Why a number format disguises what is in a cell.
 *
 * @param format as spreadsheet programs write it, sections split by ";".
 * @returns words that follow the cell's address; undefined where numbers and text show. A blank zero is usual.
 * @example numberFormatFault(";;;") // "has a number format that hides its contents (;;;)"
 */
export function numberFormatFault(format: string): string | undefined {
  const hides = `has a number format that hides its contents (${format.slice(0, 40)})`;
  const literals = [...format.matchAll(/"([^"]*)"|\\(.)/g)].map(([, quoted, escaped]) => quoted ?? escaped ?? "");
  const bare = format.replace(QUOTED, " ").replace(BRACKETED, " ");
  // After letters, as in "m2" or "per 100 ft", digits are words; before them they would pass for part of the number.
  if (literals.some((text) => /^\P{L}*\d/u.test(text)) || OWN_DIGIT.test(bare))
    return `has a number format that adds digits of its own (${format.slice(0, 40)})`;
  const [positive = "", negative, zero, text, ...more] = bare.split(";");
  if (more.length > 0) return hides;
  const shown = [positive, negative, text].filter((section) => section !== undefined);
  if (shown.some((section) => !SHOWS.test(section))) return hides;
  // With conditions in brackets the sections mean other things than above zero, below and zero.
  if (zero !== undefined && /\[[<>=]/.test(format) && !SHOWS.test(zero)) return hides;
  return undefined;
}
