import type { WorkedOutBed } from "../../layout/planOfEstimate";
import { type AmountKey, amounts } from "../../quantities/bed/amounts";
import type { BedForm } from "../../quantities/bed/form";
import type { Rates } from "../../quantities/bed/rates";
import type { SheetFacts, WorkbookFacts } from "../../review/facts";
import { findBlocks } from "../../sheets/estimate/readBlock";
import { findJobBeds, type JobBed } from "../../sheets/job/jobBeds";
import { findJobBlocks, type JobOnSheet } from "../../sheets/job/readJobBlock";
import { findSheetBeds, type SheetBed } from "../../sheets/job/sheetBed";
import { findJobRows } from "../../sheets/jobRows/findJobRows";
import { productNames } from "../../sheets/jobRows/products";
import { type FoundPastJobs, findPastJobs } from "../../sheets/papers/pastJobs";
import { areaAddress, overlap } from "../../spreadsheet/areas";
import { readRates } from "../../workbook/read/rates";
import { readWorkbook } from "../../workbook/read/workbook";
import { amountText } from "../numbers";
import { previewOf } from "../preview";
import { rowBed } from "./rowBed";

/** A bed that was found in the workbook, worked out, or why it cannot be. */
export interface FoundBed {
  /** Tells beds apart, two of one name, too. */
  readonly id: string;
  readonly where: string;
  /** A row of a list has to be ticked: a list holds the beds of many jobs. */
  readonly tickedAtFirst: boolean;
  readonly block: JobBed;
  /** Where the cells of its block are; undefined for a row of a list. */
  readonly onSheet?: SheetBed | undefined;
  /** For a row of a list: the form of an estimate that follows it. */
  readonly follows?: BedForm | undefined;
  readonly worked: WorkedOutBed | undefined;
  readonly problem: string | undefined;
  /** Where the row of a list, or an estimate that was typed over, says otherwise than its measurements do. */
  readonly notes?: readonly string[];
}

/** The list of past jobs and the sheet on which it stands. */
export interface PastJobsOnSheet extends FoundPastJobs {
  readonly sheet: string;
}

export interface FoundJob {
  readonly beds: readonly FoundBed[];
  /** Job estimates in the workbook, and the one that is selected, if any. */
  readonly jobs: readonly JobOnSheet[];
  readonly selected: JobOnSheet | undefined;
  /** The office's rates, where the workbook has them. */
  readonly rates: Rates | undefined;
  readonly past: PastJobsOnSheet | undefined;
  /** The names of all sheets. */
  readonly sheetNames: readonly string[];
  /** What is used of each sheet that shows, by its name. */
  readonly used: ReadonlyMap<string, NonNullable<SheetFacts["used"]>>;
}

/** Every bed of the workbook that has an estimate block or a row in a list, and the list of past jobs. */
export async function readJob(): Promise<FoundJob> {
  const { facts, sheet, selection } = await readWorkbook();
  const rates = (await readRates())?.rates;
  const used = facts.sheets.flatMap((sheet) =>
    sheet.used && sheet.visibility === "Visible" ? [{ sheet, name: sheet.name, used: sheet.used }] : [],
  );
  const past = used.flatMap(({ name, used }) => {
    const found = findPastJobs(used.values, used);
    return found ? [{ ...found, sheet: name }] : [];
  });
  const beds = used.flatMap(({ sheet, name, used }) => {
    const blocks = findBlocks(used.values, used);
    const onSheet = findSheetBeds(name, used, blocks);
    // The rows of a block, of rates, of a job, or of past jobs are no list of beds.
    if (blocks.length > 0)
      return findJobBeds(name, used, blocks).map((block, index) => blockBed(block, onSheet[index], used));
    const isOther = findPastJobs(used.values, used) || findJobBlocks(name, used).length > 0;
    return isOther ? [] : rowBeds(sheet, used, facts, rates);
  });
  const jobs = used.flatMap(({ name, used }) => findJobBlocks(name, used));
  const selected = jobs.find((job) => job.sheet === sheet && overlap(job.area, selection));
  return {
    ...{ beds, jobs, selected, rates, past: past[0] },
    sheetNames: facts.sheets.map(({ name }) => name),
    used: new Map(used.map((sheet) => [sheet.name, sheet.used])),
  };
}

function rowBeds(
  sheet: SheetFacts,
  used: NonNullable<SheetFacts["used"]>,
  facts: WorkbookFacts,
  rates: Rates | undefined,
): FoundBed[] {
  const { name, hiddenRows, merged } = sheet;
  const tables = facts.tables.filter((table) => table.sheet === name);
  const names = facts.names.map((one) => one.name);
  const products = productNames(rates);
  const lists = findJobRows({ ...used, name, hiddenRows, merged, tables, names, weighsStone: false, products });
  return lists.flatMap(({ beds }) =>
    beds.map((row) => {
      const where = `${name}, row ${row.row + 1}`;
      return { id: where, where, tickedAtFirst: false, ...rowBed(name, row, rates) };
    }),
  );
}

/** Counts of an estimate that its drawing and the crew's sheet have, too. */
const COUNTS = [
  "borderRun",
  "pieces",
  "stakes",
  "fabricStrips",
  "rolls",
  "pins",
] as const satisfies readonly AmountKey[];
/** What a sheet that rounds to hundredths may differ by. */
const SAME_COUNT = 0.01;

function blockBed(block: JobBed, onSheet: SheetBed | undefined, used: NonNullable<SheetFacts["used"]>): FoundBed {
  const where = `${block.sheet}!${areaAddress(block.area).split(":")[0]}`;
  const preview = previewOf(block.form);
  const noPrice = block.price === undefined ? "It has no price: look at its unit costs and rates." : undefined;
  const base = { id: where, where, tickedAtFirst: true, block, onSheet };
  if (!preview.estimate) return { ...base, worked: undefined, problem: preview.problems[0]?.message };
  const { bed, plan, estimate } = preview;
  const notes = COUNTS.flatMap((key) => {
    const cell = onSheet?.cells.get(key);
    const shown = cell && used.values[cell.row - used.row]?.[cell.column - used.column];
    const calculated = estimate.amounts[key];
    if (typeof shown !== "number" || Math.abs(shown - calculated) < SAME_COUNT) return [];
    return [`${amounts[key].label}: ${amountText(shown)} in the estimate, ${amountText(calculated)} calculated.`];
  });
  return { ...base, worked: { bed, plan, estimate }, problem: noPrice, notes };
}
