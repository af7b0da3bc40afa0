import { must } from "../../quantities/must";
import type { FabricCut } from "../layout";
import { between, type Point } from "../plane";
import type { FabricShapes, Shape } from "../shapes";
import type { Box } from "./labels";
import { type Pen, pathThrough, textWidth } from "./pen";
import { element } from "./svg";
import type { PlanView } from "./view";
import { cutLength } from "./words";

const STRIP_LINE = 0.8;

/** Strips in two tones by turns, and what lies double hatched over them. */
export function fabricPart({ layout, pen, at }: PlanView, { cuts, overlaps }: FabricShapes): string {
  const { fabric, otherFabric, soft } = pen.colors;
  const path = (shape: Shape) => shape.map((ring) => pathThrough(ring.map(at), true)).join("");
  const strips = cuts.map((shape, i) =>
    element("path", {
      d: path(shape),
      fill: must(layout.cuts[i]).strip % 2 === 1 ? fabric : otherFabric,
      stroke: soft,
      "stroke-width": STRIP_LINE,
      "fill-rule": "evenodd",
    }),
  );
  const doubled = element("path", {
    d: overlaps.map(path).join(""),
    fill: `url(#${pen.part("overlap")})`,
    stroke: soft,
    "stroke-width": STRIP_LINE,
    "stroke-dasharray": "4 2",
  });
  return element("g", {}, ...strips, overlaps.length > 0 ? doubled : "");
}

/** Pins as dots: one path of points, since a bed has hundreds. */
export function pinPart({ layout, pen, at }: PlanView, radius: number): string {
  const d = layout.pins.map((pin) => `${pathThrough([at(pin)], false)}h0`).join("");
  return element("path", { d, stroke: pen.colors.ink, "stroke-width": 2 * radius, "stroke-linecap": "round" });
}

/** Shares of a strip's length and width at which its number is tried, the middle first. */
const ALONG = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9];
const ACROSS = [0.5, 0.38, 0.62, 0.26, 0.74];

/** How far from its strip the number of one too small for it is tried, in pixels, and in how many directions. */
const AWAY = [26, 36, 48, 64];
const DIRECTIONS = 16;

/**
 * The number of each cut in a ring on its own fabric, clear of pins where there is room; beside a strip that is too
 * small for it, with a line that leads there. Where most of them have room for it, the length to cut is beside.
 */
export function cutNumbers(view: PlanView, { cuts }: FabricShapes): string {
  const { layout, pen, at } = view;
  const shapes = cuts.map((shape) => shape.map((ring) => ring.map(at)));
  const spots = layout.cuts.map((cut, i) => spotFor(view, cut, must(shapes[i])));
  const numbers = spots.map((spot, i) => (spot ? numberAt(pen, must(layout.cuts[i]).number, spot) : ""));
  const lengths = spots.map((spot, i) =>
    spot ? lengthBeside(view, must(layout.cuts[i]), spot.center, must(shapes[i])) : "",
  );
  const placed = lengths.filter((length) => length !== "").length;
  return numbers.join("") + (placed * 2 > lengths.length ? lengths.join("") : "");
}

interface Spot {
  readonly center: Point;
  /** The place on the fabric to which a line leads, where the number is beside it. */
  readonly leadTo?: Point;
}

const radiusFor = (pen: Pen): number => pen.size * 0.72;

function spotFor({ pen, at, labels, layout }: PlanView, cut: FabricCut, shape: Shape): Spot | undefined {
  const radius = radiusFor(pen);
  const boxAt = (center: Point): Box => ({ center, width: 2 * radius + 2, height: 2 * radius + 2 });
  const bed = [layout.outline.ring.points.map(at)];
  const onFabric = placesOn(cut)
    .map(at)
    .filter((place) => isIn(shape, place));
  const target = onFabric[0];
  if (!target) return undefined;
  const clear = onFabric.filter((place) => around(place, radius * 0.85).every((point) => isIn(bed, point))).map(boxAt);
  const spot = labels.place(clear) ?? labels.place(clear, false);
  if (spot) return spot;
  const beside = labels.place(AWAY.flatMap((away) => around(target, away).map(boxAt)));
  return { center: beside?.center ?? target, leadTo: target };
}

function numberAt(pen: Pen, number: number, { center, leadTo }: Spot): string {
  const ring = ringed(pen, number, center, radiusFor(pen));
  if (!leadTo) return ring;
  const { ink, paper } = pen.colors;
  const end = element("circle", { cx: leadTo.x, cy: leadTo.y, r: 2, fill: ink, stroke: paper, "stroke-width": 0.5 });
  return pen.line(leadTo, center, ink, 0.8) + end + ring;
}

const around = (center: Point, away: number): Point[] =>
  Array.from({ length: DIRECTIONS }, (_, i) => {
    const angle = (2 * Math.PI * i) / DIRECTIONS;
    return { x: center.x + away * Math.cos(angle), y: center.y + away * Math.sin(angle) };
  });

function ringed(pen: Pen, number: number, { x, y }: Point, radius: number): string {
  return (
    element("circle", { cx: x, cy: y, r: radius, fill: pen.colors.paper, stroke: pen.colors.ink, "stroke-width": 1 }) +
    pen.text(String(number), { x, y }, { size: pen.size * 0.92, color: pen.colors.ink, bold: true })
  );
}

/** The length to cut, wholly on the same fabric as its number; nothing where there is no room. */
function lengthBeside({ pen, labels }: PlanView, cut: FabricCut, { x, y }: Point, shape: Shape): string {
  const text = cutLength(cut.lengthFt);
  const [width, height] = [textWidth(text, pen.size), pen.size];
  const [aside, below] = [radiusFor(pen) + width / 2 + 4, radiusFor(pen) + height / 2 + 3];
  const boxes = [
    { x: x + aside, y },
    { x: x - aside, y },
    { x, y: y + below },
    { x, y: y - below },
  ]
    .filter((center) => [-1, 0, 1].every((i) => isIn(shape, { x: center.x + (i * width) / 2, y: center.y })))
    .map((center) => ({ center, width, height }));
  const spot = labels.place(boxes);
  return spot ? pen.text(text, spot.center, { size: pen.size, color: pen.colors.ink, halo: true }) : "";
}

function placesOn({ corners: [a, b, c, d] }: FabricCut): Point[] {
  return ACROSS.flatMap((across) => ALONG.map((along) => between(between(a, b, along), between(d, c, along), across)));
}

function isIn(shape: Shape, { x, y }: Point): boolean {
  let inside = false;
  for (const ring of shape)
    ring.forEach((a, i) => {
      const b = must(ring[(i + 1) % ring.length]);
      if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
    });
  return inside;
}
