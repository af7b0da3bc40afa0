import { checkReport } from "../../../../src/sheets/checkReport";
import { ratesSheet } from "../../../../src/sheets/rates/ratesSheet";
import { redrawSelectedBlock } from "../../../../src/workbook/drawing";
import { insertPlan, insertPlans } from "../../../../src/workbook/insert";
import { furnish, office, PNG } from "../office";
import type { Operation } from "../operation";
import { draw, insertBlock } from "./drawn";
import { saidOfTakeBack, written } from "./said";

const onNotes = { office, front: "Notes", selected: "A1" } as const;

/** Taking back what was inserted last. */
export const takenBack: readonly Operation[] = [
  {
    title: "Take an estimate back, with its drawing",
    writers: ["takeBackLastInsert"],
    ...onNotes,
    sheet: "Notes",
    ready: async (host) => {
      await furnish(host);
      const id = await insertBlock();
      await redrawSelectedBlock(draw);
      return () => saidOfTakeBack(id);
    },
  },
  {
    title: "Take the sheet of rates back",
    writers: ["takeBackLastInsert"],
    ...onNotes,
    sheet: "Rates",
    withSheets: true,
    ready: async (host) => {
      await furnish(host);
      const { id } = await written(insertPlan((at) => ratesSheet(at), { kind: "new sheet", name: "Rates" }));
      return () => saidOfTakeBack(id);
    },
  },
  {
    title: "Take the papers of a job back",
    writers: ["takeBackLastInsert"],
    ...onNotes,
    sheet: "Crew",
    withSheets: true,
    ready: async (host) => {
      await furnish(host);
      const plan = checkReport([{ kind: "title", cells: ["Crew"] }], { row: 0, column: 0 });
      const drawing = { area: { row: 0, column: 0, rows: 1, columns: 2 }, png: PNG, altText: "The bed in plan" };
      const sheets = [
        { name: "Order", plan },
        { name: "Crew", plan: { ...plan, pictures: [drawing] } },
      ];
      const { id } = await written(insertPlans("papers", sheets));
      return () => saidOfTakeBack(id);
    },
  },
];
