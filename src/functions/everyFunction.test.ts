import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { cellErrorOf, FakeCellError, standInForCustomFunctions } from "../../test/fakeCustomFunctions";
import { type ArgumentCase, EVERY_ARGUMENT, EVERY_FUNCTION, type Kind } from "../../test/functionCases";
import { messages } from "../quantities/messages";
import { AREA_ROUND, PRICE_MARKUP, STONE_YARDS } from "./index";

beforeAll(() => {
  standInForCustomFunctions();
});

/** A blank cell, however the host sends it. */
const BLANKS: readonly unknown[] = [null, undefined, "", "  ", [[null]], [[""]], [[]]];
const ZERO_IS_BLANK: readonly Kind[] = ["feet", "inches", "number", "count", "stone", "soil", "date", "sides"];
const LENGTHS: readonly Kind[] = ["feet", "feetOrZero", "inches", "inchesOrZero"];
const RANGES: readonly Kind[] = ["areas", "sides", "widths", "points", "dates", "lengths", "counts", "runs", "strips"];

const blanksFor = ({ kind }: ArgumentCase) => (ZERO_IS_BLANK.includes(kind) ? [...BLANKS, 0, [[0]]] : BLANKS);
const required = EVERY_ARGUMENT.filter(({ argument }) => argument.fallback === undefined);
const optional = EVERY_ARGUMENT.filter(({ argument }) => argument.fallback !== undefined);

test.each(EVERY_FUNCTION)("$id gives a quantity for its samples", ({ given, call }) => {
  expect(call(...given.map(({ sample }) => sample))).toBeGreaterThan(0);
});

describe("a blank is never a silent zero", () => {
  test.each(required)("$id: $name must be given", ({ argument, callWith }) => {
    for (const blank of blanksFor(argument)) {
      const { code, message } = cellErrorOf(() => callWith(blank));
      expect(code).toBe("#VALUE!");
      expect(message).toMatch(new RegExp(`^${argument.name}.* is blank.* such as `));
    }
  });

  test.each(optional)("$id: $name left out or blank is taken as the contract says", ({ argument, callWith }) => {
    const { kind, fallback } = argument;
    // No host sends infinity: FABRIC_AREA without a roll length is looked at on its own.
    const withDefault = fallback === Number.POSITIVE_INFINITY ? callWith(1e9) : callWith(fallback);
    for (const blank of kind === "areas" || kind === "dates" ? [...blanksFor(argument), 0] : blanksFor(argument))
      expect(callWith(blank)).toBe(withDefault);
    expect(callWith(argument.sample)).not.toBe(withDefault);
  });
});

describe("a cell that is sent as a range of one, or as a data type's card, counts as its value", () => {
  test.each(EVERY_ARGUMENT)("$id: $name", ({ argument, callWith }) => {
    const { sample, kind } = argument;
    if (RANGES.includes(kind)) return expect(() => callWith([[{}]])).toThrow();
    expect(callWith([[sample]])).toBe(callWith(sample));
    expect(callWith({ type: "Double", basicValue: sample })).toBe(callWith(sample));
  });
});

describe("a range of several cells is refused where one is wanted", () => {
  test.each(EVERY_ARGUMENT.filter(({ argument }) => !RANGES.includes(argument.kind)))("$id: $name", (tried) => {
    const { sample, name } = tried.argument;
    for (const range of [[[sample, sample]], [[sample], [sample]]])
      expect(cellErrorOf(() => tried.callWith(range)).message).toBe(`${name} is a range of cells. Give one cell.`);
  });
});

describe("every length takes tape text with its own units", () => {
  test.each(EVERY_ARGUMENT.filter(({ argument }) => LENGTHS.includes(argument.kind)))("$id: $name", (tried) => {
    const { sample, kind } = tried.argument;
    const inFeet = kind.startsWith("feet") ? Number(sample) : Number(sample) / 12;
    const expected = tried.callWith(sample);
    // 1 ft = 12 in = 1/3 yd = 304.8 mm exactly (NIST Handbook 44, Appendix C).
    for (const text of [`${inFeet} ft`, `${inFeet * 12}"`, `${inFeet * 304.8} mm`, `${inFeet * 0.3048} m`])
      expect(tried.callWith(text)).toBeCloseTo(expected, 9);
    const { code, message } = cellErrorOf(() => tried.callWith("12 cows"));
    expect(code).toBe("#VALUE!");
    expect(message).toMatch(/^\w+: can't read “12 cows” as a length\. .*6' 6"/);
  });
});

describe("what is no quantity is refused, and the message names the argument", () => {
  const hostile = [
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    -1,
    {},
    Symbol("stone"),
    new Date(),
    10n,
    () => 1,
    "1/0",
    "#VALUE!",
    "#N/A",
    "NaN",
    "-Infinity",
    "1,2,3",
  ];
  test.each(EVERY_ARGUMENT)("$id: $name", ({ argument, callWith }) => {
    for (const value of RANGES.includes(argument.kind) ? hostile.map((one) => [[one]]) : hostile) {
      const { code, message } = cellErrorOf(() => callWith(value));
      expect(["#VALUE!", "#N/A"]).toContain(code);
      expect(message.startsWith(argument.name)).toBe(true);
    }
    if (argument.kind !== "flag")
      expect(cellErrorOf(() => callWith(true)).message.startsWith(argument.name)).toBe(true);
  });
});

describe("a share of whole percents is met with the advice to type 10%", () => {
  test.each(EVERY_ARGUMENT.filter(({ argument }) => argument.kind === "shareUnderOne"))("$id: $name", (tried) => {
    for (const value of [1, 10, "10", "100%"])
      expect(cellErrorOf(() => tried.callWith(value)).message).toMatch(/must be under 1\. Type 10% or 0.10, not 10/);
    expect(tried.callWith("8%")).toBe(tried.callWith(0.08));
    expect(tried.callWith(0.999)).toBeGreaterThan(0);
  });

  test.each(EVERY_ARGUMENT.filter(({ argument }) => ["share", "soil"].includes(argument.kind)))(
    "$id: $name",
    (tried) => {
      for (const value of [2.0001, 25, "25", "250%"])
        expect(cellErrorOf(() => tried.callWith(value)).message).toMatch(/must be 2 or less\. Type 10%/);
      expect(tried.callWith("25%")).toBe(tried.callWith(0.25));
      expect(tried.callWith(2)).toBeGreaterThan(0);
    },
  );
});

describe("whole things are counted in whole numbers", () => {
  test.each(EVERY_ARGUMENT.filter(({ argument }) => argument.kind === "count"))("$id: $name", ({ callWith, name }) => {
    expect(cellErrorOf(() => callWith(1.5)).message).toMatch(
      new RegExp(`^${name}: can't use 1.5. Type a whole number`),
    );
  });
});

describe("yes and no", () => {
  test.each(EVERY_ARGUMENT.filter(({ argument }) => argument.kind === "flag"))("$id: $name", ({ callWith }) => {
    for (const yes of [1, "TRUE", "true", " Yes "]) expect(callWith(yes)).toBe(callWith(true));
    for (const no of [0, "FALSE", "no"]) expect(callWith(no)).toBe(callWith(false));
    expect(cellErrorOf(() => callWith("maybe")).message).toMatch(/Type TRUE or FALSE/);
  });
});

describe("whatever is thrown at it, a function gives a quantity or a worded error", () => {
  const nasty = fc.oneof(
    fc.constantFrom<unknown>(
      null,
      undefined,
      "",
      0,
      -0,
      1e308,
      5e-324,
      Number.MAX_SAFE_INTEGER,
      Number.NaN,
      "1/2",
      "-3'",
      true,
    ),
    fc.double(),
    fc.double({ min: 0, max: 50, noNaN: true }),
    fc.integer({ min: 1, max: 400 }),
    fc.string(),
    fc.constantFrom("5' 6\"", "9,8 m", "8%", "river rock", "loam", "2026-03-02", "trapezoid", "#REF!"),
    fc.anything(),
  );
  const range = fc.oneof(nasty, fc.array(fc.array(nasty, { maxLength: 3 }), { maxLength: 6 }));

  test.each(EVERY_FUNCTION)("$id", ({ given, call }) => {
    const values = given.map(({ kind, sample }) =>
      fc.oneof(fc.constant(sample), RANGES.includes(kind) ? range : fc.oneof(nasty, range)),
    );
    fc.assert(
      fc.property(fc.tuple(...values), (tried) => {
        try {
          const answer = call(...tried);
          expect(answer >= 0 && Number.isFinite(answer)).toBe(true);
        } catch (reason) {
          expect(reason).toBeInstanceOf(FakeCellError);
          const { code, message } = reason as FakeCellError;
          expect(["#VALUE!", "#N/A"]).toContain(code);
          expect(message).not.toBe(messages.unforeseen());
          expect(message).toMatch(/^\S.+\.$/s);
        }
      }),
      { numRuns: 400 },
    );
  });
});

test("an overflow is put in words", () => {
  expect(cellErrorOf(() => STONE_YARDS(1e300, 1e300))).toEqual(new FakeCellError("#VALUE!", messages.overflow()));
  expect(cellErrorOf(() => AREA_ROUND(1e300)).message).toBe(messages.overflow());
  expect(cellErrorOf(() => PRICE_MARKUP(1.7e308, 1)).message).toBe(messages.overflow());
});
