import { useState } from "preact/hooks";
import type { Treatment } from "../../sheets/templates/findOutside";
import { sameName, withTemplate } from "../../sheets/templates/keptTemplates";
import type { Template } from "../../sheets/templates/template";
import type { Reporter } from "../useStatus";
import { readToSave, type ToSave, templateOfCells } from "./saving";
import { saveTemplateFile } from "./templateFiles";
import type { Kept } from "./useKept";

/** What the person says of the template that is being saved. */
export interface SaveWords {
  readonly name: string;
  readonly note: string;
  readonly by: string;
}

const BLANK: SaveWords = { name: "", note: "", by: "" };

/** Saving cells as a template: reads them, asks about what they read outside, and keeps or hands out the result. */
export function useSaving(reporter: Reporter, kept: Kept) {
  const [toSave, setToSave] = useState<ToSave>();
  const [words, setWords] = useState<SaveWords>(BLANK);
  const [treatments, setTreatments] = useState<ReadonlyMap<string, Treatment>>(new Map());
  /** A template of the name is kept already; the person is asked whether it gives way. */
  const [replacing, setReplacing] = useState<Template>();

  const close = () => {
    setToSave(undefined);
    setReplacing(undefined);
  };

  /** The template, or nothing where something is still wanting, which is said. */
  const finished = (): Template | undefined => {
    if (!toSave) return undefined;
    const open = toSave.outside.find(({ reads, cannotStay }) => cannotStay === undefined && !treatments.has(reads));
    if (open) return void reporter.complain(`Choose what to do with ${open.reads} first. Nothing was saved.`);
    if (words.name.trim() === "") return void reporter.complain("Type a name first. Nothing was saved.");
    const { template, faults } = templateOfCells(toSave, treatments, words, new Date());
    if (faults.length === 0) return template;
    return void reporter.complain(`This can't be a template. ${faults.slice(0, 5).join(" ")}`);
  };

  const keep = (template: Template, isReplacing: boolean) =>
    reporter.attempt("Saving…", async () => {
      await kept.change((templates) => withTemplate(templates, template, isReplacing));
      close();
      return `Saved “${template.name}” in this workbook.`;
    });

  return {
    toSave,
    words,
    treatments,
    replacing,
    setWords,
    treat: (reads: readonly string[], treatment: Treatment) =>
      setTreatments(new Map([...treatments, ...reads.map((one) => [one, treatment] as const)])),
    look: (what: "block" | "cells") =>
      reporter.attempt("Reading the cells…", async () => {
        const read = await readToSave(what);
        setTreatments(new Map());
        setWords({ ...BLANK, by: words.by, name: read.name });
        setToSave(read);
        return undefined;
      }),
    keep: () => {
      const template = finished();
      if (!template) return;
      const isTaken = kept.templates.some((one) => one.template && sameName(one.name, template.name));
      if (isTaken) setReplacing(template);
      else void keep(template, false);
    },
    replace: () => replacing && void keep(replacing, true),
    toFile: () => {
      const template = finished();
      if (!template) return;
      reporter.say(`Saved the template as ${saveTemplateFile(template)} in your downloads.`);
      close();
    },
    cancel: () => {
      close();
      reporter.say("Nothing was saved.");
    },
    dontReplace: () => setReplacing(undefined),
  };
}

export type Saving = ReturnType<typeof useSaving>;
