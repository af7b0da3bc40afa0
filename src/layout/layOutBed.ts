import { SHORTEST_PIECE_FT } from "../quantities/edging";
import { INCHES_PER_FOOT } from "../quantities/units";
import { areaInPlan } from "./areaInPlan";
import type { Bed } from "./bed";
import { type BorderRun, placeBorder } from "./border";
import { layFabric } from "./layFabric";
import type { FabricLayout, Layout } from "./layout";
import { layoutNotes as notes } from "./messages";
import { borderRulesOf, fabricRulesOf, type LayoutOptions } from "./options";
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
  const bordered = ringsOf(outline).flatMap(({ runs }) => runs.filter((run) => run.border));
  return {
    ...fabric,
    bed,
    outline,
    areaSqFt: areaInPlan(bed, outline),
    edgeFt: ringLength(outline.ring),
    borderFt: bordered.reduce((sum, run) => sum + runLength(run), 0),
    cutAroundFt: outline.cutOuts.reduce((sum, { ring }) => sum + ringLength(ring), 0),
    border,
    borderRules,
    counts: {
      ...fabric.counts,
      pieces: border.reduce((sum, run) => sum + run.pieces.length, 0),
      stakes: border.reduce((sum, run) => sum + run.stakes.length, 0),
    },
    notes: [...notesOnArea(bed, outline), ...notesOnEndLaps(fabric), ...notesOnPieces(border)],
  };
}

/** End laps that lie between two rows of pins, which happens where rows are wider apart than the lap is long. */
function notesOnEndLaps({ cuts, pins, rules }: FabricLayout): string[] {
  return cuts.flatMap(({ number, pieces, corners: [start, end, , far] }) => {
    const [length, width] = [distance(start, end), distance(start, far)];
    const along = (pin: Point) =>
      ((pin.x - start.x) * (end.x - start.x) + (pin.y - start.y) * (end.y - start.y)) / length;
    const across = (pin: Point) =>
      ((pin.x - start.x) * (far.x - start.x) + (pin.y - start.y) * (far.y - start.y)) / width;
    const isIn = (at: number, from: number, to: number) => at > from - SAME_FT && at < to + SAME_FT;
    const isPinned = (from: number) =>
      pins.some((pin) => isIn(along(pin), from, from + rules.endLapFt) && isIn(across(pin), 0, width));
    const isLoose = pieces.slice(1).some(({ startsAtFt }) => !isPinned(startsAtFt));
    return isLoose ? [notes.looseEndLap(number, rules.pinSpacingFt * INCHES_PER_FOOT)] : [];
  });
}

/** A piece that is bought for less than an inch. */
function notesOnPieces(border: readonly BorderRun[]): string[] {
  return border
    .flatMap(({ pieces }) => pieces)
    .flatMap(({ number, lengthFt }) => (lengthFt < SHORTEST_PIECE_FT ? [notes.shortPiece(number)] : []));
}

function notesOnArea(bed: Bed, outline: Outline): string[] {
  const [reckoned, drawn] = [areaInPlan(bed, outline), netArea(outline)];
  return Math.abs(reckoned - drawn) > drawn * NOTEWORTHY_SHARE ? [notes.straightBetweenWidths(reckoned, drawn)] : [];
}

/** Two areas that differ by less than this share need no word. */
export const NOTEWORTHY_SHARE = 0.005;
