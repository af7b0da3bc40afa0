/*
 * What the counting needs of a polygon library is only where level strips and lines cross a bed, and that is short. It
 * loads with the worksheet functions, whose file has 25 kB for everything; the smallest library found takes 6 to 10 kB
 * of it packed, and Clipper 13. So Clipper clips the shapes that are drawn (shapes.ts), and the tests hold the two
 * against one another.
 */
import { must } from "../quantities/must";
import type { Segment } from "./boundary";
import { SAME_FT } from "./plane";

/** A stretch along a line, in feet from the line's zero. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The parts that two lists of stretches have in common; both in order and without overlaps. */
export function inBoth(one: readonly Stretch[], other: readonly Stretch[]): Stretch[] {
  return one.flatMap((a) =>
    other
      .map((b) => ({ from: Math.max(a.from, b.from), to: Math.min(a.to, b.to) }))
      .filter(({ from, to }) => to - from > SAME_FT),
  );
}

/** The stretches in order, joined where they overlap or touch. */
export function joined(stretches: readonly Stretch[]): Stretch[] {
  const result: Stretch[] = [];
  for (const { from, to } of [...stretches].sort((a, b) => a.from - b.from)) {
    const last = result.at(-1);
    if (last && from <= last.to + SAME_FT) result[result.length - 1] = { from: last.from, to: Math.max(last.to, to) };
    else result.push({ from, to });
  }
  return result;
}

/**
 * Where a line crosses the bed: the level line y = at, or with `upright` the line x = at.
 *
 * @param boundary the bed's real edge, in the frame in which the line is level or upright.
 */
export function crossings(boundary: readonly Segment[], at: number, upright = false): Stretch[] {
  const meetings: number[] = [];
  for (const { from, to } of boundary) {
    const [a, b] = upright ? [from.x, to.x] : [from.y, to.y];
    // A point on the line counts as above it, so that every crossing counts once.
    if (a > at === b > at) continue;
    const [c, d] = upright ? [from.y, to.y] : [from.x, to.x];
    meetings.push(c + ((at - a) / (b - a)) * (d - c));
  }
  meetings.sort((a, b) => a - b);
  const stretches: Stretch[] = [];
  for (let i = 0; i + 1 < meetings.length; i += 2) {
    const [from, to] = [must(meetings[i]), must(meetings[i + 1])];
    if (to - from > SAME_FT) stretches.push({ from, to });
  }
  return stretches;
}

/**
 * Where, along x, any of the bed lies between two levels.
 *
 * Wherever the bed's edge runs between the levels there is bed; between such places either all of the band is bed
 * or none, and one look at its middle tells.
 */
export function occupied(boundary: readonly Segment[], low: number, high: number): Stretch[] {
  const edges: Stretch[] = [];
  for (const { from, to } of boundary) {
    const rise = to.y - from.y;
    if (Math.max(from.y, to.y) <= low || Math.min(from.y, to.y) >= high) continue;
    const atLevel = (level: number) => from.x + ((level - from.y) / rise) * (to.x - from.x);
    const clipped = (x: number, y: number) => (y < low ? atLevel(low) : y > high ? atLevel(high) : x);
    const [a, b] = [clipped(from.x, from.y), clipped(to.x, to.y)];
    edges.push({ from: Math.min(a, b), to: Math.max(a, b) });
  }
  const alongEdges = joined(edges);
  const full: Stretch[] = [];
  const middle = crossings(boundary, (low + high) / 2);
  for (let i = 0; i + 1 < alongEdges.length; i++) {
    const gap = { from: must(alongEdges[i]).to, to: must(alongEdges[i + 1]).from };
    const center = (gap.from + gap.to) / 2;
    if (middle.some(({ from, to }) => from < center && center < to)) full.push(gap);
  }
  return joined([...alongEdges, ...full]).filter(({ from, to }) => to - from > SAME_FT);
}

/**
 * Square feet of bed between two levels and two places along them: the sum of x·dy along the bed's edge (Green's
 * theorem), with what lies beyond pressed onto the window's rim, where it encloses nothing.
 */
export function areaWithin(boundary: readonly Segment[], low: number, high: number, along: Stretch): number {
  let area = 0;
  for (const { from, to } of boundary) {
    const rise = to.y - from.y;
    if (rise === 0) continue;
    const xAt = (y: number) => from.x + ((y - from.y) / rise) * (to.x - from.x);
    const [bottom, top] = [Math.min(from.y, to.y), Math.max(from.y, to.y)];
    const [y0, y1] = [Math.max(bottom, low), Math.min(top, high)];
    if (y1 <= y0) continue;
    area += Math.sign(rise) * pressedWidth(xAt(y0), xAt(y1), along) * (y1 - y0);
  }
  return Math.abs(area);
}

/** The mean of x from a to b, with x kept within the stretch. */
function pressedWidth(a: number, b: number, { from, to }: Stretch): number {
  const kept = (x: number) => Math.min(to, Math.max(from, x));
  if (Math.abs(b - a) < SAME_FT) return kept((a + b) / 2) - from;
  // The area under x pressed to the stretch is a half square within it and a straight strip beyond it.
  const under = (x: number) => (kept(x) - from) ** 2 / 2 + Math.max(0, x - to) * (to - from);
  return (under(b) - under(a)) / (b - a);
}
