import { areaRectangle } from "../../quantities/area";
import { may } from "../argument";
import { bedLength, bedWidth, cornerRadius } from "../arguments";
import { declare } from "../declare";
import { nothingBeside, type Operand, withSlack } from "../native/arithmetic";
import { count } from "../read";
import { areas } from "../readRanges";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const AREA_RECTANGLE = worksheetFunction(
  areaRectangle,
  bedLength,
  bedWidth,
  cornerRadius,
  may("rounded_corners", count, 0, 4),
  may("cut_outs", areas),
);

export const areaRectangleDeclared = /* @__PURE__ */ declare(AREA_RECTANGLE, {
  name: "AREA_RECTANGLE",
  purpose: "Measure the bed",
  about: "Area of a rectangular bed, less rounded corners and cut-outs.",
  gives: "area of a rectangle",
  returns: "Square feet.",
  kind: "sq ft",
  rule: "Length times width, minus 0.2146 × radius² for each rounded corner, minus the cut-outs.",
  example: `=BED.AREA_RECTANGLE("18' 6""", 5, 2, 2) gives 90.7832`,
  source: "Plane geometry: a rounded corner takes off (1 − π/4) of its radius squared.",
  related: ["EDGE_LENGTH", "STONE_TONS", "DIG_YARDS", "LAYOUT_RECTANGLE"],
  arguments: {
    rounded_corners: { about: "How many corners are rounded, 0 to 4. Default: 0." },
    cut_outs: { about: "Areas to deduct, in sq ft: one cell or a range. Blanks are skipped." },
  },
  native: (long, wide, radius, corners, cutOuts) => {
    const isRounded = radius.constant !== 0 && corners.constant !== 0;
    const rounded = isRounded ? `-${corners.text}*(1-PI()/4)*${radius.text}^2` : "";
    const whole = `${long.text}*${wide.text}${rounded}`;
    const fits = withSlack(`MIN(${long.text},${wide.text})/IF(${corners.text}>1,2,1)`);
    if (cutOuts.constant === 0)
      return { text: whole, when: [isRounded ? [orNone(corners, `${radius.text}<=${fits}`)] : []] };
    return {
      text: `${whole}-${cutOuts.text}`,
      when: [
        isRounded ? [orNone(corners, `${radius.text}<=${fits}`)] : [],
        [`${whole}-${cutOuts.text}>${nothingBeside(whole)}`],
      ],
    };
  },
  working: (answer, length, width, radius, count, cutOuts) => {
    const whole = length * width;
    const cutOut = cutOuts.reduce((sum, one) => sum + one, 0);
    const corners = whole - areaRectangle(length, width, radius, count);
    const lines = [`${shown(length)} × ${shown(width)} = ${shown(whole)} sq ft`];
    if (corners > 0) {
      const each = `${shown(count)} × (1 − π/4) × ${shown(radius)}²`;
      lines.push(`${shown(count)} rounded corners: ${each} = ${shown(corners)} sq ft less`);
    }
    if (cutOut > 0) lines.push(`cut-outs: ${shown(cutOut)} sq ft less`);
    if (lines.length > 1) lines.push(`${shown(whole)}${less(corners)}${less(cutOut)} = ${shown(answer)} sq ft`);
    return lines;
  },
});

const less = (amount: number) => (amount > 0 ? ` − ${shown(amount)}` : "");
/** A condition that only matters where some corner is rounded. */
function orNone(corners: Operand, condition: string): string {
  return corners.constant === undefined ? `OR(${corners.text}=0,${condition})` : condition;
}
