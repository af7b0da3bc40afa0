import { workOf } from "../../quantities/edgingWork";
import { must } from "../../quantities/must";
import type { Layout } from "../layout";
import { edgingOfLayout, secondOfLayout } from "./borderPart";
import { countOf, cutLength, oneOf, taped } from "./words";

/** The plan in words, for those who hear it: shape, size, what lies where, and every length to cut. */
export function describePlan(layout: Layout): string {
  const { areaSqFt, cuts, counts, outline, directionDegrees, layers = 1 } = layout;
  const each = layers > 1 ? `${layers} layers, each ` : "";
  const { sqFt, pins } = layout.notDrawn ?? { sqFt: 0, pins: 0 };
  const free = outline.cutOuts.map(({ name }) => name);
  return [
    `${shapeOf(layout)}, ${areaSqFt.toFixed(1)} square feet${sqFt > 0 ? `, ${sqFt.toFixed(1)} of them other areas without stone` : ""}.`,
    ...(free.length > 0 ? [`Cut-outs: ${free.join(", ")}.`] : []),
    ...(cuts.length > 0
      ? [
          `Fabric in ${each}${countOf(counts.strips, "strip")} at ${Math.round(directionDegrees)} degrees to the base line:`,
          `${cuts.map(({ number, lengthFt }) => `cut ${number}, ${cutLength(lengthFt)}`).join("; ")}.`,
          `${countOf(counts.pins + pins, "pin")}${pins > 0 ? `, ${pins} of them around other areas` : ""}.`,
        ]
      : ["No fabric."]),
    ...edgings(layout).map((one) => `${edgingWords(one, " ", " with ")}.`),
  ].join(" ");
}

/** The edgings of a bed: the first, and the second in its place. */
export const edgings = (layout: Layout): Layout[] =>
  [layout, secondOfLayout(layout)].filter((one) => one !== undefined).filter(({ border }) => border.length > 0);

/**
 * The edging of a bed in words.
 *
 * @param after and @param before what goes after its name, and before its stakes.
 * @example edgingWords(layout, ": ", ", ") // `Edging: 10' in 2 pieces, 5 stakes`
 */
export function edgingWords(layout: Layout, after: string, before: string): string {
  const { borderFt, counts } = layout;
  const kind = edgingOfLayout(layout);
  const { edging, stakeLine } = kind.lines;
  const count = (number: number, unit: string) => countOf(number, oneOf(unit), unit);
  return [
    `${workOf(kind).called}${after}${taped(borderFt)}`,
    edging ? ` in ${count(counts.pieces, edging.unit)}` : "",
    stakeLine ? `${before}${count(counts.stakes, stakeLine.unit)}` : "",
  ].join("");
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
