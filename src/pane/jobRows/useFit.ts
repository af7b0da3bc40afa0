import { useMemo, useState } from "preact/hooks";
import { type Filling, fillList } from "../../sheets/jobRows/fill";
import { type Correction, type Corrections, fitList, type ListFit, settleColumns } from "../../sheets/jobRows/fit";
import type { HeadingRow } from "../../sheets/jobRows/listRows";
import type { ResultRole } from "../../sheets/jobRows/roles";
import { proposedResults } from "../../sheets/jobRows/wanted";
import { undoChanges, type WrittenChanges } from "../../workbook/change/cells";
import { WorkbookFailure } from "../../workbook/failure";
import { type ReadListSheet, readListSheet, writeRows } from "../../workbook/jobRows";
import { useStatus } from "../useStatus";
import { type AssumedTexts, readAssumed, usualTexts } from "./assumed";

const NO_LIST =
  "No row of this sheet reads like the headings of a list of beds. Select a cell in your list; its headings should name at least a length, a width or an area.";

/** Fitting to a list: reading it, what the estimator says of it, and writing into it. */
export function useFit() {
  const reporter = useStatus();
  const [read, setRead] = useState<ReadListSheet>();
  const [fit, setFit] = useState<ListFit>();
  const [corrections, setCorrections] = useState<Corrections>(new Map());
  const [results, setResults] = useState<readonly ResultRole[]>([]);
  const [replace, setReplace] = useState<ReadonlySet<ResultRole>>(new Set());
  const [texts, setTexts] = useState<AssumedTexts>(usualTexts);
  const [written, setWritten] = useState<WrittenChanges>();

  const show = (next: ListFit | undefined) => {
    setFit(next);
    setCorrections(new Map());
    setReplace(new Set());
    setResults(next ? proposedResults(next) : []);
  };
  const { assumed, problems } = useMemo(() => readAssumed(texts), [texts]);
  const filling: Filling | undefined = useMemo(
    () => fit && fillList(fit, { corrections, results, assumed, replace }),
    [fit, corrections, results, assumed, replace],
  );

  return {
    ...reporter,
    fit,
    columns: fit && settleColumns(fit.columns, corrections),
    results,
    setResults,
    replace,
    texts,
    setTexts,
    problems,
    filling,
    canUndo: written?.title,
    read: () =>
      reporter.attempt("Reading the sheet…", async () => {
        show(undefined);
        const sheet = await readListSheet();
        const found = fitList(sheet.sheet, sheet.selection);
        if (!found) throw new WorkbookFailure(NO_LIST);
        setRead(sheet);
        show(found);
        return undefined;
      }),
    chooseHeading: (heading: HeadingRow) => read && show(fitList(read.sheet, read.selection, heading)),
    correct: (column: number, correction: Correction) =>
      setCorrections(new Map([...corrections, [column, correction]])),
    setReplaces: (role: ResultRole, replaces: boolean) => {
      const others = [...replace].filter((one) => one !== role);
      setReplace(new Set(replaces ? [...others, role] : others));
    },
    write: () =>
      reporter.attempt("Writing…", async () => {
        if (!fit || !filling) return undefined;
        setWritten(await writeRows(fit, filling.changes));
        show(undefined);
        return `Written: ${filling.changes.length.toLocaleString("en-US")} cells on ${fit.cells.sheet.name}, for ${filling.beds.length.toLocaleString("en-US")} beds.`;
      }),
    undo: () =>
      reporter.attempt("Taking it back…", async () => {
        if (!written) return undefined;
        await undoChanges(written);
        setWritten(undefined);
        show(undefined);
        return `Taken back: ${written.title}.`;
      }),
    cancel: () => {
      show(undefined);
      reporter.say("Nothing was written.");
    },
  };
}

export type Fitting = ReturnType<typeof useFit>;
