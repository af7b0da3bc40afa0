import { describe, expect, it } from "vitest";
import { byPoints, pad, points, rectangle } from "../../test/planBeds";
import { Problem } from "../quantities/problem";
import type { Bed, CutOut } from "./bed";
import { layOutBed } from "./layOutBed";
import type { LayoutOptions } from "./options";

const options: LayoutOptions = { rollWidthFt: 6, rollLengthFt: 50, overlapIn: 6 };
const border = { pieceLengthFt: 8, lapIn: 2, stakeSpacingIn: 30 };

/** What a bed or an option is refused with: the argument's name and the message. */
function refused(bed: Bed, changed: Partial<LayoutOptions> = {}): [string | undefined, string] {
  try {
    layOutBed(bed, { ...options, ...changed });
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    expect(error.kind).toBe("value");
    return [error.argument, error.message];
  }
  throw new Error("the bed was laid out");
}

const rounded = (cornerRadiusFt: number, roundedCorners: number): Bed => ({
  kind: "rectangle",
  lengthFt: 20,
  widthFt: 5,
  cornerRadiusFt,
  roundedCorners,
});
const round = (diameterFt: number, innerDiameterFt?: number): Bed => ({
  kind: "round",
  diameterFt,
  ...(innerDiameterFt !== undefined && { innerDiameterFt }),
});
const widths = (...widthsFt: number[]): Bed => ({ kind: "widths", spacingFt: 4, widthsFt });

describe("a bed that cannot be is refused, and the message says which measure and what to type", () => {
  it.each<[Bed, string, string]>([
    [rectangle(0, 5), "length", "The length is 0. Type a length over 0, in the same unit as the other lengths."],
    [rectangle(20, -5), "width", "The width is -5. Type a length over 0, in the same unit as the other lengths."],
    [rectangle(Number.NaN, 5), "length", "The length: can't use NaN. Type feet, like 12.5."],
    [rectangle("20" as unknown as number, 5), "length", "The length: can't use “20”. Type feet, like 12.5."],
    [rounded(-1, 2), "corner_radius", "The corner radius is -1, less than 0. Type 0 or more."],
    [rounded(1, 5), "rounded_corners", "Rounded corners is 5. Type 0 to 4."],
    [rounded(1, -1), "rounded_corners", "Rounded corners is -1. Type 0 to 4."],
    [rounded(3, 2), "corner_radius", "The 3 ft corner radius doesn't fit this bed. Type 2.5 ft or less."],
    [rounded(5.5, 1), "corner_radius", "The 5.5 ft corner radius doesn't fit this bed. Type 5 ft or less."],
    [round(0), "diameter", "The diameter is 0. Type a length over 0, in the same unit as the other lengths."],
    [round(9, -1), "inner_diameter", "The inner diameter is -1, less than 0. Type 0 or more."],
    [
      round(9, 9),
      "inner_diameter",
      "The inner diameter, 9 ft, isn't smaller than the diameter, 9 ft. Check which is which.",
    ],
    [
      { kind: "widths", spacingFt: 0, widthsFt: [3, 4] },
      "spacing",
      "The spacing is 0. Type a length over 0, in the same unit as the other lengths.",
    ],
    [widths(3), "widths", "There is 1 width. Tape at least 2, evenly spaced along the base line."],
    [widths(3, Number.NaN), "widths", "Width 2: can't use NaN. Type feet, like 12.5."],
    [widths(3, -1), "widths", "Width 2 is -1. Type the width there, or 0 where the bed comes to a point."],
    [widths(0, 0), "widths", "All the widths are 0. Type the widths you taped."],
    [
      widths(3, 5, 0, 3),
      "widths",
      "Width 3 (at 8 ft along the base line) is 0 between wider spots. Measure each side as its own bed.",
    ],
    [byPoints([0, 0], [4, 0], [Number.NaN, 3]), "points", "x of point 3: can't use NaN. Type feet, like 12.5."],
    [
      byPoints([0, 0], [4, 0], [4, Number.POSITIVE_INFINITY]),
      "points",
      "A bed measurement: Infinity is too large. Type 1,000,000 ft or less.",
    ],
    [
      byPoints([0, 0], [2, 2], [0, 0]),
      "points",
      "the outline has 2 different points. Give at least 3, in order around it.",
    ],
    [byPoints([3, 1], [3, 1]), "points", "the outline has 1 different point. Give at least 3, in order around it."],
    [
      byPoints([0, 0], [2, 2], [4, 4]),
      "points",
      "The points of the outline are all on one line. Check the list of points.",
    ],
    [
      // Far thinner than a tape shows: 4 ft by a millionth of a foot.
      byPoints([0, 0], [4, 0], [2, 4e-7]),
      "points",
      "The points of the outline are all on one line. Check the list of points.",
    ],
    [
      // The diagonals of a square of 2 ft.
      byPoints([0, 0], [2, 2], [2, 0], [0, 2]),
      "points",
      "Side 1 of the outline crosses side 3 at x 1, y 1. Put the points in order around it.",
    ],
    [
      // y = 1 meets the side from 8, −1 to 8, 3 in its middle, and the side from 4, 3 to 4, −1 as well.
      byPoints([0, 1], [10, 1], [10, 5], [8, 3], [8, -1], [6, -3]),
      "points",
      "Side 1 of the outline crosses side 4 at x 8, y 1. Put the points in order around it.",
    ],
    [
      byPoints([0, 0], [10, 0], [10, 5], [5, 0], [0, 5]),
      "points",
      "Side 1 of the outline touches side 3 at x 5, y 0. Move one of them, or measure it as two beds.",
    ],
    [
      // The same bed begun at the point that touches: side 1 leaves from it, side 4 runs through it.
      byPoints([5, 0], [0, 5], [0, 0], [10, 0], [10, 5]),
      "points",
      "Side 1 of the outline touches side 3 at x 5, y 0. Move one of them, or measure it as two beds.",
    ],
    [
      byPoints([0, 5], [0, 0], [10, 0], [10, 5], [5, 0]),
      "points",
      "Side 2 of the outline touches side 4 at x 5, y 0. Move one of them, or measure it as two beds.",
    ],
    [
      // Two triangles that share the corner 5, 5 alone.
      byPoints([0, 0], [5, 5], [10, 0], [10, 10], [5, 5], [0, 10]),
      "points",
      "Side 1 of the outline touches side 4 at x 5, y 5. Move one of them, or measure it as two beds.",
    ],
    [
      byPoints([0, 0], [9, 0], [5, 0], [5, 5]),
      "points",
      "Sides 1 and 2 of the outline overlap from x 9, y 0. Remove the point that doubles back.",
    ],
    [
      byPoints([9, 0], [5, 0], [5, 5], [0, 0]),
      "points",
      "Sides 1 and 4 of the outline overlap from x 9, y 0. Remove the point that doubles back.",
    ],
    [{ ...rectangle(20, 5), borderSides: [5] }, "border_sides", "There is no side 5, only 1 to 4."],
    [{ ...rectangle(20, 5), borderSides: [0] }, "border_sides", "There is no side 0, only 1 to 4."],
    [{ ...widths(3, 4), borderSides: [1, 1.5] }, "border_sides", "There is no side 1.5, only 1 to 4."],
    [
      { kind: "points", points: Array.from({ length: 2001 }, () => ({ x: 0, y: 0 })) },
      "points",
      "This would take 2001 corners, more than the 2000 that can be laid out. Check your units.",
    ],
    [
      widths(...Array<number>(2001).fill(4)),
      "widths",
      "This would take 2001 widths, more than the 2000 that can be laid out. Check your units.",
    ],
    [
      rectangle(1_000_001, 5),
      undefined as unknown as string,
      "A bed measurement: 1000001 is too large. Type 1,000,000 ft or less.",
    ],
  ])("%j", (bed, argument, message) => {
    const [named, said] = refused(bed);
    expect(said).toBe(message);
    if (!message.startsWith("A bed measurement")) expect(named).toBe(argument);
  });
});

describe("a cut-out that cannot be is refused by name", () => {
  const named = (cutOut: CutOut, name: string): CutOut => ({ ...cutOut, name });
  const circle = (x: number, y: number, diameterFt: number): CutOut => ({
    kind: "circle",
    center: { x, y },
    diameterFt,
  });
  const corners = (...pairs: [number, number][]): CutOut => ({ kind: "outline", points: points(...pairs) });

  it.each<[CutOut[], string]>([
    [
      [circle(5, 2, 0)],
      "The diameter of “cut-out 1” is 0. Type a length over 0, in the same unit as the other lengths.",
    ],
    [[circle(5, Number.NaN, 1)], "y of the center of “cut-out 1”: can't use NaN. Type feet, like 12.5."],
    [
      [circle(5, 2, 1), named(corners([8, 2], [9, 2]), "valve")],
      "“valve” has 2 different points. Give at least 3, in order around it.",
    ],
    [
      [circle(5, 2, 1), corners([8, 2], [9, 2], [8, 2.5], [9, 2.5])],
      "Side 2 of “cut-out 2” crosses side 4 at x 8.5, y 2.25. Put the points in order around it.",
    ],
    [[corners([1, 1], [2, Number.NaN], [2, 2])], "y of point 2: can't use NaN. Type feet, like 12.5."],
    [
      [named(pad(18, 1, 4, 2), "  meter pad ")],
      "“meter pad” reaches outside the bed at x 21, y 3. Move it or make it smaller.",
    ],
    [
      [named(pad(2, 1, 3, 3), " "), named(pad(4, 3, 2, 1), "step")],
      "“cut-out 1” and “step” overlap at x 4.5, y 4. Make them one cut-out, or check where they are.",
    ],
    [
      // The smaller one lies wholly in the one given after it.
      [named(pad(3, 2, 1, 1), "post"), named(pad(2, 1, 3, 3), "slab")],
      "“post” and “slab” overlap at x 3, y 2.5. Make them one cut-out, or check where they are.",
    ],
    [
      // Two pads that share their lower side, one half as high as the other.
      [named(pad(2, 1, 3, 3), "slab"), named(pad(2, 1, 3, 1), "step")],
      "“slab” and “step” overlap at x 2, y 1.5. Make them one cut-out, or check where they are.",
    ],
    [[pad(0, 0, 20, 5)], "The cut-outs take up the whole bed. Check their sizes."],
    [
      Array.from({ length: 101 }, () => circle(5, 2, 1)),
      "This would take 101 cut-outs, more than the 100 that can be laid out. Check your units.",
    ],
    [
      [{ kind: "outline", points: Array.from({ length: 2001 }, () => ({ x: 1, y: 1 })) }],
      "This would take 2001 corners, more than the 2000 that can be laid out. Check your units.",
    ],
  ])("%j", (cutOuts, message) => {
    expect(refused({ ...rectangle(20, 5), cutOuts })).toEqual(["cut_outs", message]);
  });

  it("but may touch the wall, a corner, or another cut-out", () => {
    const cutOuts = [pad(2, 0, 3, 2), pad(5, 0, 1, 1), pad(5, 1, 2, 1), pad(16, 3, 4, 2)];
    // 100 − 6 − 1 − 2 − 8
    expect(layOutBed({ ...rectangle(20, 5), cutOuts }, options).areaSqFt).toBeCloseTo(83, 12);
  });
});

describe("an option that cannot be is refused by name", () => {
  const over = "Type a length over 0, in the same unit as the other lengths.";
  const inches = "Type 0 to 1200. Type inches.";
  it.each<[Partial<LayoutOptions>, string, string]>([
    [{ rollWidthFt: 0 }, "roll_width", `The roll width is 0. ${over}`],
    [{ rollLengthFt: -50 }, "roll_length", `The roll length is -50. ${over}`],
    [{ overlapIn: -1 }, "overlap_in", `The overlap is -1. ${inches}`],
    [{ overlapIn: 1201 }, "overlap_in", `The overlap is 1201. ${inches}`],
    [{ endLapIn: -1 }, "end_lap_in", `The end lap is -1. ${inches}`],
    [{ endLapIn: 1201 }, "end_lap_in", `The end lap is 1201. ${inches}`],
    [{ directionDegrees: Number.NaN }, "direction", "The direction: can't use NaN. Type feet, like 12.5."],
    [{ pinSpacingIn: 0 }, "spacing_in", `The pin spacing is 0. ${over}`],
    [{ bayFt: -4 }, "bay_ft", `The pin bay is -4. ${over}`],
    [{ border: { ...border, pieceLengthFt: 0 } }, "piece_length", `The edging piece is 0. ${over}`],
    [{ border: { ...border, lapIn: -2 } }, "lap_in", `The edging lap is -2. ${inches}`],
    [{ border: { ...border, stakeSpacingIn: 0 } }, "stake_spacing_in", `The stake spacing is 0. ${over}`],
    [
      // The border of the three open sides, 30 ft, in pieces of 0.003 ft.
      { border: { pieceLengthFt: 0.0025, stakeSpacingIn: 30 } },
      "piece_length",
      "This would take 12000 pieces, more than the 10000 that can be laid out. Check your units.",
    ],
    [
      // 20 ft across in strips of 0.005 ft.
      { rollWidthFt: 0.005, overlapIn: 0, directionDegrees: 90 },
      "roll_width",
      "This would take 4000 strips, more than the 2000 that can be laid out. Check your units.",
    ],
    [
      // One strip of 20 ft; each piece beyond the first gains half an inch: 20·24 and the strip itself.
      { rollLengthFt: 0.0515, endLapIn: 0.6, directionDegrees: 0 },
      "roll_length",
      "This would take 13335 pieces of fabric, more than the 10000 that can be laid out. Check your units.",
    ],
    [
      // 40,000 intervals of 1/2000 ft in two bays: 3 × 20,001 in pairs and 2 × 20,000 in singles.
      { pinSpacingIn: 0.006 },
      "spacing_in",
      "This would take 100003 pins, more than the 100000 that can be laid out. Check your units.",
    ],
  ])("%j", (changed, argument, message) => {
    expect(refused(rectangle(20, 5), changed)).toEqual([argument, message]);
  });
});

it("takes the largest measures that are allowed", () => {
  const { rules, borderRules } = layOutBed(rounded(5, 1), {
    ...options,
    rollWidthFt: 200,
    overlapIn: 1200,
    border: { ...border, pieceLengthFt: 200, lapIn: 1200 },
  });
  expect(rules).toEqual({
    rollWidthFt: 200,
    rollLengthFt: 50,
    overlapFt: 100,
    endLapFt: 1,
    directionDegrees: undefined,
    pinSpacingFt: 1,
    bayFt: 4,
  });
  expect(borderRules).toEqual({ pieceLengthFt: 200, lapFt: 100, stakeSpacingFt: 2.5 });
});

it("fills in common practice for what is left out: 12 in. end lap, pins 12 in. apart in bays of 4 ft", () => {
  const laid = layOutBed(rectangle(20, 5), {
    rollWidthFt: 6,
    overlapIn: 6,
    border: { pieceLengthFt: 8, stakeSpacingIn: 30 },
  });
  expect(laid.rules).toEqual({
    rollWidthFt: 6,
    rollLengthFt: Number.POSITIVE_INFINITY,
    overlapFt: 0.5,
    endLapFt: 1,
    directionDegrees: undefined,
    pinSpacingFt: 1,
    bayFt: 4,
  });
  expect(laid.borderRules).toEqual({ pieceLengthFt: 8, lapFt: 0, stakeSpacingFt: 2.5 });
  expect(layOutBed(rectangle(20, 5), options).borderRules).toBeUndefined();
});
