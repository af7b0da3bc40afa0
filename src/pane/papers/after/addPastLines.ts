import { must } from "../../../quantities/must";
import {
  morePastJobs,
  PAST_JOBS_HEADING,
  PAST_JOBS_SHEET,
  type PastLine,
  pastJobsSheet,
} from "../../../sheets/papers/pastJobs";
import { insertPlan } from "../../../workbook/change/insert";
import { WorkbookFailure } from "../../../workbook/failure";
import { sheetId } from "../../../workbook/sheets";
import type { PastJobsOnSheet } from "../readJob";
import { today } from "../today";

/** Where lines were added, and the id under which they can be undone. */
export interface AddedLines {
  readonly where: string;
  readonly id: string;
}

/**
 * Writes lines below the list, or a list on a sheet of its own where there is none.
 *
 * @throws WorkbookFailure where the job is in the list already, or something is below the list.
 */
export async function addPastLines(lines: readonly PastLine[], past: PastJobsOnSheet | undefined): Promise<AddedLines> {
  if (past && lines.some(({ job }) => past.lines.some((line) => line.job === job && isSameDay(line)))) {
    throw new WorkbookFailure(
      `${must(lines[0]).job} is already in the list, dated today. Change it there, or give this job another name.`,
    );
  }
  const inserted = past
    ? await insertPlan((at) => morePastJobs(lines, at), {
        kind: "cell",
        sheetId: await sheetId(past.sheet),
        at: { row: past.area.row + past.area.rows, column: past.area.column },
        under: { row: past.area.row, column: past.area.column, words: PAST_JOBS_HEADING },
      })
    : await insertPlan((at) => pastJobsSheet(lines, at), { kind: "new sheet", name: PAST_JOBS_SHEET });
  if (!inserted.done) {
    const { address, sheetName } = inserted.inTheWay;
    throw new WorkbookFailure(
      `${sheetName}!${address}, below the list, isn't blank. Nothing was written. Make room there, then try again.`,
    );
  }
  return { where: `${inserted.sheetName} at ${inserted.address}`, id: inserted.id };
}

function isSameDay({ date }: PastLine): boolean {
  return date === today();
}
