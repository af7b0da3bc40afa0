import { may, needs } from "../argument";
import { declare } from "../declare";
import { summaryArguments, summaryOf } from "../laying";
import { feet, feetOrZero, flag } from "../read";
import { worksheetList } from "../worksheetFunction";

export const LAYOUT_ROUND = worksheetList(
  (diameterFt, innerDiameterFt, ...by) =>
    summaryOf({ kind: "round", diameterFt, innerDiameterFt, innerBorder: by[11] }, by),
  needs("diameter", feet),
  needs("inner_diameter", feetOrZero, { fallback: 0 }),
  ...summaryArguments,
  may("inner_edging", flag, false),
);

export const layoutRoundDeclared = /* @__PURE__ */ declare(LAYOUT_ROUND, {
  name: "LAYOUT_ROUND",
  purpose: "Lay out any shape of bed",
  about: "Lays out a round bed or ring in plan and counts fabric and pins.",
  gives: "counts from a bed layout",
  returns:
    "A heading row, then area, edge, strips, fabric, rolls, overlaps, and pins; with a piece length, edging pieces and stakes, too.",
  kind: "list",
  rule: "Draws the bed in plan, with strips clipped to its outline and pins in alternating rows, on every overlap and edge. Then it counts what it drew, edging run by run.",
  example: "=INDEX(BED.LAYOUT_ROUND(10, 3, 6, 50, 6), 2, 1) gives 71.4712",
  source: "Common practice for laps and pins; areas and lengths by plane geometry.",
  related: ["AREA_ROUND", "LAYOUT"],
  arguments: {
    diameter: { about: `Bed diameter: feet, or text like 7' 6".` },
    inner_diameter: { about: "Diameter of the open middle: feet or text. Blank: 0." },
    inner_edging: { about: "TRUE for edging around the middle, too. Default: FALSE." },
  },
  native: { none: "it lays the bed out in plan and counts there, which an ordinary formula can't do" },
});
