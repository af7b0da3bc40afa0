import { widthsEdged, widthsSides } from "../../quantities/bed/sides";
import { may, needs } from "../argument";
import { declare } from "../declare";
import { edgedSides, summaryArguments, summaryOf } from "../laying";
import { count, feet } from "../read";
import { widths } from "../readRanges";
import { worksheetList } from "../worksheetFunction";

const ENDS = 2;

export const LAYOUT_WIDTHS = worksheetList(
  (spacingFt, widthsFt, ...by) => {
    const edged = by[12].length > 0 ? by[12] : widthsEdged(by[11]);
    return summaryOf({ kind: "widths", spacingFt, widthsFt, borderSides: widthsSides(widthsFt, edged) }, by);
  },
  needs("spacing", feet),
  needs("widths", widths),
  ...summaryArguments,
  may("end_sides", count, 0, ENDS),
  edgedSides,
);

export const layoutWidthsDeclared = /* @__PURE__ */ declare(LAYOUT_WIDTHS, {
  name: "LAYOUT_WIDTHS",
  purpose: "Lay out any shape of bed",
  about: "Lays out a bed taped by widths in plan and counts fabric and pins.",
  gives: "counts from a bed layout",
  returns:
    "A heading row, then area, edge, strips, fabric, rolls, overlaps, and pins; with a piece length, edging pieces and stakes, too.",
  kind: "list",
  rule: "Draws the bed in plan, with strips clipped to its outline and pins in alternating rows, on every overlap and edge. Then it counts what it drew, edging run by run.",
  example: "=INDEX(BED.LAYOUT_WIDTHS(10, A1:A3, 6, 50, 6), 2, 1) gives 120 for widths 6, 6, 6",
  source: "Common practice for laps and pins; areas and lengths by plane geometry.",
  related: ["AREA_WIDTHS", "EDGE_WIDTHS", "LAYOUT"],
  arguments: {
    spacing: { about: "Spacing between widths along the base line: feet, or text like 4'." },
    widths: {
      about: "Widths taped square off the base line, in one row or column: feet or text. 0 where it comes to a point.",
    },
    end_sides: { about: "How many of the two ends get edging, besides the outer edge. Default: 0." },
    edged: { about: "1 or 0 for edging on the base line, last end, outer edge, first end. Default: by end_sides." },
  },
  native: { none: "it lays the bed out in plan and counts there, which an ordinary formula can't do" },
});
