import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { marginAsMarkup } from "./price";

/** A cost of 100, a share of 35%, and a price made of them. */
const priced = (label: string, formula: CellText, share: CellText = 0.35) => [
  ["Cost", 100],
  [label, share],
  ["Fee", 10],
  ["Price", formula],
];

describe("a margin that is used as a markup, or the reverse", () => {
  // Markup is a share of the cost: cost x (1 + markup). Margin is a share of the price: cost / (1 - margin).
  test.each([
    ["=B1*(1+B2)", "markup"],
    ["=(1+B2)*B1", "markup"],
    ["=B1*(B2+1)", "markup"],
    ["=B1*B3*(1+B2)", "markup"],
    ["=ROUND(B1*(1+B2),0)", "markup"],
    ["=B1+B1*B2", "markup"],
    ["=B1+B2*B1", "markup"],
    ["=B1*B2+B1", "markup"],
    ["=BED.PRICE_MARKUP(B1,B2)", "markup"],
    ["=B1/(1-B2)", "margin"],
    ["=B1*B3/(1-B2)", "margin"],
    ["=BED.PRICE_MARGIN(B1,B2)", "margin"],
    // A discount, and others that are neither.
    ["=B1*(1-B2)", undefined],
    ["=B1/(1+B2)", undefined],
    ["=B1/(B2-1)", undefined],
    ["=B1*(2+B2)", undefined],
    ["=B1*(1*B2)", undefined],
    ["=B1+B3*B2", undefined],
    ["=B1+B1/B2", undefined],
    ["=B1-B1*B2", undefined],
    ["=B1*(1+SUM(B2:B3))", undefined],
    ["=B1*(1+0.35)", undefined],
    ["=BED.MARKUP_FOR_MARGIN(B2)", undefined],
    ["=B1+B2", undefined],
  ])("%s", (formula, way) => {
    expect(cellsFound(marginAsMarkup, priced("Margin", formula))).toEqual(way === "markup" ? ["B4"] : []);
    expect(cellsFound(marginAsMarkup, priced("Markup", formula))).toEqual(way === "margin" ? ["B4"] : []);
  });

  test.each([
    ["Margin", true],
    ["Our margin, as a share", true],
    ["Markup", false],
    ["Mark-up", false],
    ["Margin or markup", false],
    ["Share", false],
  ])("goes by the label: %s", (label, isFound) => {
    expect(cellsFound(marginAsMarkup, priced(label, "=B1*(1+B2)"))).toEqual(isFound ? ["B4"] : []);
  });

  test.each(["Markup", "Mark-up", "Mark up"])("knows %s", (label) => {
    expect(cellsFound(marginAsMarkup, priced(label, "=B1/(1-B2)"))).toEqual(["B4"]);
  });

  test("goes by a name before the label", () => {
    const sheets = (name: string) => ({
      sheets: [{ name: "Jobs", rows: priced("Share", `=B1*(1+${name})`) }],
      names: { [name]: "=Jobs!$B$2" },
    });
    expect(findWith(marginAsMarkup, sheets("JobMargin"))[0]!.seen).toContain("takes B2 (JobMargin) as a markup");
    expect(cellsFound(marginAsMarkup, sheets("JobShare"))).toEqual([]);
  });

  test("says what either way makes of the cost", () => {
    expect(findWith(marginAsMarkup, priced("Margin", "=B1*(1+B2)"))).toMatchObject([
      {
        level: "error",
        cells: ["B4"],
        related: ["B2"],
        // 100 x 1.35 = 135; 100 / 0.65 = 153.846.
        seen: "“Price” takes B2 (“Margin”) as a markup: =B1*(1+B2). On 100 a markup of 35% makes 135, a margin of 35% makes 153.85.",
        todo: "For a margin, divide cost by 1 − margin. If it's a markup, say so in the heading.",
        // 135 is 12% under 153.85.
        rank: 12,
        fix: undefined,
      },
    ]);
    expect(findWith(marginAsMarkup, priced("Markup", "=B1/(1-B2)"))[0]).toMatchObject({
      seen: "“Price” takes B2 (“Markup”) as a margin: =B1/(1-B2). On 100 a markup of 35% makes 135, a margin of 35% makes 153.85.",
      todo: "For a markup, multiply cost by 1 + markup. If it's a margin, say so in the heading.",
    });
  });

  test("says what markup a margin is where the cost is more than one cell", () => {
    // 0.35 / 0.65 = 0.53846
    expect(findWith(marginAsMarkup, priced("Margin", "=B1*B3*(1+B2)"))[0]!.seen).toMatch(
      /: =B1\*B3\*\(1\+B2\)\. A margin of 35% is a markup of 53\.85%\.$/,
    );
  });

  test("takes the cost from a part of the formula", () => {
    expect(findWith(marginAsMarkup, priced("Margin", "=SUM(B1,B3)*(1+B2)"))[0]!.seen).toContain(
      " On 110 a markup of 35% makes 148.5, a margin of 35% makes 169.23.",
    );
  });

  // 5% more is 1.05, and 1 / 0.95 = 1.0526 is 0% off: 5 at least.
  test.each([
    [0.05, 5],
    [0.5, 25],
    [0.99, 98],
    [1, 20],
    [35, 20],
    ["", 20],
    ["a third", 20],
  ])("a share of %s ranks %i", (share, rank) => {
    const [found] = findWith(marginAsMarkup, priced("Margin", { f: "=B1*(1+B2)", v: 1 }, share));
    expect(found!.rank).toBe(rank);
    expect(found!.seen.endsWith("=B1*(1+B2).")).toBe(rank === 20);
  });

  test("is one finding where it was filled down", () => {
    const rows = [
      ["Line", "Cost", "Margin", "Price"],
      ["Stone", 100, 0.35, "=B2*(1+C2)"],
      ["Fabric", 50, 0.35, "=B3*(1+C3)"],
      ["Pins", 20, 0.35, "=(1+C4)*B4"],
    ];
    expect(findWith(marginAsMarkup, rows).map(({ cells }) => cells)).toEqual([["D2", "D3"], ["D4"]]);
  });

  test("is left alone on a protected sheet", () => {
    expect(cellsFound(marginAsMarkup, { rows: priced("Margin", "=B1*(1+B2)"), protected: true })).toEqual([]);
  });
});
