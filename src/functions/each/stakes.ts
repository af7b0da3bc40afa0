import { edgingPieces, HOLDS_CORNER_FT, stakes } from "../../quantities/edging";
import { INCHES_PER_FOOT } from "../../quantities/units";
import { wholeUp } from "../../quantities/whole";
import { may, needs } from "../argument";
import { closedRun, lapIn, pieceLength } from "../arguments";
import { declare } from "../declare";
import { feetOf, type Operand, wholeUpOf, withSlack } from "../native/arithmetic";
import { choose } from "../native/named";
import { count, feetOrZero, inches } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";
import { gainFormula, lapFits, pieceLines, piecesFormula } from "./edgingPieces";

export const STAKES = worksheetFunction(
  stakes,
  needs("edge_length", feetOrZero),
  pieceLength,
  needs("stake_spacing_in", inches),
  lapIn,
  may("corners", count, 0),
  closedRun,
  may("first_side", feetOrZero, 0),
  may("next_side", feetOrZero, 0),
);

export const stakesDeclared = /* @__PURE__ */ declare(STAKES, {
  name: "STAKES",
  purpose: "Set the edging",
  about: "Stakes for one run of edging: at ends, corners, joints, and between.",
  gives: "stakes",
  returns: "Whole stakes.",
  kind: "count",
  whole: true,
  rule: "One at each end, one through both pieces at each joint, enough between to keep the spacing, and one more at each corner. With the sides given, a stake within 3 in of a corner holds it, too.",
  example: "=BED.STAKES(20, 8, 48) gives 6",
  source: "Common practice: at ends, through both pieces at joints, between, and at corners.",
  related: ["EDGING_PIECES", "EDGE_LENGTH"],
  arguments: {
    edge_length: { about: `Length of the run: feet, or text like 26' 9". 0 needs no stakes.`, role: "border" },
    stake_spacing_in: {
      about: "Maximum stake spacing: inches, or text like 4'.",
      usual: [12, 72],
      role: "spacing",
    },
    corners: { about: "How many corners get one more stake. Default: 0." },
    first_side: { about: "Side the run starts with, around a rectangle: feet or text. Default: not known." },
    next_side: { about: "Next side; from there the two alternate: feet or text. Default: 0." },
  },
  native: (edge, piece, spacing, lap, corners, closed, first, next) => {
    const pieces = piecesFormula(edge, piece, lap, closed);
    const segment = gainFormula(piece, lap);
    const apart = `(${feetOf(spacing)})`;
    const last = `(${edge.text}-(${pieces}-1)*${segment})`;
    const stakes = `(${pieces}-1)*${wholeUpOf(`${segment}/${apart}`)}+MAX(1,${wholeUpOf(`${last}/${apart}`)})`;
    const ends = choose(closed, "0", "1");
    const steps = {
      whole: `${segment}/(${wholeUpOf(`${segment}/${apart}`)})`,
      last: `${last}/MAX(1,${wholeUpOf(`${last}/${apart}`)})`,
    };
    const own = ownCorners(edge.text, last, steps, corners.text, first, next);
    return {
      text: `IF(${pieces}=0,0,${stakes}+${ends}+${own})`,
      least: "0 or more",
      when: [lapFits(piece, lap)],
    };
  },
  working: (answer, edge, piece, spacingIn, lapIn, corners, closed, first) => {
    const pieces = edgingPieces(edge, piece, lapIn, closed);
    const lines = pieceLines(pieces, edge, piece, lapIn, closed);
    if (pieces === 0) return lines;
    const [spacing, gain] = [spacingIn / INCHES_PER_FOOT, piece - lapIn / INCHES_PER_FOOT];
    const last = edge - (pieces - 1) * gain;
    const each = wholeUp(gain / spacing);
    const end = Math.max(1, wholeUp(last / spacing));
    const ends = closed ? "" : " + 1 at the end";
    const own = answer - (pieces - 1) * each - end - (closed ? 0 : 1);
    const held = first > 0 ? [`${shown(corners - own)} of ${shown(corners)} corners held by a stake within 3 in`] : [];
    return [
      ...lines,
      `${shown(each)} per ${shown(gain)} ft piece, ${shown(spacing)} ft apart or less; ${shown(end)} on the last ${shown(last)} ft`,
      ...held,
      `${shown(pieces - 1)} × ${shown(each)} + ${shown(end)}${ends} + ${shown(own)} at corners = ${shown(answer)} stakes`,
    ];
  },
});

/**
 * Corners that take a stake of their own, in an ordinary formula: of the first three those that no stake is near, and of
 * a closed run's four the last none, which is where it starts.
 */
function ownCorners(
  edge: string,
  lastSegment: string,
  steps: { readonly whole: string; readonly last: string },
  corners: string,
  first: Operand,
  next: Operand,
): string {
  if (first.constant === 0) return corners;
  const at = `(${first.text}*{1,1,2}${next.constant === 0 ? "" : `+${next.text}*{0,1,1}`})`;
  const toEnd = `(${edge}-${at})`;
  const isFree = (place: string, step: string) =>
    `(ABS(${place}-${step}*INT(${place}/(${step})+0.5))>${withSlack(String(HOLDS_CORNER_FT))})`;
  const along = `(${toEnd}>${lastSegment})*${isFree(at, steps.whole)}`;
  const atEnd = `(${toEnd}<=${lastSegment})*${isFree(toEnd, steps.last)}`;
  const own = `SUMPRODUCT((${corners}>={1,2,3})*(${along}+${atEnd}))`;
  return first.constant === undefined ? `IF(${first.text}>0,${own},${corners})` : own;
}
