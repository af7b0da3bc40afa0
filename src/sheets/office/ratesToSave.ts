import { type Rate, type RateKey, type Rates, rateKeys, rateLabel, rateNames } from "../../quantities/bed/rates";
import type { OfficeRates, OfficeStone } from "./officeFile";
import { cellNamed, isSample, type NamedRates, stoneListOf } from "./officeRates";
import { listsToSave } from "./officeRows";

/** The office's rates for a file, and what had to be left out. */
export interface RatesToSave {
  readonly rates: OfficeRates;
  /** Labels of rates that are missing or damaged. */
  readonly leftOut: readonly string[];
}

/**
 * The rates of a workbook, to be saved. What is missing or damaged is left out, so that no file passes it on.
 *
 * @param named the cells of the Rates sheet.
 * @param rates what was read from them.
 */
export function ratesToSave(named: NamedRates, rates: Rates): RatesToSave {
  const values: Record<string, number | string> = {};
  const samples: string[] = [];
  const leftOut: string[] = [];
  for (const key of rateKeys) {
    const value = soundValue(named, rates, key);
    if (value === undefined) leftOut.push(rateLabel(key));
    else values[rateNames[key]] = value;
    if (value !== undefined && isSample(rates, key)) samples.push(rateNames[key]);
  }
  const { lists, leftOut: rowsLeftOut } = listsToSave(named, rates);
  leftOut.push(...rowsLeftOut);
  // A sheet of before has no lists, and then the file has none either.
  const others = { values, samples, ...(Object.keys(lists).length > 0 && { lists }) };
  const list = stoneListOf(named, rates);
  if (!list) return { rates: { ...others, stones: [] }, leftOut: [...leftOut, "the list of stone"] };
  const stones: OfficeStone[] = [];
  const seen = new Set<string>();
  let left = 0;
  for (const { shows } of list.rows) {
    const { kind, price, weight } = shows;
    if (typeof kind !== "string" || kind === "") continue;
    const found = rates.stones[stones.length + left];
    const { name: _, ...cells } = found ?? {};
    const isBad = !found || Object.values(cells).some(({ problem }) => problem !== undefined);
    if (isBad || typeof price !== "number" || seen.has(kind.toLowerCase())) {
      left += 1;
      leftOut.push(`Stone: ${kind}`);
      continue;
    }
    seen.add(kind.toLowerCase());
    const [soldBy, orderStep, orderMinimum] = [found.soldBy, found.orderStep, found.orderMinimum].map(textOf);
    stones.push({
      name: kind,
      ...(soldBy === undefined ? { perTon: price } : { soldBy, price }),
      ...(orderStep !== undefined && { orderStep: Number(orderStep) }),
      ...(orderMinimum !== undefined && { orderMinimum: Number(orderMinimum) }),
      ...(typeof weight === "number" && { tonsPerYard: weight }),
      ...(found.stoneCost.problem === undefined && found.stoneCost.isExample && { sample: true as const }),
    });
  }
  return { rates: { ...others, stones }, leftOut };
}

const textOf = (rate: Rate | undefined) => (rate?.problem === undefined ? rate?.text : undefined);

/** What a rate's cell shows, where it can be used. */
function soundValue(named: NamedRates, rates: Rates, key: RateKey): number | string | undefined {
  const value = cellNamed(named, rateNames[key])?.value;
  if (rates.byField[key].problem !== undefined) return undefined;
  return typeof value === "number" || typeof value === "string" ? value : undefined;
}
