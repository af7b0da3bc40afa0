import { useEffect, useRef, useState } from "preact/hooks";
import { SOURCED_SOILS, SOURCED_STONES } from "../../quantities/tableSources";
import { type Dismissal, dismiss, type Sorted, sortDismissed } from "../../review/dismissals";
import type { Scope } from "../../review/facts";
import type { Finding } from "../../review/finding";
import { knowledgeOf } from "../../review/knowledge";
import { reportRows } from "../../review/report";
import { type Progress, type Review, review, runInSlices } from "../../review/review";
import { checkReport } from "../../sheets/checkReport";
import { undoChanges, type WrittenChanges, writeChanges } from "../../workbook/change/cells";
import { insertPlan } from "../../workbook/change/insert";
import { readForCheck, scopeOf } from "../../workbook/read/workbook";
import { changeDismissals } from "../../workbook/settings/dismissals";
import { callFunction } from "../callFunction";
import { useOnceMore } from "../useOnceMore";
import { useStatus } from "../useStatus";

const KNOWLEDGE = knowledgeOf(SOURCED_STONES, SOURCED_SOILS);

/** The day as it is kept with a dismissal, such as 2026-03-02. */
const today = () => new Date().toLocaleDateString("en-CA");

/** Checking, what was found, and what the person makes of it. */
export function useCheck() {
  const [scope, setScope] = useState<Scope["kind"]>("workbook");
  const [progress, setProgress] = useState<Progress>();
  const [found, setFound] = useState<Review>();
  const [dismissals, setDismissals] = useState<readonly Dismissal[]>([]);
  const [written, setWritten] = useState<WrittenChanges>();
  const reporter = useStatus();
  const onceMore = useOnceMore();
  const stop = useRef<AbortController>(undefined);

  /** What was said last stays until there is something new to say. */
  const attempt = (action: () => Promise<string | undefined>) =>
    reporter.attempt(undefined, action).finally(() => setProgress(undefined));

  const check = () =>
    attempt(async () => {
      setProgress({ done: 0, what: "Reading the workbook" });
      const { known, ...read } = await readForCheck();
      setDismissals(known.dismissals);
      stop.current = new AbortController();
      const steps = review(read.facts, KNOWLEDGE, { scope: scopeOf(read, scope), call: callFunction });
      const result = await runInSlices(steps, { onProgress: setProgress, signal: stop.current.signal });
      setFound(result);
      return result ? known.why : "Stopped. Nothing is shown, because a partial check would look complete.";
    });

  const keep = (change: (dismissals: readonly Dismissal[]) => readonly Dismissal[], text: string) =>
    attempt(async () => {
      setDismissals(await onceMore((startOver) => changeDismissals(change, startOver)));
      return text;
    });

  useEffect(() => () => stop.current?.abort(), []);

  const sorted: Sorted | undefined = found && sortDismissed(found.findings, dismissals);
  return {
    scope,
    setScope,
    progress,
    status: reporter.status,
    found,
    sorted,
    canUndo: written?.title,
    check,
    stop: () => stop.current?.abort(),
    dismiss: (finding: Finding, reason: string) =>
      keep((others) => [...others, dismiss(finding, reason, today())], `Ignored: ${finding.title}.`),
    bringBack: ({ key, title }: Dismissal) =>
      keep((others) => others.filter((other) => other.key !== key), `No longer ignored: ${title}.`),
    fix: (finding: Finding) =>
      attempt(async () => {
        setWritten(await writeChanges(finding.title, finding.fix ?? []));
        await check();
        return `Fixed: ${finding.title}, ${finding.where}.`;
      }),
    undo: () =>
      attempt(async () => {
        if (!written) return undefined;
        await undoChanges(written);
        setWritten(undefined);
        await check();
        return `Undone: ${written.title}.`;
      }),
    report: () =>
      attempt(async () => {
        if (!sorted || !found) return undefined;
        const lines = reportRows(sorted, found.unchecked, today());
        const inserted = await insertPlan((at) => checkReport(lines, at), { kind: "new sheet", name: "Sheet check" });
        return inserted.done ? `Added the report as ${inserted.sheetName}.` : undefined;
      }),
  };
}
