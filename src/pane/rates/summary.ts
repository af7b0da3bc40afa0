import { pricedRates, rateKeys, rateLabel } from "../../quantities/bed/rates";
import type { FoundRates } from "../../workbook/read/rates";

/** Everything that is wrong with the rates, in words. */
export function rateProblems({ rates }: FoundRates): string[] {
  const single = rateKeys.map((key) => rates.byField[key].problem);
  const listed = rates.stones.flatMap(({ perTon, tonsPerYard }) => [perTon.problem, tonsPerYard?.problem]);
  return [rates.stonesProblem, ...single, ...listed].filter((problem) => problem !== undefined);
}

/** What the prices that are still invented are called. */
export function examplePrices({ rates }: FoundRates): string[] {
  const stones = rates.stones.filter(({ perTon }) => perTon.problem === undefined && perTon.isExample);
  const single = pricedRates.filter((key) => {
    const rate = rates.byField[key];
    return rate.problem === undefined && rate.isExample;
  });
  return [...stones.map(({ name }) => `Stone: ${name}`), ...single.map(rateLabel)];
}

/** Where prices come from, and how far they can be trusted. */
export function ratesSummary(found: FoundRates): string {
  const [problems, examples] = [rateProblems(found).length, examplePrices(found).length];
  const where = `Prices from ${found.sheets.join(", ") || "Rates"}`;
  if (problems > 0) return `${where}; ${counted(problems, "rate is", "rates are")} missing or damaged.`;
  return examples > 0 ? `${where}; ${counted(examples, "is still a sample", "are still samples")}.` : `${where}.`;
}

const counted = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;
