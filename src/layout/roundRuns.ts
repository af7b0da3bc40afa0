import { Problem } from "../quantities/problem";
import type { RoundBed } from "./bed";
import { layoutMessages as messages } from "./messages";
import { atLeastZero, positive } from "./readMeasure";
import type { Run } from "./runs";

/** The edge of a round bed, centered on x = 0, y = 0. */
export function roundRuns(bed: RoundBed): Run[] {
  const outer = positive("The diameter", bed.diameterFt, "diameter");
  const inner = atLeastZero("The inner diameter", bed.innerDiameterFt ?? 0, "inner_diameter");
  if (inner >= outer) throw new Problem("value", messages.innerTooLarge(inner, outer), "inner_diameter");
  const center = { x: 0, y: 0 };
  return [{ kind: "arc", side: 1, center, radius: outer / 2, startAngle: 0, sweep: 2 * Math.PI, border: false }];
}
