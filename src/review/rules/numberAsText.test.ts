import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import { numberAsText, readNumber } from "./numberAsText";

describe("a text that is a number", () => {
  test.each([
    ["50", 50],
    ["50.", 50],
    ["0.5", 0.5],
    [".5", 0.5],
    ["0", 0],
    ["-5", -5],
    ["+5", 5],
    ["$60", 60],
    ["-$60", -60],
    ["1,200", 1200],
    ["12,345", 12345],
    ["1,200%", 12],
    [".55", 0.55],
    ["$1,234,567.89", 1234567.89],
    ["8%", 0.08],
    ["8%", 0.08],
    ["1,200%", 12],
    ["'30", 30],
    ["  30  ", 30],
    ["30\u00a0", 30],
    ["30\u00a0%", 0.3],
  ])("%j", (text, number) => {
    expect(readNumber(text)).toBe(number);
  });

  test.each([
    ["a mark", "007"],
    ["a measure", "12 ft"],
    ["tape text", `5' 6"`],
    ["tape text", "5'"],
    ["a date", "12/7"],
    ["a range", "3-4"],
    ["two numbers", "3 4"],
    ["commas in the wrong place", "1,20"],
    ["commas in the wrong place", "1200,300"],
    ["a power", "1e3"],
    ["two signs", "--5"],
    ["nothing", ""],
    ["a sign only", "$"],
    ["a point only", "."],
    ["words before it", "about 50"],
    ["words after it", "1,200 each"],
    ["more digits than a number can have", "9".repeat(400)],
  ])("is not %s: %j", (_, text) => {
    expect(readNumber(text)).toBeUndefined();
  });
});

/** A cost of 50 as text in B3, and a formula that reads it. */
const costs = (formula: string, text = "'50") => [
  ["Line", "Cost", "Price"],
  ["Stone", 100, ""],
  ["Fabric", text, ""],
  ["Total", formula, ""],
];

describe("a number stored as text", () => {
  test("is found where a sum passes over it", () => {
    expect(findWith(numberAsText, costs("=SUM(B2:B3)"))).toMatchObject([
      {
        level: "error",
        rank: 40,
        matters: "Totals skip it, so it looks charged but isn't.",
        cells: ["B3"],
        seen: "“Fabric”, “Cost” holds the text “50”, not a number. B4 skips it.",
        todo: "Change it to a number.",
        fix: { B3: 50 },
      },
    ]);
    expect(findWith(numberAsText, costs("=SUM(B2:B3)"))[0]!.formats).toEqual({});
    expect(findWith(numberAsText, costs("=SUM(B2:B3)", "' 50 "))[0]!.seen).toContain("the text “50”");
  });

  test("names all sums that pass over it", () => {
    const rows = [...costs("=SUM(B2:B3)"), ["Largest", "=MAX(B2:B3)", ""]];
    expect(findWith(numberAsText, rows)[0]!.seen).toContain(" B4 and B5 skip it.");
  });

  test.each([
    ["=SUM(B2:B3)", "error"],
    ["=SUM(B3)", "error"],
    ["=AVERAGE(B3)", "error"],
    ["=MAX(B3,1)", "error"],
    ["=MIN(B3,1)", "error"],
    ["=SUMPRODUCT(B2:B3)", "error"],
    ["=SUMIF(A2:A3,1,B2:B3)", "error"],
    ["=SUMIFS(B2:B3,A2:A3,1)", "error"],
    ["=SUMIF(B2:B3,50,A2:A3)", undefined],
    ["=SUMIFS(A2:A3,B2:B3,50)", undefined],
    ["=COUNTIF(B2:B3,50)", undefined],
    ["=SORT(B2:B3)", undefined],
    ["=B3*2", "warning"],
    ["=B2+B3", "warning"],
    ["=ROUND(B3,0)", "warning"],
    ["=IF(B3>20,1,2)", "warning"],
    ["=IF(B3,1,2)", undefined],
    ['=B3&" each"', undefined],
    ['=B3*2&" each"', undefined],
    ['=TEXT(B3,"0")', undefined],
    ["=CONCATENATE(B3,B2)", undefined],
    ["=VLOOKUP(B3,A1:B2,2)", undefined],
    ["=HLOOKUP(B3,A1:B2,2)", undefined],
    ["=XLOOKUP(B3,A1:A2,B1:B2)", undefined],
    ["=MATCH(B3,B1:B2,0)", undefined],
    ["=XMATCH(B3,B1:B2)", undefined],
    ["=INDEX(B2:B3,2)", undefined],
    ["=ISNUMBER(B3)", undefined],
    ["=ISTEXT(B3)", undefined],
    ["=ISNONTEXT(B3)", undefined],
    ["=ISBLANK(B3)", undefined],
    ["=ISERROR(B3)", undefined],
    ["=CONCAT(B3,B2)", undefined],
    ['=TEXTJOIN(" ",TRUE,B2:B3)', undefined],
    ["=COUNTA(B2:B3)", undefined],
    ["=ROWS(B2:B3)", undefined],
    ["=COLUMNS(B2:B3)", undefined],
    ["=BED.STONE_YARDS(B3,3)", undefined],
    ["=B3", undefined],
    ["", undefined],
  ])("read by %s", (formula, level) => {
    const rows = costs("").map((row, at) =>
      at === 3 ? ["Total", formula === "" ? "" : { f: formula, v: 1 }, ""] : row,
    );
    expect(findWith(numberAsText, rows).map((one) => one.level)).toEqual(level ? [level] : []);
  });

  test("that the program takes as a number is less sure", () => {
    expect(findWith(numberAsText, costs("=B3*2"))).toMatchObject([
      {
        level: "warning",
        rank: 15,
        matters: "It works as a number here, but totals would skip it.",
        seen: "“Fabric”, “Cost” holds the text “50”, not a number.",
        fix: { B3: 50 },
      },
    ]);
  });

  test("is no mistake where one formula takes it as text", () => {
    expect(cellsFound(numberAsText, [...costs("=B3*2"), ["Note", '=B3&" each"', ""]])).toEqual([]);
    expect(cellsFound(numberAsText, [...costs("=SUM(B2:B3)"), ["Note", '=B3&" each"', ""]])).toEqual(["B3"]);
  });

  test("is followed through cells that only repeat it", () => {
    const rows = [
      ["Line", "Cost", "Price"],
      ["Stone", 100, 130],
      ["Fabric", "'50", "=B3"],
      ["Total", "", "=SUM(C2:C3)"],
    ];
    expect(findWith(numberAsText, rows)[0]!.seen).toContain(" C4 skips it.");
  });

  test("is found among formulas, whatever reads it", () => {
    const rows = [
      ["Bed", "Length", "Width", "Area"],
      ...[2, 3, 4, 5, 6].map((row) => ["Bed", 12, 6, row === 4 ? "'72" : `=B${row}*C${row}`]),
    ];
    expect(findWith(numberAsText, rows)).toMatchObject([{ level: "error", rank: 40, cells: ["D4"], fix: { D4: 72 } }]);
  });

  test("loses the text format of its cell with the fix", () => {
    const sheet = { rows: costs("=SUM(B2:B3)"), formats: { B3: "@" } };
    expect(findWith(numberAsText, sheet)[0]!.formats).toEqual({ B3: "General" });
  });

  test("may be a share", () => {
    expect(findWith(numberAsText, costs("=SUM(B2:B3)", "'8%"))[0]!.fix).toEqual({ B3: 0.08 });
  });

  test("is not another text, a formula, or on a protected sheet", () => {
    expect(cellsFound(numberAsText, costs("=SUM(B2:B3)", "by hand"))).toEqual([]);
    expect(cellsFound(numberAsText, costs("=SUM(B2:B3)", '="50"'))).toEqual([]);
    expect(cellsFound(numberAsText, { rows: costs("=SUM(B2:B3)"), protected: true })).toEqual([]);
  });

  test("is one finding for each column", () => {
    const rows = [
      ["Line", "Cost", "Price"],
      ["Stone", "'100", "'130"],
      ["Fabric", "'50", 65],
      ["Total", "=SUM(B2:B3)", "=SUM(C2:C3)"],
    ];
    expect(findWith(numberAsText, rows).map(({ cells }) => cells)).toEqual([["B2", "B3"], ["C2"]]);
  });
});

test("the numbers of lines are text", () => {
  const rows = (second: string) => [
    ["No.", "Line", "Cost"],
    ["'1.1", "Stone", 100],
    [second, "Fabric", 50],
    ["=SUM(A2:A3)", "All", "=SUM(C2:C3)"],
  ];
  expect(cellsFound(numberAsText, rows("'1.2"))).toEqual([]);
  expect(cellsFound(numberAsText, rows("'7.5"))).toEqual(["A2", "A3"]);
  expect(cellsFound(numberAsText, rows("'2.")).includes("A3")).toBe(false);
});
