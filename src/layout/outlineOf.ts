import { Problem } from "../quantities/problem";
import type { Bed } from "./bed";
import { checkCutOuts } from "./checkCutOuts";
import { checkRing } from "./checkRing";
import { cutOutsOf } from "./cutOuts";
import { refuseEndless } from "./limits";
import { layoutMessages as messages } from "./messages";
import { type Outline, ringOf } from "./outline";
import { rectangleRuns } from "./rectangleRuns";
import { ringPoints, straightRuns } from "./ringPoints";
import { roundRuns } from "./roundRuns";
import type { Run } from "./runs";
import { widthsRuns } from "./widthsRuns";

/**
 * The outline in plan of a bed, however it was measured, with the sides marked that get border.
 *
 * @throws Problem where the measurements make no bed: it names the side, the width or the place.
 * @example outlineOf({ kind: "rectangle", lengthFt: 18.5, widthFt: 5 }).ring.points.length // 4
 */
export function outlineOf(bed: Bed): Outline {
  return outlineThrough(withBorder(bed, runsOf(bed)), bed);
}

/**
 * The same outline without a mark for border: enough for fabric and pins. The worksheet functions take it, whose file
 * is small because it holds nothing of border.
 */
export function borderlessOutlineOf(bed: Bed): Outline {
  return outlineThrough(runsOf(bed), bed);
}

function outlineThrough(runs: readonly Run[], bed: Bed): Outline {
  const outline = { ring: ringOf(runs, 1), cutOuts: cutOutsOf(bed) };
  checkCutOuts(outline);
  return outline;
}

function runsOf(bed: Bed): Run[] {
  refuseEndless(bed);
  switch (bed.kind) {
    case "rectangle":
      return rectangleRuns(bed);
    case "round":
      return roundRuns(bed);
    case "widths":
      return widthsRuns(bed);
    case "points": {
      const points = ringPoints(bed.points, "points");
      checkRing(points, "the outline", "points");
      return straightRuns(points, false);
    }
  }
}

/** Marks the sides that get border; a rounded corner gets it where a side next to it does. */
function withBorder(bed: Bed, runs: readonly Run[]): Run[] {
  const sides = [...new Set(runs.flatMap(({ side }) => (side === undefined ? [] : [side])))];
  const last = Math.max(...sides);
  const isOpenAllRound = bed.kind === "round" || bed.kind === "points";
  const wanted = new Set(bed.borderSides ?? sides.filter((side) => side > 1 || isOpenAllRound));
  for (const side of wanted)
    if (!Number.isInteger(side) || side < 1 || side > last)
      throw new Problem("value", messages.noSuchSide(side, last), "border_sides");
  const gets = (run: Run | undefined) => run?.side !== undefined && wanted.has(run.side);
  return runs.map((run, i) => {
    const border = run.side === undefined ? gets(runs.at(i - 1)) || gets(runs[(i + 1) % runs.length]) : gets(run);
    return { ...run, border };
  });
}
