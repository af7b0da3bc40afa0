import { borderChoices, fabricChoices } from "../../quantities/bed/choices";
import { type FieldKey, fields } from "../../quantities/bed/fields";
import { type BedForm, blankForm, followedRate } from "../../quantities/bed/form";
import { isPriced, pricedRates, rateKeys, rateLabel } from "../../quantities/bed/rates";
import type { FoundRates } from "../../workbook/read/rates";

/** Everything that is wrong with the rates, in words. */
export function rateProblems({ rates }: FoundRates): string[] {
  const single = rateKeys.map((key) => rates.byField[key].problem);
  const listed = rates.stones.flatMap(({ name: _, ...cells }) => Object.values(cells).map((rate) => rate.problem));
  const lists = Object.values(rates.lists ?? {}).flatMap(({ problem, rows }) => [
    problem,
    ...rows.flatMap(({ cells }) => Object.values(cells).map((rate) => rate.problem)),
  ]);
  return [rates.stonesProblem, ...single, ...listed, ...lists].filter((problem) => problem !== undefined);
}

/** What the prices that are still invented are called. */
export function examplePrices({ rates }: FoundRates): string[] {
  const stones = rates.stones.filter(({ stoneCost }) => stoneCost.problem === undefined && stoneCost.isExample);
  const single = pricedRates.filter((key) => {
    const rate = rates.byField[key];
    return rate.problem === undefined && rate.isExample;
  });
  return [...stones.map(({ name }) => `Stone: ${name}`), ...single.map(rateLabel)];
}

/** What the prices are called that a ready choice has put in the place of the office's own. */
function chosenSamples(typed: BedForm["typed"]): string[] {
  const chosen = [...borderChoices, ...fabricChoices].filter(({ fills }) =>
    Object.entries(fills).every(([key, text]) => typed[key as FieldKey] === text),
  );
  const keys = new Set(chosen.flatMap(({ fills }) => (Object.keys(fills) as FieldKey[]).filter(isPriced)));
  return [...keys].map(rateLabel);
}

/**
 * Where prices come from, and how far they can be trusted.
 *
 * @param typed what was typed or chosen for the bed, which comes before the office's rates. They have no price for stone in
 *   a unit that their list doesn't sell it by.
 */
export function ratesSummary(found: FoundRates, typed: BedForm["typed"] = {}): string {
  const stone = followedRate({ ...blankForm(), typed, rates: found.rates }, "stoneCost") ?? typed.stoneCost;
  const samples = [...chosenSamples(typed), ...(stone === undefined ? [fields.stoneCost.label] : [])];
  if (samples.length > 0) {
    const what = samples.length === 1 ? "a sample" : "samples";
    return `${samples.join(" and ")}: ${what}, not from ${found.sheets.join(", ") || "Rates"}. Type your own.`;
  }
  const [problems, examples] = [rateProblems(found).length, examplePrices(found).length];
  const where = `Prices from ${found.sheets.join(", ") || "Rates"}`;
  if (problems > 0) return `${where}; ${counted(problems, "rate is", "rates are")} missing or damaged.`;
  return examples > 0 ? `${where}; ${counted(examples, "is still a sample", "are still samples")}.` : `${where}.`;
}

const counted = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;
