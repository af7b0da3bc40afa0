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
  purpose: "Lay out any shape of bed",
  about: "Location of every pin in a bed of any shape.",
  gives: "pin locations",
  returns: "A heading row, then a row for each pin.",
  kind: "list",
  rule: "Draws the bed in plan, with strips clipped to its outline and pins in alternating rows, on every overlap and edge. Then it counts what it drew.",
  example: "=INDEX(BED.LAYOUT_PINS(A1:B4, 12, 50, 0, 12, 18), 2, 1) gives 0 for 0, 0; 12, 0; 12, 12; 0, 12",
  source: "Common practice for laps and pins; areas and lengths by plane geometry.",
  related: ["LAYOUT", "PIN_MAP", "PINS"],
  native: { none: "it lays the bed out in plan and counts there, which an ordinary formula can't do" },
});
