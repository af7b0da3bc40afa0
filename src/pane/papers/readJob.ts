import { areaAddress } from "../../sheets/address";
import { findJobBeds, type JobBed } from "../../sheets/job/jobBeds";
import { type FoundPastJobs, findPastJobs } from "../../sheets/papers/pastJobs";
import { readWorkbook } from "../../workbook/readWorkbook";
import { previewOf } from "../preview";
import type { WorkedOutBed } from "./needsOf";

/** A bed that was found in the workbook, worked out, or why it cannot be. */
export interface FoundBed {
  /** Tells beds apart, two of one name, too. */
  readonly id: string;
  readonly where: string;
  readonly block: JobBed;
  readonly worked: WorkedOutBed | undefined;
  readonly problem: string | undefined;
}

/** The list of past jobs and the sheet on which it stands. */
export interface PastJobsOnSheet extends FoundPastJobs {
  readonly sheet: string;
}

export interface FoundJob {
  readonly beds: readonly FoundBed[];
  readonly past: PastJobsOnSheet | undefined;
}

/** Every bed of the workbook that has an estimate block, and the list of past jobs; two syncs. */
export async function readJob(): Promise<FoundJob> {
  const { facts } = await readWorkbook();
  const used = facts.sheets.flatMap(({ name, visibility, used }) =>
    used && visibility === "Visible" ? [{ name, used }] : [],
  );
  const past = used.flatMap(({ name, used }) => {
    const found = findPastJobs(used.values, used);
    return found ? [{ ...found, sheet: name }] : [];
  });
  return { beds: used.flatMap(({ name, used }) => findJobBeds(name, used).map(foundBed)), past: past[0] };
}

function foundBed(block: JobBed): FoundBed {
  const where = `${block.sheet}!${areaAddress(block.area).split(":")[0]}`;
  const preview = previewOf(block.form);
  const noPrice = block.price === undefined ? "It has no price: look at its unit costs and rates." : undefined;
  const base = { id: where, where, block };
  if (!preview.estimate) return { ...base, worked: undefined, problem: preview.problems[0]?.message };
  const { bed, plan, estimate } = preview;
  return { ...base, worked: { bed, plan, estimate }, problem: noPrice };
}
