import { polygonArea, polygonLength } from "d3-polygon";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  AREA_POINTS,
  AREA_RECTANGLE,
  AREA_ROUND,
  AREA_TRIANGLE,
  AREA_WIDTHS,
  EDGE_LENGTH,
  EDGE_POINTS,
  EDGE_WIDTHS,
} from "../../src/functions/index";

const column = (values: readonly unknown[]) => values.map((value) => [value]);

describe("triangles printed in OpenStax, Algebra and Trigonometry, law of cosines chapter (seen)", () => {
  test.each([
    [10, 15, 7, 29.4, 1],
    [29.7, 42.3, 38.4, 552, 0],
    [4.38, 3.79, 5.22, 8.15, 2],
  ])("%d, %d, %d", (a, b, c, printed, places) => {
    expect(AREA_TRIANGLE(a, b, c)).toBeCloseTo(printed, places);
  });

  test("Heron's whole-number triangles (computed)", () => {
    expect(AREA_TRIANGLE(3, 4, 5)).toBe(6);
    expect(AREA_TRIANGLE(13, 14, 15)).toBe(84);
  });
});

describe("rings and corners printed in NAVEDTRA 14119 (seen)", () => {
  test("a ring of diameters 10 and 3: 71.4714, worked there with 0.7854 for π/4", () => {
    expect(AREA_ROUND(10, 3)).toBeCloseTo(71.471233, 6);
    expect(Math.abs(AREA_ROUND(10, 3) - 71.4714)).toBeLessThan(0.001);
  });

  test("the fillet outside a quarter circle of radius 3: 1.9314", () => {
    expect(400 - AREA_RECTANGLE(20, 20, 3, 1)).toBeCloseTo(1.9314, 3);
  });
});

describe("widths from a base line: printed field notes (data and method seen, areas computed)", () => {
  const seven = column([3.9, 4.5, 5.1, 6.5, 6.3, 5.1, 4.1]);
  const ten = column([3.5, 4.3, 6.15, 5.25, 7.5, 8.8, 7.9, 6.4, 4.4, 3.25]);

  test("seven widths at 15: Simpson 476.0, trapezoid 472.5", () => {
    expect(AREA_WIDTHS(15, seven)).toBeCloseTo(476, 10);
    expect(AREA_WIDTHS(15, seven, "trapezoid")).toBeCloseTo(472.5, 10);
  });

  test("ten widths at 15: Simpson on nine and a last trapezoid 807.375, trapezoid 811.125", () => {
    expect(AREA_WIDTHS(15, ten, "Simpson")).toBeCloseTo(750 + 57.375, 10);
    expect(AREA_WIDTHS(15, ten, " TRAPEZOID ")).toBeCloseTo(811.125, 10);
  });

  test("y = x² at 0 to 4: Simpson 64/3 exactly, trapezoid 22 (computed)", () => {
    expect(AREA_WIDTHS(1, [[0, 1, 4, 9, 16]])).toBeCloseTo(64 / 3, 12);
    expect(AREA_WIDTHS(1, [[0, 1, 4, 9, 16]], "trapezoid")).toBe(22);
  });

  test("a segment of a circle, r = 10, rise 4: area 44.729522, arc 18.545904 (computed)", () => {
    // Ordinates of the arc over its chord of 16, at 800 even intervals.
    const widths = Array.from({ length: 801 }, (_, i) => Math.max(0, Math.sqrt(100 - (i / 50 - 8) ** 2) - 6));
    expect(AREA_WIDTHS(16 / 800, column(widths))).toBeCloseTo(44.729522, 3);
    expect(EDGE_WIDTHS(16 / 800, column(widths))).toBeCloseTo(18.545904, 3);
  });
});

describe("outlines against d3-polygon", () => {
  /** A star-shaped outline never crosses itself: corners at growing angles round a middle. */
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

  test("area and length agree, either way round", () => {
    fc.assert(
      fc.property(outlines, (points) => {
        expect(AREA_POINTS(points)).toBeCloseTo(Math.abs(polygonArea(points)), 6);
        expect(EDGE_POINTS(points)).toBeCloseTo(polygonLength(points), 6);
      }),
    );
  });

  test("a rounded rectangle drawn as 4,000 points has the area and the edge of the formula", () => {
    const [long, wide, radius] = [18.5, 5, 2];
    const centers = [
      [long - radius, wide - radius],
      [radius, wide - radius],
      [radius, radius],
      [long - radius, radius],
    ];
    const points = centers.flatMap(([x, y], corner) =>
      Array.from({ length: 1000 }, (_, i): [number, number] => {
        const angle = ((corner + i / 999) * Math.PI) / 2;
        return [x! + radius * Math.cos(angle), y! + radius * Math.sin(angle)];
      }),
    );
    expect(AREA_RECTANGLE(long, wide, radius, 4)).toBeCloseTo(Math.abs(polygonArea(points)), 4);
    expect(EDGE_LENGTH([[long, wide, long, wide]], radius, 4)).toBeCloseTo(polygonLength(points), 4);
  });
});
