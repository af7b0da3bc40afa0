import { form } from "./form";
import { positiveOrZero, share, shareUnderOne } from "./numbers";

export const PRICE_MARKUP = form([positiveOrZero(), share], (cost, markup) => ({
  text: `${cost.text}*(1+${markup.text})`,
  least: "0 or more",
}));

export const PRICE_MARGIN = form([positiveOrZero(), shareUnderOne()], (cost, margin) => ({
  text: `${cost.text}/(1-${margin.text})`,
  least: "0 or more",
}));

export const MARKUP_FOR_MARGIN = form([shareUnderOne()], (margin) => ({
  text: `${margin.text}/(1-${margin.text})`,
  least: "0 or more",
}));
