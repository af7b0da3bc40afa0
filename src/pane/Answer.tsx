import { type FieldKey, fields } from "../quantities/bed/fields";
import type { FormPlace } from "../quantities/bed/read";
import { amountWithUnit, dollarText } from "./numbers";
import type { Preview } from "./preview";

/** The answer in one line that stays in sight: price and stone to order, or what is wrong or still missing. */
export function Answer({ preview: { estimate, problems } }: { readonly preview: Preview }) {
  if (estimate)
    return (
      <p class="answer">
        <strong>{dollarText(estimate.price)}</strong> · {amountWithUnit(estimate.amounts.orderTons, "tons")} of stone to
        order
      </p>
    );
  const wrong = problems.find(({ unfinished }) => !unfinished);
  const missing = new Set(problems.map(({ place }) => labelOf(place)));
  return <p class="answer">{wrong?.message ?? `Still needed: ${[...missing].join(", ")}`}</p>;
}

function labelOf(place: FormPlace): string {
  if (place in fields) return fields[place as FieldKey].label;
  return place.startsWith("width") ? "Widths" : place.startsWith("point") ? "Corners" : "Cut-outs";
}
