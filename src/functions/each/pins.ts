import { pinGrid, pins } from "../../quantities/pins";
import { may } from "../argument";
import { bayFt, lengthAlong, overlapIn, rollWidth, rowSpacingIn, widthAcross } from "../arguments";
import { declare } from "../declare";
import { feetOf, wholeUpOf } from "../native/arithmetic";
import { feetOrZero } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";
import { overlapFits, stripLines, stripsFormula } from "./fabricStrips";

export const PINS = worksheetFunction(
  pins,
  lengthAlong,
  widthAcross,
  rollWidth,
  overlapIn,
  rowSpacingIn,
  may("cut_around_ft", feetOrZero, 0),
  bayFt,
);

export const pinsDeclared = /* @__PURE__ */ declare(PINS, {
  name: "PINS",
  purpose: "Lay and pin fabric",
  about: "Fabric pins: alternating rows of pairs and singles, plus every corner and overlap.",
  gives: "pins",
  returns: "Whole pins.",
  kind: "count",
  whole: true,
  rule: "Alternating rows: pairs at the edges of each bay, singles in the middle, one on every overlap in each row, one in every corner.",
  example: "=BED.PINS(12, 12, 12, 0, 18, 0, 3) gives 41",
  source: "Common practice: rows like the five on a die, 12 in apart, in 4 ft bays.",
  related: ["PIN_MAP", "LAYOUT_PINS", "FABRIC_STRIPS"],
  arguments: {
    cut_around_ft: { about: "Total edge the fabric is cut around: feet or text. Default: 0." },
  },
  native: (long, wide, roll, overlap, spacing, cutAround, bay) => {
    const apart = `(${feetOf(spacing)})`;
    const strips = `(${stripsFormula(wide, roll, overlap)})`;
    const bays = `(${wholeUpOf(`MIN(${roll.text},${wide.text})/${bay.text}`)})`;
    const intervals = `MAX(1,${wholeUpOf(`${long.text}/${apart}`)})`;
    // Edge rows E = ⌊(m + 1)/2⌋ + 1 and middle rows C = ⌊m/2⌋, as the pattern has them.
    const edges = `(INT((${intervals}+1)/2)+1)*(2+${strips}*(${bays}-1))`;
    const middles = `${strips}*${bays}*INT(${intervals}/2)`;
    const seams = `(${strips}-1)*(${intervals}+1)`;
    const around = cutAround.constant === 0 ? "" : `+(${wholeUpOf(`${cutAround.text}/${apart}`)})`;
    return { text: `${edges}+${middles}+${seams}${around}`, when: [overlapFits(roll, overlap)] };
  },
  working: (answer, length, width, roll, overlapIn, spacingIn, _cutAround, bay) => {
    const { strips, bays, intervals } = pinGrid(length, width, roll, overlapIn, spacingIn, bay);
    const singles = Math.floor(intervals / 2);
    const pairs = singles + 1 + (intervals % 2);
    const [edges, between] = [2 * pairs, strips * (bays - 1) * pairs];
    const [middle, seams] = [strips * bays * singles, (strips - 1) * (intervals + 1)];
    const around = answer - edges - between - middle - seams;
    return [
      ...stripLines(strips, width, roll, overlapIn),
      `${shown(bays)} ${bays === 1 ? "bay" : "bays"} across a strip; ${shown(intervals)} intervals along: ${shown(pairs)} rows of pairs, ${shown(singles)} of singles`,
      `edges 2 × ${shown(pairs)} = ${shown(edges)}, between bays ${shown(between)}, in the middle ${shown(middle)}, on overlaps ${shown(seams)}, around cut-outs ${shown(around)}`,
      `total ${shown(answer)} pins`,
    ];
  },
});
