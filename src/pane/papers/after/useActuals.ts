import { useState } from "preact/hooks";
import { readNumber } from "../../../quantities/numberText";
import { Problem } from "../../../quantities/problem";
import type { PastLine } from "../../../sheets/papers/pastJobs";
import { WorkbookFailure } from "../../../workbook/failure";
import type { Job } from "../makePapers";
import { measuresOf, type PlannedMeasure } from "../measures";
import { readJob } from "../readJob";
import { today } from "../today";
import type { Papers } from "../usePapers";
import { addPastLines } from "./addPastLines";

/** What the crew wrote down, typed back in, and added to the list of past jobs. */
export function useActuals({ attempt, details, setCanUndo, read }: Papers, job: Job) {
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
        const { where, id } = await addPastLines(lines, past);
        setCanUndo(id);
        setTyped({});
        await read();
        return `${lines.length === 1 ? "1 line" : `${lines.length} lines`} added to past jobs on ${where}.`;
      }),
  };
}

function amountOf(text = ""): { readonly amount?: number; readonly problem?: string } {
  if (text.trim() === "") return {};
  try {
    const amount = readNumber(text, "Actually used");
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
  if (job === "") throw new WorkbookFailure("Type the job's name.");
  const wrong = measures.find(({ measure }) => amountOf(typed[measure.key]).problem);
  if (wrong) throw new WorkbookFailure(`${wrong.measure.label}: ${amountOf(typed[wrong.measure.key]).problem}`);
  return measures.flatMap(({ measure: { key, label, unit }, planned, setThen }) => {
    const { amount } = amountOf(typed[key]);
    if (amount === undefined) return [];
    const line = { job, date: today(), measure: label, unit, estimated: planned, actual: amount };
    return [{ ...line, ...(setThen !== undefined && { setThen }) }];
  });
}
