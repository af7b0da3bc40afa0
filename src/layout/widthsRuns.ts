import { must } from "../quantities/must";
import { Problem } from "../quantities/problem";
import type { WidthsBed } from "./bed";
import { layoutMessages as messages } from "./messages";
import type { Point } from "./plane";
import { finite, positive } from "./readMeasure";
import { straightRuns, withoutRepeats } from "./ringPoints";
import type { Run } from "./runs";

/**
 * The sides of a bed taped by widths square to a base line: the base line (side 1), then counterclockwise over the
 * ends of the widths, straight from one to the next.
 */
export function widthsRuns(bed: WidthsBed): Run[] {
  const spacing = positive("The spacing", bed.spacingFt, "spacing");
  if (bed.widthsFt.length < 2) throw new Problem("value", messages.tooFewWidths(bed.widthsFt.length), "widths");
  const ends = bed.widthsFt.map((width, i): Point => {
    finite(`Width ${i + 1}`, width, "widths");
    if (width < 0) throw new Problem("value", messages.widthNegative(i + 1, width), "widths");
    return { x: i * spacing, y: width };
  });
  const first = ends.findIndex(({ y }) => y > 0);
  const last = ends.findLastIndex(({ y }) => y > 0);
  if (first < 0) throw new Problem("value", messages.allWidthsZero(), "widths");
  const inside = ends.findIndex(({ y }, i) => y === 0 && i > first && i < last);
  if (inside >= 0) throw new Problem("value", messages.widthZeroInside(inside + 1, must(ends[inside]).x), "widths");

  // Widths of 0 at the ends: the bed runs to a point at the last of them, and begins there.
  const kept = ends.slice(Math.max(0, first - 1), last + 2);
  const [start, end] = [must(kept[0]), must(kept.at(-1))];
  const corners: Point[] = [{ x: start.x, y: 0 }, { x: end.x, y: 0 }, ...kept.reverse()];
  return straightRuns(withoutRepeats(corners), false);
}
