import { writeCopy } from "../../../../src/pane/copy/makeCopy";
import { readAgain } from "../../../../src/pane/copy/source";
import { addPastLines } from "../../../../src/pane/papers/after/addPastLines";
import { readJob } from "../../../../src/pane/papers/readJob";
import { writeTemplate } from "../../../../src/pane/templates/opening";
import { checkReport } from "../../../../src/sheets/checkReport";
import { pastJobsSheet } from "../../../../src/sheets/papers/pastJobs";
import { ratesSheet } from "../../../../src/sheets/rates/ratesSheet";
import { insertPlan, insertPlans } from "../../../../src/workbook/change/insert";
import { redrawSelectedBlock } from "../../../../src/workbook/drawing/drawing";
import { select } from "../bench";
import { addFixtures, office, PNG } from "../office";
import type { Operation } from "../operation";
import { draw, insertBlock } from "./drawn";
import { insertRates, LINE, lookedAt, NEXT, someRates, startList } from "./inserts";
import { saidOfTakeBack, written } from "./said";
import { smallTemplate } from "./smallTemplate";

const onNotes = { office, front: "Notes", selected: "A1" } as const;

/** Makes a workbook ready in which that was inserted last; the action undoes it. */
const afterInsert =
  (insert: () => Promise<{ readonly id: string }>): Operation["ready"] =>
  async (host) => {
    await addFixtures(host);
    const { id } = await insert();
    return () => saidOfTakeBack(id);
  };

/** The same with what goes to a selected cell, Notes!D12. */
const afterInsertAtCell = (insert: () => ReturnType<typeof startList>) =>
  afterInsert(async () => {
    await select("Notes", "D12");
    return written(insert());
  });

/** Undoing what was inserted last. */
export const undone: readonly Operation[] = [
  {
    title: "Undo an estimate, with its drawing",
    writers: ["undoLastInsert"],
    ...onNotes,
    sheet: "Notes",
    cell: "Notes!E16",
    ready: afterInsert(async () => {
      const id = await insertBlock();
      await redrawSelectedBlock(draw);
      return { id };
    }),
  },
  {
    title: "Undo the Rates sheet",
    writers: ["undoLastInsert"],
    ...onNotes,
    sheet: "Rates",
    // Below the sheet.
    cell: `Rates!A${ratesSheet({ row: 0, column: 0 }, someRates).rows + 1}`,
    withSheets: true,
    ready: afterInsert(() => written(insertRates())),
  },
  {
    title: "Undo job documents",
    writers: ["undoLastInsert"],
    ...onNotes,
    sheet: "Crew",
    cell: "Crew!B3",
    withSheets: true,
    ready: afterInsert(() => {
      const plan = checkReport([{ kind: "title", cells: ["Crew"] }], { row: 0, column: 0 });
      const drawing = { area: { row: 0, column: 0, rows: 1, columns: 2 }, png: PNG, altText: "The bed in plan" };
      const sheets = [
        { name: "Order", plan },
        { name: "Crew", plan: { ...plan, pictures: [drawing] } },
      ];
      return written(insertPlans("papers", sheets));
    }),
  },
  {
    title: "Undo a started list, with its table",
    writers: ["undoLastInsert"],
    ...onNotes,
    sheet: "Notes",
    cell: "Notes!E13",
    ready: afterInsertAtCell(() => startList()),
  },
  {
    title: "Undo a template",
    writers: ["undoLastInsert"],
    ...onNotes,
    sheet: "Notes",
    cell: "Notes!E13",
    ready: afterInsertAtCell(() => writeTemplate(smallTemplate, new Map(), { kind: "selection" })),
  },
  {
    title: "Undo a copy for others",
    writers: ["undoLastInsert"],
    ...onNotes,
    sheet: "List plain",
    withSheets: true,
    ready: afterInsert(async () => {
      const looked = await lookedAt("sheet");
      return written(writeCopy(await readAgain(looked), "formulas", { kind: "new sheet" }));
    }),
  },
  {
    title: "Undo a past job",
    writers: ["undoLastInsert"],
    ...onNotes,
    sheet: "Past jobs",
    ready: afterInsert(() =>
      written(insertPlan((at) => pastJobsSheet([LINE], at), { kind: "new sheet", name: "Past jobs" })),
    ),
  },
  {
    title: "Undo adding a job to past jobs",
    writers: ["undoLastInsert"],
    ...onNotes,
    sheet: "Past jobs",
    cell: "'Past jobs'!B6",
    ready: afterInsert(async () => {
      await addPastLines([LINE], undefined);
      return addPastLines([NEXT], (await readJob()).past);
    }),
  },
];
