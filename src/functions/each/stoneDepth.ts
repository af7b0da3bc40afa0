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
  about: "Depth of the finished stone behind a border, a little lower than its top edge.",
  gives: "depth of the stone",
  returns: "Inches.",
  kind: "in",
  rule: "The border above the scraped floor, less the gap that stays below its top edge.",
  example: "=BED.STONE_DEPTH(4, 1.5) gives 2",
  source: "Common practice: stone ends about half an inch below the top edge of its border.",
  related: ["STONE_TONS", "STONE_YARDS"],
  arguments: {
    border_height_in: {
      about: 'Height of the border: inches, or text such as 4".',
      usual: [2, 12],
      role: "border height",
    },
    trench_depth_in: {
      about: 'How deep the border is set below the scraped floor: inches, or text such as 1 1/2".',
      role: "trench depth",
    },
    top_gap_in: { about: "How far the stone stays below the top edge: inches, or text. Left out: 0.5." },
  },
  native: (border, trench, gap) => {
    const depth = `${border.text}-${trench.text}-${gap.text}`;
    return { text: depth, when: [[`${depth}>${nothingBeside(border.text)}`]] };
  },
  working: (answer, border, trench, gap) => [
    `border ${shown(border)} − trench ${shown(trench)} − gap ${shown(gap)} = ${shown(answer)} in`,
  ],
});
