import { must } from "../quantities/must";
import { type BorderMark, type BorderPath, borderPaths, markOnPath, stretchOfPath } from "./borderPath";
import type { BorderRules } from "./options";
import { type Outline, ringsOf } from "./outline";
import type { Point } from "./plane";
import { type StakeKind, setOut } from "./setOut";

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
  const { pieceLengthFt, lapFt } = rules;
  const { starts, stakes } = setOut(path, rules);
  const lastStart = must(starts.at(-1));
  const pieces = starts.map((start, i): BorderPiece => {
    const isLast = i === starts.length - 1;
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
    stakes: stakes.map(({ at, kind }) => ({ ...markOnPath(path, at), kind })),
  };
}

/** A last piece this little short of a whole one is not cut: about 1/64 in. */
const SAME_CUT_FT = 0.0015;
