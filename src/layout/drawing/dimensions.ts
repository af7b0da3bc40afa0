import { distance, type Point } from "../plane";
import { textWidth } from "./pen";
import { element } from "./svg";
import { onSheet, type PlanView, shifted, uprightTurn } from "./view";

/**
 * A dimension: a line beside two points in plan, with strokes at its ends, thin lines to the points, and the length.
 *
 * @param out the way from the points to the line, in plan.
 * @param by how far out the line runs, in pixels.
 */
export function dimension(view: PlanView, from: Point, to: Point, out: Point, by: number, text: string): string {
  const { pen, at, labels } = view;
  const { soft } = pen.colors;
  const [away, a, b] = [onSheet(out), at(from), at(to)];
  const [start, end] = [shifted(a, away, by), shifted(b, away, by)];
  const length = distance(start, end);
  const along = { x: (end.x - start.x) / length, y: (end.y - start.y) / length };
  const slash = { x: along.x + away.x, y: along.y + away.y };
  const stroke = (point: Point) => pen.line(shifted(point, slash, -3), shifted(point, slash, 3), soft, 1.2);
  const middle = { x: (start.x + end.x) / 2, y: (start.y + end.y) / 2 };
  const center = shifted(middle, away, pen.size * 0.75);
  const turn = uprightTurn(along);
  labels.take({ center, width: textWidth(text, pen.size), height: pen.size, turn });
  labels.take({ center: middle, width: length, height: 5, turn });
  for (const [point, lineEnd] of [
    [a, start],
    [b, end],
  ] as const) {
    const center = { x: (point.x + lineEnd.x) / 2, y: (point.y + lineEnd.y) / 2 };
    labels.take({ center, width: by, height: 2, turn: uprightTurn(away) });
  }
  return element(
    "g",
    {},
    pen.line(shifted(a, away, 3), shifted(start, away, 3), soft, 0.5),
    pen.line(shifted(b, away, 3), shifted(end, away, 3), soft, 0.5),
    pen.line(start, end, soft, 0.8),
    stroke(start),
    stroke(end),
    pen.text(text, center, { size: pen.size, color: soft, turn, halo: true }),
  );
}

/** A spot for a label: so many pixels out from a place in plan; below 0 on the near side of it. */
export interface LabelSpot {
  readonly place: Point;
  readonly out: Point;
  readonly gap: number;
}

interface LabelStyle {
  readonly turn?: number;
  readonly bold?: boolean;
  readonly color?: string;
}

/**
 * A label beside a place in plan: at the first of some distances where there is room; nothing where there is none.
 *
 * @param out the way from the place, in plan.
 * @param gaps how many pixels to leave between the place and the label, in the order in which to try.
 */
export const besideLabel = (
  view: PlanView,
  place: Point,
  out: Point,
  gaps: readonly number[],
  text: string,
  style: LabelStyle = {},
): string =>
  firstLabel(
    view,
    gaps.map((gap) => ({ place, out, gap })),
    text,
    style,
  );

/** A label at the first of some spots where there is room. */
export function firstLabel(view: PlanView, spots: readonly LabelSpot[], text: string, style: LabelStyle = {}): string {
  const { pen, at, labels } = view;
  const { turn = 0, bold = false, color = pen.colors.soft } = style;
  const [width, height] = [textWidth(text, pen.size) + 4, pen.size];
  const boxes = spots.map(({ place, out, gap }) => {
    const away = onSheet(out);
    const reach = halfReach({ width, height, turn }, away);
    return { center: shifted(at(place), away, gap < 0 ? gap - reach : gap + reach), width, height, turn };
  });
  const spot = labels.place(boxes);
  return spot ? pen.text(text, spot.center, { size: pen.size, color, turn, bold, halo: true }) : "";
}

/** How far a turned box reaches from its center in a direction. */
function halfReach({ width, height, turn }: { width: number; height: number; turn: number }, away: Point): number {
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const along = Math.abs(away.x * cos + away.y * sin);
  const across = Math.abs(away.y * cos - away.x * sin);
  return (along * width + across * height) / 2;
}
