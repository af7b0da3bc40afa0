import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { rateProblems, ratesSummary } from "../../src/pane/rates/summary";
import { type BedForm, followedRate, textOf, unitOf, withFilled } from "../../src/quantities/bed/form";
import { stoneUnitNames } from "../../src/quantities/bed/rates";
import { must } from "../../src/quantities/must";
import { cellAround, explain } from "../../src/review/explain/explain";
import { reviewAtOnce } from "../../src/review/review";
import { compose, keyAddresses } from "../../src/sheets/compose";
import { estimateRows } from "../../src/sheets/estimate/block";
import { estimateUpdate, formOnSheet, formToEdit } from "../../src/sheets/estimate/openBlock";
import { followingFormula } from "../../src/sheets/estimate/rateFormulas";
import { findBlocks } from "../../src/sheets/estimate/readBlock";
import { ratesSheet } from "../../src/sheets/rates/ratesSheet";
import { areaIn } from "../../src/spreadsheet/areas";
import { insertPlan } from "../../src/workbook/change/insert";
import { readRates } from "../../src/workbook/read/rates";
import { readWorkbook } from "../../src/workbook/read/workbook";
import { blockAddress } from "../blockAddress";
import { callFunction } from "../callFunction";
import type { HeadlessHost } from "../headlessHost";
import { insertRates, rateAddress } from "../insertRates";
import { createProductHost } from "../productHost";
import { ownPrices } from "../properties/review-workbooks/ours";
import { formWithRates, insertBlock, paneEstimate, paneProblems } from "../ratesBench";
import { knowledge } from "../reviewWorkbook";

/*
 * The office's own price, increment, and minimum of a stone, in the unit that its list sells it by: in the pane, in the
 * block, and on the Rates sheet.
 */

let host: HeadlessHost;
let sheet: string;
afterEach(() => host.dispose());

/** Rows of the list that start blank. */
const BLANK = 5;
const PARTS = {
  kind: "Rate_stone_kinds",
  price: "Rate_stone_prices",
  weight: "Rate_stone_weights",
  unit: "Rate_stone_units",
  step: "Rate_stone_steps",
  minimum: "Rate_stone_minimums",
  whose: "Whose_stone_kinds",
} as const;
const cellOf = (part: keyof typeof PARTS, row = BLANK) => `${sheet}!${blockAddress(rateAddress(PARTS[part]), row)}`;

/** Types a stone into a row of the list. */
function list(cells: Partial<Record<keyof typeof PARTS, number | string>>, row = BLANK): Promise<void> {
  const typed = Object.entries(cells).map(([part, cell]) => [cellOf(part as keyof typeof PARTS, row), cell]);
  return host.type(Object.fromEntries(typed));
}

/**
 * A bed of 32 by 10 ft, 2 in deep with 8% of waste: 320 × 2 / 324 × 1.08 = 2.1333 cu yd.
 */
const bedOf = (typed: BedForm["typed"]) =>
  formWithRates({ length: "32", width: "10", cornerRadius: "0", roundedCorners: "0", ...typed });

/** The block of a bed, which has to come to the same price as the pane. */
async function blockOf(form: BedForm) {
  const block = await insertBlock(host, form);
  expect(block.value("price")).toBeCloseTo(paneEstimate(form).price, 9);
  const ordered = () => ["stoneOrder", "stoneLine.unitCost", "stoneLine.cost"].map((key) => block.value(key));
  return { ...block, form, ordered };
}

describe("a list of stone that says what each is sold by", () => {
  beforeEach(async () => {
    host = await createProductHost();
    sheet = await insertRates();
  });

  test("prices mulch by the cubic yard at the office's price, with its half-yard increment and its minimum, live", async () => {
    await list({ kind: "hardwood mulch", price: 38.5, unit: "Cubic-yard", step: 0.5 });
    expect(host.value(cellOf("whose"))).toBe("own");
    const form = await bedOf({ stone: "hardwood mulch" });
    expect([textOf(form, "soldBy"), textOf(form, "stoneCost"), unitOf(form, "stoneCost")]).toEqual([
      ...["cubic yard", "38.5", "per cu yd"],
    ]);
    const block = await blockOf(form);
    // 2.1333 cu yd go up to 2.5, at $38.50: $96.25.
    expect(block.ordered()).toEqual([2.5, 38.5, 96.25]);
    expect(block.value("stoneLine.remark")).toBe("");
    expect([block.value("orderStep.note"), block.value("orderMinimum.note")]).toEqual([
      "from Rates",
      "usual, none in Rates",
    ]);
    // By the whole yard, 3 of them; at least 4 make $160 at $40.
    await list({ step: 1 });
    expect(block.ordered()).toEqual([3, 38.5, 115.5]);
    await list({ minimum: 4, price: 40 });
    expect(block.ordered()).toEqual([4, 40, 160]);
    expect(block.value("price")).toBeCloseTo(paneEstimate(await bedOf({ stone: "hardwood mulch" })).price, 9);
  });

  test("prices stone in bulk bags, and picks that unit with the stone", async () => {
    await list({ kind: "creek gravel", price: 129, unit: "bulk bag", minimum: 4, weight: 1.4 });
    const { rates } = await bedOf({});
    const before: BedForm = { ...(await bedOf({ stoneCost: "66" })), rates: rates! };
    // A price that was typed by the ton is forgotten with the ton.
    const picked = { ...before, typed: withFilled(before, { stone: "creek gravel" }) };
    expect([textOf(picked, "soldBy"), textOf(picked, "stoneCost")]).toEqual(["bulk bag", "129"]);
    const block = await blockOf(picked);
    // 2.1333 cu yd in bags of 1 cu yd are 3 bags, and the yard sells 4 or more: 4 × $129 = $516.
    expect(block.ordered()).toEqual([4, 129, 516]);
    expect(ratesSummary((await readRates())!, picked.typed)).toMatch(/^Prices from Rates/);
    // Another unit in the list has another price, so the block has none.
    await list({ unit: "bag" });
    expect(block.value("stoneLine.unitCost")).toBe("no rate");
    expect(block.value("stoneLine.remark")).toBe("not sold by the bulk bag in Rates");
  });

  test("has no price by the ton for a stone by the cubic yard: the price of any other stone counts, marked", async () => {
    await list({ kind: "creek gravel", price: 52, unit: "cubic yard", step: 3, minimum: 9, weight: 1.4 });
    const block = await blockOf(await bedOf({ stone: "creek gravel", soldBy: "ton" }));
    // 2.1333 cu yd × 1.4 = 2.9867 tons go up to 3, at the $62 of any other stone: $186.
    expect(block.ordered()).toEqual([3, 62, 186]);
    expect(block.value("stoneLine.remark")).toBe("sample price, any other stone");
    // By the bag, 2.1333 × 27 / 0.5 = 115.2 bags go up to 116, at the sample of $6.50: $754.
    const byTheBag = await bedOf({ stone: "creek gravel", soldBy: "bag" });
    const bags = await blockOf(byTheBag);
    expect(bags.ordered()).toEqual([116, 6.5, 754]);
    expect(bags.value("stoneLine.remark")).toBe("sample price");
    expect(followedRate(byTheBag, "stoneCost")).toBeUndefined();
    expect(ratesSummary((await readRates())!, byTheBag.typed)).toBe("Stone: a sample, not from Rates. Type your own.");
    // Once the list sells it by the ton, it has the price there: 9 tons or more, at $52.
    await list({ unit: "" });
    expect(block.ordered()).toEqual([9, 52, 468]);
    expect(block.value("stoneLine.remark")).toBe("");
  });

  test("keeps a price by the cubic yard marked as a sample as long as it is one", async () => {
    await list({ unit: "cubic yard" }, 0);
    const form = await bedOf({ stone: "river rock" });
    expect([textOf(form, "soldBy"), followedRate(form, "stoneCost")]).toEqual([
      "cubic yard",
      { text: "62", isExample: true },
    ]);
    expect((await blockOf(form)).value("stoneLine.remark")).toBe("sample price");
  });

  test.each([
    [
      "unit",
      "yd",
      "rate has a wrong unit: use ton, cubic yard, bag, or bulk bag",
      /The unit of creek gravel.*isn't in/,
    ],
    ["step", 0, "Order increment: rate is 0 or less", /Order increment of creek gravel/],
    ["minimum", "ask", "Minimum stone order: rate is text, not a number", /Minimum stone order of creek gravel/],
  ] as const)("says of a wrong %s what to type, and a bed has no price", async (part, wrong, said, problem) => {
    await list({ kind: "creek gravel", price: 52, weight: 1.4 });
    const byTon = await blockOf(await bedOf({ stone: "creek gravel" }));
    await list({ [part]: wrong });
    expect(host.value(cellOf("whose"))).toBe(said);
    expect(rateProblems((await readRates())!)).toEqual([expect.stringMatching(problem)]);
    expect(byTon.value("headPrice")).toBe("#VALUE!");
    expect(paneProblems(await bedOf({ stone: "creek gravel" }))).toMatchObject([{ unfinished: false }]);
    if (part === "unit") expect(byTon.value("stoneLine.remark")).toBe(said);
  });

  test("that has lost one of its columns gives no price", async () => {
    await list({ kind: "creek gravel", price: 52, unit: "cubic yard", weight: 1.4 });
    const block = await blockOf(await bedOf({ stone: "creek gravel" }));
    await Excel.run(async (context) => {
      context.workbook.names.getItem(PARTS.unit).delete();
      await context.sync();
    });
    const form = await bedOf({ stone: "creek gravel" });
    expect(form.rates!.stonesProblem).toContain("Rate_stone_units");
    expect(paneProblems(form)).toMatchObject([{ place: "stoneCost", unfinished: false }]);
    const again = await insertBlock(host, { ...form, typed: { ...form.typed, soldBy: "ton" } });
    expect([again.value("stoneLine.unitCost"), again.value("stoneLine.remark")]).toEqual([
      ...["no rate", "list of stone is missing"],
    ]);
    expect(block.value("headPrice")).toBe("#VALUE!");
  });

  test("is nothing that the check finds wrong, and Explain says which price it took", async () => {
    await list({ kind: "cedar mulch", price: 38.5, unit: "cubic yard", step: 0.5, minimum: 3, weight: 0.3 });
    await list({ kind: "creek gravel", price: 129, unit: "bulk bag", weight: 1.4 }, BLANK + 1);
    const block = await blockOf(await bedOf({ ...ownPrices, stoneCost: undefined!, stone: "cedar mulch" }));
    const { facts } = await readWorkbook();
    const { findings } = reviewAtOnce(facts, knowledge, { call: callFunction });
    // Samples elsewhere on the Rates sheet are none of this.
    const wrong = findings.filter(({ rule }) => rule !== "example-rate");
    expect(wrong.map(({ rule, where }) => `${rule} ${where}`)).toEqual([]);
    for (const [key, shown] of [
      ["stoneLine.unitCost", "38.5"],
      ["orderStep", "0.5"],
      ["orderMinimum", "3"],
    ] as const) {
      const { row, column } = must(
        areaIn(must(keyAddresses(estimateRows(block.form), { row: 0, column: 0 }).get(key))),
      );
      const around = cellAround(facts, { sheet: "Bed", row, column }, knowledge, callFunction);
      expect(explain(String(block.formula(key)), around)?.result).toMatch(new RegExp(`^${shown}0?$`));
    }
  });

  test("leaves the unit of a bed that is there as it is, whatever the list says by now", async () => {
    const byTon = await bedOf({ stone: "creek gravel", soldBy: "ton" });
    await list({ kind: "creek gravel", price: 52, unit: "cubic yard", weight: 1.4 });
    const { rates } = await bedOf({});
    const { typed } = formToEdit(byTon, rates);
    expect(textOf({ ...byTon, typed, rates: rates! }, "soldBy")).toBe("ton");
  });

  test("updates a block from before it had units, whose formula would take any price for one per ton", async () => {
    const { rates, ...bare } = await bedOf({ stone: "river rock" });
    const form = { ...bare, rates: { ...rates!, lists: {} } };
    const before = estimateRows({ ...form, rates: { ...form.rates, stonesHaveUnits: false } });
    const plan = compose("estimate", before, [], { row: 0, column: 0 });
    const values = plan.formulas.map((cells) => cells.map((cell) => String(cell).replace(/^'/, "")));
    const there = {
      ...{ sheetId: "1", sheetName: "Bed", contents: plan.formulas, values },
      block: must(findBlocks(values, { row: 0, column: 0 }, plan.formulas)[0]),
    };
    const was = formOnSheet(there, form.rates);
    expect(was.rates?.stonesHaveUnits).toBe(false);
    const { byHand, changes } = estimateUpdate(there, was, { ...was, rates: form.rates });
    expect(byHand).toEqual([]);
    expect(changes.map(({ label }) => label)).toEqual([
      ...["Stone, unit cost", "Stone, remark", "Order increment", "Order increment, note"],
      ...["Minimum stone order", "Minimum stone order, note"],
    ]);
  });
});

describe("a Rates sheet of before, whose list of stone is by the ton,", () => {
  beforeEach(async () => {
    host = await createProductHost();
    const older = (names: ReturnType<typeof ratesSheet>["names"]) =>
      names!.filter(({ name }) => !(stoneUnitNames as readonly string[]).includes(name));
    const made = await insertPlan(
      (at) => {
        const plan = ratesSheet(at);
        return { ...plan, names: older(plan.names) };
      },
      { kind: "new sheet", name: "Rates" },
    );
    if (!made.done) throw new Error("a new sheet is free");
    sheet = made.sheetName;
  });

  test("goes on as it did", async () => {
    await list({ kind: "hardwood mulch", price: 90, unit: "cubic yard", step: 3, minimum: 9, weight: 0.3 });
    const byTon = await bedOf({ stone: "hardwood mulch", soldBy: "ton" });
    expect(byTon.rates!.stonesHaveUnits).toBeUndefined();
    const block = await blockOf(byTon);
    // 2.1333 cu yd × 0.3 = 0.64 tons: the minimum is 1 ton, at $90.
    expect(block.ordered()).toEqual([1, 90, 90]);
    const formula = followingFormula({ key: "stoneCost" }).replace(/\{stone\}.*/, "");
    expect(String(block.formula("stoneLine.unitCost")).startsWith(formula)).toBe(true);
    expect(String(block.formula("stoneLine.unitCost"))).not.toContain("Rate_stone_units");
    const mulch = await bedOf({ stone: "hardwood mulch" });
    expect([textOf(mulch, "soldBy"), textOf(mulch, "stoneCost")]).toEqual(["cubic yard", "84"]);
    expect((await blockOf(mulch)).value("stoneLine.remark")).toBe("sample price");
  });
});
