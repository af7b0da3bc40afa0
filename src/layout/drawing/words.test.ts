import { describe, expect, it } from "vitest";
import { partsOf, wordsOf } from "../../../test/drawnParts";
import { paragraphs, wrapped } from "./flow";
import { Pen } from "./pen";
import { coordinate, countOf, cutLength, inches, taped } from "./words";

describe("lengths in words", () => {
  it("are taped to the nearest quarter of an inch", () => {
    // 3.28 ft is 3' 3.36", nearer to 1/4 than to 1/2; 3.29 ft is 3' 3.48".
    expect([18.5, 3.28, 3.29, 0.5, 2].map(taped)).toEqual([`18' 6"`, `3' 3 1/4"`, `3' 3 1/2"`, `6"`, "2'"]);
  });

  it("of fabric are cut up to the next half inch", () => {
    expect([10 + 2 / 12, 10.17, 10.24, 20, 8 + 1e-9].map(cutLength)).toEqual([
      `10' 2"`,
      `10' 2 1/2"`,
      `10' 3"`,
      "20'",
      "8'",
    ]);
  });

  it("from the zero point are a plain 0 there", () => {
    expect([0, 0.01, -0.01, 0.011, 4, -2.5].map(coordinate)).toEqual(["0", "0", "0", '1/4"', "4'", `-2' 6"`]);
  });

  it("of laps are inches", () => {
    expect([0.5, 1 / 12, 0.1041666667].map(inches)).toEqual(['6"', '1"', '1.25"']);
  });

  it("are counted as one or many", () => {
    expect([countOf(1, "pin"), countOf(2, "pin"), countOf(0, "cut"), countOf(3, "foot", "feet")]).toEqual([
      "1 pin",
      "2 pins",
      "0 cuts",
      "3 feet",
    ]);
  });
});

describe("text in lines", () => {
  it("breaks between items, and within one only where it is too long by itself", () => {
    // At 10 pixels, "aaaa" is 22.4 wide, and the mark between two items 9.8.
    expect(wrapped(["aaaa", "bbbb", "cccc"], 54.7, 10)).toEqual(["aaaa · bbbb", "cccc"]);
    expect(wrapped(["aaaa", "bbbb", "cccc"], 54.5, 10)).toEqual(["aaaa", "bbbb", "cccc"]);
    expect(wrapped(["aaaa", "bbbb cccc dddd eeee", "ffff"], 60, 10)).toEqual([
      "aaaa · bbbb",
      "cccc dddd",
      "eeee · ffff",
    ]);
    expect(wrapped([], 60, 10)).toEqual([]);
    expect(wrapped(["wwwwwwwwwwww"], 60, 10)).toEqual(["wwwwwwwwwwww"]);
  });

  it("is in paragraphs under their headings, 1.4 of the text's size from line to line", () => {
    const pen = new Pen("bed", "light", 10);
    const texts = [
      { heading: "Pins", items: ["aaaa", "bbbb"] },
      { heading: "Fabric", items: ["cccc", "dddd"], stacked: true },
      { heading: "None", items: [] },
    ];
    const { svg, height } = paragraphs(pen, texts, 8, 100, 300);
    // The first line's middle is 7 below the top; a paragraph ends with 0.35 of a line.
    const lines: [string, number, boolean][] = [
      ["Pins", 107, true],
      ["aaaa · bbbb", 121, false],
      ["Fabric", 139.9, true],
      ["cccc", 153.9, false],
      ["dddd", 167.9, false],
      ["None", 186.8, true],
    ];
    expect(
      partsOf(svg).map(({ text, attributes }) => [text, attributes.x, Number(attributes.y), attributes["font-weight"]]),
    ).toEqual(
      lines.map(([text, middle, bold]) => [text, "8", expect.closeTo(middle + 3.6, 6), bold ? "bold" : undefined]),
    );
    expect(
      partsOf(svg).every(
        ({ attributes }) => attributes["font-size"] === "10" && attributes["text-anchor"] === undefined,
      ),
    ).toBe(true);
    // Six lines and three gaps.
    expect(height).toBeCloseTo(6 * 14 + 3 * 4.9, 9);
  });

  it("wraps stacked items one by one", () => {
    const pen = new Pen("bed", "light", 10);
    const { svg } = paragraphs(pen, [{ heading: "Notes", items: ["aaaa bbbb cccc", "dddd"], stacked: true }], 8, 0, 60);
    expect(wordsOf(svg)).toEqual(["Notes", "aaaa bbbb", "cccc", "dddd"]);
  });
});
