import { useState } from "preact/hooks";
import type { PlainCopy } from "../../sheets/plain/result";
import type { CopyMode } from "../../sheets/plain/toPlain";
import type { InTheWay } from "../../workbook/change/place";
import { selectedPlace } from "../../workbook/read/selection";
import { canOpenWorkbooks } from "../../workbook/sheets";
import { undoInsert } from "../undoInsert";
import { useSelection } from "../useSelection";
import { useStatus } from "../useStatus";
import { download } from "./download";
import { copyFile, copyForSheet, copyForWorkbook, copyName, type OnSheet, openCopy, writeCopy } from "./makeCopy";
import { readAgain, readSource, type Source, type What } from "./source";

export type Where = "new sheet" | "cell" | "workbook";

export interface CopyChoice {
  readonly what: What;
  readonly where: Where;
  readonly mode: CopyMode;
}

/** What was looked at before anything is written, and what it would become. */
export interface Looked {
  readonly choice: CopyChoice;
  readonly source: Source;
  readonly copy: PlainCopy;
}

/** Copies cells so that they work without the add-in: looks at them first, and writes what was looked at. */
export function useCopy() {
  const [choice, setChoice] = useState<CopyChoice>({ what: "sheet", where: "new sheet", mode: "formulas" });
  const [looked, setLooked] = useState<Looked>();
  const [inTheWay, setInTheWay] = useState<InTheWay>();
  /** The id of the insert that can be undone. */
  const [canUndo, setCanUndo] = useState<string>();
  const reporter = useStatus();
  const selected = useSelection();
  const opens = canOpenWorkbooks();

  const attempt: typeof reporter.attempt = (text, action) => {
    setInTheWay(undefined);
    return reporter.attempt(text, action);
  };

  const write = async ({ choice: { mode }, source: before }: Looked, to: OnSheet): Promise<string | undefined> => {
    const inserted = await writeCopy(await readAgain(before), mode, to);
    if (!inserted.done) {
      setInTheWay(inserted.inTheWay);
      return undefined;
    }
    setLooked(undefined);
    setCanUndo(inserted.id);
    return `Copied to ${inserted.sheetName}!${inserted.address}.`;
  };

  const hand = async ({ choice: { mode }, source: before }: Looked): Promise<string> => {
    const source = await readAgain(before);
    if (opens) await openCopy(source, mode);
    else download(await copyFile(source, mode), copyName(source, mode));
    setLooked(undefined);
    return "The copy is open as a separate workbook. Save it where you want to keep it.";
  };

  return {
    choice,
    looked,
    inTheWay,
    canUndo,
    status: reporter.status,
    isWorking: reporter.isWorking,
    selected,
    /** Whether the host opens the copy as a workbook, or the browser saves it. */
    opens,
    choose: (change: Partial<CopyChoice>) => {
      setChoice({ ...choice, ...change });
      setLooked(undefined);
      setInTheWay(undefined);
      // What is being written goes on, and is still to be told.
      if (!reporter.isWorking) reporter.clear();
    },
    look: () =>
      attempt("Reading the cells…", async () => {
        const source = await readSource(choice.what);
        const isElsewhere = choice.where === "workbook";
        const copy = isElsewhere
          ? copyForWorkbook(source, choice.mode)
          : copyForSheet(source, choice.mode, { kind: "new sheet" });
        setLooked({ choice, source, copy });
        return undefined;
      }),
    make: (found: Looked) =>
      attempt("Making the copy…", async () => {
        if (found.choice.where === "workbook") return hand(found);
        if (found.choice.where === "new sheet") return write(found, { kind: "new sheet" });
        return write(found, { kind: "cell", ...(await selectedPlace()) });
      }),
    makeAt: (found: Looked, to: OnSheet) => attempt("Making the copy…", () => write(found, to)),
    undo: () =>
      attempt("Undoing…", async () => {
        const said = await undoInsert(canUndo);
        setCanUndo(undefined);
        return said;
      }),
    cancel: () => {
      setLooked(undefined);
      setInTheWay(undefined);
      reporter.say("Nothing was written.");
    },
  };
}
