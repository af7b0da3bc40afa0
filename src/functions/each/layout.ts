import { declare } from "../declare";
import { bedCorners, edgedSides, pointsBed, summaryArguments, summaryOf } from "../laying";
import { worksheetList } from "../worksheetFunction";

export const LAYOUT = worksheetList(
  (points, ...by) => summaryOf(pointsBed(points), by, by[11]),
  bedCorners,
  ...summaryArguments,
  edgedSides,
);

export const layoutDeclared = /* @__PURE__ */ declare(LAYOUT, {
  name: "LAYOUT",
  purpose: "Lay out any shape of bed",
  about: "Lays out a bed of any shape in plan and counts fabric and pins as the crew will set them.",
  gives: "counts from a bed layout",
  returns:
    "A heading row, then area, edge, strips, fabric, rolls, overlaps, and pins; with a piece length, edging pieces and stakes, too.",
  kind: "list",
  rule: "Draws the bed in plan, with strips clipped to its outline and pins in alternating rows, on every overlap and edge. Then it counts what it drew, edging run by run.",
  example: "=INDEX(BED.LAYOUT(A1:B4, 12, 50, 0, 12, 18), 2, 7) gives 32 for 0, 0; 12, 0; 12, 12; 0, 12",
  source: "Common practice for laps and pins; areas and lengths by plane geometry.",
  related: ["LAYOUT_CUTS", "LAYOUT_PINS", "AREA_POINTS"],
  arguments: {
    edged: { about: "1 or 0 for each corner: edging from it to the next, or none. Default: all the way around." },
  },
  native: { none: "it lays the bed out in plan and counts there, which an ordinary formula can't do" },
});
