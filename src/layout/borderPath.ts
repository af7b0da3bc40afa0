import { must } from "../quantities/must";
import { isCorner, type Ring } from "./outline";
import { type Point, SAME_FT } from "./plane";
import { flattened, heading, headingAt, pointOnRun, type Run, reversed, runLength } from "./runs";

/** A way along which border is set without a break. */
export interface BorderPath {
  readonly runs: readonly Run[];
  readonly closed: boolean;
  readonly lengthFt: number;
}

/**
 * The ways along a ring that get border, each as long as its sides follow one another. They run with the bed on
 * their right: along the front of a bed from left to right, as the plan is read.
 */
export function borderPaths(ring: Ring): BorderPath[] {
  const runs = ring.runs.map(reversed).reverse();
  if (runs.every(({ border }) => border)) return [pathOf(runs, true)];
  const firstBare = runs.findIndex(({ border }) => !border);
  const fromBare = [...runs.slice(firstBare), ...runs.slice(0, firstBare)];
  const groups: Run[][] = [];
  fromBare.forEach((run, i) => {
    if (!run.border) return;
    if (fromBare[i - 1]?.border) must(groups.at(-1)).push(run);
    else groups.push([run]);
  });
  return groups.map((group) => pathOf(group, false));
}

const pathOf = (runs: readonly Run[], closed: boolean): BorderPath => ({
  runs,
  closed,
  lengthFt: runs.reduce((sum, run) => sum + runLength(run), 0),
});

/**
 * A place on the border, and the way out of the bed from there. It is a unit vector along a side; at a corner it is as
 * long as the corner of a band of width 1 lies out, so that marks set off along it keep clear of both sides.
 */
export interface BorderMark extends Point {
  readonly outward: Point;
}

/** How far out a corner's mark may go: that of a right angle and a little more. */
const MOST_MITER = 1.5;

/** The place so many feet along; past the end of a closed way it goes on from the start. */
export function markOnPath({ runs, closed, lengthFt }: BorderPath, at: number): BorderMark {
  let left = closed && at > lengthFt ? at - lengthFt : at;
  const place = runs.findIndex((run) => {
    const length = runLength(run);
    if (left <= length + SAME_FT) return true;
    left -= length;
    return false;
  });
  const here = place < 0 ? runs.length - 1 : place;
  const run = must(runs[here]);
  const length = runLength(run);
  const along = place < 0 ? length : Math.min(left, length);
  const next = runs[here + 1] ?? (closed ? runs[0] : undefined);
  const before = runs[here - 1] ?? (closed ? runs.at(-1) : undefined);
  const outward =
    along > length - SAME_FT && next
      ? cornerOut(heading(run, true), heading(next, false))
      : along < SAME_FT && before
        ? cornerOut(heading(before, true), heading(run, false))
        : outOf(headingAt(run, along));
  return { ...pointOnRun(run, along), outward };
}

/** The bed lies to the right of its border, so that out is to the left. */
const outOf = ({ x, y }: Point): Point => ({ x: -y, y: x });

function cornerOut(inward: Point, onward: Point): Point {
  const [a, b] = [outOf(inward), outOf(onward)];
  const sum = { x: a.x + b.x, y: a.y + b.y };
  const squared = sum.x ** 2 + sum.y ** 2;
  // The miter of two unit vectors is 2·sum/|sum|²; its length 2/|sum| is held to the limit.
  const scale = Math.min(2 / squared, MOST_MITER / Math.sqrt(squared));
  return squared < SAME_FT ? a : { x: sum.x * scale, y: sum.y * scale };
}

function pointOnPath(path: BorderPath, at: number): Point {
  const { x, y } = markOnPath(path, at);
  return { x, y };
}

/** The way from one place to another as straight pieces, for drawing. */
export function stretchOfPath(path: BorderPath, from: number, to: number): Point[] {
  const points = [pointOnPath(path, from)];
  let start = 0;
  for (const run of path.closed ? [...path.runs, ...path.runs] : path.runs) {
    const length = runLength(run);
    const chords = flattened(run);
    chords.forEach((point, i) => {
      const at = start + (length * i) / chords.length;
      if (at > from && at < to) points.push(point);
    });
    start += length;
  }
  points.push(pointOnPath(path, to));
  return points;
}

/** Where along the path it turns a corner sharp enough for a stake of its own. */
export function cornersOfPath({ runs, closed }: BorderPath): number[] {
  let at = 0;
  return runs.flatMap((run, i) => {
    const here = at;
    at += runLength(run);
    const before = i > 0 ? runs[i - 1] : closed ? runs.at(-1) : undefined;
    if (!before) return [];
    const [inward, outward] = [heading(before, true), heading(run, false)];
    const origin = { x: 0, y: 0 };
    return isCorner({ x: -inward.x, y: -inward.y }, origin, outward) ? [here] : [];
  });
}
