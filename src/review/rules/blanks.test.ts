import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { blanks } from "./blanks";

type Row = readonly CellText[];
const HEAD: Row = ["Bed", "Length (ft)", "Width (ft)", "Area (sq ft)"];

/** Beds of 12 by 6 ft, with some of their rows replaced: `{ 4: ["Patio", 12, "", "=B4*C4"] }`. */
const beds = (given: Readonly<Record<number, Row>> = {}, count = 5, formula = (row: number) => `=B${row}*C${row}`) => [
  HEAD,
  ...Array.from({ length: count }, (_, at) => given[at + 2] ?? [`Bed ${at + 2}`, 12, 6, formula(at + 2)]),
];

describe("a formula that was cleared", () => {
  test("is found with the formula to put back", () => {
    expect(findWith(blanks, beds({ 4: ["Patio", 12, 6, ""] }))).toMatchObject([
      {
        level: "error",
        rank: 40,
        cells: ["D4"],
        seen: "“Patio”, “Area (sq ft)” is blank, but the cells next to it have a formula and the cells it reads are filled in.",
        todo: "Put the formula back, or ignore this and say why.",
        fix: { D4: "=B4*C4" },
      },
    ]);
  });

  test.each([
    ["a typed number is no blank", ["Patio", 12, 6, 72]],
    ["nothing is missing on a line that isn't used", ["Patio", "", "", ""]],
    ["a note isn't used either", ["Two more beds are in the back yard", "", "", ""]],
  ])("%s", (_, row) => {
    expect(cellsFound(blanks, beds({ 4: row }))).toEqual([]);
  });

  test("on a protected sheet is left alone", () => {
    expect(cellsFound(blanks, { rows: beds({ 4: ["Patio", 12, 6, ""] }), protected: true })).toEqual([]);
  });

  test("is one finding for each column", () => {
    const rows = [
      ["Bed", "Length (ft)", "Width (ft)", "Area (sq ft)", "Run (ft)"],
      ...Array.from({ length: 12 }, (_, at) => {
        const row = at + 2;
        return ["Bed", 12, 6, row === 4 || row === 6 ? "" : `=B${row}*C${row}`, row === 4 ? "" : `=B${row}+C${row}`];
      }),
    ];
    expect(findWith(blanks, rows).map(({ cells }) => cells)).toEqual([["D4", "D6"], ["E4"]]);
  });
});

describe("a blank that a formula reads", () => {
  test("is found where the lines beside it have something there", () => {
    expect(findWith(blanks, beds({ 4: ["Patio", 12, "", "=B4*C4"] }))).toMatchObject([
      {
        level: "error",
        rank: 40,
        cells: ["C4"],
        related: ["D4"],
        seen: "“Patio”, “Width (ft)” is blank, so D4 is worked out without it.",
        todo: "Type a value.",
        fix: undefined,
      },
    ]);
  });

  test("is a question where it is a quantity", () => {
    const rows = [
      ["Line", "Qty", "Each", "Cost"],
      ...[2, 3, 4, 5, 6].map((row) => ["Stone", row === 4 ? "" : 12, 6, `=B${row}*C${row}`]),
    ];
    expect(findWith(blanks, rows)).toMatchObject([
      { level: "question", cells: ["B4"], todo: "Type the quantity, or ignore this if you don't need the line." },
    ]);
  });

  // Four lines in five have to have something there: then a blank is a gap.
  test.each([
    [5, 1, 1],
    [4, 1, 0],
    [10, 2, 2],
    [9, 2, 0],
  ])("of %i lines %i are blank: %i are found", (count, blank, found) => {
    const given = Object.fromEntries([2, 3].slice(0, blank).map((row) => [row, ["Patio", 12, "", `=B${row}*C${row}`]]));
    expect(cellsFound(blanks, beds(given, count))).toHaveLength(found);
  });

  test("is no gap on a spare line, and spare lines don't count", () => {
    const spare = Object.fromEntries([7, 8, 9, 10].map((row) => [row, ["", "", "", `=B${row}*C${row}`]]));
    expect(cellsFound(blanks, beds(spare, 9))).toEqual([]);
    expect(cellsFound(blanks, beds({ ...spare, 4: ["Patio", 12, "", "=B4*C4"] }, 9))).toEqual(["C4"]);
  });

  test("counts formulas as something, where all lines have one", () => {
    const rows = (given: CellText) => [
      HEAD,
      ...[2, 3, 4, 5, 6].map((row) => [
        `Bed ${row}`,
        row === 4 ? given : `=10+${row}`,
        `=3*${row}`,
        `=B${row}*C${row}`,
      ]),
    ];
    expect(cellsFound(blanks, rows("=14"))).toEqual([]);
    expect(cellsFound(blanks, rows(""))).toEqual(["B4"]);
  });

  test.each([
    ["a formula that gives text expects blanks", '=IF(C4>0,B4*C4,"")'],
    ["a formula that asks for a blank first", '=IF(C4="",0,B4*C4)'],
    ["a formula that asks ISBLANK first", "=IF(ISBLANK(C4),0,B4*C4)"],
  ])("%s", (_, formula) => {
    const at = (row: number) => formula.replaceAll("4", String(row));
    expect(cellsFound(blanks, beds({ 4: ["Patio", 12, "", at(4)] }, 5, at))).toEqual([]);
  });

  test("is found in the one cell a named line reads, and not on a line without a name", () => {
    const rows = (name: string) => [
      ["Bed", "Hours", "Labor"],
      ...[2, 3, 4, 5, 6, 7].map((row) => [row === 4 ? name : "Bed", row === 4 ? "" : 5, `=B${row}*46`]),
    ];
    expect(cellsFound(blanks, rows("Patio"))).toEqual(["B4"]);
    expect(cellsFound(blanks, rows(""))).toEqual([]);
  });

  test("is left alone in a row of totals", () => {
    expect(cellsFound(blanks, beds({ 6: ["Total", 12, "", "=B6*C6"] }))).toEqual([]);
    expect(cellsFound(blanks, beds({ 6: ["Tool shed", 12, "", "=B6*C6"] }))).toEqual(["C6"]);
  });

  test("is left alone where a formula is missing there: that is told once", () => {
    const rows = [
      [...HEAD, "Stone (cu yd)"],
      ...[2, 3, 4, 5, 6].map((row) => ["Bed", 12, 6, row === 4 ? "" : `=B${row}*C${row}`, `=D${row}*B${row}/324`]),
    ];
    expect(cellsFound(blanks, rows)).toEqual(["D4"]);
    expect(findWith(blanks, rows)[0]!.fix).toEqual({ D4: "=B4*C4" });
  });

  test("is found on another sheet, and across", () => {
    const sheets = [
      {
        name: "Jobs",
        rows: [["Bed", "Area (sq ft)"], ...[2, 3, 4, 5, 6].map((row) => ["Bed", `=Tape!B${row}*Tape!C${row}`])],
      },
      { name: "Tape", rows: [HEAD.slice(0, 3), ...[2, 3, 4, 5, 6].map((row) => ["Bed", 12, row === 5 ? "" : 6])] },
    ];
    expect(cellsFound(blanks, { sheets })).toEqual(["Tape!C5"]);
    const across = [
      ["", "Walk", "Yard", "Patio", "Gate", "Fence"],
      ["Length (ft)", 12, 12, 12, 12, 12],
      ["Width (ft)", 6, 6, "", 6, 6],
      ["Area (sq ft)", "=B2*B3", "=C2*C3", "=D2*D3", "=E2*E3", "=F2*F3"],
    ];
    expect(cellsFound(blanks, across)).toEqual(["D3"]);
  });

  test("that only a fixed reference or a range reads is no gap", () => {
    const rows = [HEAD, ...[2, 3, 4, 5, 6].map((row) => ["Bed", 12, row === 4 ? "" : 6, `=B${row}*$C$4`])];
    expect(cellsFound(blanks, rows)).toEqual([]);
    const ranges = [HEAD, ...[2, 3, 4, 5, 6].map((row) => ["Bed", 12, row === 4 ? "" : 6, `=SUM(B${row}:C${row})`])];
    expect(cellsFound(blanks, ranges)).toEqual([]);
  });

  test("is one finding for each column", () => {
    const rows = beds(
      { 4: ["Patio", 12, "", "=B4*C4"], 6: ["Gate", 12, "", "=B6*C6"], 8: ["Shed", "", 6, "=B8*C8"] },
      10,
    );
    expect(findWith(blanks, rows).map(({ cells }) => cells)).toEqual([["C4", "C6"], ["B8"]]);
  });
});

describe("a blank that is none", () => {
  test("a part that a line doesn't have adds nothing", () => {
    const rows = (formula: (row: number) => string) => [
      ["Bed", "Front (ft)", "Side (ft)", "Edging"],
      ...[2, 3, 4, 5, 6, 7].map((row) => ["Bed", 12, row === 4 ? "" : 6, formula(row)]),
    ];
    expect(
      cellsFound(
        blanks,
        rows((row) => `=B${row}+C${row}`),
      ),
    ).toEqual([]);
    expect(
      cellsFound(
        blanks,
        rows((row) => `=SUM(B${row},C${row})`),
      ),
    ).toEqual([]);
    expect(
      cellsFound(
        blanks,
        rows((row) => `=B${row}*(1+C${row})`),
      ),
    ).toEqual(["C4"]);
  });

  test("what is added first and multiplied then is needed, since the line comes out wrong without it", () => {
    const rows = [
      ["Bed", "Front (ft)", "Side (ft)", "Edging"],
      ...[2, 3, 4, 5, 6, 7].map((row) => ["Bed", 12, row === 4 ? "" : 6, `=ROUND(B${row}+C${row},0)*2`]),
    ];
    expect(cellsFound(blanks, rows)).toEqual(["C4"]);
  });

  test("a function that isn't ours may have a value of its own for a blank", () => {
    const rows = (formula: (row: number) => CellText) => [
      ["Loan", "Months", "Left over", "A month"],
      ...[2, 3, 4, 5, 6, 7].map((row) => ["Dozer", 36, row === 4 ? "" : 900, formula(row)]),
    ];
    expect(
      cellsFound(
        blanks,
        rows((row) => ({ f: `=PMT(0.01,B${row},9000,C${row})`, v: -300 })),
      ),
    ).toEqual([]);
    expect(
      cellsFound(
        blanks,
        rows((row) => ({ f: `=PMT(0.01,B${row},C${row}*10)`, v: -300 })),
      ),
    ).toEqual(["C4"]);
  });

  test("a column that few lines fill in is a choice", () => {
    const rows = (filled: number) => [
      ["Bed", "Extra (h)", "Charge"],
      ...Array.from({ length: 10 }, (_, at) => [`Bed ${at}`, at < filled ? 2 : "", `=B${at + 2}*46`]),
    ];
    expect(cellsFound(blanks, rows(2))).toEqual([]);
    expect(cellsFound(blanks, rows(9))).toEqual(["B11"]);
  });

  test("a heading or a note has words where lines have numbers", () => {
    const rows = (words: CellText) => [
      ["Bed", "Length", "Width", "Area"],
      ...[2, 3, 4].map((row) => ["Bed", 12, 6, `=B${row}*C${row}`]),
      ["Back yard", words, words, ""],
      ...[6, 7, 8].map((row) => ["Bed", 12, 6, `=B${row}*C${row}`]),
    ];
    expect(cellsFound(blanks, rows("feet"))).toEqual([]);
    expect(cellsFound(blanks, rows(12))).toEqual(["D5"]);
  });

  test("a row of totals, by its formulas, has no share or rate of its own", () => {
    const rows = (sum: CellText) => [
      ["Bed", "Area", "Hours", "Pace"],
      ...[2, 3, 4, 5].map((row) => ["Bed", 120, 6, `=B${row}/C${row}`]),
      ["", sum, 24, ""],
    ];
    expect(cellsFound(blanks, rows("=SUM(B2:B5)"))).toEqual([]);
    expect(cellsFound(blanks, rows(480))).toEqual(["D6"]);
  });

  test("below an empty row another table begins", () => {
    const rows = (between: readonly CellText[]) => [
      ["Bed", "Length", "Width", "Area"],
      ...[2, 3, 4, 5].map((row) => ["Bed", 12, 6, `=B${row}*C${row}`]),
      [...between],
      ["Gate", 9, 3, ""],
    ];
    expect(cellsFound(blanks, rows(["", "", "", ""]))).toEqual([]);
    expect(cellsFound(blanks, rows(["by hand from here", "", "", ""]))).toEqual(["D7"]);
  });
});
