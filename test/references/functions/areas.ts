import { polygonArea, polygonLength } from "d3-polygon";
import fc from "fast-check";
import { expect } from "vitest";
import { figure, type OutsideCheck } from "../../outside";

const OPENSTAX = "OpenStax, Algebra and Trigonometry, law of cosines chapter: printed, seen";
const HERON = "by hand: Heron's triangles with whole areas";
const RING = "NAVEDTRA 14119: ring of diameters 10 and 3, printed 71.4714 with 0.7854 for π/4, seen";
const FILLET = "NAVEDTRA 14119: fillet outside a quarter circle of radius 3, printed 1.9314, seen";
const FIELD_NOTES = "surveying textbook: printed field notes and method, seen; area worked by hand";
const SQUARES = "by hand: y = x² from 0 to 4, for which Simpson's rule is exact";
const SEGMENT = "by hand: segment of a circle, r = 10, rise 4; area 44.729522, arc 18.545904";
const GEOMETRY = "by hand: plane geometry";

const column = (values: readonly unknown[]) => values.map((value) => [value]);
const seven = column([3.9, 4.5, 5.1, 6.5, 6.3, 5.1, 4.1]);
const ten = column([3.5, 4.3, 6.15, 5.25, 7.5, 8.8, 7.9, 6.4, 4.4, 3.25]);
/** Ordinates of an arc of radius 10 over its chord of 16, at 800 even intervals. */
const arc = column(Array.from({ length: 801 }, (_, i) => Math.max(0, Math.sqrt(100 - (i / 50 - 8) ** 2) - 6)));

/** An outline round a middle, corners at growing angles, never crosses itself. */
const outlines = fc
  .array(fc.integer({ min: 5, max: 400 }), { minLength: 3, maxLength: 40 })
  .chain((radii) => fc.tuple(fc.constant(radii), fc.integer({ min: -500, max: 500 }), fc.boolean()))
  .map(([radii, shift, backwards]) => {
    const points = radii.map((radius, i): [number, number] => {
      const angle = (2 * Math.PI * i) / radii.length;
      return [shift + (radius / 10) * Math.cos(angle), (radius / 10) * Math.sin(angle) - shift];
    });
    return backwards ? points.reverse() : points;
  });

/** A rectangle of 18.5 by 5 ft with corners of 2 ft, drawn as 4,000 points. */
function roundedRectangle(): [number, number][] {
  const [long, wide, radius] = [18.5, 5, 2];
  const centers = [
    [long - radius, wide - radius],
    [radius, wide - radius],
    [radius, radius],
    [long - radius, radius],
  ];
  return centers.flatMap(([x, y], corner) =>
    Array.from({ length: 1000 }, (_, i): [number, number] => {
      const angle = ((corner + i / 999) * Math.PI) / 2;
      return [x! + radius * Math.cos(angle), y! + radius * Math.sin(angle)];
    }),
  );
}

export const checks: readonly OutsideCheck[] = [
  figure(OPENSTAX, (BED) => BED.AREA_TRIANGLE(10, 15, 7), 29.4, 0.05),
  figure(OPENSTAX, (BED) => BED.AREA_TRIANGLE(29.7, 42.3, 38.4), 552, 0.5),
  figure(OPENSTAX, (BED) => BED.AREA_TRIANGLE(4.38, 3.79, 5.22), 8.15, 0.005),
  figure(HERON, (BED) => BED.AREA_TRIANGLE(3, 4, 5), 6),
  figure(HERON, (BED) => BED.AREA_TRIANGLE(13, 14, 15), 84),

  figure(RING, (BED) => BED.AREA_ROUND(10, 3), 71.4714, 0.001),
  figure(GEOMETRY, (BED) => BED.AREA_ROUND(10, 3), (Math.PI / 4) * (10 ** 2 - 3 ** 2)),
  figure(FILLET, (BED) => 400 - BED.AREA_RECTANGLE(20, 20, 3, 1), 1.9314, 0.0005),
  figure("by hand: 18.5 × 5 − 2 (1 − π/4) 2²", (BED) => BED.AREA_RECTANGLE(18.5, 5, 2, 2), 90.7831853, 5e-8),
  figure("by hand: 30 × 10 − 4 − 2", (BED) => BED.AREA_RECTANGLE(30, 10, 0, 0, [[4], [2]]), 294),

  figure(FIELD_NOTES, (BED) => BED.AREA_WIDTHS(15, seven), 476),
  figure(FIELD_NOTES, (BED) => BED.AREA_WIDTHS(15, seven, "trapezoid"), 472.5),
  figure(
    `${FIELD_NOTES}: nine by Simpson, 750, and a last trapezoid, 57.375`,
    (BED) => BED.AREA_WIDTHS(15, ten),
    807.375,
  ),
  figure(FIELD_NOTES, (BED) => BED.AREA_WIDTHS(15, ten, " TRAPEZOID "), 811.125),
  figure(SQUARES, (BED) => BED.AREA_WIDTHS(1, [[0, 1, 4, 9, 16]]), 64 / 3),
  figure(SQUARES, (BED) => BED.AREA_WIDTHS(1, [[0, 1, 4, 9, 16]], "trapezoid"), 22),
  figure(SEGMENT, (BED) => BED.AREA_WIDTHS(16 / 800, arc), 44.729522, 5e-4),
  figure(SEGMENT, (BED) => BED.EDGE_WIDTHS(16 / 800, arc), 18.545904, 5e-4),

  figure("by hand: 5 + 18.5 + 5", (BED) => BED.EDGE_LENGTH([["5'"], [18.5], [5]]), 28.5),
  figure("by hand: 28.5 − 2 (2 − π/2) 2", (BED) => BED.EDGE_LENGTH([[5], [18.5], [5]], 2, 2), 26.7831853, 5e-8),
  figure(
    "by hand: a triangle of 3, 4 and 5",
    (BED) =>
      BED.EDGE_POINTS([
        [0, 0],
        [3, 0],
        [3, 4],
      ]),
    12,
  ),
  figure(
    "by hand: its sides of 3 and 4",
    (BED) =>
      BED.EDGE_POINTS(
        [
          [0, 0],
          [3, 0],
          [3, 4],
        ],
        false,
      ),
    7,
  ),
  {
    what: "areas and lengths of random outlines, either way round",
    source: "d3-polygon",
    compare: (BED) =>
      fc.assert(
        fc.property(outlines, (points) => {
          expect(BED.AREA_POINTS(points)).toBeCloseTo(Math.abs(polygonArea(points)), 6);
          expect(BED.EDGE_POINTS(points)).toBeCloseTo(polygonLength(points), 6);
        }),
      ),
  },
  {
    what: "a rounded rectangle drawn as 4,000 points has the area and the edge of the formula",
    source: "d3-polygon",
    compare: (BED) => {
      const points = roundedRectangle();
      expect(BED.AREA_RECTANGLE(18.5, 5, 2, 4)).toBeCloseTo(Math.abs(polygonArea(points)), 4);
      expect(BED.EDGE_LENGTH([[18.5, 5, 18.5, 5]], 2, 4)).toBeCloseTo(polygonLength(points), 4);
    },
  },
];
