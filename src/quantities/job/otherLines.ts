import { must } from "../must";
import { grouped, partsOf } from "./asks";
import type { BedNeeds } from "./bedNeeds";
import { lineOf } from "./lineOf";
import type { OrderLine } from "./order";
import { sameName, spellingOf } from "./plain";

/** What the estimator added by hand, by item and unit: added up, and rounded by no one. */
export function otherLines(beds: readonly BedNeeds[]): OrderLine[] {
  const all = beds.flatMap(({ name, others = [] }) =>
    others.filter(({ order }) => order.quantity > 0).map((other) => ({ ...other, bed: name })),
  );
  return grouped(all, ({ item, unit }) => `${sameName(item)}|${sameName(unit)}`).map((others) => {
    const unit = spellingOf(others.map((other) => other.unit));
    const asks = others.map((other) => {
      // Everything here is typed by hand; saying so at each line would tell no one anything.
      const own = { ...other.order, typed: false };
      return { bed: other.bed, source: other, needed: own.quantity, own, terms: {} };
    });
    return lineOf(
      {
        key: `other|${sameName(must(others[0]).item)}|${sameName(unit)}`,
        supplier: "other",
        item: spellingOf(others.map(({ item }) => item)),
        specification: "",
        neededUnit: unit,
        orderUnit: unit,
      },
      partsOf(asks).map((part) => ({ ...part, order: part.bedByBed })),
    );
  });
}
