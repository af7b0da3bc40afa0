import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { undoInsert } from "../../src/pane/undoInsert";
import { compose } from "../../src/sheets/compose";
import type { Anchor } from "../../src/spreadsheet/areas";
import { insertPlan } from "../../src/workbook/change/insert";
import { lastInsert } from "../../src/workbook/change/receipt";
import { undoLastInsert } from "../../src/workbook/change/undo";
import { createHost, type HeadlessHost } from "../headlessHost";

/** A plan small enough to see through: a heading, an input and a formula on it. */
const plan = (at: Anchor) =>
  compose(
    "small plan",
    [
      { look: "title", cells: [{ content: "Heading" }, { content: "'1/2" }] },
      {
        cells: [
          { content: 5, key: "input", look: "input" },
          { content: "={input}*2", warnWhen: "=NOT(ISFORMULA({self}))" },
        ],
      },
    ],
    [20, 8],
    at,
  );

// The smallest PNG there is: one pixel (RFC 2083).
const PNG = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost({
    office: {
      sheets: [
        { name: "Jobs", cells: { A1: "mine", B2: "=1+1" }, looks: [{ range: "D4:E4", fill: "#EEF3E6", bold: true }] },
        { name: "Other", cells: {} },
      ],
    },
  });
});
afterEach(() => host.dispose());

const select = (address: string) =>
  Excel.run(async (context) => context.workbook.worksheets.getItem("Jobs").getRange(address).select());

/** Everything of the first sheet that a write could spoil. */
async function everything() {
  return Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Jobs");
    const range = sheet.getRange("A1:J12");
    range.load("formulas,numberFormat");
    const looks = range.getCellProperties({
      format: { fill: { color: true }, font: { bold: true, color: true, size: true } },
    });
    const columns = Array.from({ length: 10 }, (_, index) => range.getColumn(index));
    for (const column of columns) column.load("format/columnWidth");
    range.conditionalFormats.load("items/id");
    context.workbook.worksheets.load("items/name");
    await context.sync();
    return {
      formulas: range.formulas,
      formats: range.numberFormat,
      looks: looks.value,
      widths: columns.map(({ format }) => format.columnWidth),
      rules: range.conditionalFormats.items.length,
      sheets: context.workbook.worksheets.items.map(({ name }) => name),
    };
  });
}

describe("inserting a plan", () => {
  test("writes it at the selected cell in at most three syncs", async () => {
    await select("D4");
    const before = host.syncCount;
    const inserted = await insertPlan(plan, { kind: "selection" });
    expect(host.syncCount - before).toBeLessThanOrEqual(3);
    expect(inserted).toEqual({
      done: true,
      id: expect.any(String),
      title: "small plan",
      sheetName: "Jobs",
      address: "D4:E5",
    });
    expect(host.values("D4:E5")).toEqual([
      ["Heading", "1/2"],
      [5, 10],
    ]);
    expect(host.formula("E5")).toBe("=D5*2");
  });

  test.each([
    ["a filled cell", "A1", { what: "cells with contents", where: "A1, B2" }],
    ["a filled cell further down", "B1", { what: "cells with contents", where: "B2" }],
  ])("writes nothing over %s, and says where the nearest free place is", async (_, address, obstacle) => {
    await select(address);
    const before = await everything();
    const inserted = await insertPlan(plan, { kind: "selection" });
    expect(inserted).toMatchObject({ done: false, inTheWay: { sheetName: "Jobs", obstacles: [obstacle] } });
    expect(await everything()).toEqual(before);

    if (inserted.done || !inserted.inTheWay.nearestFree) throw new Error("a free place was expected");
    const { sheetId, nearestFree } = inserted.inTheWay;
    expect(await insertPlan(plan, { kind: "cell", sheetId, at: nearestFree.at })).toMatchObject({ done: true });
    expect(host.value("A1")).toBe("mine");
    expect(host.formula("B2")).toBe("=1+1");
  });

  test("offers no place in which there is a list, or merged cells, beside what is filled", async () => {
    await Excel.run(async (context) => {
      const jobs = context.workbook.worksheets.getItem("Jobs");
      // Straight to the right of what is filled, and straight below it.
      jobs.getRange("D2").dataValidation.rule = { list: { inCellDropDown: true, source: "yes,no" } };
      jobs.getRange("A5:B5").merge();
      await context.sync();
    });
    await select("A1");
    const inserted = await insertPlan(plan, { kind: "selection" });
    if (inserted.done || !inserted.inTheWay.nearestFree) throw new Error("a free place was expected");
    const { sheetId, nearestFree } = inserted.inTheWay;
    expect(await insertPlan(plan, { kind: "cell", sheetId, at: nearestFree.at })).toMatchObject({ done: true });
    expect(host.grid.rules.lists({ sheetId, row: 0, column: 0, rowCount: 9, columnCount: 9 })).toHaveLength(1);
  });

  test("writes nothing into merged cells", async () => {
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Jobs").getRange("E5:F6").merge();
      await context.sync();
    });
    await select("D4");
    expect(await insertPlan(plan, { kind: "selection" })).toMatchObject({
      done: false,
      inTheWay: { obstacles: [{ what: "merged cells", where: "E5:F6" }] },
    });
    expect(host.value("D4")).toBe("");
  });

  test("names a protected sheet, and changes nothing", async () => {
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Jobs").protection.protect();
      await context.sync();
    });
    await select("D4");
    await expect(insertPlan(plan, { kind: "selection" })).rejects.toThrow(/“Jobs” is protected/);
    expect(host.value("D4")).toBe("");
  });

  test("finds a free name for a new sheet", async () => {
    expect(await insertPlan(plan, { kind: "new sheet", name: "Front/walk" })).toMatchObject({
      sheetName: "Front walk",
    });
    expect(await insertPlan(plan, { kind: "new sheet", name: "front walk" })).toMatchObject({
      sheetName: "front walk 2",
    });
  });
});

describe("a write that fails", () => {
  const places = [
    ["at the selected cell", { kind: "selection" }],
    ["on a new sheet", { kind: "new sheet", name: "Fresh" }],
  ] as const;
  const faults = places.flatMap(([where, place]) =>
    [1, 2, 3].flatMap((sync) => [0, 1, 3, 6].map((afterOperations) => [where, sync, afterOperations, place] as const)),
  );

  test.each(faults)(
    "%s, at sync %i after %i changes, leaves the workbook as it was, or stands where only the answer was lost",
    async (_, sync, afterOperations, place) => {
      await select("D4");
      const before = await everything();
      host.failAtSync(sync, afterOperations);
      const told = await insertPlan(plan, place).catch((trouble: Error) => trouble);
      if (told instanceof Error) {
        expect(told.message).toMatch(sync === 1 ? /Try again/ : /Nothing was changed\. Try again/);
      } else {
        // All of it was written by then: the note of it is the last thing but bringing it to the front.
        expect([sync, told.done, (await lastInsert())?.title]).toEqual([3, true, "small plan"]);
        await undoLastInsert();
      }
      expect(await everything()).toEqual(before);
      expect(await lastInsert()).toBeUndefined();
    },
  );
});

describe("undoing", () => {
  test("leaves the place as it was, with its looks and widths", async () => {
    await select("D4");
    const before = await everything();
    await insertPlan(plan, { kind: "selection" });
    expect(await lastInsert()).toMatchObject({ title: "small plan" });
    expect(await undoLastInsert()).toEqual({ title: "small plan", where: "Jobs D4:E5" });
    expect(await everything()).toEqual(before);
    await expect(undoLastInsert()).rejects.toThrow("There's nothing to undo.");
  });

  test("refuses once someone has typed into it, and names the cell", async () => {
    await select("D4");
    await insertPlan(plan, { kind: "selection" });
    await host.type({ D5: 7 });
    await expect(undoLastInsert()).rejects.toThrow(/changed or moved.*\(D5\)/);
    expect(host.value("E5")).toBe(14);
  });

  test("does not touch what was moved away, and says that its cells held nothing any more", async () => {
    await select("D4");
    await insertPlan(plan, { kind: "selection" });
    host.open.workbook.getSheetBySheetId(host.grid.sheets.list()[0]!.id)!.insertRows(0, 3);
    expect(await undoInsert()).toMatch(
      / Its cells were already blank\. If they were moved, they stay where they are now/,
    );
    expect([host.value("D7"), host.value("E8")]).toEqual(["Heading", 10]);
  });

  test("says that nothing was changed where the program fails for good before it changes anything", async () => {
    await select("D4");
    await insertPlan(plan, { kind: "selection" });
    const before = await everything();
    host.failAtSync(3, 0, "AccessDenied");
    await expect(undoLastInsert()).rejects.toThrow(
      "The sheet or the workbook is protected. Nothing was changed. Unprotect it",
    );
    expect(await everything()).toEqual(before);
    host.failAtSync(4, 2, "AccessDenied");
    await expect(undoLastInsert()).rejects.toThrow(/may be undone only in part.*again to finish/);
    expect(await undoLastInsert()).toMatchObject({ where: "Jobs D4:E5" });
  });

  test("does not say that nothing was changed where what it takes off can not be seen in the cells", async () => {
    await select("D4");
    await insertPlan(plan, { kind: "selection" });
    await host.type({ D4: "", E4: "", D5: "", E5: "" });
    host.failAtSync(4, 3, "AccessDenied");
    await expect(undoLastInsert()).rejects.toThrow(/may be undone only in part/);
  });

  test("is finished beside another of the same, which stays", async () => {
    await select("D4");
    await insertPlan(plan, { kind: "selection" });
    await select("D9");
    await insertPlan(plan, { kind: "selection" });
    host.failAtSync(4, 1);
    expect(await undoLastInsert()).toEqual({ title: "small plan", where: "Jobs D9:E10" });
    expect([host.value("D4"), host.value("D9")]).toEqual(["Heading", ""]);
  });

  test("takes the new sheet away with it, unless something else is there by now", async () => {
    await insertPlan(plan, { kind: "new sheet", name: "Fresh" });
    await undoLastInsert();
    expect((await everything()).sheets).toEqual(["Jobs", "Other"]);

    await insertPlan(plan, { kind: "new sheet", name: "Fresh" });
    await host.type({ "Fresh!H1": "a note" });
    await undoLastInsert();
    expect(host.value("Fresh!H1")).toBe("a note");
    expect(host.value("Fresh!A1")).toBe("");
  });

  test("is finished by itself after a fault half-way", async () => {
    await select("D4");
    const before = await everything();
    await insertPlan(plan, { kind: "selection" });
    host.failAtSync(3, 2);
    expect(await undoLastInsert()).toMatchObject({ where: "Jobs D4:E5" });
    expect(await everything()).toEqual(before);
  });

  test("undoes what is meant, and not what was inserted since", async () => {
    await select("D4");
    const first = await insertPlan(plan, { kind: "selection" });
    await insertPlan(plan, { kind: "new sheet", name: "Fresh" });
    const before = await everything();
    if (!first.done) throw new Error("the place is free");
    await expect(undoLastInsert(first.id)).rejects.toThrow(/Something else was inserted since.*nothing was changed/);
    expect(await everything()).toEqual(before);
    expect(host.value("D4")).toBe("Heading");
  });

  test("leaves a sheet that someone has put a picture onto", async () => {
    await insertPlan(plan, { kind: "new sheet", name: "Fresh" });
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Fresh").shapes.addImage(PNG);
      await context.sync();
    });
    await undoLastInsert();
    expect((await everything()).sheets).toContain("Fresh");
    expect(host.value("Fresh!A1")).toBe("");
  });
});
