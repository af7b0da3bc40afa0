import { declare } from "../declare";
import { bedCorners, cutsOf, laidOut, layingArguments, pointsBed } from "../laying";
import { worksheetList } from "../worksheetFunction";

export const LAYOUT_CUTS = worksheetList(
  (points, ...by) => cutsOf(laidOut(pointsBed(points), ...by)),
  bedCorners,
  ...layingArguments,
);

export const layoutCutsDeclared = /* @__PURE__ */ declare(LAYOUT_CUTS, {
  name: "LAYOUT_CUTS",
  purpose: "Lay out a bed of any shape",
  about: "The lengths of fabric to cut for a bed of any shape, and off which roll each comes.",
  gives: "lengths of fabric to cut",
  returns: "A heading row, then a row for each piece.",
  kind: "list",
  rule: "Strips are cut full width, roll after roll; where a roll runs out inside a strip, the next piece laps it by the end lap.",
  example: "=INDEX(BED.LAYOUT_CUTS(A1:B4, 12, 50, 0), 2, 6) gives 12 for 0, 0; 12, 0; 12, 12; 0, 12",
  source:
    "Common practice for laps and pins; areas and lengths by plane geometry. The bed is drawn in plan and counted.",
  related: ["LAYOUT", "FABRIC_CUTS"],
  native: { none: "the bed is laid out in plan and counted there, which no arithmetic does" },
});
