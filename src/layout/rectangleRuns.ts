import { must } from "../quantities/must";
import { Problem } from "../quantities/problem";
import { WHOLE_TOLERANCE } from "../quantities/whole";
import type { RectangleBed } from "./bed";
import { layoutMessages as messages } from "./messages";
import type { Point } from "./plane";
import { atLeastZero, inRange, positive } from "./readMeasure";
import type { Run } from "./runs";

/** Corners counterclockwise from x = 0, y = 0, in the order in which they are rounded: the front ones first. */
const ROUNDED_FIRST = [3, 2, 0, 1];

/** The sides and rounded corners of a rectangular bed; side 1 lies along the house. */
export function rectangleRuns(bed: RectangleBed): Run[] {
  const length = positive("The length", bed.lengthFt, "length");
  const width = positive("The width", bed.widthFt, "width");
  const radius = atLeastZero("The corner radius", bed.cornerRadiusFt ?? 0, "corner_radius");
  const { rounded: marks = [], roundedCorners = 0 } = bed;
  const count = radius === 0 ? 0 : inRange("Rounded corners", roundedCorners, 0, 4, "", "rounded_corners");
  const rounded = ROUNDED_FIRST.filter((_, place) =>
    marks.length > 0 ? radius * (marks[place] as number) > 0 : place < count,
  );
  const largest = Math.min(length, width) / (rounded.length > 1 ? 2 : 1);
  if (rounded.length > 0 && radius > largest * (1 + WHOLE_TOLERANCE))
    throw new Problem("value", messages.radiusTooLarge(radius, largest), "corner_radius");

  const corners: Point[] = [
    { x: 0, y: 0 },
    { x: length, y: 0 },
    { x: length, y: width },
    { x: 0, y: width },
  ];
  const ahead: Point[] = [
    { x: 1, y: 0 },
    { x: 0, y: 1 },
    { x: -1, y: 0 },
    { x: 0, y: -1 },
  ];
  const cut = (corner: number) => (rounded.includes(corner) ? radius : 0);
  const shifted = ({ x, y }: Point, direction: Point, by: number) => ({
    x: x + direction.x * by,
    y: y + direction.y * by,
  });

  return corners.flatMap((corner, i): Run[] => {
    const next = (i + 1) % 4;
    const from = shifted(corner, must(ahead[i]), cut(i));
    const to = shifted(must(corners[next]), must(ahead[i]), -cut(next));
    const side: Run = { kind: "straight", side: i + 1, from, to, border: false };
    if (!rounded.includes(next)) return [side];
    const center = shifted(to, must(ahead[next]), radius);
    const startAngle = ((i - 1) * Math.PI) / 2;
    return [side, { kind: "arc", center, radius, startAngle, sweep: Math.PI / 2, border: false }];
  });
}
