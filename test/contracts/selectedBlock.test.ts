import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { insertPlan } from "../../src/workbook/change/insert";
import { redrawSelectedBlock } from "../../src/workbook/drawing/drawing";
import { readSelected } from "../../src/workbook/read/selectedBlock";
import { watchSelection } from "../../src/workbook/read/selection";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { ONE_PIXEL } from "../syncs/workbooks";

let host: HeadlessHost;
beforeEach(async () => {
  host = await createProductHost();
});
afterEach(() => {
  vi.restoreAllMocks();
  host.dispose();
});

const bed: BedForm = { ...blankForm(), name: "Front walk", typed: { length: "20", width: "5" } };
const draw = async () => ({ png: ONE_PIXEL, widthPoints: 300, heightPoints: 200, altText: "A bed in plan" });

async function onSheet<T>(work: (sheet: Excel.Worksheet) => T): Promise<T> {
  return Excel.run(async (context) => {
    const done = work(context.workbook.worksheets.getActiveWorksheet());
    await context.sync();
    return done;
  });
}

const select = (address: string) => onSheet((sheet) => sheet.getRange(address).select());
const insert = (form = bed) => insertPlan((at) => estimateBlock(form, at), { kind: "selection" });

/** How many cells are read off the grid while something is done. */
async function cellsRead(work: () => Promise<unknown>): Promise<number> {
  const read = vi.spyOn(host.grid.cells, "read");
  await work();
  return read.mock.calls.reduce((sum, [{ rowCount, columnCount }]) => sum + rowCount * columnCount, 0);
}

test("what is selected on a large sheet is told by two requests that read only what stands around the cell", async () => {
  await onSheet((sheet) => {
    sheet.getRange("A1:AZ3000").values = Array.from({ length: 3000 }, (_, row) => Array<number>(52).fill(row));
    sheet.getRange("A3005").select();
  });
  await insert();
  await select("AB1500");
  const before = host.syncCount;
  expect(await cellsRead(readSelected)).toBeLessThan(12_000);
  expect(host.syncCount - before).toBe(2);
  expect(await readSelected()).toEqual({ address: "Sheet1!AB1500", block: undefined });
  await select("I3010");
  expect(await readSelected()).toMatchObject({ block: { name: "Front walk", drawing: "none" } });
}, 60_000);

test("on a blank part of a sheet, one request tells it", async () => {
  await insert();
  await select("Z900");
  const before = host.syncCount;
  expect(await readSelected()).toEqual({ address: "Sheet1!Z900", block: undefined });
  expect(host.syncCount - before).toBe(1);
});

test("a block that reaches beyond what is read at first is read to its end", async () => {
  const points = Array.from({ length: 300 }, (_, i): [string, string, string] => {
    const angle = (2 * Math.PI * i) / 300;
    return [String(20 + 15 * Math.cos(angle)), String(20 + 15 * Math.sin(angle)), "0"];
  });
  await insert({ ...bed, way: "points", typed: {}, points });
  for (const cell of ["A1", "B12", "B250", "B330"]) {
    await select(cell);
    expect(await readSelected(), cell).toMatchObject({ block: { name: "Front walk", drawing: "none" } });
  }
  await select("A1");
  await redrawSelectedBlock(draw);
  expect(await readSelected()).toMatchObject({ block: { drawing: "current" } });
  // The last of the points stands some 300 rows below the cell that is selected.
  const last = host.values("A1:A400").flat().indexOf("Point 300") + 1;
  await host.type({ [`B${last}`]: 36 });
  expect(await readSelected()).toMatchObject({ block: { drawing: "out of date" } });
}, 60_000);

test("a block that moved down keeps its drawing, unless another has its name", async () => {
  await insert();
  await redrawSelectedBlock(draw);
  host.grid.sheets.insertRows(host.grid.sheets.activeId(), 0, 3);
  await select("B8");
  expect(await readSelected()).toMatchObject({ block: { drawing: "current" } });
  await select("M1");
  await insert();
  await select("B8");
  expect(await readSelected()).toMatchObject({ block: { drawing: "none" } });
});

test("while the selection runs, only where it comes to rest is told", async () => {
  const told: unknown[] = [];
  let reads = 0;
  const waiting: (() => void)[] = [];
  const read = () =>
    new Promise<number>((resolve) => {
      reads += 1;
      const nth = reads;
      waiting.push(() => resolve(nth));
    });
  const watching = watchSelection(read, (selected) => told.push(selected));
  await expect.poll(() => reads).toBe(1);
  const heard = vi.fn(async () => undefined);
  await Excel.run(async (context) => {
    context.workbook.onSelectionChanged.add(heard);
    await context.sync();
  });
  for (const cell of ["B1", "B2", "B3", "B4"]) await select(cell);
  await expect.poll(() => heard.mock.calls.length).toBe(4);
  waiting[0]!();
  await expect.poll(() => reads).toBe(2);
  waiting[1]!();
  await expect.poll(() => told).toEqual([2]);
  const stop = await watching;
  await stop();
  await select("C1");
  expect(reads).toBe(2);
});
