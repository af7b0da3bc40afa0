import { fabricArea, fabricStrips } from "../../quantities/fabric";
import { INCHES_PER_FOOT } from "../../quantities/units";
import { may } from "../argument";
import { endLapIn, lengthAlong, overlapIn, rollWidth, widthAcross } from "../arguments";
import { declare } from "../declare";
import { feetOf, minus, type Operand, wholeUpOf, withoutSlack } from "../native/arithmetic";
import { feet } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";
import { overlapFits, stripLines, stripsFormula } from "./fabricStrips";

export const FABRIC_AREA = worksheetFunction(
  fabricArea,
  lengthAlong,
  widthAcross,
  rollWidth,
  overlapIn,
  may("roll_length", feet, Number.POSITIVE_INFINITY),
  endLapIn,
);

export const fabricAreaDeclared = /* @__PURE__ */ declare(FABRIC_AREA, {
  name: "FABRIC_AREA",
  purpose: "Lay and pin fabric",
  about: "Fabric laid in the bed, counting laps twice.",
  gives: "fabric laid in the bed",
  returns: "Square feet.",
  kind: "sq ft",
  rule: "Width plus an overlap for each extra strip, times length plus a lap for each extra piece.",
  example: "=BED.FABRIC_AREA(30, 11, 6, 12) gives 360",
  source: "Plain arithmetic over strips and laps. A 12 in end lap is common practice.",
  related: ["FABRIC_ROLLS", "FABRIC_STRIPS", "LAYOUT"],
  arguments: {
    roll_length: {
      about: "Roll length: feet, or text like 50'. Default: none, so strips have no joints.",
      role: "roll length",
    },
  },
  native: (long, wide, roll, overlap, rollLength, endLap) => {
    const lap = feetOf(endLap);
    const across =
      overlap.constant === 0
        ? wide.text
        : `(${wide.text}+(${stripsFormula(wide, roll, overlap)}-1)*${feetOf(overlap)})`;
    if (rollLength.constant === Number.POSITIVE_INFINITY)
      return { text: `${across}*${long.text}`, when: [overlapFits(roll, overlap)] };
    const pieces = `IF(${long.text}<=${rollLength.text},1,${wholeUpOf(`${minus(long.text, lap)}/${minus(rollLength.text, lap)}`)})`;
    return {
      text: `${across}*(${long.text}+(${pieces}-1)*${lap})`,
      when: [[...overlapFits(roll, overlap), endLapFits(rollLength, endLap)]],
    };
  },
  working: (answer, length, width, roll, overlapIn, _rollLength, endLapIn) => {
    const strips = fabricStrips(width, roll, overlapIn);
    const [lap, end] = [overlapIn / INCHES_PER_FOOT, endLapIn / INCHES_PER_FOOT];
    const across = width + (strips - 1) * lap;
    const along = answer / across;
    const pieces = end > 0 ? Math.round((along - length) / end) + 1 : 1;
    return [
      ...stripLines(strips, width, roll, overlapIn),
      `across: ${shown(width)} + ${shown(strips - 1)} × ${shown(lap)} = ${shown(across)} ft`,
      `along, ${shown(pieces)} ${pieces === 1 ? "piece" : "pieces"}: ${shown(length)} + ${shown(pieces - 1)} × ${shown(end)} = ${shown(along)} ft`,
      `${shown(across)} × ${shown(along)} = ${shown(answer)} sq ft`,
    ];
  },
});

/** A whole roll must not be used up by the end lap. */
export function endLapFits(rollLength: Operand, endLap: Operand): string {
  return `${feetOf(endLap)}<${withoutSlack(rollLength.text)}`;
}
