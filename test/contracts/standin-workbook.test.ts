import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { createHost, type HeadlessHost } from "../headlessHost";

let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost({
    office: {
      sheets: [
        { name: "Jobs", cells: { A1: 1 } },
        { name: "Spring jobs", cells: {} },
      ],
    },
  });
});
afterEach(() => host.dispose());

describe("sheets", () => {
  test("are found by name in any case and by id, and tell their place", async () => {
    await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      const sheet = worksheets.getItem("spring JOBS").load("id,name,position,visibility");
      const count = worksheets.getCount();
      await context.sync();
      expect([sheet.name, sheet.position, sheet.visibility, count.value]).toEqual(["Spring jobs", 1, "Visible", 2]);
      const again = worksheets.getItem(sheet.id).load("name");
      const range = again.getRange("A1").load("address");
      await context.sync();
      expect([again.name, range.address]).toEqual(["Spring jobs", "'Spring jobs'!A1"]);
    });
  });

  test("are added behind the others and not brought to the front", async () => {
    await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.add("Bed");
      worksheets.add();
      worksheets.load("items/name");
      const front = worksheets.getActiveWorksheet().load("name");
      await context.sync();
      expect(worksheets.items.map(({ name }) => name)).toEqual(["Jobs", "Spring jobs", "Bed", "Sheet4"]);
      expect(front.name).toBe("Jobs");
    });
  });

  test.each([
    ["jobs", "ItemAlreadyExists"],
    ["", "InvalidArgument"],
    ["a/b", "InvalidArgument"],
    ["x".repeat(32), "InvalidArgument"],
    ["'quoted'", "InvalidArgument"],
  ])("take no name like %j", async (name, code) => {
    const run = Excel.run(async (context) => {
      context.workbook.worksheets.add(name);
      await context.sync();
    });
    await expect(run).rejects.toMatchObject({ code, debugInfo: { errorLocation: "WorksheetCollection.add" } });
  });

  test("are renamed, brought to the front, and deleted, but never the last", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Spring jobs");
      sheet.name = "Summer jobs";
      sheet.activate();
      const front = context.workbook.worksheets.getActiveWorksheet().load("name");
      await context.sync();
      expect(front.name).toBe("Summer jobs");
      sheet.delete();
      await context.sync();
      expect(host.grid.sheets.list().map(({ name }) => name)).toEqual(["Jobs"]);
      context.workbook.worksheets.getItem("Jobs").delete();
      await expect(context.sync()).rejects.toMatchObject({ code: "GeneralException" });
    });
  });

  test("that are protected can be read and not written", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Jobs");
      sheet.protection.protect();
      sheet.protection.load("protected");
      await context.sync();
      expect(sheet.protection.protected).toBe(true);
      sheet.getRange("A1").values = [[2]];
      await expect(context.sync()).rejects.toMatchObject({ code: "AccessDenied" });
      sheet.protection.unprotect();
      sheet.getRange("A1").values = [[3]];
      await context.sync();
      expect(host.value("A1")).toBe(3);
    });
  });
});

describe("the selection", () => {
  test("is what was selected last, and brings its sheet to the front", async () => {
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Spring jobs").getRange("B2:C4").select();
      const selected = context.workbook.getSelectedRange().load("address");
      const active = context.workbook.getActiveCell().load("address");
      await context.sync();
      expect([selected.address, active.address]).toEqual(["'Spring jobs'!B2:C4", "'Spring jobs'!B2"]);
    });
  });

  test("tells when it changes, until the handler is taken off", async () => {
    const heard = vi.fn(async () => undefined);
    const added = await Excel.run(async (context) => {
      const handler = context.workbook.onSelectionChanged.add(heard);
      await context.sync();
      return handler;
    });
    const select = (address: string) =>
      Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Jobs").getRange(address).select();
        await context.sync();
      });
    await select("B2");
    await expect.poll(() => heard.mock.calls.length).toBe(1);
    await Excel.run(added.context as Excel.RequestContext, async (context) => {
      added.remove();
      await context.sync();
    });
    await select("C3");
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(heard).toHaveBeenCalledTimes(1);
  });
});

describe("a sheet's changes", () => {
  test("are told with their place, their kind, and whether the add-in made them", async () => {
    const heard: Excel.WorksheetChangedEventArgs[] = [];
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Jobs").onChanged.add(async (args) => {
        heard.push(args);
      });
      await context.sync();
      context.workbook.worksheets.getItem("Jobs").getRange("B2:C3").values = [
        [1, 2],
        [3, "=B2+A1"],
      ];
      context.workbook.worksheets.getItem("Spring jobs").getRange("A1").values = [[1]];
      context.workbook.worksheets.getItem("Jobs").getRange("B2").format.font.bold = true;
      await context.sync();
    });
    await host.type({ A1: 5 });
    host.grid.sheets.insertRows(host.grid.sheets.activeId(), 0, 1);
    await host.grid.settled();
    await expect.poll(() => heard.length).toBe(3);
    expect(heard.map(({ address, changeType, triggerSource }) => [address, changeType, triggerSource])).toEqual([
      ["B2:C3", "RangeEdited", "ThisLocalAddin"],
      ["A1", "RangeEdited", "Unknown"],
      ["1:1", "RowInserted", "Unknown"],
    ]);
  });
});

describe("names", () => {
  test("stand for cells, in formulas and for the add-in", async () => {
    await Excel.run(async (context) => {
      const { names, worksheets } = context.workbook;
      names.add("Waste", worksheets.getItem("Jobs").getRange("A1"));
      worksheets.getItem("Jobs").getRange("B1").formulas = [["=Waste+1"]];
      const item = names.getItemOrNullObject("waste").load("name,formula");
      const range = item.getRange().load("address");
      const none = names.getItemOrNullObject("Nothing");
      await context.sync();
      expect([item.name, item.formula, range.address, none.isNullObject]).toEqual([
        "Waste",
        "=Jobs!$A$1",
        "Jobs!A1",
        true,
      ]);
      expect(host.value("B1")).toBe(2);
      item.delete();
      names.load("items/name");
      await context.sync();
      expect(names.items).toEqual([]);
    });
  });

  test.each([
    ["two words", "InvalidArgument"],
    ["AB12", "InvalidArgument"],
    ["Taken", "ItemAlreadyExists"],
  ])("cannot be %j", async (name, code) => {
    const run = Excel.run(async (context) => {
      context.workbook.names.add("taken", "=Jobs!$A$1");
      context.workbook.names.add(name, "=Jobs!$A$1");
      await context.sync();
    });
    await expect(run).rejects.toMatchObject({ code });
  });
});

describe("settings", () => {
  test("are kept by key, replaced, and taken away", async () => {
    await Excel.run(async (context) => {
      const { settings } = context.workbook;
      settings.add("Bedrow.last", { at: [1, 2] });
      const kept = settings.getItemOrNullObject("Bedrow.last").load("value");
      const none = settings.getItemOrNullObject("Bedrow.other").load("value");
      await context.sync();
      expect([kept.value, none.isNullObject]).toEqual([{ at: [1, 2] }, true]);
      settings.add("Bedrow.last", "new");
      kept.load("value");
      await context.sync();
      expect(kept.value).toBe("new");
      kept.delete();
      const gone = settings.getItemOrNullObject("Bedrow.last");
      await context.sync();
      expect(gone.isNullObject).toBe(true);
      settings.getItem("Bedrow.last");
      await expect(context.sync()).rejects.toMatchObject({ code: "ItemNotFound" });
    });
  });
});

describe("tables", () => {
  test("are found by the range that they touch or that holds them whole", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Jobs");
      sheet.tables.add("B2:C5", true);
      const touched = sheet.getRange("A1:B2").getTables(false);
      const whole = sheet.getRange("A1:B2").getTables(true);
      touched.load("items/name");
      whole.load("items/name");
      await context.sync();
      expect([touched.items.map(({ name }) => name), whole.items]).toEqual([["Table1"], []]);
      sheet.tables.add("C5:D6", true);
      await expect(context.sync()).rejects.toMatchObject({ code: "InvalidArgument" });
    });
  });
});
