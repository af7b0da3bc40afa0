import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { missingRates } from "../../src/pane/rates/missing";
import { fields } from "../../src/quantities/bed/fields";
import { textOf } from "../../src/quantities/bed/form";
import { rateKeys } from "../../src/quantities/bed/rates";
import { ratesSheet } from "../../src/sheets/rates/ratesSheet";
import { insertPlan } from "../../src/workbook/change/insert";
import { readRates } from "../../src/workbook/read/rates";
import { belowUsed } from "../../src/workbook/sheets";
import type { HeadlessHost } from "../headlessHost";
import { insertRates, rateAddress } from "../insertRates";
import { createProductHost } from "../productHost";
import { formWithRates, typeRates } from "../ratesBench";

let host: HeadlessHost;
let sheet: string;

describe("the sheet of rates", () => {
  beforeEach(async () => {
    host = await createProductHost();
    sheet = await insertRates();
  });
  afterEach(() => host.dispose());

  test("starts with the fields' own values, its prices marked as examples", async () => {
    const found = (await readRates())!;
    expect(found.sheets).toEqual(["Rates"]);
    const form = await formWithRates();
    for (const key of rateKeys) {
      expect(found.rates.byField[key].problem, key).toBeUndefined();
      expect(textOf(form, key), key).toBe(fields[key].initial);
    }
    expect(host.value(`Rates!${rateAddress("Whose_fabric_roll")}`)).toBe("sample");
    expect(host.value(`Rates!${rateAddress("Whose_stone_kinds")}`)).toBe("sample");
    expect(found.rates.byField.rollCost).toMatchObject({ isExample: true });
    // A size is no price; no one is asked to prove that theirs is their own.
    expect(found.rates.byField.rollWidth).toMatchObject({ isExample: false });
  });

  test("takes what the office types for its own, also the very price it started with", async () => {
    await typeRates(host, sheet, { Rate_fabric_roll: 71, Whose_border_piece: "own" });
    const { byField } = (await readRates())!.rates;
    expect(byField.rollCost).toEqual({ text: "71", isExample: false });
    expect(byField.pieceCost).toEqual({ text: "24", isExample: false });
  });

  test("is read in two syncs, wherever its cells stand and whatever it is called", async () => {
    await typeRates(host, sheet, { Rate_fabric_roll: 71 });
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Rates").name = "Dale's prices";
      await context.sync();
    });
    const before = host.syncCount;
    const found = await readRates();
    expect(host.syncCount - before).toBe(2);
    expect(found?.sheets).toEqual(["Dale's prices"]);
    expect(found?.rates.byField.rollCost).toMatchObject({ text: "71" });
  });

  test("of an earlier make takes the rates that it has no names for below, and no second of any", async () => {
    await Excel.run(async (context) => {
      for (const name of ["Rate_dump_fee", "Whose_dump_fee", "Rate_sales_tax"])
        context.workbook.names.getItem(name).delete();
      await context.sync();
    });
    const found = (await readRates())!;
    expect(missingRates(found)).toMatchObject({ keys: ["dumpFee", "salesTax"], stones: false });
    const { sheetId, at } = await belowUsed("Rates");
    await insertPlan((anchor) => ratesSheet(anchor, missingRates(found)), { kind: "cell", sheetId, at });
    const { rates } = (await readRates())!;
    expect([rates.byField.dumpFee, rates.byField.salesTax]).toEqual([
      { text: "30", isExample: true },
      { text: "0%", isExample: false },
    ]);
    expect(missingRates((await readRates())!)).toMatchObject({ keys: [], stones: false });
  });

  test("says on itself what is wrong with a cell", async () => {
    await typeRates(host, sheet, {
      Rate_fabric_roll: "ask Dale",
      Rate_waste: 8,
      Rate_roll_width: "six",
      Rate_pins_per_box: 2.5,
    });
    const said = (name: string) => host.value(`Rates!D${rateAddress(name).replace(/\D/g, "")}`);
    expect(said("Rate_fabric_roll")).toBe("rate is text, not a number");
    expect(said("Rate_waste")).toBe("rate is not 0% to under 100%");
    expect(said("Rate_roll_width")).toBe("rate isn't a length");
    expect(said("Rate_pins_per_box")).toBe("rate isn't a whole number over 0");
  });
});

test("a workbook without rates has none, which costs one sync to know", async () => {
  host = await createProductHost();
  const before = host.syncCount;
  expect(await readRates()).toBeUndefined();
  expect(host.syncCount - before).toBe(1);
  host.dispose();
});
