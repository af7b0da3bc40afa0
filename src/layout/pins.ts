import { must } from "../quantities/must";
import { pins as countPins, pinGrid } from "../quantities/pins";
import { INCHES_PER_FOOT } from "../quantities/units";
import { wholeUp } from "../quantities/whole";
import { boundaryOf, isOn } from "./boundary";
import { type Chain, chainsOf, cornersOf, pointAlong } from "./chains";
import { refusePins, refusePlaces } from "./limits";
import type { FabricRules } from "./options";
import { borderlessOutlineOf } from "./outlineOf";
import { type Pin, PinBoard, type PinKind } from "./pinBoard";
import { type Bounds, boundsOf, distance, type Point, SAME_FT } from "./plane";
import { type Seam, seamLevels, seamsOf } from "./seams";
import { crossings, type Stretch } from "./stretches";
import { planStrips, type StripPlan } from "./strips";

/** Pins of the pattern keep at least this share of the spacing from a corner, an overlap, the edge, or a cut-out. */
export const CLEAR_SHARE = 1 / 3;

/**
 * How far any place in a bed can be from the nearest pin, in feet: half the diagonal of one row spacing by the widest
 * gap that is left along the edge, which a bed of just that size has from its middle to its four corners.
 *
 * @param spacingFt from row to row at most; `bayFt` the widest bay across a strip.
 * @example reachOfPins(1, 4) // 2.06: half the diagonal of 1 by 4
 */
export const reachOfPins = (spacingFt: number, bayFt: number): number =>
  distance({ x: 0, y: 0 }, { x: spacingFt, y: widestGap(spacingFt, bayFt) }) / 2;

/** The longest stretch of outer edge without a pin. */
const widestGap = (spacingFt: number, bayFt: number): number => Math.max(2 * spacingFt, bayFt);

/** The rows of the dice-five pattern: places along the strips of the pairs, and of the singles between. */
export interface PinRows {
  readonly pairs: readonly number[];
  readonly singles: readonly number[];
}

/** Rows at equal intervals: pairs at every even row and at the last, singles at the odd ones between. */
export function pinRows(from: number, to: number, intervals: number): PinRows {
  const rows = Array.from({ length: intervals + 1 }, (_, row) => from + ((to - from) * row) / intervals);
  return {
    pairs: rows.filter((_, row) => row % 2 === 0 || row === intervals),
    singles: rows.filter((_, row) => row % 2 === 1 && row !== intervals),
  };
}

/**
 * The pins of a bed, in the frame of its strips: the dice-five pattern over the strips, clipped to the outline. Of a
 * plain rectangle there are as many as BED.PINS counts.
 *
 * Each corner has a pin; each overlap has one at every row; a row of pairs has one wherever it meets the outer edge
 * and on the lines between bays; a single row has one in the middle of each bay. Where that leaves a stretch of outer
 * edge longer than two spacings and longer than a bay, or of a cut-out's edge longer than a spacing, it is filled in.
 */
export function placePins(
  plan: StripPlan,
  rules: Pick<FabricRules, "rollWidthFt" | "overlapFt" | "pinSpacingFt" | "bayFt">,
): Pin[] {
  const { boundary, reach, bands } = plan;
  const { pinSpacingFt: spacing, bayFt, rollWidthFt, overlapFt } = rules;
  const [length, width] = [reach.to - reach.from, must(bands.at(-1)).high - must(bands[0]).low];
  const [overlapIn, spacingIn] = [overlapFt * INCHES_PER_FOOT, spacing * INCHES_PER_FOOT];
  const { bays, intervals } = pinGrid(length, width, rollWidthFt, overlapIn, spacingIn, bayFt);
  const chains = chainsOf(boundary);
  const seams = seamsOf(plan);
  const lengths = [...chains.map(({ lengthFt }) => lengthFt), ...seams.map(({ stretch: { from, to } }) => to - from)];
  refusePins(lengths.reduce((sum, feet) => sum + feet, 0) / spacing, boundary.length);
  refusePlaces(countPins(length, width, rollWidthFt, overlapIn, spacingIn, 0, bayFt));
  const rows = pinRows(reach.from, reach.to, intervals);
  const board = new PinBoard(spacing * CLEAR_SHARE);
  for (const chain of chains)
    for (const at of cornersOf(chain)) board.add(pointAlong(chain, at), chain.ring === 0 ? "corner" : "cutOut");
  for (const seam of seams) pinSeam(board, seam, [...rows.pairs, ...rows.singles]);
  const { onEdge, inside } = pattern(plan, seams, rows, bays);
  for (const { pin } of onEdge) board.add(pin, "row");
  const widest = widestGap(spacing, bayFt);
  for (const chain of chains) {
    if (chain.ring === 0) pinChain(board, chain, "edge", widest, rows.pairs, spacing * CLEAR_SHARE);
    else pinChain(board, chain, "cutOut", spacing, [], 0);
  }
  // Pins of the pattern are looked at against what is there now, and not against one another.
  const clear = inside.filter(({ pin, clearFt }) => !board.hasNear(pin, Math.min(clearFt, spacing * CLEAR_SHARE)));
  for (const { pin } of clear) board.add(pin, "row");
  refusePins(board.pins.length);
  return board.pins;
}

/**
 * The pins of a plain rectangle, as many as BED.PINS counts: x along the strips from 0, y across them from 0.
 *
 * @param lengthFt length of the bed along the strips, more than 0; `widthFt` across them.
 * @param rollWidthFt more than 0; overlap 0 or more inches, less than the roll is wide.
 * @param spacingIn from row to row at most; bays are at most `bayFt` wide.
 * @returns row by row, from x = 0.
 * @throws Problem where they are more than any bed takes.
 * @example rectanglePins(12, 12, 12, 0, 18, 3).length // 41
 */
export function rectanglePins(
  lengthFt: number,
  widthFt: number,
  rollWidthFt: number,
  overlapIn: number,
  spacingIn = 12,
  bayFt = 4,
): Pin[] {
  const edge = boundaryOf(borderlessOutlineOf({ kind: "rectangle", lengthFt, widthFt }));
  const [overlapFt, pinSpacingFt] = [overlapIn / INCHES_PER_FOOT, spacingIn / INCHES_PER_FOOT];
  const rules = { rollWidthFt, overlapFt, pinSpacingFt, bayFt };
  const pins = placePins(planStrips(edge, { along: { x: 1, y: 0 }, flipU: 1, flipV: 1 }, rules), rules);
  return pins.sort((a, b) => a.x - b.x || a.y - b.y);
}

/** Pins along an overlap at every row, and at an end that is not near one of these or a corner. */
function pinSeam(board: PinBoard, { at, stretch: { from, to } }: Seam, rows: readonly number[]): void {
  for (const x of rows) if (x > from - SAME_FT && x < to + SAME_FT) board.add({ x, y: at }, "seam");
  for (const x of [from, to]) if (!board.hasNear({ x, y: at })) board.add({ x, y: at }, "seam");
}

interface PatternPin {
  readonly pin: Point;
  /** How near to it another pin takes its place, as far as the pattern itself is not as close. */
  readonly clearFt: number;
}

/** The pattern within the strips: those on the bed's edge apart, which count as pins of the edge. */
function pattern({ boundary, ...plan }: StripPlan, seams: readonly Seam[], rows: PinRows, bays: number) {
  const onEdge: PatternPin[] = [];
  const inside: PatternPin[] = [];
  const place = (level: number, places: readonly number[], clearFt: number) => {
    const stretches = crossings(boundary, level);
    for (const x of places) {
      const stretch = stretches.find(({ from, to }) => x > from - SAME_FT && x < to + SAME_FT);
      if (!stretch || seams.some(({ at, stretch: seam }) => at === level && isIn(seam, x))) continue;
      const isOnEdge = x < stretch.from + SAME_FT || x > stretch.to - SAME_FT;
      (isOnEdge ? onEdge : inside).push({ pin: { x, y: level }, clearFt });
    }
  };
  const levels = seamLevels(plan);
  levels.slice(0, -1).forEach((low, strip) => {
    const bay = (must(levels[strip + 1]) - low) / bays;
    // Half a bay is as close as the pattern's own pins may stand to an edge or overlap beside them.
    const clearFt = (bay / 2) * (1 - SAME_FT);
    for (let i = 1; i < bays; i++) place(low + i * bay, rows.pairs, clearFt);
    for (let i = 0; i < bays; i++) place(low + (i + 0.5) * bay, rows.singles, clearFt);
    // A seam line beside which only one strip lies is not pinned as an overlap: there it is a line between bays.
    if (strip > 0) place(low, rows.pairs, clearFt);
  });
  return { onEdge, inside };
}

const isIn = ({ from, to }: Stretch, x: number) => x > from - SAME_FT && x < to + SAME_FT;

/**
 * Pins along the bed's edge or round a cut-out: where rows meet it, unless that is near a pin that it has already, and
 * at equal gaps where a stretch longer than `widest` is left.
 */
function pinChain(
  board: PinBoard,
  chain: Chain,
  kind: PinKind,
  widest: number,
  rows: readonly number[],
  clearFt: number,
): void {
  const { lengthFt, closed } = chain;
  const reach = boundsOf(chain.points);
  const near = board.pins.filter((pin) => isWithin(reach, pin));
  const pinned = [...cornersOf(chain), ...near.flatMap((pin) => placesOn(chain, pin))].sort((a, b) => a - b);
  const places = withMeetings(pinned, meetings(chain, rows), closed ? lengthFt : Number.POSITIVE_INFINITY, clearFt);
  for (const at of places) board.add(pointAlong(chain, at), kind);
  const ends = closed ? [...places, must(places[0]) + lengthFt] : places;
  for (let i = 0; i + 1 < ends.length; i++) {
    const [from, to] = [must(ends[i]), must(ends[i + 1])];
    const gaps = wholeUp((to - from) / widest);
    for (let k = 1; k < gaps; k++) board.add(pointAlong(chain, (from + ((to - from) * k) / gaps) % lengthFt), kind);
  }
}

/** What is pinned already, and between it the places where rows meet the edge, each as far from the next as it has to be. */
function withMeetings(pinned: readonly number[], met: number[], aroundFt: number, clearFt: number): number[] {
  const places: number[] = [];
  const ahead = [...pinned, (pinned[0] ?? 0) + aroundFt];
  let before = (pinned.at(-1) ?? Number.NEGATIVE_INFINITY) - aroundFt;
  let next = 0;
  const passTo = (at: number) => {
    for (; next < pinned.length && must(pinned[next]) <= at; next++) {
      before = must(pinned[next]);
      places.push(before);
    }
  };
  for (const at of met.sort((a, b) => a - b)) {
    passTo(at);
    const after = Math.min(must(ahead[next]), (places[0] ?? at) + aroundFt);
    if (at - before < clearFt || after - at < clearFt) continue;
    before = at;
    places.push(at);
  }
  passTo(Number.POSITIVE_INFINITY);
  return places.length > 0 ? places : [0];
}

/** How far along a chain the rows meet it: where it crosses them, and at both ends of where it runs along one. */
function meetings({ points, along, closed }: Chain, rows: readonly number[]): number[] {
  const found: number[] = [];
  const count = points.length;
  points.forEach((a, i) => {
    const b = points[i + 1] ?? (closed ? must(points[0]) : undefined);
    const before = points[i - 1] ?? (closed ? must(points[count - 1]) : undefined);
    const isAt = (point: Point | undefined, x: number) => !!point && Math.abs(point.x - x) <= SAME_FT;
    const [least, most] = [Math.min(a.x, b?.x ?? a.x) - SAME_FT, Math.max(a.x, b?.x ?? a.x) + SAME_FT];
    for (let row = firstFrom(rows, least); row < rows.length && must(rows[row]) <= most; row++) {
      const x = must(rows[row]);
      if (isAt(a, x)) {
        if (!(isAt(before, x) && isAt(b, x))) found.push(must(along[i]));
      } else if (b && !isAt(b, x) && a.x > x !== b.x > x) {
        found.push(must(along[i]) + distance(a, b) * ((x - a.x) / (b.x - a.x)));
      }
    }
  });
  return found;
}

/** The first of the places, in order, that is not before another. */
function firstFrom(places: readonly number[], least: number): number {
  let [low, high] = [0, places.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (must(places[middle]) < least) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Whether a pin is near enough to a chain to be on it: most of a large bed's pins are not. */
const isWithin = ({ minX, maxX, minY, maxY }: Bounds, { x, y }: Point): boolean =>
  x >= minX - SAME_FT && x <= maxX + SAME_FT && y >= minY - SAME_FT && y <= maxY + SAME_FT;

/** How far along the chain a pin is; nothing where it is not on it. */
function placesOn({ points, along, lengthFt }: Chain, pin: Point): number[] {
  const i = along.findIndex((start, k) => {
    const next = must(points[(k + 1) % points.length]);
    return (along[k + 1] ?? lengthFt) > start && isOn(must(points[k]), next, pin);
  });
  return i < 0 ? [] : [must(along[i]) + distance(must(points[i]), pin)];
}
