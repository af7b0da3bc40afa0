import { must } from "../quantities/must";
import type { Segment } from "./boundary";
import { isCorner } from "./outline";
import { distance, type Point, SAME_FT } from "./plane";

/** A stretch of the bed's edge without a break: a whole ring, or part of one that a cut-out stands against. */
export interface Chain {
  /** 0 for the outer ring, n for the nth cut-out. */
  readonly ring: number;
  readonly closed: boolean;
  readonly points: readonly Point[];
  /** For each point, how far it is along the chain, in feet. */
  readonly along: readonly number[];
  readonly lengthFt: number;
}

/** The bed's edge as chains, in order. */
export function chainsOf(boundary: readonly Segment[]): Chain[] {
  const rings = new Map<number, Segment[]>();
  for (const segment of boundary) rings.set(segment.ring, [...(rings.get(segment.ring) ?? []), segment]);
  return [...rings.values()].flatMap(chainsOfRing);
}

/** The point so far along the chain. */
export function pointAlong({ points, along, lengthFt }: Chain, at: number): Point {
  let i = along.findLastIndex((start) => start <= at);
  if (i < 0) i = 0;
  const [a, b] = [must(points[i]), must(points[(i + 1) % points.length])];
  const end = along[i + 1] ?? lengthFt;
  const share = end > must(along[i]) ? (at - must(along[i])) / (end - must(along[i])) : 0;
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

/** Where along the chain its corners are; the ends of an open chain are corners. */
export function cornersOf({ points, along, closed }: Chain): number[] {
  const count = points.length;
  return along.filter((_, i) => {
    if (!closed && (i === 0 || i === count - 1)) return true;
    return isCorner(must(points[(i + count - 1) % count]), must(points[i]), must(points[(i + 1) % count]));
  });
}

function chainsOfRing(segments: Segment[]): Chain[] {
  const breaks = segments.flatMap(({ from }, i) => (distance(must(segments.at(i - 1)).to, from) > SAME_FT ? [i] : []));
  if (breaks.length === 0) return [chainThrough(segments, true)];
  return breaks.map((start, i) => {
    const end = breaks[i + 1] ?? must(breaks[0]) + segments.length;
    const part = Array.from({ length: end - start }, (_, k) => must(segments[(start + k) % segments.length]));
    return chainThrough(part, false);
  });
}

function chainThrough(segments: readonly Segment[], closed: boolean): Chain {
  const points = segments.map(({ from }) => from);
  if (!closed) points.push(must(segments.at(-1)).to);
  const along: number[] = [];
  let lengthFt = 0;
  for (const { from, to } of segments) {
    along.push(lengthFt);
    lengthFt += distance(from, to);
  }
  if (!closed) along.push(lengthFt);
  return { ring: must(segments[0]).ring, closed, points, along, lengthFt };
}
