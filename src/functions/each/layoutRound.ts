import { needs } from "../argument";
import { declare } from "../declare";
import { laidOut, layingArguments, summaryOf } from "../laying";
import { feet, feetOrZero } from "../read";
import { worksheetList } from "../worksheetFunction";

export const LAYOUT_ROUND = worksheetList(
  (diameterFt, innerDiameterFt, ...by) => summaryOf(laidOut({ kind: "round", diameterFt, innerDiameterFt }, ...by)),
  needs("diameter", feet),
  needs("inner_diameter", feetOrZero, { fallback: 0 }),
  ...layingArguments,
);

export const layoutRoundDeclared = /* @__PURE__ */ declare(LAYOUT_ROUND, {
  name: "LAYOUT_ROUND",
  purpose: "Lay out a bed of any shape",
  about: "Lays a round bed or a ring out in plan, and counts fabric and pins.",
  gives: "counts of a bed laid out",
  returns: "A heading row, then area, edge, strips, fabric, rolls, overlaps and pins.",
  kind: "list",
  rule: "The bed is drawn in plan: strips of the roll's width clipped to its outline, pins in rows of pairs and singles, on every overlap and edge. What is drawn is counted.",
  example: "=INDEX(BED.LAYOUT_ROUND(10, 3, 6, 50, 6), 2, 1) gives 71.4712",
  source:
    "Common practice for laps and pins; areas and lengths by plane geometry. The bed is drawn in plan and counted.",
  related: ["AREA_ROUND", "LAYOUT"],
  arguments: {
    diameter: { about: `Diameter of the bed: feet, or text such as 7' 6".` },
    inner_diameter: { about: "Diameter of the ground left free in its middle: feet, or text. Blank: 0." },
  },
  native: { none: "the bed is laid out in plan and counted there, which no arithmetic does" },
});
