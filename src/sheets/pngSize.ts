import { POINTS_A_PIXEL } from "./points";

/** The size of a picture on a sheet. */
export interface PictureSize {
  readonly widthPoints: number;
  readonly heightPoints: number;
}

/** A PNG's width and height follow its signature and the head of its first part: RFC 2083, 3.1 and 4.1.1. */
const WIDTH_AT = 16;
const HEIGHT_AT = 20;

/**
 * The natural size of a PNG in points, at 96 pixels an inch.
 *
 * @param base64 the file, without a prefix.
 */
export function pngSize(base64: string): PictureSize {
  const head = atob(base64.slice(0, 32));
  return {
    widthPoints: numberAt(head, WIDTH_AT) * POINTS_A_PIXEL,
    heightPoints: numberAt(head, HEIGHT_AT) * POINTS_A_PIXEL,
  };
}

/** As large as a PNG gets within a frame, in its own proportions. @param frame in points. */
export function fittedSize(png: string, { width, height }: { width: number; height: number }): PictureSize {
  const natural = pngSize(png);
  const scale = Math.min(width / natural.widthPoints, height / natural.heightPoints);
  return { widthPoints: natural.widthPoints * scale, heightPoints: natural.heightPoints * scale };
}

/** The four bytes from a place on, largest first. */
function numberAt(bytes: string, place: number): number {
  return [0, 1, 2, 3].reduce((number, byte) => number * 256 + bytes.charCodeAt(place + byte), 0);
}
