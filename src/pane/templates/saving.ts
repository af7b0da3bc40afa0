import type { WorkbookFacts } from "../../review/facts";
import { blockAt, findBlocks } from "../../sheets/estimate/readBlock";
import { findOutside, type Outside, type Treatment } from "../../sheets/templates/findOutside";
import { MOST_CELLS, MOST_COLUMNS, MOST_OUTSIDE, MOST_ROWS, thousands } from "../../sheets/templates/limits";
import { type Made, makeTemplate, type Words } from "../../sheets/templates/makeTemplate";
import { areaOfRegion, type Saved } from "../../sheets/templates/readsOf";
import type { RegionRules } from "../../sheets/templates/rules";
import { areaAddress } from "../../spreadsheet/areas";
import { WorkbookFailure } from "../../workbook/failure";
import { type RegionPlace, readRegion, readRules } from "../../workbook/read/region";
import { type ReadWorkbook, readWorkbook } from "../../workbook/read/workbook";
import { surroundingsOf } from "../copy/surroundings";

/** Cells that were read to be saved as a template. */
export interface ToSave {
  /** The bed's name, where they are its block. */
  readonly name: string;
  /** Where they stand, for the person. */
  readonly where: string;
  /** Rows of them that do not show on the sheet; they do in the template. */
  readonly hiddenRows: number;
  readonly saved: Saved;
  readonly rules: RegionRules;
  readonly outside: readonly Outside[];
}

/**
 * Reads the estimate block in which the selection lies, or the selected cells, with all that a template holds of them.
 * Five or six syncs.
 *
 * @throws WorkbookFailure where there is nothing, or too much.
 */
export async function readToSave(what: "block" | "cells"): Promise<ToSave> {
  const book = await readWorkbook();
  const sheet = book.facts.sheets.find(({ name }) => name === book.sheet);
  const { name, place } =
    what === "block" ? blockPlace(book, sheet) : { name: "", place: { kind: "selection" } as const };
  const region = await readRegion(place);
  const area = areaOfRegion(region);
  refuseUnfit(region.formulas, area);
  const saved: Saved = { region, around: surroundingsOf(book.facts) };
  const outside = findOutside(saved);
  if (outside.length > MOST_OUTSIDE) {
    throw new WorkbookFailure(
      `Formulas in these cells read ${outside.length} things outside them; a template can hold ${MOST_OUTSIDE}. Select the cells they read too, then try again.`,
    );
  }
  const hiddenRows = (sheet?.hiddenRows ?? []).filter((row) => row >= area.row && row < area.row + area.rows).length;
  const where = `${region.sheetName}, ${areaAddress(area)}`;
  return { name, where, hiddenRows, saved, rules: await readRules(region.sheetId, area), outside };
}

type SheetFacts = WorkbookFacts["sheets"][number];

function blockPlace({ selection }: ReadWorkbook, sheet: SheetFacts | undefined): { name: string; place: RegionPlace } {
  const block = sheet?.used && blockAt(findBlocks(sheet.used.values, sheet.used), selection);
  if (!sheet || !block) throw new WorkbookFailure("Select a cell in an estimate, then try again.");
  return { name: block.form.name.trim(), place: { kind: "area", sheetId: sheet.name, area: block.area } };
}

function refuseUnfit(
  formulas: readonly (readonly unknown[])[],
  { rows, columns }: { readonly rows: number; readonly columns: number },
): void {
  if (rows > MOST_ROWS || columns > MOST_COLUMNS || rows * columns > MOST_CELLS) {
    throw new WorkbookFailure(
      `These are ${thousands(rows)} rows by ${thousands(columns)} columns. A template holds at most ${thousands(MOST_ROWS)} rows, ${MOST_COLUMNS} columns and ${thousands(MOST_CELLS)} cells. Select fewer, then try again.`,
    );
  }
  if (formulas.every((row) => row.every((content) => content === ""))) {
    throw new WorkbookFailure("The selected cells are blank. Select the cells you want, then try again.");
  }
}

/** The template of cells that were read. */
export function templateOfCells(
  { saved, rules }: ToSave,
  treatments: ReadonlyMap<string, Treatment>,
  words: Omit<Words, "saved">,
  day: Date,
): Made {
  return makeTemplate(saved, rules, treatments, { ...words, saved: dayText(day) });
}

function dayText(day: Date): string {
  const two = (number: number) => String(number).padStart(2, "0");
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
}
