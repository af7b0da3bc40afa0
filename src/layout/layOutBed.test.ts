import { describe, expect, it } from "vitest";
import { fabricArea, fabricStrips } from "../quantities/fabric";
import { fabricRolls } from "../quantities/fabricRolls";
import { pins } from "../quantities/pins";
import type { Bed } from "./bed";
import { notesBelow } from "./drawing/notesBelow";
import { cutLength } from "./drawing/words";
import { layOutBed } from "./layOutBed";
import { distance, type Point } from "./plane";

const points = (...pairs: readonly (readonly [number, number])[]): Point[] => pairs.map(([x, y]) => ({ x, y }));
const roll = { rollWidthFt: 6, rollLengthFt: 50, overlapIn: 6 };
const rectangle = (lengthFt: number, widthFt: number): Bed => ({ kind: "rectangle", lengthFt, widthFt });
const lShape: Bed = { kind: "points", points: points([0, 0], [20, 0], [20, 6], [8, 6], [8, 12], [0, 12]) };

describe("a plain rectangle", () => {
  it.each([
    [18.5, 5],
    [20, 11],
    [12, 6],
    [40, 30],
    [0.5, 0.5],
  ])("of %s by %s ft takes what the functions count", (length, width) => {
    const { counts } = layOutBed(rectangle(length, width), { ...roll, directionDegrees: 0 });
    expect(counts.strips).toBe(fabricStrips(width, 6, 6));
    expect(counts.fabricSqFt).toBeCloseTo(fabricArea(length, width, 6, 6, 50), 9);
    expect(counts.rolls).toBe(fabricRolls(length, width, 6, 50, 6));
    expect(counts.pins).toBe(pins(length, width, 6, 6));
  });

  it("is pinned alike at any angle in plan", () => {
    const turned: Bed = { kind: "points", points: points([0, 0], [16, 12], [10, 20], [-6, 8]) };
    expect(layOutBed(turned, roll).counts.pins).toBe(pins(20, 10, 6, 6));
  });

  it("is laid along its length unless that takes more rolls", () => {
    expect(layOutBed(rectangle(18.5, 5), roll).directionDegrees).toBe(0);
    expect(layOutBed(rectangle(5, 18.5), roll).directionDegrees).toBe(90);
    expect(layOutBed(rectangle(5, 4), roll).directionDegrees).toBe(0);
    // Across, 5 strips of 18.5 ft, 92.5 ft off 2 rolls; along, 4 of 27 ft, 108 ft and end laps, off 3.
    const across = layOutBed(rectangle(27, 18.5), roll);
    expect([across.directionDegrees, across.counts.cuts, across.counts.rolls]).toEqual([90, 5, 2]);
    expect(layOutBed(rectangle(27, 18.5), { ...roll, directionDegrees: 0 }).counts.rolls).toBe(3);
    // 32' 6 1/2" by 3 ft: one strip, not six cross cuts of 3 ft with an overlap between each two.
    expect(layOutBed(rectangle(32 + 6.5 / 12, 3), roll).cuts.map(({ lengthFt }) => lengthFt)).toEqual([32 + 6.5 / 12]);
  });
});

describe("strips over a bed that is no rectangle", () => {
  it("are cut only for what the strip beside them leaves bare", () => {
    const { cuts } = layOutBed(lShape, { ...roll, directionDegrees: 0 });
    expect(cuts.map(({ strip, lengthFt }) => [strip, lengthFt])).toEqual([
      [1, 20],
      [2, 8],
      [3, 8],
    ]);
  });

  it("are separate cuts where they fall into parts", () => {
    const uShape = points([0, 0], [12, 0], [12, 9], [8, 9], [8, 3], [4, 3], [4, 9], [0, 9]);
    const { cuts } = layOutBed(
      { kind: "points", points: uShape },
      { ...roll, rollWidthFt: 3, overlapIn: 0, directionDegrees: 0 },
    );
    expect(cuts.map(({ strip, lengthFt }) => [strip, lengthFt])).toEqual([
      [1, 12],
      [2, 4],
      [2, 4],
      [3, 4],
      [3, 4],
    ]);
  });

  it("are cut as long as the bed under them reaches, whatever the shape of their ends", () => {
    const wedge: Bed = { kind: "points", points: points([0, 0], [10, 0], [8, 4], [0, 4]) };
    expect(layOutBed(wedge, { ...roll, directionDegrees: 0 }).cuts[0]!.lengthFt).toBe(10);
    // A ring of 8 ft off rolls of 6 ft: the first strip reaches past its middle, so 8 ft and not an inch more.
    const ring: Bed = { kind: "round", diameterFt: 8, innerDiameterFt: 3 };
    expect(layOutBed(ring, roll).cuts[0]!.lengthFt).toBe(8);
  });

  it("of a bed with a base of 18 ft are none of them longer than 18 ft, on the crew's paper too", () => {
    // Strips of 6 ft that lap by 6 in. The bed in an L: 18 ft below, and twice the leg of 4 ft above 6 and 11.5 ft.
    const corner: Bed = { kind: "points", points: points([0, 0], [18, 0], [18, 4], [4, 4], [4, 12], [0, 12]) };
    const wedge: Bed = { kind: "points", points: points([0, 0], [18, 0], [16, 4]) };
    const widths: Bed = { kind: "widths", spacingFt: 6, widthsFt: [3, 6, 6, 3] };
    const rounded: Bed = { kind: "rectangle", lengthFt: 18, widthFt: 5, cornerRadiusFt: 2, roundedCorners: 4 };
    const printed = (bed: Bed) =>
      layOutBed(bed, roll).cuts.map(({ lengthFt, pieces }) => [
        cutLength(lengthFt),
        ...pieces.map((piece) => cutLength(piece.lengthFt)),
      ]);
    expect(printed(corner)).toEqual([
      ["18'", "18'"],
      ["4'", "4'"],
      ["4'", "4'"],
    ]);
    expect(printed(wedge)).toEqual([["18'", "18'"]]);
    expect(printed(widths)).toEqual([["18'", "18'"]]);
    expect(printed(rounded)).toEqual([["18'", "18'"]]);
    expect(printed({ kind: "round", diameterFt: 8, innerDiameterFt: 2 })[0]).toEqual(["8'", "8'"]);
  });

  it("along a slanted side that is longer than the base say so where the lengths to cut are", () => {
    // √(18² + 8²) = 19.698 ft, 19' 8.37"; off it the corner is 18 × 8 / 19.698 = 7.31 ft, so that 1.31 ft are left for another
    // strip, 1.31 / 7.31 of 19.698 long, 3' 6.4".
    const slanted = layOutBed({ kind: "points", points: points([0, 0], [18, 0], [0, 8]) }, roll);
    const [fabric] = notesBelow(slanted, []);
    expect(fabric!.items.slice(0, 3)).toEqual([
      `1: 19' 8 1/2"`,
      `2: 3' 6 1/2"`,
      `strips run at 156°, along the side of 19' 8 1/4"`,
    ]);
  });

  it("are begun from the side from which they take less", () => {
    // The L upside down: from the low side, a strip of 20 ft would lie on another for its whole length.
    const upsideDown: Bed = { kind: "points", points: points([0, 0], [8, 0], [8, 6], [20, 6], [20, 12], [0, 12]) };
    const { fabricLengthFt } = layOutBed(lShape, roll).counts;
    expect(layOutBed(upsideDown, roll).counts.fabricLengthFt).toBeCloseTo(fabricLengthFt, 9);
  });
});

describe("pins", () => {
  it("are in every corner", () => {
    const { pins: placed, seams } = layOutBed(lShape, roll);
    if (lShape.kind !== "points") throw new Error("the L is given by points");
    for (const corner of lShape.points) expect(placed.some((pin) => distance(pin, corner) < 1e-6)).toBe(true);
    expect(placed.filter(({ kind }) => kind === "corner")).toHaveLength(6);
    expect(seams.length).toBeGreaterThan(0);
  });

  it("stand round a cut-out and not in it", () => {
    const pad = { kind: "outline" as const, points: points([5, 0], [8, 0], [8, 2], [5, 2]) };
    const { pins: placed } = layOutBed({ ...rectangle(18.5, 5), cutOuts: [pad] }, roll);
    expect(placed.filter(({ x, y }) => x > 5 && x < 8 && y < 2)).toEqual([]);
    // Three sides of 2, 3 and 2 ft at 1 ft: 4 corners and 1 + 2 + 1 between them.
    const round = placed.filter(({ x, y }) => (y === 2 && x >= 5 && x <= 8) || ((x === 5 || x === 8) && y < 2));
    expect(round).toHaveLength(8);
  });
});

describe("a layout", () => {
  it("gives the exact area and lengths of arcs", () => {
    const bed: Bed = { kind: "rectangle", lengthFt: 18.5, widthFt: 5, cornerRadiusFt: 2, roundedCorners: 2 };
    const layout = layOutBed(bed, { ...roll, border: { pieceLengthFt: 8, lapIn: 2, stakeSpacingIn: 30 } });
    // 18.5 × 5 − 2(1 − π/4)·2²; 5 + 18.5 + 5 − 2(2 − π/2)·2.
    expect(layout.areaSqFt).toBeCloseTo(90.78318531, 8);
    expect(layout.borderFt).toBeCloseTo(26.78318531, 8);
    expect(layout.counts.pieces).toBe(4);
  });

  it("calculates taped widths by the rule, and says where the drawing differs", () => {
    const bed: Bed = { kind: "widths", spacingFt: 4, widthsFt: [0, 5, 7, 5, 0] };
    // Simpson: 4/3·(0 + 20 + 14 + 20 + 0) = 72; straight from width to width: 4·17 = 68.
    const layout = layOutBed(bed, roll);
    expect(layout.areaSqFt).toBeCloseTo(72, 9);
    expect(layout.notes.join()).toContain("which is 68.0 sq ft");
    const straight = layOutBed({ ...bed, rule: "trapezoid" }, roll);
    expect(straight.areaSqFt).toBe(68);
    expect(straight.notes.join()).not.toContain("encloses");
  });

  it("adds up border and stakes of all runs, and the way around all cut-outs", () => {
    const post = { kind: "circle" as const, center: { x: 12, y: 2.5 }, diameterFt: 1, border: true };
    const pad = { kind: "outline" as const, points: points([4, 1], [7, 1], [7, 3], [4, 3]) };
    const bed: Bed = { kind: "rectangle", lengthFt: 20, widthFt: 5, borderSides: [2, 4], cutOuts: [pad, post] };
    const layout = layOutBed(bed, { ...roll, border: { pieceLengthFt: 4, stakeSpacingIn: 30 } });
    expect(layout.edgeFt).toBe(50);
    // 5 + 5 ft and π ft around the post; 2 (3 + 2) ft around the pad, which gets none.
    expect(layout.borderFt).toBeCloseTo(10 + Math.PI, 9);
    expect(layout.cutAroundFt).toBeCloseTo(10 + Math.PI, 9);
    // Two pieces along either side and one around the post. Stakes along 4 + 1 ft: the ends, the joint and one between; around
    // π ft: the joint and one more.
    expect(layout.counts).toMatchObject({ pieces: 5, stakes: 4 + 4 + 2 });
    expect(layout.border.map(({ ring }) => ring)).toEqual([0, 0, 2]);
    expect(layout.notes).toEqual([]);
  });

  it("says where a piece of edging would be bought for less than an inch", () => {
    // 24 ft 1/2 in. in pieces of 8 ft: the fourth piece is half an inch long.
    const border = { pieceLengthFt: 8, stakeSpacingIn: 30 };
    const edged = (lengthFt: number) => layOutBed({ ...rectangle(lengthFt, 5), borderSides: [3] }, { ...roll, border });
    expect(edged(24 + 0.5 / 12).notes).toEqual(["P4 covers less than an inch. Lap the rest less, or leave it off."]);
    expect(edged(24 + 1.5 / 12).notes).toEqual([]);
    expect(edged(24).notes).toEqual([]);
  });

  it("says where no pin row crosses an end lap", () => {
    // The second piece of a strip of 60 ft off rolls of 50 starts at 49 ft and laps the first by a foot. By hand, rows of
    // 36 in are at 48 and 51 ft; rows of 24 in at 48 and 50; the rows of 12 in at every foot.
    const notes = (pinSpacingIn: number, endLapIn = 12) =>
      layOutBed(rectangle(60, 5), { ...roll, pinSpacingIn, endLapIn }).notes;
    expect(notes(36)).toEqual([
      "No pin row crosses the end lap of cut 1. Lap the pieces 36 in, or pin the lap across.",
    ]);
    expect(notes(36, 36)).toEqual([]);
    expect(notes(24)).toEqual([]);
    expect(notes(12)).toEqual([]);
  });

  it("is the same every time", () => {
    expect(layOutBed(lShape, roll)).toEqual(layOutBed(lShape, roll));
  });

  it("is plain data", () => {
    const layout = layOutBed(lShape, roll);
    expect(structuredClone(layout)).toEqual(layout);
  });

  it("refuses options that cannot be", () => {
    expect(() => layOutBed(lShape, { ...roll, overlapIn: 72 })).toThrow("overlap_in");
    expect(() => layOutBed(lShape, { ...roll, endLapIn: 600 })).toThrow("end_lap_in");
    expect(() => layOutBed(lShape, { ...roll, rollWidthFt: 0 })).toThrow("The roll width is 0");
    expect(() => layOutBed(lShape, { ...roll, pinSpacingIn: -1 })).toThrow("The pin spacing is -1");
    expect(() => layOutBed(lShape, { ...roll, directionDegrees: Number.NaN })).toThrow("The direction");
    expect(() => layOutBed(lShape, { ...roll, rollWidthFt: 0.001, overlapIn: 0 })).toThrow("Check your units");
    const border = { pieceLengthFt: 0.001, stakeSpacingIn: 30 };
    expect(() => layOutBed(lShape, { ...roll, border })).toThrow("Check your units");
  });
});
