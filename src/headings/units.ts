/** What a column of a sheet can be measured in. */
export type Measure = "length" | "area" | "volume" | "weight" | "density" | "share" | "time" | "money" | "count";

interface Unit {
  readonly measures: Measure;
  /**
   * How to come to the base unit of its measure (feet, square feet, cubic yards, short tons, tons a cubic yard, hours):
   * "*" or "/" by a number.
   */
  readonly toBase: readonly ["*" | "/", number];
  /** The words that stand for it in headings, after {@link plainText}. */
  readonly words: readonly string[];
}

/*
 * 1 in = 25.4 mm, 1 yd = 0.9144 m and 1 lb = 0.45359237 kg exactly (NIST Handbook 44, Appendix C); the others
 * follow from them. Written out, since they go into formulas as they are here.
 */
const unit = (measures: Measure, words: string, by: "*" | "/" = "*", factor = 1): Unit => ({
  measures,
  toBase: [by, factor],
  words: words.split("|"),
});

/** All units that a heading may name, with the ways to spell each one. "Yards" alone may be cubic ones or lengths. */
export const units = {
  ft: unit("length", "ft|feet|foot|lf|lin ft|lineal ft|linear ft|linear feet|lineal feet|running ft|'"),
  in: unit("length", 'in|ins|inch|inches|"', "/", 12),
  yd: unit("length", "lin yd|linear yd|linear yards|lineal yards|yd long", "*", 3),
  m: unit("length", "m|mtr|meter|meters|metre|metres|lin m", "/", 0.3048),
  cm: unit("length", "cm|cms|centimeter|centimeters|centimetre|centimetres", "/", 30.48),
  mm: unit("length", "mm|mms|millimeter|millimeters|millimetre|millimetres", "/", 304.8),
  "sq ft": unit("area", "sq ft|sqft|sq feet|sq foot|sf|ft2|ft²|ft^2|square feet|square foot|square ft"),
  "sq in": unit("area", "sq in|in2|in²|square inches", "/", 144),
  "sq yd": unit("area", "sq yd|sq yds|sy|yd2|yd²|square yards", "*", 9),
  "sq m": unit("area", "sq m|sqm|m2|m²|m^2|square meters|square metres", "/", 0.09290304),
  "cu yd": unit("volume", "cu yd|cu yds|cuyd|cy|yd3|yd³|cubic yards|cubic yard|cubic yd|cubic yds"),
  "cu ft": unit("volume", "cu ft|cuft|cf|ft3|ft³|cubic feet|cubic foot|cubic ft", "/", 27),
  "cu m": unit("volume", "cu m|m3|m³|cubic meters|cubic metres", "/", 0.764554857984),
  tons: unit("weight", "ton|tons|tn|t|short ton|short tons|us tons"),
  lb: unit("weight", "lb|lbs|pound|pounds", "/", 2000),
  tonnes: unit("weight", "tonne|tonnes|metric ton|metric tons", "/", 0.90718474),
  kg: unit("weight", "kg|kgs|kilograms", "/", 907.18474),
  "tons/cu yd": unit(
    "density",
    "tons/cu yd|tons/cy|tons/yd|ton/cu yd|ton/cy|t/cy|tons per cubic yard|tons per yard|tons per cu yd|tons per cy|tons a cubic yard|tons a cu yd|tons a cy|tons a yard",
  ),
  "lb/cu yd": unit("density", "lb/cu yd|lb/cy|lbs/cu yd|lbs/cy|pounds per cubic yard|lbs per cubic yard", "/", 2000),
  "lb/cu ft": unit("density", "lb/cu ft|lb/cf|lbs/cu ft|lbs/cf|pcf|pounds per cubic foot", "*", 27 / 2000),
  "%": unit("share", "%|pct|percent|per cent"),
  share: unit("share", "share|fraction"),
  hr: unit("time", "h|hr|hrs|hour|hours|man hours|man-hours|person-h|person hours|person-hours|mh"),
  money: unit("money", "$|usd|dollars|€|£"),
  pieces: unit("count", "pieces|piece|pcs|pc|sticks"),
  rolls: unit("count", "rolls|roll"),
  pins: unit("count", "pins|staples"),
  boxes: unit("count", "boxes|box"),
  stakes: unit("count", "stakes"),
  loads: unit("count", "loads|load"),
  each: unit("count", "each|ea"),
  /** What else a sheet counts: the word itself says what, so it also stays among the words of the heading. */
  things: unit("count", "bags|trips|corners|sides|strips|people|beds"),
} as const satisfies Readonly<Record<string, Unit>>;

export type UnitName = keyof typeof units;

const byWord = new Map<string, UnitName>(
  (Object.keys(units) as UnitName[]).flatMap((name) => units[name].words.map((word) => [word, name] as const)),
);

/** All words of units: a text that begins and ends with none of them names no unit. */
export const unitWords: ReadonlySet<string> = new Set([...byWord.keys()].flatMap((spelled) => spelled.split(" ")));

const LONGEST = 80;
const ABBREVIATIONS: Readonly<Record<string, string>> = {
  "req'd": "needed",
  reqd: "needed",
  required: "needed",
  dp: "depth",
  dpth: "depth",
  thk: "thick",
  ht: "height",
  rnd: "round",
};
const ABBREVIATED = /(?<!\p{L})(?:req'?d|required|dp|dpth|thk|ht|rnd)(?!\p{L})/gu;

/**
 * A text in lower case, with one kind of foot mark, inch mark, dash and space, and without the dots of abbreviations.
 *
 * @example plainText("L.F.  edging – “A”") // 'lf edging - "a"'
 */
export function plainText(text: string): string {
  return text
    .slice(0, LONGEST)
    .toLowerCase()
    .replace(/[\u2032\u2018\u2019\u00b4`]/g, "'")
    .replace(/[\u2033\u201c\u201d]|''/g, '"')
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .replace(/(?<!\p{L})(\p{L})\.(\p{L})(?:\.|(?!\p{L}))/gu, "$1$2")
    .replace(/(?<=\p{L})\./gu, " ")
    .replace(/\b(sq|cu|lin)-(?=\p{L})/gu, "$1 ")
    .replace(ABBREVIATED, (short) => ABBREVIATIONS[short] ?? short)
    .replace(/[_\s]+/g, " ")
    .trim();
}

/** The unit that a plain text is, such as "sq ft" or "tons / cu yd". */
export function unitSpelled(plain: string): UnitName | undefined {
  return byWord.get(plain) ?? (plain.includes("/") ? byWord.get(plain.replace(/ *\/ */g, "/")) : undefined);
}

/**
 * A text that is nothing but a unit, as in a column of units: `in`, `Sq. ft.`, `(tons)`.
 *
 * @example unitNamed(" In. ") // "in"
 */
export function unitNamed(text: string): UnitName | undefined {
  return unitSpelled(plainText(text.replace(/[()[\]]/g, " ")));
}

/** How many feet, square feet, cubic yards, short tons, tons a cubic yard, or hours a unit is. */
export function sizeOf(name: UnitName): number {
  const [sign, factor] = units[name].toBase;
  return sign === "*" ? factor : 1 / factor;
}

/**
 * The factor between two units of one measure, as it is written behind an amount: "" where they are the same.
 * Of a factor and its inverse the one that is written shorter is taken, since that is the exact one.
 *
 * @example conversion("cm", "in") // "/2.54"
 */
export function conversion(from: UnitName, to: UnitName): string {
  const [above, below] = [part(from, "*") * part(to, "/"), part(from, "/") * part(to, "*")];
  if (above === below) return "";
  const [times, over] = [tidy(above / below), tidy(below / above)];
  return String(times).length < String(over).length ? `*${times}` : `/${over}`;
}

function part(name: UnitName, wanted: "*" | "/"): number {
  const [sign, factor] = units[name].toBase;
  return sign === wanted ? factor : 1;
}

/** Exact relations have few digits; the rest is what binary arithmetic left. */
const tidy = (value: number) => Number(value.toPrecision(12));
