import { must } from "../../quantities/must";

/**
 * Characters that show nothing, or turn the order of what is read: control characters, zero-width ones, marks of
 * direction, and the blocks of tags and private use. Unicode categories Cc, Cf, Co and Cn, and the fillers of Hangul.
 */
const HIDDEN = /[\p{Cc}\p{Cf}\p{Co}\p{Cn}\u115F\u1160\u2800\u3164\uFFA0]/u;

/** A line break in a cell's text is nothing hidden. */
const LINE_BREAK = /\r\n|\n/g;

/**
 * The first character of a text that hides something, as `U+202E`; undefined where every character shows.
 *
 * @example hiddenCharacter("free\u200B") // "U+200B"
 */
export function hiddenCharacter(text: string, mayBreak = false): string | undefined {
  const [found] = HIDDEN.exec(mayBreak ? text.replace(LINE_BREAK, " ") : text) ?? [];
  if (found === undefined) return loneHalf(text) ? "half a character" : undefined;
  return `U+${must(found.codePointAt(0)).toString(16).toUpperCase().padStart(4, "0")}`;
}

/** The text without them. */
export function withoutHidden(text: string): string {
  return text
    .split(/(\n)/)
    .map((part) => (part === "\n" ? part : part.replace(new RegExp(HIDDEN, "gu"), "")))
    .join("");
}

const loneHalf = (text: string): boolean => /\p{Cs}/u.test(text);
