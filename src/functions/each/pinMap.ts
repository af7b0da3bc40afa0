import { rectanglePins } from "../../layout/pins";
import { bayFt, lengthAlong, overlapIn, rollWidth, rowSpacingIn, widthAcross } from "../arguments";
import { sound } from "../cellError";
import { declare } from "../declare";
import { worksheetList } from "../worksheetFunction";

export const PIN_MAP = worksheetList(
  (...bed) => [["x, ft", "y, ft"], ...rectanglePins(...bed).map(({ x, y }) => [sound(x), sound(y)])],
  lengthAlong,
  widthAcross,
  rollWidth,
  overlapIn,
  rowSpacingIn,
  bayFt,
);

export const pinMapDeclared = /* @__PURE__ */ declare(PIN_MAP, {
  name: "PIN_MAP",
  purpose: "Lay and pin fabric",
  about: "Location of every pin in a rectangular bed: x along the strips, y across them.",
  gives: "pin locations",
  returns: "A heading row, then x and y in feet, one row per pin.",
  kind: "list",
  rule: "Alternating rows of pairs and singles, plus every overlap and corner, as many as BED.PINS counts.",
  example: "=INDEX(BED.PIN_MAP(12, 12, 12, 0, 18, 3), 42, 1) gives 12",
  source: "Common practice: rows like the five on a die, 12 in apart, in 4 ft bays.",
  related: ["PINS", "LAYOUT_PINS"],
  native: { none: "it returns a list, with as many rows as the bed needs" },
});
