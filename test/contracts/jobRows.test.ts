import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { estimateBed } from "../../src/quantities/bed/estimate";
import { blankForm } from "../../src/quantities/bed/form";
import { rateKeys } from "../../src/quantities/bed/rates";
import { readForm } from "../../src/quantities/bed/read";
import { EDGING_KINDS } from "../../src/quantities/edgingKinds";
import { must } from "../../src/quantities/must";
import { STONES } from "../../src/quantities/stone";
import type { Filling, FillOptions } from "../../src/sheets/jobRows/fill";
import { fitList, type ListFit } from "../../src/sheets/jobRows/fit";
import { moreRoles, moreRolesOf, newList } from "../../src/sheets/jobRows/newList";
import { productNames } from "../../src/sheets/jobRows/products";
import { isResult, type ResultRole, roleLabel } from "../../src/sheets/jobRows/roles";
import { usualAssumed } from "../../src/sheets/jobRows/setting";
import { offeredResults } from "../../src/sheets/jobRows/wanted";
import { ratesSheet } from "../../src/sheets/rates/ratesSheet";
import { undoChanges } from "../../src/workbook/change/cells";
import { insertPlan } from "../../src/workbook/change/insert";
import { undoLastInsert } from "../../src/workbook/change/undo";
import { readListSheet, writeRows } from "../../src/workbook/jobRows";
import { readRates } from "../../src/workbook/read/rates";
import type { HeadlessHost } from "../headlessHost";
import { fillOf, officeOf, type Rows } from "../listSheets";
import { createProductHost } from "../productHost";
import { resultsOf } from "../resultsOf";

const ROWS: Rows = [
  ["Job", "Bed", "Length (ft)", "Width (ft)", "Depth (in)", "Stone", "Waste", "Tons"],
  ["Elm Row 3", "Front", 20, 4, 2.5, "river rock", 0.08, ""],
  ["Elm Row 3", "Side", 20, 4, 2.5, "river rock", 0.08, "6-8"],
  [],
  ["Elm Row 3", "Back", "20'", 4, 2.5, "river rock", 0.08, 0.7],
  ["Total", "", "", "", "", "", "", "=SUM(H2:H5)"],
];

let host: HeadlessHost;
beforeEach(async () => {
  host = await createProductHost(officeOf(ROWS));
});
afterEach(() => host.dispose());

const onSheet = <T>(action: (sheet: Excel.Worksheet, context: Excel.RequestContext) => T) =>
  Excel.run(async (context) => {
    action(context.workbook.worksheets.getItem("List"), context);
    await context.sync();
  });

async function fitted(): Promise<ListFit> {
  const { sheet, selection } = await readListSheet();
  const fit = fitList(sheet, selection);
  if (!fit) throw new Error("No heading row was found.");
  return fit;
}

async function proposed(options: Partial<FillOptions> = {}): Promise<{ fit: ListFit; filling: Filling }> {
  const fit = await fitted();
  return { fit, filling: fillOf(fit, { results: ["tons", "area"], ...options }) };
}

const WRITE_OVER = { replace: new Set<ResultRole>(["tons"]) };

/** Everything of the list that a write could spoil. */
const everything = () =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("List").getRange("A1:L9");
    range.load("formulas,numberFormat,valueTypes");
    const looks = range.getCellProperties({ format: { fill: { color: true }, font: { bold: true } } });
    const columns = range.getColumnProperties({ format: { columnWidth: true } });
    await context.sync();
    const widths = columns.value.map(({ format }) => format?.columnWidth);
    return [range.formulas, range.numberFormat, range.valueTypes, looks.value, widths] as const;
  });

describe("cells with contents of a list", () => {
  test("are left as they are, and shown before and after", async () => {
    const { fit, filling } = await proposed();
    expect(filling.columns.map(({ role, written, same, clashes }) => [role, written, same, clashes])).toEqual([
      [
        "tons",
        1,
        0,
        [
          { address: "H3", before: "6-8", after: "=BED.STONE_TONS(I3,E3,F3,G3)" },
          { address: "H5", before: 0.7, after: "=BED.STONE_TONS(I5,E5,F5,G5)" },
        ],
      ],
      ["area", 3, 0, []],
    ]);
    await writeRows(fit, filling.changes);
    expect([host.value("H2"), host.value("H3"), host.value("H5")]).toEqual([expect.closeTo(0.9, 9), "6-8", 0.7]);
  });

  test("are written over where that was ticked, and come back as they were, text that looks like a date, too", async () => {
    const before = await everything();
    const { fit, filling } = await proposed(WRITE_OVER);
    const written = await writeRows(fit, filling.changes);
    expect(host.values("H2:I5")).toEqual([
      [expect.closeTo(0.9, 9), 80],
      [expect.closeTo(0.9, 9), 80],
      ["", ""],
      [expect.closeTo(0.9, 9), 80],
    ]);
    expect(host.value("H6")).toBeCloseTo(2.7, 9);
    await undoChanges(written);
    expect(await everything()).toEqual(before);
  });

  test("give a new column its width back, unless someone has set another since", async () => {
    const width = (column: number) => host.grid.looks.columnWidth(host.grid.sheets.activeId(), column);
    const setWidth = (points: number) =>
      onSheet((sheet) => {
        sheet.getRange("I1").format.columnWidth = points;
      });
    const written = async () => {
      const { fit, filling } = await proposed(WRITE_OVER);
      return writeRows(fit, filling.changes);
    };
    await setWidth(24);
    const narrow = width(8);
    const first = await written();
    expect(width(8)).toBeGreaterThan(narrow);
    await undoChanges(first);
    expect(width(8)).toBe(narrow);
    const second = await written();
    await setWidth(210);
    await undoChanges(second);
    expect(width(8)).toBe(210);
  });

  test("are not undone over what was typed since", async () => {
    const { fit, filling } = await proposed(WRITE_OVER);
    const written = await writeRows(fit, filling.changes);
    await host.type({ H5: 1.2 });
    await expect(undoChanges(written)).rejects.toThrow(/List!H5 was just changed/);
    expect([host.value("H5"), host.value("I2")]).toEqual([1.2, 80]);
  });

  test("keep a number format of their own; others get one, and a format for text is none", async () => {
    await onSheet((sheet) => {
      sheet.getRange("H2").numberFormat = [["0.000"]];
      sheet.getRange("H5").numberFormat = [["@"]];
    });
    const { fit, filling } = await proposed(WRITE_OVER);
    await writeRows(fit, filling.changes);
    const [, formats] = await everything();
    expect([1, 2, 4].map((row) => formats[row]?.[7])).toEqual(["0.000", "#,##0.00", "#,##0.00"]);
    expect(host.value("H5")).toBeCloseTo(0.9, 9);
  });
});

describe("a write into a list", () => {
  test.each([[1, 0] as const, ...[0, 2, 3, 4, 5, 7, 9, 12].map((after) => [2, after] as const)])(
    "leaves the workbook as it was when sync %i fails after %i operations",
    async (sync, after) => {
      const before = await everything();
      const { fit, filling } = await proposed(WRITE_OVER);
      host.failAtSync(sync, after);
      await expect(writeRows(fit, filling.changes)).rejects.toThrow();
      expect(await everything()).toEqual(before);
    },
  );

  test.each([[1, 0] as const, ...[0, 3, 5, 8, 20].map((after) => [2, after] as const)])(
    "stands whole when sync %i of its taking back fails after %i operations",
    async (sync, after) => {
      const before = await everything();
      const { fit, filling } = await proposed(WRITE_OVER);
      const written = await writeRows(fit, filling.changes);
      const standing = await everything();
      host.failAtSync(sync, after);
      await expect(undoChanges(written)).rejects.toThrow();
      expect(await everything()).toEqual(standing);
      await undoChanges(written);
      expect(await everything()).toEqual(before);
    },
  );

  test("gives new headings the look of the others, and takes it off again", async () => {
    await onSheet((sheet) => {
      sheet.getRange("A1:H1").format.fill.color = "#DCE7E1";
      sheet.getRange("A1:H1").format.font.bold = true;
    });
    const before = await everything();
    const { fit, filling } = await proposed({ results: ["area", "border"] });
    const written = await writeRows(fit, filling.changes);
    const [, , , looks, widths] = await everything();
    const look = looks[0]?.[7];
    expect(look).toMatchObject({ format: { fill: { color: "#DCE7E1" }, font: { bold: true } } });
    expect(looks[0]?.slice(8, 10)).toEqual([look, look]);
    expect(looks[1]?.[8]).toEqual(looks[1]?.[11]);
    expect(Number(widths[8])).toBeGreaterThan(Number(widths[11]));
    await undoChanges(written);
    expect(await everything()).toEqual(before);
  });

  test.each([
    ["a heading", { C1: "Width (ft)" }, "C1"],
    ["a measurement", { D3: 5 }, "D3"],
    ["a cell that was blank", { I2: "mine" }, "I2"],
    ["the cell to be written", { H2: 1 }, "H2"],
  ])("is refused where %s was changed meanwhile", async (_, typed, address) => {
    const { fit, filling } = await proposed();
    await host.type(typed);
    const before = await everything();
    await expect(writeRows(fit, filling.changes)).rejects.toThrow(`List!${address} was just changed`);
    expect(await everything()).toEqual(before);
  });

  test("is refused where the sheet was protected, before it is read and after", async () => {
    const { fit, filling } = await proposed();
    await onSheet((sheet) => sheet.protection.protect());
    const before = await everything();
    await expect(writeRows(fit, filling.changes)).rejects.toThrow(/protected/);
    expect(await everything()).toEqual(before);
    await expect(readListSheet()).rejects.toThrow("The sheet “List” is protected");
  });

  test("is refused in words where the sheet is gone", async () => {
    const { fit, filling } = await proposed();
    await onSheet((sheet, context) => {
      context.workbook.worksheets.add("Other");
      sheet.delete();
    });
    await expect(writeRows(fit, filling.changes)).rejects.toThrow(/is gone/);
  });

  test("says which rows are hidden, and fills them, too", async () => {
    await onSheet((sheet) => {
      sheet.getRange("A3:A3").rowHidden = true;
    });
    const { filling } = await proposed();
    expect(filling.beds.filter(({ hidden }) => hidden).map(({ row }) => row)).toEqual([2]);
    expect(filling.assumes).toContain("1 of the rows is hidden or filtered, and filled in too.");
    expect(filling.changes.some(({ row, column }) => row === 2 && column === 8)).toBe(true);
  });

  test("skips rows in which merged cells are in the way", async () => {
    await onSheet((sheet) => sheet.getRange("H5:I5").merge());
    const { filling } = await proposed(WRITE_OVER);
    expect(filling.skipped.find(({ row }) => row === 4)?.why).toBe("merged cells are in the way");
    expect(filling.changes.every(({ row }) => row !== 4)).toBe(true);
  });

  test("keeps off what is to the right of the list", async () => {
    await onSheet((sheet) => {
      sheet.getRange("K2:L3").formulas = [
        ["Roll", 64],
        ["Pins", 18],
      ];
    });
    const { filling } = await proposed({ results: ["area", "border", "order"] });
    expect(filling.columns.map(({ column }) => column)).toEqual([13, 14, 15]);
    const { filling: one } = await proposed({ results: ["area"] });
    expect(one.columns.map(({ column }) => column)).toEqual([8]);
  });
});

test("a list down to the last row and across to the last column is filled, and no column is added behind it", async () => {
  const width = 4;
  const [row, column] = [1_048_576 - 3, 16_384 - width];
  await onSheet((sheet) => {
    const range = sheet.getRangeByIndexes(row, column, 3, width);
    range.formulas = [
      ["Bed", "Length, ft", "Width, ft", "Area"],
      ["a", 20, 4, ""],
      ["b", 10, 4, ""],
    ];
    range.select();
    sheet.getRange("A1:H6").clear();
  });
  const { fit, filling } = await proposed({ results: ["area"] });
  await writeRows(fit, filling.changes);
  expect(host.values("XFD1048575:XFD1048576")).toEqual([[80], [40]]);
  expect(fillOf(fit, { results: ["area", "pins"] })).toMatchObject({
    changes: [],
    troubles: ["There's no room for new columns on this sheet."],
  });
});

test("thousands of rows are read and written in two syncs each", async () => {
  const beds = 3000;
  await onSheet((sheet) => {
    const rows = Array.from({ length: beds }, (_, index) => [
      "Job",
      `Bed ${index}`,
      20,
      4,
      2.5,
      "river rock",
      0.08,
      "",
    ]);
    sheet.getRangeByIndexes(1, 0, beds, 8).formulas = rows;
  });
  const start = host.syncCount;
  const fit = await fitted();
  expect(host.syncCount - start).toBe(2);
  const filling = fillOf(fit, { results: ["tons", "area", "order"] });
  expect(filling.changes).toHaveLength(3 * beds + 2);
  const written = await writeRows(fit, filling.changes);
  expect(host.syncCount - start).toBe(4);
  expect(host.value(`H${beds + 1}`)).toBeCloseTo(0.9, 9);
  await undoChanges(written);
  expect(host.syncCount - start).toBe(6);
  expect(host.value("H2")).toBe("");
}, 60_000);

const FIRST = { job: "=cmd", bed: "1/2 left", length: `18' 6"`, width: "5" };
const RATES = new Set(rateKeys);

describe("a new list", () => {
  const options = {
    first: FIRST,
    assumed: usualAssumed,
    results: offeredResults,
    rates: RATES,
    weighsStone: false,
    // More than a cell can offer.
    stones: STONES.map(({ name }) => name),
  };

  test("comes to the price that the estimate of the same bed has, from the same rates", async () => {
    await insertPlan(ratesSheet, { kind: "new sheet", name: "Rates" });
    const inserted = await insertPlan((at) => newList({ ...options, stonesHaveUnits: true }, at), {
      kind: "new sheet",
      name: "Beds",
    });
    expect(inserted).toMatchObject({ done: true, sheetName: "Beds" });
    const { values } = await listOn("Beds");
    const reading = readForm({ ...blankForm(), typed: { length: `18' 6"`, width: "5" } });
    if (!reading.bed) throw new Error("the form was to be read");
    const estimate = estimateBed(reading.bed);
    const { amounts, price, minimumApplies } = estimate;
    expect(minimumApplies).toBe(false);
    const expected: Readonly<Partial<Record<ResultRole, number>>> = {
      ...resultsOf(estimate),
      yards: amounts.stoneYards,
      density: amounts.stoneDensity,
      sand: 0,
      orderSold: amounts.stoneOrder,
      soldPrice: 62,
      stonePrice: 62,
      price,
    };
    offeredResults.forEach((role, index) => {
      expect(values[1]?.[9 + index], roleLabel(role)).toBeCloseTo(must(expected[role]), 6);
    });
    // What was typed is text and nothing else.
    expect(values[1]?.slice(0, 3)).toEqual(["=cmd", "1/2 left", `18' 6"`]);
  });

  test.each([
    ["is blank", ""],
    ["is text", "ask"],
    ["is under 0", -5],
  ])("says so in words where a rate %s, and never gives a wrong price", async (_, content) => {
    await insertPlan(ratesSheet, { kind: "new sheet", name: "Rates" });
    await insertPlan((at) => newList({ ...options, stonesHaveUnits: true }, at), { kind: "new sheet", name: "Beds" });
    const column = (role: ResultRole) => 9 + offeredResults.indexOf(role);
    for (const [name, role] of [
      ["Rate_fabric_roll", "materialCost"],
      ["Rate_crew_hour", "laborCost"],
      ["Rate_dump_fee", "haulingCost"],
      ["Rate_overhead", "price"],
      ["Rate_edging_feet", "hours"],
      ["Rate_stone_prices", "stonePrice"],
    ] as const) {
      const before = await setName(name, content);
      const { values } = await listOn("Beds");
      const found = values[1]?.[column(role)];
      expect(found, name).toBe("no rate");
      expect(values[1]?.[column("price")], name).not.toEqual(expect.any(Number));
      await setName(name, before);
    }
    await setName("Rate_waste", content);
    const { values } = await listOn("Beds");
    expect(values[1]?.[column("tons")]).toBe("#VALUE!");
  });

  test("takes the weight of stone that the office has weighed, in a column of its own", async () => {
    await insertPlan(ratesSheet, { kind: "new sheet", name: "Rates" });
    expect(await setName("Rate_stone_kinds", "river rock")).toBe("river rock");
    await setName("Rate_stone_weights", 1.5);
    await onSheet((sheet) => sheet.getRange("A2").select());
    const { fit, filling } = await proposed({ results: ["tons"], ...WRITE_OVER });
    expect(filling.columns.map(({ role, isAdded }) => [role, isAdded])).toEqual([
      ["density", true],
      ["tons", false],
    ]);
    await writeRows(fit, filling.changes);
    // 80 sq ft × 2.5 in ÷ 324 × 1.5 tons a cu yd × 1.08 = 1 ton.
    expect(host.values("H2:I2")).toEqual([[expect.closeTo(1, 9), 1.5]]);
  });

  test("has columns for what differs by bed where they are wanted, and reads back by their headings", async () => {
    await insertPlan(ratesSheet, { kind: "new sheet", name: "Rates" });
    const { rates } = must(await readRates());
    const products = productNames(rates);
    expect(moreRolesOf(products)).toEqual(moreRoles);
    // Without the office's lists there is no product to name.
    expect(moreRolesOf()).toEqual(["soldBy", "edgingKind"]);
    const wanted: readonly ResultRole[] = [
      "area",
      "pieces",
      "stakes",
      "sand",
      "orderSold",
      "rolls",
      "dig",
      "materialCost",
    ];
    const own = { ...options, results: wanted, more: moreRoles, products, stonesHaveUnits: true };
    const plan = newList(own, { row: 0, column: 0 });
    expect(plan.formulas[0]?.slice(7, 13)).toEqual([
      ...["Stone", "Stone sold by", "Edging kind", "Edging product", "Fabric product", "Waste"],
    ]);
    const offered = plan.choices.map(({ names }) => names);
    expect(offered).toContainEqual(EDGING_KINDS.map(({ name }) => name));
    expect(offered).toContainEqual(products.edging);
    await insertPlan((at) => newList(own, at), { kind: "new sheet", name: "Beds" });
    await Excel.run(async (context) => context.workbook.worksheets.getItem("Beds").getRange("A2").select());
    const fit = await fitted();
    expect(fit.columns.filter(({ sure }) => sure !== "sure")).toEqual([]);
    const roles = fit.columns.map(({ role }) => role);
    // What pieces, stakes, and rolls take from their products comes along, each in a column of its own.
    for (const taken of [
      "pieceLength",
      "stakesIncluded",
      "rollWidth",
      "rollLength",
      "piecePrice",
      "rollPrice",
    ] as const)
      expect(roles).toContain(taken);
    const filling = fillOf(fit, { results: roles.filter((role) => role !== undefined).filter(isResult) });
    expect(filling.columns.filter(({ same }) => same !== 1)).toEqual([]);
    expect([filling.changes, filling.troubles]).toEqual([[], []]);
  });

  test("reads back by its own headings, surely", async () => {
    await insertPlan(ratesSheet, { kind: "new sheet", name: "Rates" });
    await insertPlan((at) => newList({ ...options, stonesHaveUnits: true }, at), { kind: "new sheet", name: "Beds" });
    await Excel.run(async (context) => context.workbook.worksheets.getItem("Beds").getRange("A2").select());
    const fit = await fitted();
    expect(fit.columns.filter(({ sure }) => sure !== "sure")).toEqual([]);
    expect(fit.columns.slice(9).map(({ role }) => role)).toEqual(offeredResults);
    const filling = fillOf(fit, { results: offeredResults });
    expect(filling.columns.filter(({ same }) => same !== 1)).toEqual([]);
    expect([filling.changes, filling.troubles]).toEqual([[], []]);
  });

  test("is a table, and stands nowhere over anything", async () => {
    const plain = { ...options, rates: new Set<never>(), results: ["area", "tons"] as const };
    await onSheet((sheet) => sheet.getRange("B3").select());
    expect(await insertPlan((at) => newList(plain, at), { kind: "selection" })).toMatchObject({ done: false });
    await onSheet((sheet) => sheet.getRange("A9").select());
    expect(await insertPlan((at) => newList(plain, at), { kind: "selection" })).toMatchObject({
      done: true,
      address: "A9:K10",
    });
    const { sheet } = await readListSheet();
    expect(sheet.tables).toMatchObject([{ area: { row: 8, column: 0, rows: 2, columns: 11 } }]);
    expect(host.value("J10")).toBe(92.5);
    await undoLastInsert();
    expect(host.value("A9")).toBe("");
  });

  test("at the last row of the sheet is refused in words", async () => {
    await onSheet((sheet) => sheet.getRange("A1048576").select());
    await expect(insertPlan((at) => newList(options, at), { kind: "selection" })).rejects.toThrow(
      /doesn't fit on the sheet/,
    );
  });
});

async function listOn(sheet: string): Promise<{ values: unknown[][] }> {
  return Excel.run(async (context) => {
    const used = context.workbook.worksheets.getItem(sheet).getUsedRange(true);
    used.load("values");
    await context.sync();
    return { values: used.values };
  });
}

/** Types into the first cell of a name; gives what was there. */
async function setName(name: string, content: unknown): Promise<unknown> {
  return Excel.run(async (context) => {
    const cell = context.workbook.names.getItemOrNullObject(name).getRangeOrNullObject().getCell(0, 0);
    cell.load("formulas");
    await context.sync();
    const before = cell.formulas[0]?.[0];
    cell.formulas = [[content]];
    await context.sync();
    return before;
  });
}
