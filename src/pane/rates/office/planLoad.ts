import { rateLabel } from "../../../quantities/bed/rates";
import { compareRates, type OfficeCell, type RateDifference } from "../../../sheets/office/compareRates";
import type { OfficeFile, OfficeRates } from "../../../sheets/office/officeFile";
import { listNamed, rowLabel, rowWords, unknownInLists } from "../../../sheets/office/officeRows";
import { cellsBelow, countJobs, newPastLines } from "../../../sheets/office/pastJobs";
import { rateWords, stoneCells, stoneWords } from "../../../sheets/office/rateWords";
import { rateNamed } from "../../../sheets/office/readOffice";
import { recordOf } from "../../../sheets/office/record";
import { PAST_JOBS_SHEET, pastJobsSheet } from "../../../sheets/papers/pastJobs";
import { allRates, RATES_SHEET, ratesSheet } from "../../../sheets/rates/ratesSheet";
import { areaAddress } from "../../../spreadsheet/areas";
import type { NewSheet } from "../../../workbook/change/insert";
import type { OfficeWrites } from "../../../workbook/change/officeSettings";
import { storedTexts, textDifferences, unknownTexts } from "./officeDetails";
import { contentAt, type OfficeWorkbook, versionCells } from "./readOfficeWorkbook";

/** What loading a file would change, for the person, and what it would write. */
export interface LoadPlan {
  readonly file: OfficeFile;
  /** Rates that differ; absent where the file has none, or the workbook has no Rates sheet yet. */
  readonly differences?: readonly RateDifference[];
  /** The rates of a Rates sheet that is made. */
  readonly newSheet?: readonly string[];
  /** Rows of lists that the workbook keeps beside the file's. */
  readonly stays: readonly string[];
  readonly texts: readonly string[];
  /** Past jobs that are added, and lines that are already in the list. */
  readonly past?: { readonly jobs: number; readonly lines: number; readonly there: number };
  /** What can't be loaded, and why. */
  readonly notes: readonly string[];
  readonly writes: OfficeWrites;
}

/** What loading a file would do to a workbook as it was read. */
export function planLoad(file: OfficeFile, workbook: OfficeWorkbook): LoadPlan {
  const cells: OfficeCell[] = [];
  const sheets: NewSheet[] = [];
  const notes: string[] = [];
  const plan: { differences?: readonly RateDifference[]; newSheet?: readonly string[]; stays: readonly string[] } = {
    stays: [],
  };
  const { rates, texts, pastJobs } = file;
  if (rates && workbook.rates) {
    const { named, found } = workbook.rates;
    const compared = compareRates(named, found.rates, rates);
    cells.push(...compared.cells, ...versionCells(workbook, file));
    Object.assign(plan, { differences: compared.differences, stays: compared.stays });
    notes.push(...compared.problems);
    if (compared.missing.length > 0) {
      notes.push(
        `The Rates sheet has no cell for ${compared.missing.join(", ")}. Add what's missing from the sheet first, then load again.`,
      );
    }
  } else if (rates) {
    sheets.push({
      name: RATES_SHEET,
      plan: ratesSheet(CORNER, { ...allRates, loaded: { rates, version: file } }),
    });
    plan.newSheet = ratesInWords(rates);
  }
  const unknown = [...unknownRates(rates), ...unknownTexts(texts ?? {})];
  if (unknown.length > 0) notes.push(`This version of the add-in doesn't have ${unknown.join(", ")}: left out.`);
  const past = pastJobs && planPast(file, workbook, cells, sheets, notes);
  const stored = storedTexts();
  if (texts && stored.trouble) notes.push("This browser can't save the letterhead and terms, so they're left out.");
  const { why, mayReplace = false } = workbook.known;
  if (why) notes.push(mayReplace ? `${why} Loading replaces it.` : why);
  return {
    file,
    ...plan,
    texts: texts && !stored.trouble ? textDifferences(texts, stored.details) : [],
    ...(past && { past }),
    notes,
    writes: { record: recordOf(file, rates), startOver: mayReplace, cells, sheets },
  };
}

const CORNER = { row: 0, column: 0 };

/** Puts the lines that are new with what is written, if there is room for them. */
function planPast(
  { pastJobs = [] }: OfficeFile,
  workbook: OfficeWorkbook,
  cells: OfficeCell[],
  sheets: NewSheet[],
  notes: string[],
): LoadPlan["past"] {
  const { past } = workbook;
  const lines = newPastLines(pastJobs, past?.lines ?? []);
  const there = pastJobs.length - lines.length;
  if (lines.length === 0) return { jobs: 0, lines: 0, there };
  if (!past) {
    sheets.push({ name: PAST_JOBS_SHEET, plan: pastJobsSheet(lines, CORNER) });
    return { jobs: countJobs(lines), lines: lines.length, there };
  }
  const below = cellsBelow(lines, past);
  if (below.some(({ sheet, row, column }) => contentAt(workbook, sheet, row, column) !== "")) {
    const { row, rows, column, columns } = past.area;
    const place = areaAddress({ row: row + rows, rows: lines.length, column, columns });
    notes.push(`Past jobs can't be added: ${past.sheet}!${place} isn't blank. Make room there, then load again.`);
    return undefined;
  }
  cells.push(...below);
  return { jobs: countJobs(lines), lines: lines.length, there };
}

function unknownRates(rates: OfficeRates | undefined): string[] {
  const single = Object.keys(rates?.values ?? {}).filter((name) => rateNamed(name) === undefined);
  return [...single, ...unknownInLists(rates?.lists)];
}

/** The rates of a file, one a line. */
function ratesInWords({ values, samples, stones, lists = {} }: OfficeRates): string[] {
  const single = Object.entries(values).flatMap(([name, value]) => {
    const key = rateNamed(name);
    if (!key) return [];
    return `${rateLabel(key)}: ${rateWords(key, value)}${samples.includes(name) ? " (sample)" : ""}`;
  });
  const listed = stones.map(
    (stone) => `Stone: ${stone.name}: ${stoneWords(stoneCells(stone))}${stone.sample ? " (sample)" : ""}`,
  );
  const rows = Object.entries(lists).flatMap(([name, own]) => {
    const key = listNamed(name);
    if (!key) return [];
    return own.map((row) => `${rowLabel(key, row)}: ${rowWords(key, row)}${row.sample ? " (sample)" : ""}`);
  });
  return [...listed, ...rows, ...single];
}

/** Whether loading would change anything that shows. */
export function changesNothing({ differences = [], newSheet, texts, past, notes }: LoadPlan): boolean {
  return differences.length === 0 && !newSheet && texts.length === 0 && (past?.lines ?? 0) === 0 && notes.length === 0;
}
