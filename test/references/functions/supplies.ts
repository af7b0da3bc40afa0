import { CEILING } from "@formulajs/formulajs";
import fc from "fast-check";
import { expect } from "vitest";
import { type Functions, figure, type OutsideCheck } from "../../outside";
import { type Instance, PUBLISHED, TRAPS } from "../cuttingInstances";

const ROW_OF_BRICKS = "by hand: one row along 50 ft, 50 ÷ the unit's run, rounded up";
const PAVERS_WITH_JOINTS =
  "by hand: ceil((600 in + j) / (d + j)); sizes and joints as in Brick Industry Association, Technical Note 14A and Brick Paving, Table 1, seen";
/** What one takes up along the edge, its joint, and how many a row of 50 ft has. */
const PAVER_ROWS: readonly (readonly [alongIn: number, jointIn: number, units: number])[] = [
  [2.25, 0, 267],
  [2.25, 1 / 16, 260],
  [2.25, 1 / 8, 253],
  [4, 0, 150],
  [4, 1 / 16, 148],
  [4, 1 / 8, 146],
  [8, 0, 75],
  [8, 1 / 16, 75],
  [8, 1 / 8, 74],
  [7.625, 0, 79],
  [7.625, 1 / 16, 79],
  [7.625, 1 / 8, 78],
];
const FIVE_SPOT = "by hand: a five-spot on squares of side s has (L/s + 1)(W/s + 1) corners and (L/s)(W/s) centers";
const WIANT =
  "H. V. Wiant, Tree Planters' Notes 24(3), 1973: neighbors in superposed squares of side a are √(a²/2) apart, seen";
const ROWS = "common practice: a pin in each corner, rows at most 12 in apart, pairs and singles in turn";
const CALTRANS = "Caltrans Roadside Management Toolbox, weed control mat: 6 × 250 ft, seen; 1,500 ft² by hand";

const column = (values: readonly unknown[]) => values.map((value) => [value]);

/** Pins for a square whose corners are `corners` by `corners`, 3 ft apart, with one more in the middle of each four. */
const squareOf = (corners: number, pins: number): OutsideCheck => {
  const side = 3 * (corners - 1);
  return {
    ...figure(FIVE_SPOT, (BED) => BED.PINS(side, side, side, 0, 18, 0, 3), pins),
    what: `${corners} by ${corners} corners take ${pins} pins`,
  };
};

/** How far each pin is from the next one. */
function nearest(map: unknown[][]): number[] {
  const [, ...pins] = map as number[][];
  return pins.map(([x, y], one) =>
    Math.min(...pins.filter((_, other) => other !== one).map(([u, v]) => Math.hypot(x! - u!, y! - v!))),
  );
}

const fiveSpot = (length: number, width: number, side: number, pins: number): OutsideCheck => ({
  what: `${length} × ${width} ft at ${side} ft take ${pins} pins, the nearest ${(side / Math.SQRT2).toFixed(4)} ft apart`,
  source: `${FIVE_SPOT}; ${WIANT}`,
  compare: (BED) => {
    // Rows of pairs stand a side apart, with a row of singles halfway.
    const spacingIn = (side / 2) * 12;
    expect(BED.PINS(length, width, width, 0, spacingIn, 0, side)).toBe(pins);
    const map = BED.PIN_MAP(length, width, width, 0, spacingIn, side);
    expect(map.length).toBe(1 + pins);
    for (const apart of nearest(map)) expect(apart).toBeCloseTo(side / Math.SQRT2, 9);
  },
});

const cutFrom = ({ name, source, stockLength, lengths, counts, fewest }: Instance): OutsideCheck => ({
  what: `${name}: ${fewest}`,
  source,
  compare: (BED: Functions) => {
    const given = [stockLength, column(lengths), counts && column(counts)] as const;
    expect(BED.CUT_COUNT(...given)).toBe(fewest);
    const [, ...stocks] = BED.CUT_LIST(...given);
    expect(stocks.length).toBe(fewest);
    const cut = stocks.flatMap((row) => row.slice(1, -1)).filter((cell) => cell !== "");
    const wanted = lengths.flatMap((length, place) => Array<number>(counts?.[place] ?? 1).fill(length));
    expect(cut.map(Number).sort((a, b) => a - b)).toEqual(wanted.sort((a, b) => a - b));
  },
});

export const checks: readonly OutsideCheck[] = [
  figure("by hand: 8 + 8 ft leave 4 of 20", (BED) => BED.EDGING_PIECES(20, 8), 3),
  figure("by hand: 7 timbers of 8 ft are 56 ft, 6 are 48", (BED) => BED.EDGING_PIECES(50, 8), 7),
  figure("by hand: 4 × 8 ft − 3 laps of 2 in are 31.5 ft", (BED) => BED.EDGING_PIECES(31.5, 8, 2), 4),
  figure("by hand: closed, 4 × (8 ft − 2 in) are 31.33 ft", (BED) => BED.EDGING_PIECES(31.5, 8, 2, true), 5),
  figure(
    "by hand: 20 ft are 2 pieces and 4 ft, 11 ft are 1 and 3 ft, and 4 + 3 ft come from one more",
    (BED) => BED.JOB_PIECES(column([20, 11]), 8, 0, null, 0),
    4,
  ),
  figure(
    "by hand: last pieces of 4 and 4 ft fill one of 8 ft, and a cut of 1/8 in leaves no room for both",
    (BED) => BED.JOB_PIECES(column([20, 12]), 8),
    5,
  ),
  figure(
    "by hand: a closed run of 25 ft takes 3 pieces and 1 ft, an open one of 15 ft 1 and 7 ft, cut from one more",
    (BED) => BED.JOB_PIECES(15, 8, 0, 25, 0),
    5,
  ),
  figure("by hand: 30 + 20 and 30 + 18 ft", (BED) => BED.JOB_ROLLS(column(["2 x 30", "20; 18"]), 50), 2),
  figure(
    "by hand: 3 of 30 ft come off 2 rolls of 50 with one lap: 30 + 20, and 11 + 30",
    (BED) => BED.JOB_ROLLS("3 x 30'", 50),
    2,
  ),
  figure("by hand: 1 strip of 120 ft is 50 + 49 + 21 with laps of a foot", (BED) => BED.JOB_ROLLS(120, 50), 3),
  figure(ROW_OF_BRICKS, (BED) => BED.EDGING_PIECES(50, 2.25 / 12), 267),
  figure(ROW_OF_BRICKS, (BED) => BED.EDGING_PIECES(50, 4 / 12), 150),
  figure(ROW_OF_BRICKS, (BED) => BED.EDGING_PIECES(50, 8 / 12), 75),
  figure(ROW_OF_BRICKS, (BED) => BED.EDGING_PIECES(50, 7.625 / 12), 79),
  ...PAVER_ROWS.map(([along, joint, units]) =>
    figure(PAVERS_WITH_JOINTS, (BED) => BED.PAVERS(50, along, joint), units),
  ),
  figure(
    "by hand: a ring of 10 ft has a joint behind each: 120 ÷ 4.125 = 29.1",
    (BED) => BED.PAVERS(10, 4, 0.125, true),
    30,
  ),
  figure(
    "by hand: 33 in are exactly eight of 4 in with a joint each of 1/8",
    (BED) => BED.PAVERS("33 in", 4, "1/8", true),
    8,
  ),
  figure("by hand: 4 pavers of 4 in and 3 joints reach 16 3/8 in", (BED) => BED.PAVERS("16 3/8 in", 4, "1/8"), 4),
  figure("by hand: past 16 3/8 in comes a joint, and a fifth is cut", (BED) => BED.PAVERS("16 7/16 in", 4, "1/8"), 5),
  figure("by hand: 2.5 in over 8 pavers of 4 in take a cut ninth", (BED) => BED.PAVERS(`2' 10 1/2"`, 4), 9),
  figure("by hand: 50 × 8/12 × 1/12 ft is 2.7778 ft³", (BED) => BED.SAND_YARDS(50, 8, 1), 0.102881, 1e-5),
  figure("by hand: 60 × 16/12 × 4/12 ft is 26.667 ft³", (BED) => BED.SAND_YARDS(60, 16, 4), 0.987654, 1e-5),
  figure("by hand: 100 × 1 × 4/12 ft is 33.333 ft³", (BED) => BED.SAND_YARDS(100, 12, 4), 1.234568, 1e-5),
  // An article prints 1-1/4 for this one, which is short.
  figure("by hand: 60 × 14/12 × 6/12 ft is 35 ft³, 1.2963 yd³", (BED) => BED.SAND_YARDS(60, 14, 6), 1.296296, 1e-5),
  figure("by hand: 10% on top of 1.2346", (BED) => BED.SAND_YARDS(100, 12, 4, 0.1), 1.358025, 1e-5),
  figure("by hand: at 0, 4, 8, 12, 16 and 20 ft", (BED) => BED.STAKES(20, 8, 48), 6),
  figure("by hand: those six, and one more at each of two corners", (BED) => BED.STAKES(20, 8, 48, 0, 2), 8),
  figure(
    "by hand: those six; the corner at 8 ft is at a joint, the one at 14 ft 2 ft from a stake",
    (BED) => BED.STAKES(20, 8, 48, 0, 2, false, 8, 6),
    7,
  ),

  figure("by hand: 6 + 6 − 1 = 11", (BED) => BED.FABRIC_STRIPS(11, 6, 12), 2),
  figure("by hand: 11.01 is more than 6 + 6 − 1", (BED) => BED.FABRIC_STRIPS(11.01, 6, "1 ft"), 3),
  figure("by hand: 6 + 4 × 4.5 = 24, 6 + 3 × 4.5 = 19.5", (BED) => BED.FABRIC_STRIPS(20, 6, 18), 5),
  figure("by hand: two strips of 6 ft by 30", (BED) => BED.FABRIC_AREA(30, 11, 6, 12), 360),
  figure("by hand: 20 ft, and 11 that lap it by a foot, by 6", (BED) => BED.FABRIC_AREA(30, 6, 6, 0, 20, 12), 186),
  figure(CALTRANS, (BED) => BED.FABRIC_AREA(250, 6, 6, 0), 1500),
  figure(
    "by hand: 30 and 20 ft off the first roll, 11 off the second",
    (BED) => BED.FABRIC_ROLLS(30, 11, 6, 50, 12),
    2,
  ),
  figure(
    "by hand: a foot left of each roll is scrap at a lap of a foot",
    (BED) => BED.FABRIC_ROLLS(24, 21, 3, 25, 0),
    7,
  ),
  figure("by hand: two strips a roll, and 2 ft that lap a foot", (BED) => BED.FABRIC_ROLLS(24, 21, 3, 50, 0), 4),
  {
    what: "two strips of 30 ft off 50 ft rolls are cut as 30, 20, and 11 that laps the 20 by a foot",
    source: "by hand",
    compare: (BED) => {
      const [, ...cuts] = BED.FABRIC_CUTS(30, 11, 6, 50, 12) as number[][];
      expect(cuts.map(([strip, , roll, , length]) => [strip, roll, length])).toEqual([
        [1, 1, 30],
        [2, 1, 20],
        [2, 2, 11],
      ]);
    },
  },

  fiveSpot(12, 12, 3, 41),
  fiveSpot(24, 12, 3, 77),
  fiveSpot(30, 20, 5, 59),
  fiveSpot(12, 12, 4, 25),
  squareOf(2, 5),
  squareOf(3, 13),
  squareOf(5, 41),
  squareOf(10, 181),
  squareOf(20, 761),
  // 19 intervals: 11 rows of edge pins on both sides, 11 at the overlap, 9 centers in each of two bays.
  figure(ROWS, (BED) => BED.PINS(18.5, 5, 6, 6), 2 * 11 + 1 * 11 + 2 * 9),

  {
    what: "an order goes up to the next step, in quarters, which are exact",
    source: "CEILING of @formulajs/formulajs",
    compare: (BED) => {
      const quarters = (most: number) => fc.integer({ min: 1, max: most }).map((count) => count / 4);
      fc.assert(
        fc.property(quarters(4000), quarters(20), (amount, step) => {
          expect(BED.ORDER_UP(amount, step)).toBe(CEILING(amount, step));
        }),
      );
    },
  },
  ...[...TRAPS, ...PUBLISHED].map(cutFrom),
];
