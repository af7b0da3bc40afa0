const POINTS_A_PIXEL = 72 / 96;

/** A PNG's width and height stand after its signature and the head of its first part: RFC 2083, 3.1 and 4.1.1. */
const WIDTH_AT = 16;
const HEIGHT_AT = 20;

/**
 * The natural size of a PNG in points, at 96 pixels an inch.
 *
 * @param base64 the file, without a prefix.
 */
export function pngSize(base64: string): { readonly widthPoints: number; readonly heightPoints: number } {
  const head = atob(base64.slice(0, 32));
  return {
    widthPoints: numberAt(head, WIDTH_AT) * POINTS_A_PIXEL,
    heightPoints: numberAt(head, HEIGHT_AT) * POINTS_A_PIXEL,
  };
}

/** The four bytes from a place on, largest first. */
function numberAt(bytes: string, place: number): number {
  return [0, 1, 2, 3].reduce((number, byte) => number * 256 + bytes.charCodeAt(place + byte), 0);
}
