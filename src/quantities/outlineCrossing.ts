import { must } from "./must";
import type { Point } from "./outline";

interface Side {
  readonly place: number;
  readonly from: Point;
  readonly to: Point;
  readonly left: number;
  readonly right: number;
}

/**
 * The first two sides of a closed outline that cross, touch, or run back over each other. Neighbors meet in
 * their common corner, which is no crossing.
 *
 * @param corners in order, at least 3, none the same as the next.
 * @returns the places of two sides, counted from 0, lower first (side i runs from corner i to the next); or
 *   undefined where the outline is sound.
 * @example firstCrossing([[0, 0], [2, 2], [2, 0], [0, 2]]) // [0, 2]
 */
export function firstCrossing(corners: readonly Point[]): readonly [number, number] | undefined {
  const sides = corners.map((from, place): Side => {
    const to = must(corners[(place + 1) % corners.length]);
    return { place, from, to, left: Math.min(from[0], to[0]), right: Math.max(from[0], to[0]) };
  });
  // Left to right: only sides that overlap from left to right can meet, so most pairs are never looked at.
  sides.sort((a, b) => a.left - b.left);
  let first: readonly [number, number] | undefined;
  for (let i = 0; i < sides.length; i++) {
    const one = must(sides[i]);
    for (let j = i + 1; j < sides.length; j++) {
      const other = must(sides[j]);
      if (other.left > one.right) break;
      if (!clash(one, other, sides.length)) continue;
      const pair = [Math.min(one.place, other.place), Math.max(one.place, other.place)] as const;
      if (!first || pair[0] < first[0] || (pair[0] === first[0] && pair[1] < first[1])) first = pair;
    }
  }
  return first;
}

function clash(one: Side, other: Side, count: number): boolean {
  if ((one.place + 1) % count === other.place) return runsBack(one.from, one.to, other.to);
  if ((other.place + 1) % count === one.place) return runsBack(other.from, other.to, one.to);
  return meet(one.from, one.to, other.from, other.to);
}

/** Whether the way from a over b to c turns back on itself at b. */
function runsBack(a: Point, b: Point, c: Point): boolean {
  return turn(a, b, c) === 0 && (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) < 0;
}

/** Whether the stretch from a to b has a point in common with the stretch from c to d. */
function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  if (Math.max(a[1], b[1]) < Math.min(c[1], d[1]) || Math.max(c[1], d[1]) < Math.min(a[1], b[1])) return false;
  return turn(a, b, c) * turn(a, b, d) <= 0 && turn(c, d, a) * turn(c, d, b) <= 0;
}

/** Which way c lies from the line a to b: 1 to the left, −1 to the right, 0 on it. */
function turn(a: Point, b: Point, c: Point): number {
  return Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
}
