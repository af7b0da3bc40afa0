import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText, SheetInput } from "../../../test/reviewWorkbook";
import { shortSum } from "./shortSum";

/** Four lines of 100, 50, 20, and 30, and a total of some of them. */
const costs = (total: CellText, heading = "Cost") => [
  ["Line", heading],
  ["Stone", 100],
  ["Fabric", 50],
  ["Pins", 20],
  ["Stakes", 30],
  ["Total", total],
];

/** What each sum leaves out. */
const leftOut = (input: Parameters<typeof findWith>[1]) => findWith(shortSum, input).map(({ related }) => related);

describe("a sum that stops short or skips a row", () => {
  test("is found with what it leaves out, and a fix", () => {
    expect(findWith(shortSum, costs("=SUM(B2:B4)"))).toMatchObject([
      {
        level: "error",
        // 30 are missing from 170: 18%.
        rank: 18,
        cells: ["B6"],
        related: ["B5"],
        seen: "“Total”, “Cost” adds B2:B4 but not B5 next to it (30).",
        todo: "Include it, or ignore this and say why.",
        fix: { B6: "=SUM(B2:B5)" },
      },
    ]);
    expect(findWith(shortSum, costs("=SUM(B3:B4)"))).toMatchObject([
      {
        // 130 are missing from 70: more than all of it.
        rank: 100,
        related: ["B2", "B5"],
        seen: "“Total”, “Cost” adds B3:B4 but not B2 and B5 next to it (total 130).",
        todo: "Include them, or ignore this and say why.",
        fix: { B6: "=SUM(B2:B5)" },
      },
    ]);
  });

  test.each([
    ["=SUM(B2:B5)", undefined, undefined],
    ["=100*SUM(B2:B4)/SUM(B2:B5)", undefined, undefined],
    ["=100*SUM(B2:B4)/SUM(B3:B5)", ["B5"], undefined],
    ["=SUM(B2:B3,B5)", ["B4"], "=SUM(B2:B5)"],
    ["=SUM(B2:B3)+B5", ["B4"], "=SUM(B2:B4)+B5"],
    ["=B2+B3+B5", ["B4"], undefined],
    ["=B2+B3+B4+B5", undefined, undefined],
    ["=B2+B3", ["B4", "B5"], undefined],
    ["=AVERAGE(B2:B4)", ["B5"], "=AVERAGE(B2:B5)"],
    ["=SUMPRODUCT(B2:B4)", ["B5"], undefined],
    ["=SUBTOTAL(9,B2:B4)", ["B5"], undefined],
    ["=SUMPRODUCT(B2:B4)+SUM(D2:D4)", ["B5"], undefined],
    ["=B2+B3+B4+SUM(D2:D4)", ["B5"], undefined],
    ["=SUM( $B2:$B4 )", ["B5"], "=SUM($B2:$B5)"],
    ['=SUM(B2:B4)&" in all"', ["B5"], '=SUM(B2:B5)&" in all"'],
    ["=SUM(B2:B4)*1.3", ["B5"], "=SUM(B2:B5)*1.3"],
    ["=ROUND(SUM(B2:B4),0)", ["B5"], "=ROUND(SUM(B2:B5),0)"],
    ["=SUM($B$2:$B$4)", ["B5"], "=SUM($B$2:$B$5)"],
    ["=SUM(B$2:B$4)", ["B5"], "=SUM(B$2:B$5)"],
    ["=SUM($B2:$B4)", ["B5"], "=SUM($B2:$B5)"],
    ["=SUM(B2:B4,ABS(B2))", ["B5"], undefined],
    ["=SUM(B2:B4)/SUM(D2:D4)", ["B5"], undefined],
    ["=SUM(B2:B4)/AVERAGE(D2:D4)", ["B5"], undefined],
    // A single cell and a block have no end that could be short.
    ["=SUM(B2)", undefined, undefined],
    ["=SUM(A2:B4)", undefined, undefined],
    ["=SUM(B2:B4,D2:D4)", undefined, undefined],
    ["=SUM(B2:B4,B8)", ["B5"], "=SUM(B2:B8)"],
  ])("%s", (total, left, fixed) => {
    const found = findWith(shortSum, costs(total));
    expect(found.map(({ related }) => related)).toEqual(left ? [left] : []);
    if (left) expect(found[0]!.fix).toEqual(fixed === undefined ? undefined : { B6: fixed });
  });

  test("is found above its lines, too", () => {
    const rows = (total: string) => [
      ["Total", total],
      ["Line", "Cost"],
      ["Stone", 100],
      ["Fabric", 50],
      ["Pins", 20],
      ["Stakes", 30],
    ];
    expect(leftOut(rows("=SUM(B3:B4)"))).toEqual([["B5", "B6"]]);
    expect(leftOut(rows("=SUM(B3:B6)"))).toEqual([]);
  });

  test("is found on another sheet", () => {
    const sheets = (formula: string, name = "Lines") => [
      { name: "Jobs", rows: [["Total", formula]] },
      { name, rows: costs("=SUM(B2:B5)") },
    ];
    expect(findWith(shortSum, { sheets: sheets("=SUM(Lines!B2:B4)") })).toMatchObject([
      { cells: ["B1"], related: ["Lines!B5"], fix: { B1: "=SUM(Lines!B2:B5)" } },
    ]);
    expect(findWith(shortSum, { sheets: sheets("=SUM('Old lines'!$B$2:$B$4)", "Old lines") })[0]!.fix).toEqual({
      B1: "=SUM('Old lines'!$B$2:$B$5)",
    });
  });

  test("is found across", () => {
    const rows = [
      ["Line", "March", "April", "May", "June", "Spring"],
      ["Stone", 100, 50, 20, 30, "=SUM(B2:D2)"],
      ["Fabric", 10, 5, 2, 3, "=SUM(B3:D3)"],
    ];
    expect(findWith(shortSum, rows)).toMatchObject([
      { cells: ["F2", "F3"], related: ["E2", "E3"], fix: { F2: "=SUM(B2:E2)", F3: "=SUM(B3:E3)" } },
    ]);
  });

  test("is left alone on a protected sheet", () => {
    expect(cellsFound(shortSum, { rows: costs("=SUM(B2:B4)"), protected: true })).toEqual([]);
  });

  test("gives no amount where what it leaves out shows an error", () => {
    const rows = [
      ["Line", "Cost"],
      ["Stone", "=100"],
      ["Fabric", "=50"],
      ["Pins", "=1/0"],
      ["Total", "=SUM(B2:B3)"],
    ];
    expect(findWith(shortSum, rows)).toMatchObject([
      { related: ["B4"], seen: "“Total”, “Cost” adds B2:B3 but not B4 next to it." },
    ]);
    const two = [...rows.slice(0, 4), ["Stakes", "=30"], ["Total", "=SUM(B2:B3)"]];
    expect(findWith(shortSum, two)[0]!.seen).toBe("“Total”, “Cost” adds B2:B3 but not B4 and B5 next to it.");
  });

  test("ranks at least 10, and 30 where the total is an error", () => {
    expect(findWith(shortSum, costs("=SUM(B2:B4)+9000"))[0]!.rank).toBe(10);
    expect(findWith(shortSum, costs({ f: "=SUM(B2:B4)", v: "#VALUE!" }))[0]!.rank).toBe(30);
  });

  test("is one finding where it was filled across", () => {
    const filled = costs("=SUM(B2:B4)").map(([name, cost]) => [
      name!,
      cost!,
      typeof cost === "string" ? cost.replaceAll("B", "C") : cost!,
    ]);
    expect(findWith(shortSum, filled).map(({ cells }) => cells)).toEqual([["B6", "C6"]]);
    const apart = costs("=SUM(B2:B4)").map(([name, cost]) => [
      name!,
      cost!,
      typeof cost === "string" ? cost.replaceAll("B2:B4", "C3:C5") : cost!,
    ]);
    expect(findWith(shortSum, apart).map(({ cells }) => cells)).toEqual([["C6"], ["B6"]]);
  });
});

describe("what a sum leaves out on purpose", () => {
  const between = (label: string, cell: CellText, total: CellText = "=SUM(B2:B4)") => [
    ["Line", "Cost"],
    ["Stone", 100],
    ["Fabric", 50],
    ["Pins", 20],
    [label, cell],
    ["Order", total],
  ];

  test.each([
    ["a typed line is left out by mistake", "Stakes", 30, [["B5"]]],
    ["a line of 0 counts as one", "Stakes", 0, [["B5"]]],
    ["a blank", "Stakes", "", []],
    ["text", "Stakes", "none", []],
    ["an error that somebody typed", "Stakes", "#N/A", []],
    ["a row of sums, by its label", "Subtotal", 170, []],
    ["a subtotal, by its formula", "Materials", "=SUM(B2:B4)", []],
    ["the largest of the lines", "Dearest", "=MAX(B2:B4)", []],
    ["a line worked out from one of them", "Tax", "=B2*8%", []],
    ["what is worked out from the sum", "Deposit", "=B6/2", []],
  ])("%s", (_, label, cell, left) => {
    expect(leftOut(between(label, cell))).toEqual(left);
  });

  test("years above the numbers are headings", () => {
    const below = (year: CellText) => [
      ["", year],
      ["Stone", 100],
      ["Fabric", 50],
      ["Pins", 20],
      ["Order", "=SUM(B2:B4)"],
    ];
    expect([1990, 2026, 2100].map((year) => leftOut(below(year)))).toEqual([[], [], []]);
    expect([1989, 2101, 2026.5].map((year) => leftOut(below(year)))).toEqual([[["B1"]], [["B1"]], [["B1"]]]);
  });

  test("lines of another unit, format, or role are something else", () => {
    const rows = (label: string, formats?: SheetInput["formats"]) => ({
      rows: [
        [label, 8],
        ["Stone", 100],
        ["Fabric", 50],
        ["Pins", 20],
        ["Order", "=SUM(B2:B4)"],
      ],
      ...(formats && { formats }),
    });
    expect(leftOut(rows("Boulders"))).toEqual([["B1"]]);
    expect(leftOut(rows("Depth (in)"))).toEqual([]);
    expect(leftOut(rows("Markup"))).toEqual([]);
    expect(leftOut(rows("Boulders", { B1: "0.00" }))).toEqual([]);
    expect(leftOut(rows("Boulders", { "B1:B4": "0.00" }))).toEqual([["B1"]]);
  });

  test("a heading that names a measure speaks for its whole column", () => {
    const rows = (heading: string, formats: NonNullable<SheetInput["formats"]>) => ({
      rows: [
        ["Line", heading],
        ["Boulders", 8],
        ["Stone", 100],
        ["Fabric", 50],
        ["Order", "=SUM(B3:B4)"],
      ],
      formats,
    });
    expect(leftOut(rows("Cost", { B2: "0.00" }))).toEqual([["B2"]]);
    expect(leftOut(rows("Size (ft)", { B2: "0.00" }))).toEqual([["B2"]]);
    expect(leftOut(rows("Amount", { B2: "0.00" }))).toEqual([]);
    expect(leftOut(rows("Amount", {}))).toEqual([["B2"]]);
  });

  test("parts that sums share among them are all taken", () => {
    const rows = (second: string) => [
      ["Line", "Cost", "", ""],
      ["Stone", 100, "Materials", "=SUM(B2:B3)"],
      ["Fabric", 50, "", ""],
      ["Digging", 20, "Labor", second],
      ["Spreading", 30, "", ""],
    ];
    expect(leftOut(rows("=SUM(B4:B5)"))).toEqual([]);
    expect(leftOut(rows("=SUM(B5:B5)"))).toEqual([["B4", "B5"]]);
    // A sum that shares a line with another is no other part.
    expect(leftOut(rows("=SUM(B3:B5)"))).toEqual([["B2"], ["B4", "B5"]]);
  });

  test("moving sums take parts on purpose", () => {
    const rows = [
      ["Month", "Cost", "Three months"],
      ...[2, 3, 4, 5, 6].map((row) => ["Month", 10 * row, row > 3 ? `=SUM(B${row - 2}:B${row})` : ""]),
    ];
    expect(leftOut(rows)).toEqual([]);
    const across = [
      ["", "March", "April", "May", "June", "July"],
      ["Cost", 10, 20, 30, 40, 50],
      ["Two months", "", "=SUM(B2:C2)", "=SUM(C2:D2)", "=SUM(D2:E2)", "=SUM(E2:F2)"],
    ];
    expect(leftOut(across)).toEqual([]);
  });

  test("the next table below its heading is another one", () => {
    const rows = (heading: readonly string[]) => [
      ["Line", "Cost"],
      ["Stone", 100],
      ["Fabric", 50],
      [...heading],
      ["Digging", 20],
      ["Spreading", 30],
      ["Materials", "=SUM(B2:B3)"],
    ];
    expect(leftOut(rows(["Work", "Cost"]))).toEqual([]);
    expect(leftOut(rows(["Work", ""]))).toEqual([["B5", "B6"]]);
  });

  test("a gap ends what adjoins a sum from outside, and not what is between it and its sum", () => {
    const rows = (total: string, at: "above" | "below") => {
      const lines = [
        ["Stone", 100],
        ["Fabric", 50],
        ["", ""],
        ["Pins", 20],
      ];
      return at === "above"
        ? [["Total", total], ["Line", "Cost"], ...lines]
        : [["Line", "Cost"], ...lines, ["Total", total]];
    };
    expect(leftOut(rows("=SUM(B3:B4)", "above"))).toEqual([]);
    expect(leftOut(rows("=SUM(B2:B3)", "below"))).toEqual([["B5"]]);
  });
});

describe("lines that are worked out", () => {
  /** Four lines in which a formula, or what is given, makes the cost. */
  const worked = (
    fourth: CellText,
    total: "above" | "below",
    formulas = (row: number) => `=C${row}*D${row}`,
    heading = "Amount",
  ) => {
    const top = total === "above" ? 3 : 2;
    const lines = [0, 1, 2].map((at) => ["Line", formulas(top + at), 5, 6]);
    const last = ["Line", typeof fourth === "string" ? fourth.replaceAll("#", String(top + 3)) : fourth, 5, 6];
    const body = [["Line", heading, "Qty", "Each"], ...lines, last];
    const sum = ["All of it", `=SUM(B${top}:B${top + 2})`, "", ""];
    return total === "above" ? [sum, ...body] : [...body, sum];
  };

  test.each([
    ["the same formula", "=C#*D#", [["B6"]], [["B5"]]],
    ["another formula", "=C#+D#", [], []],
    // A lump sum right above its total is a line; below the last line it may be anything.
    ["a lump sum", 30, [], [["B5"]]],
  ])("%s", (_, fourth, above, below) => {
    expect(leftOut(worked(fourth, "above"))).toEqual(above);
    expect(leftOut(worked(fourth, "below"))).toEqual(below);
  });

  test("may all be worked out in their own ways", () => {
    const own = (row: number) => [`=C${row}*D${row}`, `=C${row}-D${row}`, `=C${row}*2`][row % 3]!;
    expect(leftOut(worked("=C#^2", "below", own))).toEqual([["B5"]]);
    expect(leftOut(worked("=C#^2", "above", own, "Cost"))).toEqual([["B6"]]);
  });

  test("may be sums themselves", () => {
    const sums = (row: number) => `=SUM(C${row}:D${row})`;
    expect(leftOut(worked("=SUM(C#:D#)", "below", sums))).toEqual([["B5"]]);
    expect(leftOut(worked("=SUM(C2:D4)", "below", sums))).toEqual([]);
  });
});

describe("what is near enough to be left out", () => {
  const line = (...cells: CellText[]) => ["Line", ...cells];

  test("a gap is near, also between lines that are worked out", () => {
    const rows = (total: string) => [
      ["All of it", total, "", ""],
      ["Line", "Amount", "Qty", "Each"],
      ["Stone", "=C3*D3", 5, 6],
      ["Fixed price", 30, 5, 6],
      ["Fabric", "=C5*D5", 5, 6],
      ["Fixed price", 30, 5, 6],
    ];
    expect(leftOut(rows("=SUM(B3,B5)"))).toEqual([["B4"]]);
  });

  test("what is beyond a gap isn't, where the sum is in another column or on another sheet", () => {
    const rows = [["Line", "Cost", "Total"], line(100), line(50), line(""), line(20), line("", "=SUM(B2:B3)")];
    expect(leftOut(rows)).toEqual([]);
    const sheets = [
      { name: "Jobs", rows: [...["", "", "", ""].map((blank) => [blank]), ["", "=SUM(Lines!B2:B3)"]] },
      { name: "Lines", rows: [["Line", "Cost"], line(100), line(50), line(""), line(20)] },
    ];
    expect(leftOut({ sheets })).toEqual([]);
  });

  test("what adjoins the range is, also where the sum is at the same place on another sheet", () => {
    const sheets = [
      { name: "Jobs", rows: [[""], [""], [""], ["", "=SUM(Lines!B2:B3)"]] },
      { name: "Lines", rows: [["Line", "Cost"], line(100), line(50), line(20)] },
    ];
    expect(leftOut({ sheets })).toEqual([["Lines!B4"]]);
  });

  test("everything is, across, up to the sum at the end", () => {
    const rows = (total: string) => [
      ["Line", "March", "April", "May", "June", "Spring", "Note"],
      ["Stone", 100, 50, "", 30, total, ""],
    ];
    expect(leftOut(rows("=SUM(B2:C2)"))).toEqual([["E2"]]);
    const elsewhere = [...rows(""), ["Spring", "", "", "", "", "", "=SUM(B2:C2)"]];
    expect(leftOut(elsewhere)).toEqual([]);
  });

  test("a sum across in a row of totals leaves out as any other", () => {
    const rows = [
      ["Line", "March", "April", "May", "June", "Spring"],
      ["Total", 100, 50, 20, 30, "=SUM(B2:D2)"],
    ];
    expect(leftOut(rows)).toEqual([["E2"]]);
  });

  test("a heading of another table beside it ends nothing", () => {
    const rows = [
      ["Line", "Cost", "", "", "", ""],
      ["Stone", 100, "", "", "", ""],
      ["Fabric", 50, "", "", "", ""],
      ["", "", "", "", "Crew", "Hours"],
      ["Pins", 20, "", "", "Ann", 5],
      ["Total", "=SUM(B2:B3)", "", "", "Bob", 6],
    ];
    expect(leftOut(rows)).toEqual([["B5"]]);
  });

  test("two sheets, or a block, are no line", () => {
    const sheets = [
      {
        name: "Jobs",
        rows: [["Line", "Cost"], line(100), line(50), line(20), line(30), line("=SUM(B2:B3,Lines!B5:B6)")],
      },
      { name: "Lines", rows: [["Line", "Cost"], line(100), line(50), line(20), line(30), line(40)] },
    ];
    expect(leftOut({ sheets })).toEqual([]);
    const block = [
      ["", 1, 2],
      ["", 3, 4],
      ["", 5, 6],
      ["All", "=SUM(B1:C2)", ""],
    ];
    expect(leftOut(block)).toEqual([]);
  });

  test("a sum that is among its lines doesn't leave itself out", () => {
    const rows = [
      ["Line", "Amount", "Qty", "Each"],
      ["Stone", "=C2*D2", 5, 6],
      ["Fabric", "=C3-D3", 7, 6],
      ["With markup", "=SUM(B2,B3,B5)*1.3", "", ""],
      ["Pins", "=C5^2", 5, 6],
    ];
    expect(leftOut(rows)).toEqual([]);
    const below = [
      ["All", "=SUM(B3:B5)*1.3", "", ""],
      ...[2, 3, 4, 5].map((row) => [
        "Line",
        ["", "", "=C#*D#", "=C#-D#", "=C#^2", "=D#^2"][row]!.replaceAll("#", String(row)),
        5,
        6,
      ]),
    ];
    expect(leftOut(below)).toEqual([["B2"]]);
  });

  test("a sum of blanks leaves out nothing", () => {
    expect(leftOut([["Line", "Cost"], line(""), line(""), line(""), line(30), line("=SUM(B2:B4)")])).toEqual([]);
  });

  test("cells of another kind among its own make no difference", () => {
    expect(leftOut([["Line", "Cost"], line(""), line("none"), line(100), line(30), line("=SUM(B2:B4)")])).toEqual([
      ["B5"],
    ]);
  });

  test("two hundred lines are told, and no more", () => {
    const many = (total: CellText) => [
      ["Line", "Cost"],
      ...Array.from({ length: 500 }, () => line(10)),
      line(""),
      line(total),
    ];
    // Four are named; 200 - 4 = 196 more.
    expect(findWith(shortSum, many("=SUM(B2:B151)"))[0]!.seen).toContain(
      "B152, B153, B154, B155 and 196 more next to it (total 2,000)",
    );
    expect(findWith(shortSum, many("=SUM(B352:B501)"))[0]!.seen).toContain("and 196 more next to it (total 2,000)");
  });

  test("a total of a few among many lines is a choice", () => {
    const rows = (range: string) => [
      ["Line", "Cost"],
      ...Array.from({ length: 10 }, () => line(10)),
      line(`=SUM(${range})`),
    ];
    expect(leftOut(rows("B2:B5"))).toEqual([["B6", "B7", "B8", "B9", "B10", "B11"]]);
    expect(leftOut(rows("B2:B4"))).toEqual([]);
  });
});

describe("among lines that are worked out in their own ways", () => {
  /** Lines in three ways, a fourth that is given, and a total of the first three, with 30% on top. */
  const own = (fourth: CellText) => [
    ["Line", "Amount", "Qty", "Each"],
    ["Stone", "=C2*D2", 5, 6],
    ["Fabric", "=C3-D3", 7, 6],
    ["Pins", "=C4^2", 5, 6],
    ["Other", fourth, 5, 6],
    ["All", "=SUM(B2:B4)*1.3", "", ""],
  ];

  test.each([
    ["another way", "=D5^2", [["B5"]]],
    ["an error", "=D5/0", [["B5"]]],
    ["text that a formula makes", '="none"', []],
    ["what is worked out from the total", "=B6^2", []],
    ["what is worked out from some of them", "=MAX(B2:B3)", []],
    ["what is worked out from other cells", "=MAX(C2:C3)", [["B5"]]],
    ["what is worked out from one of them", "=B2^2", [["B5"]]],
    ["a sum of others", "=SUM(C2:D4)", []],
  ])("%s", (_, fourth, left) => {
    expect(leftOut(own(fourth))).toEqual(left);
  });

  test("a sum among them makes them alike", () => {
    const rows = own("=D5^2").map((row, at) => (at === 4 - 1 ? ["Pins", "=SUM(C4:D4)", 5, 6] : row));
    expect(leftOut(rows)).toEqual([]);
  });
});

describe("the same column", () => {
  const rows = (heading: string, below: CellText, lines: (row: number) => CellText = () => 100) => ({
    rows: [
      ["All", "=SUM(B3:B5)", "", ""],
      ["Line", heading, "Qty", "Each"],
      ...[3, 4, 5].map((row) => ["Stone", lines(row), 5, 6]),
      ["Boulders", below, 5, 6],
    ],
    formats: { B6: "0.00" },
  });

  test("is told by its heading's measure, or by the same formula", () => {
    expect(leftOut(rows("Cost", 8))).toEqual([["B6"]]);
    expect(leftOut(rows("Size (ft)", 8))).toEqual([["B6"]]);
    expect(leftOut(rows("Amount", 8))).toEqual([]);
    const same = (row: number) => `=C${row}*D${row}`;
    expect(leftOut(rows("Amount", same(6), same))).toEqual([["B6"]]);
  });

  test("is enough for what is right before the total", () => {
    const near = (heading: string) => ({
      rows: [
        ["Line", heading],
        ["Stone", 100],
        ["Fabric", 50],
        ["Boulders", 8],
        ["All", "=SUM(B2:B3)"],
      ],
      formats: { B4: "0.00" },
    });
    expect(leftOut(near("Amount"))).toEqual([["B4"]]);
    const bare = { ...near("Amount"), rows: near("Amount").rows.map((row, at) => (at === 0 ? ["", ""] : row)) };
    expect(leftOut(bare)).toEqual([]);
  });
});

describe("cells that a sum leaves to others", () => {
  const lines = (...rest: (readonly CellText[])[]) => [
    ["Line", "Cost"],
    ["Stone", 100],
    ["Fabric", 50],
    ["Discount", 20],
    ...rest,
  ];

  test("are taken off in the same formula", () => {
    expect(leftOut(lines(["Total", "=SUM(B2:B3)-B4"]))).toEqual([]);
    expect(leftOut(lines(["Total", "=SUM(B2:B3)*B4"]))).toEqual([["B4"]]);
  });

  test("are added by a cell that it takes", () => {
    const rows = (both: CellText) => [
      ["Line", "Cost"],
      ["Stone", 100],
      ["Fabric", 50],
      ["Materials", "=B2+B3"],
      ["Digging", 200],
      ["Spreading", 90],
      ["Labor", "=B5+B6"],
      ["Both", both],
    ];
    expect(leftOut(rows("=B4+B7"))).toEqual([]);
    expect(leftOut(rows("=SUM(B4:B5,B7)"))).toEqual([]);
  });

  test("are left out in every line, or picked from another sheet, on purpose", () => {
    const rows = (count: number) => [
      ["Bed", "March", "April", "May", "June", "Spring"],
      ...Array.from({ length: count }, (_, at) => ["Bed", 100, 3, 50, 20, `=B${at + 2}+D${at + 2}+E${at + 2}`]),
    ];
    expect(leftOut(rows(1))).toEqual([["C2"]]);
    expect(leftOut(rows(2))).toEqual([]);
    const sheets = (formula: string) => [
      { name: "Jobs", rows: [["Part", formula]] },
      { name: "Lines", rows: lines(["Stakes", 30]) },
    ];
    expect(leftOut({ sheets: sheets("=Lines!B2+Lines!B4") })).toEqual([]);
    expect(leftOut({ sheets: sheets("=SUM(Lines!B2:B4)") })).toEqual([["Lines!B5"]]);
  });

  test("are the rest of a list, where they're more than the sum takes", () => {
    const rows = (range: string) => [
      ["Of that", "", `=SUM(${range})`],
      ["Line", "Cost", ""],
      ...[1, 2, 3, 4, 5, 6, 7].map((cost) => ["Stone", 100 * cost]),
    ];
    expect(leftOut(rows("B3:B5"))).toEqual([]);
    expect(leftOut(rows("B3:B6"))).toEqual([["B7", "B8", "B9"]]);
  });

  test("aren't set in as those are that it takes", () => {
    const rows = (label: string) => [
      ["Paper", "=SUM(B2:B3)"],
      ["  Plans", 100],
      ["  Permits", 50],
      [label, 400],
      ["", ""],
    ];
    expect(leftOut(rows("Copies"))).toEqual([]);
    expect(leftOut(rows("  Copies"))).toEqual([["B4"]]);
  });
});

test("forty sums over one part of a column take their own stretches of it", () => {
  const rows = (count: number) => [
    ["Day", "Loads", "Last three"],
    ...Array.from({ length: 60 }, (_, at) => [
      `Day ${at}`,
      5 + (at % 3),
      // Every other day, so that none has its like above or below.
      at >= 3 && at < 3 + count ? `=SUM(B${at}:B${at + 2})${"+0".repeat(at % 2)}` : "",
    ]),
  ];
  expect(leftOut(rows(40))).toEqual([]);
  expect(leftOut(rows(39)).length).toBeGreaterThan(0);
});
