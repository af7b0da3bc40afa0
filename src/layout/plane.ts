import { must } from "../quantities/must";

/** A place in plan, in feet. x runs along the base line or house side, y square to it, away from the house. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Lengths in feet closer than this are the same: far below what a tape shows, far above binary noise. */
export const SAME_FT = 1e-6;

// Math.hypot would guard against overflow that no bed comes near, at several times the cost.
export const distance = (a: Point, b: Point): number => Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);

/** The point this share of the way from a to b. */
export const between = (a: Point, b: Point, share: number): Point => ({
  x: a.x + (b.x - a.x) * share,
  y: a.y + (b.y - a.y) * share,
});

/** Twice the area of the triangle a, b, c: above 0 where c lies to the left of the way from a to b. */
export const cross = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** The area a ring of points encloses, above 0 where it runs counterclockwise (shoelace formula). */
export function signedArea(ring: readonly Point[]): number {
  // Measured from the first point, so that a bed far from its zero point loses no digits.
  const origin = ring[0];
  if (!origin) return 0;
  let twice = 0;
  for (let i = 1; i + 1 < ring.length; i++) twice += cross(origin, must(ring[i]), must(ring[i + 1]));
  return twice / 2;
}

export interface Bounds {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/** The upright rectangle round some points. */
export function boundsOf(points: readonly Point[]): Bounds {
  let [minX, maxX, minY, maxY] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    minX = Math.min(minX, x);
    maxX = Math.max(maxX, x);
    minY = Math.min(minY, y);
    maxY = Math.max(maxY, y);
  }
  return { minX, maxX, minY, maxY };
}

/**
 * The sheet of paper turned so that strips lie level: u along the direction of laying, v across it. Points go
 * in with `toFrame`, and come back with `toPlan`. A flip mirrors an axis, so that "from the low side, from the
 * left" covers all four ways to start.
 */
export interface Frame {
  readonly along: Point;
  readonly flipU: 1 | -1;
  readonly flipV: 1 | -1;
}

export const toFrame = ({ along, flipU, flipV }: Frame, { x, y }: Point): Point => ({
  x: flipU * (x * along.x + y * along.y),
  y: flipV * (y * along.x - x * along.y),
});

export const toPlan = ({ along, flipU, flipV }: Frame, { x, y }: Point): Point => ({
  x: flipU * x * along.x - flipV * y * along.y,
  y: flipU * x * along.y + flipV * y * along.x,
});
