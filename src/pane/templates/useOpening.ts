import { useState } from "preact/hooks";
import { type Choice, type Choices, unanswered } from "../../sheets/templates/openTemplate";
import { canonical } from "../../sheets/templates/reference";
import type { Template } from "../../sheets/templates/template";
import type { InTheWay, Place } from "../../workbook/change/place";
import { WorkbookFailure } from "../../workbook/failure";
import { type SheetsAndNames, selectedAddress, sheetsAndNames } from "../../workbook/read/selection";
import { undoInsert } from "../undoInsert";
import type { Reporter } from "../useStatus";
import { isThereIn, writeTemplate } from "./opening";

/** A template that is looked at before it is written. */
export interface Looking {
  readonly template: Template;
  readonly there: SheetsAndNames;
}

/** Opening a template: shows what it holds, asks what it leaves open, and writes it. */
export function useOpening(reporter: Reporter) {
  const [looking, setLooking] = useState<Looking>();
  const [choices, setChoices] = useState<Choices>(new Map());
  const [inTheWay, setInTheWay] = useState<InTheWay>();
  /** The id of the insert that can be undone. */
  const [canUndo, setCanUndo] = useState<string>();

  const choose = (reads: string, choice: Choice) => setChoices(new Map([...choices, [reads, choice]]));
  const close = () => {
    setLooking(undefined);
    setInTheWay(undefined);
  };

  return {
    looking,
    choices,
    inTheWay,
    canUndo,
    choose,
    look: (template: Template) =>
      reporter.attempt("Reading the template…", async () => {
        setChoices(new Map());
        setInTheWay(undefined);
        setLooking({ template, there: await sheetsAndNames() });
        return undefined;
      }),
    /** Has it read the cells that are selected now. */
    chooseSelected: (reads: string) =>
      reporter.attempt("Reading the selection…", async () => {
        const chosen = canonical(await selectedAddress());
        if (chosen === undefined)
          throw new WorkbookFailure("Select one cell or one block of cells, then choose again.");
        choose(reads, { kind: "cells", reads: chosen });
        return undefined;
      }),
    write: (place: Place) =>
      reporter.attempt("Writing the template…", async () => {
        if (!looking) return undefined;
        const { template, there } = looking;
        const [open] = unanswered(template, choices, isThereIn(there));
        if (open) throw new WorkbookFailure(`Choose what to read for ${open.reads} first. Nothing was written.`);
        setInTheWay(undefined);
        const written = await writeTemplate(template, choices, place);
        if (!written.done) {
          setInTheWay(written.inTheWay);
          return undefined;
        }
        close();
        setCanUndo(written.id);
        return `Added “${template.name}” to ${written.sheetName}!${written.address}.`;
      }),
    undo: () =>
      reporter.attempt("Undoing…", async () => {
        const said = await undoInsert(canUndo);
        setCanUndo(undefined);
        return said;
      }),
    cancel: () => {
      close();
      reporter.say("Nothing was written.");
    },
  };
}

export type Opening = ReturnType<typeof useOpening>;
