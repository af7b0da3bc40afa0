import { describe, expect, it } from "vitest";
import { partsOf, pathsOf, placedWordsOf, wordsOf } from "../../../test/drawnParts";
import { bareViewOf } from "../../../test/drawnView";
import { pad, points, rectangle } from "../../../test/planBeds";
import type { CutOut } from "../bed";
import { cutOutInWords, cutOutNames, cutOutPart } from "./cutOutPart";

const viewWith = (...cutOuts: CutOut[]) => bareViewOf({ ...rectangle(20, 5), cutOuts });
const named = (cutOut: CutOut, name: string): CutOut => ({ ...cutOut, name });
const circle = (x: number, y: number, diameterFt: number): CutOut => ({ kind: "circle", center: { x, y }, diameterFt });
const rock: CutOut = { kind: "outline", name: "rock", points: points([17, 2], [19, 2], [18, 4]) };
/** Names as drawn, and the letters they got. */
const namesIn = (...cutOuts: CutOut[]) => {
  const { svg, letters } = cutOutNames(viewWith(...cutOuts));
  return { words: placedWordsOf(svg), letters };
};

describe("what stays free in the plan", () => {
  it("is bare paper within a strong line", () => {
    const svg = cutOutPart(viewWith(pad(2, 1, 4, 2), pad(8, 1, 2, 1)));
    expect(partsOf(svg, "g").map(({ attributes }) => attributes)).toEqual([
      { fill: "#ffffff", stroke: "#15232d", "stroke-width": "1.3" },
    ]);
    expect(pathsOf(svg).map((path) => path.split(",")[0])).toEqual([
      "M140 280L140 240L220 240L220 280Z",
      "M260 280L260 260L300 260L300 280Z",
    ]);
  });

  it("has its name in the middle, in one line where it fits and else word by word", () => {
    // A pad of 80 by 40 pixels; "meter pad" at 9.2 is 45 wide.
    expect(namesIn(named(pad(2, 1, 4, 2), "meter pad"))).toEqual({
      words: ["meter pad at 180,260"],
      letters: [undefined],
    });
    // 32 pixels wide, there is room for one word a line: 10.58 from line to line.
    expect(namesIn(named(pad(8, 1, 1.6, 2), "gas valve")).words).toEqual(["gas at 276,254.71", "valve at 276,265.29"]);
    const { svg } = cutOutNames(viewWith(named(pad(2, 1, 4, 2), "meter pad")));
    expect(partsOf(svg)[0]!.attributes).toMatchObject({ "font-size": "9.2", fill: "#15232d" });
  });

  it("has a name as wide as 0.96 of a box or 0.8 of a circle, and as high as 0.9 of it", () => {
    // "rock" at 9.2: (0.36 + 0.56 · 3) · 9.2 = 18.77 wide. 0.96 · 19.6 = 18.8; 0.8 · 23.6 = 18.9. It takes 10.58 · 1 high.
    const fits = (cutOut: CutOut) => namesIn(named(cutOut, "rock")).letters[0] === undefined;
    expect([fits(pad(2, 1, 0.98, 2)), fits(pad(2, 1, 0.97, 2))]).toEqual([true, false]);
    expect([fits(circle(4, 2, 1.18)), fits(circle(4, 2, 1.17))]).toEqual([true, false]);
    // 0.9 · 11.8 = 10.6.
    expect([fits(pad(2, 1, 3, 0.59)), fits(pad(2, 1, 3, 0.58))]).toEqual([true, false]);
  });

  it("has a letter where its name has no room, in it where that has room, else beside it", () => {
    // Of 8 pixels, too small for a letter: 4 and 7 to the left of its middle... to the right first.
    const small = namesIn(named(pad(16, 1, 0.4, 0.4), "post"));
    expect(small).toEqual({ words: ["A at 435,276"], letters: ["A"] });
    // Of 16 pixels: a letter fits, "a long name" does not.
    expect(namesIn(named(pad(16, 1, 0.8, 0.8), "downspout")).words).toEqual(["A at 428,272"]);
    // Letters count only those that need one.
    expect(
      namesIn(
        named(pad(2, 1, 4, 2), "meter pad"),
        named(pad(8, 1, 0.8, 0.8), "downspout"),
        named(circle(14, 2, 0.8), "post"),
      ).letters,
    ).toEqual([undefined, "A", "B"]);
  });

  it("has its letter to the right, the left, above or below, wherever there is room", () => {
    const letterAt = (...taken: [number, number][]) => {
      const view = viewWith(named(pad(16, 1, 0.4, 0.4), "post"));
      for (const [x, y] of taken) view.labels.take({ center: { x, y }, width: 2, height: 2 });
      return placedWordsOf(cutOutNames(view).svg)[0];
    };
    expect(letterAt()).toBe("A at 435,276");
    expect(letterAt([435, 276])).toBe("A at 413,276");
    expect(letterAt([435, 276], [413, 276])).toBe("A at 424,265");
    expect(letterAt([435, 276], [413, 276], [424, 265])).toBe("A at 424,287");
    expect(letterAt([435, 276], [413, 276], [424, 265], [424, 287])).toBeUndefined();
  });

  it("has its name give way to what is drawn there, and keeps others off it", () => {
    const view = viewWith(named(pad(2, 1, 4, 2), "meter pad"));
    view.labels.take({ center: { x: 180, y: 260 }, width: 4, height: 2 });
    // Word by word it would be on the same place; its letter finds none within, and is beside.
    expect(cutOutNames(view).letters).toEqual(["A"]);
    const free = viewWith(named(pad(2, 1, 4, 2), "meter pad"));
    cutOutNames(free);
    expect(free.labels.isFree({ center: { x: 180, y: 260 }, width: 4, height: 4 })).toBe(false);
  });

  it("has letters from A to Z, then A2", () => {
    const posts = Array.from({ length: 28 }, (_, i) =>
      named(pad(0.5 + 1.3 * (i % 14), 1 + 2 * Math.floor(i / 14), 0.4, 0.4), "post"),
    );
    const { letters } = namesIn(...posts);
    expect([letters[0], letters[25], letters[26], letters[27]]).toEqual(["A", "Z", "A2", "B2"]);
  });

  it("is written in ink, the letter bold with a rim of paper", () => {
    const [letter] = partsOf(cutOutNames(viewWith(named(pad(16, 1, 0.4, 0.4), "post"))).svg);
    expect(letter!.attributes).toMatchObject({
      fill: "#15232d",
      "font-weight": "bold",
      "font-size": "10",
      stroke: "#ffffff",
    });
  });
});

describe("what stays free, in words", () => {
  const said = (cutOut: CutOut, letter?: string) =>
    cutOutInWords(viewWith(cutOut).layout.outline.cutOuts[0]!, letter).replaceAll("\u00a0", " ");

  it.each<[CutOut, string]>([
    [named(pad(2, 1, 4, 2), "meter pad"), "meter pad: 4' along x by 2', near corner at x 2', y 1'"],
    [named(circle(13, 2.5, 2), "birch"), `birch: 2' across, center at x 13', y 2' 6"`],
    [rock, "rock: corners at x 17', y 2'; x 18', y 4'; x 19', y 2'"],
    [
      // A square on its corner has its four corners midway along its bounds. Corners are told clockwise.
      { kind: "outline", name: "slab", points: points([5, 1], [6, 2], [5, 3], [4, 2]) },
      "slab: corners at x 5', y 1'; x 4', y 2'; x 5', y 3'; x 6', y 2'",
    ],
    [
      // Two sides level and two slanting.
      { kind: "outline", name: "slab", points: points([4, 1], [7, 1], [6, 2], [5, 2]) },
      "slab: corners at x 4', y 1'; x 5', y 2'; x 6', y 2'; x 7', y 1'",
    ],
    [
      // Five corners, four of them those of its bounds.
      { kind: "outline", name: "slab", points: points([4, 1], [6, 1], [7, 1], [7, 2], [4, 2]) },
      "slab: corners at x 4', y 1'; x 4', y 2'; x 7', y 2'; x 7', y 1'; x 6', y 1'",
    ],
  ])("%j", (cutOut, expected) => {
    expect(said(cutOut)).toBe(expected);
    expect(said(cutOut, "B")).toBe(`B ${expected}`);
  });

  it("keeps each coordinate on one line with its letter", () => {
    expect(cutOutInWords(viewWith(pad(2, 1, 4, 2)).layout.outline.cutOuts[0]!, undefined)).toContain(
      "x\u00a02', y\u00a01'",
    );
  });
});

it("writes no name where nothing stays free", () => {
  expect(cutOutNames(viewWith())).toEqual({ svg: "", letters: [] });
  expect(wordsOf(cutOutPart(viewWith()))).toEqual([]);
});
