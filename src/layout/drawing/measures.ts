import { must } from "../../quantities/must";
import type { PointsBed } from "../bed";
import type { Layout } from "../layout";
import { boundsOf, distance, type Point, signedArea } from "../plane";
import { withoutRepeats } from "../ringPoints";
import type { ArcRun } from "../runs";
import { pointOnRun, runLength } from "../runs";
import { hasNames, nameOf } from "./borderPart";
import { besideLabel, dimension, firstLabel } from "./dimensions";
import { type Pen, textWidth } from "./pen";
import { element } from "./svg";
import { type Margins, onSheet, type PlanView, shifted, uprightTurn } from "./view";
import { coordinate, taped } from "./words";

const DOWN: Point = { x: 0, y: -1 };
const UP: Point = { x: 0, y: 1 };
const LEFT: Point = { x: -1, y: 0 };

/** How far from the bed its dimension lines run, in pixels: clear of border, stakes and piece names. */
const DIMENSION_OUT = 38;

/** From the bed's edge to the words nearest to it: just beyond the stakes. */
export const WORDS_OUT = 16;

/** Room for border, stakes and the names of pieces above and below the bed; at the sides it is as wide as a name. */
const MARKS_UP = 30;
/** Widths closer than this on the sheet have their labels upright. */
const CLOSE = 42;

/** Room that the measures of this bed take round it. */
export function marginsFor(layout: Layout, pen: Pen, widthPx: number): Margins {
  const { bed, outline, counts } = layout;
  const line = pen.size * 1.5;
  const all = WORDS_OUT + textWidth(nameOf(hasNames(layout) ? counts.pieces : 0), pen.size) + 6;
  switch (bed.kind) {
    case "rectangle":
      return { left: DIMENSION_OUT + line, right: all, top: MARKS_UP, bottom: DIMENSION_OUT + line };
    case "round":
      return { left: all, right: all, top: MARKS_UP, bottom: DIMENSION_OUT + line };
    case "widths": {
      const { minX, maxX } = boundsOf(outline.ring.points);
      const isClose = (bed.spacingFt * (widthPx - 2 * all)) / (maxX - minX) < CLOSE;
      return { left: all, right: all, top: MARKS_UP + pen.size * (isClose ? 4 : 1), bottom: MARKS_UP + line };
    }
    case "points":
      return { left: all, right: all, top: MARKS_UP + line, bottom: MARKS_UP + line };
  }
}

/** The measurements of the bed, each as it was taken. */
export function measures(view: PlanView): string {
  const { bed, outline } = view.layout;
  const bounds = boundsOf(outline.ring.points);
  const corner = (x: number, y: number) => ({ x, y });
  const { minX, maxX, minY, maxY } = bounds;
  switch (bed.kind) {
    case "rectangle":
      return (
        dimension(view, corner(minX, minY), corner(maxX, minY), DOWN, DIMENSION_OUT, taped(bed.lengthFt)) +
        dimension(view, corner(minX, minY), corner(minX, maxY), LEFT, DIMENSION_OUT, taped(bed.widthFt)) +
        outline.ring.runs.map((run) => (run.kind === "arc" ? radius(view, run) : "")).join("")
      );
    case "round": {
      const text = `${taped(bed.diameterFt)} across`;
      return dimension(view, corner(minX, minY), corner(maxX, minY), DOWN, DIMENSION_OUT, text);
    }
    case "widths":
      return bed.widthsFt
        .map((width, i) => tapedWidth(view, i * bed.spacingFt, width, bed.spacingFt * view.scale < CLOSE))
        .join("");
    case "points":
      return corners(view, bed) + sides(view);
  }
}

/** The radius of a rounded corner, from the center round which to swing the tape. */
function radius(view: PlanView, run: ArcRun): string {
  const { pen, at } = view;
  const { soft } = pen.colors;
  const middle = pointOnRun(run, runLength(run) / 2);
  const outward = { x: (middle.x - run.center.x) / run.radius, y: (middle.y - run.center.y) / run.radius };
  const [center, end] = [at(run.center), at(middle)];
  const arm = (x: number, y: number) =>
    pen.line({ x: center.x - x, y: center.y - y }, { x: center.x + x, y: center.y + y }, soft, 1.2);
  const text = `R ${taped(run.radius)}`;
  const length = run.radius * view.scale;
  // Past the center first, where it is on the bed and clear of the border, then beyond the border.
  const gaps = [-length - 5, -length - 14, WORDS_OUT, WORDS_OUT + 8, WORDS_OUT + 16];
  return pen.line(center, end, soft, 0.8) + arm(3, 0) + arm(0, 3) + besideLabel(view, middle, outward, gaps, text);
}

/** A taped width: a thin line from the base line to the edge, its place below and its length beyond the edge. */
function tapedWidth(view: PlanView, x: number, width: number, isClose: boolean): string {
  const { pen, at } = view;
  const { soft } = pen.colors;
  const [base, end] = [
    { x, y: 0 },
    { x, y: width },
  ];
  const tick = pen.line(shifted(at(base), onSheet(DOWN), 8), shifted(at(base), onSheet(DOWN), 14), soft, 1.2);
  const place = besideLabel(view, base, DOWN, [WORDS_OUT, WORDS_OUT + 12], coordinate(x));
  if (width === 0) return tick + place;
  const line = pen.line(at(base), shifted(at(end), onSheet(UP), WORDS_OUT), soft, 0.8, "1 2.5");
  const gaps = [0, 8, 16, 24].map((more) => WORDS_OUT + more);
  const ways = isClose ? [-90] : [0, -90];
  const labels = ways.map((turn) => () => besideLabel(view, end, UP, gaps, taped(width), { turn, bold: true }));
  return tick + place + line + labels.reduce((found, label) => found || label(), "");
}

/** The length of every straight side that has room for it. */
function sides(view: PlanView): string {
  const { layout, pen, at } = view;
  return layout.outline.ring.runs
    .map((run) => {
      if (run.kind === "arc") return "";
      const [a, b] = [at(run.from), at(run.to)];
      const text = taped(runLength(run));
      if (distance(a, b) < textWidth(text, pen.size) + 4) return "";
      const length = runLength(run);
      const outward = { x: (run.to.y - run.from.y) / length, y: -(run.to.x - run.from.x) / length };
      const turn = uprightTurn({ x: b.x - a.x, y: b.y - a.y });
      const spots = [0, 7, 14].flatMap((more) =>
        [0.5, 0.4, 0.6, 0.3, 0.7].map((share) => {
          return { place: pointOnRun(run, share * length), out: outward, gap: WORDS_OUT + more };
        }),
      );
      return firstLabel(view, spots, text, { turn, bold: true });
    })
    .join("");
}

/** The number of every point, as in the list of points. */
function corners(view: PlanView, bed: PointsBed): string {
  const points = withoutRepeats(bed.points);
  const turn = Math.sign(signedArea(points));
  const numbers = points.map((point, i) => {
    const [before, after] = [must(points.at(i - 1)), must(points[(i + 1) % points.length])];
    const out = turn > 0 ? awayFrom(before, point, after) : awayFrom(after, point, before);
    return besideLabel(view, point, out, [8, 12, 18, 24, 30, 36], `${i + 1}`, {
      color: view.pen.colors.ink,
      bold: true,
    });
  });
  return element("g", {}, ...numbers);
}

/** The way out of the bed at a corner, halfway between its sides. */
function awayFrom(before: Point, corner: Point, after: Point): Point {
  const [a, b] = [distance(before, corner), distance(corner, after)];
  const out = {
    x: (corner.y - before.y) / a + (after.y - corner.y) / b,
    y: -(corner.x - before.x) / a - (after.x - corner.x) / b,
  };
  const length = Math.max(1e-9, Math.sqrt(out.x ** 2 + out.y ** 2));
  return { x: out.x / length, y: out.y / length };
}
