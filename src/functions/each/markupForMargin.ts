import { markupForMargin } from "../../quantities/price";
import { margin } from "../arguments";
import { declare } from "../declare";
import { shareShown, shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const MARKUP_FOR_MARGIN = worksheetFunction(markupForMargin, margin);

export const markupForMarginDeclared = /* @__PURE__ */ declare(MARKUP_FOR_MARGIN, {
  name: "MARKUP_FOR_MARGIN",
  purpose: "Price it",
  about: "Markup on the cost that leaves a margin on the price.",
  gives: "markup that leaves a margin",
  returns: "Markup, as a share of the cost.",
  kind: "share",
  rule: "Margin over 1 − margin.",
  example: "=BED.MARKUP_FOR_MARGIN(20%) gives 0.25",
  source: "Plain arithmetic: margin over 1 − margin.",
  related: ["PRICE_MARGIN", "PRICE_MARKUP"],
  native: (margin) => ({
    text: `${margin.text}/(1-${margin.text})`,
    least: "0 or more",
  }),
  working: (answer, margin) => [
    `${shown(margin)} ÷ (1 − ${shown(margin)}) = ${shown(answer)}, which is ${shareShown(answer)}`,
  ],
});
