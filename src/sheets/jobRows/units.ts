/** What a column of a list can be measured in. */
export type Measure = "length" | "area" | "volume" | "weight" | "share" | "time" | "count";

export interface ListUnit {
  /** As it is shown: "in", "sq ft". */
  readonly name: string;
  readonly measures: Measure;
  /** How to come to the base unit of its measure (feet, square feet, cubic yards, short tons): "*" or "/" by a number. */
  readonly toBase: readonly ["*" | "/", number];
}

/*
 * 1 in = 25.4 mm, 1 yd = 0.9144 m and 1 lb = 0.45359237 kg exactly (NIST Handbook 44, Appendix C); the others
 * follow from them. Written out, since they go into formulas as they stand here.
 */
const unit = (name: string, measures: Measure, by: "*" | "/" = "*", factor = 1): ListUnit => ({
  name,
  measures,
  toBase: [by, factor],
});

export const listUnits = {
  ft: unit("ft", "length"),
  in: unit("in", "length", "/", 12),
  yd: unit("yd", "length", "*", 3),
  m: unit("m", "length", "/", 0.3048),
  cm: unit("cm", "length", "/", 30.48),
  mm: unit("mm", "length", "/", 304.8),
  "sq ft": unit("sq ft", "area"),
  "sq in": unit("sq in", "area", "/", 144),
  "sq yd": unit("sq yd", "area", "*", 9),
  "sq m": unit("sq m", "area", "/", 0.09290304),
  "cu yd": unit("cu yd", "volume"),
  "cu ft": unit("cu ft", "volume", "/", 27),
  "cu m": unit("cu m", "volume", "/", 0.764554857984),
  tons: unit("tons", "weight"),
  lb: unit("lb", "weight", "/", 2000),
  tonnes: unit("tonnes", "weight", "/", 0.90718474),
  kg: unit("kg", "weight", "/", 907.18474),
  "%": unit("%", "share"),
  h: unit("h", "time"),
  pieces: unit("pieces", "count"),
  rolls: unit("rolls", "count"),
  pins: unit("pins", "count"),
  boxes: unit("boxes", "count"),
  stakes: unit("stakes", "count"),
  loads: unit("loads", "count"),
  each: unit("each", "count"),
} as const satisfies Readonly<Record<string, ListUnit>>;

export type UnitName = keyof typeof listUnits;

/** Words that stand for units in headings, after {@link plainHeading}. */
const WORDS: Readonly<Record<UnitName, string>> = {
  ft: "ft|feet|foot|lf|lin ft|lineal ft|linear ft|linear feet|lineal feet|running ft|'",
  in: 'in|ins|inch|inches|"',
  yd: "lin yd|linear yd|linear yards|lineal yards|yd long",
  m: "m|mtr|meter|meters|metre|metres|lin m",
  cm: "cm|cms|centimeter|centimeters|centimetre|centimetres",
  mm: "mm|mms|millimeter|millimeters|millimetre|millimetres",
  "sq ft": "sq ft|sqft|sq feet|sf|ft2|ft²|ft^2|square feet|square foot|square ft",
  "sq in": "sq in|in2|in²|square inches",
  "sq yd": "sq yd|sq yds|sy|yd2|yd²|square yards",
  "sq m": "sq m|sqm|m2|m²|m^2|square meters|square metres",
  "cu yd": "cu yd|cu yds|cuyd|cy|yd3|yd³|cubic yards|cubic yard|cubic yd|cubic yds",
  "cu ft": "cu ft|cuft|cf|ft3|ft³|cubic feet|cubic ft",
  "cu m": "cu m|m3|m³|cubic meters|cubic metres",
  tons: "ton|tons|tn|t|short ton|short tons|us tons",
  lb: "lb|lbs|pound|pounds",
  tonnes: "tonne|tonnes|metric ton|metric tons",
  kg: "kg|kgs|kilograms",
  "%": "%|pct|percent|per cent",
  h: "h|hr|hrs|hour|hours|man hours|man-hours|person-h|person hours|mh",
  pieces: "pieces|piece|pcs|pc|sticks",
  rolls: "rolls|roll",
  pins: "pins|staples",
  boxes: "boxes|box",
  stakes: "stakes",
  loads: "loads|load",
  each: "each|ea|no|qty|count|#",
};

const byWord = new Map<string, UnitName>(
  (Object.entries(WORDS) as [UnitName, string][]).flatMap(([name, words]) =>
    words.split("|").map((word) => [word, name] as const),
  ),
);

/** The unit that a word, or a few of them, stands for. */
export function unitNamed(words: string): UnitName | undefined {
  return byWord.get(words);
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
  const [sign, factor] = listUnits[name].toBase;
  return sign === wanted ? factor : 1;
}

/** Exact relations have few digits; the rest is what binary arithmetic left. */
const tidy = (value: number) => Number(value.toPrecision(12));
