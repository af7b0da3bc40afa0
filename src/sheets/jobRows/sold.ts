import { quoted } from "../../quantities/bed/evaluate";
import { fields } from "../../quantities/bed/fields";
import { must } from "../../quantities/must";
import { SOLD_BY, type SoldBy, soldByNamed, TON } from "../../quantities/soldBy";
import { followingFormula, listedFigure, NO_RATE } from "../estimate/rateFormulas";
import { byName, type NameTable, troubleOf } from "./byName";
import { type ListSetting, rate, stoneArgument } from "./setting";

/*
 * What the formulas of a row take from what its stone is sold by. Step, minimum, and price are those of the office's list of
 * stone where it sells the row's stone by that unit. Elsewhere the office's single rates are those of tons, and other units
 * have a step and minimum that are usual for them.
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

/** The office's price of a row's stone by a unit; words where it has none. */
export function priceAsSold(setting: ListSetting, soldBy: SoldBy, row: number): string {
  if (setting.stonesHaveUnits) return ofStone(followingFormula({ key: "stoneCost", soldBy }).slice(1), setting, row);
  return soldBy === TON ? ofStone(followingFormula({ key: "stoneCost" }).slice(1), setting, row) : quoted(NO_RATE);
}

/** The order of a row's stone in its unit, from the tons and cubic yards that are needed. */
export function orderAsSold(
  setting: ListSetting,
  soldBy: SoldBy,
  row: number,
  [stoneTons, stoneYards]: readonly [tons: string, yards: string],
): string {
  const needed = filledIn(soldBy.needed, { stoneTons, stoneYards });
  const { orderStep = "0", orderMinimum = "0" } = soldBy.usual;
  const usual =
    soldBy === TON ? [rate(setting, "orderStep"), rate(setting, "orderMinimum", true)] : [orderStep, orderMinimum];
  const [step, minimum] = (["orderStep", "orderMinimum"] as const).map((key, index) => {
    const other = must(usual[index]);
    return setting.stonesHaveSteps ? ofStone(listedFigure(key, soldBy, other), setting, row) : other;
  });
  return `BED.ORDER_UP(${needed},${step},${minimum})`;
}

/** A formula in which `{stone}` is what the row's stone is called. */
export const ofStone = (formula: string, setting: ListSetting, row: number): string =>
  formula.replaceAll("{stone}", () => stoneArgument(setting, row));

/** The tons of such an order. */
export function tonsAsSold({ isWeight, inYards }: SoldBy, order: string, density: string): string {
  return isWeight ? order : `${order}${filledIn(inYards, { stoneDensity: density })}*${density}`;
}
