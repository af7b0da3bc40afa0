import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { doubleCount } from "./totals";

/** Materials of 150 with their own sum, labor of 200, and a total: 350 where it is right. */
const costs = (total: CellText, materials: CellText = "=SUM(B2:B3)") => [
  ["Line", "Cost"],
  ["Stone", 100],
  ["Fabric", 50],
  ["Materials", materials],
  ["Labor", 200],
  ["Total", total],
];

describe("a subtotal and its lines in one total", () => {
  test("are found with what is too much, and a fix", () => {
    expect(findWith(doubleCount, costs("=SUM(B2:B5)"))).toMatchObject([
      {
        level: "error",
        // 500 for 350 is 43% too much.
        rank: 43,
        cells: ["B6"],
        related: ["B4"],
        seen: "“Total”, “Cost” adds B4, plus the lines already in it: 150 too much.",
        todo: "Add up either the lines or the subtotals, not both.",
        fix: { B6: "=SUM(B2:B5)-B4" },
      },
    ]);
  });

  test("are found for each of several subtotals", () => {
    const rows = [
      ["Line", "Cost"],
      ["Stone", 100],
      ["Fabric", 50],
      ["Materials", "=SUM(B2:B3)"],
      ["Digging", 30],
      ["Spreading", 20],
      ["Labor", "=SUM(B5:B6)"],
      ["Total", "=SUM(B2:B7)"],
    ];
    expect(findWith(doubleCount, rows)).toMatchObject([
      {
        cells: ["B8"],
        related: ["B4", "B7"],
        seen: "“Total”, “Cost” adds B4 and B7, plus the lines already in them: 200 too much.",
        fix: { B8: "=SUM(B2:B7)-B4-B7" },
      },
    ]);
  });

  test.each([
    ["the lines only", "=B2+B3+B5", undefined],
    ["the subtotal only", "=B4+B5", undefined],
    ["the subtotal taken off again", "=SUM(B2:B5)-B4", undefined],
    ["something else taken off", "=SUM(B2:B5)-B3", "none"],
    ["a chain of cells", "=B2+B3+B4+B5", "=B2+B3+B5"],
    ["a chain that begins with the subtotal", "=B4+B2+B5", "=B4+B2+B5-B4"],
    ["one line is enough", "=SUM(B3:B5)", "=SUM(B3:B5)-B4"],
    ["a range and the subtotal", "=SUM(B2:B3)+B4", "=SUM(B2:B3)"],
    ["in two parts of SUM", "=SUM(B2:B3,B4:B5)", "=SUM(B2:B3,B4:B5)-B4"],
    ["with a markup on top there is no single fix", "=SUM(B2:B5)*1.3", "none"],
    ["rounded there is no single fix", "=ROUND(SUM(B2:B5),0)", "none"],
    ["an average has no single fix", "=AVERAGE(B2:B5)", "none"],
    ["SUMIF may choose", '=SUMIF(A2:A5,"S*",B2:B5)', undefined],
    ["SUBTOTAL skips no SUM", "=SUBTOTAL(9,B2:B5)", "none"],
  ])("%s", (_, total, fixed) => {
    const found = findWith(doubleCount, costs(total));
    expect(found.map(({ cells }) => cells)).toEqual(fixed === undefined ? [] : [["B6"]]);
    if (fixed !== undefined) expect(found[0]!.fix).toEqual(fixed === "none" ? undefined : { B6: fixed });
  });

  test.each([
    ["SUBTOTAL over SUBTOTAL counts once", "=SUBTOTAL(9,B2:B5)", "=SUBTOTAL(9,B2:B3)", []],
    ["SUM over SUBTOTAL counts twice", "=SUM(B2:B5)", "=SUBTOTAL(9,B2:B3)", ["B6"]],
    ["a chain is a subtotal, too", "=SUM(B2:B5)", "=B2+B3", ["B6"]],
    ["a rounded sum is one, too", "=SUM(B2:B5)", "=ROUND(SUM(B2:B3),2)", ["B6"]],
    ["a share of a line is none", "=SUM(B2:B5)", "=B2*8%", []],
    ["a sum of other lines is none", "=SUM(B2:B5)", "=SUM(D2:D3)", []],
    ["a sum with a markup is none", "=SUM(B2:B5)", "=SUM(B2:B3)*1.3", []],
    ["a typed number is none", "=SUM(B2:B5)", 150, []],
  ])("%s", (_, total, materials, found) => {
    expect(cellsFound(doubleCount, costs(total, materials))).toEqual(found);
  });

  test("are found below other subtotals", () => {
    const rows = [
      ["Line", "Cost"],
      ["Stone", 100],
      ["Fabric", 50],
      ["Materials", "=SUM(B2:B3)"],
      ["Digging", 30],
      ["Spreading", 20],
      ["Labor", "=SUM(B5:B6)"],
      ["Labor again", "=SUM(B5:B7)"],
    ];
    expect(findWith(doubleCount, rows)).toMatchObject([{ cells: ["B8"], related: ["B7"] }]);
  });

  test("are not found where a sum takes its own cell: that is another mistake", () => {
    expect(cellsFound(doubleCount, costs({ f: "=SUM(B2:B6)", v: 0 }, 150))).toEqual([]);
  });

  test("are found through a cell that only repeats the subtotal", () => {
    const rows = (repeat: string) => [...costs("=B2+B3+B5+B8"), ["", ""], ["Materials again", repeat]];
    expect(findWith(doubleCount, rows("=B4"))).toMatchObject([
      { cells: ["B6"], related: ["B8"], fix: { B6: "=B2+B3+B5" } },
    ]);
    expect(cellsFound(doubleCount, rows("=B5"))).toEqual([]);
    expect(cellsFound(doubleCount, rows("=B4*1"))).toEqual([]);
    expect(cellsFound(doubleCount, rows("materials"))).toEqual([]);
  });

  test("are found in any column of a range", () => {
    const rows = [
      ["Line", "Cost", "Price"],
      ["Stone", 100, 130],
      ["Fabric", 50, 65],
      ["Materials", 7, "=SUM(C2:C3)"],
      ["Labor", 200, 260],
      ["All", "=SUM(B2:C5)"],
    ];
    expect(findWith(doubleCount, rows)).toMatchObject([{ cells: ["B6"], related: ["C4"] }]);
  });

  test("are found on another sheet, and named with it", () => {
    const sheets = [
      { name: "Jobs", rows: [["Total", "=SUM(Lines!B2:B5)"]] },
      { name: "Lines", rows: costs("") },
    ];
    expect(findWith(doubleCount, { sheets })).toMatchObject([
      { cells: ["B1"], related: ["Lines!B4"], fix: { B1: "=SUM(Lines!B2:B5)-Lines!B4" } },
    ]);
  });

  test("are left alone on a protected sheet", () => {
    expect(cellsFound(doubleCount, { rows: costs("=SUM(B2:B5)"), protected: true })).toEqual([]);
  });

  test("have no fix where there are more than five", () => {
    const rows = [
      ["Line", "Cost"],
      ...Array.from({ length: 6 }, (_, at) => [
        ["Stone", 100],
        ["Stone", 50],
        ["Sum", `=SUM(B${at * 3 + 2}:B${at * 3 + 3})`],
      ]).flat(),
    ];
    expect(findWith(doubleCount, [...rows, ["Total", "=SUM(B2:B19)"]])[0]!.fix).toBeUndefined();
    expect(findWith(doubleCount, [...rows, ["Total", "=SUM(B2:B16)"]])[0]!.fix).toEqual({
      B20: "=SUM(B2:B16)-B4-B7-B10-B13-B16",
    });
  });

  test("rank at least 10, and 60 where the total is an error", () => {
    expect(findWith(doubleCount, costs("=SUM(B2:B5)+9000"))[0]!.rank).toBe(10);
    expect(findWith(doubleCount, costs({ f: "=SUM(B2:B5)", v: "#VALUE!" }))[0]!.rank).toBe(60);
  });

  test("are one finding where the total was filled across", () => {
    const rows = costs("=SUM(B2:B5)").map(([name, cost]) => [
      name!,
      cost!,
      typeof cost === "string" ? cost.replaceAll("B", "C") : cost!,
    ]);
    expect(findWith(doubleCount, rows).map(({ cells }) => cells)).toEqual([["B6", "C6"]]);
    const apart = [...costs("=SUM(B2:B5)"), ["Again", "=SUM(B2:B4)"]];
    expect(findWith(doubleCount, apart).map(({ cells }) => cells)).toEqual([["B7"], ["B6"]]);
  });
});

describe("a cell that two parts of a sum both take", () => {
  test("is found, and taken once", () => {
    expect(findWith(doubleCount, costs("=SUM(B2:B3)+B3", 0))).toMatchObject([
      {
        cells: ["B6"],
        related: ["B3"],
        seen: "“Total”, “Cost” adds B3 twice: 50 too much.",
        todo: "Add each cell once.",
        fix: { B6: "=SUM(B2:B3)" },
      },
    ]);
  });

  test.each([
    ["=SUM(B2:B4,B3:B5)", ["B3", "B4"], "=SUM(B2:B4,B3:B5)-B3-B4"],
    ["=SUM(B2:B3,B4:B5)", undefined, undefined],
    ["=SUM(B2:B3)+B3-B3", undefined, undefined],
    ["=B2+B3+B2", ["B2"], "=B2+B3"],
    ["=SUM(B2:B4,B3:B5)-B3-B4", undefined, undefined],
    ["=SUM(B2:B4,B3:B5)-B3", ["B4"], undefined],
    ["=SUM(B2:B5)+$B$3", ["B3"], "=SUM(B2:B5)+$B$3-B3"],
  ])("%s", (total, again, fixed) => {
    const found = findWith(doubleCount, costs(total, 70));
    expect(found.map(({ related }) => related)).toEqual(again ? [again] : []);
    if (fixed) expect(found[0]!.fix).toEqual({ B6: fixed });
  });

  test("is nothing where it is blank or 0", () => {
    expect(cellsFound(doubleCount, costs("=SUM(B2:B4)+B4", 0))).toEqual([]);
    expect(cellsFound(doubleCount, costs("=SUM(B2:B4)+B4", ""))).toEqual([]);
  });

  test("is not mixed up with a cell whose address begins the same", () => {
    const rows = [...costs("=SUM(B2:B3)+B30+B3", 70), ...Array.from({ length: 24 }, (_, at) => ["Line", at])];
    expect(findWith(doubleCount, rows)[0]!.fix).toEqual({ B6: "=SUM(B2:B3)+B30" });
  });

  test("is found in blocks of several columns", () => {
    const rows = [
      ["", 1, 2, 3],
      ["", 4, 5, 6],
      ["", 7, 8, 9],
      ["All", "=SUM(B1:C2,C2:D3)"],
    ];
    expect(findWith(doubleCount, rows)).toMatchObject([{ related: ["C2"], fix: { B4: "=SUM(B1:C2,C2:D3)-C2" } }]);
  });
});

test("each of a series builds on the one before it", () => {
  const rows = (last: string) => [
    ["Day", "Loads so far"],
    ["1", 3],
    ["2", 4],
    ["3", "=B2+B3"],
    ["4", "=B3+B4"],
    ["5", last],
  ];
  expect(cellsFound(doubleCount, rows("=B4+B5"))).toEqual([]);
  expect(cellsFound(doubleCount, rows("=SUM(B2:B5)"))).toEqual(["B6"]);
});
