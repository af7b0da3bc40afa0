import { CEILING } from "@formulajs/formulajs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  CUT_COUNT,
  CUT_LIST,
  EDGING_PIECES,
  FABRIC_AREA,
  FABRIC_CUTS,
  FABRIC_ROLLS,
  ORDER_UP,
  PIN_MAP,
  STAKES,
} from "../../src/functions/index";
import { PUBLISHED, TRAPS } from "./cuttingInstances";

const column = (values: readonly unknown[]) => values.map((value) => [value]);
/** Whole inches, so that the walks below are exact. */
const inches = (least: number, most: number) => fc.integer({ min: least, max: most });

describe("a border laid piece by piece along its run, in whole inches", () => {
  const run = fc.record({ edge: inches(1, 1200), piece: inches(24, 144), lap: inches(0, 12), gap: inches(6, 60) });

  test("takes as many pieces as a walk that puts one after another until the run is covered", () => {
    fc.assert(
      fc.property(run, ({ edge, piece, lap }) => {
        let pieces = 1;
        for (let reach = piece; reach < edge; reach += piece - lap) pieces++;
        expect(EDGING_PIECES(edge / 12, piece / 12, lap)).toBe(pieces);
      }),
    );
  });

  test("takes a stake at each end, at each joint, and so many between that none is further than the spacing", () => {
    fc.assert(
      fc.property(run, ({ edge, piece, lap, gap }) => {
        const joints: number[] = [];
        for (let reach = piece; reach < edge; reach += piece - lap) joints.push(reach - lap);
        let count = 1;
        let from = 0;
        for (const to of [...joints, edge]) {
          for (let at = from + gap; at < to; at += gap) count++;
          count++;
          from = to;
        }
        expect(STAKES(edge / 12, piece / 12, gap, lap)).toBe(count);
      }),
    );
  });

  test("by hand: 20 ft in 8 ft pieces, stakes at 4 ft: at 0, 4, 8, 12, 16 and 20", () => {
    expect(STAKES(20, 8, 48)).toBe(6);
    expect(EDGING_PIECES(20, 8)).toBe(3);
  });
});

describe("fabric, by hand", () => {
  test("11 ft of bed under 6 ft rolls with a foot of overlap: 6 + 6 − 1 = 11, so 12 ft of fabric by 30 ft", () => {
    expect(FABRIC_AREA(30, 11, 6, 12)).toBe(360);
  });

  test("a strip of 30 ft off 20 ft rolls: 20, and 11 that laps it by a foot: 31 ft by 6", () => {
    expect(FABRIC_AREA(30, 6, 6, 0, 20, 12)).toBe(186);
  });

  test("without laps, rolls are the strips' length over the roll's, used up to the end", () => {
    fc.assert(
      fc.property(inches(1, 60), inches(1, 5), inches(4, 40), (length, strips, roll) => {
        expect(FABRIC_ROLLS(length, strips * 6, 6, roll, 0, 0)).toBe(CEILING((length * strips) / roll, 1));
      }),
    );
  });

  test("the cuts of a roll come to no more than the roll, and those of a strip to the bed and its end laps", () => {
    const [, ...cuts] = FABRIC_CUTS(30, 11, 6, 50, 12) as number[][];
    // Two strips of 30 ft off 50 ft rolls: 30, 20, and 11 that laps the 20 by a foot.
    expect(cuts.map(([strip, , roll, , length]) => [strip, roll, length])).toEqual([
      [1, 1, 30],
      [2, 1, 20],
      [2, 2, 11],
    ]);
  });
});

describe("the five-spot on squares of side s: (L/s + 1)(W/s + 1) + (L/s)(W/s) (computed)", () => {
  test.each([
    [12, 12, 3, 41],
    [24, 12, 3, 77],
    [30, 20, 5, 59],
  ])(
    "%d × %d ft at %d ft: %d pins, none on another, the nearest half a diagonal away",
    (length, width, side, count) => {
      // Rows alternate at half the side.
      const [, ...map] = PIN_MAP(length, width, width, 0, side * 6, side) as number[][];
      expect(map.length).toBe(count);
      const distances = map.map(([x, y], one) =>
        Math.min(...map.filter((_, other) => other !== one).map(([u, v]) => Math.hypot(x! - u!, y! - v!))),
      );
      for (const nearest of distances) expect(nearest).toBeCloseTo(side / Math.SQRT2, 9);
    },
  );
});

describe("an order goes up to the next step, as a spreadsheet's own CEILING says (@formulajs/formulajs)", () => {
  test("in quarters, which are exact", () => {
    fc.assert(
      fc.property(inches(1, 4000), inches(1, 20), (amount, step) => {
        expect(ORDER_UP(amount / 4, step / 4)).toBe(CEILING(amount / 4, step / 4));
      }),
    );
  });
});

describe("cuts from stock, against lists whose fewest stocks are known", () => {
  test.each([...TRAPS, ...PUBLISHED].map((one) => [one.name, one] as const))("%s", (_, instance) => {
    const { stockLength, lengths, counts, fewest } = instance;
    const given = [stockLength, column(lengths), counts ? column(counts) : undefined] as const;
    expect(CUT_COUNT(...given)).toBe(fewest);
    const [, ...stocks] = CUT_LIST(...given);
    const cut = stocks.flatMap((row) => row.slice(1, -1)).filter((cell) => cell !== "");
    const wanted = lengths.flatMap((length, place) => Array<number>(counts?.[place] ?? 1).fill(length));
    expect(stocks.length).toBe(fewest);
    expect(cut.map(Number).sort((a, b) => a - b)).toEqual(wanted.sort((a, b) => a - b));
  });
});
