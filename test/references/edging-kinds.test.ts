import { describe, expect } from "vitest";
import { countsInPlan } from "../../src/layout/planOfEstimate";
import { type Estimate, estimateBed } from "../../src/quantities/bed/estimate";
import type { FieldKey } from "../../src/quantities/bed/fields";
import { blankForm, initialOf } from "../../src/quantities/bed/form";
import { isPriced } from "../../src/quantities/bed/rates";
import { readForm } from "../../src/quantities/bed/read";
import { EDGING_KINDS } from "../../src/quantities/edgingKinds";
import { EDGING_SOURCES } from "../../src/quantities/edgingSources";
import { outside } from "../outside";

/*
 * A bed for each kind of edging, worked by hand: 30 ft by 10 ft along a house, edged in front and at both ends, so
 * that the edge is 30 + 10 + 10 = 50 ft in one run. The scrape is 2 1/2 in, and stone stops 1/2 in below the top.
 */

function bedWith(typed: Readonly<Partial<Record<FieldKey, string>>>): Estimate {
  const { bed, problems } = readForm({ ...blankForm(), typed: { length: "30", width: "10", ...typed } });
  if (!bed) throw new Error(problems[0]?.message);
  return estimateBed(bed, countsInPlan(bed));
}

const linesOf = ({ lines }: Estimate) => lines.map(({ label }) => label);

/** Bank yards of the scrape alone: 300 sq ft × 2.5 in ÷ 324. */
const SCRAPE = (300 * 2.5) / 324;

describe("50 ft of", () => {
  outside("by hand; pieces and stakes by BED.STAKES' rule (common practice)", "metal edging", () => {
    const { amounts } = bedWith({});
    // 8 ft pieces that lap 2 in: 6 reach 47 ft 2 in, 7 reach 55 ft.
    expect(amounts.pieces).toBe(7);
    // 4 stakes to each of 6 pieces of 7 ft 10 in, 2 to the last 3 ft, and 1 at the end; 2 corners, 10 ft from either end,
    // with one of their own each; 3 come with each piece.
    expect(amounts.stakes).toBe(6 * 4 + 2 + 1 + 1);
    expect(amounts.extraStakes).toBe(28 - 21);
    // 4 in edging, 1 1/2 in of it in the trench.
    expect(amounts.stoneDepth).toBeCloseTo(4 - 1.5 - 0.5, 9);
    expect(amounts.digYards).toBeCloseTo(SCRAPE + (50 * (4 / 12) * (1.5 / 12)) / 27, 9);
    expect(amounts.edgingTime).toBeCloseTo(50 / 14, 9);
  });

  outside("by hand; sizes and pace are common practice", "plastic edging", () => {
    const { amounts } = bedWith({ edgingKind: "plastic" });
    // 20 ft pieces on connectors, without a lap: 2 reach 40 ft, 3 reach 60 ft.
    expect(amounts.pieces).toBe(3);
    // At most 4 ft apart: 5 to a piece of 20 ft, 3 to the last 10 ft, and 1 at the end; the corners are 10 ft in, between
    // stakes at 8 and 12 ft, and at 40 ft, where a joint's stake holds it. 5 come with each piece.
    expect(amounts.stakes).toBe(5 + 5 + 3 + 1 + 1);
    expect(amounts.extraStakes).toBe(0);
    // 5 in edging, 2 1/2 in of it in the trench.
    expect(amounts.stoneDepth).toBeCloseTo(5 - 2.5 - 0.5, 9);
    expect(amounts.digYards).toBeCloseTo(SCRAPE + (50 * (4 / 12) * (2.5 / 12)) / 27, 9);
    expect(amounts.edgingTime).toBeCloseTo(50 / 20, 9);
  });

  outside(
    "Brick Industry Association, Technical Note 14A: joints of 1/16 to 3/16 in and 3/4 to 1 in of sand; count and sand by hand",
    "pavers, their short side along the edge",
    () => {
      const { amounts } = bedWith({ edgingKind: "pavers" });
      // (600 in + 1/8) ÷ (4 + 1/8) = 145.48.
      expect(amounts.pieces).toBe(146);
      expect([amounts.stakes, amounts.extraStakes]).toEqual([0, 0]);
      // 50 ft × 8 in × 1 in = 2.7778 cu ft, sold by the quarter yard (common practice).
      expect(amounts.sandYards).toBeCloseTo(0.10288, 5);
      expect(amounts.sandOrder).toBe(0.25);
      // A paver of 2 3/8 in (CMHA PAV-TEC-002-22) on 1 in of sand, 7/8 in of both below the scrape.
      expect(amounts.stoneDepth).toBeCloseTo(2.375 + 1 - 0.875 - 0.5, 9);
      expect(amounts.digYards).toBeCloseTo(SCRAPE + (50 * (8 / 12) * (0.875 / 12)) / 27, 9);
      expect(amounts.edgingTime).toBeCloseTo(50 / 10, 9);
    },
  );

  outside(
    "a do-it-yourself magazine (2019): 4 in pavers side by side are 3 to the foot",
    "pavers without joints",
    () => {
      expect(bedWith({ edgingKind: "pavers", joint: "0" }).amounts.pieces).toBe(3 * 50);
    },
  );

  outside("by hand", "pavers, their long side along the edge, and brick on edge", () => {
    // (600 + 1/8) ÷ 8 1/8 = 73.86; (600 + 1/16) ÷ (2 1/4 + 1/16) = 259.49.
    expect(bedWith({ edgingKind: "pavers", pieceLength: "8 in" }).amounts.pieces).toBe(74);
    expect(bedWith({ edgingKind: "pavers", pieceLength: "2 1/4 in", joint: "1/16" }).amounts.pieces).toBe(260);
  });

  outside(
    "common practice: spikes at both ends of a timber and about every 4 ft; 6 by 6 is 5 1/2 in (PS 20, from memory)",
    "timber",
    () => {
      const { amounts } = bedWith({ edgingKind: "timber" });
      // 50 ÷ 8 = 6.25 timbers, butted; 3 spikes to each.
      expect(amounts.pieces).toBe(7);
      expect([amounts.stakes, amounts.extraStakes]).toEqual([21, 21]);
      expect(amounts.stoneDepth).toBeCloseTo(5.5 - 3 - 0.5, 9);
      expect(amounts.digYards).toBeCloseTo(SCRAPE + (50 * (6 / 12) * (3 / 12)) / 27, 9);
      expect(amounts.edgingTime).toBeCloseTo(50 / 8, 9);
    },
  );

  outside("by hand; cut 4 to 6 in below the lawn, and its pace, are common practice", "a spade-cut edge", () => {
    const estimate = bedWith({ edgingKind: "spade cut" });
    const { amounts } = estimate;
    expect(amounts.borderRun).toBe(50);
    expect([amounts.pieces, amounts.stakes, amounts.extraStakes, amounts.sandOrder]).toEqual([0, 0, 0, 0]);
    // Stone stops 1/2 in below the lawn, in a scrape of 2 1/2 in; the cut goes 2 1/2 in deeper.
    expect(amounts.stoneDepth).toBeCloseTo(2.5 - 0.5, 9);
    expect(amounts.digYards).toBeCloseTo(SCRAPE + (50 * (4 / 12) * (2.5 / 12)) / 27, 9);
    expect(amounts.edgingTime).toBeCloseTo(50 / 25, 9);
    expect(linesOf(estimate)).toContain("Cut the edge");
    expect(linesOf(estimate)).not.toContain("Edging pieces");
  });
});

outside("by hand", "a bed without edging takes nothing for it, and stone up to the ground beside it", () => {
  const estimate = bedWith({ edgingKind: "none" });
  const { amounts } = estimate;
  expect(amounts.borderRun).toBe(0);
  expect([amounts.pieces, amounts.stakes, amounts.sandOrder, amounts.edgingTime]).toEqual([0, 0, 0, 0]);
  expect(amounts.stoneDepth).toBeCloseTo(2.5 - 0.5, 9);
  expect(amounts.digYards).toBeCloseTo(SCRAPE, 9);
  expect(estimate.runs).toEqual([]);
  expect(linesOf(estimate)).toEqual([
    ...["Scrape and load", "Haul off", "Dump fee", "Fabric rolls", "Pins", "Lay and pin fabric", "Stone", "Delivery"],
    ...["Wheelbarrow and spread", "Clean up"],
  ]);
});

outside(
  "common practice",
  "the top of all edging is level with the ground, so that as much stone fits as beside a cut edge",
  () => {
    for (const { name } of EDGING_KINDS.filter(({ lines }) => lines.edging))
      expect(bedWith({ edgingKind: name }).amounts.stoneDepth, name).toBeCloseTo(2.5 - 0.5, 9);
  },
);

describe("every usual figure of a kind of edging", () => {
  const figures = EDGING_KINDS.flatMap(({ name, usual }) =>
    (Object.keys(usual) as FieldKey[]).map((key) => ({ name, key })),
  );

  outside("the sources in the table", "has its source, unless it's a price, which is a sample", () => {
    const sourced = (name: string, key: FieldKey) =>
      EDGING_SOURCES.some(({ kind, field }) => kind === name && field === key);
    expect(figures.filter(({ name, key }) => sourced(name, key) === isPriced(key))).toEqual([]);
    expect(
      EDGING_SOURCES.filter(({ kind, field }) => !figures.some((one) => one.name === kind && one.key === field)),
    ).toEqual([]);
  });

  outside("sizes by the sources in the table, prices made up", "is the one that a bed of its kind starts with", () => {
    const starts = (name: string, keys: readonly FieldKey[]) => {
      const form = { ...blankForm(), typed: { edgingKind: name } };
      return keys.map((key) => initialOf(form, key));
    };
    const [sizes, pieces] = [
      ["borderHeight", "trenchDepth", "trenchWidth"],
      ["pieceLength", "pieceCost"],
    ] as const;
    const staked = ["pieceLap", "stakeSpacing", "stakesPerPiece", "stakeCost"] as const;
    expect(starts("metal", [...sizes, ...pieces, ...staked, "edgingRate"])).toEqual([
      ...["4", "1.5", "4", "8", "24", "2", "30", "3", "2.5", "14"],
    ]);
    expect(starts("plastic", [...sizes, ...pieces, ...staked, "edgingRate"])).toEqual([
      ...["5", "2.5", "4", "20", "28", "0", "48", "5", "1.5", "20"],
    ]);
    expect(starts("pavers", [...sizes, ...pieces, "edgingRate", "joint", "sandDepth", "sandStep", "sandCost"])).toEqual(
      [...["2.375", "0.875", "8", "4 in", "0.9", "10", "0.125", "1", "0.25", "48"]],
    );
    expect(starts("timber", [...sizes, ...pieces, "stakeSpacing", "stakeCost", "edgingRate"])).toEqual([
      ...["5.5", "3", "6", "8", "38", "48", "1.6", "8"],
    ]);
    expect(starts("spade cut", ["trenchDepth", "trenchWidth", "edgingRate"])).toEqual(["2.5", "4", "25"]);
  });
});
