import type { Layout } from "../layout";
import { boundsOf, type Point } from "../plane";
import type { LabelBoard } from "./labels";
import type { Pen } from "./pen";

/** Room round the bed for dimensions and labels, in pixels. */
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A bed in plan on the sheet: what is where, to scale, with y going up. */
export interface PlanView {
  readonly layout: Layout;
  readonly pen: Pen;
  readonly labels: LabelBoard;
  /** Pixels a foot. */
  readonly scale: number;
  readonly height: number;
  readonly at: (point: Point) => Point;
}

/** Where the plan comes to lie on a sheet of this width: as large as fits, and no taller than the limit. */
export function projection(layout: Layout, width: number, margins: Margins, mostHeight: number) {
  const { minX, maxX, minY, maxY } = boundsOf(layout.outline.ring.points);
  const room = { x: width - margins.left - margins.right, y: mostHeight - margins.top - margins.bottom };
  const scale = Math.min(room.x / (maxX - minX), room.y / (maxY - minY));
  // A narrow bed is in the middle of its room.
  const left = margins.left + (room.x - (maxX - minX) * scale) / 2;
  return {
    scale,
    height: margins.top + (maxY - minY) * scale + margins.bottom,
    at: ({ x, y }: Point): Point => ({ x: left + (x - minX) * scale, y: margins.top + (maxY - y) * scale }),
  };
}

/** A direction in plan as it points on the sheet. */
export const onSheet = ({ x, y }: Point): Point => ({ x, y: -y });

/** The point some pixels away in a direction on the sheet. */
export const shifted = (point: Point, direction: Point, by: number): Point => ({
  x: point.x + direction.x * by,
  y: point.y + direction.y * by,
});

/** Degrees to turn text so that it runs along a direction on the sheet and stays upright. */
export function uprightTurn({ x, y }: Point): number {
  const degrees = (Math.atan2(y, x) * 180) / Math.PI;
  // Upright text that runs up the sheet is read from the right, as on any drawing.
  if (degrees > 89.5) return degrees - 180;
  return degrees <= -90.5 ? degrees + 180 : degrees;
}
