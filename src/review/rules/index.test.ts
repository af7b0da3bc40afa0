import { describe, expect, test } from "vitest";
import { cellsFound, type Input } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { rules } from "./index";

// What an office dismissed is kept in its workbooks by the rule's id, so an id can't change.
test("rules keep their ids", () => {
  expect(rules.map(({ id }) => id)).toEqual([
    "typed-over",
    "unlike-neighbors",
    "short-sum",
    "double-count",
    "adjusted-total",
    "empty-row-in-total",
    "number-as-text",
    "date-as-length",
    "error",
    "blank",
    "empty-factor",
    "sliding-reference",
    "hidden-in-total",
    "rounded-down",
    "whole-percent",
    "buried-rate",
    "same-bed",
    "depth-unit",
    "argument-unit",
    "unit-factor",
    "density",
    "depth-sense",
    "overlap-sense",
    "out-of-proportion",
    "over-payload",
    "price-under-cost",
    "margin-as-markup",
    "missing",
    "example-rate",
  ]);
});

const rows = (count: number, row: (at: number) => readonly CellText[]) =>
  Array.from({ length: count }, (_, at) => row(at + 2));
const across = (label: string, cell: (column: string) => CellText) => [label, ...["B", "C", "D", "E", "F"].map(cell)];
const MONTHS = across("Line", (column) => `Month ${column}`);

/** A workbook in which two rules find the same cell, and one of them says it better. */
const SAID_BETTER: readonly (readonly [better: string, other: string, cell: string, input: Input])[] = [
  [
    "unlike-neighbors",
    "error",
    "D4",
    [["Bed", "Length", "Width", "Area"], ...rows(5, (row) => ["Bed", 12, 6, row === 4 ? "=B4/0" : `=B${row}*C${row}`])],
  ],
  [
    "unlike-neighbors",
    "adjusted-total",
    "F4",
    [
      ["Bed", "Front", "Side", "Back", "Fence", "All"],
      ...rows(5, (row) => ["Bed", 12, 6, 8, 4, row === 4 ? "=SUM(B4:E4)+9" : `=SUM(B${row}:E${row})`]),
    ],
  ],
  [
    "short-sum",
    "unlike-neighbors",
    "E4",
    [
      MONTHS,
      across("Stone", () => 100),
      across("Pins", () => 20),
      across("All work", (column) => (column === "E" ? { f: "=SUM(E1:E2)", v: 100 } : `=SUM(${column}2:${column}3)`)),
    ],
  ],
  [
    "double-count",
    "unlike-neighbors",
    "E5",
    [
      MONTHS,
      across("Stone", () => 100),
      across("Pins", () => 20),
      across("Both", (column) => `=SUM(${column}2:${column}3)`),
      across("All work", (column) => (column === "E" ? "=E2+E4" : `=${column}4*2`)),
    ],
  ],
  [
    "double-count",
    "short-sum",
    "B7",
    [
      ["Line", "Cost"],
      ["Stone", 100],
      ["Fabric", 50],
      ["Pins", 20],
      ["Materials", "=SUM(B3:B4)"],
      ["Labor", 200],
      ["Total", "=SUM(B3:B6)"],
    ],
  ],
  [
    "date-as-length",
    "depth-sense",
    "B2",
    {
      // April 6, 2026.
      rows: [
        ["Bed", "Stone depth (in)"],
        ["Walk", 46_118],
      ],
      formats: { B2: "d-mmm" },
    },
  ],
  [
    "error",
    "blank",
    "C4",
    [
      ["Bed", "Stone", "Parts", "Share", "Order"],
      ...rows(6, (row) => ["Bed", 9, row === 4 ? "" : 3, `=B${row}/C${row}`, `=B${row}*C${row}`]),
    ],
  ],
  [
    "empty-factor",
    "blank",
    "C4",
    [
      ["Bed", "Length", "Width", "Area"],
      ...rows(6, (row) => ["Bed", 12, row === 4 ? "" : 6, `=B${row}*C${row}`]),
      ["", "", "", ""],
      ["Twice", "=2*C4"],
    ],
  ],
  [
    "rounded-down",
    "unlike-neighbors",
    "C4",
    [["Bed", "Stone", "Bags"], ...rows(5, (row) => ["Bed", 9, row === 4 ? "=INT(B4/2)" : `=ROUNDUP(B${row}/2,0)`])],
  ],
  [
    "whole-percent",
    "typed-over",
    "C4",
    [
      ["Bed", "Stone", "Waste", "Order"],
      ...rows(5, (row) => ["Bed", 9, row === 4 ? 8 : `=B${row}/100`, `=B${row}*(1+C${row})`]),
    ],
  ],
  [
    "buried-rate",
    "unlike-neighbors",
    "C4",
    {
      sheets: [
        {
          name: "Jobs",
          rows: [
            ["Bed", "Hours", "Labor"],
            ...rows(5, (row) => ["Bed", 5, row === 4 ? "=B4*46.5" : `=B${row}*Rates!$B$1`]),
          ],
        },
        { name: "Rates", rows: [["Crew rate", 46.5]] },
      ],
    },
  ],
  [
    "depth-unit",
    "depth-sense",
    "B2",
    [
      ["Bed", "Stone depth (in)"],
      ["Walk", 0.25],
    ],
  ],
  [
    "depth-unit",
    "whole-percent",
    "B2",
    [
      ["Bed", "Stone depth (ft)", "More"],
      ["Walk", 3, "=9*(1+B2)"],
    ],
  ],
  [
    "unit-factor",
    "unlike-neighbors",
    "D4",
    [
      ["Bed", "Area (sq ft)", "Depth (in)", "Stone (cu yd)"],
      ...rows(5, (row) => ["Bed", 90, 3, row === 4 ? "=B4*C4" : `=B${row}*C${row}/324`]),
    ],
  ],
  [
    "margin-as-markup",
    "unlike-neighbors",
    "D4",
    [
      ["Line", "Cost", "Margin", "Price"],
      ...rows(5, (row) => ["Stone", 100, 0.35, row === 4 ? "=B4*(1+C4)" : `=B${row}/(1-C${row})`]),
    ],
  ],
];
const ruleOf = (id: string) => rules.find((rule) => rule.id === id)!;

describe("of two rules that find the same cell", () => {
  test.each(SAID_BETTER)("%s says it better than %s", (better, other, cell, input) => {
    expect(cellsFound(ruleOf(better), input)).toContain(cell);
    expect(cellsFound(ruleOf(other), input)).toContain(cell);
    expect(cellsFound([ruleOf(other), ruleOf(better)], input).filter((one) => one === cell)).toHaveLength(1);
  });

  test("every pair of them is tried", () => {
    const pairs = rules.flatMap(({ id, covers = [] }) => covers.map((other) => `${id} ${other}`));
    expect(SAID_BETTER.map(([better, other]) => `${better} ${other}`).sort()).toEqual(pairs.sort());
  });
});
