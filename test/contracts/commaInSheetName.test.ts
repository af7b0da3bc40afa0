import { afterEach, beforeEach, expect, test } from "vitest";
import { readListSheet } from "../../src/workbook/jobRows";
import { readRegion } from "../../src/workbook/read/region";
import { readWorkbook } from "../../src/workbook/read/workbook";
import { createHost, type HeadlessHost } from "../headlessHost";

/*
 * The host gives merged cells as one address, in which each area has its sheet; a comma in the name of the sheet, or an
 * apostrophe, parts no areas.
 */
const MERGED = [
  { row: 0, column: 0, rows: 1, columns: 3 },
  { row: 3, column: 1, rows: 2, columns: 1 },
];

let host: HeadlessHost;
beforeEach(async () => {
  const cells = { A1: "Beds", A2: "Bed", B2: "Length (ft)", A3: "Front", B3: 20, C5: "end" };
  host = await createHost({ office: { sheets: [{ name: "Smith's, front walk!", cells }] } });
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    sheet.getRange("A1:C1").merge();
    sheet.getRange("B4:B5").merge();
    sheet.getRange("A3").select();
    await context.sync();
  });
});
afterEach(() => host.dispose());

test.each([
  ["a check", async () => (await readWorkbook()).facts.sheets[0]!.merged],
  ["the fitting of a list", async () => (await readListSheet()).sheet.merged],
  ["a copy", async () => (await readRegion({ kind: "sheet" })).merged],
])("merged cells are read for %s", async (_, read) => {
  expect(await read()).toEqual(MERGED);
});
