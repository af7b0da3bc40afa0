import { must } from "../../quantities/must";
import type { BorderRun } from "../border";
import type { BorderMark } from "../borderPath";
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
/** How far out stakes stand from the bed's edge. */
const STAKE_OUT = GAP + BAND + 4;

/**
 * Border as a band outside the bed's outer edge, and a hatched band where none is set. Both are drawn as wide lines
 * along the edge, of which the bed drawn over them hides the inner half.
 */
export function borderPart({ layout, pen, at, labels }: PlanView): string {
  const open = bareStretches(layout.outline.ring.runs)
    .map((runs) => [...runs.flatMap(flattened), runEnd(must(runs.at(-1)))].map(at))
    .map((line) => {
      keepClear(labels, line);
      return pathThrough(line, false);
    })
    .map((d) => wide(d, pen.colors.paper, GAP + BAND) + wide(d, `url(#${pen.part("wall")})`, GAP + BAND));
  const outer = layout.border.filter(({ ring }) => ring === 0);
  for (const { pieces } of outer) for (const { line } of pieces) keepClear(labels, line.map(at));
  const bands = outer.map((run) => band(run, pen, at));
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
  return layout.border
    .filter(({ ring }) => ring > 0)
    .map((run) => {
      const id = pen.part(`free-${run.ring}`);
      const clip = element("path", { d: pathThrough(must(cutOuts[run.ring - 1]).ring.points.map(at), true) });
      return element("clipPath", { id }, clip) + element("g", { "clip-path": `url(#${id})` }, band(run, pen, at));
    })
    .join("");
}

function band({ pieces, closed }: BorderRun, pen: Pen, at: PlanView["at"]): string {
  const line = pieces.flatMap((piece) => piece.line).map(at);
  const d = pathThrough(line, closed);
  return wide(d, pen.colors.border, GAP + BAND) + wide(d, pen.colors.paper, GAP);
}

/** A line so wide that it reaches out this far on either side. */
const wide = (d: string, stroke: string, reach: number): string =>
  element("path", { d, stroke, "stroke-width": 2 * reach, "stroke-linejoin": "round" });

/** Joints as gaps in the band, stakes outside it: filled where they hold a joint, hollow elsewhere. */
export function borderMarks({ layout, pen, at, labels }: PlanView): string {
  const { paper, ink } = pen.colors;
  const out = (mark: BorderMark, by: number) => shifted(at(mark), onSheet(mark.outward), by);
  const joints = layout.border
    .flatMap((run) => run.joints)
    .map((joint) => pen.line(out(joint, GAP - 0.5), out(joint, GAP + BAND + 0.5), paper, 2));
  const stakes = layout.border
    .flatMap((run) => run.stakes)
    .map((stake) => {
      const spot = out(stake, STAKE_OUT);
      labels.take({ center: spot, width: 8, height: 8 });
      return stakeMark(spot, stake.kind === "joint", ink, paper);
    });
  return element("g", {}, ...joints, ...stakes);
}

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

/** The name of each piece beside its middle, or as near to it as there is room; on the bed where there is none. */
export function pieceNames(view: PlanView): string {
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
