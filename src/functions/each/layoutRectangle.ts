import { needs } from "../argument";
import { bedLength, bedWidth } from "../arguments";
import { declare } from "../declare";
import { laidOut, layingArguments, summaryOf } from "../laying";
import { count, feetOrZero } from "../read";
import { worksheetList } from "../worksheetFunction";

const CORNERS_OF_A_RECTANGLE = 4;

export const LAYOUT_RECTANGLE = worksheetList(
  (lengthFt, widthFt, cornerRadiusFt, roundedCorners, ...by) =>
    summaryOf(laidOut({ kind: "rectangle", lengthFt, widthFt, cornerRadiusFt, roundedCorners }, ...by)),
  bedLength,
  bedWidth,
  needs("corner_radius", feetOrZero, { fallback: 0 }),
  needs("rounded_corners", count, { fallback: 0, most: CORNERS_OF_A_RECTANGLE }),
  ...layingArguments,
);

export const layoutRectangleDeclared = /* @__PURE__ */ declare(LAYOUT_RECTANGLE, {
  name: "LAYOUT_RECTANGLE",
  purpose: "Lay out a bed of any shape",
  about: "Lays a rectangular bed with rounded corners out in plan, and counts fabric and pins.",
  gives: "counts of a bed laid out",
  returns: "A heading row, then area, edge, strips, fabric, rolls, overlaps and pins.",
  kind: "list",
  rule: "The bed is drawn in plan: strips of the roll's width clipped to its outline, pins in rows of pairs and singles, on every overlap and edge. What is drawn is counted.",
  example: "=INDEX(BED.LAYOUT_RECTANGLE(18.5, 5, 2, 2, 6, 50, 6), 2, 1) gives 90.7832",
  source:
    "Common practice for laps and pins; areas and lengths by plane geometry. The bed is drawn in plan and counted.",
  related: ["AREA_RECTANGLE", "FABRIC_ROLLS", "PINS", "LAYOUT"],
  arguments: {
    corner_radius: { about: 'Radius of the rounded corners: feet, or text such as 24". Blank: 0.' },
    rounded_corners: { about: "How many corners are rounded, 0 to 4, those away from the base line first. Blank: 0." },
  },
  native: { none: "the bed is laid out in plan and counted there, which no arithmetic does" },
});
