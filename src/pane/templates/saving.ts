import { findOutside, type Outside, type Treatment } from "../../sheets/templates/findOutside";
import { MOST_CELLS, MOST_COLUMNS, MOST_OUTSIDE, MOST_ROWS, thousands } from "../../sheets/templates/limits";
import { type Made, makeTemplate, type Words } from "../../sheets/templates/makeTemplate";
import type { Saved } from "../../sheets/templates/readsOf";
import { areaOfRegion } from "../../sheets/templates/readsOf";
import type { RegionRules } from "../../sheets/templates/rules";
import { readRules } from "../../workbook/readRules";
import { WorkbookTrouble } from "../../workbook/trouble";
import { readSource, type Source } from "../copy/source";

/** Cells that were read to be saved as a template. */
export interface ToSave {
  readonly source: Source;
  readonly saved: Saved;
  readonly rules: RegionRules;
  readonly outside: readonly Outside[];
}

/**
 * Reads the estimate block in which the selection lies, or the selected cells, with all that a template holds of them.
 *
 * @throws WorkbookTrouble where there is nothing, or too much.
 */
export async function readToSave(what: "block" | "cells"): Promise<ToSave> {
  const source = await readSource(what);
  const { region, around } = source;
  const { rows, columns } = areaOfRegion(region);
  if (rows > MOST_ROWS || columns > MOST_COLUMNS || rows * columns > MOST_CELLS) {
    throw new WorkbookTrouble(
      `These are ${thousands(rows)} rows by ${thousands(columns)} columns. A template holds at most ${thousands(MOST_ROWS)} rows, ${MOST_COLUMNS} columns and ${thousands(MOST_CELLS)} cells. Select fewer, then try again.`,
    );
  }
  const saved: Saved = { region, around };
  const outside = findOutside(saved);
  if (outside.length > MOST_OUTSIDE) {
    throw new WorkbookTrouble(
      `Formulas in these cells read ${outside.length} things outside of them, and a template holds ${MOST_OUTSIDE}. Select the cells that they read as well, then try again.`,
    );
  }
  return { source, saved, rules: await readRules(region.sheetName, areaOfRegion(region)), outside };
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
