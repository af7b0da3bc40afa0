import { markupForMargin, priceFromMargin, priceFromMarkup } from "../quantities/price";
import { cellError, sound } from "./cellError";
import { positiveOrZero, share, shareUnderOne } from "./read";

/**
 * Price from a markup, which is a share of the cost.
 * @customfunction PRICE_MARKUP
 * @param cost Cost, in the sheet's own currency.
 * @param markup Markup on the cost, such as 25%.
 * @returns Price, in the same currency.
 * @example =BED.PRICE_MARKUP(100, 25%) gives 125
 * @source Markup is a share of the cost: common practice.
 * @see BED.PRICE_MARGIN, BED.MARKUP_FOR_MARGIN
 */
export function PRICE_MARKUP(cost: unknown, markup: unknown): number {
  try {
    return sound(priceFromMarkup(positiveOrZero(cost, "cost"), share(markup, "markup")));
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Price from a margin, which is a share of the price.
 * @customfunction PRICE_MARGIN
 * @param cost Cost, in the sheet's own currency.
 * @param margin Margin on the price, such as 20%. Under 100%.
 * @returns Price, in the same currency.
 * @example =BED.PRICE_MARGIN(100, 20%) gives 125
 * @source Margin is a share of the price: common practice.
 * @see BED.PRICE_MARKUP, BED.MARKUP_FOR_MARGIN
 */
export function PRICE_MARGIN(cost: unknown, margin: unknown): number {
  try {
    return sound(priceFromMargin(positiveOrZero(cost, "cost"), shareUnderOne(margin, "margin")));
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Markup on the cost that leaves a margin on the price.
 * @customfunction MARKUP_FOR_MARGIN
 * @param margin Margin on the price, such as 20%. Under 100%.
 * @returns Markup, as a share of the cost.
 * @example =BED.MARKUP_FOR_MARGIN(20%) gives 0.25
 * @source Plain arithmetic: margin over 1 − margin.
 * @see BED.PRICE_MARGIN, BED.PRICE_MARKUP
 */
export function MARKUP_FOR_MARGIN(margin: unknown): number {
  try {
    return sound(markupForMargin(shareUnderOne(margin, "margin")));
  } catch (reason) {
    throw cellError(reason);
  }
}
