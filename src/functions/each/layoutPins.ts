import { declare } from "../declare";
import { bedCorners, laidOut, layingArguments, pinsOf, pointsBed } from "../laying";
import { worksheetList } from "../worksheetFunction";

export const LAYOUT_PINS = worksheetList(
  (points, ...by) => pinsOf(laidOut(pointsBed(points), ...by)),
  bedCorners,
  ...layingArguments,
);

export const layoutPinsDeclared = /* @__PURE__ */ declare(LAYOUT_PINS, {
  name: "LAYOUT_PINS",
  purpose: "Lay out a bed of any shape",
  about: "Every pin of a bed of any shape, by its place in plan.",
  gives: "pins by their places",
  returns: "A heading row, then a row for each pin.",
  kind: "list",
  rule: "The bed is drawn in plan: strips of the roll's width clipped to its outline, pins in rows of pairs and singles, on every overlap and edge. What is drawn is counted.",
  example: "=INDEX(BED.LAYOUT_PINS(A1:B4, 12, 50, 0, 12, 18), 2, 1) gives 0 for 0, 0; 12, 0; 12, 12; 0, 12",
  source:
    "Common practice for laps and pins; areas and lengths by plane geometry. The bed is drawn in plan and counted.",
  related: ["LAYOUT", "PIN_MAP", "PINS"],
  native: { none: "the bed is laid out in plan and counted there, which no arithmetic does" },
});
