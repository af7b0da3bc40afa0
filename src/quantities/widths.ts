import { messages } from "./messages";
import { must } from "./must";
import { Problem } from "./problem";

/** How the area between taped widths is calculated. */
export type WidthRule = "simpson" | "trapezoid";

/**
 * Area of a bed from widths taped square off a base line, evenly spaced, end to end.
 *
 * "simpson" is Simpson's 1/3 rule over an even number of intervals; with an odd number, the last interval is
 * calculated by the trapezoidal rule. "trapezoid" takes every stretch between two widths as straight. (Surveying
 * textbooks; both rules are exact for straight edges, Simpson's also for edges that bend as a parabola.)
 *
 * @param spacingFt from one width to the next, more than 0.
 * @param widthsFt at least 2, each 0 or more: 0 where the bed runs to a point.
 * @returns square feet, more than 0.
 * @throws Problem where there are fewer than 2 widths, or all of them are 0.
 * @example areaWidths(15, [3.9, 4.5, 5.1, 6.5, 6.3, 5.1, 4.1]) // 476
 */
export function areaWidths(spacingFt: number, widthsFt: readonly number[], rule: WidthRule = "simpson"): number {
  refuseTooFew(widthsFt);
  const last = widthsFt.length - 1;
  const simpsonEnd = rule === "simpson" ? last - (last % 2) : 0;
  let thirds = 0;
  for (let i = 0; i < simpsonEnd; i += 2)
    thirds += must(widthsFt[i]) + 4 * must(widthsFt[i + 1]) + must(widthsFt[i + 2]);
  let halves = 0;
  for (let i = simpsonEnd; i < last; i++) halves += must(widthsFt[i]) + must(widthsFt[i + 1]);
  const area = (thirds / 3 + halves / 2) * spacingFt;
  if (area <= 0) throw new Problem("value", messages.widthsAllZero(), "widths");
  return area;
}

/**
 * Length of the outer edge of a bed through the ends of its taped widths, straight from one to the next. A
 * curved edge is a little longer; widths taped closer together bring it nearer.
 *
 * @param spacingFt from one width to the next along the base line, more than 0.
 * @param widthsFt at least 2, each 0 or more.
 * @returns feet, more than 0.
 * @throws Problem where there are fewer than 2 widths.
 * @example edgeWidths(4, [0, 3]) // 5
 */
export function edgeWidths(spacingFt: number, widthsFt: readonly number[]): number {
  refuseTooFew(widthsFt);
  let length = 0;
  for (let i = 1; i < widthsFt.length; i++) length += Math.hypot(spacingFt, must(widthsFt[i]) - must(widthsFt[i - 1]));
  return length;
}

function refuseTooFew(widthsFt: readonly number[]): void {
  if (widthsFt.length < 2) throw new Problem("value", messages.tooFewWidths(widthsFt.length), "widths");
}
