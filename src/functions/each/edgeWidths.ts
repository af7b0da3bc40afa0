import { must } from "../../quantities/must";
import { edgeWidths } from "../../quantities/widths";
import { spacing, widths } from "../arguments";
import { declare } from "../declare";
import { sumLines } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const EDGE_WIDTHS = worksheetFunction(edgeWidths, spacing, widths);

export const edgeWidthsDeclared = /* @__PURE__ */ declare(EDGE_WIDTHS, {
  name: "EDGE_WIDTHS",
  purpose: "Measure the edging",
  about: "Length of the outer edge, straight from one taped width to the next.",
  gives: "length of an outer edge",
  returns: "Feet.",
  kind: "ft",
  rule: "Straight from each taped width to the next.",
  example: "=BED.EDGE_WIDTHS(4, A2:A3) gives 5 for widths 0, 3",
  source: "Plane geometry, chord by chord; a curved edge runs a little longer.",
  related: ["AREA_WIDTHS", "EDGING_PIECES", "STAKES"],
  native: (spacing, taped) => ({
    text: `SUMPRODUCT(SQRT(${spacing.text}^2+(${taped.steps})^2))`,
  }),
  working: (answer, spacing, widths) => {
    const chords = widths.slice(1).map((width, place) => Math.hypot(spacing, width - must(widths[place])));
    return sumLines("from each width to the next", chords, answer);
  },
});
