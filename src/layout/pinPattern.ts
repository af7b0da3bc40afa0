import { must } from "../quantities/must";
import { pins as countPins, pinGrid } from "../quantities/pins";
import { INCHES_PER_FOOT } from "../quantities/units";
import { wholeUp } from "../quantities/whole";
import { refusePins } from "./limits";
import type { Pin } from "./pinBoard";
import { distance, SAME_FT } from "./plane";

/** The rows of the dice-five pattern along a bed: places of the rows with pins in pairs, and of those between. */
export interface PinRows {
  readonly pairs: readonly number[];
  readonly singles: readonly number[];
}

/**
 * Rows at equal intervals no longer than the spacing: pairs at every even row and at the last, singles at the odd
 * ones between.
 */
export function pinRows(from: number, to: number, intervals: number): PinRows {
  const rows = Array.from({ length: intervals + 1 }, (_, row) => from + ((to - from) * row) / intervals);
  return {
    pairs: rows.filter((_, row) => row % 2 === 0 || row === intervals),
    singles: rows.filter((_, row) => row % 2 === 1 && row !== intervals),
  };
}

export const intervalsOver = (lengthFt: number, spacingFt: number): number =>
  Math.max(1, wholeUp(lengthFt / spacingFt));

/** Levels across one strip, divided into bays: the lines between bays, which take pairs, and their middles. */
export function bayLevels(low: number, high: number, bays: number): { lines: number[]; middles: number[] } {
  const bay = (high - low) / bays;
  return {
    lines: Array.from({ length: bays - 1 }, (_, i) => low + (i + 1) * bay),
    middles: Array.from({ length: bays }, (_, i) => low + (i + 0.5) * bay),
  };
}

/**
 * The pins of a plain rectangle, as many as BED.PINS counts: x along the strips from 0, y across them from 0.
 *
 * @param lengthFt length of the bed along the strips, more than 0; `widthFt` across them.
 * @param rollWidthFt more than 0; overlap 0 or more inches, less than the roll is wide.
 * @param spacingIn from row to row at most; bays are at most `bayFt` wide.
 * @returns row by row, from x = 0.
 * @throws Problem where they are more than any bed takes.
 * @example rectanglePins(12, 12, 12, 0, 18, 3).length // 41
 */
export function rectanglePins(
  lengthFt: number,
  widthFt: number,
  rollWidthFt: number,
  overlapIn: number,
  spacingIn = 12,
  bayFt = 4,
): Pin[] {
  refusePins(countPins(lengthFt, widthFt, rollWidthFt, overlapIn, spacingIn, 0, bayFt));
  const { strips, bays, intervals } = pinGrid(lengthFt, widthFt, rollWidthFt, overlapIn, spacingIn, bayFt);
  const overlapFt = overlapIn / INCHES_PER_FOOT;
  const seams = Array.from({ length: strips - 1 }, (_, i) => (i + 1) * (rollWidthFt - overlapFt) + overlapFt / 2);
  const levels = [0, ...seams, widthFt];
  const { pairs, singles } = pinRows(0, lengthFt, intervals);
  const pins: Pin[] = [];
  for (const x of pairs)
    for (const y of [0, widthFt]) {
      const isCorner = x < SAME_FT || x > lengthFt - SAME_FT;
      pins.push({ x, y, kind: isCorner ? "corner" : "edge" });
    }
  for (const y of seams) for (const x of [...pairs, ...singles]) pins.push({ x, y, kind: "seam" });
  for (let strip = 0; strip < strips; strip++) {
    const { lines, middles } = bayLevels(must(levels[strip]), must(levels[strip + 1]), bays);
    for (const y of lines) for (const x of pairs) pins.push({ x, y, kind: "row" });
    for (const y of middles) for (const x of singles) pins.push({ x, y, kind: "row" });
  }
  return pins.sort((a, b) => a.x - b.x || a.y - b.y);
}

/**
 * How far any place in a bed can be from the nearest pin, at most, in feet.
 *
 * The largest gap that the pattern leaves is one interval by one bay with pins in its four corners alone, in a bed that
 * is one interval long; its middle is half the diagonal away from them. Where the bed's edge or an overlap cuts the
 * pattern off, a pin of that line stands in: they are at most one spacing apart, and where one at the end of an overlap
 * is left to a pin a third of the spacing beside it, two thirds of it away at most.
 *
 * @param spacingFt from row to row at most; `bayFt` the widest bay across a strip.
 * @example reachOfPins(1, 4) // 2.73: half the diagonal of 1 by 4, and two thirds of a foot
 */
export const reachOfPins = (spacingFt: number, bayFt: number): number =>
  distance({ x: 0, y: 0 }, { x: spacingFt, y: bayFt }) / 2 + (2 / 3) * spacingFt;
