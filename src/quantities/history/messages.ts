import { FEWEST_FOR_USUAL_COVERAGE } from "./medianInterval";

/** "7 jobs", "1 job". */
const jobs = (count: number) => `${count} ${count === 1 ? "job" : "jobs"}`;
const percent = (share: number) => `${Math.abs(Math.round(share * 100))}%`;

/** In which words a ratio is told: hours run longer or shorter, amounts come to more or less. */
export interface RatioWords {
  readonly more: string;
  readonly less: string;
  readonly same: string;
  readonly verb: string;
}

export const hoursWords: RatioWords = { verb: "took", more: "longer", less: "shorter", same: "as long" };
export const amountWords: RatioWords = { verb: "used", more: "more", less: "less", same: "as much" };

/** What past jobs say, in sentences for the pane and the sheet. Part of the one catalogue. */
export const historyWords = {
  tooFew: (count: number, fewest: number) =>
    `${count === 0 ? "No jobs" : jobs(count)} so far. It takes ${fewest} to suggest a rate.`,
  found: (count: number, ratio: number, against: string, { verb, more, less, same }: RatioWords) => {
    const share = Math.round((ratio - 1) * 100);
    if (share === 0) return `${jobs(count)}: ${verb} ${same} as ${against}`;
    return `${jobs(count)}: ${verb} ${percent(ratio - 1)} ${share > 0 ? more : less} than ${against}`;
  },
  between: (low: number, high: number, { more, less }: RatioWords) => {
    const way = (ratio: number) => (ratio < 1 ? less : more);
    const oneWay = way(low) === way(high) ? "" : ` ${way(low)}`;
    const [first, last] = low < 1 && high < 1 ? [high, low] : [low, high];
    return `likely between ${percent(first - 1)}${oneWay} and ${percent(last - 1)} ${way(last)}`;
  },
  sure: (coverage: number) => `(${(coverage * 100).toFixed(1)}% confidence)`,
  widest: () => `With ${jobs(FEWEST_FOR_USUAL_COVERAGE)} or more it can be 95%.`,
  propose: (what: string, proposed: string, now: string) => `Change “${what}” from ${now} to ${proposed}.`,
  keep: (now: string) => `That could be chance. Keep ${now}.`,
  fits: (now: string) => `${now} fits.`,
  underNet: () => "You used less than the net volume. Check stone depth and weight before you change the waste.",
  leftOut: (count: number) =>
    `${count} ${count === 1 ? "entry has" : "entries have"} no estimate or no actual amount, so ${count === 1 ? "it doesn't" : "they don't"} count.`,
  rateUnknown: (count: number) =>
    `${jobs(count)} ${count === 1 ? "doesn't" : "don't"} say what rate ${count === 1 ? "it was" : "they were"} estimated at; ` +
    "today's is used.",
} as const;

/** "12.5 ft/h", "9 %". */
export function rateWords(value: number, unit: string): string {
  return unit === "%" ? percent(value) : `${Number(value.toPrecision(6))} ${unit}`;
}
