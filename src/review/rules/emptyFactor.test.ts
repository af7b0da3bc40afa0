import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import { emptyFactor } from "./blanks";

/** A formula in B3 that reads C2, which is empty. */
const reads = (formula: string) => [
  ["Stone", 9],
  ["", "", "", ""],
  ["Order", formula],
];

describe("an empty cell that a formula multiplies with", () => {
  test.each([
    ["=B1*C2", true],
    ["=C2*B1", true],
    ["=B1*(1+C2)", true],
    ["=B1*(1-C2)", true],
    ["=B1*(C2+1)", true],
    ["=B1/(1-C2)", true],
    ["=B1*C2/100", true],
    ["=B1*(1+C2/100)", true],
    ["=B1*(C2/100)", true],
    ["=B1*(1-C2/100)", true],
    ["=B1+C2*2", true],
    ["=B1+C2", false],
    ["=1+C2", false],
    ["=1-C2+B1", false],
    ["=B1*(2+C2)", false],
    ["=B1^C2", false],
    ["=C2/100", false],
    ["=1+C2/100", false],
    ["=B1+C2/100", false],
    ["=B1*(2+C2/100)", false],
    ["=B1*(1+C2*2)", true],
    ["=B1&C2", false],
    ["=B1*SUM(C2:D2)", false],
    ["=B1/C2", false],
    ['=B1*C2&" tons"', false],
    ['=IF(C2="",B1,B1*C2)', false],
    ["=IF(ISBLANK(C2),0,B1*C2)", false],
    ["=B1*B1", false],
    ["=B1*(1&C2)", false],
    ["=B1*(1*C2)", true],
    ["=B1*(C2=1)", false],
    ["=B1*SUM(1,C2)", false],
  ])("%s", (formula, isFound) => {
    expect(cellsFound(emptyFactor, reads(formula))).toEqual(isFound ? ["C2"] : []);
  });

  test("may be the wrong cell where nothing labels it", () => {
    expect(findWith(emptyFactor, reads("=B1*C2"))).toMatchObject([
      {
        level: "warning",
        rank: 35,
        cells: ["C2"],
        related: ["B3"],
        seen: "The cell is empty, and B3 (“Order”) reads it.",
        todo: "Check that it reads the right cell.",
      },
    ]);
  });

  test("may be left empty on purpose where it is labeled", () => {
    const rows = [
      ["Stone", 9],
      ["Waste", ""],
      ["Order", "=B1*(1+B2)"],
    ];
    expect(findWith(emptyFactor, rows)).toMatchObject([
      {
        level: "question",
        cells: ["B2"],
        seen: "“Waste” is empty, and B3 (“Order”) reads it.",
        todo: "Type a value, or ignore this if it should be empty.",
      },
    ]);
  });

  test("is told from where it is, on whatever sheet", () => {
    const sheets = [
      { name: "Rates", rows: [["Waste", "", "x"]] },
      {
        name: "Jobs",
        rows: [
          ["Stone", 9],
          ["Order", "=B1*(1+Rates!B1)"],
        ],
      },
    ];
    expect(findWith(emptyFactor, { sheets })).toMatchObject([
      { cells: ["Rates!B1"], related: ["B2"], seen: "“Waste” is empty, and Jobs!B2 (“Order”) reads it." },
    ]);
  });

  test("is one finding whatever reads it, and each cell is its own", () => {
    const rows = [
      ["Stone", 9],
      ["", "", "", ""],
      ["Order", "=B1*C2", "=B1*2*C2"],
      ["Fee", "=B1*D2"],
    ];
    expect(findWith(emptyFactor, rows).map(({ cells, related }) => [cells, related])).toEqual([
      [["C2"], ["B3"]],
      [["D2"], ["B4"]],
    ]);
  });

  test("is left to another rule in lines that are filled down, and where a formula was cleared", () => {
    const filled = [
      ["Bed", "Length", "Width", "Area"],
      ...[2, 3, 4, 5].map((row) => ["Bed", 9, row === 3 ? "" : 2, `=B${row}*C${row}`]),
    ];
    expect(cellsFound(emptyFactor, filled)).toEqual([]);
    const cleared = [
      ["Bed", "Length", "Width", "Area"],
      ...[2, 3, 4, 5, 6].map((row) => ["Bed", 9, 2, row === 4 ? "" : `=B${row}*C${row}`]),
      ["", "", "", ""],
      ["Order", "", "=D4*2"],
    ];
    expect(cellsFound(emptyFactor, cleared)).toEqual([]);
  });
});
