import { type EdgingKind, METAL } from "../../quantities/edgingKinds";
import { must } from "../../quantities/must";
import type { BorderRun } from "../border";
import type { BorderMark } from "../borderPath";
import type { Layout } from "../layout";
import { between, distance, type Point } from "../plane";
import type { Run } from "../runs";
import { flattened, runEnd } from "../runs";
import { firstLabel } from "./dimensions";
import type { LabelBoard } from "./labels";
import { type Pen, pathThrough } from "./pen";
import { element } from "./svg";
import { onSheet, type PlanView, shifted } from "./view";

/** Between the bed's edge and the border, so that the pins on the edge show; and the border's width on the sheet. */
const GAP = 2.5;
const BAND = 4;
/** How far out stakes stand from the bed's edge, and how wide a cut edge is drawn. */
const STAKE_OUT = GAP + BAND + 4;
const CUT = 2;
/** Joints of pavers nearer than this on the sheet would run together. */
const CLOSEST_JOINTS = 2.5;

/** What a bed that was laid out is edged with. */
export const edgingOfLayout = ({ borderRules }: Pick<Layout, "borderRules">): EdgingKind => borderRules?.kind ?? METAL;

/** A layout with its second edging in place of the first; undefined where there is none. */
export function secondOfLayout(layout: Layout): Layout | undefined {
  const { second } = layout;
  if (!second) return undefined;
  const { pieces, stakes, ...own } = second;
  return { ...layout, ...own, counts: { ...layout.counts, pieces, stakes }, isSecond: true };
}

/** Whether the bed has sides for edging and no edging: then there is nothing to draw along them. */
export const isWithoutEdging = ({ border, outline }: Pick<Layout, "border" | "outline">): boolean =>
  border.length === 0 && outline.ring.runs.some((run) => run.border);

/** Every how many joints of pavers are drawn, at so many pixels a foot. */
export function jointsDrawn({ borderRules }: Pick<Layout, "borderRules">, scale: number): number {
  if (!borderRules) return 1;
  const apart = (borderRules.pieceLengthFt - borderRules.lapFt) * scale;
  return Math.max(1, Math.ceil(CLOSEST_JOINTS / apart));
}

/**
 * Border as a band outside the bed's outer edge, and a hatched band where none is set. Both are drawn as wide lines
 * along the edge, of which the bed drawn over them hides the inner half.
 */
export function borderPart({ layout, pen, at, labels }: PlanView): string {
  const second = secondOfLayout(layout);
  const runs = layout.outline.ring.runs.map((run, side) => {
    const border = run.border || second?.outline.ring.runs[side]?.border === true;
    return { ...run, border };
  });
  const bare = isWithoutEdging(layout) && !second ? [] : bareStretches(runs);
  const open = bare
    .map((runs) => [...runs.flatMap(flattened), runEnd(must(runs.at(-1)))].map(at))
    .map((line) => {
      keepClear(labels, line);
      return pathThrough(line, false);
    })
    .map((d) => wide(d, pen.colors.paper, GAP + BAND) + wide(d, `url(#${pen.part("wall")})`, GAP + BAND));
  const bands = [layout, ...(second ? [second] : [])].flatMap((one) => {
    const outer = one.border.filter(({ ring }) => ring === 0);
    for (const { pieces } of outer) for (const { line } of pieces) keepClear(labels, line.map(at));
    return outer.map((run) => band(run, edgingOfLayout(one), pen, at, one.isSecond));
  });
  return element("g", {}, ...bands, ...open);
}

/** Keeps labels off a band that runs along a line on the sheet. */
function keepClear(labels: LabelBoard, line: readonly Point[]): void {
  line.slice(1).forEach((to, i) => {
    const from = must(line[i]);
    const turn = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
    labels.take({ center: between(from, to, 0.5), width: distance(from, to), height: 2 * BAND, turn });
  });
}

/** Border round a cut-out, over it: only the half within it shows. */
export function borderRound({ layout, pen, at }: PlanView): string {
  const { cutOuts } = layout.outline;
  const edging = edgingOfLayout(layout);
  return layout.border
    .filter(({ ring }) => ring > 0)
    .map((run) => {
      const id = pen.part(`free-${run.ring}`);
      const clip = element("path", { d: pathThrough(must(cutOuts[run.ring - 1]).ring.points.map(at), true) });
      return (
        element("clipPath", { id }, clip) + element("g", { "clip-path": `url(#${id})` }, band(run, edging, pen, at))
      );
    })
    .join("");
}

/** The second edging is drawn in the ink, so that both kinds can be told apart where they are drawn alike. */
export const edgeColor = ({ colors }: Pen, isSecond = false): string => (isSecond ? colors.soft : colors.border);

function band({ pieces, closed }: BorderRun, { drawn }: EdgingKind, pen: Pen, at: PlanView["at"], isSecond = false) {
  const color = edgeColor(pen, isSecond);
  const line = pieces.flatMap((piece) => piece.line).map(at);
  const d = pathThrough(line, closed);
  if (drawn === "cut") return wide(d, color, GAP + CUT, CUT_DASHES) + wide(d, pen.colors.paper, GAP);
  return wide(d, color, GAP + BAND) + wide(d, pen.colors.paper, GAP);
}

/** A line so wide that it reaches out this far on either side. */
const wide = (d: string, stroke: string, reach: number, dashes?: string): string =>
  element("path", {
    d,
    stroke,
    "stroke-width": 2 * reach,
    "stroke-linejoin": "round",
    "stroke-dasharray": dashes,
  });

/** The dashes of a cut edge. */
export const CUT_DASHES = "8 4";

/**
 * Joints as gaps in the band, stakes outside it: filled where they hold a joint, hollow elsewhere. Pavers have thin
 * joints, and timbers are spiked through.
 */
export function borderMarks({ layout, pen, at, labels, scale }: PlanView): string {
  const { paper, ink } = pen.colors;
  const out = (mark: BorderMark, by: number) => shifted(at(mark), onSheet(mark.outward), by);
  const { drawn } = edgingOfLayout(layout);
  if (drawn === "cut") return "";
  if (drawn === "units") {
    const step = jointsDrawn(layout, scale);
    const across = layout.border
      .flatMap((run) => run.joints)
      .filter((_, index) => index % step === 0)
      .map((joint) => pathThrough([out(joint, GAP), out(joint, GAP + BAND)], false));
    return element("path", { d: across.join(""), stroke: paper, "stroke-width": UNIT_JOINT });
  }
  const joints = layout.border
    .flatMap((run) => run.joints)
    .map((joint) => pen.line(out(joint, GAP - 0.5), out(joint, GAP + BAND + 0.5), paper, 2));
  const stakes = layout.border
    .flatMap((run) => run.stakes)
    .map((stake) => {
      if (stake.kind === "spike") return spikeMark(out(stake, GAP + BAND / 2), ink, paper);
      const spot = out(stake, STAKE_OUT);
      labels.take({ center: spot, width: 8, height: 8 });
      return stakeMark(spot, stake.kind === "joint", ink, paper);
    });
  return element("g", {}, ...joints, ...stakes);
}

/** The width of a joint between pavers, in pixels. */
const UNIT_JOINT = 0.8;

/** A spike: a dot in the timber. */
export const spikeMark = ({ x, y }: { x: number; y: number }, ink: string, paper: string): string =>
  element("circle", { cx: x, cy: y, r: 1.7, fill: paper, stroke: ink, "stroke-width": 0.8 });

/** A stake: a small square, hollow; on its corner and filled where it goes through two pieces. */
export function stakeMark({ x, y }: { x: number; y: number }, isJoint: boolean, ink: string, paper: string): string {
  const half = isJoint ? 4 : 2.4;
  const d = isJoint
    ? `M${x} ${y - half}L${x + half} ${y}L${x} ${y + half}L${x - half} ${y}Z`
    : `M${x - half} ${y - half}h${2 * half}v${2 * half}h${-2 * half}Z`;
  return element("path", {
    d: d.replace(/-?\d+\.\d+/g, (number) => Number(number).toFixed(1)),
    fill: isJoint ? ink : paper,
    stroke: ink,
    "stroke-width": 1.1,
  });
}

/** Where along a piece its name is tried, as shares of its length: the middle first. */
const NAME_AT = [0.5, 0.43, 0.57, 0.36, 0.64, 0.29, 0.71, 0.2, 0.8, 0.1, 0.9];

/** Whether each piece has a name: pavers are too many, a cut edge is none, and a second edging has numbers of its own. */
export const hasNames = (layout: Pick<Layout, "borderRules" | "isSecond">): boolean =>
  edgingOfLayout(layout).drawn === "band" && !layout.isSecond;

/** The name of each piece beside its middle, or as near to it as there is room; on the bed where there is none. */
export function pieceNames(view: PlanView): string {
  if (!hasNames(view.layout)) return "";
  return view.layout.border
    .flatMap((run) => run.pieces)
    .map(({ number, line }) => {
      const places = NAME_AT.map((share) => alongLine(line, share));
      const spots = [STAKE_OUT + 5, STAKE_OUT + 12, -6, -12, -18].flatMap((gap) =>
        places.map((place) => ({ place, out: place.outward, gap })),
      );
      return firstLabel(view, spots, nameOf(number), { bold: true, color: view.pen.colors.border });
    })
    .join("");
}

/** The name of a piece in the drawing and in the list below it. */
export const nameOf = (piece: number): string => `P${piece}`;

/** The point at a share of a line's length, and the way out of the bed there: to the left of the line. */
function alongLine(line: readonly Point[], share: number): BorderMark {
  const lengths = line.slice(1).map((to, i) => distance(must(line[i]), to));
  let left = share * lengths.reduce((sum, length) => sum + length, 0);
  const place = lengths.findIndex((length) => {
    if (left <= length) return true;
    left -= length;
    return false;
  });
  const i = place < 0 ? lengths.length - 1 : place;
  const [from, to] = [must(line[i]), must(line[i + 1])];
  const length = Math.max(must(lengths[i]), Number.MIN_VALUE);
  const outward = { x: -(to.y - from.y) / length, y: (to.x - from.x) / length };
  return { ...between(from, to, place < 0 ? 1 : left / length), outward };
}

/** Sides that follow one another without border. */
function bareStretches(runs: readonly Run[]): Run[][] {
  const start = Math.max(
    0,
    runs.findIndex(({ border }) => border),
  );
  const stretches: Run[][] = [];
  let wasBare = false;
  for (const run of [...runs.slice(start), ...runs.slice(0, start)]) {
    if (!run.border) {
      if (wasBare) must(stretches.at(-1)).push(run);
      else stretches.push([run]);
    }
    wasBare = !run.border;
  }
  return stretches;
}
