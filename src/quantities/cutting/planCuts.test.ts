import { describe, expect, test } from "vitest";
import { Problem } from "../problem";
import { type CutList, planCuts } from "./planCuts";

const EIGHTH_INCH = 0.125 / 12;

function problemOf(list: CutList): Problem {
  try {
    planCuts(list);
  } catch (reason) {
    expect(reason).toBeInstanceOf(Problem);
    return reason as Problem;
  }
  throw new Error("nothing was refused");
}

describe("the plan", () => {
  test("names places of the list, longest first, and what is left over of each stock, the fullest first", () => {
    // By hand: 8 + 6 and 6 + 4 + 4 fill 14; 4 is left for a third.
    expect(planCuts({ stockLength: 14, lengths: [4, 8, 6], counts: [3, 1, 2] })).toEqual({
      count: 3,
      atLeast: 3,
      proven: true,
      stocks: [
        { cuts: [1, 2], leftOver: 0 },
        { cuts: [2, 0, 0], leftOver: 0 },
        { cuts: [0], leftOver: 10 },
      ],
    });
  });

  test("is told in this order however it was found", () => {
    const lengths = Array.from({ length: 40 }, (_, n) => 20 + ((n * 37) % 61));
    const { stocks } = planCuts({ stockLength: 152, lengths });
    for (const { cuts } of stocks) {
      const cut = cuts.map((place) => lengths[place]!);
      expect(cut).toEqual([...cut].sort((a, b) => b - a));
    }
    const left = stocks.map(({ leftOver }) => leftOver);
    expect(left).toEqual([...left].sort((a, b) => a - b));
    expect(stocks.flatMap(({ cuts }) => cuts).sort((a, b) => a - b)).toEqual(lengths.map((_, place) => place));
  });

  test("serves equal lengths in the order of the list", () => {
    const { stocks } = planCuts({ stockLength: 10, lengths: [5, 5, 5], counts: [1, 2, 1] });
    expect(stocks.map(({ cuts }) => cuts)).toEqual([
      [0, 1],
      [1, 2],
    ]);
  });

  test("counts one of each length where no counts are given", () => {
    expect(planCuts({ stockLength: 16, lengths: [8, 7, 6, 5, 4, 2] }).count).toBe(2);
  });

  test("takes nothing for an empty list or counts of 0", () => {
    const nothing = { count: 0, atLeast: 0, proven: true, stocks: [] };
    expect(planCuts({ stockLength: 8, lengths: [] })).toEqual(nothing);
    expect(planCuts({ stockLength: 8, lengths: [3, 99], counts: [0, 0] })).toEqual(nothing);
  });

  test("takes thousands of pieces of a few lengths as well", () => {
    // 4 of 2 ft from each 8 ft, by hand; 4,000 pieces.
    expect(planCuts({ stockLength: 8, lengths: [2], counts: [4000] })).toMatchObject({ count: 1000, proven: true });
  });
});

describe("what a cut takes", () => {
  test("is lost between two pieces, and before what is left over", () => {
    // 3 × 2.5 ft and 3 cuts of 1/8 in leave 6 in less 3/8 in.
    const { stocks } = planCuts({ stockLength: 8, lengths: [2.5], counts: [3], loss: EIGHTH_INCH });
    expect(stocks).toEqual([{ cuts: [0, 0, 0], leftOver: expect.closeTo((6 - 3 / 8) / 12, 12) }]);
  });

  test("is not lost after a piece that ends where the stock ends", () => {
    const lengths = [(8 - EIGHTH_INCH) / 2];
    expect(planCuts({ stockLength: 8, lengths, counts: [2], loss: EIGHTH_INCH })).toMatchObject({
      count: 1,
      stocks: [{ leftOver: 0 }],
    });
    const whole = { stockLength: 8, lengths: [8], loss: EIGHTH_INCH };
    expect(planCuts(whole)).toMatchObject({ count: 1, stocks: [{ leftOver: 0 }] });
  });

  test("may take the last of the stock, when no more than it is left", () => {
    // Two pieces and one cut leave 1/16 in, half a cut: the second cut takes it, and nothing is left over.
    const lengths = [(8 - 1.5 * EIGHTH_INCH) / 2];
    expect(planCuts({ stockLength: 8, lengths, counts: [2], loss: EIGHTH_INCH })).toMatchObject({
      count: 1,
      stocks: [{ leftOver: 0 }],
    });
  });

  test("makes a second stock necessary where the pieces alone would have fitted", () => {
    expect(planCuts({ stockLength: 8, lengths: [4], counts: [2] }).count).toBe(1);
    expect(planCuts({ stockLength: 8, lengths: [4], counts: [2], loss: EIGHTH_INCH }).count).toBe(2);
  });

  test("may be more than a stock: then each gives one piece", () => {
    expect(planCuts({ stockLength: 8, lengths: [1], counts: [3], loss: 1e300 })).toMatchObject({
      count: 3,
      stocks: [{ leftOver: 0 }, { leftOver: 0 }, { leftOver: 0 }],
    });
  });
});

describe("an exact fit is an exact fit", () => {
  test.each([
    ["tenths of a foot", 0.3, [0.1], [3]],
    ["thirds of a foot", 1, [1 / 3], [3]],
    ["inches as decimals of a foot", 8, [2 + 7 / 12, 5 + 5 / 12], [1, 1]],
    ["sixteenths of an inch", 8, [2 + 7 / 192, 3 + 5 / 192, 8 - (5 + 12 / 192)], [1, 1, 1]],
    ["millimeters in feet", 6000 / 304.8, [1200 / 304.8, 2399.5 / 304.8, 2400.5 / 304.8], [1, 1, 1]],
    ["lengths with no common part", Math.PI, [Math.PI / Math.E, Math.PI - Math.PI / Math.E], [1, 1]],
    ["decimals rounded up at the eighth place", 121, [10.08333334], [12]],
  ])("%s", (_, stockLength, lengths, counts) => {
    expect(planCuts({ stockLength, lengths, counts })).toMatchObject({ count: 1, stocks: [{ leftOver: 0 }] });
  });

  test("but a share of 1e-8 too long is too long", () => {
    expect(planCuts({ stockLength: 1, lengths: [0.5, 0.50000001] }).count).toBe(2);
    expect(planCuts({ stockLength: 1, lengths: [0.5, 0.5000000005] }).count).toBe(1);
  });
});

describe("where the steps run out", () => {
  // 8 + 6 + 2 and 7 + 5 + 4 are 16, so 2 stocks do; longest first takes 3: 8 + 7, 6 + 5 + 4, 2.
  const list = { stockLength: 16, lengths: [8, 7, 6, 5, 4, 2] };

  test("the best plan found is given beside the least that it could be", () => {
    const hurried = planCuts(list, 0);
    expect(hurried).toMatchObject({ count: 3, atLeast: 2, proven: false });
    expect(hurried.stocks.flatMap(({ cuts }) => cuts).sort()).toEqual([0, 1, 2, 3, 4, 5]);
    expect(planCuts(list)).toMatchObject({ count: 2, atLeast: 2, proven: true });
  });

  test("the same steps give the same plan", () => {
    const lengths = Array.from({ length: 40 }, (_, n) => 20 + ((n * 37) % 61));
    for (const steps of [0, 100, 3000, 100_000]) {
      expect(planCuts({ stockLength: 152, lengths }, steps)).toEqual(planCuts({ stockLength: 152, lengths }, steps));
    }
  });
});

describe("a list that cannot be planned", () => {
  test("with a length over the stock: it is named", () => {
    const problem = problemOf({ stockLength: 8, lengths: [3, 8.25], loss: EIGHTH_INCH });
    expect(problem).toMatchObject({ kind: "value", argument: "lengths" });
    expect(problem.message).toMatch(/^lengths \(place 2\) is 8.25 ft, longer than the stock of 8 ft\./);
  });

  test.each([
    ["a stock of 0", { stockLength: 0, lengths: [1] }, /^stock_length: can't read 0 as a length\./],
    ["a stock over any length", { stockLength: 1e308, lengths: [1] }, /^stock_length: .*1e\+308/],
    ["a stock of no length", { stockLength: Number.NaN, lengths: [1] }, /^stock_length: can't read NaN/],
    ["a length of 0", { stockLength: 8, lengths: [1, 0] }, /^lengths \(place 2\): can't read 0/],
    ["a length under 0", { stockLength: 8, lengths: [-1] }, /^lengths \(place 1\): .*-1/],
    ["half a piece", { stockLength: 8, lengths: [1], counts: [1.5] }, /^counts \(place 1\): can't use 1\.5\. .*whole/],
    ["fewer than no pieces", { stockLength: 8, lengths: [1], counts: [-2] }, /^counts \(place 1\): can't use -2/],
    [
      "more lengths than counts",
      { stockLength: 8, lengths: [1, 2], counts: [1] },
      /^counts \(place 2\): can't use a blank\. Type a whole number\./,
    ],
    ["more counts than lengths", { stockLength: 8, lengths: [1], counts: [1, 2] }, /^lengths \(place 2\): .* a blank/],
    ["a loss under 0", { stockLength: 8, lengths: [1], loss: -0.1 }, /^loss_in: -0\.1 is less than 0/],
    ["more pieces than any job has", { stockLength: 8, lengths: [1], counts: [10_001] }, /more than 10000 pieces/],
  ])("with %s", (_, list, message) => {
    const problem = problemOf(list);
    expect(problem.message).toMatch(message);
    expect(problem).toMatchObject({ kind: "value", argument: /^\w+/.exec(problem.message)![0] });
  });
});
