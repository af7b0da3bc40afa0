import type { QuantityKey } from "./amounts";
import type { NumberFieldKey } from "./fields";

/** What a line is, since each kind has its own markup. */
export const lineKinds = ["material", "labor", "hauling"] as const;
export type LineKind = (typeof lineKinds)[number];

/** One priced line of an estimate. */
export interface EstimateLine {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  /** Which worked-out amount is its quantity. */
  readonly quantity: QuantityKey | "cleanUpHours";
  /** Which field is its unit cost. */
  readonly cost: NumberFieldKey;
  readonly kind: LineKind;
}

/** The lines of an estimate, in the order in which the work is done. */
export const lines: readonly EstimateLine[] = [
  {
    key: "scrape",
    label: "Scrape and load",
    unit: "labor hours",
    quantity: "scrapeTime",
    cost: "crewRate",
    kind: "labor",
  },
  { key: "haul", label: "Haul off", unit: "loads", quantity: "spoilLoads", cost: "haulCost", kind: "hauling" },
  { key: "dump", label: "Dump fee", unit: "loads", quantity: "spoilLoads", cost: "dumpFee", kind: "hauling" },
  { key: "edging", label: "Edging pieces", unit: "pieces", quantity: "pieces", cost: "pieceCost", kind: "material" },
  {
    key: "stakeLine",
    label: "Extra stakes",
    unit: "stakes",
    quantity: "extraStakes",
    cost: "stakeCost",
    kind: "material",
  },
  {
    key: "setEdging",
    label: "Set edging",
    unit: "labor hours",
    quantity: "edgingTime",
    cost: "crewRate",
    kind: "labor",
  },
  { key: "fabric", label: "Fabric rolls", unit: "rolls", quantity: "rolls", cost: "rollCost", kind: "material" },
  { key: "pinLine", label: "Pins", unit: "boxes", quantity: "pinBoxes", cost: "pinBoxCost", kind: "material" },
  {
    key: "layFabric",
    label: "Lay and pin fabric",
    unit: "labor hours",
    quantity: "fabricTime",
    cost: "crewRate",
    kind: "labor",
  },
  { key: "stoneLine", label: "Stone", unit: "tons", quantity: "orderTons", cost: "stoneCost", kind: "material" },
  { key: "delivery", label: "Delivery", unit: "loads", quantity: "deliveries", cost: "deliveryCost", kind: "hauling" },
  {
    key: "spread",
    label: "Wheelbarrow and spread",
    unit: "labor hours",
    quantity: "spreadTime",
    cost: "crewRate",
    kind: "labor",
  },
  { key: "cleanUp", label: "Clean up", unit: "labor hours", quantity: "cleanUpHours", cost: "crewRate", kind: "labor" },
];
