import { withRow, workedOut } from "../../layout/otherProducts";
import { LEAST_SAVING } from "../../quantities/bed/closeCalls";
import type { Rates } from "../../quantities/bed/rates";
import { type BedToCover, cheapestFabric, type FabricRoll } from "../../quantities/job/cheapestFabric";
import { amountWithUnit, dollarText } from "../numbers";
import type { Job } from "./makePapers";

/**
 * Whether other rolls of the office's own list would cover the job for less than those on its order, in a sentence.
 *
 * @returns undefined where there is nothing to compare: no list of its own, no fabric, a price that isn't known, or rolls
 *   that were typed over.
 */
export function cheaperFabric({ beds, order }: Job, rates: Rates | undefined): string | undefined {
  const rows = (rates?.lists?.fabric?.rows ?? []).filter(({ isSample }) => !isSample);
  const ordered = order.lines.filter(({ key }) => key.startsWith("fabric|"));
  const chosen = ordered.reduce((sum, { money }) => sum + (money?.orderCents ?? Number.NaN), 0) / 100;
  const isTyped = ordered.some(({ whereUsed }) => whereUsed.some(({ typed }) => typed));
  if (rows.length === 0 || ordered.length === 0 || isTyped || Number.isNaN(chosen)) return undefined;
  const covered = beds.filter(({ worked }) => worked && worked.estimate.stripsFt.length > 0);
  const laid = covered.map(({ block }) => rows.map((row) => workedOut(withRow(block.form, "fabric", row))));
  const rolls = rows.flatMap(({ name }, at): FabricRoll[] => {
    const { rollLength, rollCost } = laid.find((ways) => ways[at])?.[at]?.bed.numbers ?? {};
    return rollLength === undefined || rollCost === undefined ? [] : [{ name, lengthFt: rollLength, cost: rollCost }];
  });
  // A row that no bed can be laid with has no length to cut from.
  if (rolls.length < rows.length) return undefined;
  const toCover = covered.map(
    ({ block, worked }, n): BedToCover => ({
      bed: block.name || block.sheet,
      endLapIn: worked?.bed.numbers.endLap ?? 0,
      stripsFt: laid[n]?.map((way) => way?.estimate.stripsFt) ?? [],
    }),
  );
  const best = cheapestFabric(rolls, toCover);
  if (!best) return undefined;
  if (chosen - best.cost < LEAST_SAVING) return "Fabric: no other rolls of your list cover these beds for less.";
  const shares = best.shares.map(
    ({ roll, rolls: count, beds: names }) =>
      `${amountWithUnit(count, "rolls")} of “${roll.name}” for ${listFormat.format(names)}`,
  );
  return `Fabric: ${listFormat.format(shares)} would cost ${dollarText(best.cost)}, ${dollarText(chosen - best.cost)} less than on this order.`;
}

const listFormat = new Intl.ListFormat("en-US");
