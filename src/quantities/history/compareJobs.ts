import { addedUp } from "../job/addedUp";
import { grouped } from "../job/asks";
import { must } from "../must";
import { jobKey } from "./jobRatios";
import { type Measure, measureOf, measures } from "./measures";
import type { PastEntry } from "./pastEntry";

/** A job with what it was estimated to take and what it took. */
export interface ComparedJob {
  readonly job: string;
  readonly date: number;
  readonly lines: readonly ComparedLine[];
}

export interface ComparedLine {
  readonly measure: Measure;
  readonly estimated: number;
  readonly actual: number;
  /** Actual less estimated. */
  readonly difference: number;
  /** Actual over estimated; undefined where nothing was estimated. */
  readonly ratio: number | undefined;
}

/**
 * Estimated against actual, job by job and line by line, as they were estimated then.
 *
 * @returns the latest job first; its lines in the order of the work, beds of one job added up.
 * @example compareJobs(entries)[0]?.lines[0]?.difference // hours that the latest job ran over
 */
export function compareJobs(entries: readonly PastEntry[]): ComparedJob[] {
  const placeOf = (key: string) => {
    const place = measures.findIndex((measure) => measure.key === key);
    return place < 0 ? measures.length : place;
  };
  return grouped(entries, jobKey)
    .map((ofJob) => ({
      job: must(ofJob[0]).job,
      date: must(ofJob[0]).date,
      lines: grouped(ofJob, ({ measure }) => measure)
        .map(comparedLine)
        .sort((a, b) => placeOf(a.measure.key) - placeOf(b.measure.key)),
    }))
    .sort((a, b) => b.date - a.date);
}

function comparedLine(entries: readonly PastEntry[]): ComparedLine {
  const estimated = addedUp(entries.map((entry) => entry.estimated));
  const actual = addedUp(entries.map((entry) => entry.actual));
  return {
    measure: measureOf(must(entries[0]).measure),
    estimated,
    actual,
    difference: actual - estimated,
    ratio: estimated > 0 ? actual / estimated : undefined,
  };
}
