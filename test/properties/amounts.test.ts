import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { takeOffRolls } from "../../src/layout/rolls";
import { edgingPieces } from "../../src/quantities/edging";
import { fabricCuts, fabricRolls } from "../../src/quantities/fabricRolls";
import { edgingCuts } from "../../src/quantities/job/edgingCuts";
import { rollsInTurn } from "../../src/quantities/job/rollsInTurn";
import { markupForMargin, priceFromMargin, priceFromMarkup } from "../../src/quantities/price";

describe("the pieces of a run", () => {
  test("are as many as BED.EDGING_PIECES counts, and reach exactly", () => {
    const inches = (min: number, max: number) => fc.integer({ min, max });
    fc.assert(
      fc.property(inches(1, 4000), inches(30, 240), inches(0, 20), fc.boolean(), (edge, piece, lap, closed) => {
        const { whole, lastFt } = edgingCuts({ feet: edge / 12, closed }, piece / 12, lap);
        const pieces = whole + (lastFt === undefined ? 0 : 1);
        expect(pieces).toBe(edgingPieces(edge / 12, piece / 12, lap, closed));
        if (lastFt === undefined) return;
        const reach = whole * piece + lastFt * 12 - (closed ? pieces : pieces - 1) * lap;
        expect(reach).toBeCloseTo(edge, 6);
        expect(lastFt * 12).toBeLessThan(piece);
        expect(lastFt).toBeGreaterThan(0);
      }),
    );
  });
});

describe("rolls used up in turn", () => {
  const strips = (endLapIn: number, ...lengths: number[]) =>
    lengths.map((lengthFt, n) => ({ bed: "Front walk", part: n + 1, lengthFt, endLapIn }));

  test("are as many as BED.FABRIC_ROLLS counts for strips of one length", () => {
    const inches = (min: number, max: number) => fc.integer({ min, max });
    fc.assert(
      fc.property(inches(12, 1800), inches(12, 600), inches(240, 1200), inches(0, 24), (long, wide, roll, lap) => {
        const count = Math.ceil(wide / 72);
        const lengths = new Array<number>(count).fill(long / 12);
        expect(rollsInTurn(strips(lap, ...lengths), roll / 12).stocks).toHaveLength(
          fabricRolls(long / 12, wide / 12, 6, roll / 12, 0, lap),
        );
      }),
    );
  });
});

describe("cuts off rolls", () => {
  test("are what BED.FABRIC_CUTS lists, for strips of one length", () => {
    for (const [length, width, rollLength] of [
      [30, 11, 50],
      [120, 20, 50],
      [49.5, 30, 50],
      [50, 11, 50],
    ] as const) {
      const strips = fabricCuts(length, width, 6, rollLength, 12).at(-1)!.strip;
      const pieces = takeOffRolls(Array<number>(strips).fill(length), rollLength, 1);
      const listed = fabricCuts(length, width, 6, rollLength, 12, 12);
      expect(pieces.flat()).toEqual(listed.map(({ roll, startsAtFt, lengthFt }) => ({ roll, startsAtFt, lengthFt })));
    }
  });
});

test("a margin and the markup for it come to the same price", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 0, max: 99 }), (cost, percent) => {
      const margin = percent / 100;
      const price = priceFromMargin(cost, margin);
      expect(priceFromMarkup(cost, markupForMargin(margin))).toBeCloseTo(price, 6);
      expect(price * (1 - margin)).toBeCloseTo(cost, 6);
    }),
  );
});
