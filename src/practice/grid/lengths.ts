/** The host measures in points, 72 to the inch; the grid in CSS pixels, 96 to the inch. */
const pixelsPerPoint = 96 / 72;

export function pointsToPixels(points: number): number {
  return points * pixelsPerPoint;
}

export function pixelsToPoints(pixels: number): number {
  return pixels / pixelsPerPoint;
}
