import { describe, expect, it } from "vitest";
import { byPoints, lShape } from "../../test/planBeds";
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

  it("of a bed with very many sides are some 3° apart, that along the bed first", () => {
    const turns = Array.from({ length: 1000 }, (_, i) => (2 * Math.PI * i) / 1000);
    // Some points at the far end are left out, so that the longest side is there, across the bed.
    const traced = turns.slice(6).map((turn) => ({ x: 30 * Math.cos(turn), y: 10 * Math.sin(turn) }));
    const found = directionsOf(outlineOf({ kind: "points", points: traced }));
    // Its smallest rectangle is 60 by 20 ft, a degree or two off the base line for what is left out; then comes that side,
    // at 92.7°: halfway along it the ellipse runs by (−30 sin 0.9°, 10 cos 0.9°).
    const first = (Math.atan2(found[0]!.y, found[0]!.x) * 180) / Math.PI;
    expect(Math.min(first, 180 - first)).toBeLessThan(3);
    expect(Math.round((Math.atan2(found[1]!.y, found[1]!.x) * 180) / Math.PI)).toBe(93);
    expect(found.length).toBeGreaterThan(40);
    expect(found.length).toBeLessThanOrEqual(62);
    const degrees = found.map(({ x, y }) => (Math.atan2(y, x) * 180) / Math.PI).sort((a, b) => a - b);
    const gaps = degrees.slice(1).map((angle, i) => angle - degrees[i]!);
    expect(Math.max(...gaps)).toBeLessThanOrEqual(6 + 1e-9);
  });

  it("are that along the bed, then those of the sides, each once, whichever way it is walked", () => {
    // Sides of 20, 6, 12, 6, 8 and 12 ft, all level or upright.
    expect(degreesOf(lShape)).toEqual([0, 90]);
    // A right triangle of 6, 8 and 10 ft: the long side from 8, 0 to 0, 6 runs at 180° − 36.87°.
    expect(degreesOf(byPoints([0, 0], [8, 0], [0, 6]))).toEqual([143, 0, 90, 53]);
    expect(degreesOf(byPoints([0, 6], [8, 0], [0, 0]))).toEqual([143, 0, 90, 53]);
  });

  it("are given turned upward", () => {
    const found = directionsOf(outlineOf(byPoints([0, 0], [8, 0], [0, 6])));
    expect(found[0]).toEqual({ x: expect.closeTo(-0.8, 12), y: expect.closeTo(0.6, 12) });
    expect(found[1]).toEqual({ x: 1, y: 0 });
    expect(found[2]).toEqual({ x: 0, y: 1 });
  });

  it("that differ by binary noise alone are one", () => {
    // The two long sides are parallel but for a billionth of a foot in 10 ft; 0.01 ft makes them two.
    expect(degreesOf(byPoints([0, 0], [10, 1e-9], [10, 3], [0, 3]))).toHaveLength(2);
    expect(degreesOf(byPoints([0, 0], [10, 0.01], [10, 3], [0, 3])).length).toBeGreaterThan(2);
    // So are those just above the base line and just below it.
    expect(degreesOf(byPoints([0, 1e-9], [10, 0], [10, 3], [0, 3]))).toHaveLength(2);
  });

  it("of the smallest rectangle lie along its longer side, then square to it", () => {
    // A diamond of 12 by 4 ft, 24 sq ft: upright, the rectangle around it has 48. Along a side of √40 ft, at 18.4° or 161.6°, it
    // is 24/√40 = 3.79 ft wide and 12 · cos 18.4° = 11.38 ft long: 43.2.
    const diamond = byPoints([-6, 0], [0, -2], [6, 0], [0, 2]);
    expect(degreesOf(diamond)).toEqual([162, 18, 72, 108]);
  });

  it("of a round bed with a flat side are along that side, and not along the chords of its arc", () => {
    // Widths of a lens: every side is straight, and the base line is the longest.
    expect(degreesOf({ kind: "rectangle", lengthFt: 6, widthFt: 6, cornerRadiusFt: 3, roundedCorners: 2 })).toEqual([
      0, 90,
    ]);
  });

  it("by hand are exact at the quarters", () => {
    expect(directionAt(0)).toEqual({ x: 1, y: 0 });
    expect(directionAt(180)).toEqual({ x: -1, y: 0 });
    expect(directionAt(450)).toEqual({ x: 0, y: 1 });
    expect(directionAt(30)).toEqual({ x: expect.closeTo(Math.sqrt(3) / 2, 12), y: expect.closeTo(0.5, 12) });
    expect(directionAt(90)).toEqual({ x: 0, y: 1 });
    expect(directionAt(-90)).toEqual({ x: 0, y: -1 });
    expect(directionAt(45).x).toBeCloseTo(Math.SQRT1_2, 12);
  });
});
