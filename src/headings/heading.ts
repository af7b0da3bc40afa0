import { must } from "../quantities/must";
import { plainText, type UnitName, unitSpelled, units, unitWords } from "./units";

/** A heading or a label as it is read: what it is about, and the unit it names. */
export interface Heading {
  /** All of it, in lower case, with one kind of mark and space. */
  readonly whole: string;
  /** What is left without the unit. */
  readonly words: string;
  readonly unit?: UnitName;
  /** A price or a rate per something, which is in no unit of that thing. */
  readonly isPer: boolean;
  /** It says "t", which may be a short ton or a metric one. */
  readonly saysT: boolean;
}

/** A price or an amount for each of something: "Price per ton", "$/ft", "Tons/cy", "Hours a bed". */
const PER =
  /\bper\b|\$ ?(?:\/|an? )|\b(?:cost|price|rate|charge|tons?|lbs?|yds?|ft|hrs?|hours?|pins|stakes|each|\$)\s*\/\s*[a-z]|\b(?:price|cost|rate|tons?) an? [a-z]|(?<!\b(?:of|in|on|for|to|by|from) )\ban? [a-z]+(?: [a-z]+)?$|\b(?:prices?|costs?|rate|charge|sell) (?:each|ea)$/;

/** Words for a count that say nothing alone, since they head columns themselves. */
const COUNTING = new Set(["no", "number", "qty", "count", "#"]);

/**
 * Reads a heading or a label. Job rows and the check both go by this one reading.
 *
 * @param heading as it is on the sheet, such as "Length (ft)", "Len. in.", "W'", "Depth – cm", "Sq ft" or "Inches deep".
 * @example readHeading("Depth – cm") // { whole: "depth - cm", words: "depth", unit: "cm", isPer: false, saysT: false }
 */
export function readHeading(heading: string): Heading {
  const whole = plainText(heading);
  const found = / of |^(?:#|no|number) /.test(whole)
    ? (unitAtFront(whole) ?? unitAtEnd(whole))
    : (unitAtEnd(whole) ?? unitAtFront(whole));
  const isPer = PER.test(whole) && !/\bper ?cent\b/.test(whole);
  const isRate = found && (found.unit === "%" || / per |\/| a /.test(found.spelled));
  if (!found || (isPer && !isRate)) return { whole, words: tidied(whole), isPer, saysT: false };
  const saysT = found.spelled === "t";
  return { whole, words: tidied(found.unit === "things" ? whole : found.rest), unit: found.unit, isPer, saysT };
}

/** The unit that a heading or a label names: `unitIn("Depth in")` is `in`. */
export const unitIn = (text: string): UnitName | undefined => readHeading(text).unit;

interface Found {
  readonly unit: UnitName;
  readonly spelled: string;
  readonly rest: string;
}

/** In brackets, as a rate, after a comma or a dash, and as a mark right behind a word. */
const PARTED = [
  /^(.*)[([]\s*(?:in )?([^()[\]]+?)\s*[)\]]\W*$/,
  /^(.*?)\b((?:tons?|t|lbs?) ?\/ ?(?:cu ?yd|cu ?ft|cy|cf|yd))$/,
  /^(.*?)\s*[,:;|]\s*([^,:;|]+)$/,
  /^(.*\S)\s*[-/]\s*([^-/]+)$/,
  /^(.*[a-z)])\s*(['"])$/,
];

/** Parted from the words before it, or as the last words. */
function unitAtEnd(whole: string): Found | undefined {
  for (const pattern of /[([,:;|/'"-]/.test(whole) ? PARTED : []) {
    const [, rest = "", end = ""] = pattern.exec(whole) ?? [];
    const spelled = end.trim();
    const unit = unitSpelled(spelled);
    if (unit) return { unit, spelled, rest };
  }
  const words = whole
    .replace(/[()[\],:;]/g, " ")
    .trim()
    .split(/\s+/);
  const last = must(words.at(-1));
  if (!unitWords.has(last) && !COUNTING.has(last)) return undefined;
  for (const count of [4, 3, 2, 1]) {
    if (words.length < count) continue;
    const spelled = words.slice(-count).join(" ");
    const rest = words.slice(0, -count).join(" ");
    const unit = unitSpelled(spelled) ?? (COUNTING.has(spelled) ? "each" : undefined);
    // "Fabric 6 ft" tells a size, "Scrape and load" what is done, and "Each" or "No" alone is a column of its own.
    if (unit && !/(?:\d|\band)$/.test(rest) && !(unit === "each" && rest === "")) return { unit, spelled, rest };
  }
  return undefined;
}

/** "Inches deep", "Feet of border", "Tons of rock", "% waste", "# of pins". */
function unitAtFront(whole: string): Found | undefined {
  const words = whole.split(" ");
  if (!unitWords.has(must(words[0])) && !COUNTING.has(must(words[0]))) return undefined;
  for (const count of [2, 1]) {
    if (words.length <= count) continue;
    const spelled = words.slice(0, count).join(" ");
    const unit = unitSpelled(spelled) ?? (COUNTING.has(spelled) ? "each" : undefined);
    const isLetter = spelled.length === 1 && /[a-z'"]/.test(spelled);
    // "In the ground" is no inch.
    const isPlace = spelled === "in" && !/^(?:of|deep|wide|long|high|thick)\b/.test(must(words[1]));
    // "Roll width" is no number of rolls.
    const isThing = unit && units[unit].measures === "count" && unit !== "each" && words[count] !== "of";
    if (unit && !isLetter && !isPlace && !isThing) return { unit, spelled, rest: words.slice(count).join(" ") };
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
  return unit !== undefined && unit !== "each" && words === "";
}
