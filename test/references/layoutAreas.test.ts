import { polygonArea, polygonLength } from "d3-polygon";
import fc from "fast-check";
import { expect } from "vitest";
import { layOutBed } from "../../src/layout/layOutBed";
import { ringArea, ringLength } from "../../src/layout/outline";
import { outlineOf } from "../../src/layout/outlineOf";
import type { Point } from "../../src/layout/plane";
import { anyBedWithCutOuts, anyStarBed, anyWidthsBed } from "../layoutShapes";
import { outside } from "../outside";

const pairs = (ring: readonly Point[]): [number, number][] => ring.map(({ x, y }) => [x, y]);
const options = { rollWidthFt: 6, overlapIn: 6 };

outside("d3-polygon", "the area and the edge of outlines of straight sides", () => {
  fc.assert(
    fc.property(anyStarBed, (bed) => {
      const { outline, areaSqFt, edgeFt } = layOutBed(bed, options);
      expect(areaSqFt).toBeCloseTo(Math.abs(polygonArea(pairs(outline.ring.points))), 8);
      expect(edgeFt).toBeCloseTo(polygonLength(pairs(outline.ring.points)), 8);
    }),
    { numRuns: 100, seed: 11 },
  );
});

outside("d3-polygon", "the area of widths by the trapezoidal rule, straight from width to width", () => {
  fc.assert(
    fc.property(anyWidthsBed, (bed) => {
      const { outline, areaSqFt } = layOutBed({ ...bed, rule: "trapezoid" } as typeof bed, options);
      expect(areaSqFt).toBeCloseTo(Math.abs(polygonArea(pairs(outline.ring.points))), 8);
    }),
    { numRuns: 100, seed: 11 },
  );
});

outside("d3-polygon", "arcs are drawn so finely that less than 0.05 % of the area and of the length is missing", () => {
  fc.assert(
    fc.property(anyBedWithCutOuts, (bed) => {
      const { ring, cutOuts } = outlineOf(bed);
      for (const { ring: drawn } of [{ ring }, ...cutOuts]) {
        expect(Math.abs(polygonArea(pairs(drawn.points))) / ringArea(drawn)).toBeGreaterThan(1 - 0.0005);
        expect(polygonLength(pairs(drawn.points)) / ringLength(drawn)).toBeGreaterThan(1 - 0.0005);
      }
    }),
    { numRuns: 100, seed: 11 },
  );
});

const widthsFt = [3.5, 4.3, 6.15, 5.25, 7.5, 8.8, 7.9, 6.4, 4.4, 3.25];
const taped = { kind: "widths", spacingFt: 15, widthsFt } as const;
const FIELD_NOTES = "surveying textbook: ten widths at 15, data and method seen";

for (const { source, bed, area, within } of [
  {
    source: "NAVEDTRA 14119: ring of diameters 10 and 3, printed 71.4714 with 0.7854 for π/4, seen",
    bed: { kind: "round", diameterFt: 10, innerDiameterFt: 3 },
    area: 71.4714,
    within: 0.001,
  },
  {
    source: `${FIELD_NOTES}; by hand nine by Simpson's rule, 750, and a last trapezoid, 57.375`,
    bed: taped,
    area: 807.375,
    within: 1e-9,
  },
  { source: `${FIELD_NOTES}; trapezoids by hand`, bed: { ...taped, rule: "trapezoid" }, area: 811.125, within: 1e-9 },
] as const)
  outside(source, `${area} sq ft`, () => {
    expect(Math.abs(layOutBed(bed, options).areaSqFt - area)).toBeLessThan(within);
  });
