import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { wholePercent } from "./wholePercent";

/** A share in B2 and a formula that uses it. */
const used = (label: string, share: CellText, formula = "=B1*(1+B2)") => [
  ["Stone", 9],
  [label, share],
  ["Order", formula],
];

describe("a share that is typed as a whole number", () => {
  test("is found with what to type", () => {
    expect(findWith(wholePercent, used("Waste", 8))).toMatchObject([
      {
        level: "error",
        rank: 100,
        cells: ["B2"],
        seen: "“Waste” holds 8, which is 800%.",
        todo: "Type 8% (or 0.08).",
        fix: { B2: 0.08 },
      },
    ]);
  });

  // Waste and margin stay under the whole; a markup may be twice the cost.
  test.each([
    ["Waste", 0.08, false],
    ["Waste", 0.99, false],
    ["Waste", 1, true],
    ["Waste", 1.5, true],
    ["Waste", 100, true],
    ["Waste", 101, false],
    ["Margin", 0.25, false],
    ["Margin", 1, true],
    ["Markup", 1, false],
    ["Markup", 2, false],
    ["Markup", 2.01, true],
    ["Markup", 35, true],
    ["Overhead", 12, true],
    ["Sales tax", 7, true],
    ["Extra", 2, false],
    ["Extra", 5, true],
    ["Share", "=8", false],
    ["Waste", "eight", false],
    ["Waste", -8, false],
  ])("%s of %s", (label, share, isFound) => {
    const formula = typeof share === "string" && !share.startsWith("=") ? "=B1*1" : undefined;
    expect(cellsFound(wholePercent, used(label, share, formula))).toEqual(isFound ? ["B2"] : []);
  });

  test.each([
    ["=B1*(1+B2)", true],
    ["=B1*(B2+1)", true],
    ["=B1*(1-B2)", true],
    ["=B1*B2", true],
    ["=B1+B1*B2", true],
    ["=BED.STONE_YARDS(90,3,B2)", true],
    ["=DATE(2026,B2+1,1)", false],
    ["=B1*(1+B2/100)", false],
    ["=B1*(1+B2*0.01)", false],
    ["=B1*B2%", false],
    ["=B1*(2+B2)", false],
    ["=B1+B2", false],
    ["=B1/B2", false],
    ["=B2/1", false],
    ["=B1*(100/B2)", false],
    ["=SUM(B1:B2)", false],
    ["=MAX(B2,0)", false],
    ["=BED.STONE_YARDS(B2,3)", false],
    ["=B1", false],
  ])("used as %s", (formula, isFound) => {
    expect(cellsFound(wholePercent, used("Waste", 8, formula))).toEqual(isFound ? ["B2"] : []);
  });

  test.each(["Waste", "Margin", "Markup", "Overhead", "Sales tax"])(
    "as a factor is known by its label: %s",
    (label) => {
      expect(cellsFound(wholePercent, used(label, 35, "=B1*B2"))).toEqual(["B2"]);
    },
  );

  test("needs no label where a formula adds it to the whole", () => {
    expect(cellsFound(wholePercent, used("", 8))).toEqual(["B2"]);
    expect(cellsFound(wholePercent, used("", 8, "=B1*B2"))).toEqual([]);
    expect(cellsFound(wholePercent, used("", 8, "=BED.PRICE_MARKUP(B1,B2)"))).toEqual(["B2"]);
    expect(cellsFound(wholePercent, used("", 8, "=BED.PRICE_MARKUP(B2,B1)"))).toEqual(["B1"]);
  });

  test("is right where any formula divides it by 100, and only by 100", () => {
    const also = (formula: string) => cellsFound(wholePercent, [...used("Waste", 8), ["Again", formula]]);
    for (const formula of ["=B1*(1+B2/100)", "=B1*(1+B2*0.01)", "=B1*B2%"]) expect(also(formula)).toEqual([]);
    for (const formula of ["=B2*100", "=B2/0.01", "=B2/12", "=B2*5", "=-B2", "=B2+100"])
      expect(also(formula)).toEqual(["B2"]);
  });

  // 1.08 times the stone is how some write 8% of waste.
  test.each([
    [1.08, []],
    [1.99, []],
    [2, ["B2"]],
    [8, ["B2"]],
  ])("as a factor of %f", (share, found) => {
    expect(cellsFound(wholePercent, used("Waste", share, "=B1*B2"))).toEqual(found);
  });

  test("as a factor has to be told apart from a count in its row", () => {
    const row = (label: string) => [[label, 8, 9, "=B1*C1"]];
    expect(cellsFound(wholePercent, row("Waste"))).toEqual([]);
    expect(cellsFound(wholePercent, row("Waste (%)"))).toEqual(["B1", "C1"]);
    const table = (heading: string) => [
      ["Bed", heading, "Stone", "Order"],
      ["Walk", 8, 9, "=B2*C2"],
      ["Yard", 8, 9, "=B3*C3"],
    ];
    expect(cellsFound(wholePercent, table("Waste"))).toEqual(["B2", "B3"]);
    expect(cellsFound(wholePercent, table("Beds"))).toEqual([]);
  });

  test("is found by its unit or format", () => {
    expect(cellsFound(wholePercent, used("Extra (%)", 8, "=B1*B2"))).toEqual(["B2"]);
    expect(cellsFound(wholePercent, { rows: used("Extra", 8, "=B1*B2"), formats: { B2: "0%" } })).toEqual(["B2"]);
  });

  test.each([
    [8, "0%", ["B2"]],
    [2.5, "0.0%", ["B2"]],
    [2, "0%", []],
    [8, "0.00", []],
  ])("shows as %f with the format %s where no formula reads it", (share, format, found) => {
    expect(cellsFound(wholePercent, { rows: used("Waste", share, "=B1"), formats: { B2: format } })).toEqual(found);
  });

  test("that shows as percent may be used in another way", () => {
    expect(cellsFound(wholePercent, { rows: used("Waste", 8, "=B1+B2"), formats: { B2: "0%" } })).toEqual([]);
  });

  test("is followed through cells that only repeat it", () => {
    const rows = [...used("Waste", 8, "=B2"), ["Stone order", "=B1*(1+B3)"]];
    expect(cellsFound(wholePercent, rows)).toEqual(["B2"]);
  });

  test("is left alone on a protected sheet", () => {
    expect(cellsFound(wholePercent, { rows: used("Waste", 8), protected: true })).toEqual([]);
  });

  test("is one finding for each column and kind of share", () => {
    const rows = [
      ["Bed", "Waste", "Markup", "Stone", "Order", "Price"],
      ["Walk", 8, 35, 9, "=D2*(1+B2)", "=D2*(1+C2)"],
      ["Yard", 8, 0.35, 9, "=D3*(1+B3)", "=D3*(1+C3)"],
    ];
    expect(findWith(wholePercent, rows).map(({ cells }) => cells)).toEqual([["B2", "B3"], ["C2"]]);
    const apart = [...used("Waste", 8), ["Markup", 35], ["Price", "=B3*(1+B4)"]];
    expect(findWith(wholePercent, apart).map(({ cells }) => cells)).toEqual([["B2"], ["B4"]]);
  });
});
