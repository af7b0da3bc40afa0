import { feetOf, minus, type Operand, wholeUpOf } from "./arithmetic";
import { form } from "./form";
import { type Answer, choose, flag } from "./named";
import { count, length, lengthOrZero } from "./numbers";

export const EDGING_PIECES = form(
  [lengthOrZero("ft"), length("ft"), lengthOrZero("in", 0), flag(false)],
  (edge, piece, lap, closed) => ({
    text: piecesOf(edge, piece, lap, closed),
    least: "0 or more",
    when: [lapFits(piece, lap)],
  }),
);

export const STAKES = form(
  [
    lengthOrZero("ft"),
    length("ft"),
    length("in"),
    lengthOrZero("in", 0),
    count(Number.POSITIVE_INFINITY, 0),
    flag(false),
  ],
  (edge, piece, spacing, lap, corners, closed) => {
    const pieces = piecesOf(edge, piece, lap, closed);
    const segment = gainOf(piece, lap);
    const apart = `(${feetOf(spacing)})`;
    const last = `(${edge.text}-(${pieces}-1)*${segment})`;
    const stakes = `(${pieces}-1)*${wholeUpOf(`${segment}/${apart}`)}+MAX(1,${wholeUpOf(`${last}/${apart}`)})`;
    const ends = choose(closed, "0", "1");
    return {
      text: `IF(${pieces}=0,0,${stakes}+${ends}+${corners.text})`,
      least: "0 or more",
      when: [lapFits(piece, lap)],
    };
  },
);

function piecesOf(edge: Operand, piece: Operand, lap: Operand, closed: Answer): string {
  const gain = gainOf(piece, lap);
  const open = `MAX(1,${wholeUpOf(`${minus(edge.text, feetOf(lap))}/${gain}`)})`;
  return `IF(${edge.text}=0,0,${choose(closed, wholeUpOf(`${edge.text}/${gain}`), open)})`;
}

/** How much further each next piece reaches, in feet. */
function gainOf(piece: Operand, lap: Operand): string {
  return minus(piece.text, feetOf(lap));
}

function lapFits(piece: Operand, lap: Operand): readonly string[] {
  return lap.constant === 0 ? [] : [`${feetOf(lap)}<${piece.text}`];
}
