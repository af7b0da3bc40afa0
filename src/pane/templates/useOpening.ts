import { useState } from "preact/hooks";
import { type Choice, type Choices, unanswered } from "../../sheets/templates/openTemplate";
import { canonical } from "../../sheets/templates/reference";
import type { Template } from "../../sheets/templates/template";
import type { InTheWay, Place } from "../../workbook/change/place";
import { WorkbookFailure } from "../../workbook/failure";
import { type SheetsAndNames, selectedAddress, sheetsAndNames } from "../../workbook/read/selection";
import { undoInsert } from "../undoInsert";
import type { Speaking } from "../useWord";
import { isThereIn, writeTemplate } from "./opening";

/** A template that is looked at before it is written. */
export interface Looking {
  readonly template: Template;
  readonly there: SheetsAndNames;
}

/** Opening a template: shows what it holds, asks what it leaves open, and writes it. */
export function useOpening(speaking: Speaking) {
  const [looking, setLooking] = useState<Looking>();
  const [choices, setChoices] = useState<Choices>(new Map());
  const [inTheWay, setInTheWay] = useState<InTheWay>();
  /** The id of the insert that can be taken back. */
  const [canTakeBack, setCanTakeBack] = useState<string>();

  const choose = (reads: string, choice: Choice) => setChoices(new Map([...choices, [reads, choice]]));
  const close = () => {
    setLooking(undefined);
    setInTheWay(undefined);
  };

  return {
    looking,
    choices,
    inTheWay,
    canTakeBack,
    choose,
    look: (template: Template) =>
      speaking.attempt("Reading the template…", async () => {
        setChoices(new Map());
        setInTheWay(undefined);
        setLooking({ template, there: await sheetsAndNames() });
        return undefined;
      }),
    /** Has it read the cells that are selected now. */
    chooseSelected: (reads: string) =>
      speaking.attempt("Looking at the selection…", async () => {
        const chosen = canonical(await selectedAddress());
        if (chosen === undefined) throw new WorkbookFailure("Select one cell, or one run of cells, then choose again.");
        choose(reads, { kind: "cells", reads: chosen });
        return undefined;
      }),
    write: (place: Place) =>
      speaking.attempt("Writing the template…", async () => {
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
        setCanTakeBack(written.id);
        return `“${template.name}” stands on ${written.sheetName} at ${written.address}.`;
      }),
    takeBack: () =>
      speaking.attempt("Taking it back…", async () => {
        const said = await undoInsert(canTakeBack);
        setCanTakeBack(undefined);
        return said;
      }),
    cancel: () => {
      close();
      speaking.say("Nothing was written.");
    },
  };
}

export type Opening = ReturnType<typeof useOpening>;
