import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { createHost, type HeadlessHost } from "../headlessHost";

/*
 * What the spreadsheet program's own client library does in odd cases. Each test runs on the stand-in, and a second
 * time on the unmodified library of @microsoft/office-js, with the same code and the same expectations; where the two
 * disagree, the library is right.
 */
let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost();
});
afterEach(() => {
  vi.restoreAllMocks();
  host.dispose();
});

const sheetOf = (context: Excel.RequestContext) => context.workbook.worksheets.getItem("Sheet1");

/** What a piece of code throws, at once or later. */
async function thrownBy(work: () => unknown): Promise<OfficeExtension.Error> {
  try {
    await work();
  } catch (error) {
    return error as OfficeExtension.Error;
  }
  throw new Error("It threw nothing.");
}

/** A table of as many rows and columns, with a number in each cell that tells its place. */
const tableOf = (rows: number, columns: number) =>
  Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (_, column) => row * columns + column));

describe("what is written", () => {
  test("goes in as several changes of one request where it's more than 1,500 cells", async () => {
    await Excel.run(async (context) => {
      sheetOf(context).getRange("A1:D500").values = tableOf(500, 4);
      await context.sync();
    });
    // 1,500 / 4 is 375 rows, and 125 more.
    expect([host.syncCount, host.session.changesOfRequests.at(-1)]).toEqual([1, 2]);
    expect(host.values("D500")).toEqual([[1999]]);

    host.failAtSync(1, 1);
    await thrownBy(() =>
      Excel.run(async (context) => {
        sheetOf(context).getRange("F1:I500").formulas = tableOf(500, 4);
      }),
    );
    expect([host.value("I375"), host.value("F376")]).toEqual([1499, ""]);
  });

  test("leaves a cell alone where it's NaN, infinite, null, or undefined", async () => {
    await host.type({ A1: 1, B1: 2, C1: 3, D1: 4 });
    await Excel.run(async (context) => {
      const nothing = [Number.NaN, Number.POSITIVE_INFINITY, null, undefined, 5];
      sheetOf(context).getRange("A1:E1").values = [nothing];
      sheetOf(context).getRange("B1").formulas = [[Number.NEGATIVE_INFINITY]];
    });
    expect(host.values("A1:E1")).toEqual([[1, 2, 3, 4, 5]]);
  });
});

describe("what is read", () => {
  test("is undefined on a null object and on what hangs on it, whether it was loaded or not", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject("Nowhere");
      const range = sheet.getRange("A1").load("values");
      const setting = context.workbook.settings.getItemOrNullObject("nothing");
      const protection = sheet.protection.load("protected");
      const font = range.format.font.load("bold");
      await context.sync();
      expect([sheet.isNullObject, range.isNullObject, setting.isNullObject]).toEqual([true, true, true]);
      expect([sheet.name, range.values, range.address, setting.value]).toEqual(Array(4).fill(undefined));
      expect([protection.protected, font.bold]).toEqual([undefined, undefined]);
    });
  });

  test("is a Date again where a setting was given one", async () => {
    await Excel.run(async ({ workbook }) => {
      workbook.settings.add("start", { on: new Date(Date.UTC(2026, 11, 7)), days: [new Date(0), "Date"] });
      workbook.settings.add("end", new Date(Date.UTC(2026, 11, 9)));
    });
    await Excel.run(async (context) => {
      const [start, end] = ["start", "end"].map((key) => context.workbook.settings.getItem(key).load("value"));
      await context.sync();
      expect(start?.value).toEqual({ on: new Date("2026-12-07T00:00:00Z"), days: [new Date(0), "Date"] });
      expect(end?.value).toEqual(new Date("2026-12-09T00:00:00Z"));
    });
  });
});

describe("an object", () => {
  test("such as a range can't be used after its run; a sheet can", async () => {
    const { range, fill, sheet } = await Excel.run(async (context) => {
      const sheet = sheetOf(context).load("name");
      const range = sheet.getRange("A1").load("values");
      const { fill } = range.format;
      await context.sync();
      return { range, fill, sheet };
    });
    // What was loaded is still there to read.
    expect(range.values).toEqual([[""]]);
    const uses = [
      () => range.load("values"),
      () => range.getRow(0),
      () => range.conditionalFormats,
      () => range.clear(),
      () => {
        range.values = [[1]];
      },
      async () => {
        fill.color = "#112233";
        await fill.context.sync();
      },
    ];
    for (const use of uses) expect(await thrownBy(use)).toMatchObject({ code: "InvalidObjectPath" });
    expect((await thrownBy(() => range.load("values"))).debugInfo.errorLocation).toBe("_reference()");
    sheet.getRange("B2").values = [[2]];
    await sheet.context.sync();
    expect(host.value("B2")).toBe(2);
  });

  test("of another context is refused", async () => {
    await Excel.run(async (other) => {
      const range = sheetOf(other).getRange("A1");
      const run = (use: (context: Excel.RequestContext) => unknown) =>
        thrownBy(() => Excel.run(async (context) => void use(context)));
      const uses: ((context: Excel.RequestContext) => unknown)[] = [
        (context) => sheetOf(context).getRange("D1").copyFrom(range),
        (context) => sheetOf(context).getRange("D1").getIntersectionOrNullObject(range),
        (context) => context.workbook.names.add("Depth", range),
        (context) => sheetOf(context).tables.add(range, true),
        (context) => sheetOf(context).pageLayout.setPrintArea(range),
        (context) => context.load(range, "values"),
      ];
      for (const use of uses) {
        const error = await run(use);
        expect(error).toMatchObject({ code: "InvalidRequestContext" });
        expect(error.debugInfo.errorLocation).toBeUndefined();
      }
    });
  });
});

describe("a run", () => {
  test("is refused where its batch returns no promise", async () => {
    const error = await thrownBy(() => Excel.run((() => 1) as never));
    expect(error).toMatchObject({ code: "RunMustReturnPromise" });
    expect(error.message).toContain("didn't return a promise");
  });

  const writeWhileTyping = async () => {
    host.isEditing = true;
    setTimeout(() => {
      host.isEditing = false;
    }, 50);
    await Excel.run({ delayForCellEdit: true }, async (context) => {
      sheetOf(context).getRange("A1").values = [[1]];
      await context.sync();
    });
  };

  test("waits while a cell is open for typing only in a program that reports DelayForCellEdit", async () => {
    expect(Office.context.requirements.isSetSupported("DelayForCellEdit")).toBe(true);
    await writeWhileTyping();
    expect(host.value("A1")).toBe(1);

    const isSetSupported = Office.context.requirements.isSetSupported.bind(Office.context.requirements);
    vi.spyOn(Office.context.requirements, "isSetSupported").mockImplementation(
      (name, version) => name !== "DelayForCellEdit" && isSetSupported(name, version),
    );
    expect(await thrownBy(writeWhileTyping)).toMatchObject({ code: "InvalidOperationInCellEditMode" });
  });
});

test("an error is an OfficeExtension.Error by the name of RichApi.Error, and says where it came up", async () => {
  await Excel.run(async (context) => {
    const range = sheetOf(context).getRange("A1");
    const missing = context.workbook.worksheets.getItemOrNullObject("Nowhere");
    const count = context.workbook.worksheets.getCount();
    const errors = [
      await thrownBy(() => range.values),
      await thrownBy(() => missing.isNullObject),
      await thrownBy(() => count.value),
    ];
    expect(errors.map(({ code, debugInfo }) => [code, debugInfo.errorLocation])).toEqual([
      [OfficeExtension.ErrorCodes.propertyNotLoaded, "Range.values"],
      [OfficeExtension.ErrorCodes.propertyNotLoaded, undefined],
      [OfficeExtension.ErrorCodes.valueNotLoaded, "clientResult.value"],
    ]);
    range.values = [[1, 2]];
    errors.push(await thrownBy(() => context.sync()));
    for (const error of errors) {
      expect(error).toBeInstanceOf(OfficeExtension.Error);
      expect([error.name, error.traceMessages, error.innerError]).toEqual(["RichApi.Error", [], null]);
    }
  });
});

describe("a member", () => {
  test("count is one of tables only", async () => {
    await host.type({ A1: "Bed", A2: 1 });
    await Excel.run(async (context) => {
      const { names, settings, tables, worksheets } = context.workbook;
      const sheet = sheetOf(context);
      sheet.tables.add("A1:A2", true);
      tables.load("count");
      await context.sync();
      expect(tables.count).toBe(1);
      const others = [
        worksheets,
        names,
        settings,
        sheet.shapes,
        sheet.horizontalPageBreaks,
        sheet.getRange().getTables(),
      ];
      expect(others.filter((one) => "count" in one)).toEqual([]);
    });
  });

  test("set takes several properties of a range at once, and toJSON gives those that were loaded", async () => {
    await Excel.run(async (context) => {
      const range = sheetOf(context).getRange("A1");
      range.set({ values: [["Bed"]], format: { wrapText: true, font: { bold: true } } });
      await context.sync();
      const read = sheetOf(context).getRange("A1").load("values,address,format/wrapText,format/font/bold");
      await context.sync();
      expect(JSON.parse(JSON.stringify(read))).toEqual({
        address: "Sheet1!A1",
        values: [["Bed"]],
        format: { wrapText: true, font: { bold: true } },
      });
      sheetOf(context).getRange("B1").set(read);
      const wrong = await thrownBy(() => range.set({ nonsense: 1 } as object));
      expect(wrong).toMatchObject({ code: "InvalidArgument", debugInfo: { errorLocation: "Range.set" } });
      expect(await thrownBy(() => range.set({ address: "A2" } as object))).toMatchObject({ code: "InvalidArgument" });
    });
    expect(host.value("B1")).toBe("Bed");
  });

  test("can be written: page margins, a table's headers and totals, and a sheet's position", async () => {
    await host.type({ A1: "Bed", A2: 1 });
    await Excel.run(async (context) => {
      const sheet = sheetOf(context);
      const table = sheet.tables.add("A1:A2", true);
      table.showHeaders = true;
      table.showTotals = false;
      const { pageLayout } = sheet;
      const margins = [
        "topMargin",
        "bottomMargin",
        "leftMargin",
        "rightMargin",
        "headerMargin",
        "footerMargin",
      ] as const;
      for (const [index, margin] of margins.entries()) pageLayout[margin] = 10 + index;
      const second = context.workbook.worksheets.add("Second");
      second.position = 0;
      await context.sync();
      const sheets = context.workbook.worksheets.load("items/name");
      pageLayout.load(margins.join());
      table.load("showHeaders,showTotals");
      await context.sync();
      expect(margins.map((margin) => pageLayout[margin])).toEqual([10, 11, 12, 13, 14, 15]);
      expect([table.showHeaders, table.showTotals]).toEqual([true, false]);
      expect(sheets.items.map(({ name }) => name)).toEqual(["Second", "Sheet1"]);
    });
  });
});
