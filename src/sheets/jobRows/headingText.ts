import { listUnits, type UnitName, unitNamed } from "./units";

/** A heading as it is read: what it is about, and the unit it names. */
export interface HeadingText {
  /** All of it, in lower case, with one kind of mark and space. */
  readonly whole: string;
  /** What is left without the unit. */
  readonly words: string;
  readonly unit?: UnitName;
  /** A price or rate per something, which is in no unit of that thing. */
  readonly isPer: boolean;
  /** It says "t", which may be a short ton or a metric one. */
  readonly saysT: boolean;
}

const LONGEST = 80;

/** Lower case, with one kind of foot mark, inch mark, dash and space, and without the dots of abbreviations. */
export function plainHeading(heading: string): string {
  return heading
    .slice(0, LONGEST)
    .toLowerCase()
    .replace(/[\u2032\u2018\u2019\u00b4`]/g, "'")
    .replace(/[\u2033\u201c\u201d]|''/g, '"')
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .replace(/(?<=\p{L})\./gu, " ")
    .replace(/[_\s]+/g, " ")
    .trim();
}

/** A price or an amount for each of something: "Price per ton", "$/ft", "Tons/cy". */
const PER =
  /\bper\b|\$|\b(cost|price|rate|charge|tons?|lbs?|yds?|ft|hrs?|hours?|pins|stakes|each)\s*\/\s*[a-z]|\b(price|cost|rate|tons?) an? [a-z]/;

/**
 * Reads a heading.
 *
 * @param heading as it stands in the sheet, such as "Length (ft)", "Len. in.", "W'", "Depth – cm" or "Sq ft".
 * @example readHeading("Depth – cm") // { whole: "depth - cm", words: "depth", unit: "cm", … }
 */
export function readHeading(heading: string): HeadingText {
  const whole = plainHeading(heading);
  const isPer = PER.test(whole) && !/\bper ?cent\b/.test(whole);
  const found = / of /.test(whole)
    ? (unitAtFront(whole) ?? unitAtEnd(whole))
    : (unitAtEnd(whole) ?? unitAtFront(whole));
  if (!found || (isPer && found.unit !== "%")) return { whole, words: tidied(whole), isPer, saysT: false };
  const saysT = found.unit === "tons" && /(?<![a-z])t(?![a-z])/.test(whole.slice(found.rest.length));
  return { whole, words: tidied(found.rest), unit: found.unit, isPer, saysT };
}

interface Found {
  readonly unit: UnitName;
  readonly rest: string;
}

function unitAtEnd(whole: string): Found | undefined {
  // In brackets, after a dash or comma, as a mark right behind a word, or as the last words.
  const bracketed = /^(.*)[([]\s*(?:in )?([^()[\]]+?)\s*[)\]]\W*$/.exec(whole);
  const parted = /^(.*?)\s*[,:;|]\s*([^,:;|]+)$/.exec(whole) ?? /^(.*\S)\s*[-/]\s*([^-/]+)$/.exec(whole);
  const marked = /^(.*[a-z)])\s*(['"])$/.exec(whole);
  for (const match of [bracketed, parted, marked]) {
    const unit = match && unitNamed(match[2]!.trim());
    if (unit) return { unit, rest: match[1]! };
  }
  const words = whole
    .replace(/[()[\],:;]/g, " ")
    .trim()
    .split(/\s+/);
  for (const count of [3, 2, 1]) {
    if (words.length < count) continue;
    const unit = unitNamed(words.slice(-count).join(" "));
    const rest = words.slice(0, -count).join(" ");
    // "Fabric 6 ft" tells a size, and "No" alone is a number of the list.
    if (unit && !/\d$/.test(rest) && !(unit === "each" && rest === "")) return { unit, rest };
  }
  return undefined;
}

/** "Inches deep", "Feet of border", "Tons of rock", "% waste", "# of pins". */
function unitAtFront(whole: string): Found | undefined {
  const words = whole.split(" ");
  for (const count of [2, 1]) {
    if (words.length <= count) continue;
    const first = words.slice(0, count).join(" ");
    const unit = unitNamed(first);
    const isLetter = first.length === 1 && /[a-z'"]/.test(first);
    if (unit && !isLetter) return { unit, rest: words.slice(count).join(" ") };
  }
  return undefined;
}

function tidied(rest: string): string {
  return rest
    .replace(/[^\p{L}\p{N}'"%#$/&+ ]+/gu, " ")
    .replace(/\s+/g, " ")
    .trim()
    .replace(/^(of|in)\s+|\s+(of|in)$/g, "")
    .replace(/^['"/&+ ]+|['"/&+ ]+$/g, "")
    .trim();
}

/** Whether a text is nothing but a unit, as in a second row of headings. */
export function isUnitAlone(text: string): boolean {
  const { words, unit } = readHeading(text);
  return unit !== undefined && words === "" && listUnits[unit].name !== "each";
}
