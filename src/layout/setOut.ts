import { edgingPieces, takesOwnStake } from "../quantities/edging";
import { Problem } from "../quantities/problem";
import { INCHES_PER_FOOT } from "../quantities/units";
import { wholeUp } from "../quantities/whole";
import { type BorderPath, borderPaths, cornersOfPath } from "./borderPath";
import { layoutMessages as messages } from "./messages";
import type { BorderRules } from "./options";
import { type Outline, ringsOf } from "./outline";

/** Why there is a stake. */
export type StakeKind = "end" | "joint" | "between" | "corner" | "spike";

/** Where pieces start and stakes go, in feet along a run of edging. */
export interface SetOut {
  readonly starts: readonly number[];
  readonly stakes: readonly { readonly at: number; readonly kind: StakeKind }[];
}

/** More pieces than any bed takes: beyond it some unit is wrong. */
export const MOST_PIECES = 10_000;

/** How far from its ends a timber is spiked; common practice, so that it doesn't split. */
export const SPIKE_FROM_END_FT = 0.25;

/** Spikes of one piece by itself, at equal gaps from near one end to near the other, as many as a whole piece has. */
function spikesOf(start: number, length: number, { pieceLengthFt, stakeSpacingFt }: BorderRules) {
  const gaps = wholeUp(pieceLengthFt / stakeSpacingFt);
  const inset = Math.min(SPIKE_FROM_END_FT, length / 4);
  return Array.from({ length: gaps + 1 }, (_, k) => ({
    at: start + inset + ((length - 2 * inset) * k) / gaps,
    kind: "spike" as const,
  }));
}

/**
 * Sets out a run by the rule of BED.STAKES: stakes at the ends, through both pieces at the start of each lap, between
 * them at equal gaps, and one more at each corner that none of these holds. Timbers are spiked each by itself; pavers
 * and a cut edge take none.
 */
export function setOut(path: BorderPath, rules: BorderRules): SetOut {
  const { lengthFt, closed } = path;
  const { pieceLengthFt, lapFt, stakeSpacingFt, kind } = rules;
  const count = edgingPieces(lengthFt, pieceLengthFt, lapFt * INCHES_PER_FOOT, closed);
  if (count > MOST_PIECES) throw new Problem("value", messages.tooMuch("pieces", count, MOST_PIECES), "piece_length");
  const starts = Array.from({ length: count }, (_, i) => i * (pieceLengthFt - lapFt));
  const fastened = kind ? kind.fastened : "along";
  if (fastened === undefined) return { starts, stakes: [] };
  if (fastened === "each") {
    const lengthOf = (start: number) => Math.min(pieceLengthFt, lengthFt - start);
    return { starts, stakes: starts.flatMap((start) => spikesOf(start, lengthOf(start), rules)) };
  }
  const stakes: { at: number; kind: StakeKind }[] = [];
  starts.forEach((start, i) => {
    const length = (starts[i + 1] ?? lengthFt) - start;
    const gaps = Math.max(1, wholeUp(length / stakeSpacingFt));
    for (let k = 0; k < gaps; k++)
      stakes.push({ at: start + (length * k) / gaps, kind: k > 0 ? "between" : i > 0 || closed ? "joint" : "end" });
  });
  if (!closed) stakes.push({ at: lengthFt, kind: "end" });
  const along = [...stakes];
  for (const corner of cornersOfPath(path)) {
    const isFree = ({ at }: { at: number }) => {
      const apart = Math.abs(at - corner);
      return takesOwnStake(closed ? Math.min(apart, lengthFt - apart) : apart);
    };
    // Another corner's own stake holds none but its own, as BED.STAKES counts them.
    if (along.every(isFree)) stakes.push({ at: corner, kind: "corner" });
  }
  return { starts, stakes: stakes.sort((a, b) => a.at - b.at) };
}

/** What the edging of a bed comes to, run by run. */
export interface EdgingCounts {
  readonly edgingFt: number;
  readonly pieces: number;
  readonly stakes: number;
  /** Of these stakes, those at corners that no other holds. */
  readonly cornerStakes: number;
  /** The runs with two ends, in feet. */
  readonly openRunsFt: readonly number[];
}

/** Counts the edging of a bed, without the places that a drawing needs. */
export function edgingCounts(outline: Outline, rules: BorderRules): EdgingCounts {
  const paths = ringsOf(outline).flatMap(borderPaths);
  const runs = paths.map((path) => setOut(path, rules));
  const stakes = runs.flatMap((run) => run.stakes);
  return {
    edgingFt: paths.reduce((sum, { lengthFt }) => sum + lengthFt, 0),
    pieces: runs.flatMap(({ starts }) => starts).length,
    stakes: stakes.length,
    cornerStakes: stakes.filter(({ kind }) => kind === "corner").length,
    openRunsFt: paths.flatMap(({ closed, lengthFt }) => (closed ? [] : lengthFt)),
  };
}
