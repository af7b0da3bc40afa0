import { draft } from "../../src/pane/draft";
import { startingDetails, storedDetails } from "../../src/pane/papers/details";
import { noticeOf } from "../../src/pane/papers/noticeOf";
import { depositShare, letterheadOf } from "../../src/pane/papers/proposalOf";
import { previewOf } from "../../src/pane/preview";
import { isWork } from "../../src/practice/keep/isWork";
import { blankForm } from "../../src/quantities/bed/form";
import { Problem } from "../../src/quantities/problem";
import { type Keeping, readKeptText, textToKeep } from "../../src/sheets/kept";
import { listToKeep } from "../../src/sheets/keptList";
import { type OfficeFile, officeText } from "../../src/sheets/office/officeFile";
import { newPastLines } from "../../src/sheets/office/pastJobs";
import { readOffice } from "../../src/sheets/office/readOffice";
import { recordOf } from "../../src/sheets/office/record";
import { pastJobsSheet } from "../../src/sheets/papers/pastJobs";
import { allRates, ratesSheet } from "../../src/sheets/rates/ratesSheet";
import { keptText, readKept, withoutTemplate } from "../../src/sheets/templates/keptTemplates";
import type { Template } from "../../src/sheets/templates/template";
import { RECEIPT, type Receipt } from "../../src/workbook/change/receipt";
import { DRAWINGS, type DrawingRecord } from "../../src/workbook/drawing/records";
import { DISMISSALS } from "../../src/workbook/settings/dismissals";
import { OFFICE } from "../../src/workbook/settings/office";

/** What came of reading a text: what was kept, or that it cannot be read. */
type Outcome = "kept" | "refused";

/** A place where something is kept as text that anyone could have written. */
export interface Store {
  readonly title: string;
  /** A text as the product writes it. */
  readonly sound: string;
  /**
   * Reads a text, and does with what was read what the product does with it at once.
   *
   * @throws where the product would: that is a fault.
   */
  readonly read: (text: string) => Outcome;
}

const FORM = {
  ...blankForm(),
  name: "Front walk",
  way: "points",
  typed: { depth: "3", stone: "river rock" },
  points: [["0", "0", "1"] as const, ["20", "0", "1"] as const, ["20", "4", "0"] as const],
  cutOuts: [["5", "2", "1", ""] as const],
} as const;

const RECORD: DrawingRecord = {
  shapeName: "Bedrow drawing 1",
  sheetId: "s1",
  bedName: "Front walk",
  row: 2,
  column: 0,
  drawnFrom: "20 by 4",
};

const INSERTED: Receipt = {
  title: "estimate of Front walk",
  parts: [
    {
      sheetId: "s1",
      area: { row: 1, column: 0, rows: 2, columns: 2 },
      formulas: [
        ["Length", 20],
        ["Area", "=B2*4"],
      ],
      names: ["Rate_waste"],
      pictures: [],
      newSheet: false,
      before: {
        columnWidths: [48, 48],
        looks: {
          distinct: [{ bold: true }],
          cells: [
            [-1, 0],
            [0, -1],
          ],
        },
      },
    },
  ],
};

const TEMPLATE: Template = {
  format: "bedrow-template",
  version: 1,
  name: "Crew day sheet",
  rows: 1,
  columns: 2,
  widths: [10, 10],
  cells: [{ at: "A1", text: "Crew" }],
};

const DISMISSAL = { key: "a", reason: "agreed", title: "Odd", where: "Jobs!B3", on: "2026-03-02" };

const SETTINGS: OfficeFile = {
  format: "bedrow-office-settings",
  version: 3,
  office: "Fernlea Stone",
  saved: "2026-11-30",
  number: 3,
  rates: {
    values: { Rate_fabric_roll: 71.5, Rate_waste: 0.12, Rate_piece_length: `7' 6"` },
    samples: ["Rate_fabric_roll"],
    stones: [
      { name: "creek gravel", perTon: 57, tonsPerYard: 1.42 },
      { name: "cedar mulch", soldBy: "cubic yard", price: 38.5, orderStep: 0.5, orderMinimum: 2 },
    ],
    lists: {
      Rate_fabric_names: [{ name: "House fabric", cells: { Rate_fabric_prices: 58, Rate_fabric_widths: `5' 6"` } }],
    },
  },
  texts: { office: "Fernlea Stone", terms: "Half on signing\nHalf when done" },
  pastJobs: [{ job: "Elm Row 3", date: "2025-12-09", measure: "Stone", unit: "tons", estimated: 3, actual: 3.4 }],
};

export const stores: readonly Store[] = [
  {
    title: "the half-typed bed, in the browser",
    ...through(draft, textToKeep(FORM, draft), previewOf),
  },
  {
    title: "the details of a job, in the browser",
    ...through(storedDetails, textToKeep({ ...startingDetails, start: "2026-12-07" }, storedDetails), (details) => {
      for (const use of [() => noticeOf(details, 2), () => depositShare(details), () => letterheadOf(details)]) {
        try {
          use();
        } catch (error) {
          if (!(error instanceof Problem)) throw error;
        }
      }
    }),
  },
  {
    title: "ignored findings, in the workbook",
    ...through(DISMISSALS, textToKeep([DISMISSAL, { ...DISMISSAL, key: "b" }], DISMISSALS), (list) =>
      keepsAll(DISMISSALS, list.items.length + list.unread.length, listToKeep(list, list.items)),
    ),
  },
  {
    title: "the list of drawings, in the workbook",
    ...through(DRAWINGS, textToKeep([RECORD], DRAWINGS), (list) =>
      keepsAll(DRAWINGS, list.items.length + list.unread.length, listToKeep(list, list.items)),
    ),
  },
  {
    title: "the note of the last insert, in the workbook",
    ...through(RECEIPT, textToKeep(INSERTED, RECEIPT), emptiesOnlyItsOwn),
  },
  {
    title: "templates, in the workbook",
    sound: keptText([{ name: TEMPLATE.name, template: TEMPLATE, content: TEMPLATE }]),
    read: (text) => {
      const kept = readKept(text);
      if (!kept.ok) return "refused";
      // What cannot be read stays as it is when something else is changed.
      const again = readKept(keptText(kept.templates));
      if (!again.ok || JSON.stringify(again.templates) !== JSON.stringify(kept.templates)) throw new Error("Lost.");
      for (const one of kept.templates) withoutTemplate(kept.templates, one);
      return "kept";
    },
  },
  {
    title: "which office settings it uses, in the workbook",
    ...through(OFFICE, textToKeep(recordOf(SETTINGS, SETTINGS.rates), OFFICE), ({ rates, ...version }) => {
      if (rates) writesNoFormulas({ ...SETTINGS, ...version, rates });
    }),
  },
  {
    title: "office settings, in a file",
    sound: officeText(SETTINGS),
    read: (text) => {
      const read = readOffice(text);
      if (!read.ok && !read.why.every((sentence) => /\S/.test(sentence))) throw new Error("Refused without a word.");
      if (read.ok) writesNoFormulas(read.file);
      return read.ok ? "kept" : "refused";
    },
  },
  {
    title: "the practice workbook, in the browser",
    sound: JSON.stringify({ sheetOrder: ["s1"], sheets: { s1: { name: "Jobs", cellData: { 0: { 0: { v: 1 } } } } } }),
    read: (text) => {
      let work: unknown;
      try {
        work = JSON.parse(text);
      } catch {
        // It is kept as it is, and not as text.
        work = text;
      }
      return isWork(work) ? "kept" : "refused";
    },
  },
];

function through<T>(keeping: Keeping<T>, sound: string, use: (value: T) => unknown): Pick<Store, "sound" | "read"> {
  return {
    sound,
    read: (text) => {
      const kept = readKeptText(text, keeping);
      if (kept.state !== "kept") return "refused";
      use(kept.value);
      return "kept";
    },
  };
}

/** What is written back holds every entry, also those that could not be read. */
function keepsAll<T>(keeping: Keeping<T>, entries: number, toKeep: readonly unknown[]): void {
  const again = readKeptText(textToKeep(toKeep, keeping), keeping);
  if (again.state !== "kept" || toKeep.length !== entries) throw new Error("An entry was lost.");
}

/** Taking an insert back empties its area: there must be a formula for each of its cells, to see that it is its own. */
function emptiesOnlyItsOwn({ parts }: Receipt): void {
  for (const { area, formulas } of parts) {
    const cells = formulas.flat().length;
    if (cells !== area.rows * area.columns)
      throw new Error(`${cells} formulas for ${area.rows} × ${area.columns} cells.`);
  }
}

/** Nothing of a file becomes a formula: there are only those of our own, in one column of each sheet, and the unit of a price. */
function writesNoFormulas(file: OfficeFile): void {
  const at = { row: 0, column: 0 };
  const { rates, pastJobs = [] } = file;
  const sheets = [
    { ownColumn: 3, formulas: rates ? ratesSheet(at, { ...allRates, loaded: { rates, version: file } }).formulas : [] },
    { ownColumn: 7, formulas: pastJobsSheet(newPastLines(pastJobs, []), at).formulas },
  ];
  for (const { ownColumn, formulas } of sheets) {
    const others = formulas.flatMap((cells) => cells.filter((_, column) => column !== ownColumn));
    const formula = others.find((cell) => typeof cell === "string" && /^\s*[=+@]/.test(cell) && !PRICE_UNIT.test(cell));
    if (formula !== undefined) throw new Error(`${formula} would be a formula.`);
  }
}

/** What a listed stone's price is per, which says no more than its unit. */
const PRICE_UNIT = /^="per "&IF\(LEN\(TRIM\(G\d+\)\)=0,"ton",TRIM\(G\d+\)\)$/;
