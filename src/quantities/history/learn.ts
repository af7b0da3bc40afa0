import { fields } from "../bed/fields";
import { must } from "../must";
import { type JobRatio, jobRatios } from "./jobRatios";
import { type Measure, measureOf, measures } from "./measures";
import { FEWEST_FOR_USUAL_COVERAGE, type MedianInterval, medianInterval } from "./medianInterval";
import { amountWords, historyWords, hoursWords, rateWords } from "./messages";
import type { PastEntry } from "./pastEntry";
import { type Proposal, proposalFrom } from "./proposal";

/** With fewer jobs than this nothing is proposed: of four, the interval would miss the true middle one time in eight. */
export const FEWEST_JOBS = 5;

/** What an office's past jobs tell about one measure. */
export interface Lesson {
  readonly measure: Measure;
  readonly jobs: readonly JobRatio[];
  /** Of actual over estimated; for stone of actual over net. Undefined with fewer than `FEWEST_JOBS` jobs. */
  readonly ratio: MedianInterval | undefined;
  /** "too few" jobs; "compare" where no rate is behind it; else whether to keep the rate or change it. */
  readonly verdict: "too few" | "compare" | "keep" | "change";
  /** The rate that the jobs speak for, whether or not it is worth a change. */
  readonly proposal: Proposal | undefined;
  /** All this in sentences. */
  readonly text: string;
}

/** The rates of today, by their keys; shares as fractions. A rate that is left out counts as its starting value. */
export type RatesNow = Readonly<Partial<Record<string, number>>>;

/**
 * What past jobs tell, measure by measure: the median of actual over estimated, an interval for it that supposes nothing
 * about how jobs are spread, and the rate or waste share that would have fitted. A typing error or a job that went
 * wrong moves the median little. Nothing is changed here: the office decides.
 *
 * @param entries in any order; @param rates of today.
 * @returns a lesson for each measure that has an entry, in the order of the work, then the office's own measures.
 * @example learn(entries, { edgingRate: 14 })[0]?.text // "7 jobs: took 12 % longer than estimated, …"
 */
export function learn(entries: readonly PastEntry[], rates: RatesNow): Lesson[] {
  const known = measures.map(({ key }) => key);
  const others = [...new Set(entries.map(({ measure }) => measure))].filter((key) => !known.includes(key)).sort();
  return [...known, ...others].flatMap((key) => {
    const ofMeasure = entries.filter(({ measure }) => measure === key);
    return ofMeasure.length > 0 ? [lessonOf(measureOf(key), ofMeasure, rates)] : [];
  });
}

function lessonOf(measure: Measure, entries: readonly PastEntry[], rates: RatesNow): Lesson {
  const { rate } = measure;
  const rateNow = rate && (rates[rate.key] ?? startingRate(rate));
  const { jobs, leftOut, rateUnknown } = jobRatios(entries, measure, rateNow);
  const asides = [
    ...(leftOut > 0 ? [historyWords.leftOut(leftOut)] : []),
    ...(rateUnknown > 0 ? [historyWords.rateUnknown(rateUnknown)] : []),
  ];
  const base = { measure, jobs };
  if (jobs.length < FEWEST_JOBS) {
    const text = [historyWords.tooFew(jobs.length, FEWEST_JOBS), ...asides].join(" ");
    return { ...base, ratio: undefined, verdict: "too few", proposal: undefined, text };
  }
  const ratio = medianInterval(jobs.map((job) => job.ratio));
  const proposal = rate && proposalFrom(ratio, rate, must(rateNow));
  const verdict = proposal ? (proposal.isClear ? "change" : "keep") : "compare";
  const text = [toldRatio(measure, ratio, jobs.length), toldRate(measure, proposal), ...asides].join(" ");
  return { ...base, ratio, verdict, proposal, text };
}

/** Fields hold their starting values as they would be typed. */
function startingRate({ key }: NonNullable<Measure["rate"]>): number {
  const text = fields[key].initial;
  return text.endsWith("%") ? Number(text.slice(0, -1)) / 100 : Number(text);
}

function toldRatio(measure: Measure, { median, low, high, coverage }: MedianInterval, jobs: number): string {
  const words = measure.unit === "labor hours" ? hoursWords : amountWords;
  const against = measure.rate?.kind === "share on top" ? "the net volume" : "estimated";
  const found = `${historyWords.found(jobs, median, against, words)}, ${historyWords.between(low, high, words)}`;
  const sure = `${found} ${historyWords.sure(coverage)}.`;
  return jobs < FEWEST_FOR_USUAL_COVERAGE ? `${sure} ${historyWords.widest()}` : sure;
}

function toldRate(measure: Measure, proposal: Proposal | undefined): string {
  if (!proposal) return must(measure.noRate);
  const rate = must(measure.rate);
  const now = rateWords(proposal.now, rate.unit);
  const told = () => {
    if (proposal.isClear) return historyWords.propose(rate.label, rateWords(proposal.proposed, rate.unit), now);
    return proposal.isNear ? historyWords.fits(now) : historyWords.keep(now);
  };
  return proposal.isUnderNet ? `${historyWords.underNet()} ${told()}` : told();
}
