/** The host measures in points, 72 to the inch; the grid in CSS pixels, 96 to the inch. */
const pixelsPerPoint = 96 / 72;

export function pointsToPixels(points: number): number {
  return points * pixelsPerPoint;
}

/** Rounded to a ten-thousandth, so that a length reads back as it was set. */
export function pixelsToPoints(pixels: number): number {
  return Math.round((pixels / pixelsPerPoint) * 10_000) / 10_000;
}
