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
  purpose: "Lay out any shape of bed",
  about: "Lays out a rectangular bed with rounded corners in plan and counts fabric and pins.",
  gives: "counts from a bed layout",
  returns: "A heading row, then area, edge, strips, fabric, rolls, overlaps, and pins.",
  kind: "list",
  rule: "Draws the bed in plan, with strips clipped to its outline and pins in alternating rows, on every overlap and edge. Then it counts what it drew.",
  example: "=INDEX(BED.LAYOUT_RECTANGLE(18.5, 5, 2, 2, 6, 50, 6), 2, 1) gives 90.7832",
  source: "Common practice for laps and pins; areas and lengths by plane geometry.",
  related: ["AREA_RECTANGLE", "FABRIC_ROLLS", "PINS", "LAYOUT"],
  arguments: {
    corner_radius: { about: 'Radius of rounded corners: feet, or text like 24". Blank: 0.' },
    rounded_corners: { about: "How many corners are rounded, 0 to 4, starting away from the base line. Blank: 0." },
  },
  native: { none: "it lays the bed out in plan and counts there, which an ordinary formula can't do" },
});
