import { stoneDepth } from "../../quantities/stoneAmounts";
import { may, needs } from "../argument";
import { declare } from "../declare";
import { nothingBeside } from "../native/arithmetic";
import { inches, inchesOrZero } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const STONE_DEPTH = worksheetFunction(
  stoneDepth,
  needs("border_height_in", inches),
  needs("trench_depth_in", inchesOrZero),
  may("top_gap_in", inchesOrZero, 0.5),
);

export const stoneDepthDeclared = /* @__PURE__ */ declare(STONE_DEPTH, {
  name: "STONE_DEPTH",
  purpose: "Order stone",
  about: "Finished stone depth behind edging, a little below its top edge.",
  gives: "stone depth",
  returns: "Inches.",
  kind: "in",
  rule: "Edging height above the scrape, less the gap below its top edge.",
  example: "=BED.STONE_DEPTH(4, 1.5) gives 2",
  source: "Common practice: stone finishes about 1/2 in below the top of the edging.",
  related: ["STONE_TONS", "STONE_YARDS"],
  arguments: {
    border_height_in: {
      about: 'Edging height: inches, or text like 4".',
      usual: [2, 12],
      role: "border height",
    },
    trench_depth_in: {
      about: 'How deep the edging is set below the scrape: inches, or text like 1 1/2".',
      role: "trench depth",
    },
    top_gap_in: { about: "How far the stone finishes below the top edge: inches or text. Default: 0.5." },
  },
  native: (border, trench, gap) => {
    const depth = `${border.text}-${trench.text}-${gap.text}`;
    return { text: depth, when: [[`${depth}>${nothingBeside(border.text)}`]] };
  },
  working: (answer, border, trench, gap) => [
    `edging ${shown(border)} − trench ${shown(trench)} − gap ${shown(gap)} = ${shown(answer)} in`,
  ],
});
