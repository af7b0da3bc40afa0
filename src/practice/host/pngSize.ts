import { pixelsToPoints } from "../grid/lengths";
import { refuse } from "./error";

/** The eight bytes that every PNG begins with, then the length and the name of its first part, IHDR (RFC 2083, 3.1). */
const pngStart = "\x89PNG\r\n\x1a\n\0\0\0\rIHDR";

/**
 * The natural size of a PNG, in points, as the host gives it to a picture: one pixel is one at 96 to the inch.
 *
 * @param base64 The file, without a prefix.
 * @throws HostError where it is no PNG; the practice workbook carries no other pictures.
 */
export function pngSize(base64: string): { width: number; height: number } {
  const head = decoded(base64.slice(0, 32));
  if (!head.startsWith(pngStart)) throw refuse("InvalidArgument", "The practice workbook carries PNG pictures only.");
  return { width: pixelsToPoints(numberAt(head, 16)), height: pixelsToPoints(numberAt(head, 20)) };
}

function decoded(base64: string): string {
  try {
    return atob(base64);
  } catch {
    return "";
  }
}

/** The four bytes from `start` on, largest first. */
function numberAt(bytes: string, start: number): number {
  return [0, 1, 2, 3].reduce((number, place) => number * 256 + bytes.charCodeAt(start + place), 0);
}
