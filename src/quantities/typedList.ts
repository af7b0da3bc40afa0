import { messages } from "./messages";
import { Problem } from "./problem";
import { readTape } from "./tape";
import { INCHES_PER_FOOT } from "./units";

/**
 * The measures of a list that was typed or pasted into one field: one a line, or with commas, semicolons, or tabs
 * between them. A space parts nothing, since `4' 6"` and `18 6` are one measure each.
 *
 * @returns the texts as typed, without what stands blank between two of them.
 * @example listOf(`3', 4' 6", 5`) // ["3'", "4' 6\"", "5"]
 */
export function listOf(text: string): string[] {
  return text
    .split(/[\n\r\t,;]+/)
    .map((one) => one.trim())
    .filter((one) => one !== "");
}

/**
 * Pairs of measures, one a line or with semicolons between the pairs; the two of a pair have a comma or a tab, or
 * brackets around them.
 *
 * @example pairsOf("0, 0; 12' 6\", 4") // [["0", "0"], ["12' 6\"", "4"]]
 */
export function pairsOf(text: string): [string, string][] {
  return text
    .split(/[\n\r;]+|\)\s*,?\s*(?=\()/)
    .map((line) => listOf(line.replace(/[()]/g, " ")))
    .filter((line) => line.length > 0)
    .map(([first = "", second = ""]) => [first, second]);
}

/** Places are kept to the nearest hundredth of an inch, finer than any tape. */
const KEPT_PER_FOOT = INCHES_PER_FOOT * 100;

/**
 * A corner taped by its distances from two fixed points, such as the corners of a house: x along the line from the first
 * to the second, y square to it, on the side where the bed is.
 *
 * @param tie what was taped from the first point and from the second, as typed.
 * @param apartFt between the two points, over 0, in feet.
 * @param label what a problem calls the corner.
 * @returns the place in feet, from the first point.
 * @throws Problem for a distance that can't be read, and where the two don't meet.
 * @source Two sides and the base of a triangle: x = (a² - b² + d²) / 2d, y = √(a² - x²).
 * @example tiedPoint(["5", "5"], 6, "Corner 1") // [3, 4]
 */
export function tiedPoint(
  [first, second]: readonly [string, string],
  apartFt: number,
  label: string,
): [number, number] {
  const a = readTie(first, `${label}, from the first point`);
  const b = readTie(second, `${label}, from the second point`);
  const x = (a * a - b * b + apartFt * apartFt) / (2 * apartFt);
  const square = a * a - x * x;
  // A corner on the line itself comes out a hair below 0.
  if (square < -1 / KEPT_PER_FOOT) throw new Problem("value", messages.tiesApart(label, first, second), label);
  return [x, Math.sqrt(Math.max(0, square))].map((feet) => Math.round(feet * KEPT_PER_FOOT) / KEPT_PER_FOOT) as [
    number,
    number,
  ];
}

function readTie(text: string, label: string): number {
  if (text.trim() === "") throw new Problem("value", messages.missing(label, `12' 6"`), label);
  const feet = readTape(text, "ft", label);
  if (feet < 0) throw new Problem("value", messages.negative(label, text), label);
  return feet;
}
