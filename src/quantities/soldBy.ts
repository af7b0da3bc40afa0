import type { FieldKey } from "./bed/fields";
import { must } from "./must";
import { plainName } from "./nearestName";
import { STONES } from "./stone";
import { rowNamed, rowOr, type TableRow } from "./tables";

/** What stone and other coverings are sold by, and all that follows from it. */
export interface SoldBy extends Pick<TableRow, "name"> {
  /** What an order counts, of many and of one. */
  readonly unit: string;
  readonly one: string;
  /** What is needed, in this unit, as an expression of the estimate. */
  readonly needed: string;
  /** The cubic yards of an order, as what comes after its amount; and those of one unit. */
  readonly inYards: string;
  readonly yardsEach: string;
  /** Whether an order is in tons, so that its weight doesn't depend on the stone. */
  readonly isWeight?: boolean;
  /** Orders are of whole ones. */
  readonly isCounted?: boolean;
  /** Further fields that it asks for. */
  readonly asks: readonly FieldKey[];
  /** What a job calls stone that is sold so, after its name and size, and the size of a bag that follows. */
  readonly inKind: string;
  readonly size?: { readonly key: "bagSize" | "bulkBagSize"; readonly unit: string };
  /** Usual figures where they aren't those of tons: steps and minimums are common practice, prices are invented. */
  readonly usual: Readonly<Partial<Record<FieldKey, string>>>;
}

/** A row for each. One that is added is in the estimate, the job, and their papers. */
export const SOLD_BY: readonly SoldBy[] = [
  {
    name: "ton",
    unit: "tons",
    one: "ton",
    needed: "{stoneTons}",
    inYards: "/{stoneDensity}",
    yardsEach: "1/{stoneDensity}",
    isWeight: true,
    asks: [],
    inKind: "",
    usual: {},
  },
  {
    name: "cubic yard",
    unit: "cu yd",
    one: "cu yd",
    needed: "{stoneYards}",
    inYards: "",
    yardsEach: "1",
    asks: [],
    inKind: ", by the cubic yard",
    usual: { orderStep: "0.5", orderMinimum: "1", stoneCost: "84" },
  },
  {
    name: "bag",
    unit: "bags",
    one: "bag",
    needed: "{stoneYards}*27/{bagSize}",
    inYards: "*{bagSize}/27",
    yardsEach: "{bagSize}/27",
    isCounted: true,
    asks: ["bagSize"],
    inKind: ", in bags of ",
    size: { key: "bagSize", unit: " cu ft" },
    usual: { orderStep: "1", orderMinimum: "0", stoneCost: "6.5" },
  },
  {
    name: "bulk bag",
    unit: "bulk bags",
    one: "bulk bag",
    needed: "{stoneYards}/{bulkBagSize}",
    inYards: "*{bulkBagSize}",
    yardsEach: "{bulkBagSize}",
    isCounted: true,
    asks: ["bulkBagSize", "bulkBagLoad"],
    inKind: ", in bulk bags of ",
    size: { key: "bulkBagSize", unit: " cu yd" },
    usual: { orderStep: "1", orderMinimum: "0", stoneCost: "145" },
  },
];

const named = (name: string): SoldBy => must(SOLD_BY.find((one) => one.name === name));
/** What beds of earlier versions are sold by. */
export const TON = named("ton");

/** Other names of the trade, to find the unit that was meant. */
const OTHER_NAMES = { sack: "bulk bag" };

/**
 * The unit of a name; capitals and hyphens don't matter.
 *
 * @throws Problem "name" with the nearest one, for a name that isn't in the table.
 * @example soldByNamed("Bulk bag").unit // "bulk bags"
 */
export function soldByNamed(name: string, argument: string): SoldBy {
  return rowNamed(SOLD_BY, name, argument, undefined, OTHER_NAMES);
}

/** The same for a name that was read from a cell: tons for none and for one that isn't in the table, which is refused elsewhere. */
export const soldByOf = (name: string | undefined): SoldBy => rowOr(SOLD_BY, name, TON);

/**
 * What a covering is sold by where no one says: mulch by volume, as it must be (NIST Handbook 130, Method of Sale of
 * Commodities, as the Hamilton County, Ohio, Auditor states it), and stone by the ton.
 */
export function usuallySoldBy(stone: string): SoldBy {
  const wanted = plainName(stone);
  return STONES.find(({ name }) => name === wanted)?.isMulch ? named("cubic yard") : TON;
}

const ASKED: readonly FieldKey[] = SOLD_BY.flatMap(({ asks }) => asks);

/** Whether a bed whose stone is sold so has the field. */
export const asksOfStone = (soldBy: SoldBy, key: FieldKey): boolean =>
  !ASKED.includes(key) || soldBy.asks.includes(key);

/** Whether a block of such a bed has a row for the amount: only bags are lifted one by one. */
export const countsOfStone = (soldBy: SoldBy, key: string): boolean => key !== "bagPounds" || soldBy.isCounted === true;

/** Fields whose usual figures go with what stone is sold by, and which are in its unit. */
export const soldByFieldKeys: readonly FieldKey[] = ["orderStep", "orderMinimum", "stoneCost"];

/** The unit of a field that is in what stone is sold by; undefined for all others. */
export function unitAsSold(soldBy: SoldBy, key: FieldKey): string | undefined {
  if (!soldByFieldKeys.includes(key)) return undefined;
  return key === "stoneCost" ? `per ${soldBy.one}` : soldBy.unit;
}
