import { stoneBags, stoneYards } from "../../quantities/stoneAmounts";
import { CUBIC_FEET_PER_CUBIC_YARD } from "../../quantities/units";
import { needs } from "../argument";
import { area, stoneDepthIn, waste } from "../arguments";
import { declare } from "../declare";
import { wholeUpOf } from "../native/arithmetic";
import { positive } from "../read";
import { roundedUp, shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";
import { yardLines, yardsFormula } from "./stoneYards";

export const STONE_BAGS = worksheetFunction(stoneBags, area, stoneDepthIn, needs("bag_cubic_ft", positive), waste);

export const stoneBagsDeclared = /* @__PURE__ */ declare(STONE_BAGS, {
  name: "STONE_BAGS",
  purpose: "Order stone",
  about: "Bags of stone for a bed.",
  gives: "bags of stone",
  returns: "Whole bags.",
  kind: "count",
  whole: true,
  rule: "Cubic yards times 27 gives cubic feet; divide by the bag size and round up.",
  example: "=BED.STONE_BAGS(20, 2, 0.5) gives 7",
  source: "27 cubic feet are a cubic yard (NIST Handbook 44, Appendix C).",
  related: ["STONE_YARDS", "STONE_TONS"],
  arguments: { bag_cubic_ft: { about: "Cubic feet per bag, like 0.5.", kind: "cu ft" } },
  native: (area, depth, bag, waste) => ({
    text: wholeUpOf(`${yardsFormula(area, depth, waste)}*27/${bag.text}`),
    least: "0 or more",
  }),
  working: (_, area, depth, bag, waste) => {
    const yards = stoneYards(area, depth, waste);
    const feet = yards * CUBIC_FEET_PER_CUBIC_YARD;
    return [
      ...yardLines(area, depth, waste),
      `${shown(yards)} × 27 = ${shown(feet)} cu ft`,
      `${roundedUp(`${shown(feet)} ÷ ${shown(bag)}`, feet / bag)} bags`,
    ];
  },
});
