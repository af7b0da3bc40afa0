import { describe, expect, it } from "vitest";
import { partsOf, pathsOf, placedWordsOf } from "../../../test/drawnParts";
import { bareViewOf } from "../../../test/drawnView";
import { byPoints, pad, rectangle } from "../../../test/planBeds";
import type { Bed } from "../bed";
import type { LayoutOptions } from "../options";
import { fabricShapes } from "../shapes";
import { cutNumbers, fabricPart, pinPart } from "./fabricPart";
import type { PlanView } from "./view";

const along = { directionDegrees: 0 };
const bed = rectangle(20, 9);
const soft = "#4a5f6d";
/** A path's corners in any order. */
const cornersOf = (d: string) => d.slice(1, -1).split(/[ML]/).sort();
const numbersOf = (view: PlanView) => cutNumbers(view, fabricShapes(view.layout));
const numberedView = (
  one: Bed,
  options: Partial<LayoutOptions> = along,
  takes: [number, number, number, number][] = [],
) => {
  const view = bareViewOf(one, options);
  for (const [x, y, width, height] of takes) view.labels.take({ center: { x, y }, width, height });
  return view;
};

describe("the fabric in the plan", () => {
  it("is strips in two tones by turns", () => {
    // 9 ft and a roll of 6 ft that laps by 6 in.: strips from 0 to 6 ft and from 5.5 to 9 ft.
    const view = bareViewOf(bed, along);
    const [first, second, doubled] = partsOf(fabricPart(view, fabricShapes(view.layout)), "path").map(
      ({ attributes }) => attributes,
    );
    expect(cornersOf(first!.d!)).toEqual(["100 180", "100 300", "500 180", "500 300"]);
    expect(cornersOf(second!.d!)).toEqual(["100 120", "100 190", "500 120", "500 190"]);
    expect(first).toMatchObject({ fill: "#f1efe6", stroke: soft, "stroke-width": "0.8", "fill-rule": "evenodd" });
    expect(second!.fill).toBe("#dedbcd");
    // What lies double is hatched within a dashed line.
    expect(cornersOf(doubled!.d!)).toEqual(["100 180", "100 190", "500 180", "500 190"]);
    expect(doubled).toMatchObject({
      fill: "url(#bed-overlap)",
      stroke: soft,
      "stroke-width": "0.8",
      "stroke-dasharray": "4 2",
    });
  });

  it("has nothing hatched where nothing overlaps", () => {
    const view = bareViewOf(rectangle(20, 5), along);
    expect(pathsOf(fabricPart(view, fabricShapes(view.layout)))).toHaveLength(1);
  });

  it("of one strip in two parts is of one tone", () => {
    const view = bareViewOf({ ...rectangle(20, 5), cutOuts: [pad(8, 0, 4, 5)] }, along);
    const fills = partsOf(fabricPart(view, fabricShapes(view.layout)), "path").map(({ attributes }) => attributes.fill);
    expect(fills).toEqual(["#f1efe6", "#f1efe6"]);
  });
});

it("draws pins as round dots, one for each", () => {
  const view = bareViewOf(rectangle(4, 4), along);
  const [path, ...others] = partsOf(pinPart(view, 1.5));
  expect(others).toEqual([]);
  expect(path!.attributes).toMatchObject({ stroke: "#15232d", "stroke-width": "3", "stroke-linecap": "round" });
  // Rows 0, 2 and 4 on both edges, rows 1 and 3 midway.
  expect(path!.attributes.d!.split("h0").filter(Boolean).sort()).toEqual(
    ["M100 300", "M100 220", "M120 260", "M140 300", "M140 220", "M160 260", "M180 300", "M180 220"].sort(),
  );
});

describe("the number of a cut", () => {
  it("is in a ring in the middle of its strip, its length beside it", () => {
    const svg = numbersOf(numberedView(bed));
    // The second strip's middle is at 7.25 ft. Its length stands 7.2 + 4 to the right, and half of its width, 13.8/2 = 6.9.
    expect(placedWordsOf(svg)).toEqual(["1 at 300,240", "2 at 300,155", "20' at 318.1,240", "20' at 318.1,155"]);
    expect(partsOf(svg, "circle").map(({ attributes }) => attributes)).toEqual([
      { cx: "300", cy: "240", r: "7.2", fill: "#ffffff", stroke: "#15232d", "stroke-width": "1" },
      { cx: "300", cy: "155", r: "7.2", fill: "#ffffff", stroke: "#15232d", "stroke-width": "1" },
    ]);
    const [number, , length] = partsOf(svg, "text").map(({ attributes }) => attributes);
    expect(number).toMatchObject({ "font-size": "9.2", "font-weight": "bold", fill: "#15232d" });
    expect(length).toMatchObject({ "font-size": "10", fill: "#15232d", stroke: "#ffffff" });
    expect(length!["font-weight"]).toBeUndefined();
    expect(pathsOf(svg)).toEqual([]);
  });

  it("keeps clear of pins where there is room, and of words always", () => {
    const numberAt = (mark: (view: PlanView) => void) => {
      const view = numberedView(rectangle(20, 5));
      mark(view);
      return placedWordsOf(numbersOf(view))[0];
    };
    const middle = { center: { x: 300, y: 250 }, width: 4, height: 4 };
    expect(numberAt(() => {})).toBe("1 at 300,250");
    // At 0.42 of 400 pixels.
    expect(numberAt((view) => view.labels.avoid(middle))).toBe("1 at 268,250");
    expect(numberAt((view) => view.labels.take(middle))).toBe("1 at 268,250");
    // Along the whole middle: 0.38 of 100 pixels up the strip.
    expect(numberAt((view) => view.labels.avoid({ center: { x: 300, y: 250 }, width: 400, height: 2 }))).toBe(
      "1 at 300,262",
    );
    // With pins everywhere it is on them.
    expect(numberAt((view) => view.labels.avoid({ center: { x: 300, y: 250 }, width: 500, height: 140 }))).toBe(
      "1 at 300,250",
    );
  });

  it("has its length on the left, below or above where there is no room on the right, and none where there is none", () => {
    const lengthAt = (...takes: [number, number, number, number][]) =>
      placedWordsOf(numbersOf(numberedView(rectangle(20, 5), along, takes)))[1];
    // Below: 7.2 + 5 + 3.
    expect(lengthAt()).toBe("20' at 318.1,250");
    expect(lengthAt([318, 250, 4, 4])).toBe("20' at 281.9,250");
    expect(lengthAt([318, 250, 4, 4], [282, 250, 4, 4])).toBe("20' at 300,265.2");
    expect(lengthAt([318, 250, 4, 4], [282, 250, 4, 4], [300, 266, 4, 4])).toBe("20' at 300,234.8");
    expect(lengthAt([318, 250, 4, 4], [282, 250, 4, 4], [300, 266, 4, 4], [300, 234, 4, 4])).toBeUndefined();
  });

  it("has its length only within its own fabric", () => {
    // A strip of 2 ft, 40 pixels: 20' reaches from 11.2 to 25 beside the middle, out of it; above and below there is room.
    expect(placedWordsOf(numbersOf(numberedView(rectangle(2, 20), { directionDegrees: 90 })))).toEqual([
      "1 at 120,100",
      "20' at 120,115.2",
    ]);
  });

  it("has lengths nowhere unless most of them have room", () => {
    const strips = (...takes: [number, number, number, number][]) =>
      placedWordsOf(numbersOf(numberedView(bed, along, takes))).filter((words) => words.startsWith("20'"));
    expect(strips()).toHaveLength(2);
    // Around the first number, no place is free: one of two is not most.
    expect(strips([318, 240, 4, 4], [282, 240, 4, 4], [300, 256, 4, 4], [300, 224, 4, 4])).toEqual([]);
  });

  it("is on its own fabric, not in a notch of it", () => {
    // A pad of 4 ft in the middle of a strip of 20 ft: at 0.34 of it there is fabric all around.
    const view = numberedView({ ...rectangle(20, 5), cutOuts: [pad(8, 1, 4, 3)] });
    expect(placedWordsOf(numbersOf(view))[0]).toBe("1 at 236,250");
  });

  it("is on the fabric as it is trimmed", () => {
    // A triangle of 20 by 5 ft: the middle of the strip, is on the long side, and at 0.42 of it the
    // number clears it.
    const wedge = numbersOf(numberedView(byPoints([0, 0], [20, 0], [0, 5])));
    expect(placedWordsOf(wedge)[0]).toBe(`1 at ${Number((100 + 20 * 0.42 * 20).toFixed(2))},250`);
    expect(pathsOf(wedge)).toEqual([]);
    // The same with its point on the left, 3 ft up and to the right: at 0.58 of the strip.
    const turned = numbersOf(numberedView(byPoints([3, 3], [23, 3], [23, 8])));
    expect(placedWordsOf(turned)[0]).toBe(`1 at ${Number((100 + 20 * (23 - 0.42 * 20)).toFixed(2))},190`);
  });

  it("is beside a strip that is too small for it, with a line to a dot on it", () => {
    // A spur of 0.2 ft, 4 pixels, from 5 up to 6.3 ft at the right end: the first strip is 6 ft wide.
    const spur = byPoints([0, 0], [12, 0], [12, 6.3], [11.8, 6.3], [11.8, 5], [0, 5]);
    const svg = numbersOf(numberedView(spur));
    expect(placedWordsOf(svg)[1]).toBe("2 at 364,182");
    // The middle of the second strip's cut, 5.5 to 6.3 ft up, is 11.9 ft along: 338, 182. The number is 26 to its right.
    expect(pathsOf(svg)).toEqual(["M338 182L364 182, #15232d, 0.8"]);
    expect(partsOf(svg, "circle")[1]!.attributes).toEqual({
      cx: "338",
      cy: "182",
      r: "2",
      fill: "#15232d",
      stroke: "#ffffff",
      "stroke-width": "0.5",
    });
    // Where the right is taken, a sixteenth of a turn on: 26 · cos 22.5° and 26 · sin 22.5°, farther down.
    const turned = placedWordsOf(numbersOf(numberedView(spur, along, [[366, 180, 4, 4]])))[1];
    expect(turned).toBe("2 at 362.02,191.95");
    // Where all is taken that near, 36 away; where nothing is free at all, on the strip itself.
    expect(placedWordsOf(numbersOf(numberedView(spur, along, [[338, 182, 44, 44]])))[1]).toBe("2 at 374,182");
    const full: [number, number, number, number] = [338, 182, 400, 200];
    expect(placedWordsOf(numbersOf(numberedView(spur, along, [full])))[1]).toBe("2 at 338,182");
  });
});
