import { must } from "../quantities/must";
import { type Outline, type Ring, ringsOf } from "./outline";
import { type Bounds, between, boundsOf, cross, distance, type Point, SAME_FT } from "./plane";

/** A straight piece of the bed's real edge, with the bed on its left. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
  /** 0 for the outer ring, n for the nth cut-out. */
  readonly ring: number;
  /** Number of the run that it is part of, within its ring. */
  readonly run: number;
  /** The run is an arc, and this one of its chords. */
  readonly curved: boolean;
}

/** A piece of a ring's edge between the places where other rings meet it, and where it lies to the others. */
export interface Piece extends Segment {
  /** How it lies to another ring: on its line, within it, or outside it. */
  readonly lies: (other: number) => "on" | "inside" | "outside";
}

/**
 * The real edge of the bed: the rings less the stretches that two of them share. A meter pad that stands against
 * the house wall leaves no bed edge there.
 */
export function boundaryOf(outline: Outline): Segment[] {
  const rings = ringsOf(outline);
  return piecesOf(rings)
    .filter((piece) => rings.every((_, other) => other === piece.ring || piece.lies(other) !== "on"))
    .map(({ from, to, ring, run, curved }) => ({ from, to, ring, run, curved }));
}

/** Every ring's edge in order, cut where another ring meets it. */
export function piecesOf(rings: readonly Ring[]): Piece[] {
  const bounds = rings.map((ring) => boundsOf(ring.points));
  return rings.flatMap(({ points, runOf, runs }, ring) =>
    points.flatMap((from, i) => {
      const to = must(points[(i + 1) % points.length]);
      const near = rings.filter((_, other) => other !== ring && overlaps(boundsOf([from, to]), must(bounds[other])));
      return cutWhereMet(from, to, near).map(([start, end]) => {
        const middle = between(start, end, 0.5);
        const lies = (other: number) => {
          if (!near.includes(must(rings[other]))) return "outside" as const;
          return whereLies(must(rings[other]).points, middle);
        };
        const run = must(runOf[i]);
        return { from: start, to: end, ring, run, curved: must(runs[run]).kind === "arc", lies };
      });
    }),
  );
}

/** Whether the point lies on a ring's line (as near as a tape shows), within it, or outside. */
export function whereLies(ring: readonly Point[], point: Point): "on" | "inside" | "outside" {
  let inside = false;
  for (let i = 0; i < ring.length; i++) {
    const [a, b] = [must(ring[i]), must(ring[(i + 1) % ring.length])];
    if (isOn(a, b, point)) return "on";
    if (a.y > point.y !== b.y > point.y && point.x < a.x + ((point.y - a.y) / (b.y - a.y)) * (b.x - a.x))
      inside = !inside;
  }
  return inside ? "inside" : "outside";
}

/** Whether the point lies on the straight piece a to b, as near as a tape shows. */
export function isOn(a: Point, b: Point, point: Point): boolean {
  // Rules out most pieces before the costlier distance is measured.
  const isNear = (from: number, to: number, at: number) =>
    at >= Math.min(from, to) - SAME_FT && at <= Math.max(from, to) + SAME_FT;
  return isNear(a.x, b.x, point.x) && isNear(a.y, b.y, point.y) && distanceToSegment(a, b, point) <= SAME_FT;
}

/** Feet from the nearest point of the straight piece a to b. */
export function distanceToSegment(a: Point, b: Point, point: Point): number {
  const squared = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
  const share = squared === 0 ? 0 : ((point.x - a.x) * (b.x - a.x) + (point.y - a.y) * (b.y - a.y)) / squared;
  return distance(point, between(a, b, Math.min(1, Math.max(0, share))));
}

function cutWhereMet(from: Point, to: Point, others: readonly Ring[]): [Point, Point][] {
  const length = distance(from, to);
  const reach = boundsOf([from, to]);
  const shares = [0, 1];
  for (const { points } of others) {
    points.forEach((a, i) => {
      const b = must(points[(i + 1) % points.length]);
      if (!overlaps(reach, boundsOf([a, b]))) return;
      for (const share of meetings(from, to, a, b)) if (share > 0 && share < 1) shares.push(share);
    });
  }
  shares.sort((a, b) => a - b);
  const pieces: [Point, Point][] = [];
  let start = 0;
  for (const share of shares) {
    // Pieces shorter than a tape shows are left to their neighbor.
    if (share < 1 && ((share - start) * length <= SAME_FT || (1 - share) * length <= SAME_FT)) continue;
    pieces.push([start === 0 ? from : between(from, to, start), share === 1 ? to : between(from, to, share)]);
    start = share;
    if (share === 1) break;
  }
  return pieces;
}

/** Where along from–to (as shares of it) the piece a–b meets it: a crossing, or the ends of a common stretch. */
function meetings(from: Point, to: Point, a: Point, b: Point): number[] {
  const length = distance(from, to);
  const offA = cross(from, to, a) / length;
  const offB = cross(from, to, b) / length;
  const shareOf = (p: Point) => ((p.x - from.x) * (to.x - from.x) + (p.y - from.y) * (to.y - from.y)) / length ** 2;
  const touching = [a, b].filter((_, i) => Math.abs(i === 0 ? offA : offB) <= SAME_FT).map(shareOf);
  if (touching.length > 0 || offA > 0 === offB > 0) return touching;
  const meeting = between(a, b, offA / (offA - offB));
  return [shareOf(meeting)];
}

const overlaps = (one: Bounds, other: Bounds): boolean =>
  one.minX <= other.maxX + SAME_FT &&
  other.minX <= one.maxX + SAME_FT &&
  one.minY <= other.maxY + SAME_FT &&
  other.minY <= one.maxY + SAME_FT;
