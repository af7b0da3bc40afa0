import { countsInPlan } from "../../layout/planOfEstimate";
import { isSame } from "../../quantities/bed/evaluate";
import { type FieldKey, fields } from "../../quantities/bed/fields";
import type { BedForm } from "../../quantities/bed/form";
import { type LineKind, lineKinds, lines } from "../../quantities/bed/lines";
import type { Rates } from "../../quantities/bed/rates";
import { toCents } from "../../quantities/cents";
import { type BedNeeds, type HoursStep, hoursSteps } from "../../quantities/job/bedNeeds";
import { lineOfStep } from "../../quantities/job/bedNeedsOf";
import { jobInputs, kindLabels } from "../../quantities/job/jobAmounts";
import type { JobOrder, OrderLine } from "../../quantities/job/order";
import { type BedToPrice, kindsOfBeds, type OwnLine, type PricedJob, priceJob } from "../../quantities/job/priceJob";

import { blockAt } from "../../sheets/estimate/readBlock";
import { MissingCell } from "../../sheets/job/bedCells";
import { followingForm, jobSheet } from "../../sheets/job/jobSheet";
import type { JobLineShown, JobOnSheet } from "../../sheets/job/readJobBlock";
import type { SheetBed } from "../../sheets/job/sheetBed";
import { type Inserted, insertPlan } from "../../workbook/change/insert";
import { WorkbookFailure } from "../../workbook/failure";
import { previewOf } from "../preview";
import { boughtOf, typedLines } from "./needsOf";
import type { FoundBed } from "./readJob";

/** The price of the beds as one job, and what their own prices come to. */
export interface TogetherPrice {
  readonly job: PricedJob;
  /** Undefined where a bed has no price of its own. */
  readonly apart: number | undefined;
}

/**
 * Prices the beds as one job.
 *
 * @param beds at least one, all worked out.
 * @throws Problem where a bed's inputs don't go together.
 */
export function priceTogether(beds: readonly FoundBed[]): TogetherPrice {
  const own = beds.flatMap(({ block }) =>
    block.lines.flatMap((line) => (line.key === undefined ? [ownLine(line)] : [])),
  );
  const prices = beds.map(({ block }) => block.price);
  const apart = prices.every((price) => price !== undefined)
    ? prices.reduce((cents: number, price) => cents + toCents(price as number), 0) / 100
    : undefined;
  return { job: priceJob(beds.flatMap(toPrice), { own }), apart };
}

/** A bed for the price of its job; none where it can't be worked out. */
export function toPrice({ block, worked }: FoundBed): BedToPrice[] {
  if (!worked) return [];
  const { bed, plan, estimate } = worked;
  const typed = Object.fromEntries(
    typedLines(block, estimate).map(({ line, quantity, unitCost }) => [
      line,
      { ...(quantity !== undefined && { quantity }), ...(unitCost !== undefined && { unitCost }) },
    ]),
  );
  return [{ name: block.name, bed, laid: plan && countsInPlan(bed, plan), typed }];
}

function ownLine({ label, unit, quantity, unitCost = 0, kind }: FoundBed["block"]["lines"][number]): OwnLine {
  return { label, unit, quantity, unitCost, kind: kindOf(kind) };
}

const kindOf = (text: string): LineKind => lineKinds.find((kind) => kind === text) ?? "material";

/** The job estimate for just these beds; undefined where the workbook has none. */
export function jobOnSheetOf(jobs: readonly JobOnSheet[], beds: readonly FoundBed[]): JobOnSheet | undefined {
  return jobs.find((job) => job.beds.length === beds.length && beds.every((bed) => isInJob(bed, job)));
}

/** Whether a bed's block is one of a job's. */
export function isInJob(bed: FoundBed, job: JobOnSheet): boolean {
  return inJob(bed, job) !== undefined;
}

/** A bed's share of the price, as the job's estimate shows it. */
export function shareOf(bed: FoundBed, job: JobOnSheet): number | undefined {
  return inJob(bed, job)?.price;
}

function inJob({ block, onSheet }: FoundBed, { beds }: JobOnSheet) {
  return onSheet && beds.find(({ sheet, cell }) => sheet === block.sheet && blockAt([block], cell) !== undefined);
}

/** What the first version of a job is called. */
const FIRST_OPTION = "Option 1";

/**
 * Writes the estimate of the job on a new sheet.
 *
 * A bed that is a row of a list gets an estimate of its own there, which follows the row.
 *
 * @throws WorkbookFailure for a bed whose block has lost a row that the job needs.
 */
export async function insertJob(name: string, beds: readonly FoundBed[]): Promise<Inserted> {
  const parts = beds.map(({ onSheet, follows, where }): SheetBed | BedForm => {
    const part = onSheet ?? follows;
    if (!part) throw new WorkbookFailure(`${where} can't be found again. Nothing was written. Refresh.`);
    return part;
  });
  const head = { name, option: FIRST_OPTION, differs: "", isChosen: true };
  const job = { ...head, beds: parts, kinds: kindsOfBeds(beds.flatMap(toPrice)) };
  try {
    jobSheet(job, { row: 0, column: 0 });
  } catch (error) {
    if (!(error instanceof MissingCell)) throw error;
    throw new WorkbookFailure(lostRow(error));
  }
  return insertPlan((at) => jobSheet(job, at), { kind: "new sheet", name: name.trim() || "Job" });
}

/** What is said of a bed that has lost a row that its job needs. */
export const lostRow = ({ bed, key }: MissingCell): string =>
  `${bed}: its estimate is missing a row the job needs (${key}). Nothing was written. Put the row back, or insert the estimate again.`;

/** What another version of a job is made from. */
export interface NewOption {
  readonly name: string;
  /** What is typed in place of what the beds have, by field. */
  readonly differences: Readonly<Partial<Record<FieldKey, string>>>;
}

const isUnitCost = (key: FieldKey) => lines.some(({ cost }) => cost === key);
const UNIT_COST = ", unit cost";

/** What a field of an option is called: a unit cost has the label of its line. */
export const differenceLabel = (key: FieldKey): string => fields[key].label + (isUnitCost(key) ? UNIT_COST : "");

/** A bare number with its unit; a length in feet and inches has its own. */
const withUnit = (text: string, unit: string) =>
  unit && /^[\d\s./]+$/.test(text) ? `${text.trim()} ${unit}` : text.trim();

/** What sets an option apart, for the customer: without what the office pays, which earlier versions wrote there, too. */
export const differsForCustomer = (differs: string): string =>
  differs
    .split("; ")
    .filter((part) => !part.includes(`${UNIT_COST}:`))
    .join("; ");

/**
 * Writes another version of a job on a new sheet: its beds follow the first one's in all that isn't different.
 *
 * @param beds of the version that it follows, with blocks; @param rates the office's, for the price of another stone.
 * @throws WorkbookFailure where a bed can't be worked out with the differences; it says which and why.
 */
export async function insertOption(
  { name: job }: JobOnSheet,
  beds: readonly FoundBed[],
  { name, differences }: NewOption,
  rates: Rates | undefined,
): Promise<Inserted> {
  const forms = beds.flatMap(({ onSheet }) =>
    onSheet ? [{ ...followingForm(onSheet, differences), ...(rates && { rates }) }] : [],
  );
  const toPriceOf = (form: BedForm): BedToPrice => {
    const preview = previewOf(form);
    if (!preview.estimate)
      throw new WorkbookFailure(`${form.name || "A bed"}: ${preview.problems[0]?.message} Nothing was written.`);
    return { name: form.name, bed: preview.bed, laid: countsInPlan(preview.bed, preview.plan) };
  };
  const kinds = kindsOfBeds(forms.map(toPriceOf));
  const differs = (Object.entries(differences) as [FieldKey, string][])
    .filter(([key]) => !isUnitCost(key))
    .map(([key, text]) => `${differenceLabel(key)}: ${withUnit(text, fields[key].unit)}`)
    .join("; ");
  const head = { name: job, option: name, differs, isChosen: false };
  const sheetName = [job, name].filter(Boolean).join(" ");
  return insertPlan((at) => jobSheet({ ...head, beds: forms, kinds }, at), { kind: "new sheet", name: sheetName });
}

/** What the estimator added on the job's own sheet, as what one more "bed" takes. */
export function ownNeeds({ lines: shown, name }: JobOnSheet): BedNeeds {
  const own = shown.filter(({ isStandard, isLinked }) => !isStandard && !isLinked);
  return {
    name: name || "Whole job",
    others: boughtOf(own),
    work: {
      areaSqFt: 0,
      bankYards: 0,
      fabricSqFt: 0,
      stoneYards: 0,
      barrowTrips: 0,
      hours: {},
      otherHours: [
        ...own.filter(({ kind }) => kind === "labor"),
        ...shown.filter(({ label, quantity }) => label === SET_UP && quantity > 0),
      ].map(({ label, quantity, comesFirst }) => ({
        label: label || "Other work",
        hours: quantity,
        ...((comesFirst || label === SET_UP) && { comesFirst: true }),
      })),
    },
  };
}

const SET_UP = jobInputs.setUpHours.label;

/**
 * An order that follows the job's sheet: what was typed over there is ordered as typed, and a line that was taken out, or
 * has 0 typed over it, isn't ordered.
 */
export function asTyped(order: JobOrder, job: JobOnSheet): JobOrder {
  const lines = order.lines.flatMap((line) => {
    const shown = shownAs(line, job);
    if (shown === "removed" || (shown?.isTyped && shown.quantity === 0)) return [];
    if (!shown?.isTyped || shown.quantity === line.order) return [line];
    const notes = [
      ...line.notes,
      `${line.order} ${line.orderUnit} calculated; ${shown.quantity} typed in the job estimate.`,
    ];
    return [{ ...line, order: shown.quantity, saved: line.bedByBed - shown.quantity, notes }];
  });
  return { ...order, lines };
}

/** The line of the job's sheet for a line of the order; undefined where it can't be told, as for one that was renamed. */
function shownAs(line: OrderLine, job: JobOnSheet): JobLineShown | "removed" | undefined {
  if (line.key.startsWith("other|")) return undefined;
  const label = labelOf(line);
  if (!line.key.startsWith("stakes|")) return standardLine(label, job);
  // Each kind of edging has a line of this name, below its pieces.
  const pieces = kindLabels.edging + line.specification;
  const from = job.lines.findIndex((shown) => shown.isStandard && isSame(shown.label, pieces));
  return standardLine(label, { ...job, lines: from < 0 ? job.lines : job.lines.slice(from, from + 2) });
}

function standardLine(label: string, { lines, renamed, amounts }: JobOnSheet): JobLineShown | "removed" | undefined {
  const found = lines.find((shown) => shown.isStandard && isSame(shown.label, label));
  // Without a price a line may be in error, or lack altogether: the job says so, and nothing was taken out.
  return found ?? (renamed > 0 || amounts.price === undefined ? undefined : "removed");
}

/** Labor hours that were typed over in the job's estimate, by step: none where the line was taken out. */
export function typedHours(job: JobOnSheet): Partial<Record<HoursStep, number>> {
  return Object.fromEntries(
    hoursSteps.flatMap((step) => {
      const label = lines.find(({ key }) => key === lineOfStep[step])?.label ?? "";
      const shown = standardLine(label, job);
      if (shown === "removed") return [[step, 0]];
      return shown?.isTyped ? [[step, shown.quantity]] : [];
    }),
  );
}

/** Whether the job's sheet still buys or does something: a line that was taken out, or has 0 typed over it, doesn't. */
export function jobHas(what: "haul" | "fabric" | "edging", { lines: shown, renamed }: JobOnSheet): boolean {
  const begin = what === "haul" ? (lines.find(({ key }) => key === "haul")?.label ?? "") : kindLabels[what];
  const found = shown.filter(({ label, isStandard }) => isStandard && label.startsWith(begin));
  return found.some(({ quantity }) => quantity > 0) || (found.length === 0 && renamed > 0);
}

/** What the job's estimate calls a line of the order. */
function labelOf({ key, item, specification }: OrderLine): string {
  const [kind] = key.split("|");
  if (kind === "stone") return `${kindLabels.stone}${item}, ${specification}`;
  if (kind === "delivery") return kindLabels.delivery + specification;
  if (kind === "border") return kindLabels.edging + specification;
  if (kind === "fabric") return kindLabels.fabric + specification;
  if (kind === "stakes") return lines.find((line) => line.key === "stakeLine")?.label ?? item;
  return item;
}

/** The lines of a job's own sheet that the customer reads about. */
export function ownScope({ lines }: JobOnSheet): {
  readonly first: readonly JobLineShown[];
  readonly after: readonly JobLineShown[];
} {
  const own = lines.filter(({ isStandard, isLinked, label }) => !isStandard && !isLinked && label.trim() !== "");
  return { first: own.filter(({ comesFirst }) => comesFirst), after: own.filter(({ comesFirst }) => !comesFirst) };
}
