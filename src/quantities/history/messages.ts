import { FEWEST_FOR_USUAL_COVERAGE } from "./medianInterval";

/** "7 jobs", "1 job". */
const jobs = (count: number) => `${count} ${count === 1 ? "job" : "jobs"}`;
const percent = (share: number) => `${Math.abs(Math.round(share * 100))} %`;

/** In which words a ratio is told: hours run longer or shorter, amounts come to more or less. */
export interface RatioWords {
  readonly more: string;
  readonly less: string;
  readonly same: string;
  readonly verb: string;
}

export const hoursWords: RatioWords = { verb: "took", more: "longer", less: "shorter", same: "as long" };
export const amountWords: RatioWords = { verb: "used", more: "more", less: "less", same: "as much" };

/** What past jobs tell, in sentences for the pane and the sheet. Part of the one catalogue. */
export const historyWords = {
  tooFew: (count: number, fewest: number) =>
    `${count === 0 ? "No job" : jobs(count)} so far. Nothing is proposed from fewer than ${fewest}.`,
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
  sure: (coverage: number) => `(an interval of ${(coverage * 100).toFixed(1)} %)`,
  widest: () => `From ${jobs(FEWEST_FOR_USUAL_COVERAGE)} on it can be one of 95 %.`,
  propose: (what: string, proposed: string, now: string) => `Propose ${proposed} for “${what}” instead of ${now}.`,
  keep: (now: string) => `That may be chance: keep ${now}.`,
  fits: (now: string) => `${now} fits.`,
  underNet: () => "Less than the net volume was used: look at depth and weight of the stone before the waste.",
  leftOut: (count: number) =>
    `${count} ${count === 1 ? "entry tells" : "entries tell"} nothing: estimate or actual amount is missing.`,
  rateUnknown: (count: number) =>
    `${jobs(count)} ${count === 1 ? "does" : "do"} not say by which rate ${count === 1 ? "it was" : "they were"} ` +
    "estimated; today's is taken.",
} as const;

/** "12.5 ft/h", "9 %". */
export function rateWords(value: number, unit: string): string {
  return unit === "share" ? percent(value) : `${Number(value.toPrecision(6))} ${unit}`;
}
