import {
  CUBIC_FEET_PER_CUBIC_YARD,
  FEET_PER_YARD,
  INCHES_PER_FOOT,
  KILOGRAMS_PER_POUND,
  METERS_PER_FOOT,
  METERS_PER_YARD,
  POUNDS_PER_SHORT_TON,
} from "../../quantities/units";

/** What a unit measures, and how much of the first unit of its kind one of it is. */
export interface Unit {
  /** As it is shown: "in", "sq ft". */
  readonly name: string;
  readonly measures: "length" | "area" | "volume" | "weight" | "density" | "share" | "time" | "money" | "count";
  /** How many feet, square feet, cubic yards, short tons, tons a cubic yard, or hours it is. */
  readonly size: number;
}

const POUNDS_PER_TONNE = 1000 / KILOGRAMS_PER_POUND;
const CUBIC_METERS_PER_YARD = METERS_PER_YARD ** 3;

const unit = (name: string, measures: Unit["measures"], size: number): Unit => ({ name, measures, size });

/** Units by the words that stand for them in headings. */
const WORDS: readonly (readonly [unit: Unit, words: string])[] = [
  [unit("in", "length", 1 / INCHES_PER_FOOT), 'in|ins|inch|inches|"'],
  [unit("ft", "length", 1), "ft|feet|foot|lf|lin ft|linear ft|linear feet|lineal feet|'"],
  // "Yards" alone means cubic yards as often as lengths, so it names nothing.
  [unit("yd", "length", FEET_PER_YARD), "lin yd|linear yd|linear yards"],
  [unit("mm", "length", 0.001 / METERS_PER_FOOT), "mm|millimeters|millimetres"],
  [unit("cm", "length", 0.01 / METERS_PER_FOOT), "cm|centimeters|centimetres"],
  [unit("m", "length", 1 / METERS_PER_FOOT), "m|meter|meters|metre|metres"],
  [unit("sq ft", "area", 1), "sq ft|sqft|sf|ft2|ft²|square feet|square foot"],
  [unit("sq in", "area", INCHES_PER_FOOT ** -2), "sq in|in2|in²|square inches"],
  [unit("sq yd", "area", FEET_PER_YARD ** 2), "sq yd|sy|yd2|yd²|square yards"],
  [unit("sq m", "area", METERS_PER_FOOT ** -2), "sq m|m2|m²|square meters|square metres"],
  [unit("cu yd", "volume", 1), "cu yd|cu yds|cy|yd3|yd³|cubic yards|cubic yard"],
  [unit("cu ft", "volume", 1 / CUBIC_FEET_PER_CUBIC_YARD), "cu ft|cf|ft3|ft³|cubic feet|cubic foot"],
  [unit("cu m", "volume", 1 / CUBIC_METERS_PER_YARD), "cu m|m3|m³|cubic meters|cubic metres"],
  [unit("tons", "weight", 1), "ton|tons|short tons|tn"],
  [unit("lb", "weight", 1 / POUNDS_PER_SHORT_TON), "lb|lbs|pounds"],
  [unit("tonnes", "weight", POUNDS_PER_TONNE / POUNDS_PER_SHORT_TON), "tonne|tonnes|metric tons"],
  [
    unit("tons/cu yd", "density", 1),
    "tons/cu yd|tons/cy|ton/cu yd|ton/cy|t/cy|tons per cubic yard|tons per yard|tons per cu yd",
  ],
  [unit("lb/cu yd", "density", 1 / POUNDS_PER_SHORT_TON), "lb/cu yd|lb/cy|lbs/cy|pounds per cubic yard"],
  [
    unit("lb/cu ft", "density", CUBIC_FEET_PER_CUBIC_YARD / POUNDS_PER_SHORT_TON),
    "lb/cu ft|lb/cf|pcf|pounds per cubic foot",
  ],
  [unit("share", "share", 1), "share|fraction"],
  [unit("%", "share", 1), "%|pct|percent"],
  [unit("h", "time", 1), "h|hr|hrs|hour|hours|person-h|person-hours|man-hours|mh"],
  [unit("money", "money", 1), "\\$|usd|dollars|€|£"],
  [
    unit("each", "count", 1),
    "each|ea|pcs|pieces|bags|rolls|boxes|stakes|pins|loads|trips|corners|sides|strips|people|beds|pc|no",
  ],
];

const BY_WORD = new Map(
  WORDS.flatMap(([one, words]) => words.split("|").map((word) => [word.replace("\\", ""), one] as const)),
);

/** Words that name a unit only between brackets or after a comma, since they are ordinary words, too. */
const ORDINARY = new Set(["in", "m", "h", "no", "each", "'", '"', "foot", "share"]);

/** A price or a rate per something is in no unit of that thing. */
const PER_SOMETHING = /\b(per|a)\s+[\w\s-]+\)?$|\/\s*\w+\)?$/i;

/** A text that is nothing but a unit: `in`, `sq ft`, `(tons)`. */
export function unitNamed(text: string): Unit | undefined {
  return BY_WORD.get(plain(text));
}

/**
 * The unit that a heading or a label names: `Depth (in)`, `Length, ft`, `Area sq ft`, `Depth in`, `Tons`.
 *
 * @returns undefined where it names none; a price per unit names none either.
 */
export function unitIn(heading: string): Unit | undefined {
  const apart = heading.match(/[([]\s*([^)\]]+?)\s*[)\]]\W*$/)?.[1] ?? heading.match(/,\s*([^,]+)$/)?.[1];
  const named = apart === undefined ? undefined : unitNamed(apart);
  if (named) return named;
  const words = plain(heading).split(" ");
  // A second row of headings may name nothing but units.
  if (words.length === 1 && words[0] !== "no") return BY_WORD.get(words[0]!);
  for (const count of [4, 3, 2, 1]) {
    if (words.length < count) continue;
    const last = words.slice(-count).join(" ");
    const found = BY_WORD.get(last);
    // “Fabric, 6 ft” tells a size, and not what is counted.
    if (/^[\d.]+$/.test(words.at(-count - 1) ?? "")) return undefined;
    if (!found || (ORDINARY.has(last) && !(last === "in" && words.length === 2))) continue;
    return found.measures !== "density" && PER_SOMETHING.test(heading) ? undefined : found;
  }
  return undefined;
}

/** A heading without the unit it ends with, for matching its words. */
export function withoutUnit(heading: string): string {
  return heading.replace(/\s*[([][^)\]]*[)\]]\W*$/, "").trim();
}

function plain(text: string): string {
  return text
    .toLowerCase()
    .replaceAll(/[()[\]]/g, " ")
    .replaceAll(/(\w)\./g, "$1")
    .replaceAll(/\s*\/\s*/g, "/")
    .replaceAll(/\s+/g, " ")
    .trim();
}
