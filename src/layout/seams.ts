import { must } from "../quantities/must";
import type { FabricPlan } from "./fabric";
import { crossings, inBoth, type Stretch } from "./stretches";

/** A line in the frame of the strips along which two layers of fabric are pinned: level (a seam) or upright (an end lap). */
export interface LapLine {
  readonly kind: "seam" | "lap";
  /** The level of a seam, or the place along the strips of an end lap. */
  readonly at: number;
  readonly stretch: Stretch;
}

/**
 * Levels between which each strip is pinned by itself: the bed's low side, the middle of every overlap, the high side.
 */
export function seamLevels({ bands }: FabricPlan): number[] {
  const overlaps = bands.slice(1).map(({ low }, i) => (low + must(bands[i]).high) / 2);
  return [must(bands[0]).low, ...overlaps, must(bands.at(-1)).high];
}

/** The seams: the middle of each overlap, as far as both strips lie there and bed is under them. */
export function seamsOf(plan: FabricPlan): LapLine[] {
  const covered = (band: number) => plan.cuts.filter((cut) => cut.band === band);
  return seamLevels(plan)
    .slice(1, -1)
    .flatMap((at, band) =>
      inBoth(inBoth(crossings(plan.boundary, at), covered(band)), covered(band + 1)).map((stretch) => {
        return { kind: "seam" as const, at, stretch };
      }),
    );
}

/** The end laps: the middle of each lap of two pieces, from seam to seam, as far as bed is under it. */
export function endLapsOf(plan: FabricPlan, endLapFt: number): LapLine[] {
  const levels = seamLevels(plan);
  return plan.cuts.flatMap((cut, i) =>
    must(plan.pieces[i])
      .slice(1)
      .flatMap(({ startsAtFt }) => {
        const at = cut.from + startsAtFt + endLapFt / 2;
        const between = { from: must(levels[cut.band]), to: must(levels[cut.band + 1]) };
        return inBoth(crossings(plan.boundary, at, true), [between]).map((stretch) => {
          return { kind: "lap" as const, at, stretch };
        });
      }),
  );
}
