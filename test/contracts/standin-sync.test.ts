import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createHost, type HeadlessHost } from "../headlessHost";

let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost();
});
afterEach(() => host.dispose());

const sheetOf = (context: Excel.RequestContext) => context.workbook.worksheets.getActiveWorksheet();

describe("sync", () => {
  test("is when things happen, and not before", async () => {
    await Excel.run(async (context) => {
      sheetOf(context).getRange("A1").values = [[1]];
      expect(host.value("A1")).toBe("");
      await context.sync();
      expect(host.value("A1")).toBe(1);
    });
  });

  test("happens by itself at the end of a run, which gives what its batch gave", async () => {
    const given = await Excel.run(async (context) => {
      sheetOf(context).getRange("A1").values = [[1]];
      return "done";
    });
    expect([given, host.value("A1")]).toEqual(["done", 1]);
  });

  test("does things in the order in which they were asked for", async () => {
    await Excel.run(async (context) => {
      const range = sheetOf(context).getRange("A1");
      range.values = [[1]];
      const first = sheetOf(context).getRange("A1").load("values");
      range.values = [["=B1+1"]];
      sheetOf(context).getRange("B1").values = [[10]];
      const second = sheetOf(context).getRange("A1").load("values");
      sheetOf(context).getRange("B1").values = [[20]];
      const third = sheetOf(context).getRange("A1").load("values");
      await context.sync();
      expect([first.values, second.values, third.values]).toEqual([[[1]], [[11]], [[21]]]);
    });
  });

  test("stops at what cannot be done: that is the error, what came before stays, what came after is dropped", async () => {
    const run = Excel.run(async (context) => {
      sheetOf(context).getRange("A1").values = [["before"]];
      sheetOf(context).getRange("A2").values = [[1, 2]];
      sheetOf(context).getRange("A3").values = [["after"]];
      await context.sync();
    });
    await expect(run).rejects.toMatchObject({
      name: "RichApi.Error",
      code: "InvalidArgument",
      message: expect.stringContaining("doesn't match the size"),
      debugInfo: { code: "InvalidArgument", errorLocation: "Range.values" },
    });
    expect(host.values("A1:A3")).toEqual([["before"], [""], [""]]);
  });

  test("can be tried again in the same context after it failed", async () => {
    await Excel.run(async (context) => {
      sheetOf(context).getRange("A1:B1").values = [[1]];
      await expect(context.sync()).rejects.toMatchObject({ code: "InvalidArgument" });
      sheetOf(context).getRange("A1").values = [[2]];
      await context.sync();
    });
    expect(host.value("A1")).toBe(2);
  });

  test("lets formulas show their results, so that the next run reads them", async () => {
    await Excel.run(async (context) => {
      context.application.suspendApiCalculationUntilNextSync();
      context.application.suspendScreenUpdatingUntilNextSync();
      sheetOf(context).getRange("A1:B1").formulas = [[2, "=A1*21"]];
      await context.sync();
    });
    expect(host.value("B1")).toBe(42);
  });

  test("leaves formulas for later where calculation is suspended", async () => {
    await Excel.run(async (context) => {
      context.application.suspendApiCalculationUntilNextSync();
      sheetOf(context).getRange("A1:B1").formulas = [[2, "=A1*21"]];
      const range = sheetOf(context).getRange("B1").load("values");
      await context.sync();
      expect(range.values).toEqual([[""]]);
      range.load("values");
      await context.sync();
      expect(range.values).toEqual([[42]]);
    });
  });

  test("of two runs at once is done for one after the other", async () => {
    const seen: string[] = [];
    const run = (name: string) =>
      Excel.run(async (context) => {
        const range = sheetOf(context).getRange("A1");
        range.values = [[name]];
        range.load("values");
        await context.sync();
        seen.push(`${name} ${range.values[0]?.[0]}`);
      });
    await Promise.all([run("one"), run("two")]);
    expect(seen.sort()).toEqual(["one one", "two two"]);
  });
});

describe("for tests", () => {
  test("the requests that carry something are counted", async () => {
    await Excel.run(async (context) => {
      sheetOf(context).getRange("A1").values = [[1]];
      await context.sync();
      await context.sync();
      sheetOf(context).getRange("A1").load("values");
      await context.sync();
    });
    expect(host.syncCount).toBe(2);
  });

  test("a request can be made to fail after some of its changes", async () => {
    host.failAtSync(2, 1);
    await Excel.run(async (context) => {
      sheetOf(context).getRange("A1").values = [["first request"]];
      await context.sync();
      sheetOf(context).getRange("A2").values = [["takes effect"]];
      sheetOf(context).getRange("A3").values = [["does not"]];
      await expect(context.sync()).rejects.toMatchObject({ code: "GeneralException" });
    });
    expect(host.values("A1:A3")).toEqual([["first request"], ["takes effect"], [""]]);
    await Excel.run(async (context) => {
      sheetOf(context).getRange("A3").values = [["again"]];
    });
    expect(host.value("A3")).toBe("again");
  });
});

describe("while someone is typing into a cell", () => {
  const write = async (context: Excel.RequestContext) => {
    sheetOf(context).getRange("A1").values = [[1]];
    await context.sync();
  };

  // Excel.RunOptions.delayForCellEdit in the host's type package.
  test("a request fails, with the host's code for it", async () => {
    host.isEditing = true;
    await expect(Excel.run(write)).rejects.toMatchObject({ code: "InvalidOperationInCellEditMode" });
    expect(host.value("A1")).toBe("");
  });

  test("a request that may be delayed waits, also where the typing begins between two of its run", async () => {
    let run: Promise<void> = Promise.resolve();
    await new Promise<void>((typing) => {
      run = Excel.run({ delayForCellEdit: true }, async (context) => {
        sheetOf(context).load("name");
        await context.sync();
        host.isEditing = true;
        typing();
        await write(context);
      });
    });
    await new Promise((resolve) => setTimeout(resolve, 250));
    expect(host.value("A1")).toBe("");
    host.isEditing = false;
    await run;
    expect(host.value("A1")).toBe(1);
  });
});

test("where the workbook's structure is protected, sheets are neither added, taken away nor renamed", async () => {
  const actions: ((sheets: Excel.WorksheetCollection) => unknown)[] = [
    (sheets) => sheets.add("More"),
    (sheets) => sheets.getItem("Sheet1").delete(),
    (sheets) => {
      sheets.getItem("Sheet1").name = "Other";
    },
  ];
  await Excel.run(async ({ workbook }) => workbook.protection.protect());
  for (const action of actions) {
    const run = Excel.run(async ({ workbook }) => void action(workbook.worksheets));
    await expect(run).rejects.toMatchObject({ code: "AccessDenied" });
  }
  expect(host.grid.sheets.list().map(({ name }) => name)).toEqual(["Sheet1"]);
});

// The host's maintainers call it by design: OfficeDev/office-js, issue 2268.
test("a selected picture is no range", async () => {
  host.session.pictureSelected = true;
  const run = Excel.run(async ({ workbook }) => void workbook.getSelectedRange().load("address"));
  await expect(run).rejects.toMatchObject({ code: "InvalidSelection" });
});
