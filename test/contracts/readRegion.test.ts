import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { readRegion } from "../../src/workbook/read/region";
import { createHost, type HeadlessHost } from "../headlessHost";

/*
 * Reading cells with all that they look like, for templates and copies.
 */
let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost({
    office: {
      sheets: [
        {
          name: "Front walk",
          cells: { B2: "Stone", C2: 4.5, C3: "=C2*2", F9: "far" },
          columnWidths: { B: 56.25 },
          looks: [
            { range: "B2", fill: "#EEF3E6", bold: true, underline: true, vertical: "Center", indent: 2 },
            { range: "C2:C3", numberFormat: "0.00", horizontal: "Right", fontSize: 14 },
          ],
        },
        { name: "Blank", cells: {} },
      ],
    },
  });
});
afterEach(() => host.dispose());

const onSheet = (work: (sheet: Excel.Worksheet, context: Excel.RequestContext) => void) =>
  Excel.run(async (context) => {
    work(context.workbook.worksheets.getItem("Front walk"), context);
    await context.sync();
  });

describe("reading a region", () => {
  test("gives contents, formats, looks, widths, merged cells and names, in two syncs", async () => {
    await onSheet((sheet, { workbook }) => {
      workbook.names.add("Rate_stone", sheet.getRange("C2"));
      sheet.getRange("B4:C5").merge();
      const border = sheet.getRange("B2:C2").format.borders.getItem("EdgeBottom");
      border.style = "Continuous";
      border.color = "#336633";
      sheet.getRange("B2:C5").select();
    });
    const before = host.syncCount;
    const region = await readRegion({ kind: "selection" });
    expect(host.syncCount - before).toBe(2);
    expect(region).toMatchObject({
      sheetName: "Front walk",
      row: 1,
      column: 1,
      formulas: [
        ["Stone", 4.5],
        ["", "=C2*2"],
        ["", ""],
        ["", ""],
      ],
      values: [
        ["Stone", 4.5],
        ["", 9],
        ["", ""],
        ["", ""],
      ],
      formats: [
        ["General", "0.00"],
        ["General", "0.00"],
        ["General", "General"],
        ["General", "General"],
      ],
      merged: [{ row: 2, column: 0, rows: 2, columns: 2 }],
      names: { Rate_stone: "'Front walk'!$C$2" },
    });
    // 56.25 points are 75 px: 10 characters of 7 px, and 5 px of padding.
    expect(region.widths[0]).toBe(10);
    expect(region.dress).toEqual([
      [
        {
          fill: "#EEF3E6",
          bold: true,
          underline: true,
          vertical: "Center",
          indent: 2,
          rules: { bottom: "#336633" },
        },
        { size: 14, align: "Right", rules: { bottom: "#336633" } },
      ],
      [undefined, { size: 14, align: "Right" }],
      [undefined, undefined],
      [undefined, undefined],
    ]);
  });

  test("cuts whole columns and whole rows that are selected to what is used", async () => {
    await onSheet((sheet) => sheet.getRange("B:C").select());
    expect(await readRegion({ kind: "selection" })).toMatchObject({
      row: 1,
      column: 1,
      widths: [10, expect.anything()],
    });
    await onSheet((sheet) => sheet.getRange("3:3").select());
    const row = await readRegion({ kind: "selection" });
    expect(row.formulas).toEqual([["", "=C2*2", "", "", ""]]);
  });

  test("takes a given area as it is, and all that is used of a sheet", async () => {
    const { sheetId, formulas } = await readRegion({ kind: "sheet" });
    expect(formulas).toHaveLength(8);
    expect(formulas[7]).toEqual(["", "", "", "", "far"]);
    const area = { row: 0, column: 0, rows: 1, columns: 2 };
    expect((await readRegion({ kind: "area", sheetId, area })).formulas).toEqual([["", ""]]);
    expect((await readRegion({ kind: "sheet", sheetId: "Front walk" })).sheetId).toBe(sheetId);
  });

  test("says what to do where there is nothing, or too much", async () => {
    await expect(readRegion({ kind: "sheet", sheetId: "Blank" })).rejects.toThrow(
      /The sheet “Blank” has nothing on it/,
    );
    await onSheet((sheet) => sheet.getRange("J20:K21").select());
    await expect(readRegion({ kind: "selection" })).rejects.toThrow(/The selected cells are blank/);
    const area = { row: 0, column: 0, rows: 50_001, columns: 1 };
    await expect(readRegion({ kind: "area", sheetId: "Front walk", area })).rejects.toThrow(/more than 50,000 cells/);
  });
});
