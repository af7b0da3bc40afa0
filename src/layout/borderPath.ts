import { isCorner, type Ring } from "./outline";
import type { Point } from "./plane";
import { flattened, heading, pointOnRun, type Run, runEnd, runLength } from "./runs";

/** A way along which border is set without a break. */
export interface BorderPath {
  readonly runs: readonly Run[];
  readonly closed: boolean;
  readonly lengthFt: number;
}

/** The ways along a ring that get border, each as long as its sides follow one another. */
export function borderPaths({ runs }: Ring): BorderPath[] {
  if (runs.every(({ border }) => border)) return [pathOf(runs, true)];
  const firstBare = runs.findIndex(({ border }) => !border);
  const fromBare = [...runs.slice(firstBare), ...runs.slice(0, firstBare)];
  const groups: Run[][] = [];
  fromBare.forEach((run, i) => {
    if (!run.border) return;
    if (fromBare[i - 1]?.border) groups.at(-1)!.push(run);
    else groups.push([run]);
  });
  return groups.map((group) => pathOf(group, false));
}

const pathOf = (runs: readonly Run[], closed: boolean): BorderPath => ({
  runs,
  closed,
  lengthFt: runs.reduce((sum, run) => sum + runLength(run), 0),
});

/** The point so many feet along; past the end of a closed way it goes on from the start. */
export function pointOnPath({ runs, closed, lengthFt }: BorderPath, at: number): Point {
  let left = closed && at > lengthFt ? at - lengthFt : at;
  for (const run of runs) {
    const length = runLength(run);
    if (left <= length) return pointOnRun(run, left);
    left -= length;
  }
  return runEnd(runs.at(-1)!);
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
