import { sandYards } from "../../quantities/pavers";
import { needs } from "../argument";
import { waste } from "../arguments";
import { declare } from "../declare";
import { withShare } from "../native/arithmetic";
import { feetOrZero, inches } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";
import { wasteLines } from "./stoneYards";

export const SAND_YARDS = worksheetFunction(
  sandYards,
  needs("edge_length", feetOrZero),
  needs("width_in", inches),
  needs("depth_in", inches),
  waste,
);

export const sandYardsDeclared = /* @__PURE__ */ declare(SAND_YARDS, {
  name: "SAND_YARDS",
  purpose: "Set the edging",
  about: "Sand or base under a row of pavers, in cubic yards.",
  gives: "sand or base by volume",
  returns: "Compacted cubic yards.",
  kind: "cu yd",
  rule: "Length times width times depth, over 27 cu ft a yard, plus waste.",
  example: "=BED.SAND_YARDS(50, 8, 1) gives 0.1029",
  source: "27 cubic feet are a cubic yard (NIST Handbook 44, Appendix C).",
  related: ["PAVERS", "EDGE_LENGTH", "ORDER_UP"],
  arguments: {
    edge_length: { about: `Length of the row: feet, or text like 26' 9". 0 needs none.`, role: "border" },
    width_in: { about: "Width of the sand or base: inches or text.", usual: [4, 24] },
    depth_in: { about: "Depth once it's compacted: inches or text.", usual: [0.75, 8] },
  },
  native: (edge, width, depth, waste) => ({
    text: withShare(`${edge.text}*${width.text}*${depth.text}/3888`, waste),
    least: "0 or more",
  }),
  working: (_, edge, width, depth, waste) => {
    const bare = sandYards(edge, width, depth);
    const line = `${shown(edge)} × ${shown(width)} ÷ 12 × ${shown(depth)} ÷ 12 ÷ 27 = ${shown(bare)} cu yd`;
    return [line, ...wasteLines(bare, waste)];
  },
});
