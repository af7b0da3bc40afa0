import { describe, expect, it } from "vitest";
import type { Bed } from "./bed";
import { directionAt, directionsOf } from "./directions";
import { outlineOf } from "./outlineOf";

const degreesOf = (bed: Bed) =>
  directionsOf(outlineOf(bed)).map(({ x, y }) => Math.round((Math.atan2(y, x) * 180) / Math.PI));

describe("directions of laying", () => {
  it("are those of a rectangle's two pairs of sides, the longer first", () => {
    expect(degreesOf({ kind: "rectangle", lengthFt: 5, widthFt: 20 })).toEqual([90, 0]);
  });

  it("of a round bed are along its base line and square to it, since any would do", () => {
    expect(degreesOf({ kind: "round", diameterFt: 9 })).toEqual([0, 90]);
  });

  it("include the smallest rectangle round a bed, where no side runs that way", () => {
    // An arrowhead: the side that closes the notch from (0, 10) to (10, 0) is in the hull but not in the bed.
    const points = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 2, y: 2 },
      { x: 0, y: 10 },
    ];
    expect(degreesOf({ kind: "points", points })).toEqual(expect.arrayContaining([0, 90]));
    const kite = [
      { x: 0, y: 0 },
      { x: 6, y: 2 },
      { x: 20, y: 20 },
      { x: 2, y: 6 },
    ];
    expect(degreesOf({ kind: "points", points: kite })).toEqual(expect.arrayContaining([45 + 7, 45 - 7]));
  });

  it("leave out the chords that stand for an arc", () => {
    const rounded: Bed = { kind: "rectangle", lengthFt: 18, widthFt: 5, cornerRadiusFt: 2, roundedCorners: 4 };
    expect(degreesOf(rounded)).toEqual([0, 90]);
  });

  it("of a bed with very many sides are some 3° apart, the longest side first", () => {
    const turns = Array.from({ length: 1000 }, (_, i) => (2 * Math.PI * i) / 1000);
    // Some points at the far end are left out, so that the longest side stands there, across the bed.
    const traced = turns.slice(6).map((turn) => ({ x: 30 * Math.cos(turn), y: 10 * Math.sin(turn) }));
    const found = directionsOf(outlineOf({ kind: "points", points: traced }));
    // Half way along it the ellipse runs at 92.7°: (−30 sin 0.9°, 10 cos 0.9°).
    expect(Math.round((Math.atan2(found[0]!.y, found[0]!.x) * 180) / Math.PI)).toBe(93);
    expect(found.length).toBeGreaterThan(40);
    expect(found.length).toBeLessThanOrEqual(62);
    const degrees = found.map(({ x, y }) => (Math.atan2(y, x) * 180) / Math.PI).sort((a, b) => a - b);
    const gaps = degrees.slice(1).map((angle, i) => angle - degrees[i]!);
    expect(Math.max(...gaps)).toBeLessThanOrEqual(6 + 1e-9);
  });

  it("by hand are exact at the quarters", () => {
    expect(directionAt(90)).toEqual({ x: 0, y: 1 });
    expect(directionAt(-90)).toEqual({ x: 0, y: -1 });
    expect(directionAt(45).x).toBeCloseTo(Math.SQRT1_2, 12);
  });
});
