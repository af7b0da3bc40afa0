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
  purpose: "Lay out any shape of bed",
  about: "Lays out a bed of any shape in plan and counts fabric and pins as the crew will set them.",
  gives: "counts from a bed layout",
  returns: "A heading row, then area, edge, strips, fabric, rolls, overlaps, and pins.",
  kind: "list",
  rule: "Draws the bed in plan, with strips clipped to its outline and pins in alternating rows, on every overlap and edge. Then it counts what it drew.",
  example: "=INDEX(BED.LAYOUT(A1:B4, 12, 50, 0, 12, 18), 2, 7) gives 32 for 0, 0; 12, 0; 12, 12; 0, 12",
  source: "Common practice for laps and pins; areas and lengths by plane geometry.",
  related: ["LAYOUT_CUTS", "LAYOUT_PINS", "AREA_POINTS"],
  native: { none: "it lays the bed out in plan and counts there, which an ordinary formula can't do" },
});
