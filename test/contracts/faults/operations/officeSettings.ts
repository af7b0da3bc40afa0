import { planLoad } from "../../../../src/pane/rates/office/planLoad";
import { readOfficeWorkbook } from "../../../../src/pane/rates/office/readOfficeWorkbook";
import { must } from "../../../../src/quantities/must";
import type { OfficeFile } from "../../../../src/sheets/office/officeFile";
import { RATES_SHEET, ratesSheet } from "../../../../src/sheets/rates/ratesSheet";
import { undoOffice, writeOffice } from "../../../../src/workbook/change/officeSettings";
import { rateAddress } from "../../../insertRates";
import { addFixtures, office } from "../office";
import type { Operation } from "../operation";
import { insertRates, someRates } from "./inserts";
import { done, written } from "./said";

/** Settings of an invented office: a price, a share, stone of its own, and a past job. */
const FILE: OfficeFile = {
  format: "bedrow-office-settings",
  version: 1,
  office: "Fernlea Stone",
  saved: "2026-11-30",
  number: 3,
  rates: {
    values: { Rate_fabric_roll: 71.5, Rate_waste: 0.12 },
    samples: [],
    stones: [{ name: "creek gravel", perTon: 57, tonsPerYard: 1.42 }],
  },
  pastJobs: [{ job: "Elm Row 3", date: "2025-12-09", measure: "Stone", unit: "tons", estimated: 3, actual: 3.4 }],
};

const load = async () => writeOffice(planLoad(FILE, await readOfficeWorkbook()).writes);

const base = { office, front: "Notes", selected: "D12", withSheets: true } as const;
/** The cell of the waste is one of those that are written. */
const onRates = { ...base, sheet: "Rates", cell: `Rates!${rateAddress("Rate_waste", someRates)}` } as const;

/** Loading what an office set up in another workbook, and undoing that. */
export const officeSettings: readonly Operation[] = [
  {
    title: "Load office settings where there are rates",
    writers: ["writeOffice", "keepOfficeRecord"],
    ...onRates,
    ready: async (host) => {
      await addFixtures(host);
      await written(insertRates());
      const { writes } = planLoad(FILE, await readOfficeWorkbook());
      return async () => {
        await writeOffice(writes);
        return done;
      };
    },
  },
  {
    title: "Load office settings where there are none",
    writers: ["writeOffice"],
    ...base,
    ready: async (host) => {
      await addFixtures(host);
      const { writes } = planLoad(FILE, await readOfficeWorkbook());
      const loaded = { rates: must(FILE.rates), version: FILE };
      const plan = ratesSheet({ row: 0, column: 0 }, { ...someRates, loaded });
      const sheets = writes.sheets.map((sheet) => (sheet.name === RATES_SHEET ? { ...sheet, plan } : sheet));
      return async () => {
        await writeOffice({ ...writes, sheets });
        return done;
      };
    },
  },
  {
    title: "Undo loaded office settings",
    writers: ["undoOffice", "restoreOfficeText"],
    ...onRates,
    ready: async (host) => {
      await addFixtures(host);
      await written(insertRates());
      const loaded = await load();
      return async () => {
        await undoOffice(loaded);
        return done;
      };
    },
  },
];
