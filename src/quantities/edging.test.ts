import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { edgingPieces, stakes } from "./edging";

describe("edging pieces", () => {
  test("reach over an open run, each lapping the next", () => {
    expect(edgingPieces(24, 8)).toBe(3);
    expect(edgingPieces(24.01, 8)).toBe(4);
    // Three pieces of 8 ft with two laps of 2 in reach 23' 8".
    expect(edgingPieces(23 + 8 / 12, 8, 2)).toBe(3);
    expect(edgingPieces(23 + 9 / 12, 8, 2)).toBe(4);
    expect(edgingPieces(0.05, 8, 2)).toBe(1);
  });

  test("lap once more where the run is closed", () => {
    expect(edgingPieces(23.5, 8, 2, true)).toBe(3); // 3 × 7' 10" = 23' 6"
    expect(edgingPieces(23.6, 8, 2, true)).toBe(4);
    expect(edgingPieces(23.6, 8, 2, false)).toBe(3);
  });

  test("are none for no edge", () => {
    expect(edgingPieces(0, 8, 2)).toBe(0);
    expect(edgingPieces(0, 8, 2, true)).toBe(0);
  });

  test("cannot lap by their whole length", () => {
    expect(() => edgingPieces(20, 8, 96)).toThrow(/lap_in is 96 in, but piece_length is 96 in/);
  });

  test("are the fewest that reach", () => {
    const amounts = fc.tuple(
      fc.integer({ min: 1, max: 4000 }),
      fc.integer({ min: 30, max: 240 }),
      fc.integer({ min: 0, max: 20 }),
    );
    fc.assert(
      fc.property(amounts, fc.boolean(), ([edgeIn, pieceIn, lapIn], closed) => {
        const reach = (n: number) => (closed ? n * (pieceIn - lapIn) : n * pieceIn - (n - 1) * lapIn);
        const pieces = edgingPieces(edgeIn / 12, pieceIn / 12, lapIn, closed);
        expect(reach(pieces)).toBeGreaterThanOrEqual(edgeIn);
        if (pieces > 1) expect(reach(pieces - 1)).toBeLessThan(edgeIn);
      }),
    );
  });
});

describe("stakes", () => {
  test("are at both ends, at joints, and between", () => {
    expect(stakes(8, 8, 48)).toBe(3); // at 0, 4, 8
    expect(stakes(8, 8, 47)).toBe(4);
    expect(stakes(20, 8, 48)).toBe(6); // at 0, 4, 8, 12, 16, 20
    expect(stakes(18, 8, 48)).toBe(6); // at 0, 4, 8, 12, 16, 18
  });

  test("need no end where the run is closed, and one more at each corner", () => {
    expect(stakes(24, 8, 48, 0, 0, true)).toBe(6);
    expect(stakes(24, 8, 48, 0, 4, true)).toBe(10);
    expect(stakes(24, 8, 48, 0, 2)).toBe(9);
  });

  test("are none for no edge, whatever its corners", () => {
    expect(stakes(0, 8, 48, 0, 4)).toBe(0);
  });

  test("stand as close as asked: walked along the run, one by one", () => {
    const amounts = fc.tuple(
      fc.integer({ min: 1, max: 3000 }),
      fc.integer({ min: 30, max: 240 }),
      fc.integer({ min: 6, max: 100 }),
    );
    fc.assert(
      fc.property(
        amounts,
        fc.integer({ min: 0, max: 20 }),
        fc.boolean(),
        ([edgeIn, pieceIn, spacingIn], lapIn, closed) => {
          const pieces = edgingPieces(edgeIn / 12, pieceIn / 12, lapIn, closed);
          let expected = closed ? 0 : 1;
          for (let n = 1, left = edgeIn; n <= pieces; n++) {
            const segment = n < pieces ? pieceIn - lapIn : left;
            left -= segment;
            for (let at = 0; at < segment; at += spacingIn) expected++;
          }
          expect(stakes(edgeIn / 12, pieceIn / 12, spacingIn, lapIn, 0, closed)).toBe(expected);
        },
      ),
    );
  });
});
