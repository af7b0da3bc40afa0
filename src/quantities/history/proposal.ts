import type { RateKey } from "../bed/rates";
import type { Measure } from "./measures";
import type { MedianInterval } from "./medianInterval";
import { sensible, sensibleShare } from "./sensible";

/** A rate that past jobs speak for. */
export interface Proposal {
  readonly rate: RateKey;
  readonly now: number;
  /** Rounded as an office would write it. */
  readonly proposed: number;
  /** What the interval comes to as rates, the lower first, not rounded. */
  readonly low: number;
  readonly high: number;
  /** The rate of today lies outside the interval, and the proposed one is another. */
  readonly isClear: boolean;
  /** The proposed rate, rounded, is the one of today. */
  readonly isNear: boolean;
  /** Less was used than the net amount, which waste cannot explain. */
  readonly isUnderNet: boolean;
}

/**
 * The rate that would have fitted half the jobs: a rate by the hour goes down as hours go up, hours for an amount go up
 * with them, and a share on top is what was used beyond the net amount.
 *
 * @param ratio actual over estimated, for a share on top over the net amount.
 * @param rateNow more than 0, or for a share 0 or more.
 * @example proposalFrom({ median: 1.12, … }, edging, 14).proposed // 12.5 ft/h
 */
export function proposalFrom(
  { median, low, high }: MedianInterval,
  { key, kind }: NonNullable<Measure["rate"]>,
  rateNow: number,
): Proposal {
  const rateAt = (ratio: number): number => {
    switch (kind) {
      case "amount per hour":
        return rateNow / ratio;
      case "hours per amount":
        return rateNow * ratio;
      case "share on top":
        return Math.max(0, ratio - 1);
    }
  };
  const [one, other] = [rateAt(low), rateAt(high)];
  const bounds = { low: Math.min(one, other), high: Math.max(one, other) };
  const proposed = kind === "share on top" ? sensibleShare(rateAt(median)) : sensible(rateAt(median));
  const isNear = proposed === rateNow;
  return {
    rate: key,
    now: rateNow,
    proposed,
    ...bounds,
    isClear: !isNear && (rateNow < bounds.low || rateNow > bounds.high),
    isNear,
    isUnderNet: kind === "share on top" && high < 1,
  };
}
