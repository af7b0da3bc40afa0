import { addedUp } from "../job/addedUp";
import { grouped } from "../job/asks";
import { sameName } from "../job/plain";
import { must } from "../must";
import type { Measure, RateKind } from "./measures";
import type { PastEntry } from "./pastEntry";

/** What a job took of a measure against what it was estimated to. */
export interface JobRatio {
  readonly job: string;
  readonly date: number;
  /** Estimated by the rate of today; for a share on top, the net amount without it. */
  readonly estimated: number;
  readonly actual: number;
  readonly ratio: number;
}

export interface JobRatios {
  readonly jobs: readonly JobRatio[];
  /** Entries without an estimate or without what was really used: they tell nothing. */
  readonly leftOut: number;
  /** Jobs that do not say by which rate they were estimated, and are taken as estimated by today's. */
  readonly rateUnknown: number;
}

/** Tells whether two entries are of one job. */
export const jobKey = ({ job, date }: Pick<PastEntry, "job" | "date">) => `${date}|${sameName(job)}`;

/**
 * Actual over estimated, job by job. The beds of one job are added first, so that a job counts once however many beds
 * it had. What was estimated by an earlier rate is restated by today's.
 *
 * @param entries of the measure alone.
 * @param rateNow the rate or share of today; left out where the measure has none.
 * @example two entries of one job, 3 h and 5 h estimated, 4 h and 5 h taken: ratio 9/8
 */
export function jobRatios(entries: readonly PastEntry[], measure: Measure, rateNow?: number): JobRatios {
  const isKnown = ({ estimated, actual }: PastEntry) => isOverZero(estimated) && isOverZero(actual);
  const known = entries.filter(isKnown);
  const jobs = grouped(known, jobKey);
  const ratios = jobs.map((job): JobRatio => {
    const estimated = addedUp(job.map((entry) => restated(entry, measure, rateNow)));
    const actual = addedUp(job.map((entry) => entry.actual));
    return { job: must(job[0]).job, date: must(job[0]).date, estimated, actual, ratio: actual / estimated };
  });
  return {
    jobs: ratios.sort((a, b) => a.date - b.date),
    leftOut: entries.length - known.length,
    rateUnknown: rateUnknown(jobs, measure),
  };
}

function rateUnknown(jobs: readonly (readonly PastEntry[])[], { rate }: Measure): number {
  return rate ? jobs.filter((job) => job.some(({ setThen }) => !isRate(setThen, rate.kind))).length : 0;
}

function restated({ estimated, setThen }: PastEntry, measure: Measure, rateNow: number | undefined): number {
  if (!measure.rate || rateNow === undefined) return estimated;
  const then = isRate(setThen, measure.rate.kind) ? setThen : rateNow;
  switch (measure.rate.kind) {
    case "amount per hour":
      return (estimated * then) / rateNow;
    case "hours per amount":
      return (estimated * rateNow) / then;
    case "share on top":
      return estimated / (1 + then);
  }
}

const isOverZero = (value: number) => value > 0 && Number.isFinite(value);

/** A waste share may be 0; a rate may not. */
function isRate(value: number | undefined, kind: RateKind): value is number {
  if (value === undefined) return false;
  return Number.isFinite(value) && (kind === "share on top" ? value >= 0 : value > 0);
}
