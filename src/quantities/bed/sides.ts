import { must } from "../must";

/**
 * The sides of a rectangular bed that get edging where only their count is known: front before back, and left before
 * right, so that the corner that is rounded first is in the run. Side 1 is along the house.
 *
 * @param longSides how many of the long sides, 0 to 2; @param shortSides of the short ones.
 * @example rectangleSides(18, 5, 1, 2) // [3, 4, 2]
 */
export function rectangleSides(lengthFt: number, widthFt: number, longSides: number, shortSides: number): number[] {
  const isLong = lengthFt >= widthFt;
  return [...[3, 1].slice(0, isLong ? longSides : shortSides), ...[4, 2].slice(0, isLong ? shortSides : longSides)];
}

/**
 * The base line, the last end, the outer edge, and the first end, where only the count of ends with edging is known: over
 * 0 with edging.
 */
export const widthsEdged = (ends: number): number[] => [0, ends - 1, 1, ends];

/**
 * The sides of a bed taped by widths that get edging, by their numbers in its plan. An end where the bed runs to a point
 * is no side.
 *
 * @param edged over 0, or not, for the base line, the last end, the outer edge, and the first end.
 * @example widthsSides([3, 5, 4], [0, 1, 1, 1]) // [2, 3, 4, 5]
 */
export function widthsSides(widthsFt: readonly number[], edged: readonly number[]): number[] {
  // Sides that aren't said have none.
  const [base, last, outer, first] = edged as readonly [number, number, number, number];
  const from = Math.max(0, widthsFt.findIndex((width) => width > 0) - 1);
  const to = Math.min(widthsFt.length - 1, widthsFt.findLastIndex((width) => width > 0) + 1);
  return placesOf([
    base,
    ...(must(widthsFt[to]) > 0 ? [last] : []),
    ...Array<number>(to - from).fill(outer),
    ...(must(widthsFt[from]) > 0 ? [first] : []),
  ]);
}

/** The numbers, from 1, of what is marked. */
export const placesOf = (marks: readonly number[]): number[] =>
  marks.flatMap((mark, index) => (mark > 0 ? [index + 1] : []));
