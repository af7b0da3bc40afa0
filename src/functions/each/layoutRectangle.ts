import { rectangleSides } from "../../quantities/bed/sides";
import { may, needs } from "../argument";
import { bedLength, bedWidth } from "../arguments";
import { declare } from "../declare";
import { edgedSides, summaryArguments, summaryOf } from "../laying";
import { count, feetOrZero } from "../read";
import { flags } from "../readRanges";
import { worksheetList } from "../worksheetFunction";

const CORNERS_OF_A_RECTANGLE = 4;
const SIDES_A_WAY = 2;

export const LAYOUT_RECTANGLE = worksheetList(
  (lengthFt, widthFt, cornerRadiusFt, roundedCorners, ...by) => {
    const borderSides = rectangleSides(lengthFt, widthFt, by[11], by[12]);
    const bed = {
      kind: "rectangle",
      lengthFt,
      widthFt,
      cornerRadiusFt,
      roundedCorners,
      rounded: by[14],
      borderSides,
    } as const;
    return summaryOf(bed, by, by[13]);
  },
  bedLength,
  bedWidth,
  needs("corner_radius", feetOrZero, { fallback: 0 }),
  needs("rounded_corners", count, { fallback: 0, most: CORNERS_OF_A_RECTANGLE }),
  ...summaryArguments,
  may("long_sides", count, 0, SIDES_A_WAY),
  may("short_sides", count, 0, SIDES_A_WAY),
  edgedSides,
  may("rounded", flags),
);

export const layoutRectangleDeclared = /* @__PURE__ */ declare(LAYOUT_RECTANGLE, {
  name: "LAYOUT_RECTANGLE",
  purpose: "Lay out any shape of bed",
  about: "Lays out a rectangular bed with rounded corners in plan and counts fabric and pins.",
  gives: "counts from a bed layout",
  returns:
    "A heading row, then area, edge, strips, fabric, rolls, overlaps, and pins; with a piece length, edging pieces and stakes, too.",
  kind: "list",
  rule: "Draws the bed in plan, with strips clipped to its outline and pins in alternating rows, on every overlap and edge. Then it counts what it drew, edging run by run.",
  example: "=INDEX(BED.LAYOUT_RECTANGLE(18.5, 5, 2, 2, 6, 50, 6), 2, 1) gives 90.7832",
  source: "Common practice for laps and pins; areas and lengths by plane geometry.",
  related: ["AREA_RECTANGLE", "FABRIC_ROLLS", "PINS", "LAYOUT"],
  arguments: {
    corner_radius: { about: 'Radius of rounded corners: feet, or text like 24". Blank: 0.' },
    rounded_corners: { about: "How many corners are rounded, 0 to 4, starting away from the base line. Blank: 0." },
    long_sides: { about: "How many long sides get edging, 0 to 2, the front first. Default: 0." },
    short_sides: { about: "How many short sides get edging, 0 to 2. Default: 0." },
    edged: { about: "1 or 0 for the house side, right end, front, left end. Default: by long_sides and short_sides." },
    rounded: {
      about: "1 or 0 for the front left, front right, back left, back right corner. Default: by rounded_corners.",
    },
  },
  native: { none: "it lays the bed out in plan and counts there, which an ordinary formula can't do" },
});
