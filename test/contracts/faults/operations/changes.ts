import { insertEstimate } from "../../../../src/pane/insertEstimate";
import { openBed, previewUpdate, writeUpdate } from "../../../../src/pane/updateEstimate";
import { rateNames } from "../../../../src/quantities/bed/rates";
import type { Change } from "../../../../src/review/finding";
import { unfollowingCells } from "../../../../src/sheets/estimate/followRates";
import { fitList } from "../../../../src/sheets/jobRows/fit";
import { undoChanges, writeChanges } from "../../../../src/workbook/change/cells";
import { setSheetsAside } from "../../../../src/workbook/change/setAside";
import { readListSheet, writeRows } from "../../../../src/workbook/jobRows";
import { namedCell } from "../../../../src/workbook/read/rates";
import { readWorkbook } from "../../../../src/workbook/read/workbook";
import type { HeadlessHost } from "../../../headlessHost";
import { rateAddress } from "../../../insertRates";
import { fillOf } from "../../../listSheets";
import { select } from "../bench";
import { addFixtures, office } from "../office";
import type { Operation } from "../operation";
import { insertBlock } from "./drawn";
import { bed, insertRates, someRates } from "./inserts";
import { done, written } from "./said";

const onList = { office, front: "List", selected: "A2", sheet: "List", cell: "List!G2" } as const;

const onRates = {
  office,
  front: "Notes",
  selected: "D12",
  sheet: "Rates",
  cell: `Rates!${rateAddress(rateNames.waste, someRates)}`,
} as const;

const onEstimate = { office, front: "Notes", selected: "D14", sheet: "Notes", cell: "Notes!E19" } as const;

/** An estimate on Notes that was changed by hand, opened in the pane, and changed there. */
async function previewed(host: HeadlessHost) {
  await addFixtures(host);
  await insertBlock();
  await host.type({ "Notes!E36": 3 });
  const opened = await openBed("selected", undefined);
  const { form } = opened;
  const wanted = { ...form, name: "Side walk", typed: { ...form.typed, width: "6", waste: "10%", crewSize: "3" } };
  return previewUpdate(opened, wanted, undefined);
}

const onOwnSheet = {
  office,
  front: "Notes",
  selected: "D12",
  sheet: bed.name,
  cell: `'${bed.name}'!B8`,
} as const;

/** An estimate on a sheet of its own, opened in the pane, and measured there in another way. */
async function reshaped(host: HeadlessHost) {
  await addFixtures(host);
  await written(insertEstimate(bed, { kind: "new sheet", name: bed.name }));
  await select(bed.name, "B3");
  const opened = await openBed("selected", undefined);
  const ring = { ...opened.form, way: "round" as const, typed: { diameter: "8", innerDiameter: "2" } };
  const preview = await previewUpdate(opened, ring, undefined);
  await select("Notes", "D12");
  return preview;
}

/** A fix in two places of two sheets, one of them dressed. */
const FIX: readonly Change[] = [
  { sheet: "List", row: 1, column: 6, before: 0.08, after: 0.1 },
  { sheet: "List", row: 2, column: 6, before: 0.08, after: 0.1 },
  { sheet: "Notes", row: 1, column: 1, before: "=1+1", after: "=1+2", numberFormat: "0.00" },
];

/** What is proposed for the list of beds. */
async function proposed() {
  await select("List", "A2");
  const { sheet, selection } = await readListSheet();
  const fit = fitList(sheet, selection)!;
  return { fit, changes: fillOf(fit, { results: ["tons", "area"] }).changes };
}

/** Everything that changes single cells which were looked at before. */
export const changes: readonly Operation[] = [
  {
    title: "Fill the columns of a list of beds",
    writers: ["writeRows"],
    ...onList,
    ready: async (host) => {
      await addFixtures(host);
      const { fit, changes: wanted } = await proposed();
      return async () => {
        await writeRows(fit, wanted);
        return done;
      };
    },
  },
  {
    title: "Fill the columns of a list that is a table",
    writers: ["writeRows"],
    ...onList,
    ready: async (host) => {
      await addFixtures(host);
      await Excel.run(async (context) => {
        const list = context.workbook.worksheets.getItem("List");
        list.tables.add(list.getRange("A1:H4"), true).name = "Beds";
        await context.sync();
      });
      const { fit, changes: wanted } = await proposed();
      return async () => {
        await writeRows(fit, wanted);
        return done;
      };
    },
  },
  {
    title: "Undo the filled columns",
    writers: ["undoChanges"],
    ...onList,
    ready: async (host) => {
      await addFixtures(host);
      const { fit, changes: wanted } = await proposed();
      const rows = await writeRows(fit, wanted);
      return async () => {
        await undoChanges(rows);
        return done;
      };
    },
  },
  {
    title: "Make a fix the check suggests",
    writers: ["writeChanges"],
    ...onList,
    ready: async (host) => {
      await addFixtures(host);
      return async () => {
        await writeChanges("waste", FIX);
        return done;
      };
    },
  },
  {
    title: "Undo the fix",
    writers: ["undoChanges"],
    ...onList,
    ready: async (host) => {
      await addFixtures(host);
      const fixed = await writeChanges("waste", FIX);
      return async () => {
        await undoChanges(fixed);
        return done;
      };
    },
  },
  {
    title: "Link an older estimate to the rates",
    writers: ["writeChanges"],
    office,
    front: "Notes",
    selected: "D12",
    sheet: "Notes",
    cell: "Notes!E21",
    ready: async (host) => {
      await addFixtures(host);
      await select("Notes", "D12");
      await written(insertEstimate(bed, { kind: "selection" }));
      await written(insertRates());
      const { facts } = await readWorkbook();
      const names = facts.names.map(({ name }) => name);
      const cells = facts.sheets.flatMap(({ name, used }) =>
        used ? unfollowingCells(used.values, used.formulas, used, names).map((cell) => ({ ...cell, sheet: name })) : [],
      );
      return async () => {
        await writeChanges("let older estimates follow your rates", cells);
        return done;
      };
    },
  },
  {
    title: "Update an estimate where it is",
    writers: ["updateBlock", "writeChanges"],
    ...onEstimate,
    ready: async (host) => {
      const preview = await previewed(host);
      return async () => {
        await writeUpdate(preview, preview.kept);
        return done;
      };
    },
  },
  {
    title: "Undo the update",
    writers: ["undoChanges"],
    ...onEstimate,
    ready: async (host) => {
      const preview = await previewed(host);
      const updated = await writeUpdate(preview, preview.kept);
      return async () => {
        await updated.undo();
        return done;
      };
    },
  },
  {
    title: "Update an estimate where rows come and go",
    writers: ["updateBlock", "updateRows"],
    ...onOwnSheet,
    ready: async (host) => {
      const preview = await reshaped(host);
      return async () => {
        await writeUpdate(preview, []);
        return done;
      };
    },
  },
  {
    title: "Undo the update where rows come and go",
    writers: ["updateRows"],
    ...onOwnSheet,
    ready: async (host) => {
      const preview = await reshaped(host);
      const updated = await writeUpdate(preview, []);
      return async () => {
        await updated.undo();
        return done;
      };
    },
  },
  {
    title: "Change a rate to what past jobs show",
    writers: ["writeChanges"],
    ...onRates,
    ready: async (host) => {
      await addFixtures(host);
      await written(insertRates());
      return async () => {
        const cell = await namedCell(rateNames.waste);
        await writeChanges("Waste: changed to what past jobs say.", [{ ...cell, after: 0.12 }]);
        return done;
      };
    },
  },
  {
    title: "Undo a changed rate",
    writers: ["undoChanges"],
    ...onRates,
    ready: async (host) => {
      await addFixtures(host);
      await written(insertRates());
      const cell = await namedCell(rateNames.waste);
      const changed = await writeChanges("Waste: changed to what past jobs say.", [{ ...cell, after: 0.12 }]);
      return async () => {
        await undoChanges(changed);
        return done;
      };
    },
  },
  {
    title: "Hide earlier documents that new ones replace",
    writers: ["setSheetsAside"],
    ...{ office, front: "List", selected: "A2", sheet: "Notes", withSheets: true },
    ready: async (host) => {
      await addFixtures(host);
      return async () => {
        await setSheetsAside(["Notes"]);
        return done;
      };
    },
  },
];
