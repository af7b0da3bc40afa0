import { describe, expect, it } from "vitest";
import { parseStringPromise } from "xml2js";
import { drawSection } from "./drawSection";

const depths = {
  scrapeDepthIn: 2.5,
  borderHeightIn: 4,
  trenchDepthIn: 1.5,
  trenchWidthIn: 4,
  topGapIn: 0.5,
  stoneSizeIn: 1.25,
};
const print = drawSection(depths, { widthPx: 720, theme: "light" });
const textsOf = (svg: string) => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text!);

/** Heights of the rectangles of a section, from the sheet on: trench fill, stone, border. */
function heights(svg: string): { fill: number; stone: number; border: number } {
  const height = (marker: RegExp) => {
    const [rect] = [...svg.matchAll(/<rect [^>]*>/g)].map(([tag]) => tag).filter((tag) => marker.test(tag));
    return Number(/ height="([\d.]+)"/.exec(rect!)![1]);
  };
  return { fill: height(/-filled\)/), stone: height(/-stones\)/), border: height(/#6b3410/) };
}

describe("the cross-section", () => {
  it("is well-formed and says in words what it shows", async () => {
    const { svg } = await parseStringPromise(print);
    expect(svg.desc[0]._).toBe(
      'The bed is scraped 2 1/2" below the lawn. Edging 4" high sits in a trench 1 1/2" below that, its top edge ' +
        'level with the lawn. Fabric covers the floor up to the edging; on it is 2" of stone, ending 1/2" ' +
        "below the top edge.",
    );
  });

  it("names every depth", () => {
    const texts = textsOf(print);
    for (const depth of ["edging 4", "scrape 2 1/2", "gap 1/2", "stone 2", "trench 1 1/2"])
      expect(texts).toContain(`${depth}&quot;`);
    for (const layer of ["lawn", "edging", "stone", "fabric"]) expect(texts).toContain(layer);
  });

  it("is to scale", () => {
    const { fill, stone, border } = heights(print);
    expect(stone / border).toBeCloseTo(2 / 4, 3);
    expect(fill / border).toBeCloseTo(1.5 / 4, 3);
  });

  it("says where the border is above or below the lawn", () => {
    expect(drawSection({ ...depths, borderHeightIn: 6 })).toContain("2&quot; above the lawn");
    expect(drawSection({ ...depths, scrapeDepthIn: 3.5 })).toContain("1&quot; below the lawn");
  });

  it("leaves out what is not there", () => {
    const texts = textsOf(drawSection({ ...depths, trenchDepthIn: 0, topGapIn: 0, scrapeDepthIn: 0 })).join();
    expect(texts).not.toMatch(/trench|gap|scrape/);
  });

  it("has no fabric where none is laid", () => {
    const bare = drawSection({ ...depths, hasFabric: false }, { widthPx: 720, theme: "light" });
    expect(textsOf(bare)).not.toContain("fabric");
    expect(bare).not.toContain('"7 2"');
    expect(bare).toContain("There is no fabric; on the ground is 2");
  });

  it("is refused where no depth is left for stone, or a depth is no length", () => {
    expect(() => drawSection({ ...depths, borderHeightIn: 1.5 })).toThrow("leaving no depth for stone");
    expect(() => drawSection({ ...depths, borderHeightIn: Number.NaN })).toThrow("The edging height");
  });
});
