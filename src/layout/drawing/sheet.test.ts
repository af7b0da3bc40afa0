import { describe, expect, it } from "vitest";
import { partsOf, placedWordsOf, wordsOf } from "../../../test/drawnParts";
import { byPoints, pad, rectangle } from "../../../test/planBeds";
import type { Bed } from "../bed";
import { layOutBed } from "../layOutBed";
import { drawPlan } from "./drawPlan";
import { Pen } from "./pen";
import { sheet, textSizeFor } from "./sheet";

describe("the sheet", () => {
  const about = { width: 300, height: 120.2, title: "Front & side", description: "A <bed>" };
  const svg = sheet(new Pen("bed", "light", 11), about, ["<a/>", "<b/>"]);

  it("is a picture with a title and a description, in whole pixels", () => {
    expect(partsOf(svg, "svg")[0]!.attributes).toEqual({
      xmlns: "http://www.w3.org/2000/svg",
      id: "bed",
      role: "img",
      "aria-labelledby": "bed-title bed-description",
      width: "300",
      height: "121",
      viewBox: "0 0 300 121",
      "font-family": "Arial, Helvetica, 'Liberation Sans', sans-serif",
    });
    expect(partsOf(svg, "title")[0]).toMatchObject({ attributes: { id: "bed-title" }, text: "Front & side" });
    expect(partsOf(svg, "desc")[0]).toMatchObject({ attributes: { id: "bed-description" }, text: "A <bed>" });
    expect(svg).toMatch(/<rect width="300" height="121" fill="#ffffff"\/><a\/><b\/><\/svg>$/);
  });

  it("has hatches that lean one way for overlaps and the other for open sides", () => {
    expect(partsOf(svg, "pattern").map(({ attributes }) => attributes)).toEqual([
      { id: "bed-overlap", width: "4", height: "4", patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)" },
      { id: "bed-wall", width: "4.5", height: "4.5", patternUnits: "userSpaceOnUse", patternTransform: "rotate(-45)" },
    ]);
    expect(partsOf(svg, "path").map(({ attributes }) => attributes)).toEqual([
      { d: "M0 0V4", stroke: "#4a5f6d", "stroke-width": "1" },
      { d: "M0 0V4.5", stroke: "#15232d", "stroke-width": "1.2" },
    ]);
    expect(svg).not.toContain("<style>");
    expect(sheet(new Pen("bed", "auto", 11), about, [])).toContain("<style>#bed{--bed-paper:#ffffff");
  });

  it("has text of 11 in the pane and of 12 on a page", () => {
    expect([350, 499, 500, 720].map(textSizeFor)).toEqual([11, 11, 12, 12]);
  });
});

describe("the plan on its sheet", () => {
  const layout = layOutBed(rectangle(20, 5), { rollWidthFt: 6, overlapIn: 6 });
  const svg = drawPlan(layout, { widthPx: 720, theme: "light" });

  it("has title and area on top, then the bed, the scale, the legend and the lists, clear of one another", () => {
    const words = placedWordsOf(svg);
    expect(words.slice(0, 2)).toEqual(["Bed in plan at 8,16.4", "100.0 sq ft at 8,33.2"]);
    // Two lines of 16.8 and 0.35 of one: the bed is drawn from 47.48 down.
    expect(partsOf(svg, "g").map(({ attributes }) => attributes)).toEqual(
      expect.arrayContaining([{ transform: "translate(0 47.48)" }, { fill: "none" }]),
    );
    // 720 less 38 + 18 on the left and 16 + 15.12 + 6 on the right leave 626.9 for 20 ft: 31.3 a foot, so the bed is 156.7
    // high, with 30 above and 56 below it. "P0" is 15.12 wide.
    const scale = (720 - 56 - 37.12) / 20;
    const bottom = 47.48 + 30 + 5 * scale + 56;
    // A scale bar of 4 ft: at most a third of 704. It stands 0.6 of a text below, its numbers 14.2 under that.
    const bar = partsOf(svg, "rect").filter(({ attributes }) => attributes.height === "5");
    expect(Number(bar[0]!.attributes.y)).toBeCloseTo(bottom + 7.2, 1);
    expect(bar[0]!.attributes.x).toBe("12");
    const at = (start: string) =>
      Number(
        words
          .find((one) => one.startsWith(start))!
          .split(",")
          .at(-1),
      );
    // The bar takes 7 and 1.3 texts, 0.8 of a text is left, and the legend's first row is 0.8 of a text down.
    const legendTop = bottom + 7.2 + 22.6 + 9.6;
    expect(at("fabric strips at")).toBeCloseTo(legendTop + 9.6, 1);
    // Four entries in rows of 19.2, as many columns as fit in 704; then 0.8 of a text and half a line of 16.8.
    expect(at("Fabric: 1 cut")).toBeCloseTo(legendTop + 19.2 + 9.6 + 8.4, 1);
    expect(Number(partsOf(svg, "svg")[0]!.attributes.height)).toBeGreaterThan(at("rows 12") + 8);
  });

  it("is at most 1.1 times as high as wide in the pane, and 0.75 times on a page", () => {
    const tall = layOutBed(rectangle(5, 40), { rollWidthFt: 6, overlapIn: 6 });
    const widthOf = (one: string) => {
      const [outline] = partsOf(one, "path").filter(({ attributes }) => attributes["stroke-width"] === "1.3");
      const ys = outline!.attributes.d!.match(/-?[\d.]+ (-?[\d.]+)/g)!.map((pair) => Number(pair.split(" ")[1]));
      return Math.max(...ys) - Math.min(...ys);
    };
    // Less 30 above, and below 38 and a line and a half of text of 11 or 12.
    expect(widthOf(drawPlan(tall, { widthPx: 350 }))).toBeCloseTo(350 * 1.1 - 30 - 38 - 16.5, 1);
    expect(widthOf(drawPlan(tall, { widthPx: 499 }))).toBeCloseTo(499 * 1.1 - 30 - 38 - 16.5, 1);
    expect(widthOf(drawPlan(tall, { widthPx: 500 }))).toBeCloseTo(500 * 0.75 - 30 - 38 - 18, 1);
  });

  it("has pins of 0.11 ft, but no smaller than 0.9 and no larger than 2 pixels", () => {
    const radius = (length: number, widthPx: number) => {
      const laid = layOutBed(rectangle(length, 5), { rollWidthFt: 6, overlapIn: 6 });
      const [pins] = partsOf(drawPlan(laid, { widthPx }), "path").filter(({ attributes }) =>
        attributes.d?.includes("h0"),
      );
      return Number(pins!.attributes["stroke-width"]) / 2;
    };
    // (350 − 54.5 − 35.86)/20 = 13 pixels a foot: 1.43.
    expect(radius(20, 350)).toBeCloseTo(1.43, 2);
    expect(radius(8, 720)).toBe(2);
    expect(radius(60, 350)).toBe(0.9);
  });

  it("takes its usual width, theme and names where they are left out", () => {
    const usual = drawPlan(layout);
    expect(partsOf(usual, "svg")[0]!.attributes).toMatchObject({ id: "bed-plan", width: "350" });
    expect(usual).toContain("prefers-color-scheme");
    expect(wordsOf(usual).slice(0, 2)).toEqual(["Bed in plan", "100.0 sq ft"]);
  });

  it("has no words but those of its texts", () => {
    const stray = (one: string) => one.replace(/<(text|title|desc|style)[^>]*>[^<]*/g, "").replace(/<[^>]*>/g, "");
    // A rounded corner beside square ones; a side shorter than its length in words; widths close together and of 0.
    const beds: Bed[] = [
      { kind: "rectangle", lengthFt: 20, widthFt: 5, cornerRadiusFt: 2, roundedCorners: 1 },
      byPoints([0, 0], [19, 0], [20, 1], [20, 6], [0, 6]),
      { kind: "widths", spacingFt: 1, widthsFt: [0, 4, 5, 4, 0] },
      { kind: "rectangle", lengthFt: 20, widthFt: 5, cutOuts: [pad(4, 1, 0.3, 0.3)] },
      rectangle(60, 0.5),
    ];
    for (const bed of beds) {
      const border = { pieceLengthFt: 8, stakeSpacingIn: 48 };
      expect(stray(drawPlan(layOutBed(bed, { rollWidthFt: 6, overlapIn: 6, border })))).toBe("");
    }
  });

  it("draws the bed over its border, words over the bed, and pins over every word, so that none hides one", () => {
    const bordered = layOutBed(rectangle(20, 5), {
      rollWidthFt: 6,
      overlapIn: 6,
      border: { pieceLengthFt: 8, stakeSpacingIn: 48 },
    });
    const drawn = drawPlan(bordered, { widthPx: 720, theme: "light" });
    const order = [
      'stroke="#6b3410" stroke-width="13"',
      'fill="#f1efe6"',
      'stroke-width="1.3"',
      'stroke-width="1.1"',
      ">P1<",
      "h0",
    ];
    const places = order.map((mark) => drawn.indexOf(mark));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
  });
});
