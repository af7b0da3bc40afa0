import { describe, expect, it } from "vitest";
import { byPoints, lShape, pad, points, rectangle, uShape } from "../../test/planBeds";
import type { Bed } from "./bed";
import { layOutBed } from "./layOutBed";
import { refusePins, refusePlaces } from "./limits";
import type { LayoutOptions } from "./options";
import type { PinKind } from "./pinBoard";

const options: LayoutOptions = { rollWidthFt: 6, overlapIn: 0, directionDegrees: 0 };

/** The pins of one kind as "x,y", from left to right. */
function pinsOf(bed: Bed, kind: PinKind, changed: Partial<LayoutOptions> = {}): string[] {
  const { pins } = layOutBed(bed, { ...options, ...changed });
  const rounded = (value: number) => Number(value.toFixed(4)) + 0;
  return pins
    .filter((pin) => pin.kind === kind)
    .sort((a, b) => a.x - b.x || a.y - b.y)
    .map(({ x, y }) => `${rounded(x)},${rounded(y)}`);
}

function countsOf(bed: Bed, changed: Partial<LayoutOptions> = {}): Partial<Record<PinKind, number>> {
  const counts: Partial<Record<PinKind, number>> = {};
  for (const { kind } of layOutBed(bed, { ...options, ...changed }).pins) counts[kind] = (counts[kind] ?? 0) + 1;
  return counts;
}

describe("a triangle of 3, 4 and 5 ft, pinned at 12 in.", () => {
  const bed = byPoints([0, 0], [4, 0], [0, 3]);

  it("has a pin in each corner and where a row of pairs meets its edge", () => {
    expect(pinsOf(bed, "corner")).toEqual(["0,0", "0,3", "4,0"]);
    // Rows 0 to 4: row 0 runs up the left side from corner to corner, row 2 meets the base and, halfway, the long side.
    expect(pinsOf(bed, "edge")).toEqual(["2,0", "2,1.5"]);
  });

  it("has the odd rows' pins midway up, as far as the bed is that wide", () => {
    // Rows 0 to 4; the middle of the one bay is at 1.5 ft, where the bed is 2 ft wide: row 1 only.
    expect(pinsOf(bed, "row")).toEqual(["1,1.5"]);
  });

  it("has pairs on the lines between narrower bays", () => {
    // Bays of 1 ft: lines at 1 and 2 ft take the even rows, middles at 0.5, 1.5 and 2.5 ft the odd ones. At 1 ft up the bed
    // is 2.67 ft wide, so row 2; at 2 ft 1.33 ft wide. Rows 1 and 3 at 0.5 ft up, where the bed is 3.33 ft wide; row 1 at
    // 1.5 ft up. Row 0 has its two on the left side. From row 2 to either end of the long side it is 2.5 ft, over two
    // spacings, so there is a pin halfway, at 1, 2.25 and 3, 0.75; row 3 at 0.5 ft up would stand 0.25 ft from it, less than a third of the spacing.
    expect(pinsOf(bed, "row", { bayFt: 1 })).toEqual(["0,1", "0,2", "1,0.5", "1,1.5", "2,1"]);
    expect(pinsOf(bed, "edge", { bayFt: 1 })).toEqual(["1,2.25", "2,0", "2,1.5", "3,0.75"]);
  });
});

describe("the L of 20 by 12 ft, pinned at 24 in. in bays of 6 ft", () => {
  const wide: Partial<LayoutOptions> = { pinSpacingIn: 24, bayFt: 6 };

  it("has its corners, its overlap and its edge pinned first", () => {
    expect(pinsOf(lShape, "corner", wide)).toEqual(["0,0", "0,12", "8,6", "8,12", "20,0", "20,6"]);
    // The overlap runs from 0 to 8 ft at 6 ft up; the corner at 8, 6 holds its end.
    expect(pinsOf(lShape, "seam", wide)).toEqual(["0,6", "2,6", "4,6", "6,6"]);
    // Rows of pairs at 4, 8, 12, and 16 ft; at 8 ft the row runs along the leg's side, whose corners are pinned.
    expect(pinsOf(lShape, "edge", wide)).toEqual(["4,0", "4,12", "8,0", "12,0", "12,6", "16,0", "16,6"]);
  });

  it("has the odd rows in the middle of each strip, where there is bed", () => {
    expect(pinsOf(lShape, "row", wide)).toEqual(["2,3", "2,9", "6,3", "6,9", "10,3", "14,3", "18,3"]);
  });

  it("goes on with the even rows where the strip beside does not reach", () => {
    // Two strips of 6 ft lap by 2 ft, midway at 5 ft up; the second lies only over the leg of 8 ft, up to 10 ft.
    const low = byPoints([0, 0], [20, 0], [20, 5.9], [8, 5.9], [8, 10], [0, 10]);
    const lapped = { ...wide, overlapIn: 24 };
    expect(pinsOf(low, "seam", lapped)).toEqual(["0,5", "2,5", "4,5", "6,5", "8,5"]);
    // Rows 12, 16, and the last at 5 ft up. The first strip's middle is at 2.5 ft, the second's at 7.5 ft.
    expect(pinsOf(low, "row", lapped)).toEqual([
      "2,2.5",
      "2,7.5",
      "6,2.5",
      "6,7.5",
      "10,2.5",
      "12,5",
      "14,2.5",
      "16,5",
      "18,2.5",
      "20,5",
    ]);
  });
});

describe("a rectangle of 8 by 4 ft, pinned at 12 in.", () => {
  const plain = rectangle(8, 4);

  it("has the pattern of BED.PINS as it is, turned or not", () => {
    expect(countsOf(plain)).toEqual({ corner: 4, edge: 6, row: 4 });
    // 10 by 5 turned by the angle of a 3-4-5 triangle: rows 0 to 10, 2 · 6 on the edges, and two bays: 6 and 2 · 5.
    const turned = byPoints([0, 0], [8, 6], [5, 10], [-3, 4]);
    expect(countsOf(turned, { directionDegrees: (Math.atan2(6, 8) * 180) / Math.PI })).toEqual({
      corner: 4,
      edge: 8,
      row: 16,
    });
    // At 45° it reaches 12/√2 = 8.49 ft along the strips: 9 intervals. Rows 2, 4, 6, and 8 meet the edge twice each, once of
    // these within a third of a foot of the overlap's end.
    expect(countsOf(plain, { directionDegrees: 45 })).toMatchObject({ corner: 4, edge: 7 });
  });

  it("has four pins around a pad of a foot in place of the one that would be in it", () => {
    const bed: Bed = { kind: "rectangle", lengthFt: 8, widthFt: 4, cutOuts: [pad(2.5, 1.5, 1, 1)] };
    expect(pinsOf(bed, "cutOut")).toEqual(["2.5,1.5", "2.5,2.5", "3.5,1.5", "3.5,2.5"]);
    expect(pinsOf(bed, "row")).toEqual(["1,2", "5,2", "7,2"]);
    expect(countsOf(bed)).toEqual({ corner: 4, edge: 6, row: 3, cutOut: 4 });
  });

  it("keeps a pin that is on a pad's edge once, and drops one of the rows that is nearer than a third of a foot", () => {
    const onEdge: Bed = { kind: "rectangle", lengthFt: 8, widthFt: 4, cutOuts: [pad(3, 1.5, 1, 1)] };
    // The pin of row 3 is at 3, 2, midway up the pad's left side.
    expect(pinsOf(onEdge, "row")).toEqual(["1,2", "3,2", "5,2", "7,2"]);
    const close: Bed = { kind: "rectangle", lengthFt: 8, widthFt: 4, cutOuts: [pad(3.1, 1.9, 0.5, 0.5)] };
    expect(pinsOf(close, "row")).toEqual(["1,2", "5,2", "7,2"]);
    const farther: Bed = { kind: "rectangle", lengthFt: 8, widthFt: 4, cutOuts: [pad(3.3, 1.8, 0.5, 0.5)] };
    expect(pinsOf(farther, "row")).toEqual(["1,2", "3,2", "5,2", "7,2"]);
  });

  it("has pins around a round cut-out at equal gaps", () => {
    const bed: Bed = {
      kind: "rectangle",
      lengthFt: 8,
      widthFt: 4,
      cutOuts: [{ kind: "circle", center: { x: 4, y: 2 }, diameterFt: 2 }],
    };
    // Rows 3 and 5 have their pins on its left and right; from one to the other it is π ft: 4 gaps on either side.
    expect(countsOf(bed)).toEqual({ corner: 4, edge: 6, cutOut: 6, row: 4 });
    expect(pinsOf(bed, "row")).toEqual(["1,2", "3,2", "5,2", "7,2"]);
  });

  it("has the same pins where a roll runs out: a row goes through both pieces of the end lap", () => {
    const lapped = { rollLengthFt: 5, endLapIn: 12 };
    expect(countsOf(plain, lapped)).toEqual(countsOf(plain));
    // The second piece begins at 4 ft, and the first ends at 5 ft.
    const { pins, counts } = layOutBed(plain, { ...options, ...lapped });
    expect(counts.endLaps).toBe(1);
    expect(pins.filter(({ x }) => x >= 4 && x <= 5)).toHaveLength(3);
  });
});

describe("a pad against the wall of a bed that is no rectangle", () => {
  it("is pinned around, and the wall on either side of it", () => {
    const bed: Bed = {
      kind: "widths",
      spacingFt: 4,
      widthsFt: [4, 5, 4],
      cutOuts: [pad(2, 0, 2, 2)],
    };
    // Corners: four of the outline, and two where the pad meets the wall; the bend of 2 · 14° in front is none.
    expect(pinsOf(bed, "corner")).toEqual(["0,0", "0,4", "2,0", "4,0", "8,0", "8,4"]);
    expect(pinsOf(bed, "cutOut")).toEqual(["2,1", "2,2", "3,2", "4,1", "4,2"]);
    // The rows at 2 and 4 ft meet the wall at the pad's corners.
    expect(pinsOf(bed, "edge").filter((pin) => pin.endsWith(",0"))).toEqual(["6,0"]);
  });
});

describe("pins along lines that meet", () => {
  const lap = { overlapIn: 6 };

  it("have the lines between bays halfway between overlaps, on the edge as well", () => {
    // The L in strips of 6 ft that lap by 6 in.: overlaps at 5.75 and 11.25 ft, and two bays in each strip.
    const left = pinsOf(lShape, "row", lap).filter((pin) => pin.startsWith("0,"));
    expect(left).toEqual(["0,2.875", "0,8.5", "0,11.625"]);
    expect(pinsOf(lShape, "edge", lap).filter((pin) => pin.startsWith("0,"))).toEqual([]);
    expect(pinsOf(lShape, "seam", lap).filter((pin) => pin.startsWith("0,"))).toEqual(["0,5.75", "0,11.25"]);
    // A row ends both overlaps at 8 ft. In a leg of 8.2 ft the end of the lower one is near that row's pin, and gets none.
    expect(pinsOf(lShape, "seam", lap).filter((pin) => pin.startsWith("8,"))).toEqual(["8,5.75", "8,11.25"]);
    const leg = byPoints([0, 0], [20, 0], [20, 6], [8.2, 6], [8.2, 12], [0, 12]);
    expect(pinsOf(leg, "seam", lap).filter((pin) => pin.startsWith("8"))).toEqual(["8,5.75", "8,11.25"]);
    const longer = byPoints([0, 0], [20, 0], [20, 6], [8.5, 6], [8.5, 12], [0, 12]);
    expect(pinsOf(longer, "seam", lap).filter((pin) => pin.startsWith("8.5"))).toEqual(["8.5,11.25"]);
  });

  it("stay along an overlap though a corner is near, and take the place of the even rows", () => {
    // A notch in the front that ends at 10, 6, a quarter of a foot from the overlap at 5.75 ft.
    const notched = byPoints([0, 0], [20, 0], [20, 11.5], [10.5, 11.5], [10, 6], [9.5, 11.5], [0, 11.5]);
    expect(pinsOf(notched, "seam", lap)).toHaveLength(21);
    expect(pinsOf(notched, "seam", lap)).toContain("10,5.75");
    // A leg of 4.8 ft: rows at 2 and 4 ft along the overlap at 6 ft, and its end at the corner.
    const leg = byPoints([0, 0], [20, 0], [20, 6], [4.8, 6], [4.8, 12], [0, 12]);
    const wide = { pinSpacingIn: 24, bayFt: 6 };
    expect(pinsOf(leg, "seam", wide)).toEqual(["0,6", "2,6", "4,6"]);
    expect(pinsOf(leg, "row", wide)).toEqual(["2,3", "2,9", "6,3", "10,3", "14,3", "18,3"]);
  });

  it("leave the sides along the strips to the edge's own pins", () => {
    // The rows' pins on the bottom and the top are pins of the edge.
    const point = byPoints([0, 0], [4.8, 0], [20, 3], [4.8, 6], [0, 6]);
    const rows = pinsOf(point, "row", { pinSpacingIn: 24, bayFt: 6 });
    expect(rows.filter((pin) => /,[06]$/.test(pin))).toEqual([]);
    expect(rows).toContain("2,3");
  });

  it("are in both arms of a U and not between them", () => {
    // One strip of 12 ft, bays of 4.5 ft: middles at 2.25 and 6.75 ft take rows 2, 6 and 10, the line at 4.5 ft the even rows,
    // all of which are on the arms' sides. Row 6 at 6.75 ft would be in the opening.
    expect(pinsOf(uShape, "row", { rollWidthFt: 12, pinSpacingIn: 24, bayFt: 6 })).toEqual([
      "0,4.5",
      "2,2.25",
      "2,6.75",
      "4,4.5",
      "6,2.25",
      "8,4.5",
      "10,2.25",
      "10,6.75",
      "12,4.5",
    ]);
  });

  it("of a rectangle's narrow last strip all stay, as BED.PINS counts them", () => {
    // 8 by 5.2 ft off a roll of 5 ft that laps by 6 in.: the last strip's middle is 0.22 ft from the overlap. Rows 0 to 8: five
    // even ones on both edges and on the line of each strip, 10 + 10; four odd ones on two middles of each, 16; 9 along it.
    const narrow = { rollWidthFt: 5, overlapIn: 6 };
    expect(layOutBed(rectangle(8, 5.2), { ...options, ...narrow }).counts.pins).toBe(45);
    // The overlap from 4.5 to 5 ft is pinned midway.
    expect(new Set(pinsOf(rectangle(8, 5.2), "seam", narrow).map((pin) => pin.split(",")[1]))).toEqual(
      new Set(["4.75"]),
    );
  });

  it("of a rectangle are beside a cut-out that bends around them", () => {
    const corner = (...pairs: [number, number][]): Bed => ({
      kind: "rectangle",
      lengthFt: 8,
      widthFt: 4,
      cutOuts: [{ kind: "outline", points: points(...pairs) }],
    });
    const right = corner([2, 1], [6, 1], [6, 3], [5.5, 3], [5.5, 1.5], [2, 1.5]);
    expect(pinsOf(right, "row")).toEqual(["1,2", "3,2", "5,2", "7,2"]);
    const left = corner([2, 1], [6, 1], [6, 1.5], [2.5, 1.5], [2.5, 3], [2, 3]);
    expect(pinsOf(left, "row")).toEqual(["1,2", "3,2", "5,2", "7,2"]);
    // Two pads, and a pin of the pattern in each.
    const two: Bed = {
      kind: "rectangle",
      lengthFt: 8,
      widthFt: 4,
      cutOuts: [pad(0.5, 1.5, 1, 1), pad(6.5, 1.5, 1, 1)],
    };
    expect(pinsOf(two, "row")).toEqual(["3,2", "5,2"]);
  });
});

describe("more pins than any bed takes", () => {
  const refused = (bed: Bed, changed: Partial<LayoutOptions>) => () => layOutBed(bed, { ...options, ...changed });

  it("are counted along edges and overlaps before any is placed", () => {
    // The L: 64 ft around, two overlaps of 8 ft, at 1/2000 ft.
    const fine = { overlapIn: 6, pinSpacingIn: 0.006 };
    expect(refused(lShape, fine)).toThrow("This would take 160000 pins, more than the 100000");
  });

  it("are counted with the pieces of a drawn edge, each of which every pin is looked for on", () => {
    expect(() => refusePins(50_000, 2000)).not.toThrow();
    expect(() => refusePins(50_001, 2000)).toThrow("This would take 50001 pins, more than the 50000");
    expect(() => refusePins(100_000)).not.toThrow();
    expect(() => refusePins(100_001)).toThrow("This would take 100001 pins, more than the 100000");
  });

  it("may not be looked for in too many places", () => {
    // Over 20 by 12 ft BED.PINS counts 60,000 bays of 0.0001 ft in each of three strips: 2 · 11 on the edges, 3 · 59,999 · 11
    // between the bays, 3 · 60,000 · 10 in their middles, and 2 · 21 along the overlaps.
    const high = byPoints([0, 10], [20, 10], [20, 16], [8, 16], [8, 22], [0, 22]);
    expect(refused(high, { overlapIn: 6, bayFt: 1e-4 })).toThrow(
      "This would take 3780031 places for pins, more than the 1000000 that can be laid out. Check your units",
    );
    expect(() => refusePlaces(1_000_000)).not.toThrow();
  });
});

it("pins the edge of a round bed where rows meet it, its ends among them", () => {
  // Rows at −3, −2, ... 3 ft: the ends, and at ±1 ft an angle of acos(1/3) = 70.5° from them, drawn in chords of 2°.
  const { pins } = layOutBed({ kind: "round", diameterFt: 6 }, options);
  const angles = pins
    .filter(({ x, y }) => Math.abs(Math.hypot(x, y) - 3) < 1e-3)
    .map(({ x, y }) => (Math.atan2(y, x) * 180) / Math.PI);
  const turns = angles.map((angle) => (angle + 360) % 360).sort((a, b) => a - b);
  expect(turns).toEqual([0, 70.53, 109.47, 180, 250.53, 289.47].map((turn) => expect.closeTo(turn, 1)));
});
