import { edgingPieces } from "../quantities/edging";
import { must } from "../quantities/must";
import { Problem } from "../quantities/problem";
import { INCHES_PER_FOOT } from "../quantities/units";
import { wholeUp } from "../quantities/whole";
import { type BorderMark, type BorderPath, borderPaths, cornersOfPath, markOnPath, stretchOfPath } from "./borderPath";
import { layoutMessages as messages } from "./messages";
import type { BorderRules } from "./options";
import { type Outline, ringsOf } from "./outline";
import type { Point } from "./plane";

/** One piece of border where it lies. */
export interface BorderPiece {
  /** From 1, through all the runs of the bed. */
  readonly number: number;
  /** To cut it to; a whole piece unless it is the last of its run. */
  readonly lengthFt: number;
  readonly isWhole: boolean;
  /** Its line in plan, with the bed on the right; rounded corners as short straight pieces. */
  readonly line: readonly Point[];
}

/** Why a stake stands where it does. */
export type StakeKind = "end" | "joint" | "between" | "corner";

export interface Stake extends BorderMark {
  readonly kind: StakeKind;
}

/** Border set without a break: along sides that follow one another, or round a ring. */
export interface BorderRun {
  /** 0 along the outer edge, n round the nth cut-out. */
  readonly ring: number;
  readonly lengthFt: number;
  readonly closed: boolean;
  readonly pieces: readonly BorderPiece[];
  /** Where two pieces meet. */
  readonly joints: readonly BorderMark[];
  readonly stakes: readonly Stake[];
}

/** More pieces than any bed takes: beyond it some unit is wrong. */
export const MOST_PIECES = 10_000;

/** A stake this near a corner holds the corner too; common practice, a hand's breadth. */
export const HOLDS_CORNER_FT = 3 / INCHES_PER_FOOT;

/** The border of a bed: its runs along the outer edge, then those round cut-outs that get border. */
export function placeBorder(outline: Outline, rules: BorderRules): BorderRun[] {
  let placed = 0;
  return ringsOf(outline).flatMap((ring, place) =>
    borderPaths(ring).map((path) => {
      const run = { ring: place, ...placeRun(path, rules, placed) };
      placed += run.pieces.length;
      return run;
    }),
  );
}

function placeRun(path: BorderPath, rules: BorderRules, placed: number): Omit<BorderRun, "ring"> {
  const { lengthFt, closed } = path;
  const { pieceLengthFt, lapFt, stakeSpacingFt } = rules;
  const count = edgingPieces(lengthFt, pieceLengthFt, lapFt * INCHES_PER_FOOT, closed);
  if (count > MOST_PIECES) throw new Problem("value", messages.tooMuch("pieces", count, MOST_PIECES), "piece_length");
  const gain = pieceLengthFt - lapFt;
  const starts = Array.from({ length: count }, (_, i) => i * gain);
  const lastStart = must(starts.at(-1));
  const pieces = starts.map((start, i): BorderPiece => {
    const isLast = i === count - 1;
    const length = isLast ? Math.min(pieceLengthFt, lengthFt - lastStart + (closed ? lapFt : 0)) : pieceLengthFt;
    const line = stretchOfPath(path, start, start + length);
    return { number: placed + i + 1, lengthFt: length, isWhole: length > pieceLengthFt - SAME_CUT_FT, line };
  });
  const joints = starts.slice(closed ? 0 : 1);
  return {
    lengthFt,
    closed,
    pieces,
    joints: joints.map((at) => markOnPath(path, at)),
    stakes: stakesOf(path, starts, stakeSpacingFt),
  };
}

/** A last piece this little short of a whole one is not cut: about 1/64 in. */
const SAME_CUT_FT = 0.0015;

/**
 * Stakes by the rule of BED.STAKES: at the ends, through both pieces at the start of each lap, between them at equal
 * gaps, and one more at each corner that none of these holds.
 */
function stakesOf(path: BorderPath, starts: readonly number[], spacingFt: number): Stake[] {
  const { lengthFt, closed } = path;
  const places: { at: number; kind: StakeKind }[] = [];
  starts.forEach((start, i) => {
    const end = starts[i + 1] ?? lengthFt;
    const gaps = Math.max(1, wholeUp((end - start) / spacingFt));
    for (let k = 0; k < gaps; k++) {
      const atStart = i === 0 && !closed ? "end" : "joint";
      places.push({ at: start + ((end - start) * k) / gaps, kind: k === 0 ? atStart : "between" });
    }
  });
  if (!closed) places.push({ at: lengthFt, kind: "end" });
  for (const corner of cornersOfPath(path)) {
    const apart = (at: number) => Math.min(Math.abs(at - corner), closed ? lengthFt - Math.abs(at - corner) : Infinity);
    if (places.every(({ at }) => apart(at) > HOLDS_CORNER_FT)) places.push({ at: corner, kind: "corner" });
  }
  places.sort((a, b) => a.at - b.at);
  return places.map(({ at, kind }) => ({ ...markOnPath(path, at), kind }));
}
