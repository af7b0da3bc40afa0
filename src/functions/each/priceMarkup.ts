import { priceFromMarkup } from "../../quantities/price";
import { needs } from "../argument";
import { cost } from "../arguments";
import { declare } from "../declare";
import { share } from "../read";
import { shareShown, shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const PRICE_MARKUP = worksheetFunction(priceFromMarkup, cost, needs("markup", share));

export const priceMarkupDeclared = /* @__PURE__ */ declare(PRICE_MARKUP, {
  name: "PRICE_MARKUP",
  purpose: "Price it",
  about: "Price from a markup, which is a % of the cost.",
  gives: "price from a markup",
  returns: "Price, in the same currency.",
  kind: "money",
  rule: "Markup is a % of the cost: cost × (1 + markup).",
  example: "=BED.PRICE_MARKUP(100, 25%) gives 125",
  source: "Markup is a % of the cost: common practice.",
  related: ["PRICE_MARGIN", "MARKUP_FOR_MARGIN"],
  arguments: { markup: { about: "Markup on cost, like 25%.", role: "markup" } },
  native: (cost, markup) => ({
    text: `${cost.text}*(1+${markup.text})`,
    least: "0 or more",
  }),
  working: (answer, cost, markup) => [
    `${shown(cost)} × (1 + ${shown(markup)}) = ${shown(answer)}`,
    `a markup of ${shareShown(markup)} is a margin of ${shareShown(markup / (1 + markup))}`,
  ],
});
