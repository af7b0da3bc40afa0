import { stoneBulkBags, stoneYards } from "../../quantities/stoneAmounts";
import { may } from "../argument";
import { area, stoneDepthIn, waste } from "../arguments";
import { declare } from "../declare";
import { wholeUpOf } from "../native/arithmetic";
import { positive } from "../read";
import { roundedUp, shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";
import { yardLines, yardsFormula } from "./stoneYards";

export const STONE_BULK_BAGS = worksheetFunction(
  stoneBulkBags,
  area,
  stoneDepthIn,
  may("bag_cubic_yd", positive, 1),
  waste,
);

export const stoneBulkBagsDeclared = /* @__PURE__ */ declare(STONE_BULK_BAGS, {
  name: "STONE_BULK_BAGS",
  purpose: "Order stone",
  about: "Bulk bags of stone for a bed.",
  gives: "bulk bags of stone",
  returns: "Whole bulk bags.",
  kind: "count",
  whole: true,
  rule: "Cubic yards over what a bulk bag holds, rounded up.",
  example: "=BED.STONE_BULK_BAGS(500, 3) gives 5",
  source: "A cubic yard covers 324 sq ft an inch deep (27 × 12, exact). A bag of a cubic yard: common practice.",
  related: ["STONE_YARDS", "STONE_BAGS", "STONE_TONS"],
  arguments: { bag_cubic_yd: { about: "Cubic yards per bulk bag. Default: 1.", kind: "cu yd", usual: [0.25, 2] } },
  native: (area, depth, bag, waste) => ({
    text: wholeUpOf(`${yardsFormula(area, depth, waste)}/${bag.text}`),
    least: "0 or more",
  }),
  working: (_, area, depth, bag, waste) => {
    const yards = stoneYards(area, depth, waste);
    return [...yardLines(area, depth, waste), `${roundedUp(`${shown(yards)} ÷ ${shown(bag)}`, yards / bag)} bulk bags`];
  },
});
