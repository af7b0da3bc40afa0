import { polygonArea } from "d3-polygon";
import { describe, expect, it } from "vitest";
import type { Bed } from "./bed";
import { layOutBed } from "./layOutBed";
import { fabricShapes, type Shape } from "./shapes";

const points = (...pairs: readonly (readonly [number, number])[]) => pairs.map(([x, y]) => ({ x, y }));
const ring: Bed = { kind: "round", diameterFt: 12, innerDiameterFt: 3 };
const uShape: Bed = {
  kind: "points",
  points: points([0, 0], [12, 0], [12, 9], [8, 9], [8, 3], [4, 3], [4, 9], [0, 9]),
};

/** Square feet of a shape as d3-polygon measures it: a hole runs the other way round, and is taken off. */
const shapeArea = (shape: Shape): number =>
  Math.abs(shape.reduce((sum, ring) => sum + polygonArea(ring.map(({ x, y }): [number, number] => [x, y])), 0));

describe("the shapes of the fabric", () => {
  it.each([
    ["a ring", ring],
    ["a U", uShape],
  ])("are for %s together as large as the fabric in the bed", (_, bed) => {
    const layout = layOutBed(bed, { rollWidthFt: 4, overlapIn: 6 });
    const area = fabricShapes(layout).cuts.reduce((sum, shape) => sum + shapeArea(shape), 0);
    // Clipped to a thousandth of an inch.
    expect(area).toBeCloseTo(layout.counts.fabricSqFt, 2);
  });

  it("overlap by the overlap's width along each seam", () => {
    const layout = layOutBed({ kind: "rectangle", lengthFt: 20, widthFt: 11 }, { rollWidthFt: 6, overlapIn: 12 });
    expect(fabricShapes(layout).overlaps.map(shapeArea)).toEqual([20]);
  });

  it("overlap by the end lap where a roll runs out", () => {
    const options = { rollWidthFt: 6, rollLengthFt: 50, overlapIn: 6, directionDegrees: 0 };
    const layout = layOutBed({ kind: "rectangle", lengthFt: 60, widthFt: 5 }, options);
    const [lap] = fabricShapes(layout).overlaps;
    expect(shapeArea(lap!)).toBeCloseTo(5, 6);
    const along = lap!.flat().map(({ x }) => x);
    expect([Math.min(...along), Math.max(...along)]).toEqual([49, 50]);
  });
});
