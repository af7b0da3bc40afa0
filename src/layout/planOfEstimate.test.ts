import { describe, expect, it } from "vitest";
import { estimateBed } from "../quantities/bed/estimate";
import { type BedForm, blankForm } from "../quantities/bed/form";
import { readForm } from "../quantities/bed/read";
import { countsInPlan, planOfEstimate } from "./planOfEstimate";

const bedOf = (changes: Partial<BedForm>) => {
  const { bed, problems } = readForm({ ...blankForm(), name: "Front walk", ...changes });
  expect(problems).toEqual([]);
  return bed!;
};
const planOf = (changes: Partial<BedForm>) => planOfEstimate(bedOf(changes))!;
const rectangle = (typed: BedForm["typed"]): Partial<BedForm> => ({ typed: { length: "20", width: "5", ...typed } });
const widths = (taped: string[], endBorders = "0"): Partial<BedForm> => ({
  way: "widths",
  typed: { spacing: "4", endBorders, corners: "0" },
  widths: taped,
});

describe("the plan of an estimate", () => {
  it("takes roll, laps, pins and border from the form", () => {
    const { rules, borderRules } = planOf(
      rectangle({
        rollWidth: "4",
        rollLength: "100",
        overlap: "9",
        endLap: "18",
        pinSpacing: "24",
        pinBay: "3",
        pieceLength: "10",
        pieceLap: "3",
        stakeSpacing: "36",
      }),
    );
    expect(rules).toEqual({
      rollWidthFt: 4,
      rollLengthFt: 100,
      overlapFt: 0.75,
      endLapFt: 1.5,
      directionDegrees: undefined,
      pinSpacingFt: 2,
      bayFt: 3,
    });
    expect(borderRules).toEqual({ pieceLengthFt: 10, lapFt: 0.25, stakeSpacingFt: 3 });
  });

  it("counts pins around areas that have no place in it beside those that it places", () => {
    // 8.5 ft at 12 in. are 9 pins more, and at 24 in. five.
    expect(planOf(rectangle({ cutAround: "8.5" })).notDrawn).toEqual({ sqFt: 0, pins: 9 });
    const wide = rectangle({ cutOuts: "3", cutAround: "8.5", pinSpacing: "24" });
    expect(planOf(wide).notDrawn).toEqual({ sqFt: 3, pins: 5 });
    expect(planOf(rectangle({})).notDrawn).toBeUndefined();
  });

  it("lays strips in the direction that takes least, or in the one typed", () => {
    expect(planOf(rectangle({ rollWidth: "6" })).rules.directionDegrees).toBeUndefined();
    expect(planOf(rectangle({ stripDirection: "90" })).rules.directionDegrees).toBe(90);
    expect(planOf(rectangle({ stripDirection: "Least Fabric" })).rules.directionDegrees).toBeUndefined();
  });

  it.each([
    // Along the house side 1, in front side 3; side 2 is on the right and 4 on the left.
    ["20", "5", "1", "2", [2, 3, 4]],
    ["20", "5", "2", "0", [1, 3]],
    ["20", "5", "0", "1", [4]],
    ["20", "5", "0", "0", []],
    ["5", "5", "1", "1", [3, 4]],
    // Deeper than it is long: the long sides are those on the right and left.
    ["5", "20", "1", "0", [4]],
    ["5", "20", "2", "1", [2, 3, 4]],
  ])(
    "of %s by %s ft with %s long and %s short sides has border on sides %s",
    (length, width, longBorders, shortBorders, sides) => {
      const { bed } = planOf({ typed: { length, width, longBorders, shortBorders } });
      expect(bed.borderSides).toEqual(sides);
      expect(bed).toMatchObject({ kind: "rectangle", lengthFt: Number(length), widthFt: Number(width) });
    },
  );

  it.each([
    [{ houseEdging: "1", rightEdging: "0", frontEdging: "0", leftEdging: "0" }, [1]],
    [{ houseEdging: "1", rightEdging: "1", frontEdging: "0", leftEdging: "0" }, [1, 2]],
    // What isn't said of a side is as in a new bed, whichever side is the longer one.
    [{ houseEdging: "1" }, [1, 2, 3, 4]],
  ] as const)("has border along the sides that were picked: %j", (typed, sides) => {
    for (const [length, width] of [
      ["20", "5"],
      ["5", "20"],
    ] as const)
      expect(planOf({ typed: { length, width, ...typed } }).bed.borderSides).toEqual(sides);
  });

  it.each([
    [{ baseEdging: "1", outerEdging: "0", firstEdging: "0", lastEdging: "0" }, 8, [8]],
    [{ baseEdging: "1", outerEdging: "1", firstEdging: "0", lastEdging: "0" }, 8 + 8, [8, 8]],
    [{ baseEdging: "0", outerEdging: "0", firstEdging: "0", lastEdging: "0" }, 0, []],
    [{ baseEdging: "1", outerEdging: "0", firstEdging: "1", lastEdging: "0" }, 8 + 3, [11]],
    // All the way around, without ends.
    [{ baseEdging: "1", outerEdging: "1", firstEdging: "1", lastEdging: "1" }, 8 + 8 + 3 + 3, []],
  ] as const)("a bed 8 ft by three widths of 3 ft with %j has so much edging, in those runs", (typed, edging, runs) => {
    const bed = bedOf({ way: "widths", typed: { spacing: "4", ...typed }, widths: ["3", "3", "3"] });
    const counts = countsInPlan(bed)!;
    expect(counts.edgingFt).toBe(edging);
    expect([...counts.openRunsFt].sort()).toEqual([...runs].sort());
    const { runs: estimated } = estimateBed(bed, counts);
    expect(estimated).toEqual(
      runs.length === 0 && edging > 0
        ? [{ feet: edging, closed: true }]
        : runs.map((feet) => ({ feet, closed: false })),
    );
  });

  it("rounds the corners that were picked, of which each takes its share off the area and the edging", () => {
    const layout = planOf(rectangle({ cornerRadius: "2", roundBackRight: "1" }));
    const [arc, ...others] = layout.outline.ring.runs.filter(({ kind }) => kind === "arc");
    expect(others).toEqual([]);
    // The back is along y = 0, and the right at x = 20.
    expect(arc).toMatchObject({ center: { x: 18, y: 2 }, radius: 2 });
    // (1 − π/4) × 2² less.
    expect(layout.areaSqFt).toBeCloseTo(100 - 4 + Math.PI, 9);
  });

  it("rounds the corners of a rectangle", () => {
    const { bed } = planOf(rectangle({ cornerRadius: "2", roundedCorners: "3" }));
    expect(bed).toMatchObject({ cornerRadiusFt: 2, roundedCorners: 3 });
  });

  it("has the circles of a ring, with border around the inner one where it is asked for", () => {
    const ring = (innerBorder: string) =>
      planOf({ way: "round", typed: { diameter: "9", innerDiameter: "2", innerBorder } }).bed;
    expect(ring("1")).toEqual({ kind: "round", diameterFt: 9, innerDiameterFt: 2, innerBorder: true, cutOuts: [] });
    expect(ring("0")).toMatchObject({ innerBorder: false });
  });

  it.each([
    // Side 1 is the base line; the others follow counterclockwise, over the right end if the bed has one there.
    ["3, 5, 4", ["3", "5", "4"], "0", [3, 4]],
    ["3, 5, 4 and one end", ["3", "5", "4"], "1", [3, 4, 5]],
    ["3, 5, 4 and both ends", ["3", "5", "4"], "2", [2, 3, 4, 5]],
    ["0, 5, 0: points at both ends", ["0", "5", "0"], "2", [2, 3]],
    ["0, 0, 5, 4, 0, 0: the outer zeros are no bed", ["0", "0", "5", "4", "0", "0"], "2", [2, 3, 4]],
    ["3, 5, 0 and both ends", ["3", "5", "0"], "2", [2, 3, 4]],
    ["0, 5, 3 and both ends", ["0", "5", "3"], "2", [2, 3, 4]],
    ["0, 5, 3 and one end", ["0", "5", "3"], "1", [3, 4]],
  ])("taped by widths %s has border on the outer sides and those ends", (_, taped, endBorders, sides) => {
    const layout = planOf(widths(taped, endBorders));
    expect(layout.bed.borderSides).toEqual(sides);
    // Never along the base line.
    expect(layout.outline.ring.runs.filter(({ border, side }) => border && side === 1)).toEqual([]);
    expect(layout.bed).toMatchObject({ kind: "widths", spacingFt: 4, widthsFt: taped.map(Number) });
  });

  it("has the points of an outline, and border after those that are ticked", () => {
    const { bed } = planOf({
      way: "points",
      typed: { corners: "4" },
      points: [
        ["0", "0", "0"],
        ["12", "0", "1"],
        ["12", "6", "1"],
        ["0", "6", "0"],
      ],
    });
    expect(bed).toEqual({
      kind: "points",
      points: [
        { x: 0, y: 0 },
        { x: 12, y: 0 },
        { x: 12, y: 6 },
        { x: 0, y: 6 },
      ],
      borderSides: [2, 3],
      cutOuts: [],
    });
  });

  it("has cut-outs by their middle: round without a depth, else a rectangle", () => {
    const cutOuts: BedForm["cutOuts"] = [
      ["8", "2", "3", ""],
      ["15", "3", "4", "1"],
    ];
    expect(planOf({ ...rectangle({}), cutOuts }).bed.cutOuts).toEqual([
      { kind: "circle", center: { x: 8, y: 2 }, diameterFt: 3 },
      {
        kind: "outline",
        points: [
          { x: 13, y: 2.5 },
          { x: 17, y: 2.5 },
          { x: 17, y: 3.5 },
          { x: 13, y: 3.5 },
        ],
      },
    ]);
    for (const changes of [
      { way: "round", typed: { diameter: "40" } },
      widths(["9", "9", "9", "9", "9", "9"]),
      {
        way: "points",
        typed: {},
        points: [
          ["0", "0", "1"],
          ["30", "0", "1"],
          ["30", "9", "1"],
          ["0", "9", "1"],
        ],
      },
    ] as Partial<BedForm>[])
      expect(planOf({ ...changes, cutOuts }).bed.cutOuts).toHaveLength(2);
  });

  it("is none where no more than the area is known", () => {
    const typed = { area: "210", edge: "44", longest: "30", widest: "8", corners: "0" };
    expect(planOfEstimate(bedOf({ way: "area", typed }))).toBeUndefined();
    expect(countsInPlan(bedOf({ way: "area", typed }))).toBeUndefined();
  });
});

describe("counts taken from the plan", () => {
  it("are those of the layout", () => {
    const bed = bedOf(widths(["3", "5", "4"]));
    const { counts, cuts, borderFt } = planOfEstimate(bed)!;
    const { strips, fabricSqFt, rolls, pins, pieces, stakes } = counts;
    const stripsFt = cuts.map(({ lengthFt }) => lengthFt);
    const fabric = { strips, fabricSqFt, rolls, pins, stripsFt };
    // One run of about 8' 7" in pieces of 8 ft, and a bend at the widest width too sharp for the edging.
    const edging = { edgingFt: borderFt, pieces, stakes, cornerStakes: 1, openRunsFt: [borderFt] };
    expect(countsInPlan(bed)).toMatchObject({ ...fabric, ...edging });
  });

  const { PI } = Math;
  it.each([
    // By hand, 20 by 6 ft with corners of 2 ft: one in the run takes (2 − π/2) × 2 off it.
    [{ roundedCorners: "2" }, 24 + 2 * PI, [24 + 2 * PI]],
    [{ roundedCorners: "1", longBorders: "2" }, 48 + PI, []],
    // Edging follows the corners at the back to where the back is bare: 16 in front, 2 at each end, and four corners.
    [{ roundedCorners: "4" }, 20 + 4 * PI, [20 + 4 * PI]],
    // The corner between the two sides with edging is the one that is rounded first.
    [{ roundedCorners: "1", shortBorders: "1" }, 22 + PI, [22 + PI]],
    [{ roundedCorners: "1", shortBorders: "0", longBorders: "2" }, 38 + PI, [18 + PI, 20]],
  ])("has the edging of a rectangle with %j as drawn", (changes, edgingFt, openRunsFt) => {
    const bed = bedOf({ typed: { length: "20", width: "6", cornerRadius: "2", ...changes } });
    const laid = countsInPlan(bed)!;
    expect(laid.edgingFt).toBeCloseTo(edgingFt, 9);
    expect(laid.openRunsFt).toEqual(openRunsFt.map((run) => expect.closeTo(run, 9)));
    expect(estimateBed(bed, laid).amounts.borderRun).toBeCloseTo(edgingFt, 9);
  });

  it("give way to the rule for a plain rectangle", () => {
    const counts = (changes: Partial<BedForm>) => countsInPlan(bedOf(changes));
    expect(counts(rectangle({}))).toBeUndefined();
    expect(counts(rectangle({ cornerRadius: "2", roundedCorners: "0" }))).toBeUndefined();
    expect(counts(rectangle({ cornerRadius: "0", roundedCorners: "2" }))).toBeUndefined();
    expect(counts(rectangle({ cornerRadius: "2", roundedCorners: "1" }))).toBeDefined();
    expect(counts({ ...rectangle({}), cutOuts: [["8", "2", "1", ""]] })).toBeDefined();
  });
});
