import { markupForMargin } from "../../quantities/price";
import { margin } from "../arguments";
import { declare } from "../declare";
import { shareShown, shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const MARKUP_FOR_MARGIN = worksheetFunction(markupForMargin, margin);

export const markupForMarginDeclared = /* @__PURE__ */ declare(MARKUP_FOR_MARGIN, {
  name: "MARKUP_FOR_MARGIN",
  purpose: "Price it",
  about: "Markup on cost that gives a margin on price.",
  gives: "markup for a margin",
  returns: "Markup, as a fraction of cost.",
  kind: "share",
  rule: "Margin ÷ (1 − margin).",
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
