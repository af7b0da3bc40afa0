import type { Dismissal } from "../../../../src/review/dismissals";
import { renamedTemplate, withoutTemplate, withTemplate } from "../../../../src/sheets/templates/keptTemplates";
import { changeDismissals } from "../../../../src/workbook/settings/dismissals";
import { changeKeptTemplates, readKeptTemplates } from "../../../../src/workbook/settings/templates";
import { addFixtures, office } from "../office";
import type { Operation } from "../operation";
import { done } from "./said";
import { smallTemplate } from "./smallTemplate";

const onNotes = { office, front: "Notes", selected: "D12" } as const;

export const dismissal = (key: string): Dismissal => ({
  key,
  reason: "meant so",
  title: "Waste typed as 8",
  where: "List!G2",
  on: "2026-03-02",
});

const keep = (name: string) =>
  changeKeptTemplates((templates) => withTemplate(templates, { ...smallTemplate, name }, false));

/** What is kept with the workbook, beside its cells. */
export const kept: readonly Operation[] = [
  {
    title: "Keep a template with the workbook",
    writers: ["changeKeptTemplates"],
    ...onNotes,
    ready: async (host) => {
      await addFixtures(host);
      await keep("Other");
      return async () => {
        await keep("Day sheet");
        return done;
      };
    },
  },
  {
    title: "Rename a kept template",
    writers: ["changeKeptTemplates"],
    ...onNotes,
    ready: async (host) => {
      await addFixtures(host);
      await keep("Day sheet");
      return async () => {
        await changeKeptTemplates((templates) => renamedTemplate(templates, "Day sheet", "Crew day"));
        return done;
      };
    },
  },
  {
    title: "Delete a kept template",
    writers: ["changeKeptTemplates"],
    ...onNotes,
    ready: async (host) => {
      await addFixtures(host);
      await keep("Day sheet");
      const [one] = await readKeptTemplates();
      return async () => {
        await changeKeptTemplates((templates) => withoutTemplate(templates, one!));
        return done;
      };
    },
  },
  {
    title: "Ignore a finding",
    writers: ["changeDismissals"],
    ...onNotes,
    ready: async (host) => {
      await addFixtures(host);
      return async () => {
        await changeDismissals((others) => [...others, dismissal("waste")], false);
        return done;
      };
    },
  },
  {
    title: "Show an ignored finding again",
    writers: ["changeDismissals"],
    ...onNotes,
    ready: async (host) => {
      await addFixtures(host);
      await changeDismissals(() => [dismissal("waste"), dismissal("depth")], false);
      return async () => {
        await changeDismissals((others) => others.filter(({ key }) => key !== "waste"), false);
        return done;
      };
    },
  },
];
