import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { depthVerdicts } from "./depthVerdict";
import { estimateBed } from "./estimate";
import { type FieldKey, fields } from "./fields";
import { type BedForm, blankForm, givenCutOuts, givenPoints, givenWidths, shapeFieldsOf, ways } from "./form";
import { readForm } from "./read";
import { readField } from "./readField";
import { fieldOf, inFormWords } from "./words";

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

  test("what another way of measuring asks for isn't in the way", () => {
    const others = { widths: ["", "", "4"], points: [["x", "", "1"]] } as const;
    const { bed, problems } = readForm(form({ ...others, typed: { length: "18", width: "5" } }));
    expect(problems).toEqual([]);
    expect(bed).toMatchObject({ widthsFt: [], points: [], borderAfterPoint: [] });
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
    ["length", "eighteen", /“eighteen” as a length/],
    ["waste", "10", /Type 10% or 0.10, not 10/],
    ["materialMarkup", "20", /Type 10% or 0.10, not 10/],
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

  test("places are counted from 1, in widths, points and cut-outs", () => {
    const widths = ["x", "3", "y"];
    expect(problemsOf({ way: "widths", typed: { spacing: "4" }, widths }).map(({ place }) => place)).toEqual([
      "width1",
      "width3",
    ]);
    const points = [
      ["x", "0", "1"],
      ["4", "y", "1"],
      ["4", "4", "0"],
    ] as const;
    const cutOuts = [
      ["x", "y", "-1", "-2"],
      ["", "1", "0", " "],
    ] as const;
    const found = problemsOf({ way: "points", points, cutOuts });
    expect(found.map(({ place }) => place)).toEqual([
      ...["point1.x", "point2.y", "cutOut1.x", "cutOut1.y", "cutOut1.across", "cutOut1.deep", "cutOut2.x"],
    ]);
    expect(found.map(({ message }) => message.split(" ").slice(0, 4).join(" "))).toEqual([
      ...["Point 1, x: can't", "Point 2, y: can't", "Cut-out 1, x: can't", "Cut-out 1, y: can't"],
      ...["Cut-out 1, across: “-1”", "Cut-out 1, deep: “-2”", "Cut-out 2, x is"],
    ]);
    expect(found.map(({ unfinished }) => unfinished)).toEqual([false, false, false, false, false, false, true]);
  });

  test("points and the middle of a cut-out may be on either side of the stake, and a cut-out without depth is round", () => {
    const { bed } = readForm(
      form({
        way: "points",
        points: [
          ["-1", "-2", "1"],
          ["4", "0", "0"],
          ["0", "3", "1"],
          ["", "", "1"],
        ],
        cutOuts: [
          ["-0.5", "-0.25", "1", " "],
          ["1", "1", "0.5", "0.75"],
          ["", " ", "", ""],
        ],
      }),
    );
    expect(bed).toMatchObject({
      points: [
        [-1, -2],
        [4, 0],
        [0, 3],
      ],
      borderAfterPoint: [true, false, true],
      cutOuts: [
        { x: -0.5, y: -0.25, across: 1, deep: undefined },
        { x: 1, y: 1, across: 0.5, deep: 0.75 },
      ],
    });
  });

  test("two widths and three points are enough", () => {
    expect(problemsOf({ way: "widths", typed: { spacing: "4" }, widths: ["3", "4"] })).toEqual([]);
    expect(problemsOf({ way: "widths", typed: { spacing: "4" }, widths: ["3"] })).toMatchObject([
      { place: "width2", unfinished: true },
    ]);
    expect(problemsOf({ way: "widths", typed: { spacing: "4" }, widths: ["3", "-4"] })).toMatchObject([
      { place: "width2", message: expect.stringContaining("less than 0"), unfinished: false },
    ]);
    expect(problemsOf({ way: "widths", typed: { spacing: "4" }, widths: ["3", " ", "2"] })).toMatchObject([
      { message: expect.stringMatching(/^Width 2 is blank/), unfinished: true },
    ]);
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
      "“Edging height” is 4 in, and “Trench below the scrape” takes it.",
    );
  });
});

describe("what of a form counts as given", () => {
  test("are widths and points up to the last one that is not blank", () => {
    expect(givenWidths(form({ widths: ["3", " ", "4", " ", ""] }))).toEqual(["3", " ", "4"]);
    expect(givenWidths(form({}))).toEqual([]);
    const points = [
      ["", "1", "1"],
      ["2", "", "1"],
      [" ", " ", "1"],
    ] as const;
    expect(givenPoints(form({ points }))).toEqual(points.slice(0, 2));
    expect(givenPoints(form({ points: points.slice(0, 1) }))).toEqual(points.slice(0, 1));
    expect(givenPoints(form({}))).toEqual([]);
  });

  test("are cut-outs with anything in them, where the bed has a plan", () => {
    const cutOuts = [
      ["", " ", "", ""],
      ["", "", "2", ""],
    ] as const;
    expect(givenCutOuts(form({ cutOuts }))).toEqual([cutOuts[1]]);
    expect(givenCutOuts(form({ cutOuts, way: "area" }))).toEqual([]);
  });
});

test("a blank form is a rectangle without a name, with room for five widths and four corners with border", () => {
  const { name, way, typed, widths, points, cutOuts } = blankForm();
  expect({ name, way, typed, cutOuts }).toEqual({ name: "", way: "rectangle", typed: {}, cutOuts: [] });
  expect(widths).toEqual(Array(5).fill(""));
  expect(points).toEqual(Array(4).fill(["", "", "1"]));
});

test("every way of measuring asks for its own fields, and for what is deducted", () => {
  for (const [way, { fields: own }] of Object.entries(ways))
    expect(shapeFieldsOf({ way: way as keyof typeof ways, typed: {} })).toEqual([...own, "cutOuts", "cutAround"]);
});

describe("a field", () => {
  test.each<[FieldKey, string, number]>([
    ["materialMarkup", "200%", 2],
    ["waste", "99%", 0.99],
    ["waste", "0", 0],
    ["roundedCorners", "4", 4],
    ["length", `18' 6"`, 18.5],
    ["borderHeight", "4", 4],
    ["cleanUpHours", "1.5", 1.5],
  ])("%s of %j is %f", (key, text, value) => {
    expect(readField(fields[key], text)).toBe(value);
  });

  test.each<[FieldKey, string, RegExp]>([
    ["materialMarkup", "201%", /must be 2 or less/],
    ["waste", "100%", /must be under 1/],
    ["roundedCorners", "1.5", /Type a whole number\.$/],
    ["length", "", /^Length is blank\. Type a value, such as 18' 6"\.$/],
    ["area", " ", /^Area is blank\. Type a value, such as 12\.$/],
    ["pieceLength", "", /such as 8\.$/],
    ["length", "0", /^Length is blank or 0\. .*such as 18' 6"\.$/],
    ["crewRate", "-1", /less than 0/],
  ])("%s of %j is refused", (key, text, words) => {
    const read = () => readField(fields[key], text);
    expect(read).toThrow(words);
    expect(read).toThrow(expect.objectContaining({ kind: "value", argument: fields[key].label }));
  });
});

test("problems of the arithmetic are shown at their fields", () => {
  const found = ["trench_depth_in", "top_gap_in", "corner_radius", "rounded_corners", "inner_diameter", "diameter"];
  expect(found.map(fieldOf)).toEqual([
    ...["trenchDepth", "topGap", "cornerRadius", "roundedCorners", "innerDiameter", "diameter"],
  ]);
  expect(["cut_outs", "overlap_in", "end_lap_in", "lap_in", "length", "stone", "soil"].map(fieldOf)).toEqual([
    ...["cutOuts", "overlap", "endLap", "pieceLap", "length", "stone", "soil"],
  ]);
  expect([undefined, "points"].map(fieldOf)).toEqual([undefined, undefined]);
  expect(inFormWords("points and end_lap_in do not fit any_thing")).toBe(
    "points and “End lap of rolls” do not fit any_thing",
  );
});

/** What is said of a border of this height, with no trench and no gap, over stone of this size. */
function depthCheck(depth: number, stone: number): string {
  const typed = { length: "20", width: "6", borderHeight: String(depth), trenchDepth: "0", topGap: "0" };
  return estimateBed(readForm(form({ typed: { ...typed, stoneSize: String(stone) } })).bed!).depthCheck;
}

test("a depth fits where stone is covered, and nothing is wasted", () => {
  const cases = [
    [1.5, 1],
    [6, 4],
    [1.49, 0.5],
    [2, 1.4],
    [6.1, 1],
  ] as const;
  expect(cases.map(([depth, stone]) => depthCheck(depth, stone) === depthVerdicts.fits)).toEqual([
    ...[true, true, false, false, false],
  ]);
});

// Common practice, no source: stone up to two thirds of the depth, depth from 1.5 to 6 in.
test.each([
  [2, 1.25, depthVerdicts.fits],
  [2, 1.34, depthVerdicts.stoneTooLarge],
  [1.49, 0.375, depthVerdicts.shallow],
  [6, 2, depthVerdicts.fits],
  [6.1, 2, depthVerdicts.deep],
])("%f in of depth for stone to %f in: %s", (depth, stone, text) => {
  expect(depthCheck(depth, stone)).toBe(text);
});
