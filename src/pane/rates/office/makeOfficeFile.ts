import {
  type OfficeParts,
  type OfficeVersion,
  officeFile,
  officeText,
  pastLineToFile,
} from "../../../sheets/office/officeFile";
import { ratesToSave } from "../../../sheets/office/ratesToSave";
import { readOffice } from "../../../sheets/office/readOffice";
import { thousands } from "../../../sheets/templates/limits";
import { WorkbookFailure } from "../../../workbook/failure";
import { storedTexts, textsToSave } from "./officeDetails";
import type { OfficeWorkbook } from "./readOfficeWorkbook";

/** What of the workbook goes into a file. */
export interface Ticks {
  readonly rates: boolean;
  readonly texts: boolean;
  readonly past: boolean;
}

/** As the schema of the file has them. */
const LONGEST_NAME = 80;
const MOST_PAST_LINES = 2000;

const NOTHING_SAVED = "Nothing was saved.";

/**
 * The office's file of a workbook.
 *
 * @returns the file and its text, and what was left out of it since it's damaged.
 * @throws WorkbookFailure where nothing is ticked, or where no workbook could load it.
 */
export function makeOfficeFile(version: OfficeVersion, { rates, past }: OfficeWorkbook, ticks: Ticks) {
  if (version.office === "") throw new WorkbookFailure(`Type the office's name first. ${NOTHING_SAVED}`);
  if (version.office.length > LONGEST_NAME) {
    throw new WorkbookFailure(`Type a shorter name, of ${LONGEST_NAME} characters or less. ${NOTHING_SAVED}`);
  }
  if (ticks.past && past && past.lines.length > MOST_PAST_LINES) {
    throw new WorkbookFailure(
      `${NOTHING_SAVED} The list of past jobs has ${thousands(past.lines.length)} lines, and a file holds ${thousands(MOST_PAST_LINES)}. Delete old ones, or save without past jobs.`,
    );
  }
  const saved = ticks.rates && rates ? ratesToSave(rates.named, rates.found.rates) : undefined;
  const parts: OfficeParts = {
    ...(saved && { rates: saved.rates }),
    ...(ticks.texts && { texts: textsToSave(storedTexts().details) }),
    ...(ticks.past && past && { pastJobs: past.lines.map(pastLineToFile) }),
  };
  if (Object.keys(parts).length === 0) throw new WorkbookFailure(`Choose what to save first. ${NOTHING_SAVED}`);
  const file = officeFile(version, parts);
  const text = officeText(file);
  const read = readOffice(text);
  if (!read.ok) throw new WorkbookFailure(`${NOTHING_SAVED} ${read.why.join(" ")}`);
  return { file, text, leftOut: saved?.leftOut ?? [] };
}
