import type { FieldKey, NameFieldKey } from "./fields";
import type { PricedRateKey } from "./rates";
import { secondKey } from "./secondEdging";

/**
 * A list of what the office buys or hires, a row a product, on its Rates sheet. A bed picks a row by its name; a field that
 * the row leaves blank, and a bed that picks none, has the single rate.
 */
export interface OfficeList {
  /** What it's a list of, in a sentence. */
  readonly of: string;
  /** The field in which a bed names a row. */
  readonly picks: NameFieldKey;
  /** The name of the column of names. Formulas of blocks and rows read it, so it stays as it is, as those below do. */
  readonly names: string;
  /** The field that is its price. */
  readonly price: PricedRateKey;
  /** The fields that its columns feed, the price first, with the names of their cells. */
  readonly columns: Readonly<Partial<Record<FieldKey, string>>>;
}

export const officeLists = {
  edging: {
    of: "edging",
    picks: "edgingProduct",
    names: "Rate_edging_names",
    price: "pieceCost",
    columns: {
      pieceCost: "Rate_edging_prices",
      borderHeight: "Rate_edging_heights",
      trenchDepth: "Rate_edging_trenches",
      pieceLength: "Rate_edging_lengths",
      stakesPerPiece: "Rate_edging_stakes",
      stakeCost: "Rate_edging_stake_prices",
    },
  },
  fabric: {
    of: "fabric",
    picks: "fabricProduct",
    names: "Rate_fabric_names",
    price: "rollCost",
    columns: {
      rollCost: "Rate_fabric_prices",
      rollWidth: "Rate_fabric_widths",
      rollLength: "Rate_fabric_lengths",
    },
  },
  pins: {
    of: "pins",
    picks: "pinProduct",
    names: "Rate_pin_names",
    price: "pinBoxCost",
    columns: { pinBoxCost: "Rate_pin_prices", pinsPerBox: "Rate_pin_counts" },
  },
  haul: {
    of: "haul-off trucks",
    picks: "haulTruck",
    names: "Rate_haul_names",
    price: "haulCost",
    columns: {
      haulCost: "Rate_haul_prices",
      dumpFee: "Rate_haul_fees",
      truckYards: "Rate_haul_yards",
      truckPayload: "Rate_haul_payloads",
    },
  },
  delivery: {
    of: "delivery trucks",
    picks: "deliveryTruck",
    names: "Rate_delivery_names",
    price: "deliveryCost",
    columns: {
      deliveryCost: "Rate_delivery_prices",
      deliveryYards: "Rate_delivery_sizes",
      deliveryPayload: "Rate_delivery_payloads",
    },
  },
  crew: {
    of: "crews",
    picks: "crewName",
    names: "Rate_crew_names",
    price: "crewRate",
    columns: { crewRate: "Rate_crew_rates", crewSize: "Rate_crew_people" },
  },
} as const satisfies Record<string, OfficeList>;

export type ListKey = keyof typeof officeLists;
export const listKeys = Object.keys(officeLists) as ListKey[];

/** The same with the general types, for code that goes through all of them. */
export const listOf = (key: ListKey): OfficeList => officeLists[key];

/** Fields that a list's columns feed, in the order of its columns. */
export const listFields = (key: ListKey): readonly FieldKey[] => Object.keys(listOf(key).columns) as FieldKey[];

const feeding: ReadonlyMap<FieldKey, ListKey> = new Map(
  listKeys.flatMap((list) => listFields(list).map((field) => [field, list] as const)),
);

/** The list that has a column for a field. */
export const listFeeding = (field: FieldKey): ListKey | undefined => feeding.get(field);

const picking: ReadonlyMap<FieldKey, ListKey> = new Map(
  listKeys.flatMap((key) => [listOf(key).picks, secondKey(listOf(key).picks)].map((picks) => [picks, key] as const)),
);

/** The list of which a field names a row. */
export const listPicked = (field: FieldKey): ListKey | undefined => picking.get(field);

/** The name of the cells that say whose a row's price is. */
export const listWhose = ({ names }: OfficeList): string => names.replace("Rate_", "Whose_");

/** The names of the cells that say who quoted a row's price, and when. */
export const quotedNames = ({ names }: OfficeList): { readonly by: string; readonly on: string } => ({
  by: names.replace("_names", "_quoted_by"),
  on: names.replace("_names", "_quoted_on"),
});

/** All names of a list's cells. */
export function listNames(key: ListKey): readonly string[] {
  const list = listOf(key);
  return [list.names, ...Object.values(list.columns), listWhose(list), ...Object.values(quotedNames(list))];
}
