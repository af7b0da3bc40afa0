import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { depthVerdict, depthVerdicts } from "./depthVerdict";
import { estimateBed } from "./estimate";
import { type BedForm, blankForm } from "./form";
import { readForm } from "./read";
import { inFormWords } from "./words";

const form = (changes: Partial<BedForm>): BedForm => ({ ...blankForm(), ...changes });
const problemsOf = (changes: Partial<BedForm>) => readForm(form(changes)).problems;

describe("reading a form", () => {
  test("takes tape text in each field's own unit, shares as shares, and starting values for the rest", () => {
    const { bed } = readForm(
      form({ typed: { length: `18' 6"`, width: "1.5 m", borderHeight: "10 cm", waste: "8" + "%" } }),
    );
    expect(bed?.numbers).toMatchObject({ length: 18.5, waste: 0.08, topGap: 0.5, pieceLength: 8 });
    // 1 ft = 0.3048 m exactly (NIST Handbook 44, Appendix C).
    expect(bed?.numbers.width).toBeCloseTo(1.5 / 0.3048, 12);
    expect(bed?.numbers.borderHeight).toBeCloseTo(10 / 2.54, 12);
  });

  test("names every blank at once, and no blank counts as zero", () => {
    expect(problemsOf({}).map(({ place }) => place)).toEqual(["length", "width"]);
    expect(problemsOf({ way: "round" }).map(({ place }) => place)).toEqual(["diameter"]);
    expect(problemsOf({ typed: { length: "18", width: "0" } })).toMatchObject([{ place: "width" }]);
  });

  test("a field that may be blank then counts as none", () => {
    expect(
      readForm(form({ typed: { length: "18", width: "5", cornerRadius: "", waste: " " } })).bed?.numbers,
    ).toMatchObject({
      cornerRadius: 0,
      waste: 0,
    });
  });

  test.each([
    ["length", "eighteen", /“eighteen”, which cannot be read as a length/],
    ["waste", "10", /type 10% \(or 0.10\) rather than 10/],
    ["materialMarkup", "20", /type 10% \(or 0.10\) rather than 10/],
    ["width", "-5", /less than 0/],
    ["roundedCorners", "1.5", /whole number/],
    ["stone", " ", /Stone is blank/],
    ["crewSize", "0", /blank or 0/],
  ] as const)("%s of %j is refused in words", (field, text, words) => {
    const [problem, ...others] = problemsOf({ typed: { length: "18", width: "5", [field]: text } });
    expect(problem).toMatchObject({ place: field });
    expect(problem?.message).toMatch(words);
    expect(others).toEqual([]);
  });

  test("a blank between two widths is named by its place; blanks behind the last are not given", () => {
    const widths = { way: "widths", typed: { spacing: "4" } } as const;
    expect(problemsOf({ ...widths, widths: ["3", "", "4", ""] })).toMatchObject([{ place: "width2" }]);
    expect(readForm(form({ ...widths, widths: ["3", "0", "4", "", ""] })).bed?.widthsFt).toEqual([3, 0, 4]);
    expect(problemsOf({ ...widths, widths: ["3", "", ""] })).toMatchObject([{ place: "width2" }]);
  });

  test("too few outline points are named", () => {
    expect(
      problemsOf({
        way: "points",
        points: [
          ["0", "0", "1"],
          ["5", "0", "1"],
        ],
      }),
    ).toMatchObject([{ place: "point3.x" }]);
  });
});

describe("an estimate", () => {
  const taped = fc.record({
    length: fc.double({ min: 0.5, max: 200, noNaN: true }),
    width: fc.double({ min: 0.5, max: 60, noNaN: true }),
    waste: fc.double({ min: 0, max: 0.9, noNaN: true }),
    longBorders: fc.integer({ min: 0, max: 2 }),
    shortBorders: fc.integer({ min: 0, max: 2 }),
  });
  const estimate = (values: Record<string, number>) =>
    estimateBed(
      readForm(
        form({ typed: Object.fromEntries(Object.entries(values).map(([key, value]) => [key, value.toFixed(4)])) }),
      ).bed!,
    );

  test("has no amount that is negative or no number", () => {
    fc.assert(
      fc.property(taped, (values) => {
        const { amounts, price } = estimate(values);
        for (const amount of [...Object.values(amounts), price]) expect(amount).toBeGreaterThanOrEqual(0);
        expect(Object.values(amounts).every(Number.isFinite)).toBe(true);
      }),
    );
  });

  test("of a larger bed never takes less stone, and with more waste never less", () => {
    fc.assert(
      fc.property(taped, fc.double({ min: 0, max: 20, noNaN: true }), (values, more) => {
        const { amounts } = estimate(values);
        expect(estimate({ ...values, length: values.length + more }).amounts.orderTons).toBeGreaterThanOrEqual(
          amounts.orderTons,
        );
        const wasteful = estimate({ ...values, waste: Math.min(0.95, values.waste + more / 100) });
        expect(wasteful.amounts.stoneTons).toBeGreaterThanOrEqual(amounts.stoneTons);
      }),
    );
  });

  test("puts the problem of values that do not go together in the form's words", () => {
    const bed = readForm(form({ typed: { length: "18", width: "5", trenchDepth: "4" } })).bed!;
    expect(() => estimateBed(bed)).toThrow(/border_height_in is 4 in/);
    expect(inFormWords("border_height_in is 4 in, and trench_depth_in takes it.")).toBe(
      "“Border height” is 4 in, and “Trench below the scrape” takes it.",
    );
  });
});

// Common practice, no source: stone up to two thirds of the depth, depth from 1.5 to 6 in.
test.each([
  [2, 1.25, depthVerdicts.fits],
  [2, 1.34, depthVerdicts.stoneTooLarge],
  [1.49, 0.375, depthVerdicts.shallow],
  [6, 2, depthVerdicts.fits],
  [6.1, 2, depthVerdicts.deep],
])("%f in of depth for stone to %f in: %s", (depth, stone, text) => {
  expect(depthVerdict(depth, stone).text).toBe(text);
});
