import { afterEach, beforeEach, expect, test } from "vitest";
import type { CellContent } from "../../src/practice/grid/port";
import type { BedForm } from "../../src/quantities/bed/form";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock, estimateRows } from "../../src/sheets/estimate/block";
import { toPlain } from "../../src/sheets/plain/toPlain";
import { readRates } from "../../src/workbook/read/rates";
import { bedsOfEachWay } from "../bedsOfEachWay";
import type { HeadlessHost } from "../headlessHost";
import { insertRates, rateAddress } from "../insertRates";
import { createProductHost } from "../productHost";

/** Beds whose area has ordinary arithmetic, one of each way of measuring. */
const ORDINARY = ["rectangle, plain", "rectangle, rounded", "ring", "widths, to a point", "points", "area from a plan"];
const beds = Object.fromEntries(Object.entries(bedsOfEachWay).filter(([way]) => ORDINARY.includes(way)));
const areaAlone = bedsOfEachWay["area from a plan"]!;

const AT = { row: 3, column: 1 };

let host: HeadlessHost;
beforeEach(async () => {
  host = await createProductHost();
});
afterEach(() => host.dispose());

/** Writes a block and its copy at the same address of two sheets. */
async function copyOf(bed: BedForm) {
  const { grid } = host;
  const plan = estimateBlock(bed, AT);
  const area = (sheetId: string) => ({ sheetId, ...AT, rowCount: plan.rows, columnCount: plan.columns });
  const [live, plain] = [area(grid.sheets.add("Live")), area(grid.sheets.add("Plain"))];
  grid.cells.write(
    live,
    plan.formulas.map((row) => [...row]),
  );
  await grid.settled();
  const read = () => [grid.cells.read(live), grid.cells.read(plain)] as const;
  const [cells] = read();
  const copy = toPlain({
    sheetName: "Live",
    ...AT,
    formulas: cells.map((row) => row.map((cell) => cell.formula ?? cell.value)),
    values: cells.map((row) => row.map((cell) => cell.value)),
    formats: plan.formats,
  });
  grid.cells.write(
    plain,
    copy.plan.formulas.slice(0, plan.rows).map((row) => [...row]),
  );
  await grid.settled();
  return { copy, read };
}

function expectSameResults([live, plain]: readonly [CellContent[][], CellContent[][]]): void {
  live.forEach((row, down) => {
    row.forEach(({ formula, value }, across) => {
      if (formula === undefined) return;
      const other = plain[down]![across]!.value;
      if (typeof value === "number") expect(other, formula).toBeCloseTo(value, 9);
      else expect(other, formula).toBe(value);
    });
  });
}

test.each(Object.entries(beds))(
  "the whole block of a bed measured as %s comes to the same price in ordinary formulas",
  async (way, bed) => {
    const { copy, read } = await copyOf(bed);
    expectSameResults(read());
    const formulas = copy.plan.formulas.flat().join("\n");
    expect(formulas).not.toMatch(/BED\./);
    expect(copy.converted.length).toBeGreaterThan(25);
    // What is laid out in plan stays a value, and is named.
    expect(copy.leftAsValues.every(({ reason }) => /lays the bed out in plan|joins text/.test(reason))).toBe(true);
    expect(copy.leftAsValues.length === 0).toBe(way === "area from a plan");
  },
  30_000,
);

test("the copy follows changes as the block does", async () => {
  const bed = areaAlone;
  const { read } = await copyOf(bed);
  const keys = keyAddresses(estimateRows(bed), AT);
  const before = read()[1]
    .flat()
    .map(({ value }) => value);
  const changes = { waste: 0.15, stone: "Lava-Rock", borderHeight: 5, rollWidth: 3, pieceLap: 2, soil: "clay" };
  for (const [key, value] of Object.entries(changes)) {
    const address = keys.get(key)!;
    await host.type({ [`Live!${address}`]: value, [`Plain!${address}`]: value });
  }
  expectSameResults(read());
  expect(
    read()[1]
      .flat()
      .map(({ value }) => value),
  ).not.toEqual(before);
}, 30_000);

test("the copy of a block that follows the office's rates follows them, too", async () => {
  const sheet = await insertRates();
  const { rates } = (await readRates())!;
  const { copy, read } = await copyOf({ ...areaAlone, typed: { ...areaAlone.typed, stone: "lava rock" }, rates });
  expectSameResults(read());
  expect(copy.plan.formulas.flat().join("\n")).not.toMatch(/BED\./);
  const before = JSON.stringify(read()[1]);
  await host.type({
    [`${sheet}!${rateAddress("Rate_fabric_roll")}`]: 81,
    [`${sheet}!${rateAddress("Rate_roll_width")}`]: 4.5,
  });
  expectSameResults(read());
  expect(JSON.stringify(read()[1])).not.toBe(before);
  await host.type({ [`${sheet}!${rateAddress("Rate_fabric_roll")}`]: "" });
  expectSameResults(read());
  expect(JSON.stringify(read()[1])).toMatch(/rate is blank/);
}, 30_000);
