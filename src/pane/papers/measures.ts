import { type Measure, measures } from "../../quantities/history/measures";
import { addedUp } from "../../quantities/job/addedUp";
import type { Job } from "./makePapers";
import type { FoundBed } from "./readJob";

/** Something that is counted when a job is done, with what was planned and by which rate. */
export interface PlannedMeasure {
  readonly measure: Measure;
  readonly planned: number;
  /** The rate behind it, the same for all beds; undefined where they differ or none is behind it. */
  readonly setThen: number | undefined;
}

/** What the crew counts at the end of a job: hours by step, stone, pieces, rolls, pins and loads. */
export function measuresOf({ beds, crew }: Pick<Job, "beds" | "crew">): PlannedMeasure[] {
  return measures
    .map((measure) => ({ measure, planned: planned(measure.key, crew), setThen: rateThen(measure, beds) }))
    .filter((one) => one.planned > 0);
}

function planned(key: string, { amounts, steps }: Job["crew"]): number {
  if (key in amounts) return amounts[key as keyof typeof amounts];
  // Edging of two kinds is set in two steps.
  return addedUp(steps.filter((step) => step.key === key).map(({ hours = 0 }) => hours));
}

function rateThen({ rate }: Measure, beds: readonly FoundBed[]): number | undefined {
  if (!rate) return undefined;
  const rates = new Set(beds.flatMap(({ worked }) => (worked ? [worked.bed.numbers[rate.key]] : [])));
  return rates.size === 1 ? [...rates][0] : undefined;
}
