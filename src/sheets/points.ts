/**
 * The host counts column widths in points, people and files in characters of the standard font: 7 px a character and
 * 5 px of padding (Office Open XML, ECMA-376 part 1, 18.3.1.13, for the usual font), at 96 px and 72 pt an inch.
 */
const PIXELS_A_CHARACTER = 7;
const PADDING_PIXELS = 5;
export const POINTS_A_PIXEL = 72 / 96;

/**
 * @example pointsOfCharacters(10) // 56.25
 */
export function pointsOfCharacters(characters: number): number {
  return (characters * PIXELS_A_CHARACTER + PADDING_PIXELS) * POINTS_A_PIXEL;
}

/**
 * To a hundredth of a character; a hidden column has none.
 *
 * @example charactersOfPoints(56.25) // 10
 */
export function charactersOfPoints(points: number): number {
  const characters = (points / POINTS_A_PIXEL - PADDING_PIXELS) / PIXELS_A_CHARACTER;
  return Math.max(0, Math.round(characters * 100) / 100);
}
