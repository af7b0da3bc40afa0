import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Bed } from "../../src/layout/bed";
import { boundaryOf, distanceToSegment, whereLies } from "../../src/layout/boundary";
import { layOutBed } from "../../src/layout/layOutBed";
import type { Layout } from "../../src/layout/layout";
import { boundsOf, distance, type Point } from "../../src/layout/plane";
import { anyBed, anyStarBed } from "../layoutShapes";

const options = { rollWidthFt: 4, rollLengthFt: 25, overlapIn: 6, border: { pieceLengthFt: 8, stakeSpacingIn: 30 } };
const spacingFt = 1;

/** Places evenly over a bed that lie in it. */
function placesIn({ outline }: Layout, across: number): Point[] {
  const { minX, maxX, minY, maxY } = boundsOf(outline.ring.points);
  const places: Point[] = [];
  for (let i = 0; i < across; i++)
    for (let j = 0; j < across; j++) {
      const place = {
        x: minX + ((maxX - minX) * (i + 0.5)) / across,
        y: minY + ((maxY - minY) * (j + 0.5)) / across,
      };
      const isIn =
        whereLies(outline.ring.points, place) === "inside" &&
        outline.cutOuts.every(({ ring }) => whereLies(ring.points, place) === "outside");
      if (isIn) places.push(place);
    }
  return places;
}

/** The slivers that no fabric is cut for are under 1/32 in. */
const SLIVER_FT = 0.0026;

describe("every bed", () => {
  it("is covered by its strips", () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const layout = layOutBed(bed, options);
        for (const place of placesIn(layout, 24)) {
          const isCovered = layout.cuts.some(({ corners: [a, b, , d] }) => {
            const [along, up] = [distance(a, b), distance(a, d)];
            const u = ((place.x - a.x) * (b.x - a.x) + (place.y - a.y) * (b.y - a.y)) / along;
            const v = ((place.x - a.x) * (d.x - a.x) + (place.y - a.y) * (d.y - a.y)) / up;
            return u >= -SLIVER_FT && u <= along + SLIVER_FT && v >= -SLIVER_FT && v <= up + SLIVER_FT;
          });
          expect(isCovered, `bare at ${place.x}, ${place.y}`).toBe(true);
        }
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  it("has a pin within the stated reach of every place", () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const layout = layOutBed(bed, options);
        for (const place of placesIn(layout, 24)) {
          const nearest = Math.min(...layout.pins.map((pin) => distance(pin, place)));
          expect(nearest).toBeLessThanOrEqual(layout.pinReachFt + 1e-9);
        }
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  it("has no two pins closer than a third of the spacing, save where edges, overlaps or corners ask for both", () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { pins } = layOutBed(bed, options);
        const isPlain = bed.kind === "rectangle" && !bed.cutOuts;
        if (isPlain) return;
        for (const pin of pins.filter(({ kind }) => kind === "row"))
          for (const other of pins)
            if (other !== pin) expect(distance(pin, other)).toBeGreaterThanOrEqual(spacingFt / 3 - 1e-9);
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  it("has all its pins in the bed or on its edge", () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { outline, pins } = layOutBed(bed, options);
        const edge = boundaryOf(outline);
        for (const pin of pins) {
          const isIn = whereLies(outline.ring.points, pin) !== "outside";
          const isOnEdge = edge.some(({ from, to }) => distanceToSegment(from, to, pin) < 1e-5);
          const isFree = outline.cutOuts.every(({ ring }) => whereLies(ring.points, pin) !== "inside");
          expect((isIn && isFree) || isOnEdge).toBe(true);
        }
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  it("has no gap over the spacing along overlaps, end laps, cut-outs, and any edge that is no rectangle's", () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const layout = layOutBed(bed, options);
        const isRectangle = bed.kind === "rectangle" && !bed.roundedCorners;
        for (const line of [...layout.seams, ...layout.endLaps])
          expect(widestGap(layout, [line.from, line.to])).toBeLessThanOrEqual(spacingFt + 1e-6);
        for (const { from, to, ring } of boundaryOf(layout.outline)) {
          // The outer edge of a rectangle has its pins at every other row, as BED.PINS counts them.
          if (isRectangle && ring === 0) continue;
          expect(widestGap(layout, [from, to])).toBeLessThanOrEqual(spacingFt + 1e-6);
        }
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  it("keeps its counts to the pin when it is turned or mirrored, since the grid turns with the bed", () => {
    fc.assert(
      fc.property(anyStarBed, fc.double({ min: 0, max: 7, noNaN: true }), (bed, angle) => {
        const plain = layOutBed(bed, options);
        for (const moved of [turned(bed, angle), mirrored(bed)]) {
          const { counts } = layOutBed(moved, options);
          expect(counts.rolls).toBe(plain.counts.rolls);
          expect(counts.fabricLengthFt).toBeCloseTo(plain.counts.fabricLengthFt, 6);
          expect(counts.pieces).toBe(plain.counts.pieces);
          expect(counts.pins).toBe(plain.counts.pins);
        }
      }),
      { numRuns: 60, seed: 11 },
    );
  });
});

/** The longest part of a line without a pin on it. */
function widestGap({ pins }: Layout, [from, to]: readonly [Point, Point]): number {
  const length = distance(from, to);
  const places = pins
    .filter((pin) => distanceToSegment(from, to, pin) < 1e-5)
    .map((pin) => distance(from, pin))
    .sort((a, b) => a - b);
  return [...places, length].reduce((widest, at, i) => Math.max(widest, at - (i === 0 ? 0 : places[i - 1]!)), 0);
}

function moved(bed: Bed, move: (point: Point) => Point): Bed {
  if (bed.kind !== "points") throw new Error("only a bed given by points can be moved");
  return { ...bed, points: bed.points.map(move) };
}

const turned = (bed: Bed, angle: number): Bed =>
  moved(bed, ({ x, y }) => ({
    x: x * Math.cos(angle) - y * Math.sin(angle),
    y: x * Math.sin(angle) + y * Math.cos(angle),
  }));

const mirrored = (bed: Bed): Bed => moved(bed, ({ x, y }) => ({ x: -x, y }));
