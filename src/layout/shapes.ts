import { ClipType, FillRule, type PathsD, PathType } from "clipper2-ts/dist/Core.js";
// The engine alone: the library's front door brings offsetting and triangulation along, at twice the size.
import { ClipperD } from "clipper2-ts/dist/Engine.js";
import { must } from "../quantities/must";
import type { FabricCut, Layout } from "./layout";
import { ringsOf } from "./outline";
import { between, distance, type Point } from "./plane";

/** An area in plan: rings by the even-odd rule, so that a ring within another is a hole. */
export type Shape = readonly (readonly Point[])[];

/** The fabric of a bed as it lies, trimmed to the outline. */
export interface FabricShapes {
  /** For each cut, in order. */
  readonly cuts: readonly Shape[];
  /** Where two strips, or two pieces of one, lie on one another. */
  readonly overlaps: readonly Shape[];
}

/** Decimals of a foot to which shapes are clipped: about a thousandth of an inch. */
const DECIMALS = 4;

/** The shapes of a layout's fabric, for drawing: each cut within the bed, and the overlaps. */
export function fabricShapes({ outline, cuts, rules }: Layout): FabricShapes {
  const bed: Shape = ringsOf(outline).map(({ points }) => points);
  const shapes = cuts.map(({ corners }) => inBoth(bed, [corners]));
  const overlaps: Shape[] = [];
  cuts.forEach((cut, i) => {
    cuts.forEach((other, k) => {
      if (other.strip === cut.strip + 1) overlaps.push(inBoth(must(shapes[i]), must(shapes[k])));
    });
    for (const { startsAtFt } of cut.pieces.slice(1))
      overlaps.push(inBoth(must(shapes[i]), [partOf(cut, startsAtFt, startsAtFt + rules.endLapFt)]));
  });
  return { cuts: shapes, overlaps: overlaps.filter((shape) => shape.length > 0) };
}

function inBoth(one: Shape, other: Shape): Shape {
  const clipper = new ClipperD(DECIMALS);
  const paths = (shape: Shape): PathsD => shape.map((ring) => ring.map(({ x, y }) => ({ x, y })));
  clipper.addPaths(paths(one), PathType.Subject);
  clipper.addPaths(paths(other), PathType.Clip);
  const found: PathsD = [];
  clipper.execute(ClipType.Intersection, FillRule.EvenOdd, found);
  return found;
}

/** The four corners of part of a cut, from one place along it to another. */
function partOf({ corners: [a, b, c, d] }: FabricCut, fromFt: number, toFt: number): Point[] {
  const length = distance(a, b);
  const [from, to] = [fromFt / length, toFt / length];
  return [between(a, b, from), between(a, b, to), between(d, c, to), between(d, c, from)];
}
