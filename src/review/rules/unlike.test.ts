import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { unlike } from "./neighbors";

const HEAD = ["Bed", "Length (ft)", "Width (ft)", "Area (sq ft)"];
/** Beds with their areas, some of them given: `{ 4: "=B4+C4" }`. */
const beds = (count: number, given: Readonly<Record<number, CellText>>) => [
  HEAD,
  ...Array.from({ length: count }, (_, place) => {
    const row = place + 2;
    return [`Bed ${row}`, 12, 6, given[row] ?? `=B${row}*C${row}`];
  }),
];

describe("a formula that differs from those beside it", () => {
  test("is found with what both give", () => {
    expect(findWith(unlike, beds(5, { 4: "=B4*C4*2" }))).toMatchObject([
      {
        level: "error",
        // 144 for 72 is 100% off.
        rank: 100,
        cells: ["D4"],
        seen: "“Bed 4”, “Area (sq ft)” has =B4*C4*2; the cells next to it would make it =B4*C4. It gives 144, the other 72.",
        todo: "Use the formula from the cells next to it, or ignore this and say why.",
        fix: { D4: "=B4*C4" },
      },
    ]);
  });

  test("may give the same now", () => {
    expect(findWith(unlike, beds(5, { 4: "=C4*B4*1" }))).toMatchObject([
      {
        rank: 5,
        seen: "“Bed 4”, “Area (sq ft)” has =C4*B4*1; the cells next to it would make it =B4*C4. Both give the same result now.",
      },
    ]);
  });

  test("that shows an error ranks high", () => {
    expect(findWith(unlike, beds(5, { 4: "=B4/0" }))).toMatchObject([
      {
        rank: 90,
        seen: "“Bed 4”, “Area (sq ft)” has =B4/0; the cells next to it would make it =B4*C4. It shows #DIV/0!.",
      },
    ]);
  });

  test("that gives text says nothing of numbers", () => {
    expect(findWith(unlike, beds(5, { 4: `=B4&" ft"` }))).toMatchObject([
      {
        rank: 30,
        seen: `“Bed 4”, “Area (sq ft)” has =B4&" ft"; the cells next to it would make it =B4*C4.`,
      },
    ]);
  });

  test("says nothing of numbers where the neighbors' formula can't be worked out", () => {
    const unknown = (row: number): CellText => ({ f: `=OFFICEAREA(B${row},C${row})`, v: 80 });
    const rows = beds(5, { 2: unknown(2), 3: unknown(3), 4: "=B4*C4", 5: unknown(5), 6: unknown(6) });
    expect(findWith(unlike, rows)).toMatchObject([
      {
        rank: 30,
        seen: "“Bed 4”, “Area (sq ft)” has =B4*C4; the cells next to it would make it =OFFICEAREA(B4,C4).",
      },
    ]);
  });

  test.each([
    ["a typed number", 50],
    ["text", "by hand"],
    ["a blank", ""],
  ])("is not %s", (_, area) => {
    expect(cellsFound(unlike, beds(5, { 4: area }))).toEqual([]);
  });

  // Up to a quarter of the formulas may differ by mistake; more are a choice. One always may.
  test.each([
    [5, 1, 1],
    [4, 1, 1],
    [6, 2, 0],
    [9, 2, 0],
    [10, 2, 2],
    [12, 3, 0],
    [15, 3, 3],
  ])("of %i formulas %i differ: %i are found", (count, others, found) => {
    const given = Object.fromEntries(
      Array.from({ length: others }, (_, place) => [3 + place, `=B${3 + place}*C${3 + place}*${place + 2}`]),
    );
    expect(cellsFound(unlike, beds(count, given))).toHaveLength(found);
  });

  test("belongs to neighbors of its own where three or more are alike", () => {
    const rows = [
      HEAD,
      ...Array.from({ length: 12 }, (_, at) => [`Bed ${at}`, 12, 6, `=B${at + 2}*C${at + 2}`]),
      ...[14, 15, 16].map((row) => [`Ring ${row}`, 12, 6, `=B${row}*C${row}*2`]),
    ];
    expect(cellsFound(unlike, rows)).toEqual([]);
  });

  test("is left alone where no one can write the neighbors' formula for its row", () => {
    const names = (row: number): CellText => ({ f: `=LET(l,B${row},l*C${row})`, v: 80 });
    const given = { 2: names(2), 3: names(3), 4: "=B4*C4", 5: names(5), 6: names(6) };
    expect(cellsFound(unlike, beds(5, given))).toEqual([]);
  });

  test("on a protected sheet is left alone", () => {
    expect(cellsFound(unlike, { rows: beds(5, { 4: "=B4*C4*2" }), protected: true })).toEqual([]);
  });

  test("in a row of different things is left alone", () => {
    const rows = (headings: readonly string[]) => [
      ["Line", ...headings],
      ["Front walk", 9, 4, 3, 100, 130],
      ["Side yard", 8, 4, 3, 100, 130],
      ["All work", "=SUM(B2:B3)", "=SUM(C2:C3)", "=SUM(D2:D3)", "=MAX(E2:E3)", "=SUM(F2:F3)"],
    ];
    expect(cellsFound(unlike, rows(["Stone (tons)", "Hours", "Loads", "Cost", "Price"]))).toEqual([]);
    expect(cellsFound(unlike, rows(["March", "April", "May", "June", "July"]))).toEqual(["E4"]);
  });

  test("filled down is one finding; another formula is another", () => {
    const given = { 4: "=B4+C4", 5: "=B5+C5" };
    expect(findWith(unlike, beds(12, given)).map(({ cells }) => cells)).toEqual([["D4", "D5"]]);
    expect(findWith(unlike, beds(12, { ...given, 5: "=B5-C5" })).map(({ cells }) => cells)).toEqual([["D5"], ["D4"]]);
  });
});

describe("a formula that goes with others than those in its column", () => {
  const rows = (cell: CellText) => [
    ["Line", "Front", "", "Back", "", "Both"],
    ...[2, 3, 4].map((row) => ["Stone", 100, "", 50, "", `=B${row}+D${row}`]),
    ["All", "=B2+B3", "", "=D2+D3", "", cell],
    ...[6, 7].map((row) => ["Stone", 100, "", 50, "", `=B${row}+D${row}`]),
  ];

  test("is right beside its like", () => {
    expect(cellsFound(unlike, rows("=F2+F3"))).toEqual([]);
    expect(cellsFound(unlike, rows("=F2+F4"))).toEqual(["F5"]);
  });

  test("may be a number that is worked out by hand, where it is far from what they give", () => {
    const shown = (cell: CellText, formula = (row: number) => `=B${row}`) => [
      ["Line", "Spring", "Order"],
      ...[2, 3, 4, 5, 6].map((row) => ["Stone", 100, row === 4 ? cell : formula(row)]),
    ];
    expect(cellsFound(unlike, shown("=10+3"))).toEqual([]);
    expect(cellsFound(unlike, shown("=B4*2"))).toEqual(["C4"]);
    expect(cellsFound(unlike, shown("=90+3"))).toEqual(["C4"]);
    const doubled = (cell: string) =>
      cellsFound(
        unlike,
        shown(cell, (row) => `=B${row}*2`),
      );
    expect(doubled("=180+3")).toEqual(["C4"]);
    expect(doubled("=40+3")).toEqual([]);
  });

  test("may add the same cells one by one, which is a question", () => {
    const sums = (cell: CellText) => [
      ["Line", "Front", "Side", "Back", "All"],
      ...[2, 3, 4, 5, 6].map((row) => ["Stone", 100, 70, 50, row === 4 ? cell : `=SUM(B${row}:D${row})`]),
    ];
    expect(findWith(unlike, sums("=B4+C4+D4"))).toMatchObject([
      {
        level: "question",
        cells: ["E4"],
        seen: "“Stone”, “All” adds cells one by one; the cells next to it have a range, such as =SUM(B4:D4).",
        fix: { E4: "=SUM(B4:D4)" },
      },
    ]);
    expect(cellsFound(unlike, sums("=SUM(B4:C4,D4:D4)"))).toEqual([]);
    for (const other of ["=B4+C4", "=B4+C4+D5"])
      expect(findWith(unlike, sums(other)).map(({ level, cells }) => [level, ...cells])).toEqual([["error", "E4"]]);
  });
});

test("a sum that is short of its neighbors by a blank differs from them, too", () => {
  const rows = [
    ["Line", "Front", "Side", "Back", "All"],
    ...[2, 3, 4, 5, 6].map((row) => [
      "Stone",
      row === 4 ? "" : 100,
      70,
      50,
      row === 4 ? "=SUM(C4:D4)" : `=SUM(B${row}:D${row})`,
    ]),
  ];
  expect(cellsFound(unlike, rows)).toEqual(["E4"]);
});

test("brackets and a plus sign around a formula make no difference", () => {
  expect(cellsFound(unlike, beds(5, { 4: "=(B4*C4)" }))).toEqual([]);
  expect(cellsFound(unlike, beds(5, { 4: "=+B4*C4" }))).toEqual([]);
  expect(cellsFound(unlike, beds(5, { 4: "=(B4*C5)" }))).toEqual(["D4"]);
});
