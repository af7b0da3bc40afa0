import { must } from "../quantities/must";
import type { Point } from "./plane";
import { finitePoint } from "./readMeasure";
import type { Run } from "./runs";

/** The points of a ring as typed, checked and without repeats. */
export const ringPoints = (given: readonly Point[], argument: string): Point[] =>
  withoutRepeats(given.map((point, i) => finitePoint(`point ${i + 1}`, point, argument)));

/** The points without those that repeat the one before, or at the end the first. */
export function withoutRepeats(points: readonly Point[]): Point[] {
  const kept = points.filter((point, i) => i === 0 || !same(point, must(points[i - 1])));
  while (kept.length > 1 && same(must(kept.at(-1)), must(kept[0]))) kept.pop();
  return kept;
}

/** The straight sides of a ring: side n runs from point n to the next, the last one back to the first. */
export const straightRuns = (points: readonly Point[], border: boolean): Run[] =>
  points.map((from, i) => ({ kind: "straight", side: i + 1, from, to: must(points[(i + 1) % points.length]), border }));

const same = (a: Point, b: Point): boolean => a.x === b.x && a.y === b.y;
