import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { errors } from "./errors";
import { typedOver } from "./neighbors";
import { numberAsText } from "./numberAsText";

const shows = (f: string, v: string): CellText => ({ f, v });
/** What is said of an error in B3, which may read 9 in B1 and what is given in B2. */
const said = (cell: CellText, second: CellText = 2) => {
  const [found] = findWith(errors, [
    ["Stone", 9],
    ["Parts", second],
    ["Order", cell],
  ]);
  return found && `${found.cells} ${found.seen}`;
};

describe("an error", () => {
  test("is told where it began, with the totals it runs into", () => {
    const rows = [
      ["Stone", "=9/0"],
      ["Order", "=B1*2"],
      ["Delivery", "=B1+50"],
      ["Total", "=SUM(B2:B3)"],
      ["Count", "=COUNT(B1:B3)"],
    ];
    expect(findWith(errors, rows)).toMatchObject([
      {
        level: "error",
        rank: 90,
        cells: ["B1"],
        related: [],
        seen: "“Stone” shows #DIV/0!: it divides by 0 or a blank. It carries into B4.",
        todo: "Fix the cells this formula reads.",
        fix: undefined,
      },
    ]);
  });

  test("runs into every end that shows it", () => {
    const rows = [
      ["Stone", "=9/0"],
      ["Order", "=B1*2"],
      ["Delivery", "=B1+50"],
    ];
    expect(findWith(errors, rows)[0]!.seen).toContain("It carries into B2 and B3.");
  });

  test("on another sheet is named with it", () => {
    const sheets = [
      { name: "Jobs", rows: [["Stone", "=9/0"]] },
      { name: "Quote", rows: [["Total", "=Jobs!B1"]] },
    ];
    expect(findWith(errors, { sheets })).toMatchObject([
      { cells: ["B1"], seen: "“Stone” shows #DIV/0!: it divides by 0 or a blank. It carries into Quote!B1." },
    ]);
  });

  test.each([
    [shows("=SQFT(B1)", "#NAME?"), "B3 “Order” shows #NAME?."],
    [shows("=B1*#REF!", "#REF!"), "B3 “Order” shows #REF!: it reads deleted cells."],
    [shows("=B1/#REF!", "#VALUE!"), "B3 “Order” shows #VALUE!: it reads deleted cells."],
    [shows("=INDEX(B1:B2,9)", "#REF!"), "B3 “Order” shows #REF!: it reads deleted cells."],
    [shows("=B1/(B2-2)", "#DIV/0!"), "B3 “Order” shows #DIV/0!: it divides by 0 or a blank."],
    [shows("=B1+B2", "#VALUE!"), "B3 “Order” shows #VALUE!."],
    ["#N/A", "B3 “Order” shows #N/A."],
    [shows("=B1", "#BUSY!"), undefined],
    [shows("=B1", "#GETTING_DATA"), undefined],
    [shows("=B1", "#CALC!"), undefined],
    ["error", undefined],
    ["=B1+B2", undefined],
  ])("%j", (cell, words) => {
    expect(said(cell)).toBe(words);
  });

  test("gives the reason that the function itself gives", () => {
    expect(said("=ROUNDUP(BED.STONE_TONS(B1,-3,1.35),0)")).toMatch(/^B3 “Order” shows #VALUE!: .*depth_in.*-3/);
  });

  test("of a name needs another remedy", () => {
    const rows = [["Order", shows("=SQFT(9)", "#NAME?")]];
    expect(findWith(errors, rows)[0]!.todo).toBe(
      "Check the spelling of the function or name, or load the add-in it comes from.",
    );
  });

  test("on a protected sheet is left alone", () => {
    expect(cellsFound(errors, { rows: [["Stone", "=9/0"]], protected: true })).toEqual([]);
  });

  test("is one finding where it was filled down", () => {
    const filled = [
      ["Bed", "Stone", "Order"],
      ["Walk", 9, "=B2/0"],
      ["Yard", 9, "=B3/0"],
      ["Gate", 9, "=B4/0*2"],
    ];
    expect(findWith(errors, filled).map(({ cells }) => cells)).toEqual([["C2", "C3"], ["C4"]]);
    const typed = [
      ["Bed", "Stone"],
      ["Walk", "#N/A"],
      ["Yard", "#N/A"],
      ["Gate", "#REF!"],
    ];
    expect(findWith(errors, typed).map(({ cells }) => cells)).toEqual([["B2", "B3"], ["B4"]]);
  });

  test("that comes in by a range is told where it began", () => {
    const block = (formula: string) => [
      ["Stone", 5, 6],
      ["Fabric", 7, "=1/0"],
      ["All", formula, ""],
    ];
    expect(cellsFound(errors, block("=SUM(B1:C2)"))).toEqual(["C2"]);
    expect(cellsFound(errors, block("=SUM(B1:C1)/0"))).toEqual(["C2", "B3"]);
    expect(cellsFound(errors, block("=SUM(B1:B2)/0"))).toEqual(["C2", "B3"]);
  });

  test("says nothing new where its cause is told", () => {
    const rows = [
      ["Bed", "Length", "Width", "Area", "Order"],
      ...[2, 3, 4, 5, 6].map((row) => ["Bed", 12, 6, row === 4 ? 0 : `=B${row}*C${row}`, `=90/D${row}`]),
    ];
    expect(cellsFound(errors, rows)).toEqual(["E4"]);
    expect(cellsFound([errors, typedOver], rows)).toEqual(["D4"]);
    // A number as text that a formula can read is no mistake, and no cause.
    const text = [
      ["Stone", "'9"],
      ["Order", "=B1/0"],
    ];
    expect(cellsFound([errors, numberAsText], text)).toEqual(["B2", "B1"]);
  });
});

describe("an error from a blank", () => {
  test("is told at the blank", () => {
    const rows = [
      ["Stone", 9],
      ["Parts", ""],
      ["Order", "=B1/B2"],
      ["Total", "=B3*2"],
    ];
    expect(findWith(errors, rows)).toMatchObject([
      {
        level: "error",
        cells: ["B2"],
        related: ["B3"],
        seen: "“Parts” is blank, so B3 shows #DIV/0!. It carries into B4.",
        todo: "Type a value.",
      },
    ]);
  });

  test.each([
    ["a divisor", "=B1/B2", true],
    ["a divisor in brackets", "=B1/(B2)", true],
    ["a needed argument", shows("=BED.STONE_TONS(B1,B2,1.35)", "#VALUE!"), true],
    ["a needed argument inside", shows("=ROUNDUP(BED.STONE_TONS(B1,B2,1.35),0)", "#VALUE!"), true],
    ["an argument that may be left out", shows("=BED.STONE_TONS(B1,0,1.35,B2)", "#VALUE!"), false],
    ["a factor", shows("=B1*B2/0", "#DIV/0!"), false],
    ["what is divided", shows("=B2/(B1-9)", "#DIV/0!"), false],
    ["an argument of another function", shows("=SQRT(B2)", "#NUM!"), false],
  ])("in %s", (_, cell, isBlank) => {
    expect(said(cell, "")?.slice(0, 2)).toBe(isBlank ? "B2" : "B3");
  });

  test("in a range is told at the first blank", () => {
    const rows = [
      ["Widths", 4, 5, "", 6, ""],
      ["Area", shows("=BED.AREA_WIDTHS(2,B1:F1)", "#VALUE!")],
    ];
    expect(cellsFound(errors, rows)).toEqual(["D1"]);
    const down = [
      ["Widths", 4],
      ["", 5],
      ["", ""],
      ["Area", shows("=BED.AREA_WIDTHS(2,B1:B3)", "#VALUE!")],
    ];
    expect(cellsFound(errors, down)).toEqual(["B3"]);
  });

  test("is followed back through three zeros", () => {
    const chain = (steps: number) => [
      ["Typed", ""],
      ...Array.from({ length: steps }, (_, at) => ["Step", `=B${at + 1}*2`]),
      ["Order", `=9/B${steps + 1}`],
    ];
    expect([1, 2, 3].map((steps) => cellsFound(errors, chain(steps)))).toEqual([["B1"], ["B1"], ["B1"]]);
    expect(cellsFound(errors, chain(4))).toEqual(["B6"]);
  });

  test("is not looked for behind a number, a typed 0, or a range", () => {
    const rows = (second: CellText, order: CellText = "=9/B2") => [
      ["Typed", ""],
      ["Step", second],
      ["Order", order],
    ];
    expect(cellsFound(errors, rows("=SUM(A1:B1)"))).toEqual(["B3"]);
    expect(cellsFound(errors, rows(0))).toEqual(["B3"]);
    expect(cellsFound(errors, rows("=B1+5", "=9/(B2-5)"))).toEqual(["B3"]);
    expect(cellsFound(errors, rows("=B1+5", shows("=9/B2", "#DIV/0!")))).toEqual(["B3"]);
  });

  test("is one finding down a column", () => {
    const rows = [
      ["Bed", "Stone", "Parts", "Order"],
      ["Walk", 9, "", "=B2/C2"],
      ["Yard", 9, "", "=B3/C3"],
    ];
    expect(findWith(errors, rows)).toMatchObject([{ cells: ["C2", "C3"], related: ["D2", "D3"] }]);
  });
});

test("NA() is meant", () => {
  const rows = (formula: string) => [
    ["Month", "Loads"],
    ["May", { f: formula, v: "#N/A" }],
  ];
  expect(cellsFound(errors, rows("=NA()"))).toEqual([]);
  expect(cellsFound(errors, rows("=IF(A2=1,5,NA())"))).toEqual([]);
  expect(cellsFound(errors, rows("=MATCH(5,A1:A2,0)"))).toEqual(["B2"]);
});
