import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Plan } from "../../src/sheets/plan";
import type { Anchor } from "../../src/spreadsheet/areas";
import { insertPlan, insertPlans } from "../../src/workbook/change/insert";
import { lastInsert } from "../../src/workbook/change/receipt";
import { undoLastInsert } from "../../src/workbook/change/undo";
import { createHost, type HeadlessHost } from "../headlessHost";

/*
 * The one writer with every part that a plan can have: nothing of it may be left where a request fails, or when it is
 * undone.
 */

// The smallest PNG there is: one pixel (RFC 2083), square.
const PNG = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

/** Five rows by three columns: a merged title, a table, a named rate that a formula calls, and a picture. */
const plan = ({ row, column }: Anchor, stem = "Rate"): Plan => {
  const blank = ["", "", ""];
  return {
    title: "full plan",
    rows: 5,
    columns: 3,
    formulas: [
      ["Rates", "", ""],
      ["Item", "Price", "Note"],
      ["Stone", 38, ""],
      ["Twice", `=${stem}_stone*2`, ""],
      blank,
    ],
    formats: Array.from({ length: 5 }, (_, index) => ["General", index > 1 ? "#,##0.00" : "General", "General"]),
    looks: [{ area: { row: 0, column: 0, rows: 1, columns: 3 }, look: "title" }],
    widths: [20, 12, 4],
    warnings: [{ area: { row: 2, column: 1, rows: 1, columns: 1 }, when: `=${"ABC"[column] ?? "B"}${row + 3}<0` }],
    choices: [{ area: { row: 2, column: 0, rows: 1, columns: 1 }, names: ["Stone", "Gravel"] }],
    names: [
      { name: `${stem}_stone`, area: { row: 2, column: 1, rows: 1, columns: 1 } },
      { name: `${stem}_twice`, area: { row: 3, column: 1, rows: 1, columns: 1 } },
    ],
    table: { name: `${stem}_list`, area: { row: 1, column: 0, rows: 3, columns: 3 } },
    dress: [
      [],
      [{ underline: true, rules: { bottom: "#24413A" } }],
      [undefined, { fill: "#FBF0D9", align: "Center", size: 14, font: "Georgia" }],
    ],
    merged: [{ row: 0, column: 0, rows: 1, columns: 3 }],
    pictures: [{ area: { row: 4, column: 1, rows: 1, columns: 1 }, png: PNG, altText: "A dot" }],
    page: {
      paper: "a4",
      landscape: true,
      pagesWide: 1,
      headingRows: 2,
      breaksAbove: [3],
      marginsIn: { top: 0.5, bottom: 0.5, left: 0.4, right: 0.4 },
      footer: "Page &P of &N",
    },
  };
};
const papers = [
  { name: "Order", plan: plan({ row: 0, column: 0 }, "Order") },
  { name: "Crew sheet", plan: plan({ row: 0, column: 0 }, "Crew") },
];

let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost({
    office: {
      sheets: [
        {
          name: "Jobs",
          cells: { A1: "mine", H1: "=Rate_stone" },
          // A formula without a format takes that of the cell it reads, so this one has its own.
          looks: [
            { range: "H1", numberFormat: "0.0" },
            { range: "D4:E4", fill: "#EEF3E6", bold: true, underline: true, indent: 1, numberFormat: "0.0" },
          ],
        },
      ],
    },
  });
  await onJobs((sheet) => {
    const border = sheet.getRange("D5").format.borders.getItem("EdgeLeft");
    border.style = "Continuous";
    border.color = "#112233";
    sheet.shapes.addImage(PNG).name = "Mine";
    sheet.getRange("D4").select();
  });
});
afterEach(() => host.dispose());

const onJobs = (work: (sheet: Excel.Worksheet, context: Excel.RequestContext) => void) =>
  Excel.run(async (context) => {
    work(context.workbook.worksheets.getItem("Jobs"), context);
    await context.sync();
  });

/** Everything of the workbook that a write could leave something in. */
async function everything() {
  const { grid } = host;
  const sheets = grid.sheets.list();
  const id = sheets.find(({ name }) => name === "Jobs")!.id;
  const area = { sheetId: id, row: 0, column: 0, rowCount: 14, columnCount: 12 };
  const each = <T>(read: (row: number, column: number) => T) =>
    Array.from({ length: area.rowCount }, (_, row) =>
      Array.from({ length: area.columnCount }, (__, column) => read(row, column)),
    );
  return {
    sheets: sheets.map(({ name }) => name),
    cells: grid.cells.read(area),
    looks: each((row, column) => grid.looks.read(id, row, column)),
    borders: each((row, column) => [
      grid.looks.border(id, row, column, "left"),
      grid.looks.border(id, row, column, "bottom"),
    ]),
    widths: each((_, column) => grid.looks.columnWidth(id, column))[0],
    merged: grid.cells.merged(id),
    rules: grid.rules.shadings(area),
    lists: grid.rules.lists(area),
    pictures: grid.pictures.list(id),
    names: grid.names.list(),
    tables: grid.tables.list(),
    pages: sheets.map((sheet) => grid.pages.get(sheet.id)),
  };
}

/** A formula that reads a name from elsewhere would keep it where it is. */
const nobodyReads = () => host.type({ "Jobs!H1": "" });

const sheetId = (wanted: string) => host.grid.sheets.list().find(({ name }) => name === wanted)!.id;

describe("a plan with all parts", () => {
  test("is written at a cell in three syncs", async () => {
    const before = host.syncCount;
    expect(await insertPlan(plan, { kind: "selection" })).toMatchObject({ done: true, address: "D4:F8" });
    expect(host.syncCount - before).toBe(3);
    const id = sheetId("Jobs");
    const { grid } = host;
    expect(host.values("D4:F7")).toEqual([
      ["Rates", "", ""],
      ["Item", "Price", "Note"],
      ["Stone", 38, ""],
      ["Twice", 76, ""],
    ]);
    // A formula that called the name before it was there.
    expect(host.value("H1")).toBe(38);
    expect(grid.names.list().map(({ name, formula }) => [name, formula])).toEqual([
      ["Rate_stone", "=Jobs!$E$6"],
      ["Rate_twice", "=Jobs!$E$7"],
    ]);
    expect(grid.tables.list()).toMatchObject([
      { name: "Rate_list", area: { row: 4, column: 3, rowCount: 3, columnCount: 3 } },
    ]);
    expect(grid.cells.merged(id)).toMatchObject([{ row: 3, column: 3, rowCount: 1, columnCount: 3 }]);
    expect(grid.looks.read(id, 5, 4)).toMatchObject({
      fill: "#FBF0D9",
      horizontal: "Center",
      fontSize: 14,
      fontName: "Georgia",
    });
    expect(grid.looks.read(id, 4, 3).underline).toBe(true);
    expect(grid.looks.border(id, 4, 3, "bottom")).toMatchObject({ style: "Continuous", color: "#24413A" });
    // The sheet is not its own, so that it is printed as before.
    expect(grid.pages.get(id).orientation).toBe("Portrait");
  });

  test("has its picture over its cells, as large as fits", async () => {
    await insertPlan(plan, { kind: "selection" });
    const [, picture] = host.grid.pictures.list(sheetId("Jobs"));
    await Excel.run(async (context) => {
      const cell = context.workbook.worksheets.getItem("Jobs").getRange("E8").load("left,top,width,height");
      await context.sync();
      expect(cell.width).toBeGreaterThan(cell.height);
      expect(picture).toMatchObject({ altText: "A dot", left: cell.left, top: cell.top });
      expect([picture!.width, picture!.height]).toEqual([cell.height, cell.height]);
    });
  });

  test("is set up for printing on a sheet of its own", async () => {
    const before = host.syncCount;
    expect(await insertPlan(plan, { kind: "new sheet", name: "Rates" })).toMatchObject({
      done: true,
      sheetName: "Rates",
    });
    expect(host.syncCount - before).toBe(3);
    const id = sheetId("Rates");
    expect(host.grid.pages.get(id)).toMatchObject({
      orientation: "Landscape",
      paperSize: "A4",
      zoom: { horizontalFitToPages: 1 },
      // Half an inch and four tenths, in points.
      margins: { top: 36, bottom: 36, left: 28.8, right: 28.8 },
      printArea: { sheetId: id, row: 0, column: 0, rowCount: 5, columnCount: 3 },
      titleRows: { row: 0, rowCount: 2 },
      breaksAbove: [3],
      texts: { centerFooter: "Page &P of &N" },
    });
    expect(host.grid.pictures.list(id)).toHaveLength(1);
  });

  test.each([
    [
      "a name of the workbook",
      () => onJobs((sheet, { workbook }) => workbook.names.add("rate_STONE", sheet.getRange("A1"))),
    ],
    [
      "a table's name",
      () =>
        onJobs(({ tables }) => {
          tables.add("A10:B11", true).name = "rate_STONE";
        }),
    ],
  ])("writes nothing where %s is in the way, wherever it is put", async (_, occupy) => {
    await occupy();
    const before = await everything();
    const inserted = await insertPlan(plan, { kind: "selection" });
    expect(inserted).toMatchObject({
      done: false,
      inTheWay: { obstacles: [{ what: "name", where: expect.stringMatching(/^rate_STONE \(/) }] },
    });
    expect(inserted.done || inserted.inTheWay.nearestFree).toBeUndefined();
    expect(await insertPlan(plan, { kind: "new sheet", name: "Rates" })).toMatchObject({
      done: false,
      inTheWay: { sheetName: "Rates", obstacles: [{ what: "name" }] },
    });
    expect(await everything()).toEqual(before);
  });

  test("takes another name for its table where that one is taken", async () => {
    await onJobs(({ tables }) => {
      tables.add("A10:B11", true).name = "Rate_list";
    });
    await insertPlan(plan, { kind: "selection" });
    expect(host.grid.tables.list().map(({ name }) => name)).toEqual(["Rate_list", "Rate_list2"]);
  });

  test("is undone with all that came with it, also after a reload", async () => {
    await nobodyReads();
    const before = await everything();
    await insertPlan(plan, { kind: "selection" });
    const kept = host.save();
    host.dispose();
    host = await createHost({ kept });
    expect(await undoLastInsert()).toEqual({ title: "full plan", where: "Jobs D4:F8" });
    expect(await everything()).toEqual(before);
  });

  test.each([
    ["one of its names", "=Rate_stone*2", { kind: "selection" as const }],
    ["its sheet", "=SUM(Rates!B3:B4)", { kind: "new sheet" as const, name: "Rates" }],
  ])("stays where a formula elsewhere reads %s, and the cell is named", async (_, formula, place) => {
    await nobodyReads();
    await insertPlan(plan, place);
    await host.type({ "Jobs!B1": formula });
    const before = await everything();
    await expect(undoLastInsert()).rejects.toThrow(
      "Formulas elsewhere read cells of the full plan (Jobs!B1) and would show errors without them, so nothing was undone. Change or delete those formulas first, then undo again.",
    );
    expect(await everything()).toEqual(before);
    await host.type({ "Jobs!B1": "" });
    await undoLastInsert();
    expect(host.grid.names.list()).toEqual([]);
  });

  test.each([
    ["a chart", () => host.session.chartedSheets],
    ["a comment", () => host.session.commentedSheets],
  ])("leaves its sheet where someone has put %s on it", async (_, sheets) => {
    await nobodyReads();
    await insertPlan(plan, { kind: "new sheet", name: "Rates" });
    sheets().add(sheetId("Rates"));
    await undoLastInsert();
    expect(host.grid.sheets.list().map(({ name }) => name)).toEqual(["Jobs", "Rates"]);
    expect(host.values("Rates!A1:C5").flat().join("")).toBe("");
  });

  test("is only emptied where its sheet is the last one that shows", async () => {
    await insertPlan(plan, { kind: "new sheet", name: "Rates" });
    host.grid.sheets.remove(sheetId("Jobs"));
    expect(await undoLastInsert()).toMatchObject({ where: "Rates A1:C5" });
    expect(host.grid.sheets.list().map(({ name }) => name)).toEqual(["Rates"]);
    expect(host.values("Rates!A1:C5").flat().join("")).toBe("");
    expect([host.grid.names.list(), host.grid.tables.list()]).toEqual([[], []]);
  });

  test.each([3, 4])("takes nothing with it that somebody types right before request %i", async (request) => {
    await insertPlan(plan, { kind: "selection" });
    await nobodyReads();
    const before = await everything();
    host.session.beforeSync(request, () => host.type({ "Jobs!E6": "31 (measured again)" }));
    if (request === 3) {
      await expect(undoLastInsert()).rejects.toThrow("were changed or moved since (E6), so nothing was undone");
      await host.type({ "Jobs!E6": 38 });
      expect(await everything()).toEqual(before);
    } else {
      await undoLastInsert();
      expect(host.value("Jobs!E6")).toBe("31 (measured again)");
    }
  });

  test("stays whole where rows are put in above it right before it would be emptied", async () => {
    await nobodyReads();
    await insertPlan(plan, { kind: "selection" });
    const move = async () => {
      const moved = host.values("Jobs!D4:F8");
      host.grid.cells.clear({ sheetId: sheetId("Jobs"), row: 3, column: 3, rowCount: 2, columnCount: 3 }, "contents");
      await host.type(
        Object.fromEntries(
          moved.flatMap((cells, row) => cells.map((cell, column) => [`Jobs!${"DEF"[column]}${row + 6}`, cell])),
        ),
      );
    };
    host.session.beforeSync(3, move);
    await expect(undoLastInsert()).rejects.toThrow("were changed or moved since");
    expect(host.values("Jobs!D6:F9").flat()).toEqual(expect.arrayContaining(["Rates", "Item", "Stone", "Twice"]));
  });

  test("keeps its sheet where someone types beside it right before it would go", async () => {
    await nobodyReads();
    await insertPlan(plan, { kind: "new sheet", name: "Rates" });
    host.session.beforeSync(3, () => host.type({ "Rates!A60": "mine" }));
    await expect(undoLastInsert()).rejects.toThrow(
      "Someone else just added something to the sheet “Rates”, so it stays.",
    );
    expect([host.value("Rates!A60"), host.value("Rates!A1")]).toEqual(["mine", "Rates"]);
  });

  test("is undone with its sheet", async () => {
    await nobodyReads();
    const before = await everything();
    await insertPlan(plan, { kind: "new sheet", name: "Rates" });
    await undoLastInsert();
    expect(await everything()).toEqual(before);
  });

  test("is undone as a whole where the first tries fail", async () => {
    await nobodyReads();
    const before = await everything();
    for (const afterOperations of [0, 1, 2, 4, 6, 9, 12]) {
      await insertPlan(plan, { kind: "selection" });
      host.failAtSync(3, afterOperations);
      host.failAtSync(5);
      await undoLastInsert();
      expect(await everything()).toEqual(before);
    }
  });
});

describe("a first request that fails", () => {
  const typeB3 = () => host.type({ "Jobs!E5": "mine too" });

  test("before it began leaves what someone else typed there meanwhile", async () => {
    const before = await everything();
    host.session.beforeSync(2, typeB3);
    host.failAtSync(2, 0);
    await expect(insertPlan(plan, { kind: "selection" })).rejects.toThrow("Nothing was changed.");
    expect(host.value("Jobs!E5")).toBe("mine too");
    await host.type({ "Jobs!E5": "" });
    expect(await everything()).toEqual(before);
  });

  test.each([2, 3, 5, 9, 40])("after %i changes leaves what was typed right after it", async (afterOperations) => {
    const before = await everything();
    host.failAtSync(2, afterOperations);
    host.session.beforeSync(3, typeB3);
    await expect(insertPlan(plan, { kind: "selection" })).rejects.toThrow("Nothing was changed.");
    expect(host.value("Jobs!E5")).toBe("mine too");
    await host.type({ "Jobs!E5": "" });
    expect(await everything()).toEqual(before);
  });

  test("is no reason to delete a name that another pane has made", async () => {
    host.session.beforeSync(3, () => host.grid.names.add("Rate_stone", "=Jobs!$A$1"));
    host.failAtSync(2, 0);
    await expect(insertPlan(plan, { kind: "new sheet", name: "Rates" })).rejects.toThrow("Nothing was changed.");
    expect(host.grid.names.list().map(({ name }) => name)).toEqual(["Rate_stone"]);
  });

  test("is taken off also where one of its names was given to a whole column", async () => {
    await insertPlan(plan, { kind: "new sheet", name: "Rates" });
    await nobodyReads();
    await Excel.run(async (context) => {
      const { names, worksheets } = context.workbook;
      names.getItem("Rate_twice").delete();
      names.add("Rate_twice", worksheets.getItem("Rates").getRange("B:B"));
      await context.sync();
    });
    await undoLastInsert();
    expect(host.grid.names.list().map(({ name }) => name)).toEqual(["Rate_twice"]);
    expect(host.grid.sheets.list().map(({ name }) => name)).toEqual(["Jobs"]);
  });
});

describe("several plans at once", () => {
  test("are on sheets of their own after three syncs, and are undone together", async () => {
    const before = await everything();
    const syncs = host.syncCount;
    expect(await insertPlans("papers for Front walk", papers)).toEqual({
      done: true,
      id: expect.any(String),
      title: "papers for Front walk",
      sheets: [
        { sheetName: "Order", address: "A1:C5" },
        { sheetName: "Crew sheet", address: "A1:C5" },
      ],
    });
    expect(host.syncCount - syncs).toBe(3);
    expect(host.value("'Crew sheet'!B4")).toBe(76);
    expect(host.grid.sheets.activeId()).toBe(sheetId("Order"));
    expect(await undoLastInsert()).toEqual({
      title: "papers for Front walk",
      where: "Order A1:C5, Crew sheet A1:C5",
    });
    expect(await everything()).toEqual(before);
  });

  test("get numbers where their sheets' names are taken, by each other, too", async () => {
    const bare = { ...papers[0]!.plan, names: [] };
    const inserted = await insertPlans("papers", [
      { name: "Jobs", plan: bare },
      { name: "jobs", plan: bare },
    ]);
    expect(inserted).toMatchObject({ sheets: [{ sheetName: "Jobs 2" }, { sheetName: "jobs 3" }] });
    expect(host.grid.tables.list().map(({ name }) => name)).toEqual(["Order_list", "Order_list2"]);
  });

  test("stay, all of them, where one has been changed, and the cell is named with its sheet", async () => {
    await insertPlans("papers", papers);
    await host.type({ "'Crew sheet'!B3": 40 });
    await expect(undoLastInsert()).rejects.toThrow(/\(Crew sheet!B3\)/);
    expect(host.grid.sheets.list()).toHaveLength(3);
  });

  test("are undone as far as they are there", async () => {
    await insertPlans("papers", papers);
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Crew sheet").delete();
      await context.sync();
    });
    expect(await undoLastInsert()).toEqual({ title: "papers", where: "Order A1:C5" });
    expect(host.grid.sheets.list().map(({ name }) => name)).toEqual(["Jobs"]);
    expect(host.grid.names.list()).toEqual([]);
  });

  test("are not written where a name of one is in the way", async () => {
    await onJobs((sheet, { workbook }) => workbook.names.add("Crew_stone", sheet.getRange("A1")));
    expect(await insertPlans("papers", papers)).toEqual({
      done: false,
      obstacles: [{ what: "name", where: "Crew_stone (Jobs!$A$1)" }],
    });
    expect(host.grid.sheets.list()).toHaveLength(1);
  });
});

describe("a request that fails leaves the workbook as it was", () => {
  const actions = [
    ["at a cell", () => insertPlan(plan, { kind: "selection" }), 60],
    ["on a new sheet", () => insertPlan(plan, { kind: "new sheet", name: "Fresh" }), 70],
    ["on several sheets", () => insertPlans("papers", papers), 140],
  ] as const;

  test.each(actions)(
    "%s, at whatever sync, after whatever changes",
    async (_, action, most) => {
      const before = await everything();
      // The first changes of a sync, and places spread over the others.
      const after = [0, 1, 2, 3, ...Array.from({ length: 8 }, (__, step) => Math.round(((step + 1) * most) / 8))];
      let failed = 0;
      for (const [sync, changes] of [
        [1, 0] as const,
        ...after.map((n) => [2, n] as const),
        ...[0, 1, 3, 6, 7].map((n) => [3, n] as const),
      ]) {
        host.failAtSync(sync, changes);
        await expect(action()).rejects.toThrow(/Try again/);
        failed += 1;
        expect(await everything(), `at sync ${sync} after ${changes} changes`).toEqual(before);
        expect(await lastInsert()).toBeUndefined();
      }
      expect(failed).toBe(after.length + 6);
    },
    120_000,
  );
});
