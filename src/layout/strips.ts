import { fabricStrips } from "../quantities/fabric";
import { must } from "../quantities/must";
import { Problem } from "../quantities/problem";
import { INCHES_PER_FOOT } from "../quantities/units";
import type { Segment } from "./boundary";
import { layoutMessages as messages } from "./messages";
import { boundsOf, type Frame, SAME_FT, toFrame } from "./plane";
import { occupied, type Stretch } from "./stretches";

/** One strip of fabric as it lies in its frame: from one level to another, as wide as the roll or as the bed leaves. */
export interface Band {
  readonly low: number;
  readonly high: number;
}

/** One length of fabric cut for a strip, before rolls run out: from and to along the strip. */
export interface BandCut extends Stretch {
  /** Place of the strip, from 0. */
  readonly band: number;
}

/** The bed in the frame of one direction of laying, divided into strips and cuts. */
export interface StripPlan {
  readonly frame: Frame;
  readonly boundary: readonly Segment[];
  /** How far the bed reaches along the strips. */
  readonly reach: Stretch;
  readonly bands: readonly Band[];
  readonly cuts: readonly BandCut[];
}

/** More strips than any bed takes: beyond it some unit is wrong. */
export const MOST_STRIPS = 2000;

/**
 * The strips of a bed for one direction, and the lengths to cut.
 *
 * Strips lie side by side from the low side of the frame. A strip is cut for what the strip below leaves bare, so
 * that no length is bought only to lie on another. Where that falls into separate parts they are separate cuts. A cut
 * is as long as the bed under it reaches: an end that isn't square is trimmed from within that length.
 */
export function planStrips(
  edge: readonly Segment[],
  frame: Frame,
  rules: { readonly rollWidthFt: number; readonly overlapFt: number },
): StripPlan {
  const boundary = edge.map((piece) => ({
    ...piece,
    from: toFrame(frame, piece.from),
    to: toFrame(frame, piece.to),
  }));
  const { minX, maxX, minY, maxY } = boundsOf(boundary.map(({ from }) => from));
  const { rollWidthFt, overlapFt } = rules;
  const count = fabricStrips(maxY - minY, rollWidthFt, overlapFt * INCHES_PER_FOOT);
  if (count > MOST_STRIPS) throw new Problem("value", messages.tooMuch("strips", count, MOST_STRIPS), "roll_width");
  const step = rollWidthFt - overlapFt;
  const bands = Array.from({ length: count }, (_, i): Band => {
    const low = minY + i * step;
    return { low, high: i === count - 1 ? maxY : low + rollWidthFt };
  });
  // Each piece of edge is looked at only where it lies: most of a long bed's edge is far from any one strip.
  const edgeIn = bands.map((): Segment[] => []);
  for (const piece of boundary) {
    const [low, high] = [Math.min(piece.from.y, piece.to.y), Math.max(piece.from.y, piece.to.y)];
    const first = Math.max(0, Math.floor((low - minY - rollWidthFt) / step));
    for (let i = first; i < count && must(bands[i]).low <= high; i++)
      if (must(bands[i]).high >= low) must(edgeIn[i]).push(piece);
  }
  const cuts = bands.flatMap(({ high }, band) => {
    const below = bands[band - 1];
    const bare = below ? below.high + SAME_FT : minY;
    return occupied(must(edgeIn[band]), bare, high).map((cut) => ({ band, ...cut }));
  });
  return { frame, boundary, reach: { from: minX, to: maxX }, bands, cuts };
}
