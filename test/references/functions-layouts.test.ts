import { polygonArea, polygonLength } from "d3-polygon";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  FABRIC_ROLLS,
  FABRIC_STRIPS,
  LAYOUT,
  LAYOUT_CUTS,
  LAYOUT_PINS,
  LAYOUT_RECTANGLE,
  LAYOUT_ROUND,
  LAYOUT_WIDTHS,
} from "../../src/functions/index";

const [AREA, EDGE, STRIPS, FABRIC, ROLLS, , PINS] = [0, 1, 2, 3, 4, 5, 6];
const ROLL = [6, 50, 6] as const;
const counts = (list: unknown[][]) => list[1] as number[];

/** Beds round a middle, so that no sides cross. */
const outline = fc.array(fc.integer({ min: 24, max: 80 }), { minLength: 3, maxLength: 10 }).map((radii) =>
  radii.map((radius, place): [number, number] => {
    const turn = (2 * Math.PI * place) / radii.length;
    return [Math.round(radius * Math.cos(turn)) / 4, Math.round(radius * Math.sin(turn)) / 4];
  }),
);

describe("a bed by its points", () => {
  test("has the area and edge that d3-polygon gives, and a piece and a pin a row", () => {
    fc.assert(
      fc.property(outline, (points) => {
        const given = counts(LAYOUT(points, ...ROLL));
        expect(given[AREA!]).toBeCloseTo(Math.abs(polygonArea(points)), 8);
        expect(given[EDGE!]).toBeCloseTo(polygonLength([...points, points[0]!]), 8);
        // A border's worth of fabric covers the bed: what lies in it is no less than the bed itself.
        expect(given[FABRIC!]).toBeGreaterThanOrEqual(given[AREA!]! - 1e-9);
        const [, ...pins] = LAYOUT_PINS(points, ...ROLL);
        expect(pins.length).toBe(given[PINS!]);
        const [, ...pieces] = LAYOUT_CUTS(points, ...ROLL) as number[][];
        expect(Math.max(...pieces.map(([, , , roll]) => roll!))).toBe(given[ROLLS!]);
      }),
      { numRuns: 60 },
    );
  });
});

describe("a bed that is known otherwise", () => {
  test("a square of 12 ft at 3 ft takes the published five-spot: (12/3 + 1)² + (12/3)² = 41 (computed)", () => {
    const square = [
      [0, 0],
      [12, 0],
      [12, 12],
      [0, 12],
    ];
    // Rows alternate at half the side of 3 ft, in bays of 3 ft.
    const [, ...pins] = LAYOUT_PINS(square, 12, 50, 0, 12, 18, undefined, 3);
    expect(pins.length).toBe(41);
  });

  test("a plain rectangle takes the strips and rolls of the functions for rectangles", () => {
    fc.assert(
      fc.property(fc.integer({ min: 12, max: 60 }), fc.integer({ min: 3, max: 11 }), (length, width) => {
        const given = counts(LAYOUT_RECTANGLE(length, width, 0, 0, ...ROLL, 12, 12, undefined, 4, 0));
        expect(given[AREA!]).toBe(length * width);
        expect(given[STRIPS!]).toBe(FABRIC_STRIPS(width, 6, 6));
        expect(given[ROLLS!]).toBe(FABRIC_ROLLS(length, width, 6, 50, 6));
      }),
      { numRuns: 40 },
    );
  });

  test("the ring of diameters 10 and 3 printed in NAVEDTRA 14119: 71.4714, worked there with 0.7854 (seen)", () => {
    const given = counts(LAYOUT_ROUND(10, 3, ...ROLL));
    expect(Math.abs(given[AREA!]! - 71.4714)).toBeLessThan(0.001);
    expect(given[EDGE!]).toBeCloseTo(Math.PI * 10, 1);
  });

  test("widths of the survey with Simpson's 476.0 (data seen, computed)", () => {
    const widths = [3.9, 4.5, 5.1, 6.5, 6.3, 5.1, 4.1].map((width) => [width]);
    expect(counts(LAYOUT_WIDTHS(15, widths, ...ROLL))[AREA!]).toBeCloseTo(476, 9);
  });
});
