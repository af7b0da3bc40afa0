import { afterEach, expect, test } from "vitest";
import { insertJob } from "../../src/pane/papers/jobTogether";
import { jobOf, typedOverIn } from "../../src/pane/papers/makePapers";
import { readJob } from "../../src/pane/papers/readJob";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock, estimateRows } from "../../src/sheets/estimate/block";
import { BLOCK_TITLE } from "../../src/sheets/estimate/headings";
import { findJobRows } from "../../src/sheets/jobRows/findJobRows";
import { fitList } from "../../src/sheets/jobRows/fit";
import type { ResultRole } from "../../src/sheets/jobRows/roles";
import { offeredResults } from "../../src/sheets/jobRows/wanted";
import { crewSheet } from "../../src/sheets/papers/crewSheet";
import { ratesSheet } from "../../src/sheets/rates/ratesSheet";
import { insertPlan } from "../../src/workbook/change/insert";
import { readListSheet, writeRows } from "../../src/workbook/jobRows";
import type { HeadlessHost } from "../headlessHost";
import { fillOf, listSheet, officeOf, type Rows } from "../listSheets";
import { createProductHost } from "../productHost";

/*
 * A row in which someone typed has one answer, too: what its estimate prices and orders is what the row shows, and where
 * its measurements come to something else, that is said beside the bed before anything is written.
 */

let host: HeadlessHost;
afterEach(() => host.dispose());

/** The line of an estimate that a column of a list is. */
const LINES: readonly (readonly [ResultRole, line: string])[] = [
  ["pieces", "Edging pieces"],
  ["stakes", "Extra stakes"],
  ["rolls", "Fabric rolls"],
  ["boxes", "Pins"],
  ["order", "Stone"],
];

/** Fills a list, types into it, and writes the estimate of a job of all its rows. */
async function jobOfRows(rows: Rows, typed: Readonly<Record<string, number>> = {}) {
  host = await createProductHost(officeOf(rows));
  await insertPlan(ratesSheet, { kind: "new sheet", name: "Rates" });
  const list = async <T>(work: (sheet: Excel.Worksheet) => T, context: Excel.RequestContext) => {
    const sheet = context.workbook.worksheets.getItem("List");
    const result = work(sheet);
    await context.sync();
    return result;
  };
  await Excel.run((context) => list((sheet) => sheet.activate(), context));
  const { sheet, selection } = await readListSheet();
  const fit = fitList(sheet, selection)!;
  const { changes, assumes } = fillOf(fit, { results: offeredResults });
  await writeRows(fit, changes);
  await Excel.run((context) =>
    list((sheet) => {
      for (const [cell, value] of Object.entries(typed)) sheet.getRange(cell).values = [[value]];
    }, context),
  );
  await host.grid.settled();
  const { beds } = await readJob();
  const values = await Excel.run(async (context) => {
    const range = await list((sheet) => sheet.getUsedRange().load("values"), context);
    return range.values;
  });
  const shown = findJobRows(listSheet(values)).flatMap((one) => one.beds);
  const { order } = jobOf(beds);
  const inserted = await insertJob("Job", beds);
  if (!inserted.done) throw new Error("a new sheet is free");
  const cells = host.values(`'${inserted.sheetName}'!A1:I1000`);
  const starts = cells.flatMap(([first], row) => (first === BLOCK_TITLE ? [row] : []));
  const blocks = starts.map((start, n) => {
    const block = cells.slice(start, starts[n + 1]);
    return (label: string, unit?: string) => block.find((row) => row[0] === label && (!unit || row[2] === unit)) ?? [];
  });
  expect(blocks).toHaveLength(beds.length);
  return { beds, shown, order, blocks, assumes };
}

const EDGED: Rows = [
  ["Bed", "Length (ft)", "Width (ft)", "Edging (lin ft)"],
  // One long side and both ends are 28.5; 30 is no whole sides, and neither is 25 ft, as beside a walk; 28 is rounded to
  // the foot; and of 6 by 4 ft no sides come to 18, for they come to 16 and 20.
  ["Whole", 18.5, 5, 28.5],
  ["Long", 18.5, 5, 30],
  ["Gap", 18.5, 5, 25],
  ["Rounded", 18.5, 5, 28],
  ["Short", 6, 4, 18],
  // Strips along the short side take six rolls, and along the long one seven.
  ["Wide", 60, 25, 131],
];
const ROUNDED: Rows = EDGED.map((row, at) => [
  ...row,
  ...(at === 0 ? ["Corner radius (ft)", "Rounded corners"] : [1, 2]),
]);

const fits = (feet: number) =>
  `${feet} lin ft of edging fits no sides of the bed, so it's estimated by area and edging, without a drawing.`;
// Where typed edging runs isn't known, so the row has a stake at each corner, also where a joint is near.
const STAKES = "Extra stakes: 5 in the row, 4 calculated, and the row's is used.";

test.each([
  [
    "square",
    EDGED,
    [[STAKES], [fits(30)], [fits(25)], ["Edging: 28 in the row, 28.5 calculated.", STAKES], [fits(18)], [fits(131)]],
  ],
  ["rounded", ROUNDED, undefined],
])("a row of %s corners whose edging was typed is priced and ordered as the row shows it", async (_, rows, said) => {
  const { beds, shown, order, blocks, assumes } = await jobOfRows(rows);
  expect(assumes).toContain("Edging is as typed, so where it runs isn't known: one run, with stakes for 2 corners.");
  shown.forEach(({ bed, quantities }, n) => {
    const block = blocks[n]!;
    const lines = LINES.map(([, label]) => [bed, label, block(label)[1]]);
    expect(lines).toEqual(LINES.map(([role, label]) => [bed, label, quantities[role]]));
    const { estimate } = beds[n]!.worked!;
    // What isn't the same in the row and its estimate is said beside the bed.
    const told = beds[n]!.notes!.join(" ");
    for (const [label, calculated, role] of [
      ["Edging", estimate.amounts.borderRun, "border"],
      ["Edging pieces", estimate.amounts.pieces, "pieces"],
      ["Extra stakes", estimate.amounts.extraStakes, "stakes"],
      ["Pins", estimate.amounts.pins, "pins"],
      ["Fabric rolls", estimate.amounts.rolls, "rolls"],
    ] as const)
      if (Math.abs(calculated - quantities[role]!) > 0.01) expect(told).toContain(`${label}: `);
    // The estimate's own amount of edging, too, is the row's wherever no sides are near it.
    if (["Long", "Gap", "Short"].includes(bed)) {
      expect(block("Edging", "lin ft")[1]).toBe(quantities.border);
      expect(told).toContain("lin ft of edging fits no sides of the bed");
    }
  });
  if (said) expect(beds.map(({ notes }) => notes)).toEqual(said);
  const ordered = order.lines.filter(({ supplier }) => supplier === "border");
  const total = (role: ResultRole) => shown.reduce((sum, { quantities }) => sum + quantities[role]!, 0);
  expect(ordered.map(({ bedByBed }) => bedByBed)).toEqual([total("pieces"), total("stakes")].filter((sum) => sum > 0));
});

test("a quantity that was typed into a row is what its estimate orders, and is said beside the bed", async () => {
  const rows: Rows = [EDGED[0]!.slice(0, 3), ["Whole", 18.5, 5], ["Other", 12, 4]];
  // The columns begin at D: area, edging, pieces.
  const { beds, blocks, assumes } = await jobOfRows(rows, { F2: 9 });
  expect(assumes.filter((said) => said.startsWith("Edging is as typed"))).toEqual([]);
  expect(beds.map(({ notes }) => notes)).toEqual([
    ["Edging pieces: 9 in the row, 4 calculated, and the row's is used.", expect.stringContaining("Extra stakes: ")],
    [],
  ]);
  expect(blocks[0]!("Edging pieces")[1]).toBe(9);
  expect(blocks[0]!("Edging pieces")[8]).toContain("quantity typed over");
  expect(blocks[1]!("Edging pieces")[8]).not.toContain("quantity typed over");
});

test("a count that was typed over in an estimate is said beside the bed, where the crew's sheet would have another", async () => {
  host = await createProductHost();
  const form: BedForm = { ...blankForm(), name: "Walk", typed: { length: "18.5", width: "5" } };
  const inserted = await insertPlan((at) => estimateBlock(form, at), { kind: "new sheet", name: "Walk" });
  if (!inserted.done) throw new Error("a new sheet is free");
  expect((await readJob()).beds.map(({ notes }) => notes)).toEqual([[]]);
  const pins = keyAddresses(estimateRows(form), { row: 0, column: 0 }).get("pins")!;
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Walk").getRange(pins).values = [[60]];
    await context.sync();
  });
  await host.grid.settled();
  const { beds } = await readJob();
  expect(beds.map(({ notes }) => notes)).toEqual([["Pins: 60 in the estimate, 51 calculated."]]);
  const job = jobOf(beds);
  const typedOver = typedOverIn(job);
  expect(typedOver).toEqual(["Walk. Pins: 60 in the estimate, 51 calculated."]);
  const head = { job: "", place: "", start: "", people: 2, drawings: [], typedOver, measures: [] };
  const crew = crewSheet(job.crew, job.order, head, "letter", { row: 0, column: 0 }).formulas.flat();
  expect(crew).toEqual(expect.arrayContaining([...typedOver, "Drawings and cuts have the calculated number."]));
});
