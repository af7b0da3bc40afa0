import { listKeys, listNames } from "../../quantities/bed/officeLists";
import { type RateKey, rateKeys, rateNames, stoneListNames } from "../../quantities/bed/rates";
import type { WantedRates } from "../../sheets/rates/ratesSheet";
import type { FoundRates } from "../../workbook/read/rates";

/** Rates that the workbook has no names for: those of a sheet from before there were so many. */
export function missingRates({ names }: FoundRates): WantedRates {
  const has = new Set(names.map((name) => name.toLowerCase()));
  const isMissing = (name: string) => !has.has(name.toLowerCase());
  const keys: RateKey[] = rateKeys.filter((key) => isMissing(rateNames[key]));
  // The list belongs together; where a part of it is left, a second one would be beside it.
  return {
    keys,
    stones: Object.values(stoneListNames).every(isMissing),
    lists: listKeys.filter((key) => listNames(key).every(isMissing)),
    taken: names,
  };
}
