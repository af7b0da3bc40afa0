import { describe, expect, test } from "vitest";
import { isWork } from "./isWork";

const sheet = { id: "s1", name: "Jobs", cellData: { 0: { 0: { v: 1 }, 1: null } } };

describe("what was kept is taken for a workbook", () => {
  test("where it has sheets in an order, each with its cells, if any", () => {
    expect(isWork({ sheetOrder: ["s1"], sheets: { s1: sheet } })).toBe(true);
    expect(isWork({ sheetOrder: ["s1"], sheets: { s1: { name: "Blank" } } })).toBe(true);
  });

  test.each([
    ["a text", "nonsense"],
    ["a list", []],
    ["nothing at all", null],
    ["an object of no kind", {}],
    ["no sheets", { sheetOrder: [], sheets: {} }],
    ["an order of sheets that are not there", { sheetOrder: ["s1"], sheets: {} }],
    ["a sheet that is only there by its name", { sheetOrder: ["constructor"], sheets: {} }],
    ["a sheet without a name", { sheetOrder: ["s1"], sheets: { s1: {} } }],
    ["rows that are none", { sheetOrder: ["s1"], sheets: { s1: { ...sheet, cellData: { 0: "no row" } } } }],
    ["cells that are none", { sheetOrder: ["s1"], sheets: { s1: { ...sheet, cellData: { 0: { 0: 7 } } } } }],
  ])("and not where it is %s", (_what, kept) => {
    expect(isWork(kept)).toBe(false);
  });
});
