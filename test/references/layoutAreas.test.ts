import { polygonArea, polygonLength } from "d3-polygon";
import fc from "fast-check";
import { expect, it } from "vitest";
import { layOutBed } from "../../src/layout/layOutBed";
import { ringArea, ringLength } from "../../src/layout/outline";
import { outlineOf } from "../../src/layout/outlineOf";
import type { Point } from "../../src/layout/plane";
import { anyBedWithCutOuts, anyStarBed, anyWidthsBed } from "../layoutShapes";

const pairs = (ring: readonly Point[]): [number, number][] => ring.map(({ x, y }) => [x, y]);
const options = { rollWidthFt: 6, overlapIn: 6 };

it("has the area and the edge that d3-polygon measures, for outlines of straight sides", () => {
  fc.assert(
    fc.property(anyStarBed, (bed) => {
      const { outline, areaSqFt, edgeFt } = layOutBed(bed, options);
      expect(areaSqFt).toBeCloseTo(Math.abs(polygonArea(pairs(outline.ring.points))), 8);
      expect(edgeFt).toBeCloseTo(polygonLength(pairs(outline.ring.points)), 8);
    }),
    { numRuns: 100, seed: 11 },
  );
});

it("has the area of widths by the trapezoidal rule that d3-polygon measures straight from width to width", () => {
  fc.assert(
    fc.property(anyWidthsBed, (bed) => {
      const { outline, areaSqFt } = layOutBed({ ...bed, rule: "trapezoid" } as typeof bed, options);
      expect(areaSqFt).toBeCloseTo(Math.abs(polygonArea(pairs(outline.ring.points))), 8);
    }),
    { numRuns: 100, seed: 11 },
  );
});

it("draws arcs so finely that d3-polygon finds less than 0.05 % of the area and of the length missing", () => {
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

it("has the areas of references on the ring and the ten taped widths", () => {
  // Ring, diameters 10 and 3: 71.4714, printed with 0.7854 for π/4 (NAVEDTRA 14119).
  const ring = layOutBed({ kind: "round", diameterFt: 10, innerDiameterFt: 3 }, options);
  expect(ring.areaSqFt).toBeCloseTo(71.471233, 6);
  // Ten widths at 15: Simpson on nine and a last trapezoid 807.375, trapezoid 811.125 (surveying textbook data).
  const widthsFt = [3.5, 4.3, 6.15, 5.25, 7.5, 8.8, 7.9, 6.4, 4.4, 3.25];
  const taped = { kind: "widths", spacingFt: 15, widthsFt } as const;
  expect(layOutBed(taped, options).areaSqFt).toBeCloseTo(807.375, 9);
  expect(layOutBed({ ...taped, rule: "trapezoid" }, options).areaSqFt).toBeCloseTo(811.125, 9);
});
