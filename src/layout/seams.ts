import { must } from "../quantities/must";
import { crossings, inBoth, type Stretch } from "./stretches";
import type { StripPlan } from "./strips";

/** A level line in the frame of the strips along which two layers of fabric are pinned. */
export interface Seam {
  readonly at: number;
  readonly stretch: Stretch;
}

/**
 * Levels between which each strip is pinned by itself: the bed's low side, the middle of every overlap, the high side.
 */
export function seamLevels({ bands }: Pick<StripPlan, "bands">): number[] {
  const overlaps = bands.slice(1).map(({ low }, i) => (low + must(bands[i]).high) / 2);
  return [must(bands[0]).low, ...overlaps, must(bands.at(-1)).high];
}

/** The seams: the middle of each overlap, as far as both strips lie there and bed is under them. */
export function seamsOf(plan: StripPlan): Seam[] {
  const covered = (band: number) => plan.cuts.filter((cut) => cut.band === band);
  return seamLevels(plan)
    .slice(1, -1)
    .flatMap((at, band) =>
      inBoth(inBoth(crossings(plan.boundary, at), covered(band)), covered(band + 1)).map((stretch) => ({
        at,
        stretch,
      })),
    );
}
