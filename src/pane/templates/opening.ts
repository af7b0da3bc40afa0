import { type Choices, templatePlan } from "../../sheets/templates/openTemplate";
import { canonical } from "../../sheets/templates/reference";
import type { Template } from "../../sheets/templates/template";
import { type Inserted, insertPlan } from "../../workbook/change/insert";
import type { Place } from "../../workbook/change/place";
import type { SheetsAndNames } from "../../workbook/read/selection";

/** Writes a template as a plan, over nothing; a write that fails is undone. */
export async function writeTemplate(template: Template, choices: Choices, place: Place): Promise<Inserted> {
  return insertPlan((at) => templatePlan(template, choices, at), place);
}

/** Whether a workbook has what a template reads: a name of its, or the sheet of an address. */
export function isThereIn({ sheets, names }: SheetsAndNames): (reads: string) => boolean {
  const has = (all: readonly string[], one: string) => all.some((each) => each.toLowerCase() === one.toLowerCase());
  return (reads) => {
    if (canonical(reads) === undefined) return has(names, reads);
    return has(sheets, sheetOf(reads));
  };
}

/** The sheet of a listed address: `'Front yard'!$B$2` is on Front yard. */
export function sheetOf(reads: string): string {
  const sheet = reads.slice(0, reads.lastIndexOf("!"));
  return sheet.startsWith("'") ? sheet.slice(1, -1).replaceAll("''", "'") : sheet;
}
