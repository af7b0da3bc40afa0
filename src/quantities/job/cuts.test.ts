import { describe, expect, test } from "vitest";
import { cutAcross, cutBedByBed } from "./cutAcross";
import { stockTapes } from "./cutsOfBed";
import { edgingCuts } from "./edgingCuts";
import { rollsInTurn } from "./rollsInTurn";
import { stripCuts } from "./stripCuts";

describe("the pieces of a run", () => {
  test("are whole ones and a last one cut to what is left", () => {
    expect(edgingCuts({ feet: 20, closed: false }, 8, 0)).toEqual({ whole: 2, lastFt: 4 });
    expect(edgingCuts({ feet: 16, closed: false }, 8, 0)).toEqual({ whole: 2, lastFt: undefined });
    expect(edgingCuts({ feet: 3, closed: false }, 8, 2)).toEqual({ whole: 0, lastFt: 3 });
    expect(edgingCuts({ feet: 0, closed: true }, 8, 2)).toEqual({ whole: 0, lastFt: undefined });
    expect(edgingCuts({ feet: 0, closed: false }, 8, 2)).toEqual({ whole: 0, lastFt: undefined });
  });

  test("lap one another, and in a closed run the last laps the first", () => {
    // Open: 2 × 7' 10" reach 15' 8", and 20' − 15' 8" are left. Closed: the last goes 2 in over the first.
    expect(edgingCuts({ feet: 20, closed: false }, 8, 2).lastFt).toBeCloseTo(4 + 4 / 12, 9);
    expect(edgingCuts({ feet: 20, closed: true }, 8, 2).lastFt).toBeCloseTo(4.5, 9);
    expect(edgingCuts({ feet: 23.5, closed: true }, 8, 2)).toEqual({ whole: 3, lastFt: undefined }); // 3 × 7' 10"
  });
});

describe("a strip of fabric", () => {
  test("longer than a roll takes whole rolls, lapped, and what is left", () => {
    expect(stripCuts(60, 50, 12)).toEqual({ whole: 1, lastFt: 11 });
    expect(stripCuts(99, 50, 12)).toEqual({ whole: 2, lastFt: undefined }); // 50 + 49 with a lap of 1 ft
    expect(stripCuts(50, 50, 12)).toEqual({ whole: 1, lastFt: undefined });
    expect(stripCuts(30, 50, 12)).toEqual({ whole: 0, lastFt: 30 });
    expect(stripCuts(0.5, 50, 12)).toEqual({ whole: 0, lastFt: 0.5 }); // shorter than the lap
  });

  test("must lap by less than a roll", () => {
    expect(() => stripCuts(60, 1, 12)).toThrow(/end_lap_in is 12 in, but roll_length is 12 in/);
  });
});

describe("rolls used up in turn", () => {
  const strips = (endLapIn: number, ...lengths: number[]) =>
    lengths.map((lengthFt, n) => ({ bed: "Front walk", part: n + 1, lengthFt, endLapIn }));

  test("lap where one runs out", () => {
    expect(rollsInTurn(strips(12, 30, 30), 50)).toEqual({
      stocks: [
        {
          cuts: [
            { bed: "Front walk", part: 1, lengthFt: 30 },
            { bed: "Front walk", part: 2, lengthFt: 20 },
          ],
          leftOverFt: 0,
        },
        { cuts: [{ bed: "Front walk", part: 2, lengthFt: 11 }], leftOverFt: 39 },
      ],
      moreJoints: 1,
    });
  });

  test("leave a remnant that is no longer than the lap", () => {
    expect(rollsInTurn(strips(12, 49, 10), 50)).toMatchObject({ stocks: [{ leftOverFt: 1 }, {}], moreJoints: 0 });
  });
});

test("bed by bed, each last piece comes from a stock of its own", () => {
  const parts = [
    { bed: "Walk", part: 1, whole: 2, lastFt: 4.5 },
    { bed: "Walk", part: 2, whole: 1, lastFt: undefined },
    { bed: "Porch", part: 1, whole: 0, lastFt: 3 },
  ];
  expect(cutBedByBed(8, parts)).toEqual({
    whole: [
      { bed: "Walk", part: 1, count: 2, lengthFt: 8 },
      { bed: "Walk", part: 2, count: 1, lengthFt: 8 },
    ],
    stocks: [
      { cuts: [{ bed: "Walk", part: 1, lengthFt: 4.5 }], leftOverFt: 3.5 },
      { cuts: [{ bed: "Porch", part: 1, lengthFt: 3 }], leftOverFt: 5 },
    ],
    moreJoints: 0,
    proven: true,
  });
});

test("cuts across runs say when the steps allowed ran out before the plan was proven", () => {
  // A trap for first-fit-decreasing: 16 ft holds 8 + 6 + 2 and 7 + 5 + 4, which first-fit cuts from three.
  const parts = [8, 7, 6, 5, 4, 2].map((lastFt, n) => ({ bed: `${n}`, part: 1, whole: 1, lastFt }));
  expect(cutAcross(16, parts, 0)).toMatchObject({ count: 8, proven: true });
  expect(cutAcross(16, parts, 0, 1)).toMatchObject({ count: 9, proven: false });
});

describe("the lengths of a cut list", () => {
  const cut = (part: number, inches: number) => ({ bed: "Walk", part, lengthFt: inches / 12 });
  const listed = (...stocks: { cuts: ReturnType<typeof cut>[]; leftOverFt: number }[]) =>
    stockTapes({ supplier: "fabric and pins", cutting: { whole: [], stocks, proven: true, moreJoints: 0 } }).map(
      ({ lengths, leftOver }) => [...lengths, leftOver],
    );

  test("are half inches also where a roll runs out in a strip: the next one gives what this one can't", () => {
    // Three strips of 12' 11.83" off rolls of 25 ft that lap 12 in. As needed: 155.83 + 144.17, then 23.66 + 155.83. Up to
    // half inches the first is 13 ft and leaves the second 12 ft, so that its other piece is 0.17 in. longer, 23.83 in.
    const first = { cuts: [cut(1, 155.83), cut(2, 144.17)], leftOverFt: 0 };
    const second = { cuts: [cut(2, 23.66), cut(3, 155.83)], leftOverFt: (300 - 23.66 - 155.83) / 12 };
    expect(listed(first, second)).toEqual([
      ["13'", "12'", '0"'],
      ["2'", "13'", "10'"],
    ]);
  });

  test("are sixteenths where no later roll has room", () => {
    const full = { cuts: [cut(1, 155.83), cut(2, 144.17)], leftOverFt: 0 };
    expect(listed(full)).toEqual([[`12' 11 13/16"`, `12' 3/16"`, '0"']]);
    const end = { cuts: [cut(2, 300)], leftOverFt: 0 };
    expect(listed(full, end)[0]).toEqual([`12' 11 13/16"`, `12' 3/16"`, '0"']);
  });
});
