import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Bed } from "../../src/layout/bed";
import { boundaryOf, distanceToSegment, whereLies } from "../../src/layout/boundary";
import { type Chain, chainsOf } from "../../src/layout/chains";
import { layOutBed } from "../../src/layout/layOutBed";
import type { Layout } from "../../src/layout/layout";
import { reachOfPins } from "../../src/layout/pins";
import { boundsOf, distance, type Point } from "../../src/layout/plane";
import { pinGrid } from "../../src/quantities/pins";
import { anyBed, anyRectangle, anyStarBed, RANDOM_BEDS } from "../layoutShapes";

const options = { rollWidthFt: 4, rollLengthFt: 25, overlapIn: 6, border: { pieceLengthFt: 8, stakeSpacingIn: 30 } };
const spacingFt = 1;
const bayFt = 4;
const runs = { numRuns: RANDOM_BEDS, seed: 11 };
/** Where a place is looked for on each piece of edge, fewer beds tell as much. */
const fewerRuns = { ...runs, numRuns: RANDOM_BEDS / 4 };
const TIME = 60_000 + RANDOM_BEDS * 60;

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

const HAIR_FT = 1e-5;

describe("every bed", { timeout: TIME }, () => {
  it("is covered by its strips, with a pin within the stated reach of every place", () => {
    let farthest = 0;
    fc.assert(
      fc.property(anyBed, (bed) => {
        const layout = layOutBed(bed, options);
        for (const place of placesIn(layout, 12)) {
          const isCovered = layout.cuts.some(({ corners: [a, b, , d] }) => {
            const [along, up] = [distance(a, b), distance(a, d)];
            const u = ((place.x - a.x) * (b.x - a.x) + (place.y - a.y) * (b.y - a.y)) / along;
            const v = ((place.x - a.x) * (d.x - a.x) + (place.y - a.y) * (d.y - a.y)) / up;
            return u >= -HAIR_FT && u <= along + HAIR_FT && v >= -HAIR_FT && v <= up + HAIR_FT;
          });
          expect(isCovered, `bare at ${place.x}, ${place.y}`).toBe(true);
          const nearest = Math.min(...layout.pins.map((pin) => distance(pin, place)));
          expect(nearest).toBeLessThanOrEqual(reachOfPins(spacingFt, bayFt) + 1e-9);
          farthest = Math.max(farthest, nearest);
        }
      }),
      runs,
    );
    // The bound is no looser than the beds ask for: among them some come within a fifth of it.
    expect(farthest).toBeGreaterThan(reachOfPins(spacingFt, bayFt) * 0.8);
  });

  it("has no pin of its rows closer than a third of the spacing to another kind, unless its bays are as narrow", () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { pins, strips, outline, direction } = layOutBed(bed, options);
        const across = outline.ring.points.map(({ x, y }) => y * direction.x - x * direction.y);
        const { bays } = pinGrid(1, Math.max(...across) - Math.min(...across), 4, 6, 12, bayFt);
        // Each strip is pinned between the middles of its overlaps of half a foot.
        const narrowest = Math.min(...strips.map(({ widthFt }) => widthFt - (strips.length > 1 ? 0.5 : 0))) / bays / 2;
        const edge = boundaryOf(outline);
        const isOnEdge = (pin: Point) => edge.some(({ from, to }) => distanceToSegment(from, to, pin) < HAIR_FT);
        const others = pins.filter(({ kind }) => kind !== "row");
        for (const pin of pins.filter(({ kind }) => kind === "row")) {
          const nearest = Math.min(...others.map((other) => distance(pin, other)));
          const least = Math.min(spacingFt / 3, narrowest) - HAIR_FT;
          if (nearest < least) expect(isOnEdge(pin), `${nearest} from another pin`).toBe(true);
        }
      }),
      { numRuns: 200, seed: 11 },
    );
  });

  it("has all its pins in the bed or on its edge, and no two in one place", () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { outline, pins } = layOutBed(bed, options);
        const edge = boundaryOf(outline);
        for (const pin of pins) {
          const isIn = whereLies(outline.ring.points, pin) !== "outside";
          const isOnEdge = () => edge.some(({ from, to }) => distanceToSegment(from, to, pin) < HAIR_FT);
          const isFree = outline.cutOuts.every(({ ring }) => whereLies(ring.points, pin) !== "inside");
          expect((isIn && isFree) || isOnEdge()).toBe(true);
        }
        expect(new Set(pins.map(({ x, y }) => `${x.toFixed(6)} ${y.toFixed(6)}`)).size).toBe(pins.length);
      }),
      fewerRuns,
    );
  });

  it("has no gap over two spacings or a bay along its edge, and none over a spacing along overlaps and cut-outs", () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const layout = layOutBed(bed, options);
        for (const { from, to } of layout.seams) {
          const places = layout.pins
            .filter((pin) => distanceToSegment(from, to, pin) < HAIR_FT)
            .map((pin) => distance(from, pin));
          expect(widest([...places, 0, distance(from, to)])).toBeLessThanOrEqual(spacingFt + HAIR_FT);
        }
        for (const chain of chainsOf(boundaryOf(layout.outline))) {
          const places = layout.pins.flatMap((pin) => placesOnChain(chain, pin));
          const around = [...places, Math.min(...places) + chain.lengthFt];
          const most = chain.ring === 0 ? Math.max(2 * spacingFt, bayFt) : spacingFt;
          expect(widest(chain.closed ? around : places)).toBeLessThanOrEqual(most + HAIR_FT);
        }
      }),
      fewerRuns,
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
      { numRuns: 200, seed: 11 },
    );
  });
});

describe("a small change", { timeout: TIME }, () => {
  it("of one corner by an inch changes the pins by no more than those of its two sides and two, in 999 of 1,000 beds", () => {
    let compared = 0;
    let exceeding = 0;
    fc.assert(
      fc.property(anyStarBed, fc.nat(), fc.double({ min: 0, max: 6.28, noNaN: true }), (bed, which, turn) => {
        if (bed.kind !== "points") throw new Error("the star is given by points");
        const at = which % bed.points.length;
        const inch = { x: Math.cos(turn) / 12, y: Math.sin(turn) / 12 };
        const moved: Bed = {
          ...bed,
          points: bed.points.map((point, i) => (i === at ? { x: point.x + inch.x, y: point.y + inch.y } : point)),
        };
        const [before, after] = [layOutBed(bed, options), layOutBed(moved, options)];
        // Strips that are laid along another side, or one more of them, are another plan, and not the same one changed.
        if (!isSamePlan(before, after)) return;
        compared++;
        const most = Math.max(pinsBeside(before, at), pinsBeside(after, at)) + 2;
        const over = Math.abs(after.counts.pins - before.counts.pins) - most;
        // The one way past it is another row: rows are at equal gaps from end to end, as many as BED.PINS has, so some inch
        // takes one more. That row goes across the whole bed, and so may have more pins than the two sides that moved. Of
        // 150,000 random beds three were past it, by a pin or two, and each of them had another row.
        const oneMore = rowsOf(before) === rowsOf(after) ? 0 : Math.max(mostInRow(before), mostInRow(after));
        expect(over).toBeLessThanOrEqual(oneMore);
        if (over > 0) exceeding++;
      }),
      runs,
    );
    expect(compared).toBeGreaterThan(RANDOM_BEDS * 0.85);
    expect(exceeding).toBeLessThanOrEqual(compared / 1000);
  });

  it("of a rectangle's corners from square to round changes the pins by no more than those of the rounded ends and two", () => {
    fc.assert(
      fc.property(
        anyRectangle,
        fc.integer({ min: 1, max: 4 }),
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        (bed, n, share) => {
          const square = layOutBed(bed, options);
          const cornerRadiusFt = Math.min(bed.lengthFt, bed.widthFt) * share;
          const rounded = layOutBed({ ...bed, cornerRadiusFt, roundedCorners: n }, options);
          const ends = square.pins.filter(({ x, y }) => isNearCorner(bed, cornerRadiusFt, { x, y })).length;
          expect(Math.abs(rounded.counts.pins - square.counts.pins)).toBeLessThanOrEqual(ends + 2);
        },
      ),
      runs,
    );
  });
});

/** Whether two plans lay as many strips in as many cuts along the same side, from the same end. */
function isSamePlan(one: Layout, other: Layout): boolean {
  const begins = ({ cuts }: Layout) => cuts[0]!.corners[0];
  return (
    one.counts.strips === other.counts.strips &&
    one.counts.cuts === other.counts.cuts &&
    Math.abs(rowsOf(one) - rowsOf(other)) <= 1 &&
    distance(begins(one), begins(other)) < 2 &&
    laidAlong(one) === laidAlong(other)
  );
}

/** The corners between which the strips run level or square, such as "2-5", where corners were typed. */
function laidAlong({ bed, direction }: Layout): string {
  const corners = bed.kind === "points" ? bed.points : [];
  const isLaid = (a: Point, b: Point) => {
    const [x, y] = [(b.x - a.x) / distance(a, b), (b.y - a.y) / distance(a, b)];
    return Math.min(Math.abs(x * direction.y - y * direction.x), Math.abs(x * direction.x + y * direction.y)) < 1e-9;
  };
  return corners
    .flatMap((a, i) => corners.slice(i + 1).flatMap((b, k) => (isLaid(a, b) ? `${i}-${i + 1 + k}` : [])))
    .join();
}

/** How far a place is along the strips. */
const along = ({ direction }: Layout, { x, y }: Point) => x * direction.x + y * direction.y;

function rowsOf(layout: Layout): number {
  const places = layout.outline.ring.points.map((point) => along(layout, point));
  return Math.ceil(Math.max(...places) - Math.min(...places));
}

/** The most pins that are in one row across the strips. */
function mostInRow(layout: Layout): number {
  const counts = new Map<string, number>();
  for (const pin of layout.pins) {
    const row = along(layout, pin).toFixed(4);
    counts.set(row, (counts.get(row) ?? 0) + 1);
  }
  return Math.max(...counts.values());
}

/** The pins on the two sides that meet in a corner. */
function pinsBeside({ pins, bed }: Layout, at: number): number {
  if (bed.kind !== "points") throw new Error("only a bed given by points has its sides so");
  const [before, corner, next] = [bed.points.at(at - 1)!, bed.points[at]!, bed.points[(at + 1) % bed.points.length]!];
  const isOn = (pin: Point) =>
    distanceToSegment(before, corner, pin) < 1e-4 || distanceToSegment(corner, next, pin) < 1e-4;
  return pins.filter(isOn).length;
}

const isNearCorner = (bed: { lengthFt: number; widthFt: number }, radius: number, { x, y }: Point): boolean =>
  Math.min(x, bed.lengthFt - x) <= radius + 1e-9 && Math.min(y, bed.widthFt - y) <= radius + 1e-9;

/** The widest gap between places along a line. */
function widest(places: readonly number[]): number {
  const ordered = [...places].sort((a, b) => a - b);
  return ordered.slice(1).reduce((most, at, i) => Math.max(most, at - ordered[i]!), 0);
}

function placesOnChain({ points, along, lengthFt }: Chain, pin: Point): number[] {
  const i = along.findIndex((start, k) => {
    const next = points[(k + 1) % points.length]!;
    return (along[k + 1] ?? lengthFt) > start && distanceToSegment(points[k]!, next, pin) < HAIR_FT;
  });
  return i < 0 ? [] : [along[i]! + distance(points[i]!, pin)];
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
