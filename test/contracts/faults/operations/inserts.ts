import { copyForSheet, writeCopy } from "../../../../src/pane/copy/makeCopy";
import { readAgain, readSource } from "../../../../src/pane/copy/source";
import { insertEstimate } from "../../../../src/pane/insertEstimate";
import { addPastLines } from "../../../../src/pane/papers/after/addPastLines";
import { readJob } from "../../../../src/pane/papers/readJob";
import { missingRates } from "../../../../src/pane/rates/missing";
import { writeTemplate } from "../../../../src/pane/templates/opening";
import { type BedForm, blankForm } from "../../../../src/quantities/bed/form";
import { checkReport } from "../../../../src/sheets/checkReport";
import { newList } from "../../../../src/sheets/jobRows/newList";
import { usualAssumed } from "../../../../src/sheets/jobRows/setting";
import { type PastLine, pastJobsSheet } from "../../../../src/sheets/papers/pastJobs";
import { allRates, ratesSheet, type WantedRates } from "../../../../src/sheets/rates/ratesSheet";
import { insertPlan, insertPlans } from "../../../../src/workbook/change/insert";
import type { Place } from "../../../../src/workbook/change/place";
import { readRates } from "../../../../src/workbook/read/rates";
import { selectedPlace } from "../../../../src/workbook/read/selection";
import { belowUsed } from "../../../../src/workbook/sheets";
import { addFixtures, office, PNG } from "../office";
import type { Operation } from "../operation";
import { done, said, saidOfSheets, written } from "./said";
import { smallTemplate } from "./smallTemplate";

export const bed: BedForm = { ...blankForm(), name: "Front walk", typed: { length: `18' 6"`, width: "5" } };

const onNotes = { office, front: "Notes", selected: "D12" } as const;

export const LINE: PastLine = {
  job: "Elm Row 3",
  date: 46_000,
  measure: "Stone",
  unit: "tons",
  estimated: 3,
  actual: 3.4,
};
export const NEXT: PastLine = { ...LINE, job: "Alder Court" };

/** Everything that goes into the workbook as a plan. */
export const inserts: readonly Operation[] = [
  {
    title: "Insert an estimate at the selected cell",
    writers: ["insertPlan"],
    ...onNotes,
    sheet: "Notes",
    cell: "Notes!E13",
    bySelection: true,
    ready: async (host) => {
      await addFixtures(host);
      return () => said("block", insertEstimate(bed, { kind: "selection" }));
    },
  },
  {
    title: "Insert an estimate on a new sheet",
    writers: ["insertPlan"],
    ...onNotes,
    withSheets: true,
    ready: async (host) => {
      await addFixtures(host);
      return () => said("block", insertEstimate(bed, { kind: "new sheet", name: bed.name }));
    },
  },
  {
    title: "Insert the Rates sheet",
    writers: ["insertPlan"],
    ...onNotes,
    withSheets: true,
    ready: async (host) => {
      await addFixtures(host);
      return () => said("sheet of rates", insertRates());
    },
  },
  {
    title: "Add missing rates below the others",
    writers: ["insertPlan"],
    ...onNotes,
    sheet: "Rates",
    ready: async (host) => {
      await addFixtures(host);
      await written(insertRates({ ...allRates, keys: ["waste", "crewRate"] }));
      return async () => {
        const found = (await readRates())!;
        const { sheetId, at } = await belowUsed(found.sheets[0] ?? "Rates");
        return said(
          "list of rates",
          insertPlan((anchor) => ratesSheet(anchor, missingRates(found)), { kind: "cell", sheetId, at }),
        );
      };
    },
  },
  {
    title: "Start a list of beds at the selected cell",
    writers: ["insertPlan"],
    ...onNotes,
    sheet: "Notes",
    cell: "Notes!E13",
    bySelection: true,
    ready: async (host) => {
      await addFixtures(host);
      return () => said("list", startList());
    },
  },
  {
    title: "Start a list of beds on a new sheet",
    writers: ["insertPlan"],
    ...onNotes,
    withSheets: true,
    ready: async (host) => {
      await addFixtures(host);
      return () => said("list", startList({ kind: "new sheet", name: "Beds" }));
    },
  },
  {
    title: "Start from a template on a new sheet",
    writers: ["insertPlan"],
    ...onNotes,
    withSheets: true,
    ready: async (host) => {
      await addFixtures(host);
      return () => said("template", writeTemplate(smallTemplate, new Map(), { kind: "new sheet", name: "Day sheet" }));
    },
  },
  {
    title: "Start from a template at the selected cell",
    writers: ["insertPlan"],
    ...onNotes,
    sheet: "Notes",
    cell: "Notes!E13",
    bySelection: true,
    ready: async (host) => {
      await addFixtures(host);
      return () => said("template", writeTemplate(smallTemplate, new Map(), { kind: "selection" }));
    },
  },
  {
    title: "Copy a sheet for others onto a new sheet",
    writers: ["insertPlan"],
    office,
    front: "List",
    selected: "A2",
    sheet: "List",
    withSheets: true,
    ready: async (host) => {
      await addFixtures(host);
      const looked = await lookedAt("sheet");
      return async () => said("copy", writeCopy(await readAgain(looked), "formulas", { kind: "new sheet" }));
    },
  },
  {
    title: "Copy cells for others, values only, to the selected cell",
    writers: ["insertPlan"],
    ...onNotes,
    sheet: "Notes",
    cell: "Notes!E13",
    bySelection: true,
    ready: async (host) => {
      await addFixtures(host);
      const looked = await lookedAt("sheet");
      return async () => {
        const place = { kind: "cell" as const, ...(await selectedPlace()) };
        return said("copy", writeCopy(await readAgain(looked), "values only", place));
      };
    },
  },
  {
    title: "Make job documents, with drawings, on new sheets",
    writers: ["insertPlans"],
    ...onNotes,
    withSheets: true,
    ready: async (host) => {
      await addFixtures(host);
      const paper = (name: string, withDrawing: boolean) => {
        const plan = checkReport([{ kind: "title", cells: [name] }], { row: 0, column: 0 });
        const drawing = { area: { row: 0, column: 0, rows: 1, columns: 2 }, png: PNG, altText: "The bed in plan" };
        return { name, plan: { ...plan, page: PAGE, ...(withDrawing && { pictures: [drawing] }) } };
      };
      const sheets = [paper("Order Elm Row", false), paper("Crew Elm Row", true)];
      return () => saidOfSheets(insertPlans("papers for Elm Row", sheets));
    },
  },
  {
    title: "Start the list of past jobs on a new sheet",
    writers: ["insertPlan"],
    ...onNotes,
    withSheets: true,
    ready: async (host) => {
      await addFixtures(host);
      return async () => {
        await addPastLines([LINE], undefined);
        return done;
      };
    },
  },
  {
    title: "Add a job to the list of past jobs",
    writers: ["insertPlan"],
    ...onNotes,
    sheet: "Past jobs",
    cell: "'Past jobs'!B6",
    ready: async (host) => {
      await addFixtures(host);
      await written(insertPlan((at) => pastJobsSheet([LINE], at), { kind: "new sheet", name: "Past jobs" }));
      return async () => {
        await addPastLines([NEXT], (await readJob()).past);
        return done;
      };
    },
  },
  {
    title: "Put the report of a check on a new sheet",
    writers: ["insertPlan"],
    ...onNotes,
    withSheets: true,
    ready: async (host) => {
      await addFixtures(host);
      const lines = [{ kind: "title" as const, cells: ["What the check found"] }];
      return () =>
        said(
          "report",
          insertPlan((at) => checkReport(lines, at), { kind: "new sheet", name: "Sheet check" }),
        );
    },
  },
];

/** One of the office's lists stands for all: they're cells and names alike, and each try writes them. */
export const someRates: WantedRates = { ...allRates, lists: ["pins"] };

/** Puts the sheet of rates in, on a sheet of its own. */
export function insertRates(wanted = someRates) {
  return insertPlan((at) => ratesSheet(at, wanted), { kind: "new sheet", name: "Rates" });
}

/** Starts a list of beds, at the selected cell unless told otherwise. */
export function startList(place: Place = { kind: "selection" }) {
  const options = {
    first: { job: "Elm Row 3", bed: "Front", length: "20", width: "4" },
    assumed: usualAssumed,
    results: ["area", "tons"] as const,
    rates: new Set<never>(),
    weighsStone: false,
    stones: ["river rock"],
  };
  return insertPlan((at) => newList(options, at), place);
}

const PAGE = {
  paper: "letter",
  landscape: false,
  pagesWide: 1,
  headingRows: 1,
  marginsIn: { top: 0.5, bottom: 0.5, left: 0.5, right: 0.5 },
} as const;

/** The list of beds, as it is looked at before anything is written. */
export async function lookedAt(what: "sheet") {
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("List").getRange("A2").select();
    await context.sync();
  });
  const source = await readSource(what);
  copyForSheet(source, "formulas", { kind: "new sheet" });
  return source;
}
