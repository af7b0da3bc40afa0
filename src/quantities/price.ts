import { messages } from "./messages";
import { Problem } from "./problem";

/**
 * Price from a markup, which is a % of the cost.
 *
 * @param cost 0 or more, in any currency.
 * @param markup 0 or more, as a share.
 * @returns the price in the same currency: cost × (1 + markup).
 * @example priceFromMarkup(100, 0.25) // 125
 */
export function priceFromMarkup(cost: number, markup: number): number {
  return cost * (1 + markup);
}

/**
 * Price from a margin, which is a % of the price.
 *
 * @param cost 0 or more, in any currency.
 * @param margin 0 up to but not including 1, as a share.
 * @returns the price in the same currency: cost ÷ (1 − margin).
 * @throws Problem for a margin of 1 or more: no price is high enough.
 * @example priceFromMargin(100, 0.2) // 125
 */
export function priceFromMargin(cost: number, margin: number): number {
  refuseWhole(margin);
  return cost / (1 - margin);
}

/**
 * The markup on cost that leaves a margin on price.
 *
 * @param margin 0 up to but not including 1, as a share.
 * @returns the markup as a share: margin ÷ (1 − margin).
 * @throws Problem for a margin of 1 or more.
 * @example markupForMargin(0.2) // 0.25
 */
export function markupForMargin(margin: number): number {
  refuseWhole(margin);
  return margin / (1 - margin);
}

function refuseWhole(margin: number): void {
  if (margin >= 1) throw new Problem("value", messages.shareTooLarge("margin", margin, 1), "margin");
}
