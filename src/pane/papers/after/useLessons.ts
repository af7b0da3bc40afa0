import { useState } from "preact/hooks";
import { fields } from "../../../quantities/bed/fields";
import { currentText } from "../../../quantities/bed/olderTexts";
import { type RateKey, type Rates, rateKeys, rateNames } from "../../../quantities/bed/rates";
import { type Lesson, learn, type RatesNow } from "../../../quantities/history/learn";
import { measures } from "../../../quantities/history/measures";
import type { PastEntry } from "../../../quantities/history/pastEntry";
import { readNumber, readShare } from "../../../quantities/numberText";
import { Problem } from "../../../quantities/problem";
import { undoChanges, type WrittenChanges, writeChanges } from "../../../workbook/change/cells";
import { WorkbookFailure } from "../../../workbook/failure";
import { namedCell } from "../../../workbook/read/rates";
import { refreshRates, useRates } from "../../rates/store";
import type { PastJobsOnSheet } from "../readJob";
import type { Papers } from "../usePapers";

/** What the past jobs of the workbook say, and changing a rate by it, which only ever happens when told to. */
export function useLessons({ attempt, read }: Papers, past: PastJobsOnSheet | undefined) {
  const known = useRates();
  const [changed, setChanged] = useState<WrittenChanges>();
  const rates = known?.found?.rates;
  const entries = entriesOf(past);
  const follow = async () => {
    // The rate is what it is, whether or not it can be read at once.
    await refreshRates().catch(() => false);
    await read();
  };
  return {
    entries,
    lessons: learn(entries, numbersOf(rates)),
    hasRates: rates !== undefined,
    changed,
    change: ({ proposal, measure }: Lesson) =>
      attempt("Changing the rate…", async () => {
        if (!proposal) throw new WorkbookFailure("No change suggested.");
        const cell = await namedCell(rateNames[proposal.rate]);
        const title = `${measure.rate?.label}: changed to what past jobs say.`;
        setChanged(await writeChanges(title, [{ ...cell, after: proposal.proposed }]));
        await follow();
        return `${title} Every estimate that uses your rates changed with it.`;
      }),
    undo: () =>
      attempt("Undoing…", async () => {
        if (changed) await undoChanges(changed);
        setChanged(undefined);
        await follow();
        return "The rate is back to what it was.";
      }),
  };
}

/** The list's lines by the keys of their measures; what the office calls by words of its own keeps these. */
export function entriesOf(past: PastJobsOnSheet | undefined): PastEntry[] {
  return (past?.lines ?? []).map(({ measure, unit, ...line }) => {
    const known = measures.find((one) => one.label === currentText(measure) && one.unit === currentText(unit));
    return { ...line, measure: known?.key ?? measure };
  });
}

function numbersOf(rates: Rates | undefined): RatesNow {
  if (!rates) return {};
  return Object.fromEntries(rateKeys.flatMap((key) => numberOf(rates, key)));
}

function numberOf(rates: Rates, key: RateKey): [RateKey, number][] {
  const rate = rates.byField[key];
  if (rate.problem !== undefined) return [];
  try {
    return [[key, fields[key].reads === "share" ? readShare(rate.text, key) : readNumber(rate.text, key)]];
  } catch (error) {
    // Tape text is behind no measure of past jobs.
    if (error instanceof Problem) return [];
    throw error;
  }
}
