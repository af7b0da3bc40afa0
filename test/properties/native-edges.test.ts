import { afterAll, beforeAll, expect, test } from "vitest";
import type { HeadlessHost } from "../headlessHost";
import type { TriedCall, Typed } from "../nativeCases";
import { type Compared, compare } from "../nativeSheet";
import { createProductHost } from "../productHost";

/** A call with each argument in a cell, or in cells below one another where it is a list. */
function call(id: string, ...given: (Typed | undefined | readonly (Typed | readonly Typed[])[])[]): TriedCall {
  return {
    id,
    given: given.map((one) => {
      if (one === undefined) return { kind: "left out" };
      const rows = Array.isArray(one) ? one.map((row) => (Array.isArray(row) ? row : [row])) : [[one as Typed]];
      return { kind: "cells", rows, around: "@" };
    }),
  };
}

const ERROR = "an error";

/** Edges with the answer worked by hand from the published rule; the tolerance of whole things is 1e-9 of the count. */
const edges: readonly (readonly [what: string, tried: TriedCall, answer: number | typeof ERROR])[] = [
  ["an exact fit is not bumped: 0.3 in steps of 0.1", call("ORDER_UP", 0.3, 0.1), 0.3],
  ["half the tolerance over a fit is the fit", call("ORDER_UP", 7 * (1 + 0.5e-9), 1), 7],
  ["twice the tolerance over a fit is one more", call("ORDER_UP", 7 * (1 + 2e-9), 1), 8],
  ["twice the tolerance under one is one", call("ORDER_UP", 1 - 2e-9, 1), 1],
  ["nothing is ordered for nothing, minimum or not", call("ORDER_UP", 0, 0.5, 3), 0],
  ["the least amount takes a step", call("ORDER_UP", 1e-12, 0.5), 0.5],
  ["0 yards are 0 loads", call("LOADS", 0, 5, 1.3, 2.55), 0],
  ["loads without a payload go by volume", call("LOADS", 10.1, 5, 1.3, ""), 3],
  ["a weight in pounds is refused", call("LOADS", 4, 5, 2600, 3), ERROR],
  ["a lap that leaves a piece nothing", call("EDGING_PIECES", 20, 1, 12), ERROR],
  // Open: 8n − (n − 1)·2/12 ≥ 31.5 gives 4 exactly.
  ["pieces that reach exactly", call("EDGING_PIECES", 31.5, 8, 2), 4],
  // Closed: n·(8 − 2/12) ≥ 31.5 gives 5.
  ["a closed run laps once more", call("EDGING_PIECES", 31.5, 8, 2, "yes"), 5],
  ["an edge of 0 needs no pieces", call("EDGING_PIECES", 0, 8), 0],
  // 8 + 8 + 4 ft at 48 in: 2 + 2 + 1, and the end: 6; two corners more.
  ["stakes of a run with corners", call("STAKES", 20, 8, 48, undefined, 2), 8],
  ["one strip where the roll is as wide as the bed", call("FABRIC_STRIPS", 6, 6, 12), 1],
  ["an overlap as wide as the roll", call("FABRIC_STRIPS", 5, 1, 12), ERROR],
  // (11 + 1·1) × 30 with two strips lapped 12 in.
  ["fabric from a roll without end", call("FABRIC_AREA", 30, 11, 6, 12, ""), 360],
  // ⌈(30 − 1)/(16 − 1)⌉ = 2 pieces: 12 × (30 + 1).
  ["fabric from rolls of 16 ft", call("FABRIC_AREA", 30, 11, 6, 12, 16), 372],
  // Each strip takes a whole roll and leaves 1 ft, which is scrap at a lap of 1 ft: 7 rolls.
  ["a remnant as long as the lap is scrap", call("FABRIC_ROLLS", 24, 7 * 3, 3, 25, 0), 7],
  // 7 strips of 24 ft from 50 ft: a roll gives two and leaves 2 ft; the rest of 2 ft laps 1 ft in, so 23 ft more.
  ["a remnant is used up with a lap", call("FABRIC_ROLLS", 24, 7 * 3, 3, 50, 0), 4],
  ["an end lap as long as the roll", call("FABRIC_ROLLS", 24, 6, 3, 1, 0, 12), ERROR],
  // Five-spot of 12 × 12 at 3 ft: 41 (computed, plane geometry).
  ["a five-spot square", call("PINS", 12, 12, 12, 0, 18, 0, 3), 41],
  ["a radius that just fits two corners", call("AREA_RECTANGLE", 10, 4, 2, 2), 40 - 2 * (1 - Math.PI / 4) * 4],
  ["a radius that does not", call("AREA_RECTANGLE", 10, 4, 2.001, 2), ERROR],
  ["a radius as large as the side, for one corner", call("AREA_RECTANGLE", 10, 4, 4, 1), 40 - (1 - Math.PI / 4) * 16],
  ["cut-outs that leave nothing", call("AREA_RECTANGLE", 10, 4, 0, 0, [30, "", 10]), ERROR],
  ["cut-outs that leave a foot", call("AREA_RECTANGLE", 10, 4, "", "", [30, "", 9]), 1],
  ["three sides that lie flat", call("AREA_TRIANGLE", 0.1, 0.2, 0.3), ERROR],
  ["three sides that nearly do", call("AREA_TRIANGLE", 3, 4, 5), 6],
  ["a ring without a bed", call("AREA_ROUND", 10, 10), ERROR],
  ["widths that are all 0", call("AREA_WIDTHS", 3, [0, 0, 0]), ERROR],
  // Simpson over two intervals, then a trapezoid: 1/3·(0 + 16 + 0) + 1/2·(0 + 3).
  ["an odd interval at the end", call("AREA_WIDTHS", 1, [0, 4, 0, 3]), 16 / 3 + 1.5],
  ["trapezoids throughout", call("AREA_WIDTHS", 2, [0, 4, 0, 3], "Trapezoid"), 2 * (2 + 2 + 1.5)],
  ["a blank among the widths", call("AREA_WIDTHS", 1, [1, "", 2]), ERROR],
  [
    "an outline that is closed and has spare rows",
    call("AREA_POINTS", [
      [0, 0],
      [4, 0],
      [0, 3],
      [0, 0],
      ["", ""],
    ]),
    6,
  ],
  [
    "an outline that crosses itself",
    call("AREA_POINTS", [
      [0, 0],
      [4, 4],
      [4, 0],
      [0, 4],
    ]),
    ERROR,
  ],
  [
    "an outline that touches itself",
    call("AREA_POINTS", [
      [0, 0],
      [4, 0],
      [2, 2],
      [4, 4],
      [0, 4],
      [2, 2],
    ]),
    ERROR,
  ],
  [
    "an outline that runs back",
    call("AREA_POINTS", [
      [0, 0],
      [6, 0],
      [3, 0],
      [3, 4],
    ]),
    ERROR,
  ],
  [
    "an outline with a corner twice",
    call("AREA_POINTS", [
      [0, 0],
      [4, 0],
      [4, 0],
      [4, 3],
    ]),
    6,
  ],
  [
    "a blank row among the points",
    call("AREA_POINTS", [
      [0, 0],
      ["", ""],
      [4, 0],
      [0, 3],
    ]),
    ERROR,
  ],
  [
    "an open outline of two points",
    call(
      "EDGE_POINTS",
      [
        [0, 0],
        [3, 4],
        ["", ""],
      ],
      false,
    ),
    5,
  ],
  [
    "a closed outline of two points",
    call("EDGE_POINTS", [
      [0, 0],
      [3, 4],
    ]),
    ERROR,
  ],
  ["sides with a blank at the end", call("EDGE_LENGTH", ["5'", 18.5, 5, "", 0]), 28.5],
  ["sides with a blank among them", call("EDGE_LENGTH", [5, "", 5]), ERROR],
  ["corners that take up more than the sides", call("EDGE_LENGTH", [5, 5], 3, 2), ERROR],
  ["a depth of nothing", call("STONE_DEPTH", 4, 3.5, 0.5), ERROR],
  ["a gap of 0 is a gap of 0", call("STONE_DEPTH", 4, 1.5, 0), 2.5],
  ["a blank gap is half an inch", call("STONE_DEPTH", 4, 1.5, ""), 2],
  ["a stone by its name", call("STONE_TONS", 108, 3, " River-Rock "), 1.35],
  ["a stone that stands in no table", call("STONE_TONS", 108, 3, "granit"), ERROR],
  ["a soil left blank is loam", call("SPOIL_YARDS", 4, ""), 5],
  ["a share in whole percents", call("STONE_YARDS", 108, 3, 8), ERROR],
  ["a share in tape's manner", call("STONE_YARDS", 108, 3, "8%"), 1.08],
  ["a margin of 1", call("PRICE_MARGIN", 100, 1), ERROR],
  ["a taped 0 is a measure", call("FEET", "0'"), 0],
  ["a taped 0 is no width of a trench", call("DIG_YARDS", 108, 3, 20, "0 in", 2), ERROR],
  // 108·3/324 + 20·(4/12)·(2/12)/27.
  ["a blank width of a trench is 4 in", call("DIG_YARDS", 108, 3, 20, 0, 2), 1 + 20 / 3 / 6 / 27],
  ["a 0 may be a blank", call("FEET", 0), ERROR],
  // Notice on Thursday 2026-07-02, Friday observed: 2 full days end on Tuesday (computed, federal holidays).
  ["notice before a holiday", call("DIG_DATE", "2026-07-02", 2, ["2026-07-03", ""]), 46_211],
  ["notice on a Saturday", call("DIG_DATE", 46_088, 1), 46_091],
  ["a holiday on a Saturday changes nothing", call("DIG_DATE", 46_083, 2, [46_088]), 46_086],
  ["half a day of notice", call("DIG_DATE", 46_083, 0.5), ERROR],
  ["the calendar's last day has none after it", call("DIG_DATE", 2_958_465, 1), ERROR],
  ["a day after the calendar", call("DIG_DATE", 2_958_466, 1), ERROR],
  ["a day before the calendar is sound", call("DIG_DATE", 60, 1), ERROR],
];

let host: HeadlessHost;
let compared: Compared[];
beforeAll(async () => {
  host = await createProductHost();
  compared = await compare(
    host,
    edges.map(([, tried]) => tried),
  );
});
afterAll(() => host.dispose());

test.each(edges.map(([what, , answer], place) => ({ what, answer, place })))("$what", ({ answer, place }) => {
  const { original, copy, copyFormula } = compared[place]!;
  expect(copyFormula).toMatch(/^=/);
  if (answer === ERROR) return expect([original, copy].map(String).join(" ")).toMatch(/^#\S+ #\S+$/);
  expect(original).toBeCloseTo(answer, 9);
  expect(copy).toBeCloseTo(answer, 9);
});
