/** One measure of one job, or of one bed of it, as it was estimated and as it turned out. */
export interface PastEntry {
  readonly job: string;
  /** Serial number of the day on which the job was done. Jobs of one name and day are one job. */
  readonly date: number;
  /** A key of `measures`, or the office's own words for something else. */
  readonly measure: string;
  /** As it was in the estimate, in the measure's unit. */
  readonly estimated: number;
  /** What the crew wrote down, in the same unit. */
  readonly actual: number;
  /**
   * The rate, or for stone the waste share, by which it was estimated. Left out: the one of today. Without it, jobs from
   * before a rate was changed would speak against the new one.
   */
  readonly setThen?: number;
}
