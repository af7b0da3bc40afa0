import type { Layout } from "../../layout/layout";
import { countsInPlan } from "../../layout/planOfEstimate";
import type { Estimate } from "../../quantities/bed/estimate";
import type { Bed } from "../../quantities/bed/read";
import type { BedNeeds } from "../../quantities/job/bedNeeds";
import { bedNeedsOf, type TypedLine } from "../../quantities/job/bedNeedsOf";
import type { BedLine, JobBed } from "../../sheets/job/jobBeds";

/** A bed with what its inputs come to. */
export interface WorkedOutBed {
  readonly bed: Bed;
  readonly plan: Layout | undefined;
  readonly estimate: Estimate;
}

/** Quantities that differ by less than this share are the same number, worked out in two places. */
const SAME_SHARE = 1e-6;

/** The line without which nothing of a kind is ordered for a bed: who takes it out of the block does not want it. */
const LINE_OF = {
  stone: "stoneLine",
  border: "edging",
  fabric: "fabric",
  pins: "pinLine",
  spoil: "haul",
} as const satisfies Partial<Record<keyof BedNeeds, string>>;

/**
 * What a bed takes, for an order of all beds together: what its inputs come to, and beside it what its block says
 * otherwise. A line that was taken out of the block is not ordered; one that was typed over is ordered as typed.
 */
export function needsOf(jobBed: JobBed, { bed, plan, estimate }: WorkedOutBed): BedNeeds {
  const inPlan = plan && countsInPlan(bed, plan) ? plan.cuts.map(({ lengthFt }) => lengthFt) : undefined;
  const added = jobBed.lines.filter(({ key }) => key === undefined);
  const needs = bedNeedsOf(bed, estimate, {
    name: jobBed.name || jobBed.sheet,
    ...(inPlan && { stripsFt: inPlan }),
    typed: typedLines(jobBed, estimate),
    others: boughtOf(added),
    otherHours: added
      .filter(({ kind }) => kind === "labor")
      .map(({ label, quantity }) => ({ label: label || "Other work", hours: quantity })),
  });
  const has = (key: string) => jobBed.lines.some((line) => line.key === key);
  const unwanted = Object.entries(LINE_OF).flatMap(([part, key]) => (has(key) ? [] : [part]));
  return Object.fromEntries(Object.entries(needs).filter(([part]) => !unwanted.includes(part))) as unknown as BedNeeds;
}

/** What lines that were added by hand buy; labor is the crew's. */
export function boughtOf(
  added: readonly Pick<BedLine, "label" | "unit" | "quantity" | "unitCost" | "kind">[],
): NonNullable<BedNeeds["others"]> {
  return added
    .filter(({ kind }) => kind !== "labor")
    .map(({ label, unit, quantity, unitCost }) => ({
      item: label || "Not named",
      unit,
      order: { quantity, typed: true, ...(unitCost !== undefined && { unitCost }) },
    }));
}

/** What the lines of a block say otherwise than the bed's inputs do. */
export function typedLines(jobBed: JobBed, estimate: Estimate): TypedLine[] {
  return jobBed.lines.flatMap((line) => otherwise(line, estimate) ?? []);
}

/** What a line of the block says otherwise than the bed's inputs do. */
function otherwise({ key, quantity, unitCost, typed }: BedLine, estimate: Estimate): TypedLine | undefined {
  const line = estimate.lines.find((one) => one.key === key);
  if (!key || !line) return undefined;
  const differs = Math.abs(quantity - line.amount) > SAME_SHARE * Math.max(1, Math.abs(line.amount));
  return { line: key, ...((typed || differs) && { quantity }), ...(unitCost !== undefined && { unitCost }) };
}
