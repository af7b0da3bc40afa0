import { must } from "../quantities/must";
import { between, distance, type Point } from "./plane";

/** One piece of an outline as it was measured: a straight side, or an arc (a rounded corner, a circle). */
export type Run = StraightRun | ArcRun;

interface RunBasics {
  /** The side's number as in the drawing, from 1; a rounded corner has none. */
  readonly side?: number;
  /** Border is set along it. */
  readonly border: boolean;
}

export interface StraightRun extends RunBasics {
  readonly kind: "straight";
  readonly from: Point;
  readonly to: Point;
}

export interface ArcRun extends RunBasics {
  readonly kind: "arc";
  readonly center: Point;
  readonly radius: number;
  /** Radians, counterclockwise from the x axis. */
  readonly startAngle: number;
  /** Radians; below 0 for an arc that runs clockwise. */
  readonly sweep: number;
}

/**
 * An arc is drawn as chords of at most 2°. A full circle of such chords encloses sin(2°)/(2° in radians) of its
 * area, 0.02 % too little; and as 2° divides 90°, its four farthest points are exact.
 */
export const CHORD_RADIANS = Math.PI / 90;

export const runLength = (run: Run): number =>
  run.kind === "straight" ? distance(run.from, run.to) : run.radius * Math.abs(run.sweep);

/** The point that lies `along` feet from the start of the run. */
export function pointOnRun(run: Run, along: number): Point {
  const length = runLength(run);
  const share = length === 0 ? 0 : along / length;
  if (run.kind === "straight") return between(run.from, run.to, share);
  return onCircle(run, run.startAngle + run.sweep * share);
}

export const runEnd = (run: Run): Point =>
  run.kind === "straight" ? run.to : onCircle(run, run.startAngle + run.sweep);

/** The direction of the run so many feet along, as a unit vector. */
export function headingAt(run: Run, along: number): Point {
  const length = runLength(run);
  if (run.kind === "straight") return { x: (run.to.x - run.from.x) / length, y: (run.to.y - run.from.y) / length };
  const angle = run.startAngle + (run.sweep * along) / length + (Math.sign(run.sweep) * Math.PI) / 2;
  return { x: Math.cos(angle), y: Math.sin(angle) };
}

/** The direction in which the run leaves its start, or with `atEnd` reaches its end, as a unit vector. */
export const heading = (run: Run, atEnd: boolean): Point => headingAt(run, atEnd ? runLength(run) : 0);

/** The run as straight pieces: its points in order, without the last one. */
export function flattened(run: Run): Point[] {
  if (run.kind === "straight") return [run.from];
  const chords = Math.max(1, Math.ceil(Math.abs(run.sweep) / CHORD_RADIANS - 1e-9));
  return Array.from({ length: chords }, (_, i) => onCircle(run, run.startAngle + (run.sweep * i) / chords));
}

/**
 * What the run adds to the area it helps to enclose: half the sum of x·dy − y·dx along it (Green's theorem), exact
 * for arcs too.
 */
export function runArea(run: Run): number {
  if (run.kind === "straight") return (run.from.x * run.to.y - run.to.x * run.from.y) / 2;
  const { center, radius, startAngle, sweep } = run;
  const end = startAngle + sweep;
  return (
    (radius *
      (radius * sweep +
        center.x * (Math.sin(end) - Math.sin(startAngle)) -
        center.y * (Math.cos(end) - Math.cos(startAngle)))) /
    2
  );
}

/** The same run walked the other way. */
export function reversed(run: Run): Run {
  return run.kind === "straight"
    ? { ...run, from: run.to, to: run.from }
    : { ...run, startAngle: run.startAngle + run.sweep, sweep: -run.sweep };
}

function onCircle({ center, radius }: ArcRun, angle: number): Point {
  const quarters = angle / (Math.PI / 2);
  const nearest = Math.round(quarters);
  // The four farthest points of a circle are exact, so that a round bed is exactly as wide as it was taped.
  if (Math.abs(quarters - nearest) < 1e-9) {
    const [x, y] = must(QUARTERS[((nearest % 4) + 4) % 4]);
    return { x: center.x + radius * x, y: center.y + radius * y };
  }
  return { x: center.x + radius * Math.cos(angle), y: center.y + radius * Math.sin(angle) };
}

const QUARTERS: readonly (readonly [number, number])[] = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
];
