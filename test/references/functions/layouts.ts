import { polygonArea, polygonLength } from "d3-polygon";
import fc from "fast-check";
import { expect } from "vitest";
import { figure, type OutsideCheck } from "../../outside";

const RING = "NAVEDTRA 14119: ring of diameters 10 and 3, printed 71.4714 with 0.7854 for π/4, seen";
const FIELD_NOTES = "surveying textbook: printed field notes, seen; 476.0 by Simpson's rule, by hand";
const FIVE_SPOT = "by hand: a five-spot on squares of 3 ft has (12/3 + 1)² corners and (12/3)² centers";

const [AREA, EDGE, STRIPS, FABRIC, ROLLS, , PINS] = [0, 1, 2, 3, 4, 5, 6] as const;
const ROLL = [6, 50, 6] as const;
const count = (list: unknown[][], place: number) => Number(list[1]![place]);

const square = [
  [0, 0],
  [12, 0],
  [12, 12],
  [0, 12],
];
/** Rows alternate at half the side of 3 ft, in bays of 3 ft, on a strip as wide as the square. */
const SQUARES_OF_3_FT = [12, 50, 0, 12, 18, undefined, 3] as const;

/** Beds round a middle, so that no sides cross. */
const outline = fc.array(fc.integer({ min: 24, max: 80 }), { minLength: 3, maxLength: 10 }).map((radii) =>
  radii.map((radius, place): [number, number] => {
    const turn = (2 * Math.PI * place) / radii.length;
    return [Math.round(radius * Math.cos(turn)) / 4, Math.round(radius * Math.sin(turn)) / 4];
  }),
);

const widths = [3.9, 4.5, 5.1, 6.5, 6.3, 5.1, 4.1].map((width) => [width]);

export const checks: readonly OutsideCheck[] = [
  {
    what: "the area and the edge of random beds by their points",
    source: "d3-polygon",
    compare: (BED) =>
      fc.assert(
        fc.property(outline, (points) => {
          const layout = BED.LAYOUT(points, ...ROLL);
          expect(count(layout, AREA)).toBeCloseTo(Math.abs(polygonArea(points)), 8);
          expect(count(layout, EDGE)).toBeCloseTo(polygonLength([...points, points[0]!]), 8);
        }),
        { numRuns: 60 },
      ),
  },
  figure(FIVE_SPOT, (BED) => count(BED.LAYOUT(square, ...SQUARES_OF_3_FT), PINS), 41),
  {
    what: "the 41 pins of that square are at the corners and centers of its squares",
    source: FIVE_SPOT,
    compare: (BED) => {
      const [, ...pins] = BED.LAYOUT_PINS(square, ...SQUARES_OF_3_FT);
      const places = pins.map(([x, y]) => `${x} ${y}`).sort();
      const grid = (from: number, most: number) =>
        Array.from({ length: 5 }, (_, i) => from + 3 * i).filter((at) => at <= most);
      const corners = grid(0, 12).flatMap((x) => grid(0, 12).map((y) => `${x} ${y}`));
      const centers = grid(1.5, 12).flatMap((x) => grid(1.5, 12).map((y) => `${x} ${y}`));
      expect(places).toEqual([...corners, ...centers].sort());
    },
  },
  {
    what: "a square of 12 ft under a roll of 6 ft without overlap takes two pieces of 12 ft, off one roll of 50",
    source: "by hand: 12 ÷ 6 strips",
    compare: (BED) => {
      const [, ...pieces] = BED.LAYOUT_CUTS(square, 6, 50, 0);
      expect(pieces.map(([strip, , , roll, , length]) => [strip, roll, length])).toEqual([
        [1, 1, 12],
        [2, 1, 12],
      ]);
    },
  },

  figure(RING, (BED) => count(BED.LAYOUT_ROUND(10, 3, ...ROLL), AREA), 71.4714, 0.001),
  figure(
    "by hand: π × 10, drawn in short sides",
    (BED) => count(BED.LAYOUT_ROUND(10, 3, ...ROLL), EDGE),
    31.4159,
    0.05,
  ),
  figure(FIELD_NOTES, (BED) => count(BED.LAYOUT_WIDTHS(15, widths, ...ROLL), AREA), 476),
  figure("by hand: 30 × 10", (BED) => count(BED.LAYOUT_RECTANGLE(30, 10, 0, 0, ...ROLL), AREA), 300),
  figure(
    "by hand: 18.5 × 5 − 2 (1 − π/4) 2²",
    (BED) => count(BED.LAYOUT_RECTANGLE(18.5, 5, 2, 2, ...ROLL), AREA),
    90.7831853,
    5e-8,
  ),
  figure("by hand: 6 + 6 − 1 = 11", (BED) => count(BED.LAYOUT_RECTANGLE(30, 11, 0, 0, 6, 50, 12), STRIPS), 2),
  figure("by hand: two strips of 30 × 6", (BED) => count(BED.LAYOUT_RECTANGLE(30, 11, 0, 0, 6, 100, 12), FABRIC), 360),
  figure(
    "by hand: 30 and 20 ft off the first roll, 11 off the second",
    (BED) => count(BED.LAYOUT_RECTANGLE(30, 11, 0, 0, 6, 50, 12), ROLLS),
    2,
  ),
];
