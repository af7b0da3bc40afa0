import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { workbookFile } from "../../src/sheets/file/workbookFile";
import type { Plan } from "../../src/sheets/plan";
import { base64Of } from "../../src/spreadsheet/base64";
import { createHost, type HeadlessHost } from "../headlessHost";

let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost();
});
afterEach(() => host.dispose());

const plan: Plan = {
  title: "price",
  rows: 1,
  columns: 1,
  formulas: [["Front walk"]],
  formats: [["General"]],
  looks: [],
  widths: [10],
  warnings: [],
  choices: [],
};
const file = (title?: string) => workbookFile([{ sheetName: "Price", plan }], { ...(title && { title }) });

describe("a workbook of its own", () => {
  test("is handed to the person under its title, byte for byte", async () => {
    const bytes = await file("Front walk: price & scope");
    await Excel.createWorkbook(base64Of(bytes));
    expect(host.handed.map(({ name }) => name)).toEqual(["Front walk price & scope.xlsx"]);
    expect(Buffer.from(host.handed[0]!.bytes).equals(Buffer.from(bytes))).toBe(true);
  });

  test("has a number for a name where it has no title", async () => {
    await Excel.createWorkbook(base64Of(await file()));
    await Excel.createWorkbook(base64Of(await file()));
    expect(host.handed.map(({ name }) => name)).toEqual(["Workbook 1.xlsx", "Workbook 2.xlsx"]);
  });

  test.each([
    ["nothing at all", undefined],
    ["no base64", "?"],
    ["no file of a workbook", btoa("a letter to the yard")],
  ])("is not made of %s", async (_, base64) => {
    await expect(Excel.createWorkbook(base64)).rejects.toMatchObject({
      code: "InvalidArgument",
      debugInfo: { errorLocation: "Excel.createWorkbook" },
    });
    expect(host.handed).toEqual([]);
  });
});
