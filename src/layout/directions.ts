import { must } from "../quantities/must";
import { WHOLE_TOLERANCE } from "../quantities/whole";
import type { Outline, Ring } from "./outline";
import { boundsOf, cross, distance, type Point } from "./plane";

/** Directions nearer to one another than this, in radians, are one, and the difference binary noise. */
const SAME_DIRECTION = 1e-9;

/**
 * More directions of sides than this are those of a curve that was traced point by point. Of so many, as many are
 * looked at as lie evenly round, 3° apart: common practice.
 */
export const MOST_SIDES = 60;

/**
 * Directions in which strips may lie, as unit vectors: along the bed, which is the longer side of the smallest rectangle
 * that encloses it; then along its straight sides, longest first, and across it. Opposite directions are one. Of a bed with very many sides, the
 * longest in each few degrees stands for those beside it.
 */
export function directionsOf(outline: Outline): Point[] {
  const sides = outline.ring.runs
    .flatMap((run) => (run.kind === "straight" ? [[run.from, run.to] as const] : []))
    .sort(([a, b], [c, d]) => distance(c, d) - distance(a, b));
  const ofSides = distinct(sides.map(([a, b]) => unit(a, b)));
  const boxes = smallestRectangles(outline.ring);
  const across = boxes.map(({ x, y }) => ({ x: -y, y: x }));
  return distinct([...boxes, ...(ofSides.length > MOST_SIDES ? spread(ofSides) : ofSides), ...across]);
}

/** The first in each of as many equal parts of the half turn as directions may be looked at. */
function spread(directions: readonly Point[]): Point[] {
  const taken = new Set<number>();
  return directions.filter(({ x, y }) => {
    const part = Math.floor((Math.atan2(y, x) / Math.PI) * MOST_SIDES) % MOST_SIDES;
    if (taken.has(part)) return false;
    taken.add(part);
    return true;
  });
}

/** Each direction once, turned upward; the first of those that are the same stays. */
function distinct(given: readonly Point[]): Point[] {
  const found: Point[] = [];
  const directions = new Set<number>();
  for (const direction of given) {
    const downward = direction.y < 0 || (direction.y === 0 && direction.x < 0);
    const sign = downward ? -1 : 1;
    // + 0 keeps a -0 from turning up as one.
    const kept = { x: sign * direction.x + 0, y: sign * direction.y + 0 };
    const turns = Math.round(Math.atan2(kept.y, kept.x) / SAME_DIRECTION);
    const half = Math.round(Math.PI / SAME_DIRECTION);
    const key = turns % half;
    if ([key - 1, key, key + 1].some((near) => directions.has((near + half) % half))) continue;
    directions.add(key);
    found.push(kept);
  }
  return found;
}

/** The unit vector of a direction in degrees; exact for the four quarters. */
export function directionAt(degrees: number): Point {
  const quarter = (((degrees / 90) % 4) + 4) % 4;
  if (Number.isInteger(quarter)) return must([EAST, NORTH, WEST, SOUTH][quarter]);
  const radians = (degrees * Math.PI) / 180;
  return { x: Math.cos(radians), y: Math.sin(radians) };
}

const EAST = { x: 1, y: 0 };
const NORTH = { x: 0, y: 1 };
const WEST = { x: -1, y: 0 };
const SOUTH = { x: 0, y: -1 };

function unit(a: Point, b: Point): Point {
  const length = distance(a, b);
  return { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
}

/**
 * The directions of the longer sides of the smallest rectangles round a ring: several where they are equally small, as
 * round a triangle, the longest first. Such a rectangle has a side along one side of the convex hull (H. Freeman and R. Shapira, 1975;
 * from memory). Chords of an arc do not count as sides, since they only stand for it: a round bed keeps the direction
 * of its base line.
 */
function smallestRectangles({ points, runs, runOf }: Ring): Point[] {
  const hull = convexHull(points);
  const placeOf = new Map(points.map((point, place) => [point, place]));
  const isChord = (a: Point, b: Point) => {
    const place = must(placeOf.get(a));
    return must(runs[must(runOf[place])]).kind === "arc" && placeOf.get(b) === (place + 1) % points.length;
  };
  const boxes = hull.flatMap((a, i) => {
    const b = must(hull[(i + 1) % hull.length]);
    if (isChord(a, b)) return [];
    const direction = unit(a, b);
    const level = hull.map(({ x, y }) => ({
      x: x * direction.x + y * direction.y,
      y: y * direction.x - x * direction.y,
    }));
    const { minX, maxX, minY, maxY } = boundsOf(level);
    const [length, width] = [maxX - minX, maxY - minY];
    const longFt = Math.max(length, width);
    return [{ area: length * width, longFt, along: length >= width ? direction : { x: -direction.y, y: direction.x } }];
  });
  const smallest = Math.min(...boxes.map(({ area }) => area));
  const found = boxes
    .filter(({ area }) => area <= smallest * (1 + WHOLE_TOLERANCE))
    .sort((a, b) => b.longFt - a.longFt)
    .map(({ along }) => along);
  return found.length > 0 ? found : [EAST];
}

/** The convex hull, counterclockwise (A. M. Andrew's monotone chain, 1979; from memory). */
function convexHull(points: readonly Point[]): Point[] {
  const ordered = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const half = (sequence: readonly Point[]) => {
    const chain: Point[] = [];
    for (const point of sequence) {
      while (chain.length > 1 && cross(must(chain.at(-2)), must(chain.at(-1)), point) <= 0) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(ordered), ...half(ordered.reverse())];
}
