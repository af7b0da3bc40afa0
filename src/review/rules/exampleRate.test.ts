import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { exampleRate } from "./rates";

/** A price in B1 with a mark beside it, and what reads it. */
const priced = (mark: CellText, reader: CellText = "=9*B1", price: CellText = 60) => [
  ["Stone price", price, mark],
  ["Order", reader, ""],
];

describe("a rate that is marked as an example", () => {
  test("is a question where it is in use", () => {
    expect(findWith(exampleRate, priced("example"))).toMatchObject([
      {
        level: "question",
        rank: 40,
        cells: ["B1"],
        related: ["C1"],
        seen: "“Stone price” is marked “example” and is in use.",
        todo: "Type your own price and remove the mark.",
        fix: undefined,
      },
    ]);
  });

  test.each([
    ["example", true],
    ["Example price", true],
    ["examples", true],
    ["our own", false],
    ["exemplary", false],
    ["counterexample", false],
    [`example ${"x".repeat(52)}`, true],
    [`example ${"x".repeat(53)}`, false],
    [60, false],
  ])("by %s", (mark, isFound) => {
    expect(cellsFound(exampleRate, priced(mark))).toEqual(isFound ? ["B1"] : []);
  });

  test.each([
    ["nothing", ""],
    ["another cell", "=9*C9"],
  ])("is no question where %s reads it", (_, reader) => {
    expect(cellsFound(exampleRate, priced("example", reader))).toEqual([]);
  });

  test("is in use where a number in its own row is made of it, and not where only a note reads it", () => {
    const row = (reader: string) => [["Stone price", 60, "example", reader]];
    expect(cellsFound(exampleRate, row("=B1*9"))).toEqual(["B1"]);
    expect(cellsFound(exampleRate, row('=IF(B1=60,"ours","not ours")'))).toEqual([]);
    expect(cellsFound(exampleRate, priced("example", '=IF(B1=60,"ours","not ours")'))).toEqual(["B1"]);
  });

  test("is in use on another sheet, also in the same row", () => {
    const sheets = [
      { name: "Jobs", rows: [["Order", '=IF(Rates!B1>50,"high","low")']] },
      { name: "Rates", rows: [["Stone price", 60, "example"]] },
    ];
    expect(cellsFound(exampleRate, { sheets })).toEqual(["Rates!B1"]);
  });

  test("may be worked out", () => {
    expect(cellsFound(exampleRate, priced("example", "=9*B1", "=50+10"))).toEqual(["B1"]);
  });

  test("is the first number in the row of the mark that is in use", () => {
    expect(
      cellsFound(exampleRate, [
        ["", "Stone", 5, 60, "example"],
        ["Order", "=9*D1", "", "", ""],
      ]),
    ).toEqual(["D1"]);
  });

  test("is one finding for all marks that say the same", () => {
    const rows = [
      ["Stone", 60, "example"],
      ["Fabric", 90, "example"],
      ["Pins", 40, "example price"],
      ["All", "=B1+B2+B3", ""],
    ];
    expect(findWith(exampleRate, rows).map(({ cells }) => cells)).toEqual([["B1", "B2"], ["B3"]]);
  });

  test("is left alone on a protected sheet", () => {
    expect(cellsFound(exampleRate, { rows: priced("example"), protected: true })).toEqual([]);
  });
});

describe("a mark that a formula makes", () => {
  const mark = '=IF(1=1,"example","")';

  test("goes by itself once the rate is typed", () => {
    expect(findWith(exampleRate, priced(mark))).toMatchObject([
      {
        cells: ["B1"],
        seen: "“Stone price” is marked “example” and is in use.",
        todo: "Type your own price; the mark goes away.",
      },
    ]);
  });

  test("is told of where the rate is typed, and not where a formula follows it", () => {
    expect(cellsFound(exampleRate, priced(mark, "=9*B1", "=50+10"))).toEqual([]);
  });

  test("is one finding for the whole sheet", () => {
    const rows = [
      ["Stone", 60, mark],
      ["Fabric", 90, '=IF(1=1,"example price","")'],
      ["All", "=B1+B2", ""],
    ];
    expect(findWith(exampleRate, rows).map(({ cells }) => cells)).toEqual([["B1", "B2"]]);
  });
});

test("words about an example of something else mark no rate", () => {
  const rows = (mark: string) => [
    ["Stone price", 60, mark],
    ["Order", "=9*B1"],
  ];
  expect(cellsFound(exampleRate, rows("worked example, see the plan"))).toEqual([]);
  expect(cellsFound(exampleRate, rows("a sample price"))).toEqual(["B1"]);
  expect(
    cellsFound(exampleRate, [
      ["Sample bed", 60],
      ["Order", "=9*B1"],
    ]),
  ).toEqual([]);
});
