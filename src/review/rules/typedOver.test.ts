import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { typedOver } from "./neighbors";

/** Five beds with their areas, one of which, of 12 by 6 ft, is given. */
const beds = (area: CellText, formula = (row: number): CellText => `=B${row}*C${row}`) => [
  ["Bed", "Length (ft)", "Width (ft)", "Area (sq ft)"],
  ["Front walk", 18, 5, formula(2)],
  ["Side yard", 22, 4, formula(3)],
  ["Patio", 12, 6, area],
  ["Gate", 9, 3, formula(5)],
  ["Back fence", 40, 2, formula(6)],
];

describe("a number typed over a formula", () => {
  test("is found with what the formula would give", () => {
    expect(findWith(typedOver, beds(50))).toMatchObject([
      {
        level: "error",
        // 22 of 72 are 31%.
        rank: 31,
        cells: ["D4"],
        related: [],
        seen: "“Patio”, “Area (sq ft)” holds 50, typed; =B4*C4 would give 72.",
        todo: "Put the formula back, or ignore this and say why.",
        fix: { D4: "=B4*C4" },
      },
    ]);
  });

  // 0.5% of 72 are 0.36.
  test.each([
    [72, "=B4*C4 gives the same result now, and would update."],
    [72.35, "=B4*C4 gives the same result now, and would update."],
    [72.37, "=B4*C4 would give 72."],
  ])("gives the same within half a percent: %f", (area, says) => {
    const [found] = findWith(typedOver, beds(area));
    expect(found!.seen).toContain(`typed; ${says}`);
    expect(found!.rank).toBe(5);
  });

  test("is found, too, where no one can work the formula out", () => {
    const unknown = (row: number): CellText => ({ f: `=OFFICEAREA(B${row},C${row})`, v: 80 });
    expect(findWith(typedOver, beds(50, unknown))).toMatchObject([
      {
        rank: 40,
        seen: "“Patio”, “Area (sq ft)” holds 50, typed; the cells next to it would make it =OFFICEAREA(B4,C4).",
      },
    ]);
  });

  test.each([
    ["another formula", "=B4+C4"],
    ["text", "by hand"],
    ["a blank", ""],
    ["its formula", "=B4*C4"],
  ])("is not %s", (_, area) => {
    expect(cellsFound(typedOver, beds(area))).toEqual([]);
  });

  test("is left alone where no one can write the formula for its row", () => {
    const names = (row: number): CellText => ({ f: `=LET(l,B${row},l*C${row})`, v: 80 });
    expect(cellsFound(typedOver, beds(50, names))).toEqual([]);
  });

  test("is found however far off, whatever units the lines of a column have", () => {
    const rows = [
      ["Item", "Amount", "Unit", "Base"],
      ...["ft", "tons", "sq ft", "cu yd", "h"].map((unit, at) => ["Item", at === 2 ? 500 : `=D${at + 2}*2`, unit, 10]),
    ];
    expect(cellsFound(typedOver, rows)).toEqual(["B4"]);
  });

  test("on a protected sheet is left alone", () => {
    expect(cellsFound(typedOver, { rows: beds(50) })).toEqual(["D4"]);
    expect(cellsFound(typedOver, { rows: beds(50), protected: true })).toEqual([]);
  });

  test("is one finding for each column", () => {
    const rows = [
      ["Bed", "Length (ft)", "Width (ft)", "Area (sq ft)", "Run (ft)"],
      ...[2, 3, 4, 5, 6, 7, 8].map((row) => ["Bed", 18, row, `=B${row}*C${row}`, `=B${row}+C${row}`]),
    ].map((row, at) => (at === 2 ? ["Bed", 18, 3, 50, 20] : at === 4 ? ["Bed", 18, 3, 50, `=B5+C5`] : row));
    expect(
      findWith(typedOver, rows)
        .map(({ cells }) => cells)
        .sort(),
    ).toEqual([["D3", "D5"], ["E3"]]);
  });
});

describe("a number in a row of sums", () => {
  /** A row of sums below columns that hold different things, with 300 above the number. */
  const sums = (cost: number, headings = ["Stone (tons)", "Hours", "Loads", "Cost", "Price"], above = 100) => [
    ["Line", ...headings],
    ["Front walk", 9, 4, 3, above, 130],
    ["Side yard", 8, 4, 3, above, 130],
    ["Patio", 7, 4, 3, above, 130],
    ["All work", "=SUM(B2:B4)", "=SUM(C2:C4)", "=SUM(D2:D4)", cost, "=SUM(F2:F4)"],
  ];

  // Each column holds something else: a number three times too large or small is no sum typed over.
  test.each([
    [100, []],
    [101, ["E5"]],
    [310, ["E5"]],
    [899, ["E5"]],
    [900, []],
  ])("that might be 300 and is %i", (cost, found) => {
    expect(cellsFound(typedOver, sums(cost))).toEqual(found);
  });

  test("is found however far off where all columns hold the same", () => {
    expect(cellsFound(typedOver, sums(900, ["March", "April", "May", "June", "July"]))).toEqual(["E5"]);
    expect(cellsFound(typedOver, sums(900, ["A (ft)", "B (ft)", "C (ft)", "D (ft)", "E (ft)"]))).toEqual(["E5"]);
  });

  test("is left alone where units or roles tell the columns apart", () => {
    expect(cellsFound(typedOver, sums(900, ["A (ft)", "B (ft)", "C (tons)", "D (ft)", "E (ft)"]))).toEqual([]);
    expect(
      cellsFound(typedOver, sums(900, ["Length (ft)", "Width (ft)", "Length (ft)", "D (ft)", "Length (ft)"])),
    ).toEqual([]);
  });

  test("is nothing to compare where the sum would be 0", () => {
    expect(cellsFound(typedOver, sums(10, undefined, 0))).toEqual([]);
    expect(cellsFound(typedOver, sums(0, undefined, 0))).toEqual([]);
  });
});

describe("a typed number that agrees with the formula beside it", () => {
  /** Costs of two seasons, with a total of the first, and what is typed below the second. */
  const seasons = (typed: CellText, first = "=SUM(B2:B4)", gap: readonly CellText[] = []) => [
    ["Line", "Spring", ...gap.map(() => ""), "Fall"],
    ["Stone", 1210, ...gap.map(() => ""), 980],
    ["Fabric", 305, ...gap.map(() => ""), 417],
    ["Labor", 2480, ...gap.map(() => ""), 1911],
    ["Total", first, ...gap, typed],
  ];

  test("is a warning with the formula that it was", () => {
    expect(findWith(typedOver, seasons(3308))).toMatchObject([
      {
        level: "warning",
        rank: 5,
        cells: ["C5"],
        seen: "“Total”, “Fall” holds 3,308, typed; =SUM(C2:C4) gives the same result now, and would update.",
        fix: { C5: "=SUM(C2:C4)" },
      },
    ]);
  });

  test("is found past a few empty columns or notes, down a column, and from number to number", () => {
    expect(cellsFound(typedOver, seasons(3308, undefined, ["", "", "", ""]))).toEqual(["G5"]);
    expect(cellsFound(typedOver, seasons(3308, undefined, ["", "of that", ""]))).toEqual(["F5"]);
    expect(cellsFound(typedOver, seasons(3308, undefined, ["", "", "", "", ""]))).toEqual([]);
    const across = [
      ["Line", "Front", "Back", "Side", "All"],
      ["Stone", 1210, 980, 15, "=SUM(B2:D2)"],
      ["Fabric", 305, 417, 22, 744],
      ["Labor", 2480, 1911, 31, 4422],
    ];
    expect(cellsFound(typedOver, across)).toEqual(["E3", "E4"]);
  });

  test.each([
    ["another number", seasons(3300)],
    ["rounded", seasons(3308.4)],
    ["text", seasons("3308 or so")],
    [
      "beside a formula that reads one cell",
      [
        ["Line", 1210, 3308],
        ["Again", "=B1", 3308],
      ],
    ],
  ])("is not %s", (_, rows) => {
    expect(cellsFound(typedOver, rows)).toEqual([]);
  });

  test("is a total in a row of totals, however small, and agrees by chance elsewhere", () => {
    const small = (formula: string, typed: CellText) => [
      ["Pins", 4, 5],
      ["Stakes", 6, 7],
      ["All", formula, typed],
    ];
    expect(cellsFound(typedOver, small("=B1+B2", 12))).toEqual(["C3"]);
    expect(cellsFound(typedOver, small("=B1*B2", 35))).toEqual([]);
    expect(cellsFound(typedOver, small("=B1*1.3+B2", 13.5))).toEqual(["C3"]);
    expect(cellsFound(typedOver, small("=B1*1.25", 6.25))).toEqual(["C3"]);
    expect(cellsFound(typedOver, small("=B1*1.2", 6))).toEqual([]);
    expect(
      cellsFound(typedOver, [
        ["Pins", 0, 0],
        ["Stakes", 0, 0],
        ["All", "=B1+B2", 0],
      ]),
    ).toEqual([]);
  });

  test("is no series that begins with typed numbers", () => {
    const years = [["Year", "Loads"], ...[2021, 2022, 2023].map((year) => [year, 40]), ["=A4+1", 44], ["=A5+1", 45]];
    expect(cellsFound(typedOver, years)).toEqual([]);
  });

  test("is none of a formula that chooses", () => {
    expect(cellsFound(typedOver, seasons(3308, "=IF(B4>0,SUM(B2:B4),0)"))).toEqual([]);
  });

  test("is no formula where others are worked out from it", () => {
    const rows = [
      ["Bed", "Area", "Rate", "Cost"],
      ["Front walk", 210, 4.25, "=B2*C2"],
      ["All", 210, "=D3/B3", "=SUM(D2:D2)"],
    ];
    expect(cellsFound(typedOver, rows)).toEqual([]);
  });

  test("is not asked about beside a formula that is filled down", () => {
    const rows = [
      ["Bed", "Run (ft)", "Width (ft)", "Area", "Check"],
      ...[2, 3, 4].map((row) => ["Bed", 100 + row, 6.5, `=B${row}*C${row}`, (100 + row) * 6.5 * 6.5]),
    ];
    expect(cellsFound(typedOver, rows)).toEqual([]);
  });
});

describe("a number that is something else", () => {
  test("below sums of columns, it's an average where it's less than its largest part", () => {
    const rows = (share: number) => [
      ["Crew", "March", "April", "May", "June"],
      ["Ann", 8, 9, 7, 0.4],
      ["Bob", 6, 7, 9, 0.5],
      ["All", "=SUM(B2:B3)", "=SUM(C2:C3)", "=SUM(D2:D3)", share],
    ];
    expect(cellsFound(typedOver, rows(0.45))).toEqual([]);
    expect(cellsFound(typedOver, rows(0.8))).toEqual(["E4"]);
  });

  test("among numbers of lines, it counts them", () => {
    const rows = (first: CellText) => [
      ["Bed", "Front", "Back", "Both"],
      [first, 2, 3, 4],
      ...[3, 4, 5].map((row) => ["Bed", 12, 6, `=SUM(B${row}:C${row})`]),
    ];
    expect(cellsFound(typedOver, rows(1))).toEqual([]);
    expect(
      cellsFound(
        typedOver,
        rows("Bed").map((row, at) => (at === 1 ? ["Bed", 9, 5, 4] : row)),
      ),
    ).toEqual(["D2"]);
  });

  test("among cells that only show others, it's a lump sum unless it's near", () => {
    const rows = (typed: number) => [
      ["Line", "Spring", "Order"],
      ...[2, 3, 4, 5, 6].map((row) => ["Stone", 100, row === 4 ? typed : `=B${row}`]),
    ];
    expect(cellsFound(typedOver, rows(900))).toEqual([]);
    expect(cellsFound(typedOver, rows(120))).toEqual(["C4"]);
    const plus = rows(900).map((row) => row.map((cell) => (cell === 900 ? 900 : String(cell).replace(/^=/, "=+"))));
    expect(cellsFound(typedOver, plus)).toEqual([]);
  });
});

describe("a typed column among columns with its heading", () => {
  /** Costs of three beds, each with a share of the whole; those of the first are given. */
  const beds = (
    share: (row: number) => CellText,
    others = (column: string, row: number): CellText => `=${column}${row}/${column}$6`,
  ) => [
    ["Line", "Cost", "Share", "Cost", "Share", "Cost", "Share"],
    ...[2, 3, 4, 5].map((row) => ["Stone", 100, share(row), 120, others("D", row), 90, others("F", row)]),
    ["All", 400, "", 480, "", 360, ""],
  ];

  test("is a warning that names the others", () => {
    expect(
      findWith(
        typedOver,
        beds(() => 0.3),
      ),
    ).toMatchObject([
      {
        level: "warning",
        rank: 10,
        cells: ["C2", "C3", "C4", "C5"],
        seen: "“Stone”, “Share” holds 0.3, typed; “Share” in column E and column G is worked out. The same in 3 more cells: C3, C4 and C5.",
      },
    ]);
  });

  test.each([
    ["is no finding where it's worked out, too", (row: number) => `=B${row}/B$6`, undefined],
    [
      "or where the others start from it",
      () => 0.3,
      (column: string, row: number) => `=${column === "D" ? "C" : "E"}${row}*1.1`,
    ],
    [
      "or where another one is typed as well",
      () => 0.3,
      (column: string, row: number) => (column === "D" ? 0.2 : `=F${row}/F$6`),
    ],
  ] as const)("%s", (_, share, others) => {
    expect(cellsFound(typedOver, beds(share, others))).toEqual([]);
  });
});

test("beyond an empty column, a number that isn't near is of another table", () => {
  const rows = (typed: number) => [
    ["Line", "March", "April", "May", "", "Crew"],
    ["Stone", 100, 120, 90, "", 70],
    ["Pins", 20, 30, 10, "", 40],
    ["All", "=SUM(B2:B3)", "=SUM(C2:C3)", "=SUM(D2:D3)", "", typed],
  ];
  expect(cellsFound(typedOver, rows(900))).toEqual([]);
  expect(cellsFound(typedOver, rows(130))).toEqual(["F4"]);
});

test("where amounts and their shares take turns, an amount is no share typed over", () => {
  const rows = (line: readonly CellText[]) => [
    ["Line", "Spring", "", "Summer", "", "Fall", ""],
    [...line],
    ["Pins", 20, "=B3/B$4", 30, "=D3/D$4", 10, "=F3/F$4"],
    ["All", 120, 1, 130, 1, 90, 1],
  ];
  expect(cellsFound(typedOver, rows(["Stone", 100, "=B2/B$4", 100, "=D2/D$4", 80, "=F2/F$4"]))).toEqual([]);
  expect(cellsFound(typedOver, rows(["Stone", 100, "=B2/B$4", 100, 0.769, 80, "=F2/F$4"]))).toEqual(["E2"]);
});

test("a number that its line is worked out from is given, though other lines go the other way", () => {
  const rows = (rate: CellText) => [
    ["Bed", "Tons", "A ton", "Cost"],
    ...[2, 3, 4, 5, 6].map((row) => ["Bed", 12.5, 61, `=B${row}*C${row}`]),
    ["Bed", 12.5, rate, 762.5],
  ];
  expect(cellsFound(typedOver, rows(61))).toEqual(["D7"]);
  expect(cellsFound(typedOver, rows("=D7/B7"))).toEqual([]);
});
