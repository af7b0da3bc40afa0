import { afterAll, beforeAll, expect, test } from "vitest";
import { countsInPlan } from "../../src/layout/planOfEstimate";
import { readJob } from "../../src/pane/papers/readJob";
import { updateComparison } from "../../src/pane/papers/updateJob";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { readForm } from "../../src/quantities/bed/read";
import { kindsOfBeds } from "../../src/quantities/job/priceJob";
import { reviewAtOnce } from "../../src/review/review";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { jobBlock, jobRows } from "../../src/sheets/job/jobBlock";
import { followingForm, jobSheet } from "../../src/sheets/job/jobSheet";
import { findSheetBeds } from "../../src/sheets/job/sheetBed";
import { insertPlan } from "../../src/workbook/change/insert";
import { readWorkbook } from "../../src/workbook/read/workbook";
import { callFunction } from "../callFunction";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { ownPrices } from "../properties/review-workbooks/ours";
import { knowledge } from "../reviewWorkbook";

const form = (name: string, { typed, ...changes }: Partial<BedForm>): BedForm => ({
  ...{ ...blankForm(), name, ...changes },
  typed: { ...ownPrices, ...typed },
});
const forms = [
  form("Wall strip", { typed: { length: `32' 6 1/2"`, width: "3" } }),
  form("Walk", { typed: { length: `18' 6"`, width: "5", cornerRadius: "2", roundedCorners: "2" } }),
  form("Tree ring", { way: "round", typed: { diameter: "8", innerDiameter: "2" } }),
  form("Kidney", {
    way: "widths",
    typed: { spacing: "4", stone: "pea gravel", stoneSize: "3/8" },
    widths: ["0", "3", "4.5", "5", "4", "2.5", "0"],
    cutOuts: [["12", "1.5", "2", "3"]],
  }),
];
const [JOB, OPTION] = ["Alder Court", "Alder Court Granite"];

let host: HeadlessHost;
/** Where the cells of the job are; both versions have as many kinds of all, so they are at the same places. */
let keys: Map<string, string>;

beforeAll(async () => {
  host = await createProductHost();
  for (const one of forms) await insertPlan((at) => estimateBlock(one, at), { kind: "new sheet", name: one.name });
  const { facts } = await readWorkbook();
  const beds = facts.sheets.flatMap(({ name, used }) => (used ? findSheetBeds(name, used) : []));
  const toPrice = (one: BedForm) => {
    const bed = readForm(one).bed!;
    return { name: one.name, bed, laid: countsInPlan(bed) };
  };
  const head = { name: "Alder Court", option: "Option 1", differs: "", isChosen: true };
  const kinds = kindsOfBeds(forms.map(toPrice));
  const job = { ...head, beds, kinds };
  await insertPlan((at) => jobBlock(job, at), { kind: "new sheet", name: JOB });
  keys = keyAddresses(jobRows(job), { row: 0, column: 0 });
  const differences = { stone: "crushed granite", stoneCost: "71", borderHeight: "5" };
  const others = forms.map((one) => toPrice({ ...one, typed: { ...one.typed, ...differences } }));
  const option = {
    ...{ name: "Alder Court", option: "Granite", differs: "Stone: crushed granite", isChosen: false },
    beds: beds.map((bed) => followingForm(bed, differences)),
    kinds: kindsOfBeds(others),
  };
  await insertPlan((at) => jobSheet(option, at), { kind: "new sheet", name: OPTION });
});
afterAll(() => host.dispose());

async function findings() {
  const { facts } = await readWorkbook();
  return reviewAtOnce(facts, knowledge, { call: callFunction }).findings.map(({ rule, where }) => `${rule} ${where}`);
}

const cell = (sheet: string, key: string) => `'${sheet}'!${keys.get(key)}`;

async function write(sheet: string, key: string, content: string | number) {
  await Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).getRange(keys.get(key));
    range.formulas = [[content]];
    await context.sync();
  });
}

test("the check finds nothing wrong with four beds, their job, and an option", async () => {
  expect(await findings()).toEqual([]);
});

test("the check finds a cost that was typed over in a job", async () => {
  const formula = host.formula(cell(JOB, "haul.cost"))!;
  await write(JOB, "haul.cost", 12);
  expect(await findings()).toEqual([`typed-over ${cell(JOB, "haul.cost")}`]);
  await write(JOB, "haul.cost", formula);
});

test.each([
  [JOB, OPTION],
  [OPTION, JOB],
])("what is typed about %s leaves the price of %s alone", async (one, other) => {
  const before = [one, other].map((sheet) => host.value(cell(sheet, "priceWithTax")));
  await write(one, "discountShare", 0.1);
  await write(one, "setUpHours", 2);
  expect(host.value(cell(one, "priceWithTax"))).not.toBe(before[0]);
  expect(host.value(cell(other, "priceWithTax"))).toBe(before[1]);
  await write(one, "discountShare", 0);
  await write(one, "setUpHours", 0);
  expect([one, other].map((sheet) => host.value(cell(sheet, "priceWithTax")))).toEqual(before);
});

test("the check finds nothing wrong with a job whose working is collapsed", async () => {
  const { groups, looks, sheets } = host.grid;
  const sheetId = sheets.list().find(({ name }) => name === JOB)!.id;
  const areas = groups.list(sheetId).map((rows) => ({ sheetId, ...rows, column: 0, columnCount: 1 }));
  expect(areas).toHaveLength(2);
  for (const area of areas) looks.setRowsHidden(area, true);
  expect(await findings()).toEqual([]);
  for (const area of areas) looks.setRowsHidden(area, false);
});

test("the check finds nothing wrong with the two versions side by side", async () => {
  expect(await updateComparison("Alder Court", await readJob())).toBeDefined();
  expect(await findings()).toEqual([]);
});
