import { describe, expect, it } from "vitest";
import { pad, points } from "../../test/planBeds";
import type { Bed, CutOut } from "./bed";
import { boundaryOf, distanceToSegment, isOn, piecesOf, whereLies } from "./boundary";
import { ringsOf } from "./outline";
import { outlineOf } from "./outlineOf";
import { distance } from "./plane";

const bedWith = (...cutOuts: CutOut[]): Bed => ({ kind: "rectangle", lengthFt: 20, widthFt: 6, cutOuts });
/** The pieces of a bed's edge as "ring: x,y to x,y". */
const edgeOf = (bed: Bed) =>
  boundaryOf(outlineOf(bed)).map(({ from, to, ring }) => `${ring}: ${from.x},${from.y} to ${to.x},${to.y}`);

describe("the bed's real edge", () => {
  it("is every side of the outer ring, and the cut-outs' sides the other way round", () => {
    expect(edgeOf(bedWith(pad(5, 2, 4, 2)))).toEqual([
      "0: 0,0 to 20,0",
      "0: 20,0 to 20,6",
      "0: 20,6 to 0,6",
      "0: 0,6 to 0,0",
      "1: 5,2 to 5,4",
      "1: 5,4 to 9,4",
      "1: 9,4 to 9,2",
      "1: 9,2 to 5,2",
    ]);
  });

  it("has no edge where a pad stands against the wall, in a corner or across the whole bed", () => {
    expect(edgeOf(bedWith(pad(5, 0, 4, 2)))).toEqual([
      "0: 0,0 to 5,0",
      "0: 9,0 to 20,0",
      "0: 20,0 to 20,6",
      "0: 20,6 to 0,6",
      "0: 0,6 to 0,0",
      "1: 5,0 to 5,2",
      "1: 5,2 to 9,2",
      "1: 9,2 to 9,0",
    ]);
    expect(edgeOf(bedWith(pad(16, 0, 4, 2)))).toEqual([
      "0: 0,0 to 16,0",
      "0: 20,2 to 20,6",
      "0: 20,6 to 0,6",
      "0: 0,6 to 0,0",
      "1: 16,0 to 16,2",
      "1: 16,2 to 20,2",
    ]);
    expect(edgeOf(bedWith(pad(8, 0, 4, 6)))).toEqual([
      "0: 0,0 to 8,0",
      "0: 12,0 to 20,0",
      "0: 20,0 to 20,6",
      "0: 20,6 to 12,6",
      "0: 8,6 to 0,6",
      "0: 0,6 to 0,0",
      "1: 8,0 to 8,6",
      "1: 12,6 to 12,0",
    ]);
  });

  it("has none where two pads stand side by side", () => {
    const edge = edgeOf(bedWith(pad(5, 2, 2, 2), pad(7, 1, 3, 2))).filter((piece) => !piece.startsWith("0"));
    expect(edge).toEqual([
      "1: 5,2 to 5,4",
      "1: 5,4 to 7,4",
      "1: 7,4 to 7,3",
      "1: 7,2 to 5,2",
      "2: 7,1 to 7,2",
      "2: 7,3 to 10,3",
      "2: 10,3 to 10,1",
      "2: 10,1 to 7,1",
    ]);
  });

  it("takes a pad that stands a hair off the wall to stand against it", () => {
    // Half a millionth of a foot: far below what a tape shows. The far side of the pad stays where it is.
    const edge = (y: number) =>
      boundaryOf(outlineOf(bedWith(pad(5, y, 4, 2)))).map(({ from, to, ring }) => [
        ring,
        ...[from.x, from.y, to.x, to.y].map((value) => Number(value.toFixed(4)) + 0),
      ]);
    const against = edge(0);
    expect(edge(5e-7)).toEqual(against);
    expect(edge(5e-7).filter(([ring]) => ring === 0)).toContainEqual([0, 9, 0, 20, 0]);
    // A thousandth of a foot is a gap.
    expect(edge(0.001).filter(([ring]) => ring === 0)).toContainEqual([0, 0, 0, 20, 0]);
  });

  it("has no piece shorter than a tape shows beside a pad in a corner", () => {
    const edge = boundaryOf(outlineOf(bedWith(pad(5e-7, 0, 4, 2), pad(12, 0, 8 - 5e-7, 2))));
    for (const { from, to } of edge) expect(distance(from, to)).toBeGreaterThan(1e-5);
    // The base line between the pads, the right side above one, the front, the left side above the other.
    const outer = edge.filter(({ ring }) => ring === 0).map(({ from, to }) => distance(from, to));
    expect(outer).toEqual([8, 4, 20, 4].map((feet) => expect.closeTo(feet, 5)));
  });

  it("marks the chords of an arc as curved, with the number of their side", () => {
    const rounded = outlineOf({ kind: "rectangle", lengthFt: 20, widthFt: 6, cornerRadiusFt: 2, roundedCorners: 1 });
    const edge = boundaryOf(rounded);
    const curved = edge.filter(({ curved }) => curved);
    // Sides 1 to 3, the rounded front left corner, and side 4.
    expect(curved).toHaveLength(45);
    expect(new Set(curved.map(({ run }) => run))).toEqual(new Set([3]));
    expect(edge.filter(({ curved }) => !curved).map(({ run }) => run)).toEqual([0, 1, 2, 4]);
  });
});

describe("pieces of a ring", () => {
  it("know how they lie to the other rings", () => {
    const rings = ringsOf(outlineOf(bedWith(pad(5, 0, 4, 2), pad(9, 1, 2, 1))));
    const lying = piecesOf(rings).map(({ from, to, ring, lies }) => {
      const others = rings.flatMap((_, other) => (other === ring ? [] : [lies(other)]));
      return `${ring}: ${from.x},${from.y} to ${to.x},${to.y} ${others.join(" ")}`;
    });
    expect(lying).toEqual([
      "0: 0,0 to 5,0 outside outside",
      "0: 5,0 to 9,0 on outside",
      "0: 9,0 to 20,0 outside outside",
      "0: 20,0 to 20,6 outside outside",
      "0: 20,6 to 0,6 outside outside",
      "0: 0,6 to 0,0 outside outside",
      "1: 5,0 to 5,2 inside outside",
      "1: 5,2 to 9,2 inside outside",
      "1: 9,2 to 9,1 inside on",
      "1: 9,1 to 9,0 inside outside",
      "1: 9,0 to 5,0 on outside",
      "2: 9,1 to 9,2 inside on",
      "2: 9,2 to 11,2 inside outside",
      "2: 11,2 to 11,1 inside outside",
      "2: 11,1 to 9,1 inside outside",
    ]);
  });

  it("are cut where a side crosses another ring's", () => {
    // A triangle's side from 0, 0 to 8, 4, and a square from 2, 0.5 to 6, 4.5 that it runs through.
    const triangle = { points: points([0, 0], [8, 4], [0, 8]), runOf: [0, 1, 2], runs: sides(3) };
    const square = { points: points([2, 0.5], [6, 0.5], [6, 4.5], [2, 4.5]), runOf: [0, 1, 2, 3], runs: sides(4) };
    const ends = piecesOf([triangle, square])
      .filter(({ ring, run }) => ring === 0 && run === 0)
      .map(({ from, to, lies }) => [from.x, to.x, lies(1)]);
    // The side meets the square at x = 2 and x = 6, where y is 1 and 3.
    const near = (x: number) => expect.closeTo(x, 9);
    expect(ends).toEqual([
      [0, near(2), "outside"],
      [near(2), near(6), "inside"],
      [near(6), 8, "outside"],
    ]);
  });
});

const sides = (count: number) =>
  Array.from(
    { length: count },
    () => ({ kind: "straight", from: { x: 0, y: 0 }, to: { x: 1, y: 0 }, border: false }) as const,
  );

describe("where a point lies", () => {
  // A C, open on the right between y = 2 and y = 4.
  const ring = points([0, 0], [6, 0], [6, 2], [2, 2], [2, 4], [6, 4], [6, 6], [0, 6]);
  it.each([
    [1, 3, "inside"],
    [4, 1, "inside"],
    [4, 3, "outside"],
    [4, 5, "inside"],
    [7, 1, "outside"],
    [-1, 3, "outside"],
    [3, 7, "outside"],
    [3, -1, "outside"],
    [2, 3, "on"],
    [0, 3, "on"],
    [6, 6, "on"],
    [4, 2, "on"],
    [4, 2.001, "outside"],
    [4, 1.999, "inside"],
    [-1, 2, "outside"],
    [1, 2, "inside"],
    [1, 4, "inside"],
  ] as const)("x %s, y %s is %s the C", (x, y, where) => {
    expect(whereLies(ring, { x, y })).toBe(where);
  });

  it("is right beside a slanting side", () => {
    // The long side of this triangle is y = 2x from 0, 0 to 3, 6.
    const triangle = points([0, 0], [3, 6], [-3, 6]);
    expect(whereLies(triangle, { x: 1, y: 2.5 })).toBe("inside");
    expect(whereLies(triangle, { x: 1.1, y: 2 })).toBe("outside");
    expect(whereLies(triangle, { x: 1, y: 2 })).toBe("on");
  });
});

describe("a point beside slanting sides", () => {
  // Sides: y = 1 + (x − 1)/4 below, x = 5 − (y − 2)/4 on the right, y = 5 + x/4 above, x = 1 − (y − 1)/4 on the left.
  const ring = points([1, 1], [5, 2], [4, 6], [0, 5]);
  it.each([
    // At x = 3 the lower side is at 1.5 and the upper one at 5.75.
    [3, 1.6, "inside"],
    [3, 1.4, "outside"],
    [3, 5.7, "inside"],
    [3, 5.8, "outside"],
    // At y = 3 the left side is at 0.5 and the right one at 4.75.
    [0.6, 3, "inside"],
    [0.4, 3, "outside"],
    [4.7, 3, "inside"],
    [4.8, 3, "outside"],
    [3, 1.5, "on"],
    [4.75, 3, "on"],
  ] as const)("x %s, y %s is %s", (x, y, where) => {
    for (const one of [ring, [...ring].reverse()]) expect(whereLies(one, { x, y })).toBe(where);
  });
});

describe("the nearest point of a straight piece", () => {
  const [a, b] = [
    { x: 1, y: 1 },
    { x: 7, y: 9 },
  ];
  it.each([
    // 5 ft along the 10 ft from 1, 1 to 7, 9 is 4, 5; square to it lie (−0.8, 0.6) and (0.8, −0.6).
    [4 - 0.8, 5 + 0.6, 1],
    [4 + 1.6, 5 - 1.2, 2],
    // Beyond the ends, the end is nearest.
    [1 - 3, 1 - 4, 5],
    [7 + 0.6, 9 + 0.8, 1],
  ])("from x %s, y %s is %s ft away", (x, y, feet) => {
    expect(distanceToSegment(a, b, { x, y })).toBeCloseTo(feet, 12);
    expect(distanceToSegment(b, a, { x, y })).toBeCloseTo(feet, 12);
  });

  it("is the point itself where the piece has no length", () => {
    expect(distanceToSegment(a, a, { x: 4, y: 5 })).toBe(5);
  });

  it.each([
    [4, 5, true],
    [1, 1, true],
    [7, 9, true],
    [4.01, 5, false],
    [4, 5.01, false],
    [0.97, 0.96, false],
    [7.03, 9.04, false],
  ])("has x %s, y %s on it: %s", (x, y, is) => {
    expect(isOn(a, b, { x, y })).toBe(is);
    expect(isOn(b, a, { x, y })).toBe(is);
  });
});
