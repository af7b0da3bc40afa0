import { markupForMargin, priceFromMargin } from "../../quantities/price";
import { cost, margin } from "../arguments";
import { declare } from "../declare";
import { shareShown, shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const PRICE_MARGIN = worksheetFunction(priceFromMargin, cost, margin);

export const priceMarginDeclared = /* @__PURE__ */ declare(PRICE_MARGIN, {
  name: "PRICE_MARGIN",
  purpose: "Price it",
  about: "Price from a margin, which is a % of the price.",
  gives: "price from a margin",
  returns: "Price, in the same currency.",
  kind: "money",
  rule: "Margin is a % of the price: cost ÷ (1 − margin).",
  example: "=BED.PRICE_MARGIN(100, 20%) gives 125",
  source: "Margin is a % of the price: common practice.",
  related: ["PRICE_MARKUP", "MARKUP_FOR_MARGIN"],
  native: (cost, margin) => ({
    text: `${cost.text}/(1-${margin.text})`,
    least: "0 or more",
  }),
  working: (answer, cost, margin) => [
    `${shown(cost)} ÷ (1 − ${shown(margin)}) = ${shown(answer)}`,
    `a margin of ${shareShown(margin)} is a markup of ${shareShown(markupForMargin(margin))}`,
  ],
});
