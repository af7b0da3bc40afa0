import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { estimateBed } from "../../src/quantities/bed/estimate";
import { type BedForm, blankForm, textOf, withFilled } from "../../src/quantities/bed/form";
import { lineCalled } from "../../src/quantities/bed/lines";
import { readForm } from "../../src/quantities/bed/read";
import { bedNeedsOf } from "../../src/quantities/job/bedNeedsOf";
import { crewPlan } from "../../src/quantities/job/crewPlan";
import { inOneJob } from "../../src/quantities/job/inOneJob";
import { orderJob } from "../../src/quantities/job/orderJob";
import { kindsOfBeds, priceJob } from "../../src/quantities/job/priceJob";
import { must } from "../../src/quantities/must";
import { SOLD_BY } from "../../src/quantities/soldBy";
import { orderUp } from "../../src/quantities/stoneAmounts";
import { cellAround, explain } from "../../src/review/explain/explain";
import { reviewAtOnce } from "../../src/review/review";
import { compose, keyAddresses } from "../../src/sheets/compose";
import { estimateBlock, estimateRows } from "../../src/sheets/estimate/block";
import { estimateUpdate } from "../../src/sheets/estimate/openBlock";
import { findBlocks } from "../../src/sheets/estimate/readBlock";
import { jobBlock, jobRows } from "../../src/sheets/job/jobBlock";
import { findSheetBeds } from "../../src/sheets/job/sheetBed";
import { crewSheet } from "../../src/sheets/papers/crewSheet";
import { orderSheet } from "../../src/sheets/papers/orderSheet";
import { areaIn, cellAddress } from "../../src/spreadsheet/areas";
import { insertPlan } from "../../src/workbook/change/insert";
import { readWorkbook } from "../../src/workbook/read/workbook";
import { callFunction } from "../callFunction";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { ownPrices } from "../properties/review-workbooks/ours";
import { knowledge } from "../reviewWorkbook";

let host: HeadlessHost;
beforeAll(async () => {
  host = await createProductHost();
});
afterAll(() => host.dispose());

const bedOf = (typed: BedForm["typed"]): BedForm => ({
  ...blankForm(),
  name: "Front walk",
  typed: { length: "30", width: "10", ...typed },
});

/** A bed's block on a new sheet, and what its cells show, by their keys. */
async function inserted(form: BedForm) {
  const made = await insertPlan((at) => estimateBlock(form, at), { kind: "new sheet", name: "Bed" });
  if (!made.done) throw new Error("a new sheet is free");
  const keys = keyAddresses(estimateRows(form), { row: 0, column: 0 });
  return {
    keys,
    sheetName: made.sheetName,
    shown: (key: string) => host.value(`'${made.sheetName}'!${keys.get(key)}`),
  };
}

describe.each(SOLD_BY)("stone by the $name", ({ name, unit, asks, isCounted }) => {
  const form = bedOf({ soldBy: name });

  test("is worked out in the block as in the pane, by weight and by volume", async () => {
    const { amounts, lines } = estimateBed(readForm(form).bed!);
    const { keys, shown } = await inserted(form);
    for (const key of ["stoneYards", "stoneTons", "stoneOrder", "orderTons", "orderYards", "deliveries"] as const)
      expect(shown(key), key).toBeCloseTo(amounts[key], 9);
    const line = lines.find(({ key }) => key === "stoneLine")!;
    expect(shown("headTons")).toBeCloseTo(line.amount, 9);
    expect(shown("stoneLine.cost")).toBeCloseTo(line.costSum, 9);
    expect([line.unit, lineCalled("Stone", unit)?.key]).toEqual([unit, "stoneLine"]);
    expect(keys.has("bagPounds")).toBe(isCounted === true);
    if (isCounted) expect(shown("bagPounds")).toBeCloseTo(amounts.bagPounds, 9);
    expect(["bagSize", "bulkBagSize", "bulkBagLoad"].filter((key) => keys.has(key))).toEqual(asks);
    expect(shown("stoneLine.remark")).toBe("sample price");
  });
});

describe.each(SOLD_BY)("two beds of stone by the $name, and one by the ton,", ({ name, unit, one, inKind }) => {
  const forms = [
    { ...bedOf({ soldBy: name, stone: "gravel", length: "20", width: "6" }), name: "Walk" },
    { ...bedOf({ soldBy: name, stone: "gravel", length: "20", width: "4" }), name: "Wall" },
    { ...bedOf({ stone: "gravel", length: "10", width: "4" }), name: "Tree" },
  ];
  const toPrice = forms.map((form) => ({ name: form.name, bed: readForm(form).bed! }));
  const needs = toPrice.map((made) => bedNeedsOf(made.bed, estimateBed(made.bed), made));
  const order = orderJob(inOneJob(needs));
  const together = order.lines.filter(({ key }) => key.startsWith("stone|"));

  test("are ordered together in that unit, with tons and cubic yards", () => {
    const ours = together.find(({ orderUnit }) => orderUnit === unit)!;
    expect(together.map(({ orderUnit }) => orderUnit)).toEqual(inKind === "" ? ["tons"] : ["tons", unit]);
    const shared = ours.whereUsed.map(({ bed }) => bed);
    expect(shared).toEqual(inKind === "" ? ["Walk", "Wall", "Tree"] : ["Walk", "Wall"]);
    const estimates = toPrice.map(({ bed }) => estimateBed(bed)).slice(0, shared.length);
    const each = estimates[0]!.amounts.orderTons / estimates[0]!.amounts.stoneOrder;
    const needed = estimates.reduce((sum, { amounts }) => sum + amounts.stoneTons, 0) / each;
    expect(ours.needed).toBeCloseTo(needed, 9);
    const { orderStep, orderMinimum } = toPrice[0]!.bed.numbers;
    expect(ours.order).toBe(orderUp(needed, orderStep, orderMinimum));
    expect(ours.weightTons).toBeCloseTo(ours.order * each, 9);
    expect(ours.volume!.yards).toBeCloseTo((ours.order * each) / 1.3, 9);
    expect(ours.volume!.tonsPerYard).toEqual([1.3]);
  });

  test("are printed so on the order and the crew sheet", () => {
    const at = { row: 0, column: 0 };
    const head = { office: "", job: "Elm Street", place: "", date: "", wantedBy: "" };
    const rows = orderSheet(order, head, "letter", at).formulas.map((cells) =>
      cells.map((cell) => (typeof cell === "string" ? cell.replace(/^'/, "") : cell)),
    );
    const ours = together.find(({ orderUnit }) => orderUnit === unit)!;
    const line = rows.find(
      ([item, spec, , sold]) => item === "gravel" && spec === ours.specification && sold === unit,
    )!;
    expect(line.slice(2, 6)).toEqual([ours.order, unit, ours.needed, unit]);
    const weights = rows.findIndex(([item]) => item === "Weights");
    expect(rows.slice(weights).find(([, spec]) => spec === ours.specification)).toEqual([
      ...["gravel", ours.specification, ours.weightTons, "tons", ours.volume!.yards, "cu yd", "", "at 1.3 tons/cu yd"],
    ]);
    const plan = crewPlan(needs, order, { people: 2, dayHours: 8 });
    const tons = needs.reduce((sum, { stone }) => sum + stone!.tons, 0);
    expect(plan.amounts.stoneTons).toBeCloseTo(tons, 9);
    const crew = crewSheet(
      plan,
      order,
      { job: "", place: "", start: "", people: 2, drawings: [], measures: [] },
      "letter",
      at,
    );
    const printed = JSON.stringify(crew.formulas);
    expect(printed).toContain(`Delivery: gravel, ${ours.specification}`);
    if (inKind !== "") expect(printed).toContain(`${ours.order} ${ours.order === 1 ? one : unit} ordered`);
  });

  test("are priced in the job's block as in the pane and as ordered", async () => {
    for (const form of forms) await insertPlan((at) => estimateBlock(form, at), { kind: "new sheet", name: form.name });
    const { facts } = await readWorkbook();
    const sheets = facts.sheets.flatMap(({ name: sheet, used }) => (used ? findSheetBeds(sheet, used) : []));
    const beds = forms.map(({ name: bed }) => sheets.findLast((made) => made.name === bed)!);
    const job = { name: "Elm", option: "", differs: "", isChosen: true, beds, kinds: kindsOfBeds(toPrice) };
    const made = await insertPlan((at) => jobBlock(job, at), { kind: "new sheet", name: "Job" });
    if (!made.done) throw new Error("a new sheet is free");
    const keys = keyAddresses(jobRows(job), { row: 0, column: 0 });
    const shown = (key: string) => host.value(`'${made.sheetName}'!${keys.get(key)}`);
    const { lines, amounts } = priceJob(toPrice);
    for (const { key, label, unit: counts, quantity, cost } of lines.filter((line) => line.key !== "setUp")) {
      expect(shown(`${key}.label`)).toBe(label);
      expect(shown(`${key}.quantity`), label).toBeCloseTo(quantity, 9);
      expect(shown(`${key}.cost`), label).toBeCloseTo(cost, 9);
      if (key!.startsWith("stoneLine")) expect(together.map(({ orderUnit }) => orderUnit)).toContain(counts);
    }
    expect(shown("price")).toBeCloseTo(Number(amounts.price), 9);
    const ofStone = lines.filter(({ key }) => key?.startsWith("stoneLine"));
    for (const line of together) {
      const mine = ofStone.find(({ label }) => label === `Stone, ${line.item}, ${line.specification}`)!;
      expect(mine.quantity, line.specification).toBeCloseTo(line.order, 9);
    }
    ofStone.forEach((_, index) => {
      expect(together.map(({ weightTons }) => weightTons!.toFixed(6))).toContain(
        Number(shown(`stone${index + 1}.tons`)).toFixed(6),
      );
    });
    // Another unit typed in a bed's cell has no line yet, so the job shows no price until it's updated.
    const [walk] = beds;
    await host.type({
      [`'${walk!.sheet}'!${cellAddress(walk!.cells.get("soldBy")!)}`]: name === "bag" ? "bulk bag" : "bag",
    });
    expect(shown("newKinds")).toBe(1);
  });
});

test.each(SOLD_BY)(
  "the check has nothing to say of a block of stone by the $name, and Explain follows its order",
  async (soldBy) => {
    const { name, unit, usual } = soldBy;
    const form = bedOf({ ...ownPrices, soldBy: name, ...(usual.stoneCost && { stoneCost: "91" }) });
    const { keys, shown, sheetName } = await inserted(form);
    const { facts } = await readWorkbook();
    const sheets = facts.sheets.filter((sheet) => sheet.name === sheetName);
    const { findings } = reviewAtOnce({ ...facts, sheets }, knowledge, { call: callFunction });
    expect(findings.map(({ rule, where }) => `${rule} ${where}`)).toEqual([]);
    const place = must(areaIn(must(keys.get("stoneOrder"))));
    const around = cellAround(
      facts,
      { sheet: sheetName, row: place.row, column: place.column },
      knowledge,
      callFunction,
    );
    const formula = String(host.formula(`'${sheetName}'!${keys.get("stoneOrder")}`));
    expect(JSON.stringify(explain(formula, around))).toContain(String(shown("stoneOrder")));
    expect(host.value(`'${sheetName}'!C3`)).toBe(unit);
  },
);

test("a block of before means tons, stays as it is, and gets rows for another unit", () => {
  const was = bedOf({ stone: "gravel" });
  const later = ["soldBy", "orderTons", "orderYards"];
  const before = estimateRows(was).filter(({ cells }) => !later.includes(cells[1]?.key ?? ""));
  const plan = compose("estimate", before, [], { row: 0, column: 0 });
  const block = { area: { row: 0, column: 0, rows: plan.rows, columns: 9 }, form: was };
  const there = { sheetId: "1", sheetName: "Bed", block, contents: plan.formulas, values: plan.formulas };
  const same = estimateUpdate(there, was, was);
  expect([same.changes, same.byHand, same.operations]).toEqual([[], [], []]);
  const update = estimateUpdate(there, was, bedOf({ stone: "gravel", soldBy: "bag" }));
  expect(update.byHand).toEqual([]);
  const labels = update.inserted.flatMap(({ rows }) => rows.map(({ cells }) => cells[0]?.content));
  expect(labels).toEqual(["Stone sold by", "Bag size", "Bag weight", "Order weight", "Order volume"]);
  // One that lists mulch was made when everything was sold by the ton.
  const [found] = findBlocks(
    plan.formulas.map((cells) => cells.map((cell) => (cell === "'gravel" ? "wood chips" : cell))),
    { row: 0, column: 0 },
  );
  expect([textOf(found!.form, "stone"), textOf(found!.form, "soldBy")]).toEqual(["wood chips", "ton"]);
});

test("another unit in the pane forgets the step, the minimum, and the price of the one before", () => {
  const form = bedOf({ orderStep: "0.25", stoneCost: "66", waste: "5%" });
  expect(withFilled(form, { soldBy: "bag" })).toEqual({ length: "30", width: "10", waste: "5%", soldBy: "bag" });
  expect(withFilled(form, { stone: "hardwood mulch", stoneCost: "40" })).toEqual({
    ...{ length: "30", width: "10", waste: "5%", stone: "hardwood mulch", stoneCost: "40" },
  });
  expect(withFilled(form, { stone: "gravel", waste: undefined })).toEqual({
    ...{ length: "30", width: "10", orderStep: "0.25", stoneCost: "66", stone: "gravel" },
  });
});

test("warns of a bag too heavy to lift, and of a bulk bag over its rated load", async () => {
  const said = async (typed: BedForm["typed"]) => (await inserted(bedOf(typed))).shown("bagPounds.note");
  expect(await said({ soldBy: "bag", stone: "1.3" })).toBe("");
  // 1.425 tons a cubic yard: 52.8 lb.
  expect(await said({ soldBy: "bag", stone: "1.425" })).toBe("Over 51 lb: lift with a partner.");
  expect(await said({ soldBy: "bulk bag", stone: "gravel" })).toBe("");
  expect(await said({ soldBy: "bulk bag", stone: "gravel", bulkBagLoad: "2000" })).toMatch(
    /^Over the bag's rated load/,
  );
});
