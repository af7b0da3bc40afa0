import { describe, expect, test } from "vitest";
import { MOST_CHARACTERS } from "../templates/limits";
import { type OfficeFile, officeFileName, officeText } from "./officeFile";
import { readOffice } from "./readOffice";

const FILE: OfficeFile = {
  format: "bedrow-office-settings",
  version: 2,
  office: "Fernlea Stone",
  saved: "2026-11-30",
  number: 3,
  rates: {
    values: { Rate_fabric_roll: 71.5, Rate_waste: 0.12, Rate_piece_length: `7' 6"` },
    samples: ["Rate_fabric_roll"],
    stones: [
      { name: "river rock", perTon: 62, sample: true },
      { name: `3/4" creek gravel`, perTon: 57, tonsPerYard: 1.42 },
    ],
    lists: {
      Rate_edging_names: [
        { name: "Steel, 4 in", cells: { Rate_edging_prices: 31, Rate_edging_lengths: `7' 6"` } },
        { name: "Aluminum", cells: { Rate_edging_prices: 19, Rate_edging_quoted_on: "2026-11-30" }, sample: true },
      ],
    },
  },
  texts: { office: "Fernlea Stone", terms: "Half on signing\nHalf when done" },
  pastJobs: [
    { job: "Elm Row 3", date: "2025-12-09", measure: "Stone", unit: "tons", estimated: 3, actual: 3.4, setThen: 0.08 },
    { job: "Elm Row 3", measure: "Set edging", unit: "h", estimated: 4, actual: 5 },
  ],
};

/** The file with something else in one place, such as `rates.values.Rate_waste`. */
function changed(place: string, value: unknown): string {
  const file: unknown = structuredClone(FILE);
  const steps = place.split(".");
  const last = steps.pop()!;
  const holder = steps.reduce((at, step) => (at as Record<string, unknown>)[step], file) as Record<string, unknown>;
  holder[last] = value;
  return JSON.stringify(file);
}

const whyNot = (text: string) => {
  const read = readOffice(text);
  return read.ok ? "" : read.why.join(" ");
};

describe("a file of office settings", () => {
  test("is read as it was written", () => {
    expect(readOffice(officeText(FILE))).toEqual({ ok: true, file: FILE });
    expect(readOffice(`\uFEFF${officeText(FILE)}`)).toEqual({ ok: true, file: FILE });
  });

  test("has a stone and a past job a line, for people who compare two of them", () => {
    expect(officeText(FILE)).toContain('{"name":"river rock","perTon":62,"sample":true}');
    expect(
      officeText(FILE)
        .split("\n")
        .filter((line) => line.includes('"measure"')),
    ).toHaveLength(2);
  });

  test("has a name that says whose it is and which", () => {
    expect(officeFileName(FILE)).toBe("Fernlea Stone office settings 3.json");
    expect(officeFileName({ ...FILE, office: "../../Fern & Stone?" })).toBe("Fern Stone office settings 3.json");
  });

  test("of a later version is refused, and what to do is said", () => {
    expect(whyNot(changed("version", 4))).toBe(
      "A newer version of the add-in saved this file (file version 4; this add-in reads 3). Update the add-in, then load it again.",
    );
  });

  test("of an earlier add-in, which had fewer rates, is read", () => {
    expect(whyNot(changed("rates.values", { Rate_waste: 0.1 }))).toBe("");
  });

  test("of an earlier add-in, which had no lists, is read", () => {
    const { lists: _, ...rates } = FILE.rates!;
    const file = { ...FILE, version: 1, rates };
    expect(readOffice(JSON.stringify(file))).toEqual({ ok: true, file });
  });

  test("of a later add-in, with names that aren't known here, is read", () => {
    const { values } = FILE.rates!;
    expect(whyNot(changed("rates.values", { ...values, Rate_moon_haul: 12 }))).toBe("");
    expect(whyNot(changed("texts.faxNumber", "555-0100"))).toBe("");
    expect(whyNot(changed("rates.lists.Rate_moon_names", [{ name: "x", cells: { Rate_moon_prices: 1 } }]))).toBe("");
    expect(whyNot(changed("rates.lists.Rate_edging_names.0.cells.Rate_edging_colors", "red"))).toBe("");
  });

  test("may list stone by the number of its size", () => {
    expect(whyNot(changed("rates.stones.1.name", "#57 limestone"))).toBe("");
  });

  test("without any settings is refused", () => {
    const { rates: _r, texts: _t, pastJobs: _p, ...bare } = FILE;
    expect(whyNot(JSON.stringify(bare))).toBe("It holds no rates, no letterhead, and no past jobs.");
  });

  test.each([
    ["no JSON", "{half", /damaged, or isn't a Bedrow office settings file/],
    ["a template", '{"format":"bedrow-template","version":1}', /isn't a Bedrow office settings file/],
    ["too large", " ".repeat(MOST_CHARACTERS + 1), /too large: the limit is 1,000,000 characters/],
    ["a member that it doesn't have", changed("macro", "run"), /has “macro”/],
    ["a share over its limit", changed("rates.values.Rate_waste", 8), /[Ww]aste/],
    ["a negative price", changed("rates.values.Rate_fabric_roll", -1), /[Rr]oll/],
    ["a number that isn't one", changed("rates.values.Rate_fabric_roll", "71"), /71/],
    ["text that isn't a length", changed("rates.values.Rate_piece_length", "=1+1"), /=1\+1/],
    ["a half pin", changed("rates.values.Rate_pins_per_box", 2.5), /2\.5/],
    ["a name that is spelled otherwise", changed("rates.values.Rate_wAste", 0.1), /damaged at rates, values/],
    [
      "a name of the language",
      '{"format":"bedrow-office-settings","version":1,"office":"A","saved":"2026-11-30","number":1,"rates":{"values":{"__proto__":1},"samples":[],"stones":[]}}',
      /damaged at rates/,
    ],
    [
      "a formula for a stone",
      changed("rates.stones.0.name", "=HYPERLINK(A1)"),
      /The stone “=HYPERLINK\(A1\)” can't begin with “=”/,
    ],
    ["an error for a stone", changed("rates.stones.0.name", "#N/A"), /The stone “#N\/A” can't begin with “#”/],
    ["a stone twice", changed("rates.stones.1.name", "River Rock"), /River Rock is listed twice/],
    ["a stone with spaces around it", changed("rates.stones.1.name", "slate "), /spaces/],
    ["a stone too heavy to be one", changed("rates.stones.1.tonsPerYard", 40), /40/],
    ["a stone with a unit and a price per ton", changed("rates.stones.1.soldBy", "cubic yard"), /soldBy with price/],
    ["a stone without a price", changed("rates.stones.1", { name: "slate" }), /The price of slate/],
    [
      "a price without a unit",
      changed("rates.stones.1", { name: "slate", perTon: 40, price: 40 }),
      /soldBy with price/,
    ],
    ["a unit that isn't one", changed("rates.stones.1", { name: "slate", soldBy: "yd", price: 40 }), /soldBy/],
    ["an increment of 0", changed("rates.stones.1.orderStep", 0), /Order increment of 3/],
    ["a size that is a sample", changed("rates.samples", ["Rate_waste"]), /Rate_waste can't be a sample/],
    [
      "a character that doesn't show",
      changed("texts.terms", "free\u202E"),
      /Terms has a character that doesn't show \(U\+202E\)/,
    ],
    ["a choice that doesn't exist", changed("texts.paper", "napkin"), /Paper can't be “napkin”/],
    ["a text that is too long", changed("texts.noticeDays", "2".repeat(30)), /longer than 20 characters/],
    ["a formula for a job", changed("pastJobs.0.job", "=1+1"), /“=1\+1” of past job 1 can't begin with “=”/],
    ["a plus sign of full width", changed("pastJobs.0.unit", "＋1"), /“＋1” of past job 1 can't begin/],
    ["a day that isn't in the calendar", changed("pastJobs.0.date", "2026-02-30"), /day of past job 1.*2026-02-30/],
    [
      "an amount without end",
      changed("pastJobs.0.actual", 7).replace('"actual":7', '"actual":1e999'),
      /damaged at pastJobs, 0, actual/,
    ],
    [
      "a price without end",
      changed("rates.values.Rate_fabric_roll", 7).replace('"Rate_fabric_roll":7', '"Rate_fabric_roll":1e999'),
      /\S/,
    ],
    ["too many past jobs", changed("pastJobs", Array(2001).fill(FILE.pastJobs![0])), /damaged at pastJobs/],
    ["a blank office", changed("office", " "), /office's name is blank/],
  ])("with %s is refused, in words", (_, text, why) => {
    expect(whyNot(text)).toMatch(why);
  });

  test.each<[string, string, unknown, RegExp]>([
    ["a formula for a row", "0.name", "=1+1", /The row for edging “=1\+1” can't begin with “=”/],
    ["a row twice", "1.name", "steel, 4 IN", /steel, 4 IN is listed twice/],
    ["a row with spaces around it", "0.name", "Steel ", /spaces/],
    ["a row without a name", "0.name", "", /damaged at rates, lists, Rate_edging_names, 0, name/],
    ["a row with a negative price", "0.cells.Rate_edging_prices", -1, /Edging piece of Steel, 4 in/],
    ["a row with words for a price", "0.cells.Rate_edging_prices", "ask Dale", /ask Dale/],
    ["a row with words for a length", "0.cells.Rate_edging_lengths", "=1+1", /=1\+1/],
    ["a row with half a stake", "0.cells.Rate_edging_stakes", 2.5, /2\.5/],
    ["a formula for who quoted", "0.cells.Rate_edging_quoted_by", "=A1", /can't begin with “=”/],
    ["a quote on no day", "1.cells.Rate_edging_quoted_on", "2026-02-30", /2026-02-30/],
    [
      "a row with a member that it doesn't have",
      "0.formula",
      "=A1",
      /has “rates, lists, Rate_edging_names, 0, formula”/,
    ],
    ["a character in a row that doesn't show", "0.cells.Rate_edging_quoted_by", "Mi\u202Eller", /U\+202E/],
  ])("with %s is refused, in words", (_, place, value, why) => {
    expect(whyNot(changed(`rates.lists.Rate_edging_names.${place}`, value))).toMatch(why);
  });
});
