import { describe, expect, it } from "vitest";
import { type DrawnPart, partsOf, pathsOf, placedWordsOf, wordsOf } from "../../../test/drawnParts";
import { type Depths, drawSection } from "./drawSection";

/*
 * A section that is easy to work out: 544 pixels wide, text of 12. On the left 8 and 6 texts of room, on the right 8 and 8
 * texts, leave 360 for 3 in. of lawn, the trench of 4 in. and 5 in. of bed: 30 pixels an inch. The top edge of the border, 1 in.
 * above the lawn, is 2 texts from the top of the drawing, at 24; the lawn at 54, the scraped floor, 2 in. below it, at 114, and
 * the foot of the border, 1 in. below that, at 144. The stone ends half an inch below the top edge, at 39.
 */
const depths: Depths = {
  scrapeDepthIn: 2,
  borderHeightIn: 4,
  trenchDepthIn: 1,
  trenchWidthIn: 4,
  topGapIn: 0.5,
  stoneSizeIn: 1.5,
};
const draw = (changes: Partial<Depths> = {}, widthPx = 544) =>
  drawSection({ ...depths, ...changes }, { widthPx, theme: "light", id: "cut" });
const svg = draw();
const [ink, soft, paper, soil] = ["#15232d", "#4a5f6d", "#ffffff", "#b79a78"];
const rect = (one: string, fill: string) =>
  partsOf(one, "rect").find(({ attributes }) => attributes.fill === fill)!.attributes;
const attributesOf = (parts: DrawnPart[]) => parts.map(({ attributes }) => attributes);

describe("the ground of a section", () => {
  it("is earth below the lawn, the trench and the scraped floor, to 0.8 in. below the lowest of them", () => {
    const surface = "M80 54L170 54L170 144L290 144L290 114L440 114";
    const [earth] = partsOf(svg, "path").filter(({ attributes }) => attributes.fill === soil);
    expect(earth!.attributes.d).toBe(`${surface}L440 168L80 168Z`);
    expect(pathsOf(svg)).toContain(`${surface}, ${ink}, 1`);
  });

  it("has the trench filled back between the border's outer face and the end of the trench", () => {
    const { x, y, width, height } = rect(svg, "url(#cut-filled)");
    expect([x, y, width, height]).toEqual(["170", "114", "120", "30"]);
    const [pattern] = partsOf(svg, "pattern").filter(({ attributes }) => attributes.id === "cut-filled");
    expect(pattern!.attributes).toEqual({ id: "cut-filled", width: "6", height: "6", patternUnits: "userSpaceOnUse" });
    expect(rect(svg, soil)).toEqual({ width: "6", height: "6", fill: soil });
    const dots = partsOf(svg, "circle").filter(({ attributes }) => attributes.r === "0.9");
    expect(attributesOf(dots)).toEqual([
      { cx: "1.5", cy: "1.5", r: "0.9", fill: ink },
      { cx: "4.5", cy: "4.5", r: "0.9", fill: ink },
    ]);
  });

  it("has grass all over the lawn, a blade every 6", () => {
    const [grass] = partsOf(svg, "path").filter(({ attributes }) => attributes.stroke === "#6f8f4e");
    const blades = grass!.attributes.d!.split("M").slice(1);
    // 90 pixels of lawn; each blade is on it at 54, and its two tips are 6 and 4.8 above.
    expect(blades).toHaveLength(15);
    expect([blades[0], blades[14]]).toEqual(["81 48L83 54L85.5 49.2", "165 48L167 54L169.5 49.2"]);
    expect(grass!.attributes).toMatchObject({ "stroke-width": "1.4", "stroke-linecap": "round" });
  });

  it("ends where the drawing ends, where a trench is wider than what is shown", () => {
    // The sheet always has room for the trench and 5 in. more: 360/(3 + 20 + 5) pixels an inch.
    const scale = 360 / 28;
    const { x, width } = rect(draw({ trenchWidthIn: 20 }), "url(#cut-filled)");
    expect([Number(x), Number(width)]).toEqual([expect.closeTo(80 + 3 * scale, 1), expect.closeTo(20 * scale, 1)]);
  });
});

describe("what lies in the bed", () => {
  it("is stone from the border on, up to the gap below its top edge, with a dashed line along its top", () => {
    // The border is drawn 0.3 in. thick: 9 pixels.
    const { x, y, width, height } = rect(svg, "url(#cut-stones)");
    expect([x, y, width, height]).toEqual(["179", "39", "261", "75"]);
    const [top] = partsOf(svg, "path").filter(({ attributes }) => attributes["stroke-dasharray"] === "5 3");
    expect(top!.attributes).toMatchObject({ d: "M179 39H440", stroke: ink, "stroke-width": "0.8" });
  });

  it("has stones to scale, in rows counted up from the floor", () => {
    // 1.5 in. are 45 pixels; two rows of offset stones repeat every 1.7 of that, 76.5, ending at the floor at 114.
    const [pattern] = partsOf(svg, "pattern").filter(({ attributes }) => attributes.id === "cut-stones");
    expect(pattern!.attributes).toEqual({
      id: "cut-stones",
      width: "45",
      height: "76.5",
      patternUnits: "userSpaceOnUse",
      patternTransform: "translate(179.00 37.50)",
    });
    const stone = { rx: "21.6", ry: "18", fill: "#c9d3d8", stroke: ink, "stroke-width": "0.7" };
    // One in the middle that lies 0.42 of a stone above the floor, and two halves a row up.
    expect(attributesOf(partsOf(svg, "ellipse"))).toEqual([
      { cx: "22.5", cy: "57.6", ...stone },
      { cx: "0", cy: "19.35", ...stone },
      { cx: "45", cy: "19.35", ...stone },
    ]);
    const behind = partsOf(svg, "rect").filter(({ attributes }) => attributes.width === "45");
    expect(attributesOf(behind)).toEqual([{ width: "45", height: "76.5", fill: paper }]);
  });

  it("has fabric along the floor and up the border, dashed", () => {
    const [fabric] = partsOf(svg, "path").filter(({ attributes }) => attributes["stroke-dasharray"] === "7 2");
    expect(fabric!.attributes).toEqual({
      d: "M180 39L180 114L440 114",
      stroke: ink,
      "stroke-width": "2.2",
      "stroke-dasharray": "7 2",
    });
  });

  it("has the border from its foot in the trench to its top edge", () => {
    expect(rect(svg, "#6b3410")).toEqual({
      x: "170",
      y: "24",
      width: "9",
      height: "120",
      fill: "#6b3410",
      stroke: ink,
      "stroke-width": "0.8",
    });
  });
});

describe("the depths of a section", () => {
  /** A depth's dimension at x: thin lines out to the drawing, its line, and its two slanting strokes. */
  const dimension = (from: number, out: number, x: number, top: number, bottom: number) => [
    `M${from} ${top}L${out} ${top}, ${soft}, 0.5`,
    `M${from} ${bottom}L${out} ${bottom}, ${soft}, 0.5`,
    `M${x} ${top}L${x} ${bottom}, ${ink}, 0.9`,
    `M${x - 3} ${top + 3}L${x + 3} ${top - 3}, ${ink}, 1.2`,
    `M${x - 3} ${bottom + 3}L${x + 3} ${bottom - 3}, ${ink}, 1.2`,
  ];

  it("are the border's height on the left and what is in the bed on the right", () => {
    // 0.9 of a text beyond the drawing, thin lines 4 farther.
    expect(pathsOf(svg)).toEqual(expect.arrayContaining(dimension(80, 65.2, 69.2, 24, 144)));
    for (const [top, bottom] of [
      [24, 39],
      [39, 114],
      [114, 144],
    ] as const)
      expect(pathsOf(svg)).toEqual(expect.arrayContaining(dimension(440, 454.8, 450.8, top, bottom)));
  });

  it("has the scrape in the lawn, its line run down to its words", () => {
    expect(pathsOf(svg)).toEqual(
      expect.arrayContaining([
        `M80 114L94.8 114, ${soft}, 0.8`,
        // The words' middle is a text below the earth, at 180; the line ends 0.6 of a text above that.
        `M90.8 54L90.8 172.8, ${ink}, 0.9`,
        `M87.8 57L93.8 51, ${ink}, 1.2`,
        `M87.8 117L93.8 111, ${ink}, 1.2`,
      ]),
    );
  });

  it("are named beside their middles, the layers with a line to a dot on each", () => {
    expect(placedWordsOf(svg).slice(2)).toEqual([
      'edging 4" at 60.2,84',
      'scrape 2" at 80,180',
      'gap 1/2" at 459.8,31.5',
      'stone 2 1/2" at 459.8,76.5',
      'trench 1" at 459.8,129',
      "lawn at 125,37.2",
      "edging at 200,9.6",
      "stone at 345.5,9.6",
      "fabric at 345.5,180",
    ]);
    // Into the border 5 below its top edge; into the middle of the stone and onto the fabric, 0.35 of the bed from its end.
    expect(pathsOf(svg)).toEqual(
      expect.arrayContaining([
        `M200 9.6L174.5 29, ${ink}, 0.7`,
        `M345.5 9.6L345.5 76.5, ${ink}, 0.7`,
        `M345.5 180L345.5 114, ${ink}, 0.7`,
      ]),
    );
    const dots = partsOf(svg, "circle").filter(({ attributes }) => attributes.r === "1.6");
    expect(attributesOf(dots)).toEqual([
      { cx: "174.5", cy: "29", r: "1.6", fill: ink },
      { cx: "345.5", cy: "76.5", r: "1.6", fill: ink },
      { cx: "345.5", cy: "114", r: "1.6", fill: ink },
    ]);
    const anchors = partsOf(svg, "text").map(({ attributes }) => attributes["text-anchor"] ?? "start");
    expect(anchors.slice(2)).toEqual([
      "end",
      "start",
      "start",
      "start",
      "start",
      "middle",
      "middle",
      "middle",
      "middle",
    ]);
    const rims = partsOf(svg, "text").map(({ attributes }) => attributes["paint-order"] === "stroke");
    expect(rims.slice(2)).toEqual([true, false, true, true, true, false, true, true, true]);
  });

  it("are moved apart where their words would touch, with a line to where they belong", () => {
    // A gap of 0.1 in. and stone of 0.4 in.: 3 and 12 pixels. Their middles at 25.5 and 33 are closer than 1.25 texts, 15.
    const close = draw({ topGapIn: 0.1, trenchDepthIn: 3.5 });
    const [gap, stone] = placedWordsOf(close).filter((words) => /^(gap|stone \d|stone \d\/)/.test(words));
    const at = (words: string) => Number(words.split(",").at(-1));
    expect(at(stone!) - at(gap!)).toBeCloseTo(15, 6);
    const leads = pathsOf(close).filter((path) => path.endsWith(`${soft}, 0.6`));
    // From the middle of the stone, 7 to the right, down to its words.
    expect(leads[0]).toMatch(new RegExp(`^M450.8 \\S+L457.8 ${at(stone!)},`));
    expect(pathsOf(svg).filter((path) => path.endsWith(`${soft}, 0.6`))).toEqual([]);
  });
});

describe("a section's sheet", () => {
  it("has its title and what it is above the drawing, and room for words below the earth", () => {
    // Two lines of 16.8 and a third of one, 8 from the top: the drawing begins 47.48 down and ends 2.4 texts below the earth.
    expect(partsOf(svg, "g")[0]!.attributes).toEqual({ transform: "translate(0 8)" });
    expect(partsOf(svg, "g")[1]!.attributes).toEqual({ transform: "translate(0 47.48)" });
    expect(partsOf(svg, "g")[2]!.attributes).toEqual({ fill: "none" });
    expect(placedWordsOf(svg).slice(0, 2)).toEqual([
      "Cross-section at the edging at 8,8.4",
      "to scale both ways at 8,25.2",
    ]);
    expect(partsOf(svg, "svg")[0]!.attributes).toMatchObject({ id: "cut", width: "544", height: "245" });
    // 47.48 + 168 + 28.8 = 244.28
  });

  it("is drawn at most 0.55 times as high as it is wide", () => {
    // A border of 20 in. on a scrape of 2 in. and a trench of 1 in.: 20 + 0.8 in. in 0.55 · 544 pixels.
    const { height } = rect(draw({ borderHeightIn: 20 }), "#6b3410");
    expect(Number(height)).toBeCloseTo((20 * 0.55 * 544) / 20.8, 1);
  });

  it("begins at the lawn where the border does not reach it", () => {
    // The top edge is 0.5 in. below the lawn, at 24 + 15.
    const low = draw({ borderHeightIn: 2.5 });
    expect(rect(low, "#6b3410").y).toBe("39");
    expect(pathsOf(low)).toContain(`M80 24L170 24L170 114L290 114L290 84L440 84, ${ink}, 1`);
  });

  it("takes its usual size, width and names where they are left out", () => {
    const { stoneSizeIn: _, ...without } = depths;
    const usual = drawSection(without);
    expect(partsOf(usual, "svg")[0]!.attributes).toMatchObject({ id: "bed-section", width: "350" });
    expect(usual).toContain("var(--bed-ink)");
    expect(wordsOf(usual)[0]).toBe("Cross-section at the edging");
    expect(drawSection({ ...without, stoneSizeIn: 1 })).toBe(usual);
  });

  it.each<[Partial<Depths>, string, string]>([
    [{ scrapeDepthIn: Number.NaN }, "scrape_depth_in", "The scrape: can't use NaN"],
    [{ borderHeightIn: 0 }, "border_height_in", "The edging height is 0"],
    [{ trenchDepthIn: Number.NaN }, "trench_depth_in", "The trench depth: can't use NaN"],
    [{ trenchWidthIn: 0 }, "trench_width_in", "The trench width is 0"],
    [{ topGapIn: Number.NaN }, "top_gap_in", "The gap: can't use NaN"],
    [{ stoneSizeIn: 0 }, "stone_size_in", "The stone size is 0"],
  ])("refuses %j and names %s", (changes, argument, message) => {
    expect(() => draw(changes)).toThrow(
      expect.objectContaining({ argument, message: expect.stringContaining(message) }),
    );
  });

  it("takes a depth below 0 for none", () => {
    expect(draw({ topGapIn: -1 })).toBe(draw({ topGapIn: 0 }));
    expect(draw({ scrapeDepthIn: -1 })).toBe(draw({ scrapeDepthIn: 0 }));
  });

  it.each([
    [4, '1" above the lawn'],
    [3, "level with the lawn"],
    [2.5, '1/2" below the lawn'],
  ])("says that a border of %s in. ends %s", (borderHeightIn, where) => {
    expect(draw({ borderHeightIn }).replaceAll("&quot;", '"')).toContain(`its top edge ${where}.`);
  });
});
