import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { adjustedTotal } from "./adjustedTotal";

const costs = (total: CellText) => [
  ["Line", "Cost", "Off"],
  ["Stone", 100, 5],
  ["Fabric", 50, 5],
  ["Pins", 20, 5],
  ["Total", total, ""],
];

describe("a number typed into a total", () => {
  test("is found with its amount", () => {
    expect(findWith(adjustedTotal, costs("=SUM(B2:B4)+85"))).toMatchObject([
      {
        level: "warning",
        // 85 on top of 170 are 50%.
        rank: 50,
        cells: ["B5"],
        seen: "“Total”, “Cost” adds 85, typed into its formula.",
        todo: "Put the amount on a line of its own with a label, or ignore this and say why.",
        fix: undefined,
      },
    ]);
  });

  test.each([
    ["=SUM(B2:B4)-12.5", "takes off 12.5"],
    ["=SUM(B2:B4,85)", "adds 85"],
    ["=SUM(B2:B4)-(40+3)", "takes off 40 and takes off 3"],
    ["=ROUND(SUM(B2:B4)+85,0)", "adds 85"],
    ["=B2+B3+B4-1", "takes off 1"],
    ["=+B2+B3-B4+25", "adds 25"],
    ["=SUBTOTAL(9,B2:B4)+85", "adds 85"],
  ])("%s", (total, says) => {
    expect(findWith(adjustedTotal, costs(total)).map(({ seen }) => seen)).toEqual([
      `“Total”, “Cost” ${says}, typed into its formula.`,
    ]);
  });

  test.each([
    ["a total as it should be", "=SUM(B2:B4)"],
    ["a factor", "=SUM(B2:B4)*1.08"],
    ["nothing added", "=SUM(B2:B4)+0"],
    ["an allowance on one cell", "=B2+25"],
    ["a number in another function", "=MAX(B2:B4,85)"],
    ["the days from one date to another, both counted", "=B2-C2+1"],
    ["what is left of the whole", "=1-SUM(B2:B4)"],
    ["what is left of 100", "=100-B2-B3"],
    ["arithmetic without cells", "=100+50+20"],
  ])("is not %s", (_, total) => {
    expect(cellsFound(adjustedTotal, costs(total))).toEqual([]);
  });

  test("is how the sheet works where three lines do it", () => {
    const rows = (count: number) => [
      ["Bed", "Front (ft)", "Side (ft)", "Edging (ft)"],
      ...Array.from({ length: count }, (_, at) => ["Bed", 12, 6, `=B${at + 2}+C${at + 2}+2`]),
    ];
    expect(cellsFound(adjustedTotal, rows(2))).toEqual(["D2", "D3"]);
    expect(cellsFound(adjustedTotal, rows(3))).toEqual([]);
  });
});
