import { must } from "../must";
import { orderUp } from "../stoneAmounts";
import { addedUp } from "./addedUp";
import { orderOf, partsOf } from "./asks";
import type { BedNeeds } from "./bedNeeds";
import { lineOf } from "./lineOf";
import type { OrderLine } from "./order";

/** Sand for pavers: the yards of all beds are added, then rounded once to the step that it is sold in. */
export function sandLines(beds: readonly BedNeeds[]): OrderLine[] {
  const all = beds.flatMap(({ name, sand }) => (sand ? [{ ...sand, bed: name }] : []));
  if (all.length === 0) return [];
  const asks = all.map((sand) => ({
    bed: sand.bed,
    source: sand,
    needed: sand.yards,
    own: sand.order,
    terms: { "order increment": sand.step },
  }));
  const inSteps = (some: readonly (typeof all)[number][]) =>
    orderUp(addedUp(some.map(({ yards }) => yards)), must(some[0]).step);
  return [
    lineOf(
      {
        key: "sand",
        supplier: "stone yard",
        item: "Sand",
        specification: "concrete sand, to set pavers in",
        neededUnit: "cu yd",
        orderUnit: "cu yd",
      },
      partsOf(asks).map((part) => ({ ...part, order: orderOf(part, inSteps) })),
    ),
  ];
}
