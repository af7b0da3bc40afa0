import { rectanglePins } from "../../layout/pinPattern";
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
  purpose: "Lay fabric and pins",
  about: "Every pin of a rectangular bed by its place: x along the strips, y across them.",
  gives: "pins by their places",
  returns: "A heading row, then x and y in feet, a pin a row.",
  kind: "list",
  rule: "Rows of pairs and singles in turn, on every overlap and in every corner, as many as BED.PINS counts.",
  example: "=INDEX(BED.PIN_MAP(12, 12, 12, 0, 18, 3), 42, 1) gives 12",
  source: "Common practice: rows like the five on a die, 12 in apart, in bays of 4 ft.",
  related: ["PINS", "LAYOUT_PINS"],
  native: { none: "it gives a list of rows, as many as the bed asks for" },
});
