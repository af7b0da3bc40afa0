import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { createHost, type HeadlessHost } from "../headlessHost";

// What is expected of the stand-in here is what the host's reference and its guide to the proxy objects say.

let host: HeadlessHost;
beforeAll(async () => {
  host = await createHost({
    office: { sheets: [{ name: "Jobs", cells: { A1: "Bed", B1: 12.5, C1: true, A2: "=B1*2", B2: "'007" } }] },
  });
});
afterAll(() => host.dispose());

const notLoaded = (errorLocation: string) =>
  expect.objectContaining({ code: "PropertyNotLoaded", debugInfo: expect.objectContaining({ errorLocation }) });

describe("a property", () => {
  test("cannot be read before it is loaded", async () => {
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Jobs").getRange("A1");
      expect(() => range.values).toThrow(notLoaded("Range.values"));
      await context.sync();
      expect(() => range.values).toThrow(notLoaded("Range.values"));
      expect(() => range.format.fill.color).toThrow(notLoaded("RangeFill.color"));
    });
  });

  test("cannot be read between its load and the sync", async () => {
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Jobs").getRange("A1").load("values");
      expect(() => range.values).toThrow(notLoaded("Range.values"));
      await context.sync();
      expect(range.values).toEqual([["Bed"]]);
      expect(() => range.text).toThrow(notLoaded("Range.text"));
    });
  });

  test("that was set can be read back at once", async () => {
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Jobs").getRange("F1");
      range.values = [[3]];
      expect(range.values).toEqual([[3]]);
    });
  });

  test("keeps the value of its load, and not what was written later", async () => {
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Jobs").getRange("F2");
      range.values = [["before"]];
      const seen = context.workbook.worksheets.getItem("Jobs").getRange("F2").load("values");
      range.values = [["after"]];
      await context.sync();
      expect(seen.values).toEqual([["before"]]);
    });
  });

  test("that no such object has is refused at sync", async () => {
    const run = Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Jobs").getRange("A1").load("colour");
      await context.sync();
    });
    await expect(run).rejects.toMatchObject({ code: "InvalidArgument", debugInfo: { errorLocation: "Range.load" } });
  });
});

describe("load", () => {
  test.each([
    ["a list in one text", "values, address"],
    ["a list of texts", ["values", "address"]],
    ["an object", { values: true, address: true }],
    ["nothing, for all plain properties", undefined],
  ])("takes %s", async (_, properties) => {
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Jobs").getRange("B1");
      range.load(properties as string);
      await context.sync();
      expect([range.values, range.address]).toEqual([[[12.5]], "Jobs!B1"]);
    });
  });

  test("reaches the objects that hang on another", async () => {
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Jobs").getRange("B1");
      range.load({ format: { font: { bold: true } }, worksheet: { name: true } });
      await context.sync();
      expect([range.format.font.bold, range.worksheet.name]).toEqual([false, "Jobs"]);
    });
  });

  test.each(["items/name", "name"])("gives the items of a collection with %s", async (path) => {
    await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      expect(() => worksheets.items).toThrow(notLoaded("WorksheetCollection.items"));
      worksheets.load(path);
      await context.sync();
      expect(worksheets.items.map((sheet) => sheet.name)).toEqual(["Jobs"]);
      expect(() => worksheets.items[0]?.visibility).toThrow(notLoaded("Worksheet.visibility"));
    });
  });
});

describe("a range", () => {
  test("tells values, formulas, kinds, texts and formats of its cells; a blank cell reads as empty text", async () => {
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Jobs").getRange("A1:D2");
      range.load("values,formulas,valueTypes,text,numberFormat");
      await context.sync();
      expect(range.values).toEqual([
        ["Bed", 12.5, true, ""],
        [25, "007", "", ""],
      ]);
      expect(range.formulas).toEqual([
        ["Bed", 12.5, true, ""],
        ["=B1*2", "007", "", ""],
      ]);
      expect(range.valueTypes).toEqual([
        ["String", "Double", "Boolean", "Empty"],
        ["Double", "String", "Empty", "Empty"],
      ]);
      expect(range.text).toEqual([
        ["Bed", "12.5", "TRUE", ""],
        ["25", "007", "", ""],
      ]);
      expect(range.numberFormat.flat()).toEqual(Array(8).fill("General"));
    });
  });

  test("is reached by address, by numbers, and from another range", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Jobs");
      const start = sheet.getRange("B2:C4");
      const ranges = [
        sheet.getRangeByIndexes(1, 2, 3, 4),
        sheet.getCell(9, 27),
        start.getCell(0, 0),
        start.getLastCell(),
        start.getRow(1),
        start.getColumn(1),
        start.getOffsetRange(-1, 2),
        start.getResizedRange(1, -1),
        start.getEntireColumn(),
        start.getEntireRow(),
        start.getIntersectionOrNullObject("C4:D9"),
        sheet.getRange("$B$2:C3"),
      ].map((range) => range.load("address"));
      await context.sync();
      expect(ranges.map((range) => range.address)).toEqual([
        "Jobs!C2:F4",
        "Jobs!AB10",
        "Jobs!B2",
        "Jobs!C4",
        "Jobs!B3:C3",
        "Jobs!C2:C4",
        "Jobs!D1:E3",
        "Jobs!B2:B5",
        "Jobs!B:C",
        "Jobs!2:4",
        "Jobs!C4",
        "Jobs!B2:C3",
      ]);
    });
  });

  test.each([
    ["an address that is none", (sheet: Excel.Worksheet) => sheet.getRange("front walk")],
    ["a cell above the first row", (sheet: Excel.Worksheet) => sheet.getRange("A1").getOffsetRange(-1, 0)],
    ["a range without rows", (sheet: Excel.Worksheet) => sheet.getRangeByIndexes(0, 0, 0, 1)],
    ["half a row", (sheet: Excel.Worksheet) => sheet.getCell(0.5, 0)],
    ["a cell beyond the last column", (sheet: Excel.Worksheet) => sheet.getCell(0, 16_384)],
  ])("is refused at sync for %s", async (_, ask) => {
    const run = Excel.run(async (context) => {
      ask(context.workbook.worksheets.getItem("Jobs"));
      await context.sync();
    });
    await expect(run).rejects.toMatchObject({ code: "InvalidArgument" });
  });

  test("as large as a sheet can be asked where it lies, but not for its values", async () => {
    await Excel.run(async (context) => {
      const whole = context.workbook.worksheets.getItem("Jobs").getRange().load("rowCount,columnCount");
      await context.sync();
      expect([whole.rowCount, whole.columnCount]).toEqual([1_048_576, 16_384]);
    });
    const run = Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Jobs").getRange("A:B").load("values");
      await context.sync();
    });
    await expect(run).rejects.toMatchObject({ code: "InvalidArgument" });
  });
});

describe("what is not there", () => {
  test("is an error where it was asked for outright", async () => {
    const run = Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Nowhere");
      await context.sync();
    });
    await expect(run).rejects.toMatchObject({
      code: "ItemNotFound",
      debugInfo: { errorLocation: "WorksheetCollection.getItem" },
    });
  });

  test("is a null object where that was asked for, and so is what is reached from it", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject("Nowhere");
      const range = sheet.getRange("A1").load("values");
      const there = context.workbook.worksheets.getItemOrNullObject("jobs");
      expect(() => sheet.isNullObject).toThrow(expect.objectContaining({ code: "PropertyNotLoaded" }));
      await context.sync();
      expect([sheet.isNullObject, range.isNullObject, there.isNullObject]).toEqual([true, true, false]);
      expect(range.values).toBeUndefined();
    });
  });

  test("cannot be written to", async () => {
    const run = Excel.run(async (context) => {
      context.workbook.worksheets.getItemOrNullObject("Nowhere").getRange("A1").values = [[1]];
      await context.sync();
    });
    await expect(run).rejects.toMatchObject({ code: "ItemNotFound", debugInfo: { errorLocation: "Range.values" } });
  });
});

test("the used range goes round everything that is on the sheet, and is a null object on an empty one", async () => {
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.add("Used");
    const empty = sheet.getUsedRangeOrNullObject();
    sheet.getRange("C3").values = [[1]];
    sheet.getRange("E5").format.fill.color = "#FFEEDD";
    const values = sheet.getUsedRangeOrNullObject(true).load("address");
    const all = sheet.getUsedRangeOrNullObject().load("address");
    await context.sync();
    expect(empty.isNullObject).toBe(true);
    expect([values.address, all.address]).toEqual(["Used!C3", "Used!C3:E5"]);
  });
});
