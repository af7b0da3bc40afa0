import { type SoldBy, soldByFieldKeys, soldByOf, TON } from "../soldBy";
import { type FieldKey, fields, type NameFieldKey, type NumberFieldKey } from "./fields";
import { type ListKey, listFeeding, listKeys, listNames, listOf } from "./officeLists";
import { firstField, secondKey } from "./secondEdging";

/**
 * The fields that an office sets once for all its estimates, by the names that their cells have in its workbook.
 * Formulas of blocks and rows read them by these names, so they stay as they are.
 */
export const rateNames = {
  stoneCost: "Rate_stone_per_ton",
  borderHeight: "Rate_edging_height",
  trenchDepth: "Rate_edging_trench",
  pieceLength: "Rate_piece_length",
  stakesPerPiece: "Rate_stakes_per_piece",
  pieceCost: "Rate_border_piece",
  stakeCost: "Rate_extra_stake",
  rollWidth: "Rate_roll_width",
  rollLength: "Rate_roll_length",
  rollCost: "Rate_fabric_roll",
  pinsPerBox: "Rate_pins_per_box",
  pinBoxCost: "Rate_pin_box",
  haulCost: "Rate_haul_off",
  dumpFee: "Rate_dump_fee",
  truckYards: "Rate_truck_yards",
  truckPayload: "Rate_truck_payload",
  deliveryCost: "Rate_delivery",
  deliveryYards: "Rate_delivery_yards",
  deliveryPayload: "Rate_delivery_payload",
  crewRate: "Rate_crew_hour",
  crewSize: "Rate_crew_size",
  crewDay: "Rate_crew_day",
  scrapeHours: "Rate_scrape_hours",
  edgingRate: "Rate_edging_feet",
  fabricRate: "Rate_fabric_area",
  rakeRate: "Rate_rake_area",
  materialMarkup: "Rate_markup_material",
  laborMarkup: "Rate_markup_labor",
  haulingMarkup: "Rate_markup_hauling",
  overhead: "Rate_overhead",
  minimumCharge: "Rate_smallest_charge",
  salesTax: "Rate_sales_tax",
  waste: "Rate_waste",
  orderStep: "Rate_order_step",
  orderMinimum: "Rate_order_minimum",
} as const satisfies Partial<Record<NumberFieldKey, string>>;

export type RateKey = keyof typeof rateNames;
export const rateKeys = Object.keys(rateNames) as RateKey[];

/**
 * Columns of the list of stone by kind: what it is called, its price, and its weight where it was weighed; what it is sold
 * by, and the yard's step and minimum in that unit. The price is per that unit. A Rates sheet of before lacks the last three.
 */
export const stoneListNames = {
  kinds: "Rate_stone_kinds",
  prices: "Rate_stone_prices",
  weights: "Rate_stone_weights",
  whose: "Whose_stone_kinds",
  units: "Rate_stone_units",
  steps: "Rate_stone_steps",
  minimums: "Rate_stone_minimums",
} as const;
/** The columns that came later. */
export const stoneUnitNames = [stoneListNames.units, stoneListNames.steps, stoneListNames.minimums] as const;

/** The name of the cell that says whose a price is: "sample" until the office has typed its own. */
export function whoseName(key: PricedRateKey): string {
  return rateNames[key].replace("Rate_", "Whose_");
}

/** What that cell holds as long as a price is invented, and what it held in workbooks of before. */
export const SAMPLE = "sample";
export const OLD_SAMPLE = "example";

/** Whether that cell marks a price as invented. */
export const isSampleMark = (mark: unknown): boolean => mark === SAMPLE || mark === OLD_SAMPLE;

/** Whether a name is one of ours for rates, so that who copies formulas elsewhere can bring its value along. */
export function isRateName(name: string): boolean {
  const names: readonly string[] = [
    ...Object.values(rateNames),
    ...Object.values(stoneListNames),
    ...pricedRates.map(whoseName),
    ...listKeys.flatMap(listNames),
  ];
  return names.some((one) => one.toLowerCase() === name.toLowerCase());
}

/** Sizes that came later: where a workbook has no cell for one, estimates go on with what is usual. */
export const laterRates: readonly RateKey[] = ["borderHeight", "trenchDepth"];

/** Rates whose starting values are invented; the others start with common practice: sizes, paces and shares. */
export const pricedRates = [
  "stoneCost",
  "pieceCost",
  "stakeCost",
  "rollCost",
  "pinBoxCost",
  "haulCost",
  "dumpFee",
  "deliveryCost",
  "crewRate",
  "materialMarkup",
  "laborMarkup",
  "haulingMarkup",
  "overhead",
  "minimumCharge",
] as const satisfies readonly RateKey[];
export type PricedRateKey = (typeof pricedRates)[number];

export function isRate(key: FieldKey): key is RateKey {
  return key in rateNames;
}

export function isPriced(key: FieldKey): key is PricedRateKey {
  return (pricedRates as readonly FieldKey[]).includes(key);
}

const ownLabels: Readonly<Partial<Record<RateKey, string>>> = {
  stoneCost: "Any other stone",
  borderHeight: "Edging, height",
  trenchDepth: "Edging, trench below the scrape",
  pieceLength: "Edging piece, length",
  pieceCost: "Edging piece, price",
  rollCost: "Fabric roll, price",
  pinBoxCost: "Box of pins, price",
  scrapeHours: "Scrape and load, time",
  edgingRate: "Set edging, pace",
  fabricRate: "Lay and pin fabric, pace",
  rakeRate: "Spread and rake, pace",
};

/** What a rate is called where it is among all others. */
export function rateLabel(key: RateKey): string {
  return ownLabels[key] ?? fields[key].label;
}

/** A rate as the workbook holds it: text to be read like a typed field, or what is wrong with it. */
export type Rate =
  | { readonly text: string; readonly isExample: boolean; readonly problem?: undefined }
  | { readonly problem: string };

/** A kind of stone with a price of its own. */
export interface StoneRate {
  readonly name: string;
  /** What it is sold by, a name of {@link SOLD_BY}; absent where the list doesn't say, which is the ton. */
  readonly soldBy?: Rate;
  /** Per that unit, as the step and the minimum are in it; absent ones are those of the unit. */
  readonly stoneCost: Rate;
  readonly orderStep?: Rate;
  readonly orderMinimum?: Rate;
  /** Short tons in a loose cubic yard; absent where the table of common stone is to be asked. */
  readonly tonsPerYard?: Rate;
}

/** A row of one of the office's lists: what it's called, and what its columns hold; what is blank is absent. */
export interface ListedRow {
  readonly name: string;
  readonly cells: Readonly<Partial<Record<FieldKey, Rate>>>;
  readonly isSample: boolean;
}

/** One of the office's lists, or what is wrong with it as a whole. */
export interface ListedRows {
  readonly rows: readonly ListedRow[];
  readonly problem?: string;
}

/** The rates of an office, as its workbook holds them. */
export interface Rates {
  readonly byField: Readonly<Record<RateKey, Rate>>;
  /** Its lists of edging, fabric, and the like; a Rates sheet of before has none of them. */
  readonly lists?: Readonly<Partial<Record<ListKey, ListedRows>>>;
  /** Sizes that a Rates sheet of before has no cell for: estimates take the usual ones. */
  readonly lacks?: readonly RateKey[];
  readonly stones: readonly StoneRate[];
  /** Whether the list of stone says what each is sold by; on a Rates sheet of before everything is by the ton. */
  readonly stonesHaveUnits?: boolean;
  /** What is wrong with the list of stone as a whole. */
  readonly stonesProblem?: string;
}

/** The listed kind of stone of a name, as the sheet finds it: capitals and spaces around it do not matter. */
export function stoneRateOf(rates: Rates, stone: string): StoneRate | undefined {
  return rowCalled(rates.stones, stone);
}

/** A row's name as the sheet finds it: capitals and spaces around it don't matter. */
export const nameFound = (typed: string): string => typed.replace(/ +/g, " ").replace(/^ | $/g, "").toLowerCase();

function rowCalled<Row extends { readonly name: string }>(rows: readonly Row[], typed: string): Row | undefined {
  const name = nameFound(typed);
  return name === "" ? undefined : rows.find((one) => one.name.toLowerCase() === name);
}

/** The row of a list that a bed names; undefined where the list has none of that name. */
export function listedRow(rates: Rates, list: ListKey, name: string): ListedRow | undefined {
  return rowCalled(rates.lists?.[list]?.rows ?? [], name);
}

/**
 * What the row of a list that a bed names has for a field; undefined where it has nothing, or none is named.
 *
 * @param nameIn what is in a field that holds a name.
 */
export function listedRate(rates: Rates, key: FieldKey, nameIn: (key: NameFieldKey) => string): Rate | undefined {
  const first = firstField(key);
  const field = first ?? key;
  const list = listFeeding(field);
  const listed = list && rates.lists?.[list];
  if (!list || !listed) return undefined;
  if (listed.problem !== undefined) return { problem: listed.problem };
  const { picks } = listOf(list);
  return listedRow(rates, list, nameIn(first ? secondKey(picks) : picks))?.cells[field];
}

/** The listed stone of a name, where the list sells it by this unit: only then are its price, step, and minimum the bed's. */
export function stoneSoldBy(rates: Rates, stone: string, soldBy: SoldBy): StoneRate | undefined {
  const listed = stoneRateOf(rates, stone);
  const isSaid = listed?.soldBy?.problem === undefined;
  return isSaid && soldByOf(listed?.soldBy?.text) === soldBy ? listed : undefined;
}

/**
 * The rate that a field takes where nothing is typed into it; undefined where there's none in the unit that the bed's stone
 * is sold by. The single rates of stone are by the ton.
 *
 * @param stone what the bed's stone is called, or its weight; a stone that is not listed takes the price of any other.
 */
export function rateFor(rates: Rates, key: RateKey, stone: string, soldBy = TON): Rate | undefined {
  if (!soldByFieldKeys.includes(key)) return rates.byField[key];
  if (key === "stoneCost") {
    const problem = rates.stonesProblem ?? stoneRateOf(rates, stone)?.soldBy?.problem;
    if (problem !== undefined) return { problem };
  }
  const listed = stoneSoldBy(rates, stone, soldBy)?.[key as "stoneCost"];
  return listed ?? (soldBy === TON ? rates.byField[key] : undefined);
}
