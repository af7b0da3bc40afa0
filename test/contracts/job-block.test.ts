import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { countsInPlan } from "../../src/layout/planOfEstimate";
import { insertJob } from "../../src/pane/papers/jobTogether";
import { readJob } from "../../src/pane/papers/readJob";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { readForm } from "../../src/quantities/bed/read";
import { type BedToPrice, kindsOfBeds, priceJob } from "../../src/quantities/job/priceJob";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock, estimateRows } from "../../src/sheets/estimate/block";
import { jobBlock, jobRows } from "../../src/sheets/job/jobBlock";
import { followingForm, jobSheet } from "../../src/sheets/job/jobSheet";
import { findJobBlocks } from "../../src/sheets/job/readJobBlock";
import { findSheetBeds, type SheetBed } from "../../src/sheets/job/sheetBed";
import { insertPlan } from "../../src/workbook/change/insert";
import { readWorkbook } from "../../src/workbook/read/workbook";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";

const form = (name: string, changes: Partial<BedForm>): BedForm => ({ ...blankForm(), name, ...changes });

/** The four beds of one customer. */
const forms = [
  form("Wall strip", { typed: { length: `32' 6 1/2"`, width: "3" } }),
  form("Walk", { typed: { length: `18' 6"`, width: "5", cornerRadius: "2", roundedCorners: "2" } }),
  form("Tree ring", { way: "round", typed: { diameter: "8", innerDiameter: "2" } }),
  form("Kidney", {
    way: "widths",
    typed: { spacing: "4", stone: "pea gravel", stoneSize: "3/8", borderHeight: "4 1/3" },
    widths: ["0", "3", "4.5", "5", "4", "2.5", "0"],
    cutOuts: [["12", "1.5", "2", "3"]],
  }),
];

function toPrice(bedForm: BedForm): BedToPrice {
  const bed = readForm(bedForm).bed!;
  return { name: bedForm.name, bed, laid: countsInPlan(bed) };
}

let host: HeadlessHost;
let beds: SheetBed[];
let jobSheetName: string;
let keys: Map<string, string>;

beforeAll(async () => {
  host = await createProductHost();
  for (const one of forms) await insertPlan((at) => estimateBlock(one, at), { kind: "new sheet", name: one.name });
  beds = await bedsOfWorkbook();
  const job = {
    name: "Alder Court",
    option: "Option 1",
    differs: "",
    isChosen: true,
    beds,
    kinds: kindsOfBeds(forms.map(toPrice)),
  };
  const inserted = await insertPlan((at) => jobBlock(job, at), { kind: "new sheet", name: "Alder Court" });
  if (!inserted.done) throw new Error("a new sheet is free");
  jobSheetName = inserted.sheetName;
  keys = keyAddresses(jobRows(job), { row: 0, column: 0 });
});
afterAll(() => host.dispose());

async function bedsOfWorkbook(): Promise<SheetBed[]> {
  const { facts } = await readWorkbook();
  return facts.sheets.flatMap(({ name, used }) => (used ? findSheetBeds(name, used) : []));
}

const value = (key: string) => host.value(`'${jobSheetName}'!${keys.get(key)}`);

describe("the block of a job of four beds", () => {
  test("shows the price that the pane works out", () => {
    const { amounts, byBed, lines } = priceJob(forms.map(toPrice));
    for (const { key, quantity, cost, price, label } of lines) {
      if (key !== "setUp") expect(value(`${key}.quantity`), label).toBeCloseTo(quantity, 9);
      expect(value(`${key}.label`)).toBe(label);
      expect(value(`${key}.cost`), label).toBeCloseTo(cost, 9);
      expect(value(`${key}.price`), label).toBeCloseTo(price, 9);
    }
    for (const [key, amount] of Object.entries(amounts)) expect(value(key), key).toBeCloseTo(Number(amount), 9);
    byBed.forEach((share, index) => {
      expect(value(`bed${index + 1}.price`)).toBeCloseTo(share, 9);
    });
  });
});

test("the working of a job is in groups that can be collapsed, below the headings that stay in sight", () => {
  const rows = host.values(`'${jobSheetName}'!A1:A200`).map(([label]) => String(label));
  const sheetId = host.grid.sheets.list().find(({ name }) => name === jobSheetName)!.id;
  const groups = host.grid.groups.list(sheetId).map(({ row, rowCount }) => rows.slice(row - 1, row + rowCount + 1));
  expect(groups.map((labels) => [labels[0], labels.at(-2), labels.at(-1)])).toEqual([
    ["Markups, crew, trucks, and boxes", "Delivery, each", ""],
    ["From each bed", "Kinds without a line", ""],
  ]);
});

const write = (sheet: string, address: string, content: string | number) =>
  Excel.run(async (context) => {
    context.workbook.worksheets.getItem(sheet).getRange(address).values = [[content]];
    await context.sync();
  });

async function jobsOfWorkbook() {
  const { facts } = await readWorkbook();
  return facts.sheets.flatMap(({ name, used }) => (used ? findJobBlocks(name, used) : []));
}

describe("a job block read back", () => {
  test("tells its beds, its lines, and its price", async () => {
    const [job, ...others] = await jobsOfWorkbook();
    expect(others).toEqual([]);
    const { amounts, lines, byBed } = priceJob(forms.map(toPrice));
    expect(job).toMatchObject({ sheet: jobSheetName, name: "Alder Court" });
    expect(job?.beds.map(({ sheet }) => sheet)).toEqual(beds.map(({ sheet }) => sheet));
    expect(job?.beds.map(({ price }) => price)).toEqual(byBed.map((share) => expect.closeTo(share, 9)));
    expect(job?.lines.map(({ label, isStandard, isTyped }) => [label, isStandard, isTyped])).toEqual(
      lines.map(({ label, key }) => [label, true, key === "setUp"]),
    );
    for (const [key, shown] of Object.entries(job?.amounts ?? {}))
      expect(shown, key).toBeCloseTo(Number(amounts[key as keyof typeof amounts]), 9);
    expect(Object.keys(job?.amounts ?? {}).length).toBeGreaterThan(12);
  });

  test("has lines of the estimator's own, discount, and deposit in its price", async () => {
    const cells = {
      "before1.label": "Remove old shrubs",
      "before1.quantity": 3,
      "before1.unitCost": 48,
      "before1.kind": "labor",
    };
    for (const [key, content] of Object.entries(cells)) await write(jobSheetName, keys.get(key)!, content);
    await write(jobSheetName, keys.get("discountShare")!, 0.05);
    await write(jobSheetName, keys.get("depositShare")!, 0.3);
    const own = [{ label: "Remove old shrubs", unit: "", quantity: 3, unitCost: 48, kind: "labor" as const }];
    const expected = priceJob(forms.map(toPrice), { own, inputs: { discountShare: 0.05, depositShare: 0.3 } });
    for (const [key, amount] of Object.entries(expected.amounts))
      expect(value(key), key).toBeCloseTo(Number(amount), 9);
    const [job] = await jobsOfWorkbook();
    expect(job?.lines[0]).toMatchObject({
      label: "Remove old shrubs",
      quantity: 3,
      comesFirst: true,
      isStandard: false,
    });
    for (const key of Object.keys(cells))
      await write(jobSheetName, keys.get(key)!, key.endsWith("kind") ? "material" : "");
    await write(jobSheetName, keys.get("discountShare")!, 0);
    await write(jobSheetName, keys.get("depositShare")!, 0);
  });

  test("takes the discount of a single line, a percent or dollars, off that line", async () => {
    const [before, line] = [Number(value("price")), Number(value("setEdging.price"))];
    await write(jobSheetName, keys.get("setEdging.discount")!, 0.1);
    expect(value("setEdging.price")).toBeCloseTo(line * 0.9, 9);
    expect(value("price")).toBeCloseTo(before - line * 0.1, 1);
    await write(jobSheetName, keys.get("setEdging.discount")!, 40);
    expect(value("setEdging.price")).toBeCloseTo(line - 40, 9);
    expect(value("price")).toBeCloseTo(before - 40, 1);
    await write(jobSheetName, keys.get("setEdging.discount")!, "");
    expect(value("price")).toBe(before);
  });

  test("follows a measurement that is changed in a bed's block", async () => {
    const before = value("price");
    const length = keyAddresses(estimateRows(forms[0]!), { row: 0, column: 0 }).get("length")!;
    await write(forms[0]!.name, length, "40");
    const changed = [form("Wall strip", { typed: { length: "40", width: "3" } }), ...forms.slice(1)];
    expect(value("price")).toBeCloseTo(Number(priceJob(changed.map(toPrice)).amounts.price), 9);
    expect(value("price")).toBeGreaterThan(Number(before));
    await write(forms[0]!.name, length, `32' 6 1/2"`);
    expect(value("price")).toBe(before);
  });

  test("takes pieces that were typed in a bed's block as typed", async () => {
    const pieces = keyAddresses(estimateRows(forms[0]!), { row: 0, column: 0 }).get("edging.quantity")!;
    const [one, ...others] = forms.map(toPrice);
    const formula = await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem(forms[0]!.name).getRange(pieces);
      range.load("formulas");
      await context.sync();
      return String(range.formulas[0]![0]);
    });
    await write(forms[0]!.name, pieces, 20);
    const typed = priceJob([{ ...one!, typed: { edging: { quantity: 20 } } }, ...others]);
    expect(value("price")).toBeCloseTo(Number(typed.amounts.price), 9);
    await write(forms[0]!.name, pieces, formula);
  });

  test("says that a stone without a line needs an update, and shows no price", async () => {
    const stone = keyAddresses(estimateRows(forms[0]!), { row: 0, column: 0 }).get("stone")!;
    await write(forms[0]!.name, stone, "crushed granite");
    expect(value("headWords")).toBe(
      "No price: a bed has a stone, edging, or fabric without a line here. Update the job estimate in the pane.",
    );
    expect((await jobsOfWorkbook())[0]?.amounts.price).toBeUndefined();
    await write(forms[0]!.name, stone, "river rock");
    expect(value("price")).toBeTypeOf("number");
  });

  test("keeps a line that has no bed of its kind anymore, at nothing", async () => {
    const stone = keyAddresses(estimateRows(forms[3]!), { row: 0, column: 0 });
    await write(forms[3]!.name, stone.get("stone")!, "river rock");
    await write(forms[3]!.name, stone.get("stoneSize")!, "1.25");
    expect(value("stoneLine2.label")).toBe("Stone, none");
    expect(value("stoneLine2.cost")).toBe(0);
    expect(value("price")).toBeTypeOf("number");
    await write(forms[3]!.name, stone.get("stone")!, "pea gravel");
    await write(forms[3]!.name, stone.get("stoneSize")!, "3/8");
  });
});

describe("another version of the job", () => {
  const differences = { stone: "crushed granite", borderHeight: "5" };
  const changedForms = forms.map((one) => ({ ...one, typed: { ...one.typed, ...differences } }));
  let sheet: string;

  beforeAll(async () => {
    const following = beds.map((bed) => followingForm(bed, differences));
    const job = {
      name: "Alder Court",
      option: "Granite",
      differs: "Stone: crushed granite; Edging height: 5",
      isChosen: false,
      beds: following,
      kinds: kindsOfBeds(changedForms.map(toPrice)),
    };
    const inserted = await insertPlan((at) => jobSheet(job, at), { kind: "new sheet", name: "Alder Court Granite" });
    if (!inserted.done) throw new Error("a new sheet is free");
    sheet = inserted.sheetName;
  });

  const option = async () => (await jobsOfWorkbook()).find((job) => job.sheet === sheet);

  test("is priced in full, with its own stone and edging", async () => {
    const expected = priceJob(changedForms.map(toPrice));
    const found = await option();
    expect(found).toMatchObject({
      option: "Granite",
      differs: "Stone: crushed granite; Edging height: 5",
      isChosen: false,
    });
    expect(found?.amounts.price).toBeCloseTo(Number(expected.amounts.price), 9);
    expect(found?.beds.map((bed) => bed.sheet)).toEqual(beds.map(() => sheet));
    expect((await bedsOfWorkbook()).filter((bed) => bed.sheet === sheet).map(({ name }) => name)).toEqual(
      forms.map(({ name }) => name),
    );
  });

  test("follows the first version's measurements, and leaves its price alone", async () => {
    const before = (await option())?.amounts.price;
    const first = value("price");
    const length = keyAddresses(estimateRows(forms[1]!), { row: 0, column: 0 }).get("length")!;
    await write(forms[1]!.name, length, "30");
    const longer = changedForms.map((one, index) =>
      index === 1 ? { ...one, typed: { ...one.typed, length: "30" } } : one,
    );
    expect((await option())?.amounts.price).toBeCloseTo(Number(priceJob(longer.map(toPrice)).amounts.price), 9);
    await write(forms[1]!.name, length, `18' 6"`);
    expect((await option())?.amounts.price).toBe(before);
    expect(value("price")).toBe(first);
  });
});

describe("beds that are rows of a list", () => {
  test("get estimates of their own below the job, which follow the rows", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.add("Bed list");
      sheet.getRange("A1:F3").values = [
        ["Bed", "Length, in", "Width, ft", "Depth, in", "Stone", "Waste"],
        ["North side", 240, 4, 2.5, "river rock", 8],
        ["South side", 300, "3' 6\"", 2.5, "pea gravel", 8],
      ];
      await context.sync();
    });
    const found = await readJob();
    const rows = found.beds.filter(({ where }) => where.startsWith("Bed list"));
    expect(rows.map(({ block }) => block.name)).toEqual(["North side", "South side"]);
    // One bed with a block of its own, and two from the list.
    const [walk] = found.beds.filter(({ block }) => block.name === "Walk" && block.sheet === "Walk");
    const inserted = await insertJob("Mixed job", [walk!, ...rows]);
    if (!inserted.done) throw new Error("a new sheet is free");

    const listed = (length: string, width: string, stone: string) =>
      form("", { typed: { length, width, borderHeight: "4.5", stone, waste: "8%" } });
    const priceOf = (...list: BedForm[]) => Number(priceJob(list.map(toPrice)).amounts.price);
    const shown = async () => (await jobsOfWorkbook()).find(({ sheet }) => sheet === inserted.sheetName);
    const south = listed("25", "3.5", "pea gravel");
    expect((await shown())?.amounts.price).toBeCloseTo(priceOf(forms[1]!, listed("20", "4", "river rock"), south), 9);
    expect((await shown())?.beds.map(({ sheet }) => sheet)).toEqual(["Walk", inserted.sheetName, inserted.sheetName]);

    await write("Bed list", "B2", 360);
    expect((await shown())?.amounts.price).toBeCloseTo(priceOf(forms[1]!, listed("30", "4", "river rock"), south), 9);
  });
});

describe("a bed's block that was changed by hand", () => {
  test("gives a job its renamed lines and its own ones", async () => {
    const places = keyAddresses(estimateRows(forms[0]!), { row: 0, column: 0 });
    const at = (key: string, column: string) => places.get(key)!.replace(/^[A-Z]+/, column);
    await write(forms[0]!.name, at("pinLine.quantity", "A"), "Six-inch pins");
    const own = { A: "Drip line", B: 2, C: "rolls", D: 15 };
    for (const [column, content] of Object.entries(own))
      await write(forms[0]!.name, at("spare1.quantity", column), content);

    const found = await readJob();
    const parts = found.beds.filter(({ block: { sheet, name } }) => sheet === name);
    expect(parts.map(({ block }) => block.name)).toEqual(forms.map(({ name }) => name));
    const inserted = await insertJob("Changed by hand", parts);
    if (!inserted.done) throw new Error("a new sheet is free");
    const job = (await jobsOfWorkbook()).find(({ sheet }) => sheet === inserted.sheetName);
    expect(job?.lines.filter(({ isLinked }) => isLinked)).toMatchObject([
      { label: "Drip line (Wall strip)", quantity: 2, unit: "rolls", unitCost: 15 },
    ]);
    const line = { label: "Drip line", unit: "rolls", quantity: 2, unitCost: 15, kind: "material" as const };
    expect(job?.amounts.price).toBeCloseTo(Number(priceJob(forms.map(toPrice), { own: [line] }).amounts.price), 9);
  });
});
