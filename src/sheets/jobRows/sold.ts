import { fields } from "../../quantities/bed/fields";
import { SOLD_BY, type SoldBy, soldByNamed, TON } from "../../quantities/soldBy";
import { byName, type NameTable, troubleOf } from "./byName";
import { type ListSetting, rate } from "./setting";

/*
 * What the formulas of a row take from what its stone is sold by. The office's step, minimum, and prices are those of tons;
 * other units have what is usual for them.
 */

const table: NameTable<SoldBy> = { role: "soldBy", rows: SOLD_BY, usual: TON, unknown: "no such unit" };

/** A part of a formula that differs by what the stone of its row is sold by. */
export const bySold = (setting: ListSetting, row: number, of: (soldBy: SoldBy) => string): string =>
  byName(setting, table, row, of);

/** What is wrong with the name of a unit, in one line; undefined for one of the table and for a blank. */
export const soldTrouble = (name: string): string | undefined =>
  troubleOf(name, () => soldByNamed(name, fields.soldBy.label));

/** An expression of the estimate for a row: its amounts by key, and the usual sizes of bags. */
const filledIn = (expression: string, amounts: Readonly<Record<string, string>>): string =>
  expression.replace(/\{(\w+)\}/g, (_, key: string) => amounts[key] ?? fields[key as "bagSize"].initial);

/** The order of a row's stone in its unit, from the tons and cubic yards that are needed. */
export function orderAsSold(setting: ListSetting, soldBy: SoldBy, stoneTons: string, stoneYards: string): string {
  const needed = filledIn(soldBy.needed, { stoneTons, stoneYards });
  const { orderStep = "0", orderMinimum = "0" } = soldBy.usual;
  const [step, minimum] =
    soldBy === TON ? [rate(setting, "orderStep"), rate(setting, "orderMinimum", true)] : [orderStep, orderMinimum];
  return `BED.ORDER_UP(${needed},${step},${minimum})`;
}

/** The tons of such an order. */
export function tonsAsSold({ isWeight, inYards }: SoldBy, order: string, density: string): string {
  return isWeight ? order : `${order}${filledIn(inYards, { stoneDensity: density })}*${density}`;
}
