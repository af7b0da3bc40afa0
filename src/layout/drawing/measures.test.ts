import { describe, expect, it } from "vitest";
import { partsOf, pathsOf, placedWordsOf, wordsOf } from "../../../test/drawnParts";
import { bareViewOf, viewOf } from "../../../test/drawnView";
import { byPoints, lShape, rectangle } from "../../../test/planBeds";
import type { Bed } from "../bed";
import { besideLabel, dimension, firstLabel } from "./dimensions";
import { marginsFor, measures } from "./measures";

const soft = "#4a5f6d";
const hundredth = (value: number) => Number(value.toFixed(2));
const widths = (spacingFt: number, ...widthsFt: number[]): Bed => ({ kind: "widths", spacingFt, widthsFt });

describe("a dimension", () => {
  // From 100, 300 to 500, 300 on the sheet, 38 below it.
  const view = bareViewOf(rectangle(20, 5));
  const svg = dimension(view, { x: 0, y: 0 }, { x: 20, y: 0 }, { x: 0, y: -1 }, 38, "20'");

  it("has thin lines from 3 beyond the points to 3 beyond its line, and slanting strokes at its ends", () => {
    expect(pathsOf(svg)).toEqual([
      `M100 303L100 341, ${soft}, 0.5`,
      `M500 303L500 341, ${soft}, 0.5`,
      `M100 338L500 338, ${soft}, 0.8`,
      `M97 335L103 341, ${soft}, 1.2`,
      `M497 335L503 341, ${soft}, 1.2`,
    ]);
    expect(placedWordsOf(svg)).toEqual(["20' at 300,345.5"]);
    expect(partsOf(svg, "text")[0]!.attributes).toMatchObject({ fill: soft, "paint-order": "stroke" });
  });

  it("keeps other labels off its words, its line, and the thin lines", () => {
    const isFree = (x: number, y: number) => view.labels.isFree({ center: { x, y }, width: 2, height: 2 });
    // Its words are 10 high and 13.8 wide; below them it is free again. Its line takes 5, the thin lines 2.
    expect([isFree(300, 349), isFree(300, 352), isFree(292, 347), isFree(308, 347)]).toEqual([false, true, true, true]);
    expect([isFree(150, 340), isFree(150, 342), isFree(150, 336), isFree(150, 334)]).toEqual([
      false,
      true,
      false,
      true,
    ]);
    expect([isFree(101, 305), isFree(103, 305), isFree(499, 320), isFree(497, 320), isFree(100, 298)]).toEqual([
      false,
      true,
      false,
      true,
      true,
    ]);
  });

  it("beside an upright side is read from the right", () => {
    const upright = dimension(bareViewOf(rectangle(20, 5)), { x: 0, y: 0 }, { x: 0, y: 5 }, { x: -1, y: 0 }, 38, "5'");
    expect(pathsOf(upright)).toEqual([
      `M97 300L59 300, ${soft}, 0.5`,
      `M97 200L59 200, ${soft}, 0.5`,
      `M62 300L62 200, ${soft}, 0.8`,
      `M65 303L59 297, ${soft}, 1.2`,
      `M65 203L59 197, ${soft}, 1.2`,
    ]);
    expect(placedWordsOf(upright)).toEqual(["5' at 54.5,250 turned -90"]);
  });
});

describe("a label beside a place", () => {
  // "5'" is 8.2 wide and gets 4 more; the place is at 100, 300 on the sheet.
  const place = { x: 0, y: 0 };
  const label = (out: { x: number; y: number }, gaps: number[], turn = 0, taken?: [number, number]) => {
    const view = bareViewOf(rectangle(20, 5));
    if (taken) view.labels.take({ center: { x: taken[0], y: taken[1] }, width: 4, height: 4 });
    return placedWordsOf(besideLabel(view, place, out, gaps, "5'", { turn }))[0];
  };

  it.each([
    ["below", { x: 0, y: -1 }, 0, "5' at 100,313"],
    ["above", { x: 0, y: 1 }, 0, "5' at 100,287"],
    ["to the right", { x: 1, y: 0 }, 0, "5' at 114.1,300"],
    ["to the left", { x: -1, y: 0 }, 0, "5' at 85.9,300"],
    // Turned upright it is 10 wide and 12.2 high.
    ["below, turned", { x: 0, y: -1 }, -90, "5' at 100,314.1 turned -90"],
    ["to the right, turned", { x: 1, y: 0 }, -90, "5' at 113,300 turned -90"],
    // Along (0.6, 0.8) it reaches 0.6 · 6.1 + 0.8 · 5 = 7.66; so 15.66 out.
    ["aslant", { x: 0.6, y: 0.8 }, 0, "5' at 109.4,287.47"],
  ])("%s leaves the gap of 8 between the two", (_, out, turn, expected) => {
    expect(label(out, [8], turn)).toBe(expected);
  });

  it("on the near side, with a gap below 0, stands as far the other way", () => {
    expect(label({ x: 0, y: -1 }, [-8])).toBe("5' at 100,287");
    expect(label({ x: 1, y: 0 }, [-8])).toBe("5' at 85.9,300");
  });

  it("takes the first gap with room, or is left out", () => {
    expect(label({ x: 0, y: -1 }, [8, 20], 0, [100, 315])).toBe("5' at 100,325");
    expect(label({ x: 0, y: -1 }, [8, 10], 0, [100, 315])).toBeUndefined();
  });

  it("is in the second color and plain unless told otherwise", () => {
    const view = bareViewOf(rectangle(20, 5));
    const [plain] = partsOf(firstLabel(view, [{ place, out: { x: 1, y: 0 }, gap: 8 }], "a"));
    expect(plain!.attributes).toMatchObject({ fill: soft, "font-size": "10", stroke: "#ffffff" });
    expect(plain!.attributes["font-weight"]).toBeUndefined();
    const spots = [{ place, out: { x: 1, y: 0 }, gap: 40 }];
    const [strong] = partsOf(firstLabel(view, spots, "a", { bold: true, color: "#123456" }));
    expect(strong!.attributes).toMatchObject({ fill: "#123456", "font-weight": "bold" });
  });
});

describe("the measures of a rectangle", () => {
  it("are its length below and its width on the left", () => {
    expect(placedWordsOf(measures(viewOf(rectangle(20, 5))))).toEqual([
      "20' at 300,345.5",
      "5' at 54.5,250 turned -90",
    ]);
  });

  it("are the radius of each rounded corner, from the center to swing the tape around", () => {
    const svg = measures(viewOf({ kind: "rectangle", lengthFt: 20, widthFt: 5, cornerRadiusFt: 2, roundedCorners: 2 }));
    expect(wordsOf(svg)).toEqual(["20'", "5'", "R 2'", "R 2'"]);
    const [, , , , , , , , , , ...marks] = pathsOf(svg);
    // The right corner is first on the way around; its center is at 18, 3 ft, the middle of its arc √2 ft out either way.
    expect(marks.slice(0, 3)).toEqual([
      `M460 240L488.28 211.72, ${soft}, 0.8`,
      `M457 240L463 240, ${soft}, 1.2`,
      `M460 237L460 243, ${soft}, 1.2`,
    ]);
    expect(marks.slice(3)[0]).toBe(`M140 240L111.72 211.72, ${soft}, 0.8`);
    // Its words stand 5 past the center, where "R 2'", 22.8 by 10 with its room, reaches (11.4 + 5)/√2 farther.
    const out = 5 / Math.SQRT2 + (11.4 + 5 + 0) / 2;
    expect(placedWordsOf(svg)[3]).toBe(`R 2' at ${hundredth(140 + out)},${hundredth(240 + out)}`);
  });

  it("has the radius beyond the border where there is no room within the bed", () => {
    const view = viewOf({ kind: "rectangle", lengthFt: 20, widthFt: 5, cornerRadiusFt: 2, roundedCorners: 1 });
    view.labels.take({ center: { x: 160, y: 260 }, width: 60, height: 60 });
    const [, , radius] = placedWordsOf(measures(view));
    // 16 out of the middle of the arc at 111.72, 211.72, up and to the left.
    const out = 16 / Math.SQRT2 + (11.4 + 5) / 2;
    expect(radius).toBe(`R 2' at ${hundredth(111.716 - out)},${hundredth(211.716 - out)}`);
  });
});

describe("the measures of a round bed", () => {
  it("are its diameter below it", () => {
    // From −4.5 to 4.5 ft, its lowest point 4.5 ft below the zero point: 300 + 90 + 38 + 7.5.
    const svg = measures(bareViewOf({ kind: "round", diameterFt: 9 }));
    expect(placedWordsOf(svg)).toEqual(["9' across at 100,435.5"]);
    expect(pathsOf(svg)[2]).toBe(`M10 428L190 428, ${soft}, 0.8`);
  });
});

describe("the measures of a bed taped by widths", () => {
  it("are a dotted line up each width, its place below and its length above", () => {
    const svg = measures(bareViewOf(widths(4, 0, 5, 3)));
    expect(placedWordsOf(svg)).toEqual([
      "0 at 100,321",
      "4' at 180,321",
      "5' at 180,179",
      "8' at 260,321",
      "3' at 260,219",
    ]);
    expect(pathsOf(svg)).toEqual([
      `M100 308L100 314, ${soft}, 1.2`,
      `M180 308L180 314, ${soft}, 1.2`,
      `M180 300L180 184, ${soft}, 0.8`,
      `M260 308L260 314, ${soft}, 1.2`,
      `M260 300L260 224, ${soft}, 0.8`,
    ]);
    const dashes = partsOf(svg, "path").map(({ attributes }) => attributes["stroke-dasharray"]);
    expect(dashes).toEqual([undefined, undefined, "1 2.5", undefined, "1 2.5"]);
    const bold = partsOf(svg, "text").map(({ attributes }) => attributes["font-weight"]);
    expect(bold).toEqual([undefined, undefined, "bold", undefined, "bold"]);
  });

  it("have their lengths upright where they stand closer than 42 on the sheet", () => {
    const turns = (spacingFt: number) =>
      placedWordsOf(measures(bareViewOf(widths(spacingFt, 3, 5, 3)))).filter((words) => words.includes("turned"));
    expect(turns(2)).toEqual([
      "3' at 100,217.9 turned -90",
      "5' at 140,177.9 turned -90",
      "3' at 180,217.9 turned -90",
    ]);
    expect(turns(2.2)).toEqual([]);
  });

  it("have a length farther up, or upright, where something is in its way", () => {
    const view = bareViewOf(widths(4, 3, 5));
    view.labels.take({ center: { x: 100, y: 220 }, width: 30, height: 8 });
    // 16 out is taken; 24 out is not: 240 − 24 − 5.
    expect(placedWordsOf(measures(view))).toContain("3' at 100,211");
    const narrow = bareViewOf(widths(4, 3, 5));
    // Room for no more than 11 across, as far up as lengths go.
    narrow.labels.take({ center: { x: 91, y: 200 }, width: 7, height: 80 });
    narrow.labels.take({ center: { x: 109, y: 200 }, width: 7, height: 80 });
    expect(placedWordsOf(measures(narrow))).toContain("3' at 100,217.9 turned -90");
  });
});

describe("the measures of a bed given by points", () => {
  it("are each corner's number, away from its two sides, and each side's length beside its middle", () => {
    // A triangle of 6, 8 and 10 ft walked clockwise: side 3 along the base line, side 2 the long one.
    const svg = measures(bareViewOf(byPoints([0, 0], [0, 6], [8, 0])));
    const [first, second, third, ...lengths] = placedWordsOf(svg);
    // "1" is 9.6 by 10 with its room, its corner at 100, 300 on the sheet: 8 out, and (4.8 + 5)/√2 more.
    const out = 8 / Math.SQRT2 + 9.8 / 2;
    expect(first).toBe(`1 at ${hundredth(100 - out)},${hundredth(300 + out)}`);
    // Up the left side and down the long one, 0.8 along and 0.6 down: the ways out are (−1, 0) and (0.6, 0.8).
    const length = Math.sqrt(0.4 ** 2 + 0.8 ** 2);
    const up = { x: -0.4 / length, y: 0.8 / length };
    const reach = 8 + 4.8 * -up.x + 5 * up.y;
    expect(second).toBe(`2 at ${hundredth(100 + up.x * reach)},${hundredth(180 - up.y * reach)}`);
    expect(third).toMatch(/^3 at 27\d/);
    expect(lengths).toEqual(["8' at 180,321", "10' at 192.6,223.2 turned 36.87", "6' at 79,240 turned -90"]);
    const styles = partsOf(svg, "text").map(({ attributes }) => `${attributes.fill} ${attributes["font-weight"]}`);
    expect(styles).toEqual([...Array(3).fill("#15232d bold"), ...Array(3).fill(`${soft} bold`)]);
  });

  it("are the same walked the other way, by its own numbers", () => {
    const counter = measures(bareViewOf(byPoints([0, 0], [8, 0], [0, 6])));
    const clockwise = measures(bareViewOf(byPoints([0, 0], [0, 6], [8, 0])));
    const place = (svg: string, number: string) =>
      placedWordsOf(svg)
        .find((words) => words.startsWith(`${number} at`))!
        .slice(2);
    expect([place(counter, "1"), place(counter, "2"), place(counter, "3")]).toEqual([
      place(clockwise, "1"),
      place(clockwise, "3"),
      place(clockwise, "2"),
    ]);
  });

  it("number the points as typed, repeats left out, and lie outside at an inner corner, too", () => {
    const svg = measures(bareViewOf(byPoints([0, 0], [20, 0], [20, 0], [20, 6], [8, 6], [8, 12], [0, 12], [0, 0])));
    const words = placedWordsOf(svg);
    expect(words.slice(0, 6).map((word) => word[0])).toEqual(["1", "2", "3", "4", "5", "6"]);
    // The inner corner at 8, 6 is at 260, 180 on the sheet; out of the bed is up and to the right.
    const out = 8 / Math.SQRT2 + 9.8 / 2;
    expect(words[3]).toBe(`4 at ${hundredth(260 + out)},${hundredth(180 - out)}`);
  });

  it("leave out the length of a side that is shorter than its words", () => {
    // A corner cut off by 0.7 ft, 14 pixels: "8 1/2"", is 27 wide.
    const svg = measures(bareViewOf(byPoints([0, 0], [9.5, 0], [10, 0.5], [10, 6], [0, 6])));
    expect(wordsOf(svg).slice(5)).toEqual([`9' 6"`, `5' 6"`, "10'", "6'"]);
  });

  it("move a length along its side where the middle is taken, then farther out", () => {
    const view = bareViewOf(byPoints([0, 0], [10, 0], [10, 6], [0, 6]));
    view.labels.take({ center: { x: 200, y: 321 }, width: 20, height: 4 });
    // At 0.4 of 200 pixels.
    expect(placedWordsOf(measures(view))).toContain("10' at 180,321");
    const full = bareViewOf(byPoints([0, 0], [10, 0], [10, 6], [0, 6]));
    full.labels.take({ center: { x: 200, y: 318 }, width: 200, height: 4 });
    // 16 out the words would begin at 316; 23 out they begin at 323.
    expect(placedWordsOf(measures(full))).toContain("10' at 200,328");
  });
});

describe("the room around a bed", () => {
  // Text of 10 takes lines of 15. The names of pieces, "P9", are 12.6 wide: 16 out to them and 6 beyond, 34.6.
  it.each<[string, Bed, object]>([
    ["a rectangle, dimensions on the left and below", rectangle(20, 5), { left: 53, right: 34.6, top: 30, bottom: 53 }],
    [
      "a round bed, a dimension below",
      { kind: "round", diameterFt: 9 },
      { left: 34.6, right: 34.6, top: 30, bottom: 53 },
    ],
    // 350 − 2 · 34.6 pixels for 8 ft are 35.1 a foot: 4 ft are not close, 1 ft is.
    ["widths", widths(4, 3, 5, 3), { left: 34.6, right: 34.6, top: 40, bottom: 45 }],
    ["widths closer than 42", widths(1, ...Array<number>(9).fill(3)), { left: 34.6, right: 34.6, top: 70, bottom: 45 }],
    // 280.8 pixels over 6 ft are 46.8 a foot; over 7 ft 40.1.
    [
      "widths a little farther",
      widths(1, ...Array<number>(7).fill(3)),
      { left: 34.6, right: 34.6, top: 40, bottom: 45 },
    ],
    [
      "widths a little closer",
      widths(1, ...Array<number>(8).fill(3)),
      { left: 34.6, right: 34.6, top: 70, bottom: 45 },
    ],
    ["points", lShape, { left: 34.6, right: 34.6, top: 45, bottom: 45 }],
  ])("is left for the measures of %s", (_, bed, expected) => {
    const { layout, pen } = viewOf(bed);
    const margins = marginsFor(layout, pen, 350);
    expect(margins).toEqual(
      Object.fromEntries(Object.entries(expected).map(([side, room]) => [side, expect.closeTo(room, 9)])),
    );
  });

  it("is wider where more than nine pieces are named", () => {
    // "P10" is 5.6 wider.
    const { layout, pen } = viewOf(rectangle(70, 5));
    expect(layout.counts.pieces).toBe(10);
    expect(marginsFor(layout, pen, 350).right).toBeCloseTo(40.2, 9);
  });
});
