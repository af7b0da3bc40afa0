import { describe, expect, it } from "vitest";
import { partsOf, placedWordsOf, wordsOf } from "../../../test/drawnParts";
import { type DrawnOptions, viewOf } from "../../../test/drawnView";
import { byPoints, lShape, pad, rectangle } from "../../../test/planBeds";
import type { Bed } from "../bed";
import { describePlan } from "./describe";
import { legend } from "./legend";
import { notesBelow } from "./notesBelow";
import { Pen } from "./pen";
import { scaleBar } from "./scaleBar";

const bed = rectangle(20, 5);
const widths: Bed = { kind: "widths", spacingFt: 4, widthsFt: [0, 5, 3] };
const ring: Bed = { kind: "round", diameterFt: 9, innerDiameterFt: 3 };
const notes = (one: Bed, options: DrawnOptions = {}, letters: (string | undefined)[] = []) =>
  notesBelow(viewOf(one, options).layout, letters).map(({ heading, items, stacked }) => [
    heading,
    ...items,
    ...(stacked ? ["each on its own line"] : []),
  ]);
const fabricNote = (one: Bed, options: DrawnOptions = {}) => notes(one, options)[0];

describe("the lists below the plan", () => {
  it("are fabric, pins and border", () => {
    // 20 ft in one cut. Pins of 12 in. rows: 2 · 11, one line between two bays, 11, and 2 · 10. Border of 30 ft: three whole
    // pieces and one of 6 ft; stakes as in the tests of border.
    expect(notes(bed)).toEqual([
      ["Fabric: 1 cut off a roll 6' wide", "1: 20'", "strips run at 0°", "1 roll"],
      ["Pins: 53", 'rows 12" apart or less, and along every overlap', "no spot more than 2' 1\" from a pin"],
      ["Edging: 30' in 4 pieces, 11 stakes", "3 whole, 8'", "P4 cut to 6'"],
    ]);
  });

  it("say how strips and pieces lap, and what each cut comes in", () => {
    expect(fabricNote(rectangle(60, 9), { directionDegrees: 0 })).toEqual([
      `Fabric: 2 cuts off a roll 6' wide, strips lap 6", pieces lap 12"`,
      "1: 50' + 11'",
      "2: 39' + 22'",
      "strips run at 0°",
      "3 rolls",
    ]);
    expect(fabricNote(bed, { rollLengthFt: undefined, directionDegrees: 30.4 })!.slice(-1)).toEqual([
      "strips run at 30°",
    ]);
    expect(notes(bed, { pinSpacingIn: 18 })[1]![1]).toBe('rows 18" apart or less, and along every overlap');
  });

  it("say how border laps, and leave it out where none is set", () => {
    const border = { pieceLengthFt: 8, lapIn: 2, stakeSpacingIn: 48 };
    expect(notes({ ...bed, borderSides: [2, 4] }, { border })[2]).toEqual([
      "Edging: 10' in 2 pieces, 6 stakes",
      "P1 cut to 5'",
      "P2 cut to 5'",
    ]);
    expect(notes({ ...rectangle(16, 5), borderSides: [3] }, { border: { ...border, lapIn: 0 } })[2]).toEqual([
      "Edging: 16' in 2 pieces, 5 stakes",
      "2 whole, 8'",
    ]);
    expect(notes(bed, { border })[2]!.slice(1)).toEqual([`3 whole, 8', lapped 2"`, `P4 cut to 6' 6"`]);
    expect(notes(bed, { border: undefined })).toHaveLength(2);
    expect(notes({ ...bed, borderSides: [] })).toHaveLength(2);
  });

  it("give the corners of a bed by points, unless they are more than 40", () => {
    const list = (one: Bed) => notes(one).filter(([heading]) => heading!.startsWith("Corners"));
    expect(list(byPoints([0, 0], [0, 6], [0, 6], [8, 0], [0, 0]))).toEqual([
      ["Corners: x right, y up", "1: 0, 0", "2: 0, 6'", "3: 8', 0"],
    ]);
    const traced = (count: number): Bed => ({
      kind: "points",
      points: Array.from({ length: count }, (_, i) => {
        const turn = (2 * Math.PI * i) / count;
        return { x: 9 * Math.cos(turn), y: 9 * Math.sin(turn) };
      }),
    });
    expect(list(traced(40))[0]).toHaveLength(41);
    expect(list(traced(41))).toEqual([]);
    expect(list(bed)).toEqual([]);
  });

  it.each<[Bed, string]>([
    [bed, "the lower left corner"],
    [{ kind: "round", diameterFt: 20 }, "the middle"],
    [{ kind: "widths", spacingFt: 9, widthsFt: [5, 5, 5] }, "0 on the base line"],
    [byPoints([0, 0], [20, 0], [20, 5], [0, 5]), "the same zero as the corners"],
  ])("give the place of what stays free, by %j", (one, zero) => {
    const found = notes({ ...one, cutOuts: [pad(2, 1, 4, 2)] }, {}, ["A"]).at(-1);
    expect(found).toEqual([
      `Cut-outs: x right, y up, from ${zero}`,
      "A cut-out 1: 4' along x by 2', near corner at x\u00a02', y\u00a01'",
      "each on its own line",
    ]);
  });

  it("end with what to know", () => {
    // Simpson's rule: 4/3 · (0 + 4 · 5 + 3) = 30.67; straight, 4 · (2.5 + 4) = 26.
    expect(notes(widths).at(-1)).toEqual([
      "Notes",
      "The area (30.7 sq ft) is by Simpson's rule, for a curved edge; the drawing runs straight from width to " +
        "width, which is 26.0 sq ft.",
      "each on its own line",
    ]);
  });
});

describe("the plan in words", () => {
  it.each<[Bed, string]>([
    [bed, "Rectangular bed, 20' by 5', 100.0 square feet."],
    [
      // 20 · 5 − 2 · (1 − π/4) · 2² = 98.3
      { kind: "rectangle", lengthFt: 20, widthFt: 5, cornerRadiusFt: 2, roundedCorners: 2 },
      "Rectangular bed, 20' by 5' with 2 corners rounded to 2', 98.3 square feet.",
    ],
    [
      { kind: "rectangle", lengthFt: 20, widthFt: 5, cornerRadiusFt: 2, roundedCorners: 0 },
      "Rectangular bed, 20' by 5', 100.0 square feet.",
    ],
    [
      { kind: "rectangle", lengthFt: 20, widthFt: 5, cornerRadiusFt: 2 },
      "Rectangular bed, 20' by 5', 100.0 square feet.",
    ],
    [{ kind: "round", diameterFt: 9 }, "Round bed, 9' across, 63.6 square feet."],
    [ring, "Round bed, 9' across, 3' open in the middle, 56.5 square feet. Cut-outs: inner circle."],
    [widths, `Bed taped by 3 widths, every 4': 0", 5', 3', 30.7 square feet.`],
    [lShape, "Bed given by 6 points, 168.0 square feet."],
    [
      { ...bed, cutOuts: [pad(2, 1, 4, 2), pad(10, 1, 1, 1)] },
      "Rectangular bed, 20' by 5', 91.0 square feet. Cut-outs: cut-out 1, cut-out 2.",
    ],
  ])("begins with the shape: %j", (one, expected) => {
    const said = describePlan(viewOf(one).layout);
    expect(said.slice(0, said.indexOf(" Fabric in"))).toBe(expected);
  });

  it("goes on with fabric, pins and border", () => {
    const rest = (one: Bed, options: DrawnOptions = {}) => {
      const said = describePlan(viewOf(one, options).layout);
      return said.slice(said.indexOf("Fabric in"));
    };
    expect(rest(bed)).toBe(
      "Fabric in 1 strip at 0 degrees to the base line: cut 1, 20'. 53 pins. Edging 30' in 4 pieces with 11 stakes.",
    );
    const elsewhere = { ...viewOf(bed).layout, notDrawn: { sqFt: 4, pins: 8 } };
    expect(describePlan(elsewhere)).toContain("100.0 square feet, 4.0 of them other areas without stone. ");
    expect(describePlan(elsewhere)).toContain(" 61 pins, 8 of them around other areas. ");
    expect(notesBelow(elsewhere, [])[1]).toMatchObject({
      heading: "Pins: 61",
      items: expect.arrayContaining(["53 drawn, and 8 around other areas, which aren't drawn"]),
    });
    // Strips of 6 ft that lap by 6 in. over 9 ft, across 2.5 ft of bed.
    expect(rest(rectangle(9, 2.5), { directionDegrees: 90, border: undefined })).toMatch(
      /^Fabric in 2 strips at 90 degrees to the base line: cut 1, 2' 6"; cut 2, 2' 6"\. \d+ pins\.$/,
    );
  });
});

describe("the legend", () => {
  const legendOf = (one: Bed, options: DrawnOptions = {}, width = 400) => {
    const { pen, layout, scale } = viewOf(one, options);
    return legend(pen, layout, scale, 8, 100, width);
  };
  const entries = (one: Bed, options: DrawnOptions = {}) =>
    wordsOf(legendOf(one, options).svg).filter((words) => words !== "1");

  it.each<[string, Bed, DrawnOptions, string[]]>([
    [
      "a bed with border in several pieces",
      bed,
      {},
      ["edging, gap at a joint", "stake", "stake through a joint", "house side, no edging"],
    ],
    ["a bed without border", bed, { border: undefined }, []],
    ["a bed without sides for border", { ...bed, borderSides: [] }, {}, ["bed edge"]],
    ["border in one piece", { ...bed, borderSides: [2] }, {}, ["edging, gap at a joint", "stake", "no edging"]],
    [
      "border all around",
      { ...rectangle(4, 5), borderSides: [1, 2, 3, 4] },
      {},
      ["edging, gap at a joint", "stake", "stake through a joint"],
    ],
    [
      "a base line without border",
      { kind: "widths", spacingFt: 4, widthsFt: [4, 4, 4] },
      {},
      ["edging, gap at a joint", "stake", "stake through a joint", "base line, no edging"],
    ],
    ["something left free", { ...bed, cutOuts: [pad(2, 1, 1, 1)] }, { border: undefined }, ["cut-out"]],
  ])("explains the marks of %s", (_, one, options, marks) => {
    expect(entries(one, options)).toEqual(["fabric strips", "cut number", "pin", ...marks]);
  });

  it("explains overlaps where strips or pieces lap", () => {
    expect(entries(rectangle(20, 9), { border: undefined, directionDegrees: 0 })[2]).toBe(
      "overlap, pinned down the middle",
    );
    expect(entries(rectangle(60, 5), { border: undefined, directionDegrees: 0 })[2]).toBe(
      "overlap, pinned down the middle",
    );
    expect(entries(bed, { border: undefined })[2]).toBe("pin");
  });

  it("is in as many columns as fit, in rows of 1.6 of the text's size", () => {
    // The widest entry, "fabric strips", takes 101.8, its mark 26 and 12 between columns: 139.8, so two in 400.
    const { svg, height } = legendOf(bed);
    expect(height).toBe(64);
    expect(placedWordsOf(svg).filter((words) => !words.startsWith("1 at"))).toEqual([
      "fabric strips at 34,108",
      "cut number at 234,108",
      "pin at 34,124",
      "edging, gap at a joint at 234,124",
      "stake at 34,140",
      "stake through a joint at 234,140",
      "house side, no edging at 34,156",
    ]);
    expect(placedWordsOf(legendOf(bed, {}, 100).svg).filter((words) => !words.startsWith("1 at"))[1]).toBe(
      "cut number at 34,124",
    );
    expect(legendOf(bed, {}, 100).height).toBe(112);
  });

  it("draws each mark as the plan does", () => {
    const { svg } = legendOf({ ...rectangle(20, 9), cutOuts: [pad(2, 1, 1, 1)] }, { directionDegrees: 0 });
    const [ink, paper, soft, border] = ["#15232d", "#ffffff", "#4a5f6d", "#6b3410"];
    const rects = partsOf(svg, "rect").map(({ attributes: { x, y, width, height, fill, stroke, ...rest } }) => {
      expect([height, stroke, rest["stroke-width"]]).toEqual(["9", soft, "0.8"]);
      return [Number(x), Number(y), Number(width), fill, rest["stroke-dasharray"]];
    });
    // Two columns of 200, marks 11 from their left: rows at 108, 124, 140, 156 and 172, marks 4.5 above and below.
    expect(rects).toEqual([
      [10, 103.5, 18, "#f1efe6", undefined],
      [19, 103.5, 9, "#dedbcd", undefined],
      [10, 119.5, 18, "url(#bed-overlap)", "4 2"],
      [210, 151.5, 18, "url(#bed-wall)", undefined],
      [10, 167.5, 18, paper, undefined],
    ]);
    expect(partsOf(svg, "circle").map(({ attributes }) => attributes)).toEqual([
      { cx: "219", cy: "108", r: "6.5", fill: paper, stroke: ink },
      { cx: "219", cy: "124", r: "1.8", fill: ink },
    ]);
    expect(partsOf(svg, "path").map(({ attributes }) => attributes)).toEqual([
      { d: "M10 140L28 140", stroke: border, "stroke-width": "4" },
      { d: "M19 137L19 143", stroke: paper, "stroke-width": "2" },
      { d: "M216.6 137.6h4.8v4.8h-4.8Z", fill: paper, stroke: ink, "stroke-width": "1.1" },
      { d: "M19 152L23 156L19 160L15 156Z", fill: ink, stroke: ink, "stroke-width": "1.1" },
    ]);
    const [number] = partsOf(svg, "text").filter(({ text }) => text === "1");
    expect(number!.attributes).toMatchObject({ x: "219", "font-size": "9.2", "font-weight": "bold", fill: ink });
    for (const { text, attributes } of partsOf(svg, "text"))
      if (text !== "1")
        expect([attributes["text-anchor"], attributes.fill, attributes["font-size"]]).toEqual([undefined, ink, "10"]);
  });
});

describe("the scale bar", () => {
  const pen = new Pen("bed", "light", 10);
  const barOf = (scale: number, mostWidth: number) => {
    const { svg, height } = scaleBar(pen, scale, 12, 100, mostWidth);
    return { words: placedWordsOf(svg), rects: partsOf(svg, "rect").map(({ attributes }) => attributes), height };
  };

  it("is as long as the longest round number of feet that fits, in a dark and a light half", () => {
    // 20 pixels a foot in 130: 6.5 ft, so 4 ft and 80 pixels.
    const { words, rects, height } = barOf(20, 130);
    const half = { y: "100", width: "40", height: "5", stroke: "#15232d", "stroke-width": "1" };
    expect(rects).toEqual([
      { x: "12", ...half, fill: "#15232d" },
      { x: "52", ...half, fill: "#ffffff" },
    ]);
    expect(words).toEqual(["0 at 12,113", "2 at 52,113", "4 ft at 92,113"]);
    expect(height).toBe(20);
  });

  it.each([
    [100, 130, "1 ft"],
    [65, 130, "2 ft"],
    [13, 130, "10 ft"],
    [6.5, 130, "20 ft"],
    [3.2, 130, "40 ft"],
    [1.3, 130, "100 ft"],
    [0.65, 130, "200 ft"],
    [0.32, 130, "400 ft"],
    [0.13, 130, "1000 ft"],
    // Where not even a foot fits, a foot it is.
    [200, 130, "1 ft"],
  ])("at %s pixels a foot in %s stands for %s", (scale, width, words) => {
    expect(barOf(scale, width).words.at(-1)!.split(" at")[0]).toBe(words);
  });
});
