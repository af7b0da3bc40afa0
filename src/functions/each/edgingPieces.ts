import { edgingPieces } from "../../quantities/edging";
import { INCHES_PER_FOOT } from "../../quantities/units";
import { needs } from "../argument";
import { closedRun, lapIn, pieceLength } from "../arguments";
import { declare } from "../declare";
import { feetOf, minus, type Operand, wholeUpOf } from "../native/arithmetic";
import { type Answer, choose } from "../native/named";
import { feetOrZero } from "../read";
import { roundedUp, shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const EDGING_PIECES = worksheetFunction(
  edgingPieces,
  needs("edge_length", feetOrZero),
  pieceLength,
  lapIn,
  closedRun,
);

export const edgingPiecesDeclared = /* @__PURE__ */ declare(EDGING_PIECES, {
  name: "EDGING_PIECES",
  purpose: "Set the edging",
  about: "Edging pieces for one run, each lapping the next.",
  gives: "edging pieces",
  returns: "Whole pieces.",
  kind: "count",
  whole: true,
  rule: "The fewest pieces that cover the run, each lapping the one before; on a closed run the last laps the first.",
  example: `=BED.EDGING_PIECES("26' 9""", 8, 2) gives 4`,
  source: "Plain arithmetic over pieces and laps.",
  related: ["EDGE_LENGTH", "STAKES", "CUT_COUNT"],
  arguments: {
    edge_length: { about: `Length of the run: feet, or text like 26' 9". 0 needs no pieces.`, role: "border" },
  },
  native: (edge, piece, lap, closed) => ({
    text: piecesFormula(edge, piece, lap, closed),
    least: "0 or more",
    when: [lapFits(piece, lap)],
  }),
  working: (answer, edge, piece, lapIn, closed) => pieceLines(answer, edge, piece, lapIn, closed),
});

/** How pieces of edging come to their number. */
export function pieceLines(pieces: number, edge: number, piece: number, lapIn: number, closed: boolean): string[] {
  if (pieces === 0) return ["no edge, no pieces"];
  const lap = lapIn / INCHES_PER_FOOT;
  const gain = piece - lap;
  const first = lap > 0 ? [`each next piece reaches ${shown(piece)} − ${shown(lap)} = ${shown(gain)} ft further`] : [];
  const isWhole = closed || lap === 0;
  const how = isWhole ? `${shown(edge)} ÷ ${shown(gain)}` : `(${shown(edge)} − ${shown(lap)}) ÷ ${shown(gain)}`;
  return [...first, `pieces: ${roundedUp(how, (isWhole ? edge : edge - lap) / gain)}`];
}

/** Pieces of edging in an ordinary formula. */
export function piecesFormula(edge: Operand, piece: Operand, lap: Operand, closed: Answer): string {
  const gain = gainFormula(piece, lap);
  const open = `MAX(1,${wholeUpOf(`${minus(edge.text, feetOf(lap))}/${gain}`)})`;
  return `IF(${edge.text}=0,0,${choose(closed, wholeUpOf(`${edge.text}/${gain}`), open)})`;
}

/** How much further each next piece reaches, in feet. */
export function gainFormula(piece: Operand, lap: Operand): string {
  return minus(piece.text, feetOf(lap));
}

/** A lap has to be shorter than a piece. */
export function lapFits(piece: Operand, lap: Operand): readonly string[] {
  return lap.constant === 0 ? [] : [`${feetOf(lap)}<${piece.text}`];
}
