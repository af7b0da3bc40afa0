import { shortPieces } from "../quantities/edging";
import { INCHES_PER_FOOT } from "../quantities/units";
import { areaInPlan } from "./areaInPlan";
import type { Bed } from "./bed";
import { type BorderRun, placeBorder } from "./border";
import { layFabric } from "./layFabric";
import type { FabricLayout, Layout, SecondBorder } from "./layout";
import { layoutNotes as notes } from "./messages";
import { type BorderOptions, type BorderRules, borderRulesOf, fabricRulesOf, type LayoutOptions } from "./options";
import { netArea, type Outline, ringLength, ringsOf } from "./outline";
import { outlineOf } from "./outlineOf";
import { distance, type Point, SAME_FT } from "./plane";
import { runLength } from "./runs";

/**
 * Lays a bed out in plan: strips of fabric in the direction that takes least, the lengths to cut, pins, and border
 * pieces with their joints and stakes. The same bed and options give the same layout.
 *
 * @param bed the bed as measured, in feet.
 * @param options roll, laps, pins and border; what is left out takes its default.
 * @returns the layout as plain data.
 * @throws Problem where the bed or an option cannot be worked with; it names the place.
 * @example
 * layOutBed({ kind: "rectangle", lengthFt: 20, widthFt: 11 }, { rollWidthFt: 6, overlapIn: 12 }).counts.strips // 2
 */
export function layOutBed(bed: Bed, options: LayoutOptions): Layout {
  const rules = fabricRulesOf(options);
  const borderRules = options.border && borderRulesOf(options.border);
  const outline = outlineOf(bed);
  const fabric = layFabric(outline, rules);
  const border = borderRules ? placeBorder(outline, borderRules) : [];
  return {
    ...fabric,
    bed,
    outline,
    areaSqFt: areaInPlan(bed, outline),
    edgeFt: ringLength(outline.ring),
    borderFt: borderFtOf(outline),
    cutAroundFt: outline.cutOuts.reduce((sum, { ring }) => sum + ringLength(ring), 0),
    border,
    borderRules,
    counts: {
      ...fabric.counts,
      ...countsOf(border, borderRules),
    },
    notes: [...notesOnArea(bed, outline), ...notesOnEndLaps(fabric), ...notesOnPieces(border, borderRules)],
  };
}

/**
 * A second edging along some sides of a bed.
 *
 * @param borderSides their numbers, from 1.
 * @throws Problem as for {@link layOutBed}.
 * @example layOutSecond({ kind: "rectangle", lengthFt: 20, widthFt: 11 }, [3], { pieceLengthFt: 8, stakeSpacingIn: 30 }).pieces // 3
 */
export function layOutSecond(bed: SidedBed, borderSides: readonly number[], options: BorderOptions): SecondBorder {
  const outline = outlineOf({ ...bed, borderSides });
  const borderRules = borderRulesOf(options);
  const border = placeBorder(outline, borderRules);
  return { outline, borderFt: borderFtOf(outline), border, borderRules, ...countsOf(border, borderRules) };
}

/** A bed whose sides have numbers. */
export type SidedBed = Extract<Bed, { kind: "rectangle" | "widths" }>;

function borderFtOf(outline: Outline): number {
  const bordered = ringsOf(outline).flatMap(({ runs }) => runs.filter((run) => run.border));
  return bordered.reduce((sum, run) => sum + runLength(run), 0);
}

/** A cut edge is no piece. */
const countsOf = (border: readonly BorderRun[], rules: BorderRules | undefined) => ({
  pieces: rules?.kind?.drawn === "cut" ? 0 : border.reduce((sum, run) => sum + run.pieces.length, 0),
  stakes: border.reduce((sum, run) => sum + run.stakes.length, 0),
});

/** End laps that lie between two rows of pins, which happens where rows are wider apart than the lap is long. */
function notesOnEndLaps({ cuts, pins, rules }: FabricLayout): string[] {
  return cuts.flatMap(({ number, pieces, corners: [start, end, , far] }) => {
    const isFrom = (to: Point, from: number, length: number) => (pin: Point) => {
      const at = ((pin.x - start.x) * (to.x - start.x) + (pin.y - start.y) * (to.y - start.y)) / distance(start, to);
      return at > from - SAME_FT && at < from + length + SAME_FT;
    };
    const own = pieces.length > 1 ? pins.filter(isFrom(far, 0, distance(start, far))) : [];
    const isLoose = pieces.slice(1).some(({ startsAtFt }) => !own.some(isFrom(end, startsAtFt, rules.endLapFt)));
    return isLoose
      ? [notes.looseEndLap(number, rules.pinSpacingFt * INCHES_PER_FOOT, rules.endLapFt * INCHES_PER_FOOT)]
      : [];
  });
}

/** Pieces that are bought for less than an inch. */
function notesOnPieces(border: readonly BorderRun[], rules: BorderRules | undefined): string[] {
  if (!rules) return [];
  const runs = border.map(({ lengthFt, closed }) => ({ feet: lengthFt, closed }));
  return shortPieces(runs, rules.pieceLengthFt, rules.lapFt * INCHES_PER_FOOT).map(notes.shortPiece);
}

function notesOnArea(bed: Bed, outline: Outline): string[] {
  const [calculated, drawn] = [areaInPlan(bed, outline), netArea(outline)];
  return Math.abs(calculated - drawn) > drawn * NOTEWORTHY_SHARE
    ? [notes.straightBetweenWidths(calculated, drawn)]
    : [];
}

/** Two areas that differ by less than this share need no word. */
export const NOTEWORTHY_SHARE = 0.005;
