import { must } from "../../quantities/must";
import type { Layout } from "../layout";
import { countOf, cutLength, taped } from "./words";

/** The plan in words, for those who hear it: shape, size, what lies where, and every length to cut. */
export function describePlan(layout: Layout): string {
  const { areaSqFt, cuts, counts, outline, borderFt, directionDegrees } = layout;
  const { sqFt, pins } = layout.notDrawn ?? { sqFt: 0, pins: 0 };
  const free = outline.cutOuts.map(({ name }) => name);
  return [
    `${shapeOf(layout)}, ${areaSqFt.toFixed(1)} square feet${sqFt > 0 ? `, ${sqFt.toFixed(1)} of them other areas without stone` : ""}.`,
    ...(free.length > 0 ? [`Cut-outs: ${free.join(", ")}.`] : []),
    `Fabric in ${countOf(counts.strips, "strip")} at ${Math.round(directionDegrees)} degrees to the base line:`,
    `${cuts.map(({ number, lengthFt }) => `cut ${number}, ${cutLength(lengthFt)}`).join("; ")}.`,
    `${countOf(counts.pins + pins, "pin")}${pins > 0 ? `, ${pins} of them around other areas` : ""}.`,
    ...(counts.pieces > 0
      ? [`Edging ${taped(borderFt)} in ${countOf(counts.pieces, "piece")} with ${countOf(counts.stakes, "stake")}.`]
      : []),
  ].join(" ");
}

function shapeOf({ bed }: Layout): string {
  switch (bed.kind) {
    case "rectangle": {
      const rounded = bed.cornerRadiusFt ? (bed.roundedCorners ?? 0) : 0;
      const corners =
        rounded > 0 ? ` with ${countOf(rounded, "corner")} rounded to ${taped(must(bed.cornerRadiusFt))}` : "";
      return `Rectangular bed, ${taped(bed.lengthFt)} by ${taped(bed.widthFt)}${corners}`;
    }
    case "round": {
      const inner = bed.innerDiameterFt ? `, ${taped(bed.innerDiameterFt)} open in the middle` : "";
      return `Round bed, ${taped(bed.diameterFt)} across${inner}`;
    }
    case "widths":
      return `Bed taped by ${bed.widthsFt.length} widths, every ${taped(bed.spacingFt)}: ${bed.widthsFt.map(taped).join(", ")}`;
    case "points":
      return `Bed given by ${bed.points.length} points`;
  }
}
