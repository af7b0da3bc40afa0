import { describe, expect, it } from "vitest";
import { lShape, pad, points } from "../../test/planBeds";
import type { Bed } from "./bed";
import { boundaryOf } from "./boundary";
import { chainsOf, cornersOf, pointAlong } from "./chains";
import { outlineOf } from "./outlineOf";

const chains = (bed: Bed) => chainsOf(boundaryOf(outlineOf(bed)));
const bed = { kind: "rectangle", lengthFt: 20, widthFt: 6 } as const;

describe("the edge of a bed in chains", () => {
  it("is one closed chain for a ring that nothing stands against", () => {
    expect(chains({ ...bed, cutOuts: [pad(5, 2, 4, 2)] })).toEqual([
      { ring: 0, closed: true, points: points([0, 0], [20, 0], [20, 6], [0, 6]), along: [0, 20, 26, 46], lengthFt: 52 },
      { ring: 1, closed: true, points: points([5, 2], [5, 4], [9, 4], [9, 2]), along: [0, 2, 6, 8], lengthFt: 12 },
    ]);
  });

  it("is open where a pad stands against the wall, and runs on through the ring's first point", () => {
    expect(chains({ ...bed, cutOuts: [pad(5, 0, 4, 2)] })).toEqual([
      {
        ring: 0,
        closed: false,
        points: points([9, 0], [20, 0], [20, 6], [0, 6], [0, 0], [5, 0]),
        along: [0, 11, 17, 37, 43, 48],
        lengthFt: 48,
      },
      {
        ring: 1,
        closed: false,
        points: points([5, 0], [5, 2], [9, 2], [9, 0]),
        along: [0, 2, 6, 8],
        lengthFt: 8,
      },
    ]);
  });

  it("falls into as many parts as a pad right across the bed leaves", () => {
    const found = chains({ ...bed, cutOuts: [pad(8, 0, 4, 6)] });
    expect(found.map(({ ring, lengthFt, points: [first], closed }) => [ring, lengthFt, first, closed])).toEqual([
      // Right of the pad: 8 + 6 + 8; left of it the same, from 8, 6 round to 8, 0.
      [0, 22, { x: 12, y: 0 }, false],
      [0, 22, { x: 8, y: 6 }, false],
      [1, 6, { x: 8, y: 0 }, false],
      [1, 6, { x: 12, y: 6 }, false],
    ]);
  });
});

describe("along a chain", () => {
  const [closed] = chains(lShape);
  const [open] = chains({ ...bed, cutOuts: [pad(5, 0, 4, 2)] });

  it.each([
    [0, 0, 0],
    [7.5, 7.5, 0],
    [20, 20, 0],
    [23, 20, 3],
    // 20 + 6 + 12 to the inner corner, 3 ft on; then the last side, 12 ft back down to the start.
    [41, 8, 9],
    [52, 0, 12],
    [60, 0, 4],
    [64, 0, 0],
    [-1, -1, 0],
  ])("%s ft from the start of the L is x %s, y %s", (at, x, y) => {
    expect(pointAlong(closed!, at)).toEqual({ x, y });
  });

  it("of an open one reaches from end to end", () => {
    expect(pointAlong(open!, 0)).toEqual({ x: 9, y: 0 });
    expect(pointAlong(open!, 12)).toEqual({ x: 20, y: 1 });
    expect(pointAlong(open!, 46)).toEqual({ x: 3, y: 0 });
    expect(pointAlong(open!, 48)).toEqual({ x: 5, y: 0 });
  });

  it("stand corners: each turn sharper than a bend, and the ends of an open chain", () => {
    expect(cornersOf(closed!)).toEqual([0, 20, 26, 38, 44, 52]);
    expect(cornersOf(open!)).toEqual([0, 11, 17, 37, 43, 48]);
    expect(cornersOf(chains({ kind: "round", diameterFt: 9 })[0]!)).toEqual([]);
  });

  it("a soft bend is no corner, first and last point included", () => {
    // From 10, 0 the edge turns up by 11.3° (1 in 5), where the list of points begins and where it ends.
    const bent: Bed = { kind: "points", points: points([10, 0], [20, 2], [20, 8], [0, 8], [0, 0]) };
    expect(cornersOf(chains(bent)[0]!)).toHaveLength(4);
    const moved: Bed = { kind: "points", points: points([0, 0], [10, 0], [20, 2], [20, 8], [0, 8]) };
    expect(cornersOf(chains(moved)[0]!)).toHaveLength(4);
  });
});
