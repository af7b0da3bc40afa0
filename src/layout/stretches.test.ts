import { describe, expect, it } from "vitest";
import { boundaryOf } from "./boundary";
import { outlineOf } from "./outlineOf";
import type { Point } from "./plane";
import { areaWithin, crossings, inBoth, joined, occupied } from "./stretches";

const points = (...pairs: readonly (readonly [number, number])[]): Point[] => pairs.map(([x, y]) => ({ x, y }));

/** An L: 20 by 6, with a leg of 8 by 6 more on the left. */
const lShape = boundaryOf(
  outlineOf({ kind: "points", points: points([0, 0], [20, 0], [20, 6], [8, 6], [8, 12], [0, 12]) }),
);
/** A U, open at the top between x = 4 and x = 8. */
const uShape = boundaryOf(
  outlineOf({ kind: "points", points: points([0, 0], [12, 0], [12, 9], [8, 9], [8, 3], [4, 3], [4, 9], [0, 9]) }),
);
const withPad = boundaryOf(
  outlineOf({
    kind: "rectangle",
    lengthFt: 20,
    widthFt: 6,
    cutOuts: [{ kind: "outline", points: points([5, 0], [9, 0], [9, 4], [5, 4]) }],
  }),
);

describe("where a line crosses the bed", () => {
  it("is one stretch for each part of the bed", () => {
    expect(crossings(uShape, 6)).toEqual([
      { from: 0, to: 4 },
      { from: 8, to: 12 },
    ]);
    expect(crossings(lShape, 4, true)).toEqual([{ from: 0, to: 12 }]);
  });

  it("leaves out a cut-out, also one against the wall", () => {
    expect(crossings(withPad, 2)).toEqual([
      { from: 0, to: 5 },
      { from: 9, to: 20 },
    ]);
    expect(crossings(withPad, 7, true)).toEqual([{ from: 4, to: 6 }]);
  });
});

describe("the bed's real edge", () => {
  it("has none where a cut-out stands against the wall", () => {
    const alongWall = withPad.filter(({ from, to }) => from.y === 0 && to.y === 0);
    expect(alongWall.map(({ from, to }) => [from.x, to.x])).toEqual([
      [0, 5],
      [9, 20],
    ]);
  });
});

describe("where there is bed between two levels", () => {
  it("counts every place with any bed across", () => {
    expect(occupied(lShape, 5, 11)).toEqual([{ from: 0, to: 20 }]);
    expect(occupied(lShape, 6, 12)).toEqual([{ from: 0, to: 8 }]);
    expect(occupied(uShape, 2, 8)).toEqual([{ from: 0, to: 12 }]);
  });

  it("falls into parts where nothing of the bed is between", () => {
    expect(occupied(uShape, 3, 9)).toEqual([
      { from: 0, to: 4 },
      { from: 8, to: 12 },
    ]);
    expect(occupied(withPad, 0, 4)).toEqual([
      { from: 0, to: 5 },
      { from: 9, to: 20 },
    ]);
  });
});

describe("the area in a window", () => {
  it("is that of the bed within it", () => {
    const all = { from: -100, to: 100 };
    expect(areaWithin(lShape, 0, 12, all)).toBeCloseTo(168, 10);
    expect(areaWithin(lShape, 5, 11, all)).toBeCloseTo(20 + 40, 10);
    expect(areaWithin(lShape, 5, 11, { from: 6, to: 10 })).toBeCloseTo(4 + 10, 10);
    expect(areaWithin(withPad, 1, 5, { from: 4, to: 10 })).toBeCloseTo(24 - 12, 10);
  });

  it("is right where the edge runs aslant through the window's side", () => {
    const triangle = boundaryOf(outlineOf({ kind: "points", points: points([0, 0], [10, 0], [0, 10]) }));
    // What lies right of x = 4 is a triangle of 6 by 6.
    expect(areaWithin(triangle, 0, 10, { from: 4, to: 10 })).toBeCloseTo(18, 10);
  });
});

describe("slanting edges", () => {
  // Level sides of 10 ft at 2 ft up and of 4 ft at 6 ft up. On the left x = (y − 2)/2, on the right x = 12 − y.
  const trapezoid = boundaryOf(outlineOf({ kind: "points", points: points([0, 2], [10, 2], [6, 6], [2, 6]) }));

  it("are crossed where they pass the line", () => {
    expect(crossings(trapezoid, 3)).toEqual([{ from: 0.5, to: 9 }]);
    expect(crossings(trapezoid, 8, true)).toEqual([{ from: 2, to: 4 }]);
    expect(crossings(trapezoid, 1, true)).toEqual([{ from: 2, to: 4 }]);
    expect(crossings(trapezoid, 7)).toEqual([]);
  });

  it("bound what lies between two levels", () => {
    expect(occupied(trapezoid, 4, 5)).toEqual([{ from: 1, to: 8 }]);
    expect(occupied(trapezoid, 1, 3)).toEqual([{ from: 0, to: 10 }]);
    expect(occupied(trapezoid, 6, 8)).toEqual([]);
  });

  it("cut off the area of a window", () => {
    // From 3 to 4 ft up the window from 1 to 8 ft is full: 7. From 4 to 5 ft the left edge runs from 1 to 1.5, the right one
    // from 8 to 7: 7.5 − 1.25.
    expect(areaWithin(trapezoid, 3, 5, { from: 1, to: 8 })).toBeCloseTo(13.25, 12);
    expect(areaWithin(trapezoid, 2, 6, { from: 0, to: 10 })).toBeCloseTo(28, 12);
    // Right of x = 7 up to 5 ft: a triangle of 3 by 3. Left of x = 1 from 2 to 4 ft up: one of 1 by 2.
    expect(areaWithin(trapezoid, 2, 6, { from: 7, to: 20 })).toBeCloseTo(4.5, 12);
    expect(areaWithin(trapezoid, 2, 6, { from: -5, to: 1 })).toBeCloseTo(1, 12);
    // Between x = 7 and x = 8: a strip of 2 ft below and a triangle on it.
    expect(areaWithin(trapezoid, 2, 6, { from: 7, to: 8 })).toBeCloseTo(2.5, 12);
  });

  it("leave no stretch where they meet in a point", () => {
    const peaks = boundaryOf(outlineOf({ kind: "points", points: points([0, 0], [8, 0], [6, 4], [4, 2], [2, 4]) }));
    expect(crossings(peaks, 3)).toEqual([
      { from: 1.5, to: 3 },
      { from: 5, to: 6.5 },
    ]);
    expect(crossings(peaks, 4)).toEqual([]);
    expect(occupied(peaks, 2, 4)).toEqual([{ from: 1, to: 7 }]);
    expect(occupied(peaks, 3, 5)).toEqual([
      { from: 1.5, to: 3 },
      { from: 5, to: 6.5 },
    ]);
  });
});

describe("stretches", () => {
  it("join where they overlap or touch", () => {
    const stretches = [
      { from: 4, to: 6 },
      { from: 0, to: 2 },
      { from: 1, to: 4 },
      { from: 8, to: 9 },
    ];
    expect(joined(stretches)).toEqual([
      { from: 0, to: 6 },
      { from: 8, to: 9 },
    ]);
  });

  it("meet where both are, and not in a single point", () => {
    const wide = [
      { from: 0, to: 5 },
      { from: 7, to: 9 },
    ];
    expect(inBoth(wide, [{ from: 3, to: 7 }])).toEqual([{ from: 3, to: 5 }]);
  });
});
