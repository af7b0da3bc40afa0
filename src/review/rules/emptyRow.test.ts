import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { emptyRow } from "./emptyRow";

/** Three lines, an empty row, and a total below it. */
const costs = (total: CellText, spacer: readonly CellText[] = ["", ""]) => [
  ["Line", "Cost"],
  ["Stone", 100],
  ["Fabric", 50],
  ["Pins", 20],
  spacer,
  ["Total", total],
];

describe("a total that takes in an empty row", () => {
  test("is a question, with the row", () => {
    expect(findWith(emptyRow, costs("=SUM(B2:B5)"))).toMatchObject([
      {
        level: "question",
        rank: 5,
        cells: ["B6"],
        seen: "“Total”, “Cost” adds B2:B5, and row 5 at its end is empty.",
        todo: "End the range at the last line, or ignore this if you keep the 1 empty row for inserting lines.",
      },
    ]);
  });

  test.each([
    ["a range that ends at the last line", costs("=SUM(B2:B4)")],
    ["a line that isn't filled in yet", costs("=SUM(B2:B5)", ["Stakes", ""])],
    ["a row with a note", costs("=SUM(B2:B5)", ["", "", "prices of March"])],
    ["a sum in another column", [...costs(""), ["", "", "=SUM(B2:B5)"]]],
    ["two ranges", costs("=SUM(B2:B3,B4:B5)")],
    [
      "a form with room for more lines",
      [
        ["Line", "Cost"],
        ["Stone", 100],
        ["", ""],
        ["", ""],
        ["", ""],
        ["", ""],
        ["Total", "=SUM(B2:B6)"],
      ],
    ],
    ["a total far below", [...costs(""), [""], [""], [""], [""], ["", "=SUM(B2:B5)"]]],
  ])("is not %s", (_, rows) => {
    expect(cellsFound(emptyRow, rows)).toEqual([]);
  });

  test("is not asked about in a table", () => {
    const sheet = { name: "Jobs", rows: costs("=SUM(B2:B5)") };
    const table = { name: "Costs", sheet: "Jobs", range: "A1:B6", columnNames: ["Line", "Cost"] };
    expect(
      cellsFound(emptyRow, { sheets: [sheet], tables: [{ ...table, headingRow: true, totalsRow: true }] }),
    ).toEqual([]);
  });

  test("may be above its lines, or have a row more between", () => {
    expect(
      cellsFound(emptyRow, [
        ["Total", "=SUM(B2:B4)"],
        ["Stone", 100],
        ["Pins", 20],
        ["", ""],
        ["Hours", 8],
      ]),
    ).toEqual(["B1"]);
    expect(findWith(emptyRow, [...costs("").slice(0, 5), ["", ""], ["", ""], ["Total", "=SUM(B2:B6)"]])).toMatchObject([
      { cells: ["B8"], seen: "“Total”, “Cost” adds B2:B6, and rows 5 to 6 at its end are empty." },
    ]);
  });

  test("is one finding a sheet", () => {
    const rows = costs("=SUM(B2:B5)").map((row, at) => [...row, at === 5 ? "=SUM(C2:C5)" : at === 4 ? "" : 8]);
    expect(findWith(emptyRow, rows).map(({ cells }) => cells)).toEqual([["B6", "C6"]]);
  });
});
