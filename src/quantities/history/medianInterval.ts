import { must } from "../must";

/** The middle of a list of values, and where the true middle may lie. */
export interface MedianInterval {
  readonly median: number;
  /** Two of the values themselves. */
  readonly low: number;
  readonly high: number;
  /** How often an interval made like this holds the true median, whatever the values are spread like. */
  readonly coverage: number;
}

/** What is asked of an interval where there are values enough. */
export const USUAL_COVERAGE = 0.95;
/** Fewer values than this cannot give it: of five values even the least and the greatest hold it 93.75 % of times. */
export const FEWEST_FOR_USUAL_COVERAGE = 6;

const LOG_OF_HALF = Math.log(0.5);

/**
 * The median of values and a confidence interval for it, from their order alone: the number of values below the true
 * median is binomial with 1/2 whatever the distribution is, so the kth value from either end holds it between them with
 * a probability that is known.
 *
 * The interval from order statistics as in Conover, Practical Nonparametric Statistics (from memory).
 *
 * @param values one at least.
 * @param wanted coverage asked for, over 0 and under 1; the narrowest interval that reaches it is given, or the widest there is.
 * @throws RangeError for an empty list, which no caller sends.
 * @example medianInterval([1, 2, 3, 4, 5, 6]) // { median: 3.5, low: 1, high: 6, coverage: 0.96875 }
 */
export function medianInterval(values: readonly number[], wanted = USUAL_COVERAGE): MedianInterval {
  const count = values.length;
  if (count === 0) throw new RangeError("a median needs a value");
  const sorted = [...values].sort((a, b) => a - b);
  const at = (place: number) => must(sorted[place]);
  const half = (count - 1) / 2;
  let [fromEnd, coverage] = [0, coverageOf(count, 0)];
  while (coverageOf(count, fromEnd + 1) >= wanted) {
    fromEnd++;
    coverage = coverageOf(count, fromEnd);
  }
  return {
    median: (at(Math.floor(half)) + at(Math.ceil(half))) / 2,
    low: at(fromEnd),
    high: at(count - 1 - fromEnd),
    coverage,
  };
}

/** 1 − 2·P(at most so many of the values lie below the true median). */
function coverageOf(count: number, below: number): number {
  let logOfOne = count * LOG_OF_HALF;
  let tail = 0;
  for (let n = 0; n <= below; n++) {
    tail += Math.exp(logOfOne);
    logOfOne += Math.log((count - n) / (n + 1));
  }
  return Math.max(0, 1 - 2 * tail);
}
