import { needs } from "../argument";
import { declare } from "../declare";
import { laidOut, layingArguments, summaryOf } from "../laying";
import { feet } from "../read";
import { widths } from "../readRanges";
import { worksheetList } from "../worksheetFunction";

export const LAYOUT_WIDTHS = worksheetList(
  (spacingFt, widthsFt, ...by) => summaryOf(laidOut({ kind: "widths", spacingFt, widthsFt }, ...by)),
  needs("spacing", feet),
  needs("widths", widths),
  ...layingArguments,
);

export const layoutWidthsDeclared = /* @__PURE__ */ declare(LAYOUT_WIDTHS, {
  name: "LAYOUT_WIDTHS",
  purpose: "Lay out a bed of any shape",
  about: "Lays a bed taped by widths from a base line out in plan, and counts fabric and pins.",
  gives: "counts of a bed laid out",
  returns: "A heading row, then area, edge, strips, fabric, rolls, overlaps and pins.",
  kind: "list",
  rule: "The bed is drawn in plan: strips of the roll's width clipped to its outline, pins in rows of pairs and singles, on every overlap and edge. What is drawn is counted.",
  example: "=INDEX(BED.LAYOUT_WIDTHS(10, A1:A3, 6, 50, 6), 2, 1) gives 120 for widths 6, 6, 6",
  source:
    "Common practice for laps and pins; areas and lengths by plane geometry. The bed is drawn in plan and counted.",
  related: ["AREA_WIDTHS", "EDGE_WIDTHS", "LAYOUT"],
  arguments: {
    spacing: { about: "Even spacing of the widths along the base line: feet, or text such as 4'." },
    widths: {
      about: "Widths taped square to the base line, in one row or column: feet or text. 0 where it runs to a point.",
    },
  },
  native: { none: "the bed is laid out in plan and counted there, which no arithmetic does" },
});
