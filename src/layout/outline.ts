import { cross, distance, type Point, SAME_FT } from "./plane";
import { flattened, type Run, reversed, runArea, runLength } from "./runs";

/** A closed line in plan: as measured (runs), and as straight pieces between points. */
export interface Ring {
  readonly runs: readonly Run[];
  readonly points: readonly Point[];
  /** For each straight piece, from points[i] to points[i + 1], the number of the run that it belongs to. */
  readonly runOf: readonly number[];
}

/** What is in the bed and gets no fabric and no stone: a meter pad, a plant, a post. */
export interface OutlineCutOut {
  readonly name: string;
  readonly ring: Ring;
}

/** A bed in plan. The outer ring runs counterclockwise and cut-outs clockwise: the bed lies to the left of both. */
export interface Outline {
  readonly ring: Ring;
  readonly cutOuts: readonly OutlineCutOut[];
}

/**
 * A ring from its runs, each starting where the one before ends.
 * @param turn 1 for counterclockwise (a bed), -1 for clockwise (a cut-out); the runs are turned round as needed.
 */
export function ringOf(runs: readonly Run[], turn: 1 | -1): Ring {
  const kept = runs.filter((run) => runLength(run) > SAME_FT);
  const area = kept.reduce((sum, run) => sum + runArea(run), 0);
  const ordered = Math.sign(area) === -turn ? kept.map(reversed).reverse() : kept;
  const points: Point[] = [];
  const runOf: number[] = [];
  ordered.forEach((run, index) => {
    for (const point of flattened(run)) {
      points.push(point);
      runOf.push(index);
    }
  });
  return { runs: ordered, points, runOf };
}

/** All rings of an outline: the outer one, then the cut-outs. */
export const ringsOf = (outline: Outline): Ring[] => [outline.ring, ...outline.cutOuts.map(({ ring }) => ring)];

/** Square feet that the ring encloses, from the runs as measured; always above 0. */
export const ringArea = (ring: Ring): number => Math.abs(ring.runs.reduce((sum, run) => sum + runArea(run), 0));

/** Feet round the ring, along the runs as measured. */
export const ringLength = (ring: Ring): number => ring.runs.reduce((sum, run) => sum + runLength(run), 0);

export const netArea = (outline: Outline): number =>
  outline.cutOuts.reduce((area, cutOut) => area - ringArea(cutOut.ring), ringArea(outline.ring));

/**
 * A turn sharper than this is a corner, which gets a pin of its own, and a stake where border is set; a softer
 * one is a bend. Common practice: edging is bent by hand up to about this much.
 */
export const CORNER_DEGREES = 30;
const CORNER_SINE = Math.sin((CORNER_DEGREES * Math.PI) / 180);

/** Whether the way from a by b to c has a corner at b. */
export function isCorner(a: Point, b: Point, c: Point): boolean {
  const lengths = distance(a, b) * distance(b, c);
  const ahead = (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y);
  return ahead <= 0 || Math.abs(cross(a, b, c)) > lengths * CORNER_SINE;
}
