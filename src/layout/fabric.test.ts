import { describe, expect, it } from "vitest";
import { byPoints, lShape, pad, rectangle, uShape } from "../../test/planBeds";
import type { Bed } from "./bed";
import { boundaryOf } from "./boundary";
import { chooseFabric } from "./fabric";
import { layOutBed } from "./layOutBed";
import { fabricRulesOf, type LayoutOptions } from "./options";
import { outlineOf } from "./outlineOf";
import { planStrips } from "./strips";

const along: LayoutOptions = { rollWidthFt: 6, rollLengthFt: 50, overlapIn: 6, directionDegrees: 0 };
const laid = (bed: Bed, changed: Partial<LayoutOptions> = {}) => layOutBed(bed, { ...along, ...changed });

const rounded = (value: number) => Number(value.toFixed(4)) + 0;

/** Cuts as strip, where they begin, and length: "1 at 0,0: 20". */
const cutsOf = (bed: Bed, changed: Partial<LayoutOptions> = {}) =>
  laid(bed, changed).cuts.map(({ strip, corners: [start], lengthFt }) => {
    return `${strip} at ${rounded(start.x)},${rounded(start.y)}: ${rounded(lengthFt)}`;
  });

/** The cuts of strips that lie level from the base line up, as "strip: from to". */
function stripsOf(bed: Bed, { rollWidthFt = 6, overlapIn = 6 }: Partial<LayoutOptions> = {}): string[] {
  const rules = { rollWidthFt, overlapFt: overlapIn / 12 };
  const { cuts } = planStrips(boundaryOf(outlineOf(bed)), { along: { x: 1, y: 0 }, flipU: 1, flipV: 1 }, rules);
  return cuts.map(({ band, from, to }) => `${band + 1}: ${rounded(from)} to ${rounded(to)}`);
}

describe("strips", () => {
  it("lie side by side from the base line, the last as wide as the bed leaves", () => {
    // 15 ft: (15 − 0.5)/(6 − 0.5) is 2.6, so 3; the third begins at 11 ft.
    const { strips, cuts, seams, counts } = laid(rectangle(20, 15));
    expect(strips).toEqual([
      { number: 1, widthFt: 6 },
      { number: 2, widthFt: 6 },
      { number: 3, widthFt: 4 },
    ]);
    expect(cuts.map(({ number, strip, corners }) => [number, strip, corners[0].y, corners[2].y])).toEqual([
      [1, 1, 0, 6],
      [2, 2, 5.5, 11.5],
      [3, 3, 11, 15],
    ]);
    // Midway through each overlap of half a foot.
    expect(seams).toEqual([
      { from: { x: 0, y: 5.75 }, to: { x: 20, y: 5.75 } },
      { from: { x: 0, y: 11.25 }, to: { x: 20, y: 11.25 } },
    ]);
    // 60 ft off the rolls of 6 ft; in the bed 20 · (15 + 2 · 0.5).
    expect(counts).toMatchObject({
      strips: 3,
      cuts: 3,
      rolls: 2,
      fabricLengthFt: 61,
      fabricOffRollsSqFt: 366,
      fabricSqFt: 320,
      seamLengthFt: 40,
      endLaps: 1,
    });
  });

  it("are cut only for what the strip before leaves bare", () => {
    expect(stripsOf(lShape)).toEqual(["1: 0 to 20", "2: 0 to 8", "3: 0 to 8"]);
    // Twelve feet with overlaps of half a foot: the second strip reaches 11.5 ft, and a third lies in the rest.
    expect(laid(lShape).seams.map(({ to }) => to)).toEqual([
      { x: 8, y: 5.75 },
      { x: 8, y: 11.25 },
    ]);
  });

  it("are cut for whatever is beyond a strip's edge, as BED.FABRIC_STRIPS counts them", () => {
    const low = byPoints([0, 0], [20, 0], [20, 6 + 1e-9], [8, 6 + 1e-9], [8, 9], [0, 9]);
    expect(stripsOf(low)).toEqual(["1: 0 to 20", "2: 0 to 8"]);
    const high = byPoints([0, 0], [20, 0], [20, 6.01], [8, 6.01], [8, 9], [0, 9]);
    expect(stripsOf(high)).toEqual(["1: 0 to 20", "2: 0 to 20"]);
  });

  it("fall into parts where a notch or a pad takes up the whole width", () => {
    expect(stripsOf(uShape, { rollWidthFt: 3, overlapIn: 0 })).toEqual([
      "1: 0 to 12",
      "2: 0 to 4",
      "2: 8 to 12",
      "3: 0 to 4",
      "3: 8 to 12",
    ]);
    const withPad: Bed = { kind: "rectangle", lengthFt: 20, widthFt: 6, cutOuts: [pad(5, 0, 4, 6)] };
    expect(stripsOf(withPad)).toEqual(["1: 0 to 5", "1: 9 to 20"]);
    const lower: Bed = { kind: "rectangle", lengthFt: 20, widthFt: 6, cutOuts: [pad(5, 0, 4, 5)] };
    expect(stripsOf(lower)).toEqual(["1: 0 to 20"]);
  });

  it("reach as far as the bed does between their edges, whatever the shape of their ends", () => {
    // Right end slanting, then left end slanting, then round.
    expect(stripsOf(byPoints([0, 0], [10, 0], [8, 4], [0, 4]))).toEqual(["1: 0 to 10"]);
    expect(stripsOf(byPoints([0, 0], [10, 0], [10, 4], [2, 4]))).toEqual(["1: 0 to 10"]);
    expect(stripsOf({ kind: "round", diameterFt: 5 })).toEqual(["1: -2.5 to 2.5"]);
    // Two peaks with slanting sides: at 6 ft up, where the second strip begins to be needed, they are 1 ft apart.
    const slanting = byPoints([0, 0], [9, 0], [9, 9], [6, 9], [5, 6], [4, 6], [3, 9], [0, 9]);
    expect(stripsOf(slanting)).toEqual(["1: 0 to 9", "2: 0 to 4", "2: 5 to 9"]);
    // The right side leans out: it reaches 9 + 6/7 ft at 6 ft up, where the first strip ends.
    const above = byPoints([0, 0], [9, 0], [10, 7], [10, 10], [0, 10]);
    expect(stripsOf(above)).toEqual(["1: 0 to 9.8571", "2: 0 to 10"]);
  });
});

describe("the direction of strips", () => {
  it("is along the bed, unless another takes fewer rolls or, of as many, fewer cuts", () => {
    // 22 ft: across 4 cuts of 5 ft are shorter, 20 ft against 22, but they come off the same roll.
    const along = layOutBed(rectangle(22, 5), { rollWidthFt: 6, overlapIn: 6 });
    expect([along.directionDegrees, along.counts.cuts, along.counts.fabricLengthFt]).toEqual([0, 1, 22]);
    // Off rolls of 10 ft with end laps of 1 ft: 22 ft is 10, 10 and 4 ft; 4 cuts of 5 ft take 2 rolls without a lap.
    const rolls = layOutBed(rectangle(22, 5), { rollWidthFt: 6, overlapIn: 6, rollLengthFt: 10 });
    expect([rolls.directionDegrees, rolls.counts.rolls, rolls.counts.endLaps]).toEqual([90, 2, 0]);
  });

  it("takes fewer rolls over a shorter length", () => {
    // 13 by 5.5 ft off rolls of 7 ft: along, 7 and 7 ft come off 2 rolls. Across, 3 cuts of 5.5 ft, 16.5 ft, take 3.
    const { counts, directionDegrees } = layOutBed(rectangle(13, 5.5), {
      rollWidthFt: 6,
      overlapIn: 6,
      rollLengthFt: 7,
    });
    expect([directionDegrees, counts.rolls, counts.fabricLengthFt]).toEqual([0, 2, 14]);
  });

  it("may be set by hand, and is given from 0 up to 180°", () => {
    const at = (directionDegrees: number) => laid(rectangle(20, 5), { directionDegrees });
    expect(at(90).cuts.map(({ lengthFt }) => lengthFt)).toEqual([5, 5, 5, 5]);
    expect(at(90).directionDegrees).toBe(90);
    expect(at(-90).directionDegrees).toBe(90);
    expect(at(180).directionDegrees).toBe(0);
    expect(at(225).directionDegrees).toBeCloseTo(45, 9);
    expect(at(45).direction).toEqual({ x: expect.closeTo(Math.SQRT1_2, 12), y: expect.closeTo(Math.SQRT1_2, 12) });
  });

  it("begins from the base line, or across the bed from the left", () => {
    expect(cutsOf(rectangle(20, 11))).toEqual(["1 at 0,0: 20", "2 at 0,5.5: 20"]);
    expect(cutsOf(rectangle(8, 5), { directionDegrees: 90 })).toEqual(["1 at 0,0: 5", "2 at 5.5,0: 5"]);
  });

  it("begins from the other side where that takes less", () => {
    // An L of 8 by 6 ft with 20 by 6 ft above it: from the base line the long part would lie in the second strip.
    const upsideDown = byPoints([0, 0], [8, 0], [8, 6], [20, 6], [20, 12], [0, 12]);
    const found = layOutBed(upsideDown, { rollWidthFt: 6, overlapIn: 6, directionDegrees: 0 });
    expect(found.cuts.map(({ lengthFt }) => lengthFt)).toEqual([20, 8, 8]);
    expect(found.cuts[0]!.corners[0].y).toBe(12);
    expect(found.strips[0]!.number).toBe(1);
  });

  it("begins from the other end where the remnants suit it better", () => {
    // A strip with a gap falls into cuts of 4 and 6 ft. Off rolls of 5 ft with end laps of 1 ft, 4 ft first leaves a foot of
    // scrap, then 5 and 2 ft: 2 + 1 rolls and 11 ft. 6 ft first is 5 and 2 ft, leaves 3, and 4 ft is 3 and 2 ft: 12 ft.
    const gap: Bed = { kind: "rectangle", lengthFt: 12, widthFt: 4, cutOuts: [pad(4, 0, 2, 4)] };
    const found = laid(gap, { rollLengthFt: 5 });
    expect(found.cuts.map(({ lengthFt, pieces }) => [lengthFt, pieces.length])).toEqual([
      [4, 1],
      [6, 2],
    ]);
    const mirrored: Bed = { kind: "rectangle", lengthFt: 12, widthFt: 4, cutOuts: [pad(6, 0, 2, 4)] };
    const other = laid(mirrored, { rollLengthFt: 5 });
    expect(other.cuts.map(({ lengthFt, pieces }) => [lengthFt, pieces.length])).toEqual([
      [4, 1],
      [6, 2],
    ]);
    expect(other.cuts[0]!.corners[0].x).toBe(12);
    expect(other.counts).toMatchObject({ rolls: 3, fabricLengthFt: 11 });
  });

  it("is one of a side where that saves a cut", () => {
    // A U with arms of 4 and 3 ft, 9 ft high on a foot of 3 ft, 11 ft long, off a roll of 3 ft. Along: 11 ft, then 4 and 3 ft
    // twice, 5 cuts. Across from the left: four cuts of 9 ft. From the right: 9, only 3 in the opening, 9 and 9.
    const arms = byPoints([0, 0], [11, 0], [11, 9], [8, 9], [8, 3], [4, 3], [4, 9], [0, 9]);
    const found = layOutBed(arms, { rollWidthFt: 3, overlapIn: 0 });
    expect([found.directionDegrees, found.counts.cuts, found.counts.fabricLengthFt]).toEqual([90, 4, 30]);
  });
});

describe("the ways found cheapest", () => {
  const waysOf = (bed: Bed, changed: Partial<LayoutOptions> = {}) =>
    chooseFabric(outlineOf(bed), fabricRulesOf({ ...along, ...changed })).map(
      ({ frame: { along: direction, flipU, flipV }, lengthFt }) => [direction.x, flipU, flipV, lengthFt],
    );

  it("begin from any end and either side where it makes no difference, and run in one direction", () => {
    expect(waysOf(rectangle(20, 5))).toEqual([
      [1, 1, 1, 20],
      [1, -1, 1, 20],
      [1, 1, -1, 20],
      [1, -1, -1, 20],
    ]);
    // Across, the left side comes first: there the axis across the strips points to the left, and is turned round.
    expect(waysOf(rectangle(5, 5), { directionDegrees: 90 }).map(([, , flipV]) => flipV)).toEqual([-1, -1, 1, 1]);
    const square = chooseFabric(outlineOf(rectangle(5, 5)), fabricRulesOf({ rollWidthFt: 6, overlapIn: 6 }));
    expect(square.map(({ frame }) => frame.along)).toEqual(Array(4).fill({ x: 1, y: 0 }));
  });

  it("begin from the end from which the remnants suit", () => {
    // Off rolls of 5 ft with laps of 1 ft: 6 ft, then 4 ft, is 5 + 2 and 3 + 2 ft; 4 ft first leaves scrap, then 5 + 2 ft.
    const gap: Bed = { kind: "rectangle", lengthFt: 12, widthFt: 4, cutOuts: [pad(6, 0, 2, 4)] };
    expect(waysOf(gap, { rollLengthFt: 5 })).toEqual([
      [1, -1, 1, 11],
      [1, -1, -1, 11],
    ]);
  });

  it("begin each strip from that end, the strips in order", () => {
    // Two strips of 4 ft with gaps: 6 and 4 ft in the lower one, 4 and 6 ft in the upper. From the right, 4, 6, 6, 4 ft are
    // 4, 5 + 2, 3 + 4 and 4 ft, 22 ft off 5 rolls. From the left, 6, 4, 4, 6 ft are 5 + 2, 3 + 2, 3 + 2 and 3 + 4 ft, 24 ft.
    // From the upper strip down it is the other way round.
    const gaps: Bed = { kind: "rectangle", lengthFt: 12, widthFt: 8, cutOuts: [pad(6, 0, 2, 4), pad(4, 4, 2, 4)] };
    expect(waysOf(gaps, { rollWidthFt: 4, overlapIn: 0, rollLengthFt: 5 })).toEqual([
      [1, -1, 1, 22],
      [1, 1, -1, 22],
    ]);
  });
});

describe("cuts longer than a roll", () => {
  it("come in pieces that lap end to end", () => {
    // 120 ft off rolls of 50 ft: 50, then 50 from 49 ft on, then 22 from 98 ft on.
    const { cuts, counts } = laid(rectangle(120, 5));
    expect(cuts[0]!.pieces).toEqual([
      { roll: 1, startsAtFt: 0, lengthFt: 50 },
      { roll: 2, startsAtFt: 49, lengthFt: 50 },
      { roll: 3, startsAtFt: 98, lengthFt: 22 },
    ]);
    // 5 · (120 + 2 · 1)
    expect(counts).toMatchObject({ rolls: 3, endLaps: 2, fabricLengthFt: 122, fabricSqFt: 610 });
  });

  it("lap once more where the last piece would be an inch too short", () => {
    // 50 + 49 ft is 99 ft with a lap of 12 in. between; with one of 6 in. it is 99.5 ft.
    expect(laid(rectangle(99, 5)).counts).toMatchObject({ endLaps: 1, fabricSqFt: 500 });
    expect(laid(rectangle(99.1, 5)).counts).toMatchObject({ endLaps: 2, fabricSqFt: expect.closeTo(505.5, 9) });
    expect(laid(rectangle(99.1, 5), { endLapIn: 6 }).counts).toMatchObject({
      endLaps: 1,
      fabricSqFt: expect.closeTo(498, 9),
    });
  });

  it("lap as much in every strip, wherever the bed lies", () => {
    // 60 by 9 ft in strips of 6 and 3.5 ft, an end lap of 1 ft in each: 60 · 9.5 and 9.5 more.
    const moved = byPoints([30, 20], [90, 20], [90, 29], [30, 29]);
    expect(laid(moved).counts.fabricSqFt).toBeCloseTo(579.5, 9);
    expect(laid(moved).counts.endLaps).toBe(2);
  });

  it("exactly as long as a roll need no lap", () => {
    expect(laid(rectangle(50, 5)).counts).toMatchObject({ endLaps: 0, fabricSqFt: 250, rolls: 1 });
    expect(laid(rectangle(50.5, 5)).counts).toMatchObject({ endLaps: 1, fabricSqFt: 257.5, rolls: 2 });
  });
});

describe("fabric in the bed", () => {
  it("leaves out cut-outs and what is trimmed off", () => {
    // A triangle of 10 by 4 ft in one strip of 10 by 6 ft: 20 sq ft.
    expect(laid(byPoints([0, 0], [10, 0], [0, 4])).counts.fabricSqFt).toBeCloseTo(20, 9);
    const withPad: Bed = { kind: "rectangle", lengthFt: 20, widthFt: 5, cutOuts: [pad(3, 1, 4, 2)] };
    expect(laid(withPad).counts.fabricSqFt).toBeCloseTo(92, 9);
    // The L in strips of 6 ft: 20 · 6 + 8 · 6 from 5.5 ft on, and 8 · 1 from 11 ft on.
    expect(laid(lShape).counts.fabricSqFt).toBeCloseTo(120 + 48 + 8, 9);
  });
});
