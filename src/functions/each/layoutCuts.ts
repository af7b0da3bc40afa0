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
  purpose: "Lay out any shape of bed",
  about: "Fabric cut list for a bed of any shape: each length and the roll it comes off.",
  gives: "fabric cut list",
  returns: "A heading row, then a row for each piece.",
  kind: "list",
  rule: "Strips are cut full width, roll after roll. Where a roll runs out mid-strip, the next piece laps it by the end lap.",
  example: "=INDEX(BED.LAYOUT_CUTS(A1:B4, 12, 50, 0), 2, 6) gives 12 for 0, 0; 12, 0; 12, 12; 0, 12",
  source: "Common practice for laps and pins; areas and lengths by plane geometry.",
  related: ["LAYOUT", "FABRIC_CUTS"],
  native: { none: "it lays the bed out in plan and counts there, which an ordinary formula can't do" },
});
