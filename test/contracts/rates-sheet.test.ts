import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { missingRates } from "../../src/pane/rates/missing";
import { rateProblems } from "../../src/pane/rates/summary";
import { fields } from "../../src/quantities/bed/fields";
import { textOf } from "../../src/quantities/bed/form";
import { listSamples } from "../../src/quantities/bed/listSamples";
import { listKeys, listOf } from "../../src/quantities/bed/officeLists";
import { isPriced, laterRates, rateKeys, rateLabel } from "../../src/quantities/bed/rates";
import { additions } from "../../src/sheets/rates/additions";
import { listHeadings } from "../../src/sheets/rates/listRows";
import { allRates, ratesSheet, type WantedRates } from "../../src/sheets/rates/ratesSheet";
import { STONE_HEADING } from "../../src/sheets/rates/stoneRows";
import { insertPlan } from "../../src/workbook/change/insert";
import type { PlaceOnSheet } from "../../src/workbook/change/place";
import { undoLastInsert } from "../../src/workbook/change/undo";
import { readRates } from "../../src/workbook/read/rates";
import { belowUsed } from "../../src/workbook/sheets";
import type { HeadlessHost } from "../headlessHost";
import { insertRates, rateAddress } from "../insertRates";
import { createProductHost } from "../productHost";
import { formWithRates, typeRates } from "../ratesBench";
import { difference, snapshotOf } from "./faults/snapshot";

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

/** Rates sheets of before: what each has, and what it lacks of a sheet of today. */
const ALL_KEYS = rateKeys.filter((key) => !laterRates.includes(key));
const olderSheets: readonly [title: string, wanted: WantedRates][] = [
  ["no lists, and no sizes that came later", { keys: ALL_KEYS, stones: true, lists: [] }],
  ["no lists", { keys: rateKeys, stones: true, lists: [] }],
  ["edging alone", { keys: rateKeys, stones: true, lists: ["edging"] }],
  ["all lists but crews", { keys: rateKeys, stones: true, lists: listKeys.filter((key) => key !== "crew") }],
  ["all lists, and no stone", { keys: rateKeys, stones: false, lists: listKeys }],
  ["two rates less", { ...allRates, keys: rateKeys.filter((key) => key !== "dumpFee" && key !== "salesTax") }],
];

/** What is written in the workbook; what it remembers and what is selected aside. */
function written() {
  const { sheets, names } = snapshotOf(host);
  return { sheets, names };
}

describe.each(olderSheets)("a Rates sheet of before with %s", (_, older) => {
  beforeEach(async () => {
    host = await createProductHost();
    const inserted = await insertPlan((at) => ratesSheet(at, older), { kind: "new sheet", name: "Rates" });
    expect(inserted.done).toBe(true);
  });
  afterEach(() => host.dispose());

  test("is brought up to the form of a new one as previewed, below everything there, and back by undo", async () => {
    const before = written();
    const was = (await readRates())!;
    const wanted = missingRates(was);
    expect([...wanted.lists, ...older.lists].sort()).toEqual([...listKeys].sort());
    expect([...wanted.keys, ...older.keys].sort()).toEqual([...rateKeys].sort());
    expect(wanted.stones).toBe(!older.stones);

    const { sheetId, at } = await belowUsed("Rates");
    const preview = additions(wanted, at);
    expect(preview.parts.map(({ label }) => label)).toEqual([
      ...(wanted.stones ? [STONE_HEADING] : []),
      ...wanted.lists.map((key) => listHeadings[key]),
      ...wanted.keys.map(rateLabel),
    ]);
    const place: PlaceOnSheet = { kind: "cell", sheetId, at };
    const inserted = await insertPlan((anchor) => ratesSheet(anchor, wanted), place);
    if (!inserted.done) throw new Error("The cells below are free.");
    expect(inserted.address).toBe(preview.address);
    for (const { label, address, starts } of preview.parts) {
      const [first, last] = address.split(":").map((cell) => Number(cell.replace(/\D/g, ""))) as [number, number];
      expect(host.value(`Rates!A${first}`), address).toBe(label);
      const names = Array.from({ length: last - first }, (_, row) => host.value(`Rates!A${first + 1 + row}`));
      if (last > first) expect(names.filter((name) => name !== "")).toEqual(starts);
    }
    const lastRow = (cells = "") => Number(cells.replace(/.*\D/, ""));
    for (const key of wanted.lists) {
      const part = preview.parts.find(({ label }) => label === listHeadings[key]);
      const named = host.grid.names.list().find(({ name }) => name === listOf(key).names);
      expect(lastRow(part?.address), part?.label).toBe(lastRow(named?.formula));
    }

    const now = (await readRates())!;
    expect(missingRates(now)).toMatchObject({ keys: [], stones: false, lists: [] });
    expect(rateProblems(now)).toEqual([]);
    for (const key of older.keys) expect(now.rates.byField[key]).toEqual(was.rates.byField[key]);
    for (const key of listKeys) {
      const { names } = listOf(key);
      expect(
        now.rates.lists![key]!.rows.map(({ name, isSample }) => [name, isSample]),
        names,
      ).toEqual(listSamples[key].map(({ name }) => [name, true]));
    }
    for (const key of wanted.keys) expect(now.rates.byField[key]).toMatchObject({ isExample: isPriced(key) });

    await undoLastInsert(inserted.id);
    expect(difference(before, written())).toBe("");
  });

  test("gets nothing where something was typed into those cells since the preview", async () => {
    const { sheetId, at } = await belowUsed("Rates");
    const wanted = missingRates((await readRates())!);
    await host.type({ [`Rates!B${at.row + 2}`]: "ours" });
    const before = written();
    const inserted = await insertPlan((anchor) => ratesSheet(anchor, wanted), { kind: "cell", sheetId, at });
    expect(inserted.done).toBe(false);
    expect(difference(before, written())).toBe("");
  });
});
