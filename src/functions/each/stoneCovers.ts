import { stoneCovers } from "../../quantities/stoneAmounts";
import { needs } from "../argument";
import { stone, stoneDepthIn } from "../arguments";
import { declare } from "../declare";
import { positiveOrZero } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const STONE_COVERS = worksheetFunction(stoneCovers, needs("tons", positiveOrZero), stoneDepthIn, stone);

export const stoneCoversDeclared = /* @__PURE__ */ declare(STONE_COVERS, {
  name: "STONE_COVERS",
  purpose: "Order stone",
  about: "Area that a number of tons of stone covers.",
  gives: "area covered",
  returns: "Square feet.",
  kind: "sq ft",
  rule: "Tons ÷ tons/cu yd gives cubic yards; each covers 324 sq ft an inch deep.",
  example: "=BED.STONE_COVERS(1.35, 3, 1.35) gives 108",
  source: "A cubic yard covers 324 sq ft an inch deep (exact); weights by name come from the stone list.",
  related: ["STONE_TONS", "STONE_DENSITY"],
  arguments: { tons: { about: "Short tons of 2,000 lb.", kind: "tons", role: "tons" } },
  native: (tons, depth, weight) => ({
    text: `${tons.text}/${weight.text}*324/${depth.text}`,
    least: "0 or more",
  }),
  working: (answer, tons, depth, weight) => {
    const yards = shown(tons / weight);
    return [
      `${shown(tons)} ÷ ${shown(weight)} = ${yards} cu yd`,
      `${yards} × 324 ÷ ${shown(depth)} = ${shown(answer)} sq ft`,
    ];
  },
});
