import { quoted } from "../quantities/messages";
import type { Bed, CutOut } from "./bed";
import { checkRing } from "./checkRing";
import { type OutlineCutOut, ringOf } from "./outline";
import { finitePoint, positive } from "./readMeasure";
import { ringPoints, straightRuns } from "./ringPoints";
import type { Run } from "./runs";

/**
 * The cut-outs of a bed as rings; the inner circle of a round bed is the first.
 *
 * @throws Problem that names the cut-out and what is wrong with it.
 */
export function cutOutsOf(bed: Bed): OutlineCutOut[] {
  const given = bed.cutOuts ?? [];
  if (bed.kind !== "round" || !bed.innerDiameterFt) return given.map(readCutOut);
  const inner: CutOut = {
    kind: "circle",
    center: { x: 0, y: 0 },
    diameterFt: bed.innerDiameterFt,
    name: "inner circle",
    border: bed.innerBorder ?? false,
  };
  return [inner, ...given].map(readCutOut);
}

function readCutOut(cutOut: CutOut, index: number): OutlineCutOut {
  const name = cutOut.name?.trim() || `cut-out ${index + 1}`;
  const border = cutOut.border ?? false;
  if (cutOut.kind === "circle") {
    const radius = positive(`The diameter of ${quoted(name)}`, cutOut.diameterFt, "cut_outs") / 2;
    const center = finitePoint(`the center of ${quoted(name)}`, cutOut.center, "cut_outs");
    const circle: Run = { kind: "arc", side: 1, center, radius, startAngle: 0, sweep: -2 * Math.PI, border };
    return { name, ring: ringOf([circle], -1) };
  }
  const points = ringPoints(cutOut.points, "cut_outs");
  checkRing(points, quoted(name), "cut_outs");
  return { name, ring: ringOf(straightRuns(points, border), -1) };
}
