import { describe, expect, it } from "vitest";
import { byPoints, lShape, pad, rectangle } from "../../test/planBeds";
import type { Bed } from "./bed";
import { whereLies } from "./boundary";
import { layOutBed } from "./layOutBed";
import { pinRows, reachOfPins, rectanglePins } from "./pins";
import { boundsOf, distance, type Point } from "./plane";

describe("rows of pins", () => {
  it("are pairs at even rows and at the last, singles between", () => {
    expect(pinRows(0, 4, 4)).toEqual({ pairs: [0, 2, 4], singles: [1, 3] });
    expect(pinRows(2, 8, 3)).toEqual({ pairs: [2, 6, 8], singles: [4] });
    expect(pinRows(5, 6, 1)).toEqual({ pairs: [5, 6], singles: [] });
  });
});

it("pins a rectangle of two strips in pairs and singles, once a row through the overlap", () => {
  // 4 by 6 ft, roll 4 ft, overlap 12 in.: two strips that meet at 3 + 1/2 ft; bays of at most 2 ft, so 1.75 and 1.25 ft.
  const pairs = (x: number, edge: string) => [
    [x, 0, edge],
    [x, 1.75, "row"],
    [x, 3.5, "seam"],
    [x, 4.75, "row"],
    [x, 6, edge],
  ];
  const singles = (x: number) => [
    [x, 0.875, "row"],
    [x, 2.625, "row"],
    [x, 3.5, "seam"],
    [x, 4.125, "row"],
    [x, 5.375, "row"],
  ];
  expect(rectanglePins(4, 6, 4, 12, 12, 2).map(({ x, y, kind }) => [x, y, kind])).toEqual([
    ...pairs(0, "corner"),
    ...singles(1),
    ...pairs(2, "edge"),
    ...singles(3),
    ...pairs(4, "corner"),
  ]);
});

describe("the reach of pins", () => {
  /**
   * The largest distance from a place in the bed to the nearest pin: over a grid, and then by steps that shorten from the
   * two worst places on.
   */
  function reachFound(bed: Bed, pinSpacingIn: number, bayFt: number): number {
    const { pins, outline } = layOutBed(bed, {
      rollWidthFt: 6,
      overlapIn: 6,
      pinSpacingIn,
      bayFt,
      directionDegrees: 0,
    });
    const { minX, maxX, minY, maxY } = boundsOf(outline.ring.points);
    const isBed = (place: Point) =>
      whereLies(outline.ring.points, place) !== "outside" &&
      outline.cutOuts.every(({ ring }) => whereLies(ring.points, place) !== "inside");
    const nearest = (place: Point) => (isBed(place) ? Math.min(...pins.map((pin) => distance(pin, place))) : -1);
    const steps = 16;
    const grid = Array.from({ length: (steps + 1) ** 2 }, (_, i) => ({
      x: minX + ((maxX - minX) * (i % (steps + 1))) / steps,
      y: minY + ((maxY - minY) * Math.floor(i / (steps + 1))) / steps,
    }));
    const worst = grid
      .map((place) => ({ place, far: nearest(place) }))
      .sort((a, b) => b.far - a.far)
      .slice(0, 2);
    const climbed = worst.map(({ place, far }) => {
      let best = { place, far };
      for (let step = 0.5; step > 1e-5; step /= 2)
        for (let turn = 0; turn < 8; turn++) {
          const angle = (Math.PI * turn) / 4;
          const { x, y } = best.place;
          const there = { x: x + step * Math.cos(angle), y: y + step * Math.sin(angle) };
          if (nearest(there) > best.far) best = { place: there, far: nearest(there) };
        }
      return best.far;
    });
    return Math.max(...climbed);
  }

  it("in a bed of one interval by one bay is half the diagonal, by hand", () => {
    // Four pins in the corners of 1 by 4 ft: √17/2 = 2.0616.
    expect(reachFound(rectangle(1, 4), 12, 4)).toBeCloseTo(Math.sqrt(17) / 2, 4);
  });

  it("between the rows of a longer bed is the center of the circle through three pins, by hand", () => {
    // Pins at 0, 0 and 2, 0 and between them at 1, 2: 1 + y² = (2 − y)² gives y = 3/4 and 5/4 ft to each.
    expect(reachFound(rectangle(12, 4), 12, 4)).toBeCloseTo(1.25, 4);
    // With an odd number of intervals the last two rows are pairs: the middle of the end is 2 ft from its corners.
    expect(reachFound(rectangle(11, 4), 12, 4)).toBeCloseTo(2, 4);
  });

  it("is stated as half the diagonal of one spacing by the longest gap along the edge", () => {
    // √17/2; 13/2 for 5 by 12 ft; where two spacings are longer than a bay, √(2.5² + 5²)/2.
    expect(reachOfPins(1, 4)).toBeCloseTo(2.061553, 6);
    expect(reachOfPins(5, 12)).toBeCloseTo(6.5, 12);
    expect(reachOfPins(2.5, 4)).toBeCloseTo(2.795085, 6);
  });

  it.each([
    [12, 4],
    [18, 6],
    [12, 6],
  ])("at %s in. and bays of %s ft holds for all beds, and is reached by the worst of them", (spacingIn, bayFt) => {
    const beds: Bed[] = [
      rectangle(spacingIn / 12, bayFt),
      rectangle(12, 4),
      rectangle(11, 9),
      lShape,
      byPoints([0, 0], [9, 0], [0, 7]),
      byPoints([0, 0], [8, 2], [10, 9], [5, 4], [-1, 6]),
      { kind: "round", diameterFt: 11, innerDiameterFt: 3 },
      { kind: "widths", spacingFt: 3, widthsFt: [0, 4, 6.5, 3, 5] },
      { kind: "rectangle", lengthFt: 9, widthFt: 7, cutOuts: [pad(1, 0, 2, 2), pad(5, 3, 1, 1)] },
    ];
    const found = beds.map((bed) => reachFound(bed, spacingIn, bayFt));
    const stated = reachOfPins(spacingIn / 12, bayFt);
    for (const reach of found) expect(reach).toBeLessThanOrEqual(stated + 1e-9);
    expect(Math.max(...found)).toBeCloseTo(stated, 3);
  });
});
