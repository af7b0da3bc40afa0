import { beforeAll, describe, expect, it } from "vitest";
import { parseStringPromise } from "xml2js";
import type { Bed } from "../bed";
import { layOutBed } from "../layOutBed";
import type { Layout } from "../layout";
import { drawPlan } from "./drawPlan";

const points = (...pairs: readonly (readonly [number, number])[]) => pairs.map(([x, y]) => ({ x, y }));
const options = {
  rollWidthFt: 6,
  rollLengthFt: 50,
  overlapIn: 6,
  border: { pieceLengthFt: 8, lapIn: 2, stakeSpacingIn: 30 },
};
const beds: Record<string, Bed> = {
  kidney: {
    kind: "widths",
    spacingFt: 4,
    widthsFt: [0, 5.5, 7.25, 6, 5, 6.5, 0],
    cutOuts: [{ kind: "outline", name: "meter <pad> & valve", points: points([10, 0], [13, 0], [13, 2], [10, 2]) }],
  },
  rounded: { kind: "rectangle", lengthFt: 18.5, widthFt: 5, cornerRadiusFt: 2, roundedCorners: 2 },
  ring: { kind: "round", diameterFt: 12, innerDiameterFt: 3, innerBorder: true },
  lShape: { kind: "points", points: points([0, 0], [20, 0], [20, 6], [8, 6], [8, 12], [0, 12]) },
};
const laid = Object.entries(beds).map(([name, bed]) => [name, layOutBed(bed, options)] as const);
const textsOf = (svg: string) => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text!);

describe.each(laid)("the plan of the %s", (_, layout) => {
  const print = drawPlan(layout, { widthPx: 720, theme: "light", title: "Front & side" });
  const pane = drawPlan(layout);

  it("is well-formed, for a screen and for print", async () => {
    for (const svg of [print, pane]) expect((await parseStringPromise(svg)).svg.title).toHaveLength(1);
  });

  it("needs nothing from outside, and runs nothing", () => {
    for (const svg of [print, pane]) {
      expect(svg.replace('xmlns="http://www.w3.org/2000/svg"', "")).not.toMatch(
        /https?:|<script|@import|data:|on\w+="/,
      );
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    }
  });

  it("follows the screen, but is always light in print", () => {
    expect(pane).toContain("prefers-color-scheme:dark");
    expect(print).not.toMatch(/prefers-color-scheme|var\(/);
  });

  it("has a title and a description in words", () => {
    expect(print).toContain('role="img" aria-labelledby="bed-plan-title bed-plan-description"');
    expect(print).toContain('<title id="bed-plan-title">Front &amp; side</title>');
    const description = /<desc[^>]*>([^<]*)</.exec(print)![1]!;
    for (const { number } of layout.cuts) expect(description).toContain(`cut ${number}, `);
    expect(description).toContain(`${layout.counts.pins} pins`);
    expect(description).toContain(`${layout.counts.stakes} stakes`);
  });

  it("shows every pin, stake, cut and piece that is counted", () => {
    const dots = [...print.matchAll(/h0/g)].length;
    expect(dots).toBe(layout.counts.pins);
    expect(stakesIn(print)).toBe(layout.counts.stakes + stakesInLegend(layout));
    const texts = textsOf(print);
    for (const { number } of layout.cuts) expect(texts).toContain(String(number));
    for (const { pieces } of layout.border.filter(({ ring }) => ring === 0))
      for (const { number } of pieces) expect(texts).toContain(`P${number}`);
  });

  it("is legible: no text is smaller than 10 pixels at the width it is made for", () => {
    for (const svg of [print, pane])
      for (const [, size] of svg.matchAll(/font-size="([\d.]+)"/g)) expect(Number(size)).toBeGreaterThanOrEqual(10);
    expect(pane).toContain('viewBox="0 0 350 ');
    expect(print).toContain('viewBox="0 0 720 ');
  });

  it("is drawn the same every time", () => {
    expect(drawPlan(layout)).toBe(pane);
  });
});

/** Stakes are small closed squares and diamonds, outlined at a width of their own. */
const stakesIn = (svg: string): number => [...svg.matchAll(/stroke-width="1\.1"/g)].length;
const stakesInLegend = (layout: Layout): number => 1 + Number(layout.border.some(({ joints }) => joints.length > 0));

describe("what the crew reads", () => {
  const plan = (name: string) => textsOf(drawPlan(laid.find(([bed]) => bed === name)![1]));

  it("has the taped widths, and where each was taped", () => {
    const texts = plan("kidney");
    for (const width of ["5' 6&quot;", "7' 3&quot;", "6'", "5'", "6' 6&quot;"]) expect(texts).toContain(width);
    for (const place of ["0", "4'", "8'", "12'", "16'", "20'", "24'"]) expect(texts).toContain(place);
  });

  it("has length, width and radius of a rectangle", () => {
    expect(plan("rounded")).toEqual(expect.arrayContaining(["18' 6&quot;", "5'", "R 2'"]));
  });

  it("has the diameters of a ring", () => {
    expect(plan("ring").join("\n")).toMatch(/12' across[\s\S]*inner circle: 3' across/);
  });

  it("has every corner with its place, and the sides, of a bed given by points", () => {
    const texts = plan("lShape");
    expect(texts.filter((text) => text === "12'")).toHaveLength(2);
    expect(texts.join("\n")).toContain("1: 0, 0 · 2: 20', 0 · 3: 20', 6'");
  });

  it("has what a cut-out is called, its size and its place, with the name as it was typed", () => {
    expect(plan("kidney").join(" ").replaceAll("\u00a0", " ")).toContain(
      "meter &lt;pad&gt; &amp; valve: 3' along x by 2', near corner at x 10', y 0",
    );
  });

  it("has the lengths to cut, of fabric and of border", () => {
    const texts = plan("rounded").join("\n");
    expect(texts).toContain("1: 18' 6&quot;");
    expect(texts).toContain("P4 cut to 3' 3 1/2&quot;");
  });
});

describe("several drawings on one page", () => {
  let svg = "";
  beforeAll(() => {
    svg = drawPlan(laid[0]![1], { id: "bed-two" });
  });

  it("share no ids, since each has its own before them", () => {
    for (const [, id] of svg.matchAll(/ id="([^"]+)"/g)) expect(id).toMatch(/^bed-two/);
    for (const [, id] of svg.matchAll(/url\(#([^)]+)\)/g)) expect(svg).toContain(`id="${id}"`);
  });
});
