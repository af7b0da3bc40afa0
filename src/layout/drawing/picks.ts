import { must } from "../../quantities/must";
import { boundsOf, distance } from "../plane";
import { flattened, pointOnRun, type Run, runEnd, runLength } from "../runs";
import { pathThrough } from "./pen";
import { element } from "./svg";
import type { PlanView } from "./view";

/** How wide a side is to the mouse, in pixels. */
const SIDE_REACH = 18;
/** A corner is caught this near to it, in pixels, but for no more than a share of the side next to it. */
const CORNER_REACH = 11;
const CORNER_SHARE = 0.3;

/**
 * What can be clicked on a drawing: every side with its number, the inside of a ring as side 1, and the corners of a
 * rectangle in the order in which they are rounded. They don't show; the page has them light up.
 */
export function picks({ layout, at }: PlanView): string {
  const { bed, outline } = layout;
  const { runs } = outline.ring;
  const line = (run: Run) => pathThrough([...flattened(run), runEnd(run)].map(at), false);
  if (bed.kind === "round") {
    const inner = bed.innerDiameterFt ? outline.cutOuts[0]?.ring.runs[0] : undefined;
    return inner ? element("path", { class: "hit", "data-side": 1, d: line(inner), "stroke-width": SIDE_REACH }) : "";
  }
  const sides = runs
    .filter(({ side }) => side !== undefined)
    .map((run) =>
      element("path", { class: "hit", "data-side": must(run.side), d: line(run), "stroke-width": SIDE_REACH }),
    );
  if (bed.kind !== "rectangle") return sides.join("");
  const { minX, maxX, minY, maxY } = boundsOf(outline.ring.points);
  const corners = [
    { x: minX, y: maxY },
    { x: maxX, y: maxY },
    { x: minX, y: minY },
    { x: maxX, y: minY },
  ].map((corner, index) => {
    const arc = runs.find(
      (run) => run.side === undefined && distance(pointOnRun(run, runLength(run) / 2), corner) < runLength(run) / 2,
    );
    const { x, y } = at(corner);
    const reach = Math.min(
      CORNER_REACH,
      CORNER_SHARE * Math.abs(at({ x: maxX, y: minY }).y - at({ x: maxX, y: maxY }).y),
    );
    const d = arc ? line(arc) : `M${x.toFixed(1)} ${y.toFixed(1)}h0.01`;
    return element("path", { class: "hit", "data-corner": index + 1, d, "stroke-width": 2 * reach });
  });
  return [...sides, ...corners].join("");
}
