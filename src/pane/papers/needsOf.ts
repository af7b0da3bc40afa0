import type { WorkedOutBed } from "../../layout/planOfEstimate";
import type { Estimate } from "../../quantities/bed/estimate";
import { secondLines } from "../../quantities/bed/lines";
import { edgingKindOf } from "../../quantities/edgingKinds";
import type { BedNeeds } from "../../quantities/job/bedNeeds";
import { bedNeedsOf, secondNeedsOf, type TypedLine } from "../../quantities/job/bedNeedsOf";
import type { BedLine, JobBed } from "../../sheets/job/jobBeds";

/** Quantities that differ by less than this share are the same number, worked out in two places. */
const SAME_SHARE = 1e-6;

/** The line without which nothing of a kind is ordered for a bed: who takes it out of the block does not want it. */
const LINE_OF = {
  stone: "stoneLine",
  sand: "sandLine",
  fabric: "fabric",
  pins: "pinLine",
  spoil: "haul",
} as const satisfies Partial<Record<keyof BedNeeds, string>>;

/**
 * What a bed takes, for an order of all beds together: what its inputs come to, and beside it what its block says
 * otherwise. A line that was taken out of the block is not ordered; one that was typed over is ordered as typed.
 */
export function needsOf(jobBed: JobBed, { bed, estimate }: WorkedOutBed): BedNeeds {
  const added = jobBed.lines.filter(({ key }) => key === undefined);
  const needs = bedNeedsOf(bed, estimate, {
    name: jobBed.name || jobBed.sheet,
    typed: typedLines(jobBed, estimate),
    others: boughtOf(added),
    otherHours: added
      .filter(({ kind }) => kind === "labor")
      .map(({ label, quantity }) => ({ label: label || "Other work", hours: quantity })),
  });
  const has = (key: string) => jobBed.lines.some((line) => line.key === key);
  // A cut edge is labor alone, and a bed without edging has no line of it.
  const { lines } = edgingKindOf(bed.names.edgingKind);
  const border = lines.edging ? { border: "edging" } : lines.setEdging ? { border: "setEdging" } : {};
  const unwanted = Object.entries({ ...LINE_OF, ...border }).flatMap(([part, key]) => (has(key) ? [] : [part]));
  return Object.fromEntries(Object.entries(needs).filter(([part]) => !unwanted.includes(part))) as unknown as BedNeeds;
}

/** What the bed's second edging takes, as one more bed of this name; none where it has none, or it was taken out. */
export function secondNeedsIn(jobBed: JobBed, { bed, estimate }: WorkedOutBed, name: string): BedNeeds[] {
  // Its lines begin with its pieces, or with the labor of one that is only cut.
  const [first] = secondLines(edgingKindOf(bed.names.secondKind));
  if (!first || !jobBed.lines.some(({ key }) => key === first.key)) return [];
  return secondNeedsOf(bed, estimate, { name, typed: typedLines(jobBed, estimate) });
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
