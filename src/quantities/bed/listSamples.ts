import { EDGING_KINDS } from "../edgingKinds";
import { SOLD_BY } from "../soldBy";
import { borderChoices, type Choice, fabricChoices } from "./choices";
import { exampleStonePrices } from "./examples";
import { type FieldKey, fields } from "./fields";
import type { ListKey } from "./officeLists";
import { firstField } from "./secondEdging";

/** The rows that the office's lists start with: common sizes, invented prices. */
export const listSamples: Readonly<Record<ListKey, readonly Choice[]>> = {
  edging: borderChoices,
  fabric: fabricChoices,
  pins: [
    { name: "Pins, box of 100", fills: { pinsPerBox: "100", pinBoxCost: "18" } },
    { name: "Pins, box of 500", fills: { pinsPerBox: "500", pinBoxCost: "76" } },
  ],
  haul: [
    { name: "Dump trailer", fills: { haulCost: "45", dumpFee: "30", truckYards: "5", truckPayload: "2.5" } },
    { name: "Single-axle dump", fills: { haulCost: "95", dumpFee: "55", truckYards: "7", truckPayload: "6" } },
  ],
  delivery: [
    { name: "Yard's truck", fills: { deliveryCost: "90", deliveryYards: "10", deliveryPayload: "8" } },
    { name: "Own trailer", fills: { deliveryCost: "55", deliveryYards: "5", deliveryPayload: "2.5" } },
  ],
  crew: [
    { name: "Two people", fills: { crewRate: "48", crewSize: "2" } },
    { name: "Foreman and two", fills: { crewRate: "52", crewSize: "3" } },
  ],
};

const samples = Object.values(listSamples).flatMap((rows) => rows.map(({ fills }) => fills));

/** Whether a price is one of the invented ones that fields, ready choices, and the office's lists start with. */
export function isExamplePrice(key: FieldKey, text: string): boolean {
  const others =
    key === "stoneCost"
      ? [...exampleStonePrices.map(({ perTon }) => perTon), ...SOLD_BY.flatMap(({ usual }) => usual.stoneCost ?? [])]
      : [...samples, ...EDGING_KINDS.map(({ usual }) => usual)].flatMap((fills) => fills[firstField(key) ?? key] ?? []);
  return [fields[key].initial, ...others].includes(text.trim());
}
