import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import { roundedDown } from "./roundedDown";

/** Bags of one bed. */
const counted = (formula: string, heading = "Bags", label = "Front walk") => [
  ["Bed", "Stone (cu ft)", heading],
  [label, 9, formula],
];

describe("things bought whole that are rounded down", () => {
  test("are found with the formula that rounds up", () => {
    expect(findWith(roundedDown, counted("=ROUNDDOWN(B2/2,0)"))).toMatchObject([
      {
        level: "error",
        // One of 4 is 25%.
        rank: 25,
        cells: ["C2"],
        seen: "“Front walk”, “Bags” has =ROUNDDOWN(B2/2,0), which rounds down.",
        todo: "Round up.",
        fix: { C2: "=ROUNDUP(B2/2,0)" },
      },
    ]);
    expect(findWith(roundedDown, counted("=ROUND(B2/2,0)"))[0]!.seen).toBe(
      "“Front walk”, “Bags” has =ROUND(B2/2,0), which rounds to the nearest whole one, down as often as up.",
    );
  });

  test.each([
    ["=ROUNDDOWN(B2/2,0)", "=ROUNDUP(B2/2,0)"],
    ["=ROUNDDOWN(B2/2,)", "=ROUNDUP(B2/2,0)"],
    ["=ROUND(B2/2,0)", "=ROUNDUP(B2/2,0)"],
    ["=TRUNC(B2/2)", "=ROUNDUP(B2/2,0)"],
    ["=INT(B2/2)", "=ROUNDUP(B2/2,0)"],
    ["=FLOOR(B2/2,1)", "=CEILING(B2/2,1)"],
    ["=FLOOR(B2/2,5)", "=CEILING(B2/2,5)"],
    ["=QUOTIENT(B2*3,2)", "=ROUNDUP((B2*3)/(2),0)"],
    ["=INT(B2/2)*3", "=ROUNDUP(B2/2,0)*3"],
    ["=MAX(1,INT((B2+0.2)/2))", "=MAX(1,ROUNDUP((B2+0.2)/2,0))"],
    ["=INT(B2/2)+0.5", "=ROUNDUP(B2/2,0)+0.5"],
    ["=INT(B2/2+0.3)", "=ROUNDUP(B2/2+0.3,0)"],
    ["=INT(B2/2)-1", "=ROUNDUP(B2/2,0)-1"],
    ["=INT(B2*2+0.5*B2)", "=ROUNDUP(B2*2+0.5*B2,0)"],
    ["=-INT(B2/2)", "=-ROUNDUP(B2/2,0)"],
    ["=-INT(2*B2)", "=-ROUNDUP(2*B2,0)"],
  ])("%s", (formula, fixed) => {
    expect(findWith(roundedDown, counted(formula)).map(({ fix }) => fix)).toEqual([{ C2: fixed }]);
  });

  test.each([
    ["rounded up", "=ROUNDUP(B2/2,0)"],
    ["rounded up to a step", "=CEILING(B2/2,1)"],
    ["rounded to tenths", "=ROUND(B2/2,1)"],
    ["cut to tenths", "=TRUNC(B2/2,1)"],
    ["rounded down to tenths", "=ROUNDDOWN(B2/2,1)"],
    ["asks whether it's whole", "=IF(B2=INT(B2),B2,1)"],
    ["asks whether what it looks up is whole", "=IF(INDEX(B2:B4,2)=INT(INDEX(B2:B4,2)),INDEX(B2:B4,2),1)"],
    ["one more", "=INT(B2/2)+1"],
    ["one more, the other way round", "=1+INT(B2/2)"],
    ["raised by half", "=INT(B2/2+0.5)"],
    ["raised by 0.4", "=ROUND(B2/2+0.4,0)"],
    ["raised by 0.99", "=INT(0.99+B2/2)"],
    ["turned twice", "=-INT(-B2/2)"],
    ["turned twice at once", "=-INT(-(B2/2))"],
    ["turned twice, a typed number", "=-INT(-2*B2)"],
    ["not rounded", "=B2/2"],
  ])("are fine when %s: %s", (_, formula) => {
    expect(cellsFound(roundedDown, counted(formula))).toEqual([]);
  });

  test.each([
    ["Bags", "Front walk", true],
    ["Rolls", "Front walk", true],
    ["Area (sq ft)", "Front walk", false],
    ["Price per bag", "Front walk", false],
    ["Qty", "Stakes", true],
    ["Qty", "Front walk", false],
    ["Cost", "Stakes", false],
    ["Amount (pcs)", "Stakes", true],
    ["Amount (lb)", "Stakes", false],
  ])("are known by heading or label: %s of %s", (heading, label, isFound) => {
    expect(cellsFound(roundedDown, counted("=INT(B2/2)", heading, label))).toEqual(isFound ? ["C2"] : []);
  });

  test("are known by the label, or the unit behind the number, where there are no headings", () => {
    expect(cellsFound(roundedDown, [["Bags of stone", "=INT(9/2)"]])).toEqual(["B1"]);
    expect(cellsFound(roundedDown, [["Stone", "=INT(9/2)", "bags"]])).toEqual(["B1"]);
    expect(cellsFound(roundedDown, [["Stone", "=INT(9/2)", "tons"]])).toEqual([]);
    expect(cellsFound(roundedDown, [["Stone", "=INT(9/2)", '="bags"']])).toEqual([]);
  });

  // One too few of 1 is everything, of 10 a tenth; 15 at least.
  test.each([
    [1, 100],
    [4, 100],
    [8, 25],
    [12, 17],
    [40, 15],
  ])("rank by how much one too few is: INT(%i/2)", (cubicFeet, rank) => {
    const rows = [["Bags", `=INT(${cubicFeet}/2)-${cubicFeet === 4 ? 1 : 0}`]];
    expect(findWith(roundedDown, rows)[0]!.rank).toBe(rank);
  });

  test("rank highest where nothing can be seen", () => {
    expect(findWith(roundedDown, [["Bags", "=INT(1/0)"]])[0]!.rank).toBe(100);
  });

  test("are left alone on a protected sheet", () => {
    expect(cellsFound(roundedDown, { rows: counted("=INT(B2/2)"), protected: true })).toEqual([]);
  });

  test("are one finding for each column and way of rounding", () => {
    const rows = [
      ["Bed", "Stone", "Bags", "Rolls"],
      ["Walk", 9, "=INT(B2/2)", "=INT(B2/3)"],
      ["Yard", 9, "=INT(B3/2)", "=INT(B3/3)"],
      ["Gate", 9, "=ROUND(B4/2,0)", "=ROUNDUP(B4/3,0)"],
    ];
    expect(findWith(roundedDown, rows).map(({ cells }) => cells)).toEqual([["D2", "D3"], ["C2", "C3"], ["C4"]]);
  });

  test("each have the fix of their own row", () => {
    const rows = [["Bed", "Stone", "Bags"], ...Array.from({ length: 12 }, (_, at) => ["Bed", 9, `=INT(B${at + 2}/2)`])];
    expect(findWith(roundedDown, rows)[0]!.fix).toMatchObject({ C2: "=ROUNDUP(B2/2,0)", C13: "=ROUNDUP(B13/2,0)" });
  });
});
