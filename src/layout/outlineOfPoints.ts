import { checkRing } from "./checkRing";
import { type Outline, ringOf } from "./outline";
import type { Point } from "./plane";
import { ringPoints, straightRuns } from "./ringPoints";

/**
 * The outline of a bed given by its points alone, border on every side, nothing cut out.
 *
 * @param points in order round the bed, in feet, either way round, closed or not; at least 3 different ones.
 * @throws Problem where they enclose nothing, or sides cross or touch: it names the sides and the place.
 */
export function outlineOfPoints(points: readonly Point[]): Outline {
  const corners = ringPoints(points, "points");
  checkRing(corners, "the outline", "points");
  return { ring: ringOf(straightRuns(corners, true), 1), cutOuts: [] };
}
