import { expect } from "vitest";
import { insertEstimate } from "../../../src/pane/insertEstimate";
import { addPastLines } from "../../../src/pane/papers/after/addPastLines";
import { undoInsert } from "../../../src/pane/undoInsert";
import { checkReport } from "../../../src/sheets/checkReport";
import { ratesSheet } from "../../../src/sheets/rates/ratesSheet";
import { withoutTemplate, withTemplate } from "../../../src/sheets/templates/keptTemplates";
import { undoChanges, writeChanges } from "../../../src/workbook/change/cells";
import { insertPlan } from "../../../src/workbook/change/insert";
import { undoLastInsert } from "../../../src/workbook/change/undo";
import { redrawSelectedBlock } from "../../../src/workbook/drawing/drawing";
import { readForCheck } from "../../../src/workbook/read/workbook";
import { changeDismissals } from "../../../src/workbook/settings/dismissals";
import { changeKeptTemplates, readKeptTemplates } from "../../../src/workbook/settings/templates";
import type { HeadlessHost } from "../../headlessHost";
import { selectedBlock } from "../../selectedBlock";
import { type Report, select } from "./bench";
import { addFixtures, office, PNG } from "./office";
import { draw, insertBlock } from "./operations/drawn";
import { bed, insertRates, someRates, startList } from "./operations/inserts";
import { dismissal } from "./operations/kept";
import { done, said, written } from "./operations/said";
import { smallTemplate } from "./operations/smallTemplate";
import { difference, snapshotOf } from "./snapshot";

export { office };

/** Something that happens in two panes of one workbook, with what has to be true afterwards. */
export interface TwoPanes {
  readonly title: string;
  /** In few words, for the table. */
  readonly outcome: string;
  readonly play: (host: HeadlessHost) => Promise<readonly Report[]>;
}

/** Both at the same moment: their requests reach the host in turn. */
async function both(...actions: readonly (() => Promise<Report>)[]): Promise<Report[]> {
  return Promise.all(
    actions.map((action) =>
      action().catch((error: Error): Report => {
        if (error.name !== "WorkbookFailure") throw error;
        return { done: false, text: error.message };
      }),
    ),
  );
}

const actionOf = (work: () => Promise<unknown>) => async () => {
  await work();
  return done;
};

/** How often a text is in the cells of a sheet. */
function timesOn(host: HeadlessHost, range: string, text: string): number {
  return host
    .values(range)
    .flat()
    .filter((value) => value === text).length;
}

const doneOf = (told: readonly Report[]) => told.filter((one) => one.done).length;
const keep = (name: string) =>
  changeKeptTemplates((templates) => withTemplate(templates, { ...smallTemplate, name }, false));
const LINE = { job: "Elm Row 3", date: 46_000, measure: "Stone", unit: "tons", estimated: 3, actual: 3.4 };
const WASTE = { sheet: "List", row: 1, column: 6, before: 0.08 } as const;

export const twoPanes: readonly TwoPanes[] = [
  {
    title: "Both insert an estimate at the same cell at the same moment",
    outcome: "one is there whole, the other is removed",
    play: async (host) => {
      await select("Notes", "D12");
      const insert = () => said("block", insertEstimate(bed, { kind: "selection" }));
      const told = await both(insert, insert);
      expect(doneOf(told)).toBe(1);
      expect(timesOn(host, "Notes!A1:Z160", "Front walk")).toBe(1);
      const stands = snapshotOf(host);
      // What stands is the whole of one, which can be undone, and leaves the sheet as it was.
      await undoLastInsert();
      expect(timesOn(host, "Notes!A1:Z160", "Front walk")).toBe(0);
      await written(insertEstimate(bed, { kind: "cell", sheetId: notesOf(host), at: { row: 11, column: 3 } }));
      expect(difference(withoutNote(stands), withoutNote(snapshotOf(host)))).toBe("");
      return told;
    },
  },
  {
    title: "Both start a list of beds at the same cell at the same moment",
    outcome: "one is there whole with its table, the other is removed",
    play: async (host) => {
      await select("Notes", "D12");
      const insert = () => said("list", startList());
      const told = await both(insert, insert);
      expect(doneOf(told)).toBe(1);
      const lists = host.grid.tables.list().filter(({ name }) => name !== "Trucks");
      expect(lists).toMatchObject([{ name: "Bed_list" }]);
      await undoLastInsert();
      expect(host.grid.tables.list().map(({ name }) => name)).toEqual(["Trucks"]);
      expect(timesOn(host, "Notes!A1:Z160", "Front")).toBe(0);
      return told;
    },
  },
  {
    title: "Both write cells with a picture to the same place at the same moment",
    outcome: "one is there whole with its picture, the other is removed",
    play: async (host) => {
      await select("Notes", "D12");
      const plan = checkReport([{ kind: "title", cells: ["Crew"] }], { row: 0, column: 0 });
      const drawing = { area: { row: 0, column: 0, rows: 1, columns: 2 }, png: PNG, altText: "The bed in plan" };
      const insert = () =>
        said(
          "report",
          insertPlan(() => ({ ...plan, pictures: [drawing] }), { kind: "selection" }),
        );
      const told = await both(insert, insert);
      expect(doneOf(told)).toBe(1);
      expect(timesOn(host, "Notes!A1:Z160", "Crew")).toBe(1);
      expect(host.grid.pictures.list(notesOf(host)).filter(({ name }) => name !== "Mine")).toHaveLength(1);
      return told;
    },
  },
  {
    title: "Both insert an estimate at the same cell, one after the other",
    outcome: "the second is offered another spot",
    play: async (host) => {
      await select("Notes", "D12");
      const insert = () => said("block", insertEstimate(bed, { kind: "selection" }));
      const first = await insert();
      const before = snapshotOf(host);
      const second = await insert();
      expect(difference(before, snapshotOf(host))).toBe("");
      return [first, second];
    },
  },
  {
    title: "Both insert an estimate on a new sheet of one name",
    outcome: "one is there, the other is told to try again",
    play: async (host) => {
      const insert = () => said("block", insertEstimate(bed, { kind: "new sheet", name: "Front walk" }));
      const told = await both(insert, insert);
      expect(doneOf(told)).toBe(1);
      expect(host.grid.sheets.list().map(({ name }) => name)).toEqual(["List", "Notes", "Front walk"]);
      expect(host.value("'Front walk'!A1")).not.toBe("");
      return told;
    },
  },
  {
    title: "Both insert the Rates sheet at the same moment",
    outcome: "one is there with all its names, the other is removed",
    play: async (host) => {
      const insert = () => said("sheet of rates", insertRates());
      const told = await both(insert, insert);
      expect(doneOf(told)).toBe(1);
      expect(host.grid.sheets.list().map(({ name }) => name)).toEqual(["List", "Notes", "Rates"]);
      const names = ratesSheet({ row: 0, column: 0 }, someRates).names ?? [];
      expect(host.grid.names.list().filter(({ formula }) => formula.startsWith("=Rates!"))).toHaveLength(names.length);
      return told;
    },
  },
  {
    title: "One undoes its estimate after the other has inserted something",
    outcome: "refused, nothing is undone",
    play: async (host) => {
      await select("Notes", "D12");
      const first = await written(insertEstimate(bed, { kind: "selection" }));
      await written(insertRates());
      const before = snapshotOf(host);
      const told = await both(async () => ({ done: true, text: await undoInsert(first.id) }));
      expect(doneOf(told)).toBe(0);
      expect(difference(before, snapshotOf(host))).toBe("");
      return told;
    },
  },
  {
    title: "Both undo the same estimate",
    outcome: "it is undone once",
    play: async (host) => {
      await select("Notes", "A1");
      const before = snapshotOf(host);
      const id = await insertBlock();
      const take = async () => ({ done: true, text: await undoInsert(id) });
      const told = await both(take, take);
      await select("Notes", "A1");
      expect(doneOf(told)).toBeGreaterThanOrEqual(1);
      expect(difference(before, snapshotOf(host))).toBe("");
      return told;
    },
  },
  {
    title: "One draws an estimate while the other undoes it",
    outcome: "it is undone, and no drawing is left",
    play: async (host) => {
      const id = await insertBlock();
      const told = await both(
        async () => ({ done: true, text: await undoInsert(id) }),
        actionOf(() => redrawSelectedBlock(draw)),
      );
      expect(told[0]?.done).toBe(true);
      expect(timesOn(host, "Notes!A1:Z160", "Front walk")).toBe(0);
      expect(host.grid.pictures.list(notesOf(host)).map(({ name }) => name)).toEqual(["Mine"]);
      expect(host.grid.kept.get("Bedrow.drawings") ?? "").not.toContain("Front walk");
      return told;
    },
  },
  {
    title: "Both keep a template at the same moment",
    outcome: "both are kept",
    play: async () => {
      const told = await both(
        actionOf(() => keep("Day sheet")),
        actionOf(() => keep("Crew day")),
      );
      expect((await readKeptTemplates()).map(({ name }) => name).sort()).toEqual(["Crew day", "Day sheet"]);
      return told;
    },
  },
  {
    title: "Both keep a template of one name at the same moment",
    outcome: "one is kept, the other is asked for another name",
    play: async () => {
      const told = await both(
        actionOf(() => keep("Day sheet")),
        actionOf(() => keep("Day sheet")),
      );
      expect(doneOf(told)).toBe(1);
      expect((await readKeptTemplates()).map(({ name }) => name)).toEqual(["Day sheet"]);
      return told;
    },
  },
  {
    title: "One keeps a template while the other deletes one",
    outcome: "both are done",
    play: async () => {
      await keep("Old");
      const [old] = await readKeptTemplates();
      const told = await both(
        actionOf(() => keep("Day sheet")),
        actionOf(() => changeKeptTemplates((templates) => withoutTemplate(templates, old!))),
      );
      expect((await readKeptTemplates()).map(({ name }) => name)).toEqual(["Day sheet"]);
      return told;
    },
  },
  {
    title: "Both ignore a finding at the same moment",
    outcome: "both are ignored",
    play: async () => {
      const dismiss = (key: string) => actionOf(() => changeDismissals((others) => [...others, dismissal(key)], false));
      const told = await both(dismiss("waste"), dismiss("depth"));
      const { dismissals } = (await readForCheck()).known;
      expect(dismissals.map(({ key }) => key).sort()).toEqual(["depth", "waste"]);
      return told;
    },
  },
  {
    title: "Both fix the same cell",
    outcome: "one fix is made, the other is refused",
    play: async (host) => {
      const told = await both(
        actionOf(() => writeChanges("waste", [{ ...WASTE, after: 0.1 }])),
        actionOf(() => writeChanges("waste", [{ ...WASTE, after: 0.12 }])),
      );
      expect(doneOf(told)).toBe(1);
      expect(host.value("List!G2")).toBe(told[0]?.done ? 0.1 : 0.12);
      return told;
    },
  },
  {
    title: "One undoes a fix after the other has changed the cell",
    outcome: "refused, the cell keeps what the other wrote",
    play: async (host) => {
      const fixed = await writeChanges("waste", [{ ...WASTE, after: 0.1 }]);
      await writeChanges("waste", [{ ...WASTE, before: 0.1, after: 0.12 }]);
      const told = await both(actionOf(() => undoChanges(fixed)));
      expect([doneOf(told), host.value("List!G2")]).toEqual([0, 0.12]);
      return told;
    },
  },
  {
    title: "Both draw the same bed at the same moment",
    outcome: "one drawing is left",
    play: async (host) => {
      await insertBlock();
      const told = await both(
        actionOf(() => redrawSelectedBlock(draw)),
        actionOf(() => redrawSelectedBlock(draw)),
      );
      expect(await selectedBlock()).toMatchObject({ drawing: "current" });
      expect(host.grid.pictures.list(notesOf(host)).filter(({ name }) => name !== "Mine")).toHaveLength(1);
      return told;
    },
  },
  {
    title: "Both add a job to the list of past jobs at the same moment",
    outcome: "one is added, the other is told",
    play: async (host) => {
      const { where } = await addPastLines([LINE], undefined);
      expect(where).toBe("Past jobs at A1:H5");
      const past = {
        sheet: "Past jobs",
        area: { row: 3, column: 0, rows: 2, columns: 8 },
        lines: [LINE],
        unusable: [],
      };
      const add = (job: string) => actionOf(() => addPastLines([{ ...LINE, job }], past));
      const told = await both(add("Alder Court"), add("Birch Lane"));
      expect(doneOf(told)).toBe(1);
      expect(host.values("'Past jobs'!A4:A8").flat().filter(Boolean)).toHaveLength(3);
      return told;
    },
  },
];

const notesOf = ({ grid }: HeadlessHost) => grid.sheets.list().find(({ name }) => name === "Notes")!.id;

/** The note of the last insert has an id of its own each time. */
function withoutNote(snapshot: ReturnType<typeof snapshotOf>) {
  const { kept: _, ...rest } = snapshot;
  return rest;
}

/** The workbook in which they happen. */
export const ready = addFixtures;
