import { depthVerdicts } from "../quantities/bed/depthVerdict";
import { type Estimate, edgingFt } from "../quantities/bed/estimate";
import { type FieldKey, fields } from "../quantities/bed/fields";
import type { FormPlace } from "../quantities/bed/read";
import { amountWithUnit, dollarText } from "./numbers";
import type { Preview } from "./preview";

/** The answer, which stays in sight: price and stone to order, and what is wrong or still missing. */
export function Answer({ preview: { estimate, problems } }: { readonly preview: Preview }) {
  if (estimate)
    return (
      <>
        <p class="answer">
          <strong>{dollarText(estimate.price)}</strong> · {stoneToOrder(estimate)} of stone to order
        </p>
        {estimate.depthCheck !== depthVerdicts.fits && (
          <p class="notice trouble" role="note">
            {estimate.depthCheck}
          </p>
        )}
      </>
    );
  const wrong = problems.find(({ unfinished }) => !unfinished);
  const missing = new Set(problems.map(({ place }) => labelOf(place)));
  return <p class="answer">{wrong?.message ?? `Still needed: ${[...missing].join(", ")}`}</p>;
}

/** Stone to order as it is sold, and by weight and volume where that is something else. */
export function stoneToOrder({ amounts, lines }: Pick<Estimate, "amounts" | "lines">): string {
  const { stoneOrder, orderTons, orderYards } = amounts;
  const unit = lines.find(({ quantity }) => quantity === "stoneOrder")?.unit ?? "";
  const others = [amountWithUnit(orderTons, "tons"), amountWithUnit(orderYards, "cu yd")];
  const order = amountWithUnit(stoneOrder, unit);
  return `${order} (${others.filter((other) => other !== order).join(", ")})`;
}

/** What of a change is read out: the price, and what is ordered for it. */
export function inOneBreath({ price, amounts: all }: Estimate): string {
  const amounts = [
    `stone ${amountWithUnit(all.stoneTons, "tons")}`,
    `area ${amountWithUnit(all.stoneArea, "sq ft")}`,
    `edging ${amountWithUnit(edgingFt(all), "lin ft")}`,
  ];
  return `Price ${dollarText(price)}; ${amounts.join(", ")}.`;
}

function labelOf(place: FormPlace): string {
  if (place in fields) return fields[place as FieldKey].label;
  return place.startsWith("width") ? "Widths" : place.startsWith("point") ? "Corners" : "Cut-outs";
}
