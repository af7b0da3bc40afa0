import { areaWidths } from "../quantities/widths";
import type { Bed } from "./bed";
import { netArea, type Outline, ringArea } from "./outline";

/** The net area; a bed taped by widths is calculated by its rule, since its edge bends between the widths. */
export function areaInPlan(bed: Bed, outline: Outline): number {
  if (bed.kind !== "widths") return netArea(outline);
  const gross = areaWidths(bed.spacingFt, bed.widthsFt, bed.rule);
  return gross - ringArea(outline.ring) + netArea(outline);
}
