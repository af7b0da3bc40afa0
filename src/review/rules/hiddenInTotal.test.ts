import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import { hiddenInTotal } from "./totals";

const costs = (formula = "=SUM(B2:B5)", pins: number | string = 20) => [
  ["Line", "Cost"],
  ["Stone", 100],
  ["Fabric", 50],
  ["Pins", pins],
  ["Stakes", 30],
  ["Total", formula],
];

describe("hidden rows in a total", () => {
  test("are found with what they come to", () => {
    expect(findWith(hiddenInTotal, { rows: costs(), hiddenRows: [3, 4] })).toMatchObject([
      {
        level: "warning",
        // 70 of 200 are 35%.
        rank: 35,
        cells: ["B6"],
        related: ["B3", "B4"],
        seen: "“Total”, “Cost” includes 2 hidden rows (3 and 4): 70 of 200.",
        todo: "Unhide the rows, take them out of the total, or ignore this and say why.",
        fix: undefined,
      },
    ]);
  });

  test("rank at least 10", () => {
    expect(findWith(hiddenInTotal, { rows: costs("=SUM(B2:B5)", 1), hiddenRows: [4] })[0]!.rank).toBe(10);
  });

  test.each([
    ["=SUM(B2:B5)", true],
    ["=AVERAGE(B2:B5)", true],
    ["=SUMPRODUCT(B2:B5)", true],
    ['=SUMIF(B2:B5,">0")', true],
    ['=SUMIFS(B2:B5,A2:A5,"P*")', true],
    ['=AVERAGEIF(B2:B5,">0")', true],
    // SUBTOTAL has its own way with hidden rows, and cells named one by one are meant.
    ["=SUBTOTAL(9,B2:B5)", false],
    ["=B2+B3+B4+B5", false],
    ["=SUM(B2,B3,B4,B5)", false],
    ["=SUM(B2:B3)", false],
    ["=SUM(B5:B6)", false],
  ])("%s", (formula, isFound) => {
    const given = { rows: costs(formula === "=SUM(B5:B6)" ? "" : formula), hiddenRows: [4] };
    expect(cellsFound(hiddenInTotal, given)).toEqual(isFound ? ["B6"] : []);
  });

  test.each([
    ["nothing is hidden", costs(), []],
    ["only the total is hidden", costs(), [6]],
    ["the total is hidden, too", costs(), [4, 6]],
    ["everything it takes is hidden", costs(), [2, 3, 4, 5]],
    ["what is hidden is blank", costs("=SUM(B2:B5)", ""), [4]],
    ["what is hidden is 0", costs("=SUM(B2:B5)", 0), [4]],
    ["what is hidden is text", costs("=SUM(B2:B5)", "none"), [4]],
    ["hidden rows are outside of what it takes", costs(), [1, 7]],
  ])("are not found where %s", (_, rows, hiddenRows) => {
    expect(cellsFound(hiddenInTotal, { rows, hiddenRows })).toEqual([]);
  });

  test("count to the first and the last row of the range", () => {
    expect(cellsFound(hiddenInTotal, { rows: costs(), hiddenRows: [2] })).toEqual(["B6"]);
    expect(cellsFound(hiddenInTotal, { rows: costs(), hiddenRows: [5] })).toEqual(["B6"]);
  });

  test("are not looked for on other sheets, in hidden columns, or on protected sheets", () => {
    const rows = costs("=SUM(Old!B2:B5)");
    const sheets = [
      { name: "Jobs", rows, hiddenRows: [3] },
      { name: "Old", rows: costs(), hiddenRows: [3] },
    ];
    expect(cellsFound(hiddenInTotal, { sheets })).toEqual(["Old!B6"]);
    expect(cellsFound(hiddenInTotal, { rows: costs(), hiddenRows: [3], hiddenColumns: ["B"] })).toEqual([]);
    expect(cellsFound(hiddenInTotal, { rows: costs(), hiddenRows: [3], protected: true })).toEqual([]);
  });

  test("that several totals take are one finding", () => {
    const rows = [
      ["Line", "Cost", "Price", "Fee"],
      ["Stone", 100, 130, 5],
      ["Fabric", 50, 65, ""],
      ["Pins", 20, 26, 5],
      ["Total", "=SUM(B2:B4)", "=SUM(C2:C4)", "=SUM(D2:D4)"],
    ];
    expect(findWith(hiddenInTotal, { rows, hiddenRows: [3, 4] }).map(({ cells }) => cells)).toEqual([
      ["D5"],
      ["B5", "C5"],
    ]);
  });
});

describe("hidden columns in a total", () => {
  const across = [
    ["Line", "March", "April", "May", "Total"],
    ["Stone", 100, 50, 20, "=SUM(B2:D2)"],
    ["Fabric", 10, 20, 30, "=SUM(B3:D3)"],
  ];

  test("are found", () => {
    expect(findWith(hiddenInTotal, { rows: across, hiddenColumns: ["C"] })).toMatchObject([
      {
        cells: ["E2", "E3"],
        related: ["C2", "C3"],
        seen: "“Stone”, “Total” includes hidden columns: 50 of 170. The same in 1 more cell: E3.",
      },
    ]);
  });

  test.each([
    ["a sum down a hidden column", ["B"], []],
    ["hidden columns outside of it", ["A", "F"], []],
    ["its first column", ["B"], ["E2", "E3"]],
    ["its last column", ["D"], ["E2", "E3"]],
    ["all of its columns", ["B", "C", "D"], []],
  ])("%s", (what, hiddenColumns, found) => {
    const rows = what.includes("down")
      ? [...across.map((row) => row.slice(0, 4)), ["", "", "", "=SUM(B2:B3)"]]
      : across;
    expect(cellsFound(hiddenInTotal, { rows, hiddenColumns })).toEqual(found);
  });

  test("and rows count each cell once", () => {
    const rows = [
      ["", 1, 2, 3],
      ["", 10, 20, 30],
      ["", 100, 200, 300],
      ["All", "=SUM(B1:D3)"],
    ];
    // Row 2 is 60, column C is 2 + 200 more.
    expect(findWith(hiddenInTotal, { rows, hiddenRows: [2], hiddenColumns: ["C"] })).toMatchObject([
      {
        related: ["B2", "C2", "D2", "C1", "C3"],
        seen: "“All” includes hidden columns: 262 of 666.",
      },
    ]);
  });
});
