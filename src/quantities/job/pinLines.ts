import { must } from "../must";
import { wholeUp } from "../whole";
import { addedUp } from "./addedUp";
import { grouped, orderOf, partsOf } from "./asks";
import type { BedNeeds } from "./bedNeeds";
import { lineOf } from "./lineOf";
import type { OrderLine } from "./order";
import { plain } from "./plain";

/** Pins by the size of their box: the pins of all beds are added, then boxed once. */
export function pinLines(beds: readonly BedNeeds[]): OrderLine[] {
  const all = beds.flatMap(({ name, pins }) =>
    pins && (pins.count > 0 || pins.boxes.quantity > 0) ? [{ ...pins, bed: name }] : [],
  );
  return grouped(all, ({ pinsPerBox }) => plain(pinsPerBox)).map((pins) => {
    const { pinsPerBox } = must(pins[0]);
    const asks = pins.map((pin) => ({ bed: pin.bed, source: pin, needed: pin.count, own: pin.boxes, terms: {} }));
    const inBoxes = (some: typeof pins) => wholeUp(addedUp(some.map(({ count }) => count)) / pinsPerBox);
    return lineOf(
      {
        key: `pins|${plain(pinsPerBox)}`,
        supplier: "fabric and pins",
        item: "Pins",
        specification: `boxes of ${plain(pinsPerBox)}`,
        neededUnit: "pins",
        orderUnit: "boxes",
      },
      partsOf(asks).map((part) => ({ ...part, order: orderOf(part, (some) => inBoxes([...some])) })),
    );
  });
}
