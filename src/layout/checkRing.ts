import { must } from "../quantities/must";
import { firstCrossing } from "../quantities/outlineCrossing";
import { Problem } from "../quantities/problem";
import { isOn } from "./boundary";
import { layoutMessages as messages } from "./messages";
import { between, cross, distance, type Point, SAME_FT, signedArea } from "./plane";

/**
 * Refuses a ring of straight sides that is none: too few points, nothing enclosed, sides that cross, touch or lie
 * on one another.
 *
 * @param points in order round the ring, none the same as the next.
 * @param what how messages call it: "the outline", "the meter pad".
 * @throws Problem that names the sides (side n runs from point n to the next) and the place.
 */
export function checkRing(points: readonly Point[], what: string, argument: string): void {
  const fail = (message: string): never => {
    throw new Problem("value", message, argument);
  };
  if (points.length < 3) fail(messages.tooFewPoints(what, points.length));
  const clash = firstCrossing(points.map(({ x, y }) => [x, y] as const));
  if (!clash) {
    if (Math.abs(signedArea(points)) <= SAME_FT) fail(messages.noArea(what));
    return;
  }
  const side = (place: number): [Point, Point] => [must(points[place]), must(points[(place + 1) % points.length])];
  const [[a, b], [c, d]] = [side(clash[0]), side(clash[1])];
  const numbers = [clash[0] + 1, clash[1] + 1] as const;
  if (points.every((point) => Math.abs(cross(a, b, point)) <= SAME_FT * distance(a, b))) fail(messages.noArea(what));
  if (b === c || d === a) fail(messages.foldsBack(what, ...numbers, b === c ? b : a));
  const [offC, offD] = [cross(a, b, c), cross(a, b, d)];
  const [offA, offB] = [cross(c, d, a), cross(c, d, b)];
  if (offC * offD < 0 && offA * offB < 0)
    fail(messages.sidesCross(what, ...numbers, between(c, d, offC / (offC - offD))));
  const touching = [c, d].find((point) => isOn(a, b, point)) ?? (isOn(c, d, a) ? a : b);
  fail(messages.sidesTouch(what, ...numbers, touching));
}
