import { readListSheet } from "../../../src/workbook/jobRows";
import { readRegion } from "../../../src/workbook/read/region";
import { readWorkbook } from "../../../src/workbook/read/workbook";
import type { HeadlessHost } from "../../headlessHost";
import { officeOf } from "../../listSheets";
import { benchHost } from "../benchHost";
import { type Growing, jobRow, jobRows, type Work } from "./growing";

let host: HeadlessHost | undefined;

/** A workbook with one list of so many rows; the one before is done with. */
async function withRows(rows: number, work: Work): Promise<Work> {
  host?.dispose();
  host = await benchHost(officeOf(jobRows(rows)));
  await host.grid.settled();
  return work;
}

/** Ends the last workbook. */
export function endReads(): void {
  host?.dispose();
  host = undefined;
}

/** As many rows as can be read with their looks at once, at 100×. */
const ROWS = 70;

/** What is read of a workbook in the practice grid, by the rows of its list; the stand-in's own work is in it. */
export const ofReads: readonly Growing[] = [
  {
    what: `Read cells with formatting (${jobRow(0).length} columns)`,
    of: "rows",
    least: ROWS,
    ready: (rows) => withRows(rows, () => readRegion({ kind: "sheet" })),
  },
  {
    what: "Read a workbook for a check",
    of: "rows",
    least: ROWS,
    ready: (rows) => withRows(rows, readWorkbook),
  },
  {
    what: "Read a list to fill",
    of: "rows",
    least: ROWS,
    ready: (rows) => withRows(rows, readListSheet),
  },
];
