import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startingDetails } from "../../src/pane/papers/details";
import { jobOf, noticePaper, orderPaper } from "../../src/pane/papers/makePapers";
import { noticeOf } from "../../src/pane/papers/noticeOf";
import { proposalOf, proposalPlan } from "../../src/pane/papers/proposalOf";
import type { CellContent } from "../../src/practice/grid/port";
import { blankForm } from "../../src/quantities/bed/form";
import { checkReport } from "../../src/sheets/checkReport";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { newList } from "../../src/sheets/jobRows/newList";
import { usualAssumed } from "../../src/sheets/jobRows/setting";
import { crewSheet } from "../../src/sheets/papers/crewSheet";
import { morePastJobs } from "../../src/sheets/papers/pastJobs";
import { proposalSheet } from "../../src/sheets/papers/proposal";
import type { Plan } from "../../src/sheets/plan";
import { templatePlan } from "../../src/sheets/templates/openTemplate";
import type { Anchor } from "../../src/spreadsheet/areas";
import { insertPlan } from "../../src/workbook/change/insert";
import { foundBed } from "../foundBed";
import type { HeadlessHost } from "../headlessHost";
import { hostileTexts } from "../hostileTexts";
import { createProductHost } from "../productHost";

/*
 * Text that people type, or that is in cells and templates, is only ever text: wherever it is written, no formula
 * comes of it, no formula changes by it, and it is there as it was typed.
 */
let host: HeadlessHost;
beforeAll(async () => {
  host = await createProductHost();
});
afterAll(() => host.dispose());

const AT: Anchor = { row: 0, column: 0 };
const form = (name: string) => ({ ...blankForm(), name, typed: { length: "20", width: "5" } });
const detailsOf = (text: string) => ({
  ...startingDetails,
  job: text,
  office: text,
  officeAddress: text,
  officePhone: text,
  officeLicense: text,
  proposalNumber: text,
  customer: text,
  place: text,
  start: "2030-01-15",
  ownHolidays: `2030-01-14 ${text.replace(/\s/g, " ")}`,
  notIncluded: text,
  terms: text,
});
const job = (text: string) => jobOf([foundBed(form(text), 1)]);

/** Every place where text of people comes into cells: makes what is written there. */
const places: readonly (readonly [string, (text: string) => Plan])[] = [
  ["the name of a bed", (text) => estimateBlock(form(text), AT)],
  [
    "the first row of a list",
    (text) =>
      newList(
        {
          first: { job: text, bed: text, length: "20", width: "5" },
          assumed: { ...usualAssumed, stone: "river rock" },
          results: ["area", "tons"],
          rates: new Set(),
          weighsStone: false,
          stones: ["river rock"],
        },
        AT,
      ),
  ],
  ["an order", (text) => orderPaper(job(text), detailsOf(text), undefined).plan],
  [
    "a crew's sheet",
    (text) => {
      const { crew, order } = job(text);
      const head = { job: text, place: text, start: text, people: 2, drawings: [], measures: [] };
      return crewSheet(crew, order, head, "letter", AT);
    },
  ],
  [
    "a dig notice",
    (text) => {
      const details = detailsOf(text);
      return noticePaper(job(text), details, noticeOf(details, 2)!).plan;
    },
  ],
  ["a proposal", (text) => proposalPlan(proposalOf(job(text), detailsOf(text)), detailsOf(text))],
  [
    "the options of a proposal",
    (text) => {
      const option = { name: text, differs: text, price: 9, salesTax: 1, total: 10, difference: 0, isChosen: true };
      const scope = [{ name: text, text: "" }];
      return proposalSheet({ ...proposalOf(job(text), detailsOf(text)), options: [option], scope }, "letter", AT);
    },
  ],
  ["a report", (text) => checkReport([{ kind: "finding", cells: [text, text, text] }], AT)],
  [
    "a line of past jobs",
    (text) => morePastJobs([{ job: text, date: 47_000, measure: text, unit: text, estimated: 2, actual: 3 }], AT),
  ],
  [
    "the text of a template",
    (text) =>
      templatePlan(
        {
          format: "bedrow-template",
          version: 1,
          name: "Date",
          rows: 2,
          columns: 1,
          widths: [20],
          cells: [
            { at: "A1", text },
            { at: "A2", formula: "=1+1" },
          ],
        },
        new Map(),
        AT,
      ),
  ],
];

/** A text of the same kind that nothing could take for anything else. */
const HARMLESS = "Harmless words";

/** The cells of a plan as the host holds them: it reads again what is written, as if it were typed. */
function written({ formulas, rows, columns }: Plan) {
  const area = { sheetId: host.grid.sheets.list()[0]!.id, ...AT, rowCount: rows, columnCount: columns };
  host.grid.cells.clear(area, "all");
  host.grid.cells.write(
    area,
    formulas.map((row) => [...row]),
  );
  return host.grid.cells.read(area).flat();
}

/** The host gives an error as its text, so a template holds the one as the other. */
const errorsStay = (where: string) => where === "the text of a template";

describe.each(places)("in %s", (where, make) => {
  const texts = hostileTexts.filter((text) => !(errorsStay(where) && text.startsWith("#")));
  const harmless = make(HARMLESS);
  const plainCells: CellContent[] = [];
  beforeAll(() => {
    plainCells.push(...written(harmless));
  });

  test.each(texts)("%j is only text", (text) => {
    const plan = make(text);
    // The same formulas at the same places as with harmless words, and no others.
    const formulasOf = ({ formulas }: Plan) => formulas.flat().map((cell) => isFormula(cell) && cell);
    expect(formulasOf(plan)).toEqual(formulasOf(harmless));
    expect([plan.warnings, plan.choices, plan.rows, plan.columns]).toEqual([
      harmless.warnings,
      harmless.choices,
      harmless.rows,
      harmless.columns,
    ]);
    const cells = written(plan);
    const places = plainCells.flatMap(({ value }, index) => (String(value).includes(HARMLESS) ? [index] : []));
    expect(places.length).toBeGreaterThan(0);
    for (const place of places) {
      const { kind, formula, value } = cells[place]!;
      const wanted = String(plainCells[place]!.value).replaceAll(HARMLESS, () => text);
      expect([kind, formula, inWords(value)]).toEqual(["text", undefined, inWords(wanted)]);
    }
  });
});

test.each([
  ["longer than a cell takes", (at: Anchor) => estimateBlock(form("a".repeat(32_768)), at)],
  [
    "longer than a formula takes a text",
    () => ({ ...checkReport([{ kind: "note", cells: ["a"] }], AT), formulas: [[`="${"a".repeat(256)}"`]] }),
  ],
] as const)("a text %s is refused in words, and nothing is written", async (_what, make) => {
  const before = host.grid.sheets.list();
  await expect(insertPlan(make, { kind: "new sheet", name: "Texts" })).rejects.toThrow(
    /^Nothing was written\. “a{40}…” has .* Make it shorter\.$/,
  );
  expect(host.grid.sheets.list()).toEqual(before);
});

const isFormula = (cell: string | number) => typeof cell === "string" && cell.startsWith("=");

/** Spaces at the ends go, and some papers set lines again: the words count. */
const inWords = (value: unknown) => String(value).replace(/\s+/g, " ").trim();
