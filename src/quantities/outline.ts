import { messages } from "./messages";
import { must } from "./must";
import { firstCrossing } from "./outlineCrossing";
import { Problem } from "./problem";

/** A point in plan, in feet. */
export type Point = readonly [x: number, y: number];

/**
 * Area within an outline, by the shoelace formula. Either way round, closed or not; a point that stands twice
 * in a row counts once.
 *
 * @param points the corners in order, at least 3 different ones.
 * @returns square feet, more than 0.
 * @throws Problem where fewer than 3 points differ, where sides cross or touch (it names them), or where
 *   nothing is enclosed.
 * @example areaPoints([[0, 0], [4, 0], [0, 3]]) // 6
 */
export function areaPoints(points: readonly Point[]): number {
  const corners = cornersOf(points, true);
  if (corners.length < 3) throw new Problem("value", messages.tooFewPoints(corners.length, 3), "points");
  const crossing = firstCrossing(corners.map((corner) => must(points[corner])));
  if (crossing) {
    const place = (corner: number) => must(corners[corner % corners.length]) + 1;
    const [one, other] = crossing;
    throw new Problem(
      "value",
      messages.outlineCrosses(place(one), place(one + 1), place(other), place(other + 1)),
      "points",
    );
  }
  // Taken from the first corner, so that an outline far from the origin loses no digits.
  const [x0, y0] = must(points[must(corners[0])]);
  let twice = 0;
  for (let i = 2; i < corners.length; i++) {
    const [x1, y1] = must(points[must(corners[i - 1])]);
    const [x2, y2] = must(points[must(corners[i])]);
    twice += (x1 - x0) * (y2 - y0) - (x2 - x0) * (y1 - y0);
  }
  if (twice === 0) throw new Problem("value", messages.enclosesNothing(), "points");
  return Math.abs(twice) / 2;
}

/**
 * Length along an outline.
 *
 * @param points the corners in order; at least 2 different ones, 3 where it is closed.
 * @param closed whether the way from the last point back to the first counts too.
 * @returns feet, more than 0.
 * @throws Problem where too few points differ.
 * @example edgePoints([[0, 0], [4, 0], [0, 3]]) // 12
 */
export function edgePoints(points: readonly Point[], closed = true): number {
  const corners = cornersOf(points, closed);
  const fewest = closed ? 3 : 2;
  if (corners.length < fewest) throw new Problem("value", messages.tooFewPoints(corners.length, fewest), "points");
  let length = 0;
  for (let i = closed ? 0 : 1; i < corners.length; i++) {
    const [x1, y1] = must(points[must(corners.at(i - 1))]);
    const [x2, y2] = must(points[must(corners[i])]);
    length += Math.hypot(x2 - x1, y2 - y1);
  }
  return length;
}

/** Places of the points that are corners: without those that repeat the one before, or close the outline. */
function cornersOf(points: readonly Point[], closed: boolean): number[] {
  const same = (a: Point, b: Point) => a[0] === b[0] && a[1] === b[1];
  const corners: number[] = [];
  points.forEach((point, place) => {
    if (place === 0 || !same(point, must(points[place - 1]))) corners.push(place);
  });
  if (closed) while (corners.length > 1 && same(must(points[must(corners.at(-1))]), must(points[0]))) corners.pop();
  return corners;
}
