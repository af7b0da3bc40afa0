import { describe, expect, test } from "vitest";
import type { WorkbookFacts } from "../../review/facts";
import { surroundingsOf } from "./surroundings";

const used = {
  row: 2,
  column: 1,
  values: [
    ["Bed", 20],
    ["Back", 30],
  ],
};
const facts = {
  sheets: [{ name: "Jobs", used }, { name: "Blank" }],
  names: [{ name: "Rate_waste", formula: "=Rates!$B$2" }],
  tables: [
    {
      ...{ name: "Beds", sheet: "Jobs", columnNames: ["Bed", "Length"], headingRow: true, totalsRow: true },
      area: { row: 4, column: 1, rows: 8, columns: 2 },
    },
  ],
} as unknown as WorkbookFacts;

describe("what a copy knows of the workbook around it", () => {
  test("is what cells show, whatever the capitals of their sheet's name", () => {
    const valueAt = surroundingsOf(facts).valueAt!;
    expect(valueAt("JOBS", 3, 2)).toBe(30);
    expect(valueAt("Jobs", 2, 1)).toBe("Bed");
    expect(valueAt("Jobs", 0, 0)).toBeUndefined();
    expect(valueAt("Blank", 0, 0)).toBeUndefined();
    expect(valueAt("Elsewhere", 0, 0)).toBeUndefined();
  });

  test("is what names refer to, without an equals sign", () => {
    expect(surroundingsOf(facts).names).toEqual({ Rate_waste: "Rates!$B$2" });
  });

  test.each([
    [true, true, { row: 5, rows: 6 }],
    [true, false, { row: 5, rows: 7 }],
    [false, true, { row: 4, rows: 7 }],
    [false, false, { row: 4, rows: 8 }],
  ])("is a table's data without its headings (%s) and its totals (%s)", (headingRow, totalsRow, rows) => {
    const tables = [{ ...facts.tables[0]!, headingRow, totalsRow }];
    expect(surroundingsOf({ ...facts, tables }).tables).toEqual([
      { name: "Beds", headings: ["Bed", "Length"], data: { sheetName: "Jobs", column: 1, columns: 2, ...rows } },
    ]);
  });
});
