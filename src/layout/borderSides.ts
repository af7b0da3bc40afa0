import { must } from "../quantities/must";

/**
 * The sides of a rectangular bed that get edging: front before back, and left before right, so
 * that the corner that is rounded first is in the run. Side 1 is along the house.
 *
 * @param longSides how many of the long sides, 0 to 2; @param shortSides of the short ones.
 * @example rectangleSides(18, 5, 1, 2) // [3, 4, 2]
 */
export function rectangleSides(lengthFt: number, widthFt: number, longSides: number, shortSides: number): number[] {
  const isLong = lengthFt >= widthFt;
  return [...[3, 1].slice(0, isLong ? longSides : shortSides), ...[4, 2].slice(0, isLong ? shortSides : longSides)];
}

/**
 * The sides of a bed taped by widths that get edging: the outer edge, and so many of its ends. An end where the bed runs
 * to a point is no side.
 */
export function widthsSides(widthsFt: readonly number[], ends: number): number[] {
  const from = Math.max(0, widthsFt.findIndex((width) => width > 0) - 1);
  const to = Math.min(widthsFt.length - 1, widthsFt.findLastIndex((width) => width > 0) + 1);
  const hasLastEnd = must(widthsFt[to]) > 0;
  const firstOuter = hasLastEnd ? 3 : 2;
  const outer = Array.from({ length: to - from }, (_, index) => firstOuter + index);
  const firstEnd = must(widthsFt[from]) > 0 && ends >= 1 ? [firstOuter + outer.length] : [];
  return [...(hasLastEnd && ends >= 2 ? [2] : []), ...outer, ...firstEnd];
}
