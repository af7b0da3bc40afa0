import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Change } from "../../src/review/finding";
import { reviewAtOnce } from "../../src/review/review";
import { areaOfAddress } from "../../src/spreadsheet/areas";
import { undoChanges, writeChanges } from "../../src/workbook/change/cells";
import { readForCheck, readWorkbook, scopeOf } from "../../src/workbook/read/workbook";
import { changeDismissals } from "../../src/workbook/settings/dismissals";
import { createHost, type HeadlessHost } from "../headlessHost";
import { knowledge } from "../reviewWorkbook";

let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost({
    office: {
      sheets: [
        {
          name: "Jobs",
          cells: { B2: "Length", C2: "Twice", B3: 4, C3: "=B3*2", B4: 5, C4: "'7", B5: 6, C5: "=B5*2" },
          looks: [{ range: "C4", numberFormat: "0.00" }],
        },
        { name: "Blank", cells: {} },
        { name: "Secret", cells: { A1: 1 } },
      ],
    },
  });
  await Excel.run(async (context) => {
    const jobs = context.workbook.worksheets.getItem("Jobs");
    jobs.getRange("A8:B8").merge();
    jobs.getRange("B4").rowHidden = true;
    jobs.tables.add("B2:C5", true);
    context.workbook.worksheets.getItem("Secret").protection.protect();
    context.workbook.names.add("Twice", jobs.getRange("C3"));
    jobs.getRange("B3:C4").select();
    await context.sync();
  });
});
afterEach(() => host.dispose());

describe("reading a workbook for a check", () => {
  test("takes two syncs and gives all that a check asks for", async () => {
    const before = host.syncCount;
    const read = await readWorkbook();
    expect(host.syncCount - before).toBe(2);
    const [jobs, blank, secret] = read.facts.sheets;
    expect(jobs).toMatchObject({ name: "Jobs", visibility: "Visible", protected: false, hiddenRows: [3] });
    expect(jobs?.used).toMatchObject({ row: 1, column: 1 });
    expect(jobs?.used?.formulas.slice(0, 3)).toEqual([
      ["Length", "Twice"],
      [4, "=B3*2"],
      [5, "7"],
    ]);
    expect(jobs?.used?.values[1]).toEqual([4, 8]);
    expect(blank).toEqual({
      name: "Blank",
      visibility: "Visible",
      protected: false,
      hiddenRows: [],
      hiddenColumns: [],
      merged: [],
    });
    expect(secret?.protected).toBe(true);
    expect(read.facts.names).toEqual([{ name: "Twice", formula: "=Jobs!$C$3" }]);
    expect(read.facts.tables).toMatchObject([
      { sheet: "Jobs", area: { row: 1, column: 1, rows: 4, columns: 2 }, columnNames: ["Length", "Twice"] },
    ]);
    expect(scopeOf(read, "area")).toEqual({
      kind: "area",
      sheet: "Jobs",
      area: { row: 2, column: 1, rows: 2, columns: 2 },
    });
  });
});

describe("a sheet whose last row is used", () => {
  beforeEach(() => host.type({ A1048576: "moved here by mistake" }));

  test("is read as far as it can be, in two syncs more", async () => {
    const before = host.syncCount;
    const { facts } = await readForCheck();
    expect(host.syncCount - before).toBe(6);
    const [jobs, , secret] = facts.sheets;
    // 250,000 cells of three columns; the rest of them is empty.
    expect(jobs).toMatchObject({ name: "Jobs", notReadFrom: 83_335, hiddenRows: [3] });
    expect(jobs!.used!.formulas.map(([, , twice]) => twice)).toEqual(["Twice", "=B3*2", "7", "=B5*2"]);
    expect(secret).toMatchObject({ name: "Secret", protected: true });
    expect(secret!.notReadFrom).toBeUndefined();
  });

  test("is checked, and what wasn't is listed", async () => {
    await host.type({ C6: "=SUM(C3:C5)" });
    const { facts } = await readForCheck();
    const { findings, unchecked } = reviewAtOnce(facts, knowledge);
    expect(findings.map(({ where }) => where)).toContain("Jobs!C4");
    expect(unchecked).toContainEqual({
      what: "Rows 83,336 and below on Jobs",
      where: "Jobs",
      why: "The sheet is too long to check all of it. If something is there by mistake, delete those rows.",
    });
  });

  test("isn't copied in parts", async () => {
    await expect(readWorkbook()).rejects.toThrow();
  });
});

const fix: readonly Change[] = [
  { sheet: "Jobs", row: 3, column: 2, before: "7", after: "=B4*2", numberFormat: "General" },
  { sheet: "Jobs", row: 2, column: 1, before: 4, after: 40 },
];

const cells = () =>
  host.grid.cells.read({ sheetId: host.grid.sheets.list()[0]!.id, row: 1, column: 1, rowCount: 4, columnCount: 2 });

describe("a fix", () => {
  test("is written where still stands what was there, and undone whole", async () => {
    const before = cells();
    const written = await writeChanges("a fix", fix);
    expect([host.formula("C4"), host.value("C4"), host.value("B3")]).toEqual(["=B4*2", 10, 40]);
    await undoChanges(written);
    expect(cells()).toEqual(before);
  });

  test("is not written over what has changed since, and says which cell", async () => {
    await host.type({ B3: 5 });
    await expect(writeChanges("a fix", fix)).rejects.toThrow(/Jobs!B3 was just changed/);
    expect(host.value("C4")).toBe("7");
  });

  test("is not undone over what was typed since", async () => {
    const written = await writeChanges("a fix", fix);
    await host.type({ B3: 41 });
    await expect(undoChanges(written)).rejects.toThrow(/Jobs!B3 was just changed/);
    expect(host.formula("C4")).toBe("=B4*2");
  });

  test.each([1, 2].flatMap((sync) => [0, 1, 2].map((after) => [sync, after] as const)))(
    "leaves the workbook as it was when sync %i fails after %i changes",
    async (sync, after) => {
      const before = cells();
      host.failAtSync(sync, after);
      await expect(writeChanges("a fix", fix)).rejects.toThrow();
      expect(cells()).toEqual(before);
    },
  );
});

test("dismissals stay with the workbook, also those of another pane meanwhile", async () => {
  const dismissal = { key: "a", reason: "agreed", title: "Odd", where: "Jobs!B3", on: "2026-03-02" };
  const other = { ...dismissal, key: "b" };
  expect((await readForCheck()).known).toEqual({ dismissals: [] });
  await changeDismissals((there) => [...there, dismissal], false);
  await changeDismissals((there) => [...there, other], false);
  expect((await readForCheck()).known).toEqual({ dismissals: [dismissal, other] });
  await changeDismissals((there) => there.filter(({ key }) => key !== "a"), false);
  expect((await readForCheck()).known).toEqual({ dismissals: [other] });
});

test.each([
  ["Jobs!B2:D7", { row: 1, column: 1, rows: 6, columns: 3 }],
  ["'A!b'!$AA$10", { row: 9, column: 26, rows: 1, columns: 1 }],
])("the address %s is an area", (address, area) => {
  expect(areaOfAddress(address)).toEqual(area);
});
