import { must } from "../quantities/must";
import { INCHES_PER_FOOT } from "../quantities/units";
import { wholeUp } from "../quantities/whole";
import { isOn } from "./boundary";
import { type Chain, chainsOf, cornersOf, pointAlong } from "./chains";
import type { FabricPlan } from "./fabric";
import { refusePins, refusePlaces } from "./limits";
import type { FabricRules } from "./options";
import { isRectangle, type Outline } from "./outline";
import { type Pin, PinBoard } from "./pinBoard";
import { bayLevels, intervalsOver, pinRows, rectanglePins } from "./pinPattern";
import { type Bounds, boundsOf, distance, type Point, SAME_FT, toFrame } from "./plane";
import { endLapsOf, type LapLine, seamLevels, seamsOf } from "./seams";
import { crossings } from "./stretches";

/** Pins of the pattern keep at least this share of the spacing from any other pin. */
export const CLEAR_SHARE = 1 / 3;

/**
 * The pins of a bed, in the frame of its strips.
 *
 * A plain rectangle gets the pattern of BED.PINS as it is; end laps and cut-outs add to it. Any other bed gets a pin
 * at every corner, pins along every overlap, end lap, edge and cut-out without a gap over the spacing, and the
 * dice-five pattern in what is left, where no pin stands within a third of the spacing.
 */
export function placePins(outline: Outline, plan: FabricPlan, rules: FabricRules): Pin[] {
  const spacing = rules.pinSpacingFt;
  const board = new PinBoard(spacing * CLEAR_SHARE);
  const chains = chainsOf(plan.boundary);
  const laps = endLapsOf(plan, rules.endLapFt);
  const seams = seamsOf(plan);
  const pinnedFt = total(chains.map(({ lengthFt }) => lengthFt)) + total([...seams, ...laps].map(lengthOf));
  refusePins(pinnedFt / spacing, plan.boundary.length);
  if (isPlain(outline, plan)) {
    const cutOuts = chains.filter(({ ring }) => ring > 0);
    for (const chain of cutOuts) pinChain(board, chain, spacing);
    const pattern = patternInBed(plan, chains, rules);
    for (const pin of pattern.filter(({ kind }) => kind !== "row")) board.add(pin, pin.kind);
    for (const lap of laps) pinLine(board, lap, spacing);
    const loose = pattern.filter(({ kind }) => kind === "row");
    // Without anything added, every pin of the pattern stays, however close: the count is that of BED.PINS.
    if (cutOuts.length === 0 && laps.length === 0) return pattern;
    for (const pin of loose) if (!board.hasNear(pin)) board.add(pin, "row");
    return board.pins;
  }
  for (const chain of chains) for (const at of cornersOf(chain)) board.add(pointAlong(chain, at), "corner");
  for (const line of [...seams, ...laps]) pinLine(board, line, spacing);
  for (const chain of chains) pinChain(board, chain, spacing);
  fillRows(board, plan, seams, rules);
  return board.pins;
}

const total = (lengths: readonly number[]) => lengths.reduce((sum, length) => sum + length, 0);

const lengthOf = ({ stretch }: LapLine) => stretch.to - stretch.from;

/** Whether the outline is a rectangle that lies square to its strips. */
function isPlain({ ring }: Outline, { frame, reach, bands }: FabricPlan): boolean {
  const isOne = (value: number, ...places: number[]) => places.some((place) => Math.abs(value - place) <= SAME_FT);
  return (
    isRectangle(ring) &&
    ring.points
      .map((point) => toFrame(frame, point))
      .every(({ x, y }) => isOne(x, reach.from, reach.to) && isOne(y, must(bands[0]).low, must(bands.at(-1)).high))
  );
}

/** The pattern of BED.PINS over a rectangle, without what would stand within a cut-out. */
function patternInBed({ boundary, reach, bands }: FabricPlan, chains: readonly Chain[], rules: FabricRules): Pin[] {
  const low = must(bands[0]).low;
  const [length, width] = [reach.to - reach.from, must(bands.at(-1)).high - low];
  const { rollWidthFt, overlapFt, pinSpacingFt, bayFt } = rules;
  const [overlapIn, spacingIn] = [overlapFt * INCHES_PER_FOOT, pinSpacingFt * INCHES_PER_FOOT];
  const all = rectanglePins(length, width, rollWidthFt, overlapIn, spacingIn, bayFt);
  const placed = all.map(({ x, y, kind }): Pin => ({ x: reach.from + x, y: low + y, kind }));
  // The pattern lies within the rectangle: only near a cut-out can a pin stand where no bed is.
  const cutOuts = chains.filter(({ ring }) => ring > 0).map(({ points }) => boundsOf(points));
  return placed.filter((pin) => !cutOuts.some((reach) => isWithin(reach, pin)) || isInBed(boundary, pin));
}

/** Within the bed, or on its edge. */
function isInBed(boundary: FabricPlan["boundary"], pin: Point): boolean {
  if (boundary.some(({ from, to }) => isOn(from, to, pin))) return true;
  return crossings(boundary, pin.y).some(({ from, to }) => from < pin.x && pin.x < to);
}

/** Pins along an overlap or end lap at equal gaps; its ends are left to a pin that already stands close by. */
function pinLine(board: PinBoard, { kind, at, stretch }: LapLine, spacing: number): void {
  const { from, to } = stretch;
  const gaps = Math.max(1, wholeUp((to - from) / spacing));
  for (let i = 0; i <= gaps; i++) {
    const along = from + ((to - from) * i) / gaps;
    const point = kind === "seam" ? { x: along, y: at } : { x: at, y: along };
    const isEnd = i === 0 || i === gaps;
    if (!(isEnd && board.hasNear(point))) board.add(point, kind);
  }
}

/** Pins along the bed's edge or round a cut-out, at equal gaps between corners and the pins that stand on it already. */
function pinChain(board: PinBoard, chain: Chain, spacing: number): void {
  const kind = chain.ring === 0 ? "edge" : "cutOut";
  const reach = boundsOf(chain.points);
  const near = board.pins.filter((pin) => isWithin(reach, pin));
  const fixed = [...cornersOf(chain), ...near.flatMap((pin) => placesOn(chain, pin))].sort((a, b) => a - b);
  const places = fixed.filter((at, i) => i === 0 || at - must(fixed[i - 1]) > SAME_FT);
  if (places.length === 0) places.push(0);
  for (const at of places) board.add(pointAlong(chain, at), kind);
  const ends = chain.closed ? [...places, must(places[0]) + chain.lengthFt] : places;
  for (let i = 0; i + 1 < ends.length; i++) {
    const [from, to] = [must(ends[i]), must(ends[i + 1])];
    const gaps = Math.max(1, wholeUp((to - from) / spacing));
    for (let k = 1; k < gaps; k++) {
      const at = from + ((to - from) * k) / gaps;
      board.add(pointAlong(chain, at % chain.lengthFt), kind);
    }
  }
}

/** Whether a pin is near enough to a chain to stand on it: most of a large bed's pins are not. */
const isWithin = ({ minX, maxX, minY, maxY }: Bounds, { x, y }: Point): boolean =>
  x >= minX - SAME_FT && x <= maxX + SAME_FT && y >= minY - SAME_FT && y <= maxY + SAME_FT;

/** How far along the chain a pin stands on it; nothing where it does not. */
function placesOn({ points, along, lengthFt }: Chain, pin: Point): number[] {
  const i = along.findIndex((start, k) => {
    const next = must(points[(k + 1) % points.length]);
    return (along[k + 1] ?? lengthFt) > start && isOn(must(points[k]), next, pin);
  });
  return i < 0 ? [] : [must(along[i]) + distance(must(points[i]), pin)];
}

/** The dice-five pattern between the lines that are pinned already. */
function fillRows(board: PinBoard, plan: FabricPlan, seams: readonly LapLine[], rules: FabricRules): void {
  const { boundary, reach } = plan;
  const intervals = intervalsOver(reach.to - reach.from, rules.pinSpacingFt);
  const levels = seamLevels(plan);
  refusePlaces(intervals * (levels.length + (must(levels.at(-1)) - must(levels[0])) / rules.bayFt));
  const rows = pinRows(reach.from, reach.to, intervals);
  const fill = (level: number, places: readonly number[]) => {
    const stretches = crossings(boundary, level);
    const pinned = seams.filter(({ at }) => at === level);
    for (const x of places) {
      if (!stretches.some(({ from, to }) => from < x && x < to)) continue;
      if (pinned.some(({ stretch }) => stretch.from <= x && x <= stretch.to)) continue;
      if (!board.hasNear({ x, y: level })) board.add({ x, y: level }, "row");
    }
  };
  levels.slice(0, -1).forEach((low, strip) => {
    const high = must(levels[strip + 1]);
    const { lines, middles } = bayLevels(low, high, intervalsOver(high - low, rules.bayFt));
    for (const level of lines) fill(level, rows.pairs);
    for (const level of middles) fill(level, rows.singles);
    // A seam line beside which only one strip lies is not pinned as an overlap: there the pattern goes on.
    if (strip > 0) fill(low, rows.pairs);
  });
}
