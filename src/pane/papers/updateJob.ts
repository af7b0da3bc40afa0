import type { KindOf } from "../../quantities/job/bedRows";
import { countsOf, type KindNames, kindNamesOf } from "../../quantities/job/priceJob";
import type { BlockUpdate, CellUpdate } from "../../sheets/blockUpdate";
import { MissingCell } from "../../sheets/job/bedCells";
import { columnsOf } from "../../sheets/job/jobBlock";
import type { OptionBlock } from "../../sheets/job/jobOptions";
import { isBlock, type JobAsMade, jobAsMade, jobUpdate, onOwnSheet } from "../../sheets/job/jobUpdate";
import type { JobOnSheet } from "../../sheets/job/readJobBlock";
import { jobColumns, type SheetBed } from "../../sheets/job/sheetBed";
import { cellAddress, quotedSheet } from "../../spreadsheet/areas";
import type { NewSheet } from "../../workbook/change/insert";
import type { BlockInSheet, WrittenBlock } from "../../workbook/change/updateBlock";
import { WorkbookFailure } from "../../workbook/failure";
import { sheetId } from "../../workbook/sheets";
import { type KeptChange, keptChanges, ownRowWords } from "../updateWords";
import { whyRowsStay } from "../whyRowsStay";
import { isInJob, lostRow, toPrice } from "./jobTogether";
import { bedsOfOption, withEstimates } from "./newBeds";
import type { FoundBed, FoundJob } from "./readJob";
import { writeJobUpdate } from "./writeJobUpdate";

/** The estimate of one version of a job, and what is written to it. */
export interface VersionUpdate {
  readonly title: string;
  readonly there: BlockInSheet;
  readonly update: BlockUpdate;
}

/** What an update of a job's estimate will do, before it is done. */
export interface JobUpdatePreview extends VersionUpdate {
  /** Its first cell, such as `'Alder Court'!A1`. */
  readonly where: string;
  /** Sheets with estimates of beds that have none yet, which come first. */
  readonly sheets: readonly NewSheet[];
  /** The other versions of the job that get or lose the same beds. */
  readonly options: readonly VersionUpdate[];
  /** What changes, in words. */
  readonly lines: readonly string[];
  /** What was changed by hand and stays, unless it is to be replaced. */
  readonly kept: readonly KeptChange[];
  /** What was put in by hand and stays in any case. */
  readonly ownRows: readonly string[];
}

/** The update of a job's estimate to other beds, as it is planned. */
interface PlannedUpdate {
  readonly made: JobAsMade;
  readonly beds: readonly SheetBed[];
  readonly kinds: KindNames;
  /** The other versions of the job that its table is to have. */
  readonly options: readonly OptionBlock[];
  readonly update: BlockUpdate;
}

/**
 * @param compares whether the first version gets all others into its table.
 * @throws MissingCell where a bed's block has lost a row.
 */
function planUpdate(job: JobOnSheet, beds: readonly FoundBed[], found: FoundJob, compares = true): PlannedUpdate {
  const all = found.beds.flatMap(({ onSheet }) => onSheet ?? []);
  const made = jobAsMade(job, usedOf(job, found), all);
  const wantedBeds = inOrder(made, beds, job.sheet);
  const kinds = kindNamesOf(wantedBeds.flatMap(({ found: bed }) => toPrice(bed)));
  const counts = countsOf(kinds);
  const others = compares ? optionsOf(job, found) : undefined;
  const options = others?.map(({ sheet, area }) => ({ sheet, at: area })) ?? made.options;
  const wanted = { ...made.head, beds: wantedBeds.map(({ block }) => block), kinds: counts, options };
  return { made, beds: wanted.beds, kinds, options, update: jobUpdate(made, wanted, kinds) };
}

/** The other versions of a job, where this is its first one; undefined where it's one of the others. */
function optionsOf(job: JobOnSheet, found: FoundJob): readonly JobOnSheet[] | undefined {
  const [first, ...others] = found.jobs.filter(({ name }) => name === job.name);
  return first && isBlock(first, job) ? others : undefined;
}

function usedOf(job: JobOnSheet, { used }: FoundJob) {
  const there = used.get(job.sheet);
  if (!there) throw new WorkbookFailure("The job estimate can't be found again. Nothing was changed. Refresh.");
  return there;
}

/** An update of a job's first version, or of any, with what it means for the others. */
interface PlannedJob {
  readonly main: PlannedUpdate;
  readonly sheets: readonly NewSheet[];
  readonly options: readonly { readonly option: JobOnSheet; readonly plan: PlannedUpdate }[];
}

function planJob(job: JobOnSheet, beds: readonly FoundBed[], found: FoundJob): PlannedJob {
  const sheetNames = [...found.sheetNames];
  const own = withEstimates(beds, sheetNames);
  const wanted = own.map(({ bed }) => bed);
  const main = planUpdate(job, wanted, found);
  const options = (optionsOf(job, found) ?? []).flatMap((option) => {
    const taken = bedsOfOption(option, job, wanted, found, sheetNames);
    if (!taken) return [];
    const bedsThere = taken.map(({ bed }) => bed);
    return { option, taken, plan: planUpdate(option, bedsThere, found) };
  });
  return {
    main,
    options,
    sheets: [...own, ...options.flatMap(({ taken }) => taken)].flatMap(({ sheet }) => sheet ?? []),
  };
}

/** What of a job's estimate doesn't fit these beds anymore, in words; nothing where an update couldn't be planned. */
export function jobChanges(job: JobOnSheet, beds: readonly FoundBed[], found: FoundJob): string[] {
  try {
    return linesOfJob(planJob(job, beds, found));
  } catch (error) {
    if (error instanceof MissingCell || error instanceof WorkbookFailure) return [];
    throw error;
  }
}

/** What changes in all versions, and which sheets come with it. */
function linesOfJob({ main, sheets, options }: PlannedJob): string[] {
  return [
    ...linesOf(main),
    ...options.flatMap(({ option, plan }) => linesOf(plan).map((line) => `${option.option || option.sheet}: ${line}`)),
    ...sheets.map(({ name }) => `estimate on a new sheet: ${name}`),
  ];
}

/**
 * What it would change to have a job's estimate hold these beds, and lines for their kinds. A bed that is a row of a list
 * gets an estimate on a sheet of its own; beds that come into the first version or go out do so in the others, too.
 *
 * @param job its estimate in the workbook; @param beds those that it is to have, all worked out.
 * @throws WorkbookFailure where it can't be done in place; it says why.
 */
export async function previewJobUpdate(
  job: JobOnSheet,
  beds: readonly FoundBed[],
  found: FoundJob,
): Promise<JobUpdatePreview> {
  const plan = planned(() => planJob(job, beds, found));
  const main = await versionUpdate(job, plan.main, found);
  const options: VersionUpdate[] = [];
  for (const { option, plan: ofOption } of plan.options) options.push(await versionUpdate(option, ofOption, found));
  const { there, update } = main;
  const used = usedOf(job, found);
  const shown = (cell: CellUpdate) => used.values[cell.rowBefore - used.row]?.[there.area.column - used.column];
  return {
    ...main,
    where: `${quotedSheet(job.sheet)}!${cellAddress(there.area)}`,
    sheets: plan.sheets,
    options,
    lines: linesOfJob(plan),
    kept: keptChanges(
      update.byHand.map((cell) => ({ ...cell, label: cell.label.replace(FORMULA_LABEL, String(shown(cell))) })),
    ),
    ownRows: update.ownRows.map(ownRowWords),
  };
}

/** @throws WorkbookFailure where it can't be done in place; it says why. */
async function versionUpdate(
  job: JobOnSheet,
  { made, beds, update }: PlannedUpdate,
  found: FoundJob,
): Promise<VersionUpdate> {
  const area = { ...job.area, columns: Math.max(job.area.columns, columnsOf(jobColumns(beds).length)) };
  const there = {
    sheetId: await sheetId(job.sheet),
    sheetName: job.sheet,
    area,
    // A bed more may need a column more.
    contents: made.cells.contents.map((cells) => Array.from({ length: area.columns }, (_, at) => cells[at] ?? "")),
  };
  const refused = await whyNot(there, update, made, job, found);
  if (refused) throw new WorkbookFailure(refused);
  return { title: `update of the job estimate ${job.name}`.trim(), there, update };
}

/** What changes in the table of a job's versions. */
function optionLines(before: readonly OptionBlock[], after: readonly OptionBlock[]): string[] {
  const lacks = (all: readonly OptionBlock[], { sheet }: OptionBlock) => all.every((one) => one.sheet !== sheet);
  return [
    ...after.filter((one) => lacks(before, one)).map(({ sheet }) => `option side by side: ${sheet}`),
    ...before.filter((one) => lacks(after, one)).map(() => "an option without a sheet removed"),
  ];
}

/**
 * Has the first version of a job show all versions side by side.
 *
 * @returns undefined where that would change more than the table, or can't be done: the pane says then what doesn't fit.
 */
export async function updateComparison(name: string, found: FoundJob): Promise<WrittenBlock | undefined> {
  const job = found.jobs.find((one) => one.name === name);
  if (!job) return undefined;
  const beds = found.beds.filter((bed) => bed.worked && isInJob(bed, job));
  try {
    const { changes, operations } = planUpdate(job, beds, found, false).update;
    if (beds.length < job.beds.length || changes.length + operations.length > 0) return undefined;
    const preview = await previewJobUpdate(job, beds, found);
    return preview.lines.length > 0 ? await writeJobUpdate(preview, []) : undefined;
  } catch (error) {
    if (error instanceof WorkbookFailure || error instanceof MissingCell) return undefined;
    throw error;
  }
}

/** A label that is a formula, up to what of its line the cell is. */
const FORMULA_LABEL = /^=.*?(?=, (?:quantity|unit cost|cost|markup|price|kind|remark|label)$|$)/s;

/** The beds that stay, in the order of the estimate, then those that are new. */
function inOrder({ beds: before }: JobAsMade, beds: readonly FoundBed[], sheet: string) {
  const parts = beds.flatMap((found) => (found.onSheet ? [{ found, block: onOwnSheet(found.onSheet, sheet) }] : []));
  const placeOf = (bed: SheetBed) => {
    const place = before.findIndex((one) => one && isBlock(one, bed));
    return place < 0 ? before.length : place;
  };
  return [...parts].sort((one, other) => placeOf(one.block) - placeOf(other.block));
}

function planned(work: () => PlannedJob): PlannedJob {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof MissingCell)) throw error;
    throw new WorkbookFailure(lostRow(error));
  }
}

async function whyNot(
  { sheetName, area }: BlockInSheet,
  update: BlockUpdate,
  made: JobAsMade,
  job: JobOnSheet,
  found: FoundJob,
): Promise<string | undefined> {
  const { missing, operations } = update;
  if (missing.length > 0)
    return `Rows of this job estimate are gone from the sheet (${missing.join(", ")}), so it can't be updated in place. Nothing was changed. Add a new job estimate.`;
  const used = found.used.get(sheetName);
  const beside = used?.formulas
    .slice(area.row - used.row, area.row - used.row + made.cells.contents.length)
    .findIndex((cells) =>
      cells
        .slice(job.area.column - used.column + job.area.columns, area.column - used.column + area.columns)
        .some((cell) => cell !== ""),
    );
  if (beside !== undefined && beside >= 0)
    return `Another bed needs a column that isn't free: see row ${area.row + beside + 1} of ${sheetName}. Nothing was changed. Clear it, then update.`;
  if (operations.length === 0) return undefined;
  // Beds of its own are below it, and move along.
  const below = found.beds.flatMap(({ block }) => (block.sheet === sheetName ? [block.area] : []));
  return whyRowsStay({ sheetName, area }, update, below);
}

function linesOf({ made, beds, kinds, options, update: { changes, inserted, removed } }: PlannedUpdate): string[] {
  const isThere = (all: readonly (SheetBed | undefined)[], bed: SheetBed) =>
    all.some((one) => one && isBlock(one, bed));
  const nameOf = ({ name, sheet }: SheetBed) => name || `the bed on ${sheet}`;
  const has = (names: readonly string[], name: string) => names.some((one) => one.toLowerCase() === name.toLowerCase());
  const kindLines = (Object.keys(kinds) as KindOf[]).flatMap((of) => {
    const before = made.kinds[of].filter((name) => !name.startsWith("#") && name !== "none");
    return [
      ...kinds[of].filter((name) => !has(before, name)).map((name) => `lines for another ${of}: ${name}`),
      ...before.filter((name) => !has(kinds[of], name)).map((name) => `no lines anymore for the ${of} ${name}`),
    ];
  });
  const gone = made.beds.filter((bed) => bed === undefined).length;
  const rows = inserted.reduce((sum, { rows: fresh }) => sum + fresh.length, 0);
  const counts = [
    rows > 0 && `${rows} ${rows === 1 ? "row" : "rows"} added`,
    removed.length > 0 && `${removed.length} removed`,
    changes.length > 0 && `${changes.length} ${changes.length === 1 ? "cell" : "cells"} changed`,
  ].filter((part) => part !== false);
  return [
    ...beds.filter((bed) => !isThere(made.beds, bed)).map((bed) => `bed added: ${nameOf(bed)}`),
    ...made.beds.flatMap((bed) => (bed && !isThere(beds, bed) ? [`bed removed: ${nameOf(bed)}`] : [])),
    ...(gone > 0 ? [`${gone === 1 ? "1 bed" : `${gone} beds`} without an estimate removed`] : []),
    ...kindLines,
    ...optionLines(made.options, options),
    ...(counts.length > 0 ? [`in all ${counts.join(", ")}`] : []),
  ];
}
