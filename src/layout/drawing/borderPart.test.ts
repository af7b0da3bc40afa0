import { describe, expect, it } from "vitest";
import { partsOf, pathsOf, placedWordsOf } from "../../../test/drawnParts";
import { bareViewOf, viewOf } from "../../../test/drawnView";
import { byPoints, rectangle } from "../../../test/planBeds";
import type { Bed } from "../bed";
import { borderMarks, borderPart, borderRound, nameOf, pieceNames, stakeMark } from "./borderPart";

const bed = rectangle(20, 5);
const light = { paper: "#ffffff", ink: "#15232d", border: "#6b3410" };

describe("the border of a bed of 20 by 5 ft", () => {
  it("is a band 4 wide, 2.5 from the edge: two wide lines along it, of which the bed hides the inner half", () => {
    // Joints at 3, 11 and 19 ft along the front, where a piece ends and the next begins.
    const front = "M100 300L100 200L160 200L160 200L320 200L320 200L480 200L480 200L500 200L500 300";
    const house = "M100 300L500 300";
    const parts = pathsOf(borderPart(viewOf(bed)));
    expect(parts).toEqual([
      `${front}, ${light.border}, 13`,
      `${front}, ${light.paper}, 5`,
      `${house}, ${light.paper}, 13`,
      `${house}, url(#bed-wall), 13`,
    ]);
    for (const { attributes } of partsOf(borderPart(viewOf(bed)), "path"))
      expect(attributes["stroke-linejoin"]).toBe("round");
  });

  it("is closed around all sides, and hatched nowhere", () => {
    const [band, ...others] = pathsOf(borderPart(viewOf({ ...bed, borderSides: [1, 2, 3, 4] })));
    expect(band).toMatch(/^M100 300L100 200.*L100 300Z, #6b3410, 13$/);
    expect(others).toHaveLength(1);
  });

  it("leaves sides that follow one another open in one stretch", () => {
    const hatched = (borderSides: number[]) =>
      pathsOf(borderPart(viewOf({ ...bed, borderSides })))
        .filter((path) => path.includes("wall"))
        .map((path) => path.split(",")[0]);
    expect(hatched([3])).toEqual(["M100 200L100 300L500 300L500 200"]);
    expect(hatched([2])).toEqual(["M500 200L100 200L100 300L500 300"]);
    expect(hatched([1, 3])).toEqual(["M500 300L500 200", "M100 200L100 300"]);
    expect(hatched([1])).toEqual(["M500 300L500 200L100 200L100 300"]);
    expect(hatched([1, 2, 4])).toEqual(["M500 200L100 200"]);
    expect(pathsOf(borderPart(bareViewOf({ ...bed, borderSides: [] })))[1]).toMatch(
      /^M100 300L500 300L500 200L100 200L100 300,/,
    );
  });

  it("keeps labels off its bands", () => {
    const view = viewOf(bed);
    borderPart(view);
    const label = (x: number, y: number) => view.labels.isFree({ center: { x, y }, width: 4, height: 4 });
    // Bands take 4 on either side of the edge: along the house, up the left side, along the front.
    expect([label(300, 305), label(300, 295), label(300, 307), label(300, 293)]).toEqual([false, false, true, true]);
    expect([label(105, 250), label(107, 250), label(320, 205), label(320, 207)]).toEqual([false, true, false, true]);
  });

  it("has a gap in the band at each joint", () => {
    const gaps = pathsOf(borderMarks(viewOf(bed))).filter((path) => path.endsWith(`${light.paper}, 2`));
    // From 2 to 7 out of the edge at y = 200.
    expect(gaps).toEqual([160, 320, 480].map((x) => `M${x} 198L${x} 193, ${light.paper}, 2`));
  });

  it("has a stake 10.5 out wherever one stands, filled and on its corner at a joint", () => {
    const stakes = partsOf(borderMarks(viewOf(bed)), "path").filter(
      ({ attributes }) => attributes["stroke-width"] === "1.1",
    );
    const middles = stakes.map(({ attributes: { d, fill } }) => {
      const [x, y] = /^M(\S+) (\S+?)[hL]/.exec(d!)!.slice(1).map(Number);
      // A diamond begins at its top, a square at its upper left corner.
      return fill === light.ink
        ? `joint ${x},${y! + 4}`
        : `${Math.round((x! + 2.4) * 10) / 10},${Math.round((y! + 2.4) * 10) / 10}`;
    });
    expect(middles).toEqual([
      "89.5,300",
      "89.5,220",
      "89.5,189.5",
      "joint 160,189.5",
      "240,189.5",
      "joint 320,189.5",
      "400,189.5",
      "joint 480,189.5",
      "510.5,189.5",
      "510.5,240",
      "510.5,300",
    ]);
    for (const { attributes } of stakes) expect(attributes.stroke).toBe(light.ink);
  });

  it("keeps labels off its stakes", () => {
    const view = viewOf(bed);
    borderMarks(view);
    const label = (x: number, y: number) => view.labels.isFree({ center: { x, y }, width: 2, height: 2 });
    expect([label(240, 185), label(240, 184), label(245.5, 189.5), label(244.5, 189.5)]).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });

  it("names each piece beside its middle, beyond the stakes", () => {
    expect(nameOf(12)).toBe("P12");
    // Piece 1 runs up 5 ft and on 3 ft: its middle is 4 ft up. The stakes reach to 10.5, and 5 more are left; a name is
    // 16.6 wide with its room and 10 high.
    expect(placedWordsOf(pieceNames(viewOf(bed)))).toEqual([
      "P1 at 76.2,220",
      "P2 at 240,179.5",
      "P3 at 400,179.5",
      "P4 at 523.8,240",
    ]);
    for (const { attributes } of partsOf(pieceNames(viewOf(bed))))
      expect([attributes.fill, attributes["font-weight"]]).toEqual([light.border, "bold"]);
  });

  it("names a piece farther along, or within the bed, where its middle is taken", () => {
    const view = viewOf({ ...bed, borderSides: [3] });
    // 20 ft along the front: 8, 8 and 4 ft. Beside the middle of the first, at 4 ft, something else stands.
    view.labels.take({ center: { x: 180, y: 180 }, width: 12, height: 4 });
    // Above the second, everything is taken.
    view.labels.take({ center: { x: 340, y: 150 }, width: 190, height: 99 });
    expect(placedWordsOf(pieceNames(view))).toEqual(["P1 at 157.6,179.5", "P2 at 340,211", "P3 at 460,179.5"]);
  });
});

describe("border around a cut-out", () => {
  const post = {
    kind: "outline" as const,
    points: [
      { x: 8, y: 1 },
      { x: 12, y: 1 },
      { x: 12, y: 3 },
      { x: 8, y: 3 },
    ],
    border: true,
  };
  const view = viewOf({ ...bed, cutOuts: [{ kind: "circle", center: { x: 4, y: 2 }, diameterFt: 1 }, post] });

  it("is drawn over it and cut off at its edge, so that the half within it shows", () => {
    const svg = borderRound(view);
    expect(svg).toMatch(/^<clipPath id="bed-free-2"><path d="M260 280L260 240L340 240L340 280Z"\/><\/clipPath>/);
    expect(partsOf(svg, "g").map(({ attributes }) => attributes)).toEqual([{ "clip-path": "url(#bed-free-2)" }]);
    const [clip, band, gap, ...others] = pathsOf(svg);
    expect(others).toEqual([]);
    expect(clip).toContain("undefined");
    // The bed lies to its right: from 8, 1 along the near side to 12, 1 and on around it.
    expect(band).toMatch(/^M260 280L340 280L340 240.*Z, #6b3410, 13$/);
    expect(gap).toMatch(/, #ffffff, 5$/);
  });

  it("is no part of the outer band, whose pieces are counted first", () => {
    expect(pathsOf(borderPart(view))).toHaveLength(4);
    // 12 ft around it take two pieces.
    expect(placedWordsOf(pieceNames(view)).map((name) => name.split(" ")[0])).toEqual([
      "P1",
      "P2",
      "P3",
      "P4",
      "P5",
      "P6",
    ]);
    expect(borderRound(viewOf(bed))).toBe("");
  });
});

it("draws a stake as a hollow square, and filled on its corner through a joint", () => {
  expect(stakeMark({ x: 10, y: 20 }, false, "#111111", "#eeeeee")).toBe(
    '<path d="M7.6 17.6h4.8v4.8h-4.8Z" fill="#eeeeee" stroke="#111111" stroke-width="1.1"/>',
  );
  expect(stakeMark({ x: 10.25, y: 20 }, true, "#111111", "#eeeeee")).toBe(
    '<path d="M10.3 16L14.3 20L10.3 24L6.3 20Z" fill="#111111" stroke="#111111" stroke-width="1.1"/>',
  );
  expect(stakeMark({ x: -10, y: 20 }, false, "#111111", "#eeeeee")).toContain('d="M-12.4 17.6h4.8');
});

it("names a piece around a corner halfway along it, not halfway across", () => {
  // A triangle of 9, 12 and 15 ft with border all around, in pieces of 8 ft from 0, 0 up: the second turns the top corner.
  const view = viewOf(byPoints([0, 0], [12, 0], [0, 9]) as Bed);
  const names = placedWordsOf(pieceNames(view));
  expect(names).toHaveLength(5);
  // Piece 1 runs up the left side from 0 to 8 ft.
  expect(names[0]).toBe("P1 at 76.2,220");
});
