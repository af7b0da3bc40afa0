import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type JobDetails, startingDetails } from "../../src/pane/papers/details";
import { insertSheets } from "../../src/pane/papers/insertPapers";
import { differsForCustomer, insertJob, insertOption, isInJob, jobOnSheetOf } from "../../src/pane/papers/jobTogether";
import { jobOf, orderPaper } from "../../src/pane/papers/makePapers";
import { measuresOf } from "../../src/pane/papers/measures";
import { proposalOf, proposalPlan } from "../../src/pane/papers/proposalOf";
import { readJob } from "../../src/pane/papers/readJob";
import { updateComparison } from "../../src/pane/papers/updateJob";
import { priceJob } from "../../src/quantities/job/priceJob";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { crewSheet } from "../../src/sheets/papers/crewSheet";
import { insertPlan } from "../../src/workbook/change/insert";
import { FOUR_BEDS_MORE, fourBeds, GRANITE, SHRUBS } from "../fourBeds";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { bedOfJob } from "../properties/jobToPrice";

/*
 * The four beds that are worked out by hand in references/job-price.test.ts, in a workbook: their job estimate with an
 * option, and the order, the crew sheet, and the proposal made from it. Every quantity and price is the same in all.
 */
const [JOB, OPTION] = ["Alder Court", "Alder Court Granite"];
const CORNER = { row: 0, column: 0 };
const details: JobDetails = { ...startingDetails, job: JOB, byBed: "bed" };

let host: HeadlessHost;
beforeAll(async () => {
  host = await createProductHost();
  for (const form of fourBeds())
    await insertPlan((at) => estimateBlock(form, at), { kind: "new sheet", name: form.name });
  const { beds } = await readJob();
  await insertJob(JOB, beds);
  const own = rowOf(JOB, "Lines") + 1;
  await host.type({
    [`'${JOB}'!A${own}`]: SHRUBS.label,
    [`'${JOB}'!B${own}`]: SHRUBS.quantity,
    [`'${JOB}'!C${own}`]: SHRUBS.unit,
    [`'${JOB}'!D${own}`]: SHRUBS.unitCost,
    [`'${JOB}'!I${own}`]: SHRUBS.kind,
    [`'${JOB}'!B${rowOf(JOB, "Set up and travel")}`]: FOUR_BEDS_MORE.setUpHours,
    [`'${JOB}'!B${rowOf(JOB, "Discount, %")}`]: FOUR_BEDS_MORE.discountShare,
    [`'${JOB}'!B${rowOf(JOB, "Deposit, %")}`]: FOUR_BEDS_MORE.depositShare,
  });
  const found = await readJob();
  await insertOption(found.jobs[0]!, found.beds, { name: "Granite", differences: GRANITE }, undefined);
  await updateComparison(JOB, await readJob());
});
afterAll(() => host.dispose());

const near = (amount: unknown) => expect.closeTo(Number(amount), 9);

/** The number of the first row with a label. */
function rowOf(sheet: string, label: string): number {
  const row = host.values(`'${sheet}'!A1:A150`).findIndex(([first]) => first === label);
  if (row < 0) throw new Error(`No row of ${sheet} is labeled ${label}.`);
  return row + 1;
}
const cell = (label: string) => `'${JOB}'!B${rowOf(JOB, label)}`;
const type = (cells: Readonly<Record<string, string | number>>) =>
  host.type(Object.fromEntries(Object.entries(cells).map(([label, content]) => [cell(label), content])));

async function deleteRows(...labels: readonly string[]) {
  for (const label of labels) {
    const row = rowOf(JOB, label);
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem(JOB).getRange(`${row}:${row}`).delete("Up");
      await context.sync();
    });
  }
}

/** The job as the pane reads it for documents: the version that is chosen. */
async function chosenJob() {
  const { beds, jobs } = await readJob();
  const chosen = jobs.find(({ isChosen }) => isChosen)!;
  const own = beds.filter((bed) => isInJob(bed, chosen));
  return jobOf(own, jobOnSheetOf(jobs, own), jobs);
}

type Cells = readonly unknown[];
type Line = readonly [label: string, quantity: number, unit: string];

/** What the order's lines are called in the job's estimate. */
const NAMES: Readonly<Record<string, (specification: string) => string>> = {
  "Edging pieces": (specification) => `Edging pieces, ${specification}`,
  "Fabric rolls": (specification) => `Fabric rolls, ${specification}`,
  Delivery: (specification) => `Delivery, ${specification}`,
};

/** Makes the order and the crew sheet on new sheets, reads their cells, and deletes them. */
async function made() {
  const job = await chosenJob();
  const measures = measuresOf(job).map(({ measure: { label, unit }, planned }) => ({
    ...{ measure: label, unit, estimated: planned },
  }));
  // The drawings need a browser; test/browser/papers.test.ts has them.
  const head = { job: JOB, place: "", start: "", people: job.people, drawings: [], measures };
  const crewPlan = crewSheet(job.crew, job.order, head, "letter", CORNER);
  const { names } = await insertSheets({
    title: "documents",
    sheets: [orderPaper(job, details, undefined), { name: "Crew", plan: crewPlan }],
  });
  const [order = [], crew = []] = names.map((name) => host.values(`'${name}'!A1:H120`));
  await Excel.run(async (context) => {
    for (const name of names) context.workbook.worksheets.getItem(name).delete();
    await context.sync();
  });
  const weights = order.findIndex(([label]) => label === "Weights");
  const ordered = order.slice(0, weights).flatMap((cells: Cells): Line[] => {
    const [item, specification, quantity, unit] = cells;
    if (typeof quantity !== "number") return [];
    const [name, text] = [String(item), String(specification)];
    const label = NAMES[name]?.(text) ?? (unit === "tons" ? `Stone, ${name}, ${text}` : name);
    return [[label, quantity, String(unit)]];
  });
  const hours = crew.flatMap(([box, step, , , labor]: Cells) =>
    box === "☐" && typeof labor === "number" ? [[String(step), labor] as const] : [],
  );
  const text = (label: string) => String(crew.find(([, step]) => step === label)?.[2]);
  const used = Object.fromEntries(
    crew.flatMap((cells: Cells) => (typeof cells[4] === "number" ? [[String(cells[1]), cells[4]]] : [])),
  );
  return { ordered, hours, text, used, time: text("Time"), proposal: proposalOf(job, details) };
}

/** What the job's estimate shows: what it buys, what it works, and what it comes to. */
async function shown(sheet: string) {
  const { jobs } = await readJob();
  const { lines, amounts } = jobs.find((one) => one.sheet === sheet)!;
  const needed = lines.filter(({ quantity }) => quantity > 0);
  const isWork = ({ kind }: { readonly kind: string }) => kind === "labor";
  return {
    amounts,
    // No one orders the dump: its fee is in the estimate alone.
    bought: needed
      .filter((line) => !isWork(line) && line.label !== "Dump fee")
      .map(({ label, quantity, unit }): Line => [label, quantity, unit]),
    work: needed.filter(isWork).map(({ label, quantity }) => [label, quantity] as const),
  };
}

/** What the crew's sheet calls the lines of work. */
const STEP_OF: Readonly<Record<string, string>> = {
  "Set edging": "Trench and set edging",
  "Lay and pin fabric": "Lay fabric",
  "Wheelbarrow and spread": "Wheelbarrow and spread stone",
};
const byLabel = (lines: readonly Line[]) => [...lines].sort(([one], [other]) => (one < other ? -1 : 1));

/** Every quantity of the job's estimate is in its documents, and nothing else. */
async function expectAgreement(sheet: string) {
  const [documents, { bought, work, amounts }] = [await made(), await shown(sheet)];
  expect(byLabel(documents.ordered)).toEqual(byLabel(bought));
  expect(documents.hours).toEqual(work.map(([label, hours]) => [STEP_OF[label] ?? label, near(hours)]));
  const { time, used, text } = documents;
  expect(time).toBe(
    `${Number(amounts.laborHours!.toFixed(2))} labor hours: ${Number(amounts.crewDays!.toFixed(2))} days for 2 people`,
  );
  const quantityOf = (begin: string) =>
    bought.filter(([label]) => label.startsWith(begin)).reduce((sum, [, quantity]) => sum + quantity, 0);
  expect(used["Edging pieces"]).toBe(quantityOf("Edging pieces"));
  expect(used["Fabric rolls"]).toBe(quantityOf("Fabric rolls"));
  expect(text("Scrape and load")).toContain(`${quantityOf("Haul off")} loads hauled off`);
  expect(text("Trench and set edging")).toContain(`${quantityOf("Edging pieces")} pieces on the order`);
  const deliveries = quantityOf("Delivery");
  expect(text("Wheelbarrow and spread stone")).toContain(`${deliveries} load${deliveries === 1 ? "" : "s"} delivered`);
  return documents;
}

const expected = () =>
  priceJob(
    fourBeds().map((form) => bedOfJob(form).toPrice),
    { own: [SHRUBS], inputs: FOUR_BEDS_MORE },
  );

test("the job's estimate shows the price that was worked out by hand", async () => {
  const { amounts, lines } = expected();
  const { amounts: inSheet, bought, work } = await shown(JOB);
  for (const [key, amount] of Object.entries(inSheet))
    expect(amount, key).toBeCloseTo(Number(amounts[key as keyof typeof amounts]), 9);
  expect([...bought, ...work].length).toBe(
    lines.filter(({ quantity, label }) => quantity > 0 && label !== "Dump fee").length,
  );
  for (const [label, quantity] of [...bought, ...work])
    expect(quantity, label).toBeCloseTo(lines.find((line) => line.label === label)!.quantity, 9);
});

test("order and crew sheet have the quantities of the job's estimate, and the proposal its prices", async () => {
  const { hours, proposal } = await expectAgreement(JOB);
  expect(hours.slice(0, 2)).toEqual([
    ["Remove old shrubs", 3],
    ["Set up and travel", 1.5],
  ]);
  const { amounts, byBed } = expected();
  expect(proposal.price).toEqual({
    discount: { listPrice: near(amounts.listPrice), label: "Discount", amount: near(amounts.discountSum) },
    price: near(amounts.price),
    salesTax: near(amounts.taxSum),
    total: near(amounts.priceWithTax),
    deposit: near(amounts.depositSum),
    balance: near(amounts.balance),
  });
  expect(proposal.scope.map(({ name, price }) => [name, price])).toEqual([
    ["Remove old shrubs", undefined],
    ...fourBeds().map(({ name }, index) => [name, near(byBed[index])]),
  ]);
  expect(proposal.scope[1]?.text).toBe(
    "About 98 sq ft. Strip 2 1/2 in of sod and soil, and haul it away. Set 39 ft of 4 in edging. " +
      "Lay weed fabric, overlapped and pinned. Spread river rock, up to 1 1/4 in, 2 in deep, raked level. Clean up.",
  );
  expect(proposal.scope[4]?.text).toContain("Spread pea gravel, up to 3/8 in, 2 in deep");
  const [first, option] = [await shown(JOB), await shown(OPTION)];
  expect(proposal.options).toMatchObject([
    { name: "Option 1", price: near(first.amounts.price), total: near(first.amounts.priceWithTax), isChosen: true },
    { name: "Granite", price: near(option.amounts.price), total: near(option.amounts.priceWithTax), isChosen: false },
  ]);
  const difference = Number(option.amounts.priceWithTax) - Number(first.amounts.priceWithTax);
  expect(proposal.options[1]?.difference).toBeCloseTo(difference, 9);
  expect(host.value(`'${JOB}'!D${rowOf(JOB, "Granite")}`)).toBeCloseTo(difference, 9);
  // The printed proposal has the same amounts as numbers, and no formula.
  const { formulas } = proposalPlan(proposal, details);
  const numbers = formulas.flat().filter((cell) => typeof cell === "number");
  for (const amount of [...Object.values(proposal.price!).filter((one) => typeof one === "number"), ...byBed])
    expect(numbers).toContainEqual(near(amount));
  expect(formulas.flat().filter((cell) => String(cell).startsWith("="))).toEqual([]);
  // The option has another unit cost, which is the office's own affair.
  expect(proposal.options.map(({ differs }) => differs)).toEqual([
    "as described",
    "Stone: crushed granite; Largest stone: 0.75 in",
  ]);
  expect(formulas.flat().join("\n")).not.toMatch(/unit cost|markup|overhead|profit/i);
});

describe("what is typed in the job's estimate reaches its documents", () => {
  test("quantities of material and hours of work that are typed over", async () => {
    const before = host.formula(cell("Set edging"));
    await type({ "Edging pieces, 4 in high, 8 ft long": 20, "Extra stakes": 5, "Set edging": 12 });
    const { ordered, hours } = await expectAgreement(JOB);
    expect(ordered).toContainEqual(["Edging pieces, 4 in high, 8 ft long", 20, "pieces"]);
    expect(ordered).toContainEqual(["Extra stakes", 5, "stakes"]);
    expect(hours).toContainEqual(["Trench and set edging", 12]);
    await type({ "Set edging": before! });
  });

  test("lines that are left out by typing 0, and lines whose rows are deleted", async () => {
    await type({ "Fabric rolls, 6 ft × 50 ft": 0, Pins: 0, "Lay and pin fabric": 0, "Haul off": 0 });
    const typed = await made();
    expect(typed.ordered.map(([label]) => label).filter((label) => /Fabric|Pins|Haul/.test(label))).toEqual([]);
    expect(typed.hours).toContainEqual(["Lay fabric", 0]);
    for (const { text } of typed.proposal.scope.slice(1)) {
      expect(text).toContain("leave it on site");
      expect(text).not.toContain("fabric");
    }
    const worked = await shown(JOB);
    await deleteRows("Fabric rolls, 6 ft × 50 ft", "Pins", "Lay and pin fabric");
    const deleted = await made();
    expect(await shown(JOB)).toEqual(worked);
    expect({ ...deleted, text: 0 }).toEqual({ ...typed, text: 0 });
  });

  test("material of the estimator's own, below the standard lines", async () => {
    const row = rowOf(JOB, "Clean up") + 1;
    const own = { A: "Drip line", B: 2, C: "rolls", D: 40, I: "material" };
    await host.type(
      Object.fromEntries(Object.entries(own).map(([column, content]) => [`'${JOB}'!${column}${row}`, content])),
    );
    const { ordered, proposal } = await made();
    expect(ordered).toContainEqual(["Drip line", 2, "rolls"]);
    expect(proposal.scope.at(-1)).toEqual({ name: "Drip line", text: "" });
  });
});

test("order and crew sheet follow the option once it is the chosen one", async () => {
  await type({ Chosen: "no" });
  await host.type({ [`'${OPTION}'!B${rowOf(OPTION, "Chosen")}`]: "yes" });
  const { ordered, proposal } = await expectAgreement(OPTION);
  expect(ordered).toContainEqual(["Stone, crushed granite, to 0.75 in", 3, "tons"]);
  const { amounts } = await shown(OPTION);
  expect(proposal.price).toMatchObject({ price: near(amounts.price), total: near(amounts.priceWithTax) });
});

test("an option's unit costs don't reach the customer, from an estimate of an earlier version either", () => {
  const before = "Stone: pea gravel; Stone, unit cost: 70; Edging height: 5 in";
  expect(differsForCustomer(before)).toBe("Stone: pea gravel; Edging height: 5 in");
  expect(differsForCustomer("Edging piece, unit cost: 31")).toBe("");
});
