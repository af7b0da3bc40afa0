import { declare } from "../declare";
import { bedCorners, laidOut, layingArguments, pointsBed, summaryOf } from "../laying";
import { worksheetList } from "../worksheetFunction";

export const LAYOUT = worksheetList(
  (points, ...by) => summaryOf(laidOut(pointsBed(points), ...by)),
  bedCorners,
  ...layingArguments,
);

export const layoutDeclared = /* @__PURE__ */ declare(LAYOUT, {
  name: "LAYOUT",
  purpose: "Lay out a bed of any shape",
  about: "Lays a bed of any shape out in plan, and counts fabric and pins as the crew will set them.",
  gives: "counts of a bed laid out",
  returns: "A heading row, then area, edge, strips, fabric, rolls, overlaps and pins.",
  kind: "list",
  rule: "The bed is drawn in plan: strips of the roll's width clipped to its outline, pins in rows of pairs and singles, on every overlap and edge. What is drawn is counted.",
  example: "=INDEX(BED.LAYOUT(A1:B4, 12, 50, 0, 12, 18), 2, 7) gives 32 for 0, 0; 12, 0; 12, 12; 0, 12",
  source:
    "Common practice for laps and pins; areas and lengths by plane geometry. The bed is drawn in plan and counted.",
  related: ["LAYOUT_CUTS", "LAYOUT_PINS", "AREA_POINTS"],
  native: { none: "the bed is laid out in plan and counted there, which no arithmetic does" },
});
