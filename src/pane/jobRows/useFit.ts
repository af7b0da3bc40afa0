import { useMemo, useState } from "preact/hooks";
import { type Filling, fillList } from "../../sheets/jobRows/fill";
import { type Correction, type Corrections, fitList, type ListFit, settleColumns } from "../../sheets/jobRows/fit";
import type { HeadingRow } from "../../sheets/jobRows/listRows";
import type { ResultRole } from "../../sheets/jobRows/roles";
import { proposedResults } from "../../sheets/jobRows/wanted";
import type { StoneAnswer } from "../../sheets/rates/stoneNames";
import { undoChanges, type WrittenChanges } from "../../workbook/change/cells";
import { WorkbookFailure } from "../../workbook/failure";
import { type ReadListSheet, readListSheet, writeRows } from "../../workbook/jobRows";
import { type FoundRateCells, readRateCells } from "../../workbook/read/rates";
import { callFunction } from "../callFunction";
import { rememberedWords, rememberStones } from "../rates/rememberStones";
import { useStatus } from "../useStatus";
import { type AssumedTexts, askedTexts, readAssumed } from "./assumed";
import { tryOut } from "./tryOut";
import { unknownStones } from "./unknownStones";

const NO_LIST =
  "Can't find a heading row on this sheet. Select a cell in your list. It needs a heading for length, width, or area.";

/** Fitting to a list: reading it, what the estimator says of it, and writing into it. */
export function useFit() {
  const reporter = useStatus();
  const [read, setRead] = useState<ReadListSheet>();
  const [fit, setFit] = useState<ListFit>();
  const [office, setOffice] = useState<FoundRateCells>();
  const [corrections, setCorrections] = useState<Corrections>(new Map());
  const [results, setResults] = useState<readonly ResultRole[]>([]);
  const [replace, setReplace] = useState<ReadonlySet<ResultRole>>(new Set());
  const [texts, setTexts] = useState<AssumedTexts>(askedTexts);
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

  const tried = useMemo(
    () => (fit && filling ? tryOut(fit, filling, office?.named ?? new Map(), callFunction) : []),
    [fit, filling, office],
  );
  const stones = useMemo(
    () => (fit && filling ? unknownStones(fit, filling, corrections, office?.found.rates) : []),
    [fit, filling, corrections, office],
  );

  return {
    ...reporter,
    fit,
    tried,
    stones,
    rates: office?.found.rates,
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
        setOffice(await readRateCells());
        setRead(sheet);
        show(found);
        return undefined;
      }),
    /** Keeps what a yard's names are in the office's list of stone, and shows what comes of it. */
    remember: (answers: readonly StoneAnswer[]) =>
      reporter.attempt("Writing…", async () => {
        const kept = await rememberStones(answers);
        const again = await readListSheet();
        setWritten(kept);
        setOffice(await readRateCells());
        setRead(again);
        setFit(fitList(again.sheet, again.selection, fit?.heading));
        return rememberedWords(answers.length);
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
        return `Wrote ${filling.changes.length.toLocaleString("en-US")} cells on ${fit.cells.sheet.name}, for ${filling.beds.length.toLocaleString("en-US")} beds.`;
      }),
    undo: () =>
      reporter.attempt("Undoing…", async () => {
        if (!written) return undefined;
        await undoChanges(written);
        setWritten(undefined);
        show(undefined);
        return `Undone: ${written.title}.`;
      }),
    cancel: () => {
      show(undefined);
      reporter.say("Nothing was written.");
    },
  };
}

export type Fitting = ReturnType<typeof useFit>;
