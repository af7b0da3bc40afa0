import { fabricStrips } from "../../quantities/fabric";
import { INCHES_PER_FOOT } from "../../quantities/units";
import { needs } from "../argument";
import { overlapIn, rollWidth } from "../arguments";
import { declare } from "../declare";
import { feetOf, minus, type Operand, wholeUpOf } from "../native/arithmetic";
import { feet } from "../read";
import { inFeet, roundedUp, shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const FABRIC_STRIPS = worksheetFunction(fabricStrips, needs("bed_width", feet), rollWidth, overlapIn);

export const fabricStripsDeclared = /* @__PURE__ */ declare(FABRIC_STRIPS, {
  name: "FABRIC_STRIPS",
  purpose: "Lay and pin fabric",
  about: "Fabric strips side by side across a bed, each lapping the next.",
  gives: "fabric strips",
  returns: "Whole strips.",
  kind: "count",
  whole: true,
  rule: "One strip if the roll covers the width. Otherwise (width − overlap) ÷ (roll width − overlap), rounded up.",
  example: "=BED.FABRIC_STRIPS(11, 6, 12) gives 2",
  source: "Plain arithmetic over strips and overlaps.",
  related: ["FABRIC_AREA", "FABRIC_ROLLS", "PINS"],
  arguments: { bed_width: { about: "Bed width, across the strips: feet, or text like 11'.", role: "width" } },
  native: (bed, roll, overlap) => ({
    text: stripsFormula(bed, roll, overlap),
    when: [overlapFits(roll, overlap)],
  }),
  working: (answer, bed, roll, overlap) => stripLines(answer, bed, roll, overlap),
});

/** How strips of fabric come to their number. */
export function stripLines(strips: number, width: number, roll: number, overlapIn: number): string[] {
  if (strips === 1 && width <= roll) return ["1 strip: the roll is as wide as the bed"];
  const lap = overlapIn / INCHES_PER_FOOT;
  const how = `(${shown(width)} − ${shown(lap)}) ÷ (${shown(roll)} − ${shown(lap)})`;
  const line = `strips: ${roundedUp(how, (width - lap) / (roll - lap))}`;
  return overlapIn > 0 ? [inFeet(overlapIn), line] : [line];
}

/** Strips side by side across a bed, in an ordinary formula. */
export function stripsFormula(bed: Operand, roll: Operand, overlap: Operand): string {
  const lap = feetOf(overlap);
  return `IF(${bed.text}<=${roll.text},1,${wholeUpOf(`${minus(bed.text, lap)}/${minus(roll.text, lap)}`)})`;
}

/** An overlap has to be less than the roll is wide. */
export function overlapFits(roll: Operand, overlap: Operand): readonly string[] {
  return overlap.constant === 0 ? [] : [`${feetOf(overlap)}<${roll.text}`];
}
