import { expect, test } from "vitest";
import { pngSize } from "./pngSize";

test("a picture of 400 by 96 pixels is 300 by 72 points", () => {
  // By hand from RFC 2083: signature, length and name of the first part, then width and height, largest byte first.
  const signature = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
  const head = [...signature, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52, 0, 0, 1, 0x90, 0, 0, 0, 96, 8, 6, 0, 0, 0];
  const base64 = btoa(String.fromCharCode(...head, ...Array<number>(20).fill(0)));
  expect(pngSize(base64)).toEqual({ widthPoints: 300, heightPoints: 72 });
});
