import { stoneTons, stoneYards } from "../../quantities/stoneAmounts";
import { area, stone, stoneDepthIn, waste } from "../arguments";
import { declare } from "../declare";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";
import { yardLines, yardsFormula } from "./stoneYards";

export const STONE_TONS = worksheetFunction(stoneTons, area, stoneDepthIn, stone, waste);

export const stoneTonsDeclared = /* @__PURE__ */ declare(STONE_TONS, {
  name: "STONE_TONS",
  purpose: "Order stone",
  about: "Stone for a bed, in tons.",
  gives: "stone by weight",
  returns: "Short tons of 2,000 lb.",
  kind: "tons",
  rule: "Area times depth over 324 gives cubic yards; times tons/cu yd gives tons; plus waste.",
  example: '=BED.STONE_TONS(108, 3, "crushed limestone") gives 1.35',
  source: "A cubic yard covers 324 sq ft an inch deep (exact); weights by name come from the stone list.",
  related: ["STONE_DENSITY", "STONE_COVERS", "ORDER_UP", "STONE_DEPTH"],
  native: (area, depth, weight, waste) => ({
    text: `${yardsFormula(area, depth, waste)}*${weight.text}`,
  }),
  working: (answer, area, depth, weight, waste) => {
    const yards = shown(stoneYards(area, depth, waste));
    return [...yardLines(area, depth, waste), `${yards} × ${shown(weight)} tons/cu yd = ${shown(answer)} tons`];
  },
});
