import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createHost, type HeadlessHost } from "../headlessHost";

let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost({
    office: {
      sheets: [
        { name: "Jobs", cells: { B2: "Bed", C2: 2026, D2: "Bed", B3: "Front walk", C3: 4, D3: "=C3*2" } },
        { name: "Other", cells: {} },
      ],
    },
  });
});
afterEach(() => host.dispose());

const onJobs = (work: (sheet: Excel.Worksheet, context: Excel.RequestContext) => void) =>
  Excel.run(async (context) => {
    work(context.workbook.worksheets.getItem("Jobs"), context);
    await context.sync();
  });
const addTable = () =>
  onJobs(({ tables }) => {
    const table = tables.add("B2:E4", true);
    table.name = "Job_rows";
    table.style = "TableStyleLight1";
  });

describe("a table", () => {
  test("has text for headings, each its own", async () => {
    await addTable();
    expect(host.values("B2:E4")).toEqual([
      ["Bed", "2026", "Bed2", "Column4"],
      ["Front walk", 4, 8, ""],
      ["", "", "", ""],
    ]);
  });

  test("tells its name, its style, and where its headings and its rows are", async () => {
    await addTable();
    await Excel.run(async (context) => {
      const { tables } = context.workbook;
      const table = tables.getItem("job_ROWS").load("id,name,style,showHeaders,showTotals");
      const ranges = [table.getRange(), table.getHeaderRowRange(), table.getDataBodyRange()];
      for (const range of ranges) range.load("address");
      const none = tables.getItemOrNullObject("Others");
      await context.sync();
      expect([table.name, table.style, table.showHeaders, table.showTotals]).toEqual([
        "Job_rows",
        "TableStyleLight1",
        true,
        false,
      ]);
      expect(ranges.map(({ address }) => address)).toEqual(["Jobs!B2:E4", "Jobs!B2:E2", "Jobs!B3:E4"]);
      expect(none.isNullObject).toBe(true);
      const byId = tables.getItem(table.id).load("name");
      await context.sync();
      expect(byId.name).toBe("Job_rows");
    });
  });

  test("turns into plain cells with all that is in them, or is deleted with them", async () => {
    await addTable();
    await onJobs(({ tables }) => tables.getItem("Job_rows").convertToRange());
    expect(host.grid.tables.list()).toEqual([]);
    expect(host.value("B3")).toBe("Front walk");
    await addTable();
    await onJobs(({ tables }) => tables.getItem("Job_rows").delete());
    expect(host.grid.tables.list()).toEqual([]);
    expect(host.value("B3")).toBe("");
  });

  test("goes with its cells, is kept over a reload, and is gone with its sheet", async () => {
    await addTable();
    host.grid.sheets.insertRows(host.grid.sheets.activeId(), 0, 2);
    const kept = host.save();
    host.dispose();
    host = await createHost({ kept });
    expect(host.grid.tables.list()).toMatchObject([
      { name: "Job_rows", style: "TableStyleLight1", area: { row: 3, column: 1, rowCount: 3, columnCount: 4 } },
    ]);
    await onJobs((sheet) => sheet.delete());
    expect(host.grid.tables.list()).toEqual([]);
  });

  test.each(["two words", "B2", "Waste", "Job_rows"])("takes no name like %j", async (name) => {
    await addTable();
    const run = onJobs((sheet, { workbook }) => {
      workbook.names.add("Waste", sheet.getRange("A1"));
      sheet.tables.add("B8:C9", true).name = name;
    });
    await expect(run).rejects.toMatchObject({ code: "InvalidArgument", debugInfo: { errorLocation: "Table.name" } });
  });

  test("keeps its name from cells", async () => {
    await addTable();
    const run = onJobs((sheet, { workbook }) => workbook.names.add("job_rows", sheet.getRange("A1")));
    await expect(run).rejects.toMatchObject({ code: "ItemAlreadyExists" });
  });

  test("is not made on a protected sheet", async () => {
    await onJobs(({ protection }) => protection.protect());
    await expect(addTable()).rejects.toMatchObject({ code: "AccessDenied" });
    expect(host.grid.tables.list()).toEqual([]);
  });
});

describe("the changes of all sheets", () => {
  test("are told in one place, also those of a sheet that is added later", async () => {
    const heard: Excel.WorksheetChangedEventArgs[] = [];
    const added = await Excel.run(async (context) => {
      const handler = context.workbook.worksheets.onChanged.add(async (args) => {
        heard.push(args);
      });
      await context.sync();
      return handler;
    });
    await Excel.run(async (context) => {
      context.workbook.worksheets.add("Rates").getRange("B2").values = [[38]];
      context.workbook.worksheets.getItem("Jobs").getRange("C3").values = [[5]];
      await context.sync();
    });
    await expect.poll(() => heard.map(({ address }) => address)).toEqual(["B2", "C3"]);
    await Excel.run(added.context as Excel.RequestContext, async (context) => {
      added.remove();
      await context.sync();
    });
    await host.type({ C3: 6 });
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(heard).toHaveLength(2);
  });
});

describe("a cell's properties", () => {
  test("carry borders, underline, indent and place, cell by cell", async () => {
    await onJobs((sheet) =>
      sheet.getRange("B2:C2").setCellProperties([
        [
          {
            format: {
              borders: { top: { color: "#336633" }, right: { style: "Double", color: "#112233" } },
              font: { underline: "Single" },
              indentLevel: 2,
              verticalAlignment: "Center",
            },
          },
          {},
        ],
      ]),
    );
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Jobs").getRange("B2:C2");
      const read = range.getCellProperties({
        format: {
          borders: { color: true, style: true },
          font: { underline: true },
          indentLevel: true,
          verticalAlignment: true,
        },
      });
      await context.sync();
      const none = { color: "#000000", style: "None" };
      expect(read.value[0]).toEqual([
        {
          format: {
            borders: {
              top: { color: "#336633", style: "Continuous" },
              right: { color: "#112233", style: "Double" },
              bottom: none,
              left: none,
            },
            font: { underline: "Single" },
            indentLevel: 2,
            verticalAlignment: "Center",
          },
        },
        expect.objectContaining({ format: expect.objectContaining({ font: { underline: "None" } }) }),
      ]);
    });
  });

  test("carry lines of every weight, letters struck out and turned, and locks, until the cells are cleared", async () => {
    const format: Excel.CellPropertiesFormat = {
      borders: { bottom: { style: "Double", weight: "Thick", color: "#112233" } },
      font: { strikethrough: true, underline: "Double" },
      protection: { locked: false },
      textOrientation: -45,
    };
    const asked = {
      borders: { color: true, style: true, weight: true },
      font: { strikethrough: true, underline: true },
      protection: true,
      textOrientation: true,
    };
    const read = async (address: string) => {
      let found: Excel.CellProperties[][] = [];
      await Excel.run(async (context) => {
        const cell = context.workbook.worksheets.getItem("Jobs").getRange(address);
        const properties = cell.getCellProperties({ format: asked });
        await context.sync();
        found = properties.value;
      });
      return found[0]![0]!.format!;
    };
    const plain = await read("B2");
    expect(plain).toMatchObject({ protection: { locked: true }, textOrientation: 0 });
    await onJobs((sheet) => sheet.getRange("B2").setCellProperties([[{ format }]]));
    expect(await read("B2")).toMatchObject(format);
    await onJobs((sheet) => {
      sheet.getRange("B2").values = [[5]];
      sheet.getRange("B2").clear("Contents");
      sheet.getRange("C2").copyFrom(sheet.getRange("B2"), "Formats");
    });
    expect(await read("B2")).toMatchObject(format);
    expect(await read("C2")).toMatchObject(format);
    await onJobs((sheet) => {
      sheet.getRange("B2").clear();
      sheet.getRange("C2").clear("Formats");
    });
    expect(await read("B2")).toEqual(plain);
    expect(await read("C2")).toEqual(plain);
  });

  test("leave borders alone that are not named, and take those away that are none", async () => {
    const set = (borders: Excel.CellBorderCollection) =>
      onJobs((sheet) => sheet.getRange("B2").setCellProperties([[{ format: { borders } }]]));
    await set({ top: { style: "Continuous", color: "#336633" }, left: { style: "Dash", color: "#336633" } });
    await set({ left: { style: "None" } });
    const { looks } = host.grid;
    const sheetId = host.grid.sheets.activeId();
    expect(looks.border(sheetId, 1, 1, "top").style).toBe("Continuous");
    expect(looks.border(sheetId, 1, 1, "left").style).toBe("None");
  });

  test("tell how wide columns are", async () => {
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Jobs").getRange("B2:C3");
      range.getColumn(1).format.columnWidth = 120;
      const read = range.getColumnProperties({ columnHidden: true, format: { columnWidth: true } });
      await context.sync();
      expect(read.value[1]).toEqual({ columnHidden: false, format: { columnWidth: 120 } });
    });
  });
});
