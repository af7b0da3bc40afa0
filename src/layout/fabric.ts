import { must } from "../quantities/must";
import { wholeUp } from "../quantities/whole";
import { boundaryOf, type Segment } from "./boundary";
import { directionAt, directionsOf } from "./directions";
import type { FabricRules } from "./options";
import type { Outline } from "./outline";
import { type Frame, type Point, SAME_FT } from "./plane";
import { type RollPiece, takeOffRolls } from "./rolls";
import { areaWithin } from "./stretches";
import { type Band, type BandCut, planStrips, type StripPlan } from "./strips";

/** The strips of a bed with the pieces that each cut comes in, and what that takes. */
export interface FabricPlan extends StripPlan {
  /** For each cut, its pieces off the rolls. */
  readonly pieces: readonly (readonly RollPiece[])[];
  readonly rolls: number;
  /** Feet taken off the rolls, full width, end laps included. */
  readonly lengthFt: number;
}

/** A way to lay the strips, and what it takes. */
interface Way {
  readonly frame: Frame;
  readonly rolls: number;
  readonly lengthFt: number;
  readonly cuts: number;
}

/**
 * Chooses the direction of laying: along the bed, unless another takes fewer rolls or, of as many rolls, fewer cuts.
 * Directions tried are those of the sides and of the smallest enclosing rectangle, or the one set by hand.
 *
 * @returns the chosen one; several where one direction can be begun from different ends at the same cost.
 */
export function chooseFabric(outline: Outline, rules: FabricRules): FabricPlan[] {
  const edge = boundaryOf(outline);
  const { directionDegrees } = rules;
  const directions = directionDegrees === undefined ? directionsOf(outline) : [directionAt(directionDegrees)];
  const ways = directions.flatMap((along) => waysAlong(along, edge, rules));
  const best = ways.reduce((found, way) => (saving(found, way) > 0 ? way : found));
  const equal = ways.filter((way) => way.frame.along === best.frame.along && saving(best, way) === 0);
  return equal.map(({ frame }) => {
    const plan = planStrips(edge, frame, rules);
    return { ...plan, ...offRolls(plan.cuts, rules) };
  });
}

/**
 * The four ways to begin in one direction: from either side, and from either end. First come those from the left, or
 * from the base line, as a crew begins where nothing speaks against it.
 */
function waysAlong(along: Point, edge: readonly Segment[], rules: FabricRules): Way[] {
  // Across the strips lies (-y, x), which points to the left where y is above 0.
  const sides = along.y > SAME_FT ? ([-1, 1] as const) : ([1, -1] as const);
  return sides.flatMap((flipV) => {
    const { cuts } = planStrips(edge, { along, flipU: 1, flipV }, rules);
    const fromOtherEnd = [...cuts].sort((a, b) => a.band - b.band || b.from - a.from);
    return [cuts, fromOtherEnd].map((ordered, i): Way => {
      const { rolls, lengthFt } = offRolls(ordered, rules);
      return { frame: { along, flipU: i === 0 ? 1 : -1, flipV }, rolls, lengthFt, cuts: cuts.length };
    });
  });
}

function offRolls(cuts: readonly BandCut[], { rollLengthFt, endLapFt }: FabricRules) {
  const lengths = cuts.map(({ from, to }) => to - from);
  const pieces = takeOffRolls(lengths, rollLengthFt, endLapFt);
  const all = pieces.flat();
  const lengthFt = all.reduce((sum, piece) => sum + piece.lengthFt, 0);
  return { pieces, rolls: all.at(-1)?.roll ?? 0, lengthFt };
}

/**
 * Above 0 where the second way is the better one. Within one direction the shorter length off the rolls is; fabric that
 * another direction would leave on a roll that is bought anyway is no reason for more cuts.
 */
function saving(one: Way, other: Way): number {
  const shorter = one.frame.along === other.frame.along ? one.lengthFt - other.lengthFt : 0;
  return one.rolls - other.rolls || one.cuts - other.cuts || (Math.abs(shorter) > SAME_FT ? shorter : 0);
}

/**
 * Square feet of fabric that lie in the bed, laps counted twice: each strip as far as it covers bed, and the end laps
 * by the rule of BED.FABRIC_AREA, ⌈(L − e)/(S − e)⌉ pieces to a cut.
 */
export function fabricInBed(plan: StripPlan, { rollLengthFt, endLapFt }: FabricRules): number {
  return plan.cuts.reduce((area, cut) => {
    const { low, high }: Band = must(plan.bands[cut.band]);
    const laps = lapsOf(cut, rollLengthFt, endLapFt);
    return area + areaWithin(plan.boundary, low, high, cut) + laps * endLapFt * (high - low);
  }, 0);
}

function lapsOf({ from, to }: BandCut, rollLengthFt: number, endLapFt: number): number {
  const length = to - from;
  return length <= rollLengthFt ? 0 : wholeUp((length - endLapFt) / (rollLengthFt - endLapFt)) - 1;
}
