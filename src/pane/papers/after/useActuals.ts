import { useState } from "preact/hooks";
import { readNumber } from "../../../quantities/numberText";
import { Problem } from "../../../quantities/problem";
import { morePastJobs, PAST_JOBS_SHEET, type PastLine, pastJobsSheet } from "../../../sheets/papers/pastJobs";
import { insertPlan } from "../../../workbook/insert";
import { sheetId } from "../../../workbook/sheetId";
import { WorkbookTrouble } from "../../../workbook/trouble";
import type { Job } from "../makePapers";
import { measuresOf, type PlannedMeasure } from "../measures";
import { type PastJobsOnSheet, readJob } from "../readJob";
import { today } from "../today";
import type { Papers } from "../usePapers";

/** What the crew wrote down, typed back in, and added to the list of past jobs. */
export function useActuals({ attempt, details, setCanTakeBack, read }: Papers, job: Job) {
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const measures = measuresOf(job);
  return {
    measures,
    typed,
    type: (measure: string, text: string) => setTyped((now) => ({ ...now, [measure]: text })),
    problemOf: (measure: string) => amountOf(typed[measure]).problem,
    hasSome: measures.some(({ measure }) => amountOf(typed[measure.key]).amount !== undefined),
    add: () =>
      attempt("Adding to the past jobs…", async () => {
        const lines = linesOf(measures, typed, details.job.trim());
        const { past } = await readJob();
        const where = await write(lines, past);
        setCanTakeBack(true);
        setTyped({});
        await read();
        return `${lines.length} lines were added to the past jobs on ${where}.`;
      }),
  };
}

function amountOf(text = ""): { readonly amount?: number; readonly problem?: string } {
  if (text.trim() === "") return {};
  try {
    const amount = readNumber(text, "Really used");
    return amount >= 0 ? { amount } : { problem: "Type 0 or more." };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return { problem: error.message };
  }
}

function linesOf(
  measures: readonly PlannedMeasure[],
  typed: Readonly<Record<string, string>>,
  job: string,
): PastLine[] {
  if (job === "") throw new WorkbookTrouble("Type what the job is called, so that it can be told from others.");
  const wrong = measures.find(({ measure }) => amountOf(typed[measure.key]).problem);
  if (wrong) throw new WorkbookTrouble(`${wrong.measure.label}: ${amountOf(typed[wrong.measure.key]).problem}`);
  return measures.flatMap(({ measure: { key, label, unit }, planned, setThen }) => {
    const { amount } = amountOf(typed[key]);
    if (amount === undefined) return [];
    const line = { job, date: today(), measure: label, unit, estimated: planned, actual: amount };
    return [{ ...line, ...(setThen !== undefined && { setThen }) }];
  });
}

/** Writes lines below the list, or a list on a sheet of its own where there is none. @returns where. */
async function write(lines: readonly PastLine[], past: PastJobsOnSheet | undefined): Promise<string> {
  if (past && lines.some(({ job }) => past.lines.some((line) => line.job === job && isSameDay(line)))) {
    throw new WorkbookTrouble(
      `${lines[0]!.job} is in the list already, as of today. Change it there, or give this job another name.`,
    );
  }
  const inserted = past
    ? await insertPlan((at) => morePastJobs(lines, at), {
        kind: "cell",
        sheetId: await sheetId(past.sheet),
        at: { row: past.area.row + past.area.rows, column: past.area.column },
      })
    : await insertPlan((at) => pastJobsSheet(lines, at), { kind: "new sheet", name: PAST_JOBS_SHEET });
  if (!inserted.done) {
    const { address, sheetName } = inserted.inTheWay;
    throw new WorkbookTrouble(
      `Something stands below the list, at ${address} on ${sheetName}. Nothing was written. Make room there, then try again.`,
    );
  }
  return `${inserted.sheetName} at ${inserted.address}`;
}

function isSameDay({ date }: PastLine): boolean {
  return date === today();
}
