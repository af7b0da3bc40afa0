import { afterEach, beforeEach, expect, test } from "vitest";
import { resultShown, tryOut } from "../../src/pane/jobRows/tryOut";
import { unknownStones } from "../../src/pane/jobRows/unknownStones";
import { exampleStonePrices } from "../../src/quantities/bed/examples";
import { isFailure } from "../../src/review/formula/values";
import { fitList } from "../../src/sheets/jobRows/fit";
import { offeredResults } from "../../src/sheets/jobRows/wanted";
import { ratesSheet } from "../../src/sheets/rates/ratesSheet";
import { type StoneAnswer, stoneNameChanges } from "../../src/sheets/rates/stoneNames";
import { undoChanges, writeChanges } from "../../src/workbook/change/cells";
import { insertPlan } from "../../src/workbook/change/insert";
import { readListSheet, writeRows } from "../../src/workbook/jobRows";
import { readRateCells } from "../../src/workbook/read/rates";
import { blockAddress } from "../blockAddress";
import { callFunction } from "../callFunction";
import type { HeadlessHost } from "../headlessHost";
import { rateAddress } from "../insertRates";
import { fillOf, fitOf, listSheet, officeOf, type Rows } from "../listSheets";
import { createProductHost } from "../productHost";

const ROWS: Rows = [
  ["Job", "Bed", "Length", "Width", 'Dp"', "Stone", "Waste"],
  ["Elm Row 3", "Front", "18-6", "4'6", 2.5, "river rock", 0.08],
  ["Elm Row 3", "Side", 20, 4, 2, "RR 1-1/2", 0.08],
  ["Elm Row 3", "Back", 12, 5, 3, "granite boulders", 0.1],
  ["Elm Row 3", "Gate", 12, 5, 3, "rr 1-1/2", 0.1],
];

let host: HeadlessHost;
beforeEach(async () => {
  host = await createProductHost(officeOf(ROWS));
});
afterEach(() => host.dispose());

async function look() {
  const { sheet, selection } = await readListSheet();
  const fit = fitList(sheet, selection)!;
  const office = await readRateCells();
  const filling = fillOf(fit, { results: offeredResults });
  return { fit, filling, office, tried: tryOut(fit, filling, office?.named ?? new Map(), callFunction) };
}

const withRates = async () => {
  await insertPlan(ratesSheet, { kind: "new sheet", name: "Rates" });
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("List").activate();
    context.workbook.worksheets.getItem("List").getRange("A1").select();
    await context.sync();
  });
};

const remember = async (answers: readonly StoneAnswer[]) => {
  const { named, found } = (await readRateCells())!;
  return writeChanges("names of stone", stoneNameChanges(named, found.rates, answers)!);
};

test.each(["without rates", "with rates"])(
  "what is shown of a row before it is written is what the sheet works out, %s",
  async (which) => {
    if (which === "with rates") await withRates();
    const { fit, filling, tried } = await look();
    await writeRows(fit, filling.changes);
    await host.grid.settled();
    expect(tried.map(({ row }) => row)).toEqual([1, 2, 3, 4]);
    let numbers = 0;
    for (const { row, results } of tried) {
      for (const { column, heading, value } of results) {
        const shown = host.values(
          `${"ABCDEFGHIJKLMNOPQRSTUVWXYZ"[column] ?? `A${"ABCDEFGHIJ"[column - 26]}`}${row + 1}`,
        )[0]![0];
        if (typeof value === "number") {
          numbers += 1;
          expect(shown, `${heading} of row ${row + 1}`).toBeCloseTo(value, 9);
        } else if (isFailure(value)) {
          // The engine behind the stand-in has one error for all that functions refuse.
          expect(shown, `${heading} of row ${row + 1}`).toMatch(/^#/);
        } else expect(shown, `${heading} of row ${row + 1}`).toBe(resultShown(value));
      }
    }
    // Each of four rows has an area, an edge, and more that don't depend on the stone.
    expect(numbers).toBeGreaterThan(20);
  },
);

test("a row without a result says why, and names of stone that aren't known are listed once", async () => {
  await withRates();
  const { fit, filling, office, tried } = await look();
  expect(tried[0]!.problem).toBeUndefined();
  expect(tried[1]!.problem).toBe(
    "stone: “RR 1-1/2” isn't in the list. Did you mean “river rock”? Or type the tons per cubic yard.",
  );
  expect(unknownStones(fit, filling, new Map(), office!.found.rates)).toEqual([
    { name: "RR 1-1/2", rows: [2, 4] },
    { name: "granite boulders", rows: [3] },
  ]);
});

test("a name that was explained once is understood by rows from then on, with the price and weight of its stone", async () => {
  await withRates();
  const written = await remember([
    { name: "RR 1-1/2", is: "river rock" },
    { name: "granite boulders", is: 1.25 },
  ]);
  const { fit, filling, office, tried } = await look();
  expect(unknownStones(fit, filling, new Map(), office!.found.rates)).toEqual([]);
  expect(tried.map(({ problem }) => problem)).toEqual([undefined, undefined, undefined, undefined]);
  const { stones, byField } = office!.found.rates;
  const stone = (name: string) => stones.find((one) => one.name === name);
  // 1.35 tons a cubic yard: river rock in our list.
  expect(stone("RR 1-1/2")).toMatchObject({ stoneCost: stone("river rock")!.stoneCost, tonsPerYard: { text: "1.35" } });
  expect(stone("granite boulders")).toMatchObject({ stoneCost: byField.stoneCost, tonsPerYard: { text: "1.25" } });
  await undoChanges(written);
  const after = (await readRateCells())!.found.rates.stones;
  expect(after.some(({ name }) => name === "RR 1-1/2")).toBe(false);
});

test("a name of stone that the list sells by the cubic yard has its price with that unit, increment, and minimum", async () => {
  await withRates();
  const stoneCells = (name: string, ...[price, unit, step, minimum]: readonly (number | string)[]) => [
    ...[["Rate_stone_kinds", name] as const, ["Rate_stone_prices", price ?? ""] as const],
    ...[["Rate_stone_units", unit ?? ""] as const, ["Rate_stone_steps", step ?? ""] as const],
    ["Rate_stone_minimums", minimum ?? ""] as const,
  ];
  const rows = [stoneCells("cedar mulch", 38.5, "cubic yard", 0.5, 2), stoneCells("cedar fines", "", "bag")];
  const typed = rows.flatMap((cells, row) =>
    cells.map(([name, cell]) => [`Rates!${blockAddress(rateAddress(name), exampleStonePrices.length + row)}`, cell]),
  );
  await host.type(Object.fromEntries(typed));
  await remember([
    { name: "CM", is: "cedar mulch" },
    // A unit of its own has no price of another.
    { name: "cedar fines", is: "cedar mulch" },
  ]);
  const { stones } = (await readRateCells())!.found.rates;
  const [mulch, short, fines] = ["cedar mulch", "CM", "cedar fines"].map((name) =>
    stones.find((one) => one.name === name),
  );
  expect(mulch).toMatchObject({ soldBy: { text: "cubic yard" }, stoneCost: { text: "38.5" } });
  expect({ ...short, tonsPerYard: undefined }).toEqual({ ...mulch, name: "CM", tonsPerYard: undefined });
  expect(fines).toMatchObject({ soldBy: { text: "bag" }, stoneCost: { problem: expect.any(String) } });
});

test("a list of stone without a blank row says so, and nothing is written", async () => {
  await withRates();
  const many = Array.from({ length: 9 }, (_, index) => ({ name: `mix ${index + 1}`, is: 1.3 }));
  await expect(remember(many)).rejects.toThrow();
  expect((await readRateCells())!.found.rates.stones.some(({ name }) => name.startsWith("mix"))).toBe(false);
});

test("a column of stone names is the stone column, whatever it is called", () => {
  const columnsOf = (heading: string, stones: readonly string[]) => {
    const rows = [["Bed", "L", "W", "D", heading], ...stones.map((stone, at) => [`Bed ${at + 1}`, 12, 5, 2, stone])];
    const [, , , depth, last] = fitOf(listSheet(rows)).columns;
    expect(depth).toMatchObject({ role: "depth", unit: "in" });
    return last;
  };
  const stones = ["RR 1-1/2", "pea grvl", "#57 limestone", "mauve mix"];
  expect(columnsOf("Spec", stones)).toMatchObject({ role: "stone", sure: "likely", why: "holds names of stone" });
  expect(columnsOf("Notes", ["call Dale", "river rock", "gate locked", "dog"])?.role).toBeUndefined();
});
