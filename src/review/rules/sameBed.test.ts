import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { sameBed } from "./sameBed";

const HEAD = ["Bed", "Length (ft)", "Width (ft)", "Area (sq ft)"];
const bed = (name: CellText, length: CellText, width: CellText, row: number) => [
  name,
  length,
  width,
  `=B${row}*C${row}`,
];
/** Three beds, the last of which is given. */
const beds = (name: CellText, length: CellText, width: CellText, head = HEAD) => [
  head,
  bed("Front walk", 18, 5, 2),
  bed("Side yard", 22, 4, 3),
  bed(name, length, width, 4),
];

describe("a bed that is there twice", () => {
  test("is found with the one before it", () => {
    expect(findWith(sameBed, beds("Front walk", 18, 5))).toMatchObject([
      {
        level: "warning",
        rank: 50,
        cells: ["A4"],
        related: ["A4", "B4", "C4", "D4", "A2", "B2", "C2", "D2"],
        seen: "“Front walk” has the same name and measurements as row 2.",
        todo: "Delete one, or give them different names.",
        fix: undefined,
      },
    ]);
  });

  test.each([
    ["the same, in capitals and with blanks", "FRONT  walk ", 18, 5, true],
    ["another name", "Front walk 2", 18, 5, false],
    ["another length", "Front walk", 19, 5, false],
    ["another width", "Front walk", 18, 4, false],
    ["no name", "", 18, 5, false],
    ["one number only", "Front walk", 18, "", false],
    ["a length that is worked out", "Front walk", "=18", 5, false],
  ])("%s", (_, name, length, width, isFound) => {
    expect(cellsFound(sameBed, beds(name, length, width))).toEqual(isFound ? ["A4"] : []);
  });

  test("is known by its name, with or without a number in it", () => {
    const named = (name: string) => [HEAD, bed(name, 18, 5, 2), bed("Yard", 22, 4, 3), bed(name, 18, 5, 4)];
    expect(cellsFound(sameBed, named("Bed 1"))).toEqual(["A4"]);
    expect(cellsFound(sameBed, named(""))).toEqual([]);
  });

  test("needs two numbers that were typed", () => {
    const rows = [HEAD, ["Walk", 18, "", ""], ["Walk", 18, "", ""], ["Walk", 18, 5, ""], ["Walk", 18, 5, ""]];
    expect(cellsFound(sameBed, rows)).toEqual(["A5"]);
  });

  test("may have been taped", () => {
    const taped = (row: number) => bed("Walk", `'18' 6"`, "'5'", row);
    const rows = [HEAD, taped(2), bed("Yard", 22, 4, 3), taped(4)];
    expect(cellsFound(sameBed, rows)).toEqual(["A4"]);
  });

  test("is found every time it comes again", () => {
    const rows = [
      HEAD,
      bed("Walk", 18, 5, 2),
      bed("Walk", 18, 5, 3),
      bed("Walk", 18, 5, 4),
      bed("Yard", 9, 4, 5),
      bed("Yard", 9, 4, 6),
    ];
    expect(findWith(sameBed, rows).map(({ cells }) => cells)).toEqual([["A3", "A4"], ["A6"]]);
  });

  test("is only looked for in tables of beds", () => {
    expect(cellsFound(sameBed, beds("Front walk", 18, 5, ["Item", "Cost", "Price", "Sum"]))).toEqual([]);
    for (const heading of ["Area (sq ft)", "Edging (ft)", "Length (ft)", "Stone depth (in)", "Width (ft)"])
      expect(cellsFound(sameBed, beds("Front walk", 18, 5, ["Item", "Cost", heading, "Sum"]))).toEqual(["A4"]);
    // A measure that is worked out makes no table of beds.
    expect(cellsFound(sameBed, beds("Front walk", 18, 5, ["Item", "Cost", "Price", "Area (sq ft)"]))).toEqual([]);
  });

  test("may have a number of its own", () => {
    const rows = (third: number) => [
      ["No.", ...HEAD],
      ...[1, 2, third].map((number, at) => [
        number,
        at === 1 ? "Yard" : "Walk",
        at === 1 ? 22 : 18,
        5,
        `=C${at + 2}*D${at + 2}`,
      ]),
    ];
    expect(cellsFound(sameBed, rows(3))).toEqual(["A4"]);
    // These numbers don't count the rows, so they tell the beds apart.
    expect(cellsFound(sameBed, rows(5))).toEqual([]);
  });

  test("may have a number of its own with a spare row between", () => {
    const numbered = (number: CellText, name: string, row: number) => [number, name, 18, 5, `=C${row}*D${row}`];
    const rows = [
      ["No.", ...HEAD],
      numbered(1, "Walk", 2),
      ["", "", "", "", ""],
      numbered(2, "Yard", 4),
      numbered(3, "Walk", 5),
    ];
    expect(cellsFound(sameBed, rows)).toEqual(["A5"]);
  });

  test("has to be counted from more than two rows", () => {
    const rows = [
      ["No.", ...HEAD],
      [1, "Walk", 18, 5, "=C2*D2"],
      [2, "Walk", 18, 5, "=C3*D3"],
    ];
    expect(cellsFound(sameBed, rows)).toEqual([]);
  });

  test("is looked for in each table by itself", () => {
    const rows = [HEAD, bed("Walk", 18, 5, 2), bed("Yard", 9, 4, 3), HEAD, bed("Walk", 18, 5, 5), bed("Gate", 9, 4, 6)];
    expect(cellsFound(sameBed, rows)).toEqual([]);
    const beside = [
      [...HEAD, "", ...HEAD],
      [...bed("Walk", 18, 5, 2), "", ...bed("Walk", 18, 5, 2)],
      [...bed("Walk", 18, 5, 3), "", ...bed("Gate", 9, 4, 3)],
    ];
    expect(cellsFound(sameBed, beside)).toEqual([]);
  });

  test("is left alone on a protected sheet", () => {
    expect(cellsFound(sameBed, { rows: beds("Front walk", 18, 5), protected: true })).toEqual([]);
  });
});

describe("beds side by side", () => {
  /** Three beds, one a column, the last of which is given. */
  const across = (name: CellText, length: CellText, width: CellText, labels = ["Length (ft)", "Width (ft)"]) => [
    ["Bed", "Front walk", "Side yard", name],
    [labels[0]!, 18, 22, length],
    [labels[1]!, 5, 4, width],
    ["Area (sq ft)", "=B2*B3", "=C2*C3", "=D2*D3"],
  ];

  test("are found twice, too", () => {
    expect(findWith(sameBed, across("Front walk", 18, 5))).toMatchObject([
      {
        cells: ["D1"],
        related: ["D1", "D2", "D3", "D4", "B1", "B2", "B3", "B4"],
        seen: "“Front walk” has the same name and measurements as column B.",
      },
    ]);
  });

  test.each([
    ["another name", "Front walk 2", 18, 5],
    ["another length", "Front walk", 19, 5],
    ["another width", "Front walk", 18, 4],
  ])("are told apart by %s", (_, name, length, width) => {
    expect(cellsFound(sameBed, across(name, length, width))).toEqual([]);
  });

  test("need a measure among their labels", () => {
    expect(cellsFound(sameBed, across("Front walk", 18, 5, ["Hours", "Width (ft)"]))).toEqual(["D1"]);
    const rows = across("Front walk", 18, 5, ["Hours", "Trips"]).map((row, at) =>
      at === 3 ? ["Labor", ...row.slice(1)] : row,
    );
    expect(cellsFound(sameBed, rows)).toEqual([]);
  });

  test("may have notes below that only some have", () => {
    const rows = [...across("Front walk", 18, 5), ["Note", "by hand", "", ""], ["Ticket", 4711, "", ""]];
    expect(cellsFound(sameBed, rows)).toEqual(["D1"]);
    const most = [...across("Front walk", 18, 5), ["Ticket", 4711, "", 4712]];
    expect(cellsFound(sameBed, most)).toEqual([]);
  });
});
