import type { CellValue, UsedFacts } from "../../../review/facts";
import { compareRates, type OfficeCell } from "../../../sheets/office/compareRates";
import { type OfficeVersion, VERSION_ROW, versionRow } from "../../../sheets/office/officeFile";
import { findPastJobs } from "../../../sheets/papers/pastJobs";
import { type FoundRateCells, readRateCells } from "../../../workbook/read/rates";
import { readWorkbook } from "../../../workbook/read/workbook";
import { type KnownOffice, readOfficeRecord } from "../../../workbook/settings/office";
import type { PastJobsOnSheet } from "../../papers/readJob";

/** Which office settings a workbook uses, and what has been changed since. */
export interface OfficeState {
  readonly known: KnownOffice;
  /** Labels of rates that aren't what the settings had. */
  readonly changedSince: readonly string[];
}

/** Reads which office settings this workbook uses. Three requests at most. */
export async function readOfficeState(): Promise<OfficeState> {
  const known = await readOfficeRecord();
  const cells = known.record?.rates && (await readRateCells());
  return { known, changedSince: changedSince(known, cells || undefined) };
}

function changedSince({ record }: KnownOffice, cells: FoundRateCells | undefined): string[] {
  if (!record?.rates || !cells) return [];
  const { differences, missing } = compareRates(cells.named, cells.found.rates, record.rates);
  return [...differences.map(({ label }) => label), ...missing];
}

/** All of a workbook that office settings go into or come from. */
export interface OfficeWorkbook {
  readonly known: KnownOffice;
  readonly rates: FoundRateCells | undefined;
  readonly past: PastJobsOnSheet | undefined;
  /** What is on each sheet that holds anything. */
  readonly used: ReadonlyMap<string, UsedFacts>;
}

/** Reads it. Five requests. */
export async function readOfficeWorkbook(): Promise<OfficeWorkbook> {
  const { facts } = await readWorkbook();
  const used = new Map(facts.sheets.flatMap((sheet) => (sheet.used ? [[sheet.name, sheet.used] as const] : [])));
  const shown = facts.sheets.filter(({ visibility }) => visibility === "Visible");
  const [past] = shown.flatMap(({ name, used }) => {
    const found = used && findPastJobs(used.values, used);
    return found ? [{ ...found, sheet: name }] : [];
  });
  return { known: await readOfficeRecord(), rates: await readRateCells(), past, used };
}

/** What a cell of the workbook holds. */
export function contentAt({ used }: OfficeWorkbook, sheet: string, row: number, column: number): CellValue {
  const facts = used.get(sheet);
  return facts?.formulas[row - facts.row]?.[column - facts.column] ?? "";
}

/**
 * The cell that says on the Rates sheet which settings it has, changed to these: the one that says so already, or the
 * first below everything there.
 */
export function versionCells({ rates, used }: OfficeWorkbook, version: OfficeVersion): OfficeCell[] {
  const after = versionRow(version);
  const sheets = rates?.found.sheets ?? [];
  for (const sheet of sheets) {
    const facts = used.get(sheet);
    for (const [row, cells] of facts?.formulas.entries() ?? []) {
      const column = cells.findIndex((cell) => typeof cell === "string" && cell.startsWith(VERSION_ROW));
      if (!facts || column < 0) continue;
      const before = cells[column] ?? "";
      if (before === after) return [];
      return [{ sheet, row: facts.row + row, column: facts.column + column, before, after }];
    }
  }
  const [sheet = ""] = sheets;
  const facts = used.get(sheet);
  if (!facts) return [];
  return [{ sheet, row: facts.row + facts.formulas.length + 1, column: facts.column, before: "", after }];
}
