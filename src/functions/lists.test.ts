import { describe, expect, test } from "vitest";
import { standInForCustomFunctions } from "../../test/fakeCustomFunctions";
import { isList, LAID, LISTS, LIST_SAMPLES as samples } from "../../test/functionCases";
import { cutRows } from "./cutLists";
import * as functions from "./index";

standInForCustomFunctions();

type Cell = string | number;
const call = (id: (typeof LISTS)[number], ...given: unknown[]) =>
  Reflect.apply(functions[id], undefined, given) as Cell[][];
const { points: square, laying } = LAID;

/** Places of arguments that may be left out. */
const MAY_BE_BLANK: Partial<Record<(typeof LISTS)[number], readonly number[]>> = {
  CUT_LIST: [2, 3],
  FABRIC_CUTS: [5],
  PIN_MAP: [4, 5],
  LAYOUT_RECTANGLE: [2, 3],
  LAYOUT_ROUND: [1],
};

describe.each(LISTS)("%s", (id) => {
  test("gives a heading row and rows of the same width, without a blank that would show as 0", () => {
    const [heading, ...rows] = call(id, ...samples[id]);
    expect(heading!.every((cell) => typeof cell === "string" && cell !== "")).toBe(true);
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      expect(row).toHaveLength(heading!.length);
      for (const cell of row)
        expect(typeof cell === "number" ? Number.isFinite(cell) : typeof cell === "string").toBe(true);
    }
  });

  test("refuses each blank needed argument by its name", () => {
    const given = samples[id];
    given.forEach((_, place) => {
      if (MAY_BE_BLANK[id]?.includes(place)) return;
      const blank = given.map((value, other) => (other === place ? null : value));
      expect(() => call(id, ...blank)).toThrow(
        expect.objectContaining({ code: "#VALUE!", message: expect.stringMatching(/blank|has 0|Give/) }),
      );
    });
  });

  test("refuses text that is no measure, and quotes it", () => {
    const given = [...samples[id]];
    given[given.length - 1] = "half";
    expect(() => call(id, ...given)).toThrow(expect.objectContaining({ message: expect.stringContaining("“half”") }));
  });
});

test("every list-returning function is known as one", () => {
  expect(Object.keys(functions).filter(isList)).toHaveLength(LISTS.length);
});

describe("what the lists say", () => {
  test("PIN_MAP has as many rows as PINS counts, corners among them", () => {
    // Five-spot on a square of 3 ft: (12/3 + 1)² + (12/3)² = 41 (computed from published geometry).
    const [, ...rows] = call("PIN_MAP", 12, 12, 12, 0, 18, 3);
    expect(rows).toHaveLength(41);
    expect(rows).toEqual(
      expect.arrayContaining([
        [0, 0],
        [12, 0],
        [0, 12],
        [12, 12],
      ]),
    );
  });

  test("FABRIC_CUTS takes the rest of a roll first, and laps the piece after it", () => {
    // 30 ft strips off 50 ft rolls: 30; then the 20 ft left, lapped 1 ft by 11 ft of the next roll.
    expect(call("FABRIC_CUTS", 30, 11, 6, 50, 12).slice(1)).toEqual([
      [1, 1, 1, 0, 30],
      [2, 1, 1, 0, 20],
      [2, 2, 2, 19, 11],
    ]);
  });

  test("a plain rectangle is counted as by the single functions, whichever way it is given", () => {
    const [, byPoints] = call(
      "LAYOUT",
      [
        [0, 0],
        [20, 0],
        [20, 11],
        [0, 11],
      ],
      6,
      50,
      12,
      12,
      12,
      null,
      4,
      0,
    );
    const [, byRectangle] = call("LAYOUT_RECTANGLE", 20, 11, null, null, 6, 50, 12, 12, 12, null, 4, 0);
    expect(byPoints).toEqual(byRectangle);
    expect(byPoints).toEqual([
      220,
      62,
      functions.FABRIC_STRIPS(11, 6, 12),
      functions.FABRIC_AREA(20, 11, 6, 12, 50, 12),
      functions.FABRIC_ROLLS(20, 11, 6, 50, 12, 12),
      20,
      functions.PINS(20, 11, 6, 12),
      "20; 20",
      // Without a piece length, no edging is counted.
      ...["", "", "", "", ""],
    ]);
  });

  test("edging is counted run by run, in each way that a bed is given", () => {
    const edging = [null, null, null, null, null, 8, 30, 2] as const;
    const counts = (id: (typeof LISTS)[number], ...given: unknown[]) => call(id, ...given)[1]!.slice(8);
    const corners = [
      [0, 0],
      [20, 0],
      [20, 6],
      [0, 6],
    ];
    // By hand: 32 ft in 5 pieces; 4 × 4 + 1 stakes, 1 at an end, 1 at the corner at 26 ft; a stake holds the one at 6 ft.
    const oneRun = [32, 5, 19, 1, "32"];
    expect(counts("LAYOUT_RECTANGLE", 20, 6, 0, 0, ...laying, ...edging, 1, 2)).toEqual(oneRun);
    expect(counts("LAYOUT", corners, ...laying, ...edging, [[0], [1], [1], [1]])).toEqual(oneRun);
    expect(counts("LAYOUT_WIDTHS", 20, [[6], [6]], ...laying, ...edging, 2)).toEqual(oneRun);
    // Sides that are named, house side or base line first; they go before their counts.
    expect(counts("LAYOUT_RECTANGLE", 20, 6, 0, 0, ...laying, ...edging, 0, 0, [[0], [1], [1], [1]])).toEqual(oneRun);
    expect(counts("LAYOUT_WIDTHS", 20, [[6], [6]], ...laying, ...edging, 0, [[0, 1, 1, 1]])).toEqual(oneRun);
    const opposite = [[1, 0, 1, 0]];
    const bySides = counts("LAYOUT_RECTANGLE", 20, 6, 0, 0, ...laying, ...edging, 2, 2, opposite);
    expect(bySides).toEqual([40, 6, 22, 0, "20; 20"]);
    expect(counts("LAYOUT_WIDTHS", 20, [[6], [6]], ...laying, ...edging, 2, opposite)).toEqual(bySides);
    // Two runs of 20 ft: each in 3 pieces, with 2 × 4 stakes, 2 on the last 4' 4", and 1 at the end.
    expect(counts("LAYOUT", corners, ...laying, ...edging, [[1], [0], [1], [0]])).toEqual([40, 6, 22, 0, "20; 20"]);
    // All the way around, as where no sides are given: 52 ft in 7 pieces, without ends.
    expect(counts("LAYOUT", corners, ...laying, ...edging).slice(0, 2)).toEqual([52, 7]);
    // Round: 31.42 ft in 5 pieces, 4 × 4 + 1 stakes; inside 12.57 ft in 2, 4 + 2.
    expect(counts("LAYOUT_ROUND", 10, 4, ...laying, ...edging, true)).toEqual([
      expect.closeTo(14 * Math.PI, 9),
      7,
      23,
      0,
      "",
    ]);
    expect(counts("LAYOUT_ROUND", 10, 4, ...laying, ...edging).slice(1, 3)).toEqual([5, 17]);
  });

  test("a cut-out takes its area off and gets pins round it", () => {
    const [, whole] = call("LAYOUT", square, ...laying);
    const [, padded] = call("LAYOUT", square, ...laying, null, null, [
      [6, 6, 2, 3],
      ["", "", "", ""],
    ]);
    const [, posted] = call("LAYOUT", square, ...laying, null, null, [["6 ft", 6, 2]]);
    expect(padded![0]).toBeCloseTo(144 - 6, 9);
    expect(posted![0]).toBeCloseTo(144 - Math.PI, 9);
    expect(padded![6]).toBeGreaterThan(Number(whole![6]));
  });

  test("a bed taped by widths has the area of AREA_WIDTHS, less its cut-outs", () => {
    const widths = [[0], [5.5], [7], [6], [4.5], [6.5], [0]];
    const [, [area] = []] = call("LAYOUT_WIDTHS", 4, widths, ...laying, null, null, [[8, 2, 1.5, 2]]);
    expect(area).toBeCloseTo(functions.AREA_WIDTHS(4, widths) - 3, 9);
  });

  test.each([
    ["outside the bed", [[30, 6, 2]], /cut-out/i],
    ["with too few columns", [[6, 6]], /has 2 columns/],
    ["without a size", [[6, 6, null]], /cut_outs \(row 1, across\) is blank/],
  ])("a cut-out %s is refused in words", (_, cutOuts, words) => {
    expect(() => call("LAYOUT", square, ...laying, null, null, cutOuts)).toThrow(
      expect.objectContaining({ message: expect.stringMatching(words) }),
    );
  });

  test("an outline that crosses itself is refused with the sides", () => {
    const crossed = [
      [0, 0],
      [4, 4],
      [4, 0],
      [0, 4],
    ];
    expect(() => call("LAYOUT", crossed, ...laying)).toThrow(
      expect.objectContaining({ message: expect.stringMatching(/side/) }),
    );
  });

  test("CUT_LIST gives each piece once, and what is left over", () => {
    // 16 from 8 7 6 5 4 2: 8 6 2 and 7 5 4 (optimum by hand; cutting the longest first takes 3).
    expect(call("CUT_LIST", 16, [[8], [7], [6], ["5'"], [4], [2]])).toEqual([
      ["Stock", "Cut 1, ft", "Cut 2, ft", "Cut 3, ft", "Left over, ft"],
      [1, 7, 5, 4, 0],
      [2, 8, 6, 2, 0],
    ]);
  });

  test("CUT_LIST skips a blank row, and refuses a length without a count", () => {
    const rows = call("CUT_LIST", 10, [[4], [""], [3]], [[2], [""], [1]]);
    expect(
      rows
        .slice(1)
        .flatMap((row) => row.slice(1, -1))
        .filter((cell) => cell !== "")
        .sort(),
    ).toEqual([3, 4, 4]);
    for (const [lengths, counts, words] of [
      [[[4], [3]], [[2], [""]], /counts \(place 2\) is blank/],
      [[[4], [""]], [[2], [1]], /lengths \(place 2\) is blank/],
      [[[4], [3]], [[2]], /counts has 1 cells and lengths has 2/],
      [[[14]], null, /longer than the stock of 10 ft/],
      [[[4]], [[1.5]], /whole number/],
    ] as const) {
      expect(() => call("CUT_LIST", 10, lengths, counts)).toThrow(
        expect.objectContaining({ message: expect.stringMatching(words) }),
      );
    }
  });

  test("CUT_LIST says how few might do where its plan is not proven the best", () => {
    const plan = {
      count: 2,
      atLeast: 1,
      proven: false,
      stocks: [
        { cuts: [0], leftOver: 3 },
        { cuts: [1, 0], leftOver: 0 },
      ],
    };
    expect(cutRows(plan, [5, 3])).toEqual([
      ["Stock", "Cut 1, ft", "Cut 2, ft", "Left over, ft"],
      [1, 5, "", 3],
      [2, 3, 5, 0],
      ["at least 1", "", "", ""],
    ]);
  });
});

test("no pin's place shows as -0 where the strips run back toward the base line", () => {
  const triangle = [
    [0, 0],
    [12, 0],
    [0, 5],
  ];
  const cells = call("LAYOUT_PINS", triangle, ...laying, 12, 12, null, 4, 180).flat();
  expect(cells.filter((cell) => cell === 0).length).toBeGreaterThan(0);
  expect(cells.filter((cell) => Object.is(cell, -0))).toEqual([]);
});
