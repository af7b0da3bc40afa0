import { edgeLength } from "../../quantities/edge";
import { may, needs } from "../argument";
import { cornerRadius } from "../arguments";
import { declare } from "../declare";
import { withSlack } from "../native/arithmetic";
import { count } from "../read";
import { sides } from "../readRanges";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const EDGE_LENGTH = worksheetFunction(
  edgeLength,
  needs("sides", sides),
  cornerRadius,
  may("rounded_corners", count, 0),
);

export const edgeLengthDeclared = /* @__PURE__ */ declare(EDGE_LENGTH, {
  name: "EDGE_LENGTH",
  purpose: "Measure the edging",
  about: "Edging length along the sides of a bed, with some corners rounded.",
  gives: "edging length",
  returns: "Feet.",
  kind: "ft",
  rule: "The sides added up, minus what each rounded corner saves (0.4292 × radius).",
  example: "=BED.EDGE_LENGTH(A2:A4, 2, 2) gives 26.7832 for sides 5, 18.5, 5",
  source: "Plane geometry: a rounded corner saves (2 − π/2) of its radius.",
  related: ["AREA_RECTANGLE", "EDGING_PIECES", "STAKES"],
  arguments: {
    sides: { about: `Sides to edge, as if corners were square: one cell or a range, in feet or text like 18' 6".` },
    rounded_corners: { about: "How many corners are rounded. Default: 0." },
  },
  native: (along, radius, corners) => {
    if (radius.constant === 0 || corners.constant === 0) return { text: along.text };
    return {
      text: `${along.text}-${corners.text}*(2-PI()/2)*${radius.text}`,
      when: [[`${corners.text}*${radius.text}<=${withSlack(`${along.text}/2`)}`]],
    };
  },
  working: (answer, sides, radius, count) => {
    const whole = edgeLength(sides);
    const saved = whole - answer;
    const lines = [sides.length > 1 ? `${sides.map(shown).join(" + ")} = ${shown(whole)} ft` : `${shown(whole)} ft`];
    if (count * radius > 0)
      lines.push(
        `${shown(count)} rounded corners: ${shown(count)} × (2 − π/2) × ${shown(radius)} = ${shown(saved)} ft less`,
        `${shown(whole)} − ${shown(saved)} = ${shown(answer)} ft`,
      );
    return lines;
  },
});
