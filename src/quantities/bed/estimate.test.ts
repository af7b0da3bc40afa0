import { describe, expect, test } from "vitest";
import { estimateBed } from "./estimate";
import type { FieldKey } from "./fields";
import { type BedForm, blankForm } from "./form";
import { type Bed, readForm } from "./read";

type Typed = Partial<Record<FieldKey, string>>;
const bedOf = (form: Partial<BedForm>): Bed => {
  const { bed, problems } = readForm({ ...blankForm(), ...form });
  expect(problems).toEqual([]);
  return bed!;
};

/** A strip of 20 by 6 ft along a wall, with numbers that are easy to work out by hand. */
const strip: Typed = {
  ...{ length: "20", width: "6", longBorders: "1", shortBorders: "2" },
  ...{ borderHeight: "4", trenchDepth: "1.5", trenchWidth: "4.5", topGap: "0.5", scrapeDepth: "2.7" },
  ...{ stone: "1.5", soil: "0.2", waste: "8%", orderStep: "0.5", orderMinimum: "1", soilTonsPerYard: "1.5" },
  ...{ truckYards: "5", truckPayload: "1.5", deliveryYards: "2", deliveryPayload: "8" },
  ...{ pieceLength: "8", pieceLap: "2", stakeSpacing: "30", stakesPerPiece: "3" },
  ...{ rollWidth: "6", rollLength: "50", overlap: "6", endLap: "12", pinSpacing: "12", pinBay: "4", pinsPerBox: "50" },
  ...{ barrowSize: "6", barrowLoad: "300", barrowDistance: "60", cleanUpHours: "1" },
  ...{ scrapeHours: "1.2", edgingRate: "16", fabricRate: "120", rakeRate: "100", crewSize: "2", crewDay: "8" },
  ...{ crewRate: "50", haulCost: "45", dumpFee: "30", pieceCost: "24", stakeCost: "2.5", rollCost: "64" },
  ...{ pinBoxCost: "18", stoneCost: "60", deliveryCost: "90", materialMarkup: "20%", laborMarkup: "35%" },
  ...{ haulingMarkup: "15%", overhead: "10%", minimumCharge: "400", salesTax: "6%" },
};
const estimate = (changes: Typed = {}, form: Partial<BedForm> = {}) =>
  estimateBed(bedOf({ typed: { ...strip, ...changes }, ...form }));

describe("an estimate worked out by hand", () => {
  const found = estimate();

  test.each<[keyof typeof found.amounts, number, string]>([
    ["stoneArea", 120, "20 × 6"],
    ["borderRun", 32, "20 + 6 + 6"],
    ["cornerStakes", 1, "at 26 ft; a stake at 3 × 1' 11 1/2\" = 5' 10 1/2\" holds the corner at 6 ft, too"],
    ["stoneDepth", 2, "4 − 1.5 − 0.5"],
    ["stoneYards", 0.8, "120 × 2 ÷ 324 × 1.08"],
    ["stoneTons", 1.2, "0.8 × 1.5"],
    ["orderTons", 1.5, "by half tons"],
    ["deliveries", 1, "1.5 ÷ 1.5 = 1 cu yd in a box of 2"],
    ["digYards", 19 / 18, "120 × 2.7 ÷ 324 = 1, and a trench of 32 × 0.375 × 0.125 = 1.5 cu ft, 1/18 cu yd"],
    ["spoilYards", 19 / 15, "19/18 × 1.2"],
    ["spoilLoads", 2, "19/15 × 1.5 = 1.9 tons on 1.5"],
    ["pieces", 5, "4 pieces reach 4 × 8 − 3 × 1/6 = 31.5 ft"],
    ["stakes", 19, "4 segments of 7' 10\" at 30 in take 4 each, the last 1, and one for an end and one for a corner"],
    ["extraStakes", 4, "19 − 5 × 3"],
    ["fabricStrips", 1, "the roll is as wide as the bed"],
    ["fabricArea", 120, "20 × 6"],
    ["rolls", 1, "20 of 50 ft"],
    ["pins", 53, "20 rows, 2 bays: 2 × 11 at the edges, 11 between the bays, 2 × 10 in the middle"],
    ["pinBoxes", 2, "53 by 50"],
    ["barrowTrips", 8, "0.8 × 1.5 × 2,000 ÷ 300; by the tray 0.8 × 27 ÷ 6 = 3.6"],
    ["scrapeTime", (19 / 18) * 1.2, "19/18 × 1.2"],
    ["edgingTime", 2, "32 ÷ 16"],
    ["fabricTime", 1, "120 ÷ 120"],
    ["spreadTime", (8 * 3.1) / 60 + 1.2, "8 × (2 + 0.5 + 120 ÷ 200) min, and 120 ÷ 100"],
    ["cleanUpHours", 1, "as typed"],
  ])("%s is %f: %s", (key, amount) => {
    expect(found.amounts[key]).toBeCloseTo(amount, 9);
  });

  test("costs and prices each line, with the markup of its kind", () => {
    expect(Object.fromEntries(found.lines.map(({ key, costSum }) => [key, Number(costSum.toFixed(4))]))).toEqual({
      scrape: 63.3333, // 1.2667 h × 50
      haul: 90, // 2 × 45
      dump: 60, // 2 × 30
      edging: 120, // 5 × 24
      stakeLine: 10, // 4 × 2.50
      setEdging: 100, // 2 h × 50
      fabric: 64,
      pinLine: 36, // 2 × 18
      layFabric: 50, // 1 h × 50
      stoneLine: 90, // 1.5 × 60
      delivery: 90,
      spread: 80.6667, // 1.6133 h × 50
      cleanUp: 50,
    });
    const priceOf = (key: string) => found.lines.find((line) => line.key === key)!.priceSum;
    expect(priceOf("edging")).toBeCloseTo(144, 9); // 120 × 1.20
    expect(priceOf("cleanUp")).toBeCloseTo(67.5, 9); // 50 × 1.35
    expect(priceOf("haul")).toBeCloseTo(103.5, 9); // 90 × 1.15
  });

  test("adds up to a price", () => {
    // Material 320, labor 6.88 h × 50 = 344, hauling 240.
    expect(found.directCost).toBeCloseTo(904, 9);
    expect(found.overheadCost).toBeCloseTo(90.4, 9);
    expect(found.fullCost).toBeCloseTo(994.4, 9);
    // 320 × 1.20 + 344 × 1.35 + 240 × 1.15 + 90.40 = 384 + 464.40 + 276 + 90.40
    expect(found).toMatchObject({ price: 1214.8, minimumApplies: false, taxSum: 72.89 });
    expect(found.priceWithTax).toBeCloseTo(1287.69, 9);
    expect(found.markupOnCost).toBeCloseTo(1214.8 / 994.4 - 1, 9);
    expect(found.marginOnPrice).toBeCloseTo(1 - 994.4 / 1214.8, 9);
    expect(found.laborHours).toBeCloseTo(6.88, 9);
    expect(found.crewDays).toBeCloseTo(0.43, 9); // 6.88 ÷ (2 × 8)
  });
});

test("a small job costs the minimum charge", () => {
  expect(estimate({ minimumCharge: "1300" })).toMatchObject({ price: 1300, minimumApplies: true, taxSum: 78 });
});

test("without any cost there is no markup, and without a price no margin", () => {
  const { numbers, ...bed } = bedOf({ typed: strip });
  const free = { ...numbers };
  for (const key of Object.keys(free) as (keyof typeof free)[])
    if (/Cost$|Fee$|^crewRate$|^minimumCharge$/.test(key)) free[key] = 0;
  expect(estimateBed({ ...bed, numbers: free })).toMatchObject({
    ...{ fullCost: 0, price: 0, minimumApplies: false, markupOnCost: undefined, marginOnPrice: undefined },
  });
  const charged = estimateBed({ ...bed, numbers: { ...free, minimumCharge: 100 } });
  expect(charged).toMatchObject({ price: 100, markupOnCost: undefined, marginOnPrice: 1 });
});

test("a ring with border inside and out counts both runs, each closed", () => {
  const { amounts } = estimate({ diameter: "10", innerDiameter: "4", innerBorder: "1" }, { way: "round" });
  // Runs of 31.42 and 12.57 ft, π × 14 = 43.98 together; laid pieces gain 7' 10": 5 and 2.
  expect(amounts.edgingTime).toBeCloseTo((Math.PI * 14) / 16, 9);
  expect(amounts.pieces).toBe(7);
  // Outside 4 × 4 + 1, inside 4 + 2, and no ends.
  expect(amounts).toMatchObject({ stakes: 23, extraStakes: 2 });
  // 65.97 sq ft × 2.7 ÷ 324, and a trench of 43.98 × 0.375 × 0.125 cu ft
  expect(amounts.digYards).toBeCloseTo(((Math.PI / 4) * 84 * 2.7) / 324 + (Math.PI * 14 * 0.375 * 0.125) / 27, 9);
});

test("pins go around what a layout does not know the place of", () => {
  const edging = { edgingFt: 31.1, pieces: 4, stakes: 18, cornerStakes: 1, openRunsFt: [31.1] };
  const laid = { strips: 3, fabricSqFt: 132, rolls: 2, pins: 60, stripsFt: [], ...edging };
  const { amounts } = estimateBed(
    bedOf({ typed: { ...strip, cutAround: "5", pinSpacing: "6", cornerRadius: "1", roundedCorners: "1" } }),
    laid,
  );
  // 5 ft at 6 in: 10 more.
  expect(amounts).toMatchObject({ fabricStrips: 3, fabricArea: 132, rolls: 2, pins: 70, pinBoxes: 2 });
  expect(amounts.fabricTime).toBeCloseTo(1.1, 9);
});

describe("stone and soil", () => {
  test("may be named, or given as numbers", () => {
    expect(estimate({ stone: "river rock", soil: "clay" }).amounts).toMatchObject({ stoneDensity: 1.35 });
    expect(estimate({ soil: "clay" }).amounts.spoilYards).toBeCloseTo((19 / 18) * 1.43, 9);
    const weighed = estimateBed({ ...bedOf({ typed: strip }), weighedTonsPerYard: 1.4 });
    expect(weighed.amounts.stoneDensity).toBe(1.4);
  });

  test.each([
    [{ stone: "stone 1.5" }, "name", "stone"],
    [{ stone: "1.5 tons" }, "name", "stone"],
    [{ soil: "mud 0.2" }, "name", "soil"],
    [{ stone: "1.2.3" }, "value", "stone"],
    [{ soil: "1.2.3" }, "value", "soil"],
  ])("%j is refused", (typed, kind, argument) => {
    expect(() => estimate(typed)).toThrow(expect.objectContaining({ kind, argument }));
  });
});
