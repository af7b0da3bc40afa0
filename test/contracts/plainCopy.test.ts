import ExcelJS from "exceljs";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { copyFile, copyForWorkbook, type OnSheet, openCopy, writeCopy } from "../../src/pane/copy/makeCopy";
import { readAgain, readSource, type What } from "../../src/pane/copy/source";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock, estimateRows } from "../../src/sheets/estimate/block";
import { insertPlan } from "../../src/workbook/change/insert";
import { lastInsert } from "../../src/workbook/change/receipt";
import { undoLastInsert } from "../../src/workbook/change/undo";
import { bedsOfEachWay } from "../bedsOfEachWay";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { hasLibreOffice, recalculated } from "../recalculate";

let host: HeadlessHost;
beforeEach(async () => {
  host = await createProductHost({
    sheets: [
      {
        name: "Jobs",
        cells: {
          A1: "Beds of an invented office",
          B3: "Length, ft",
          C3: "Width, ft",
          D3: "Tons",
          B4: `18' 6"`,
          C4: 5,
          D4: "=BED.STONE_TONS(BED.AREA_RECTANGLE(B4,C4),2,Rates!B1,Rates!B2)",
          B5: `32' 6 1/2"`,
          C5: 3,
          D5: "=BED.STONE_TONS(BED.AREA_RECTANGLE(B5,C5),2,Rates!B1,Rates!B2)",
          B6: "Sum",
          D6: "=SUM(D4:D5)",
        },
        looks: [{ range: "B3:D3", fill: "#EEF3E6", bold: true }],
      },
      { name: "Rates", cells: { A1: "Stone", B1: "river rock", A2: "Waste", B2: 0.08 } },
      { name: "Room", cells: { A1: "mine" } },
    ],
  });
  await host.grid.settled();
});
afterEach(() => {
  vi.restoreAllMocks();
  host.dispose();
});

async function select(sheet: string, address: string): Promise<void> {
  await Excel.run(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet);
    worksheet.activate();
    worksheet.getRange(address).select();
    await context.sync();
  });
}

/** Every cell of every sheet: contents, formats, looks and widths. */
async function everything() {
  return Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    const read = worksheets.items.map((sheet) => {
      const range = sheet.getRange("A1:H16");
      range.load("formulas,values,numberFormat");
      const looks = range.getCellProperties({
        format: { fill: { color: true }, font: { bold: true, italic: true, color: true, size: true } },
      });
      const columns = Array.from({ length: 8 }, (_, index) => range.getColumn(index));
      for (const column of columns) column.load("format/columnWidth");
      return { name: sheet.name, range, looks, columns };
    });
    await context.sync();
    return read.map(({ name, range, looks, columns }) => ({
      name,
      formulas: range.formulas,
      values: range.values,
      formats: range.numberFormat,
      looks: looks.value,
      widths: columns.map(({ format }) => format.columnWidth),
    }));
  });
}

const idOf = (name: string) => host.grid.sheets.list().find((sheet) => sheet.name === name)!.id;
const newSheet: OnSheet = { kind: "new sheet" };
const at = (sheetName: string, row: number, column: number): OnSheet => ({
  kind: "cell",
  sheetId: idOf(sheetName),
  sheetName,
  at: { row, column },
});

describe("what is copied", () => {
  test("is the sheet in front with every cell at its address", async () => {
    await select("Jobs", "D5");
    const written = await writeCopy(await readSource("sheet"), "formulas", newSheet);
    expect(written).toMatchObject({ done: true, sheetName: "Jobs plain" });
    expect(host.value("'Jobs plain'!D6")).toBeCloseTo(Number(host.value("Jobs!D6")), 9);
    expect([host.value("'Jobs plain'!B4"), host.value("'Jobs plain'!A1")]).toEqual([
      18.5,
      "Beds of an invented office",
    ]);
    // 18.5 × 5 × 2 ÷ 324 × 1.08 × 1.3 tons a cubic yard: the copy follows the sheet that it was taken from.
    await host.type({ "Rates!B2": 0.5 });
    expect(host.value("'Jobs plain'!D4")).toBeCloseTo(((18.5 * 5 * 2) / 324) * 1.5 * 1.35, 9);
  });

  test("is the estimate block around the selected cell, and nothing beside it", async () => {
    await select("Room", "C3");
    const bed = bedsOfEachWay["area from a plan"]!;
    const live = await insertPlan((place) => estimateBlock(bed, place), { kind: "selection" });
    await host.type({ "Room!N5": "not of the block" });
    await select("Room", "D20");
    const source = await readSource("block");
    expect(source.name).toBe("Front walk");
    expect(await writeCopy(source, "formulas", newSheet)).toMatchObject({ sheetName: "Front walk plain" });
    if (!live.done) throw new Error("the place is free");
    expect(host.value("'Front walk plain'!B2")).toBeCloseTo(Number(host.value("Room!D4")), 9);
    expect(Number(host.value("'Front walk plain'!B2"))).toBeGreaterThan(400);
    expect(source.region.formulas.flat()).not.toContain("not of the block");
  });

  test("is the selected cells, as far as anything is in them", async () => {
    await select("Jobs", "C4:Z40");
    const { region, where } = await readSource("cells");
    expect(where).toBe("Jobs, C4:D6");
    expect(region.formulas).toHaveLength(3);
  });

  test.each<[What, string, string, RegExp]>([
    ["cells", "Jobs", "H20:J30", /The selected cells are blank/],
    ["block", "Jobs", "B4", /Select a cell in an estimate/],
  ])("where there is nothing to copy (%s), it says what to do", async (what, sheet, address, words) => {
    await select(sheet, address);
    await expect(readSource(what)).rejects.toThrow(words);
  });

  test("is read once more before it is written, so that nothing old is copied", async () => {
    await select("Jobs", "B3:D6");
    const source = await readSource("cells");
    await host.type({ "Jobs!C4": 6 });
    await select("Room", "A1");
    const again = await readAgain(source);
    expect(again.where).toBe(source.where);
    expect(again.region.values[1]![1]).toBe(6);
  });

  test("names hidden rows and columns, which show in the copy", async () => {
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Jobs").getRange("A5:A5").getEntireRow().rowHidden = true;
      await context.sync();
    });
    await select("Jobs", "A1");
    expect((await readSource("sheet")).hidden).toEqual(["1 hidden row"]);
  });
});

describe("where it goes", () => {
  test("from a chosen cell on, linked to what stays outside of it", async () => {
    await select("Jobs", "B6:D6");
    const source = await readSource("cells");
    expect(await writeCopy(source, "formulas", at("Room", 4, 2))).toMatchObject({ sheetName: "Room" });
    expect(host.formula("Room!E5")).toBe("=SUM(Jobs!D4:D5)");
    expect(await writeCopy(await readAgain(source), "formulas", at("Jobs", 9, 0))).toMatchObject({ done: true });
    expect(host.formula("Jobs!C10")).toBe("=SUM(D4:D5)");
  });

  test.each(["formulas", "values only"] as const)("with its looks, widths and merged cells, in %s", async (mode) => {
    await Excel.run(async (context) => {
      const jobs = context.workbook.worksheets.getItem("Jobs");
      jobs.getRange("B3").format.columnWidth = 120;
      jobs.getRange("A1:C1").merge();
      await context.sync();
    });
    await select("Jobs", "A1");
    expect(await writeCopy(await readSource("sheet"), mode, newSheet)).toMatchObject({ done: true });
    const [jobs, copy] = [(await everything())[0]!, (await everything()).at(-1)!];
    expect(copy.looks.slice(0, 6)).toEqual(jobs.looks.slice(0, 6));
    expect(copy.widths[1]).toBeCloseTo(jobs.widths[1]!, 1);
    const merged = await Excel.run(async (context) => {
      const areas = context.workbook.worksheets.getItem(copy.name).getRange("A1:H16").getMergedAreasOrNullObject();
      areas.load("address");
      await context.sync();
      return areas.address;
    });
    expect(merged).toMatch(/A1:C1$/);
  });

  test("never over anything: it names what is in the way", async () => {
    await select("Jobs", "B3:D6");
    const before = await everything();
    const written = await writeCopy(await readSource("cells"), "formulas", at("Jobs", 4, 3));
    expect(written).toMatchObject({ done: false, inTheWay: { obstacles: [{ what: "cells with contents" }] } });
    expect(await everything()).toEqual(before);
  });

  test("into a workbook of its own, which reads nothing of this one", async () => {
    let handed = "";
    vi.spyOn(Excel, "createWorkbook").mockImplementation(async (base64) => {
      handed = base64 ?? "";
    });
    await select("Jobs", "B3:D6");
    const source = await readSource("cells");
    await openCopy(source, "formulas");
    const book = new ExcelJS.Workbook();
    await book.xlsx.load(new Uint8Array(Buffer.from(handed, "base64")).buffer);
    const [sheet, ...more] = book.worksheets;
    expect(more).toEqual([]);
    expect(sheet!.name).toBe("Jobs");
    const cell = sheet!.getCell("C2");
    expect(cell.formula).not.toMatch(/Rates|BED/);
    expect(cell.result).toBeCloseTo(Number(host.value("Jobs!D4")), 9);
    expect(copyForWorkbook(source, "formulas").carried).toEqual([
      { what: "Rates!B1", value: "river rock" },
      { what: "Rates!B2", value: 0.08 },
    ]);
    expect([sheet!.getCell("A7").value, sheet!.getCell("B7").value]).toEqual(["Rates!B1", "river rock"]);
  });

  test("says so where the host opens no workbook, and changes nothing", async () => {
    vi.spyOn(Excel, "createWorkbook").mockRejectedValue(new Error("no window"));
    await select("Jobs", "B3:D6");
    const before = await everything();
    await expect(openCopy(await readSource("cells"), "formulas")).rejects.toThrow(
      /didn't open a new workbook\. Nothing was changed/,
    );
    expect(await everything()).toEqual(before);
  });

  test("as values with nothing behind them", async () => {
    await select("Jobs", "B3:D6");
    const book = new ExcelJS.Workbook();
    await book.xlsx.load((await copyFile(await readSource("cells"), "values only")).slice().buffer);
    const sheet = book.worksheets[0]!;
    expect(sheet.getCell("C4").value).toBeCloseTo(Number(host.value("Jobs!D6")), 9);
    expect(sheet.getCell("A2").value).toBe(`18' 6"`);
  });
});

test("a block that was adjusted by hand comes to the same price on a plain sheet and in a file", async () => {
  const bed = bedsOfEachWay["rectangle, rounded"]!;
  await select("Room", "C3");
  await insertPlan((place) => estimateBlock(bed, place), { kind: "selection" });
  const keys = keyAddresses(estimateRows(bed), { row: 2, column: 2 });
  const adjusted = {
    "stoneLine.markup": 0.5,
    "fabric.quantity": 3,
    "spare1.quantity": 2,
    "spare1.unitCost": 40,
    "spare1.kind": "labor",
  };
  const cells = Object.entries(adjusted).map(([key, content]) => [`Room!${keys.get(key)}`, content]);
  await host.type(Object.fromEntries(cells));
  const price = Number(host.value(`Room!${keys.get("price")}`));
  expect(price).toBeGreaterThan(400);

  await select("Room", "C3");
  const source = await readSource("block");
  const inCopy = keyAddresses(estimateRows(bed), { row: 0, column: 0 }).get("price")!;
  const written = await writeCopy(source, "formulas", newSheet);
  if (!written.done) throw new Error("a new sheet is free");
  expect(host.value(`'${written.sheetName}'!${inCopy}`)).toBeCloseTo(price, 9);

  const file = await copyFile(await readAgain(source), "formulas");
  const [opened = file] = hasLibreOffice() ? recalculated([file]) : [];
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(new Uint8Array(opened).buffer);
  expect(book.worksheets[0]!.getCell(inCopy).result).toBeCloseTo(price, 9);
});

describe("the original", () => {
  test("stays as it is in every cell, whatever is made of it", async () => {
    await select("Jobs", "B3:D6");
    const before = await everything();
    for (const mode of ["formulas", "values only"] as const) {
      const source = await readSource("cells");
      await copyFile(source, mode);
      await writeCopy(source, mode, newSheet);
      await undoLastInsert();
      await select("Jobs", "B3:D6");
      await writeCopy(await readSource("sheet"), mode, newSheet);
      const after = await everything();
      expect(after.slice(0, before.length)).toEqual(before);
      await undoLastInsert();
      await select("Jobs", "B3:D6");
    }
    expect(await everything()).toEqual(before);
  });

  const faults = [1, 2, 3, 4, 5, 6, 7].flatMap((sync) => [0, 3].map((after) => [sync, after] as const));
  test.each(faults)(
    "and the workbook stay as they are when request %i of a copy fails after %i changes",
    async (sync, afterOperations) => {
      await select("Jobs", "B3:D6");
      const before = await everything();
      for (const to of [newSheet, at("Room", 4, 2)]) {
        host.failAtSync(sync, afterOperations);
        const copied = await readSource("sheet")
          .then((source) => writeCopy(source, "formulas", to))
          .then(
            ({ done }) => done,
            () => false,
          );
        // A copy takes fewer requests than the last ones tried here; then nothing failed.
        if (copied) await undoLastInsert().catch(() => undoLastInsert());
        host.failAtSync(1_000);
        expect(await lastInsert()).toBeUndefined();
        await select("Jobs", "B3:D6");
        expect(await everything()).toEqual(before);
      }
    },
  );
});
