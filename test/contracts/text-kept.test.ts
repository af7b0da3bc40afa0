import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { copyForSheet } from "../../src/pane/copy/makeCopy";
import { readSource } from "../../src/pane/copy/source";
import { readToSave, templateOfCells } from "../../src/pane/templates/saving";
import type { CellContent } from "../../src/practice/grid/port";
import { templatePlan } from "../../src/sheets/templates/openTemplate";
import { undoChanges, writeChanges } from "../../src/workbook/change/cells";
import { insertPlan } from "../../src/workbook/change/insert";
import { readWorkbook } from "../../src/workbook/read/workbook";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";

/*
 * The host gives text that begins like a formula as it gives a formula: without the mark that makes it text (from memory;
 * the stand-in does the same). Whatever the product reads and writes again must not wake it.
 */
const ASLEEP = ["=1+1", `=HYPERLINK("https://tools.example","a")`, "=cmd|' /C calc'!A0", "+1+1", "@SUM(A1)", "'=1+1"];

let host: HeadlessHost;
beforeEach(async () => {
  host = await createProductHost();
  const id = host.grid.sheets.list()[0]!.id;
  const area = { sheetId: id, row: 0, column: 0, rowCount: ASLEEP.length, columnCount: 1 };
  host.grid.cells.write(
    area,
    ASLEEP.map((text) => [`'${text}`]),
  );
  await host.type({ B1: "=2*3", B2: "=A1" });
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Sheet1").getRange("A1:B6").select();
    await context.sync();
  });
});
afterEach(() => host.dispose());

/** The cells of a column on a sheet: kind, formula and what shows. */
function column(sheet: string, at = 0): CellContent[] {
  const { id } = host.grid.sheets.list().find(({ name }) => name === sheet)!;
  const area = { sheetId: id, row: 0, column: at, rowCount: ASLEEP.length, columnCount: 1 };
  return host.grid.cells.read(area).flat();
}

const asleep = ASLEEP.map((value) => ({ kind: "text", value, formula: undefined }));

describe("text that begins like a formula stays asleep", () => {
  test("in a plain copy, in formulas and in values", async () => {
    const source = await readSource("cells");
    for (const mode of ["formulas", "values only"] as const) {
      const copy = copyForSheet(source, mode, { kind: "new sheet" });
      const inserted = await insertPlan(() => copy.plan, { kind: "new sheet", name: mode });
      expect(inserted.done && column(inserted.sheetName)).toEqual(asleep);
    }
    expect(column("formulas", 1)[0]).toMatchObject({ formula: "=2*3", value: 6 });
  });

  test("in a template", async () => {
    const { template } = templateOfCells(
      await readToSave("cells"),
      new Map(),
      { name: "Date", note: "", by: "" },
      new Date(),
    );
    expect(template.cells.filter(({ at }) => at.startsWith("A")).map(({ text }) => text)).toEqual(ASLEEP);
    const inserted = await insertPlan((at) => templatePlan(template, new Map(), at), {
      kind: "new sheet",
      name: "Date",
    });
    expect(inserted.done && column("Date")).toEqual(asleep);
    // A formula that shows it is still a formula.
    expect(column("Date", 1)[1]).toMatchObject({ formula: "=A1", value: "=1+1" });
  });

  test("when a change of its cell is undone", async () => {
    const { facts } = await readWorkbook();
    const before = facts.sheets[0]!.used!.formulas;
    const changes = ASLEEP.map((_, row) => ({ sheet: "Sheet1", row, column: 0, before: before[row]![0]!, after: row }));
    const written = await writeChanges("numbers", changes);
    expect(column("Sheet1").map(({ value }) => value)).toEqual(ASLEEP.map((_, row) => row));
    await undoChanges(written);
    expect(column("Sheet1")).toEqual(asleep);
  });

  test.each([0, 1, 3])("when a change of its cell fails after %i cells", async (after) => {
    const { facts } = await readWorkbook();
    const before = facts.sheets[0]!.used!.formulas;
    const changes = ASLEEP.map((_, row) => ({ sheet: "Sheet1", row, column: 0, before: before[row]![0]!, after: row }));
    host.failAtSync(2, after);
    await writeChanges("numbers", changes).catch(() => undefined);
    expect([asleep, ASLEEP.map((_, row) => ({ kind: "number", value: row, formula: undefined }))]).toContainEqual(
      column("Sheet1"),
    );
  });
});

/** An error that stands as such, and text that only reads as one. */
describe("errors and text that reads as one are told apart", () => {
  const AS_THEY_WERE = [
    { kind: "error", value: "#DIV/0!", formula: undefined },
    { kind: "text", value: "#N/A", formula: undefined },
  ];
  const there = () => column("Sheet1", 2).slice(0, 2);
  const wanted = async () => {
    const { facts } = await readWorkbook();
    const before = facts.sheets[0]!.used!.formulas;
    return [0, 1].map((row) => ({ sheet: "Sheet1", row, column: 2, before: before[row]![2]!, after: row }));
  };
  beforeEach(async () => {
    await host.type({ C1: "#DIV/0!", C2: "'#N/A" });
    expect(there()).toEqual(AS_THEY_WERE);
  });

  test("when a change of their cells is undone", async () => {
    const written = await writeChanges("numbers", await wanted());
    expect(there().map(({ value }) => value)).toEqual([0, 1]);
    await undoChanges(written);
    expect(there()).toEqual(AS_THEY_WERE);
  });

  test("when a change of their cells fails", async () => {
    const changes = await wanted();
    host.failAtSync(2, 2);
    await expect(writeChanges("numbers", changes)).rejects.toThrow();
    expect(there()).toEqual(AS_THEY_WERE);
  });

  test("when another pane has written them where a plan is written", async () => {
    await host.type({ C1: "", C2: "" });
    const plan = {
      title: "two rows",
      rows: 2,
      columns: 1,
      formulas: [["one"], ["two"]],
      formats: [["General"], ["General"]],
      looks: [],
      widths: [10],
      warnings: [],
      choices: [],
    };
    host.session.beforeSync(2, () => host.type({ C1: "#DIV/0!", C2: "'#N/A" }));
    const sheetId = host.grid.sheets.list()[0]!.id;
    const inserting = insertPlan(() => plan, { kind: "cell", sheetId, at: { row: 0, column: 2 } });
    await expect(inserting).rejects.toThrow("at the same time");
    expect(there()).toEqual(AS_THEY_WERE);
  });
});
