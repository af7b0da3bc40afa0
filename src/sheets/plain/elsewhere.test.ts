import { describe, expect, test } from "vitest";
import { regionOf } from "../../../test/plainRegion";
import type { CellContent, Surroundings } from "./region";
import { toPlain } from "./toPlain";

const outside: Readonly<Record<string, CellContent>> = { "Rates!1,1": 0.08, "Rates!2,1": `18'`, "Front yard!0,25": 7 };

const around: Surroundings = {
  valueAt: (sheetName, row, column) => outside[`${sheetName}!${row},${column}`],
  names: { Rate_waste: "Rates!$B$2", Rate_stone_prices: "Rates!$C$2:$C$9", Twice: "=0.5*4" },
};
const toFile = (cells: Parameters<typeof regionOf>[0], values: Parameters<typeof regionOf>[1] = {}) =>
  toPlain(regionOf(cells, values), around, { at: { row: 0, column: 0 }, sameSheet: false, isElsewhere: true });

describe("a copy into a workbook of its own", () => {
  test("brings the single cells along that its formulas read elsewhere, each once and by its name", () => {
    const {
      plan,
      carried,
      outside: read,
    } = toFile({
      B3: 100,
      C3: "=BED.STONE_YARDS(B3,2,Rate_waste)",
      D3: "=B3*(1+Rate_waste)+Z1+Rates!$B$2",
    });
    expect(plan.formulas).toEqual([
      [100, expect.stringContaining("A1*2/324*(1+N($B$4))"), "=A1*(1+$B$4)+$B$5+$B$4"],
      ["", "", ""],
      ["'Values from outside the copied cells, as of this copy", "", ""],
      ["'Rate_waste", 0.08, ""],
      ["''Front yard'!Z1", 7, ""],
      ["", "", ""],
      [expect.stringContaining("needs no add-in"), "", ""],
    ]);
    expect(carried.map(({ what, value }) => [what, value])).toEqual([
      ["Rate_waste", 0.08],
      ["'Front yard'!Z1", 7],
    ]);
    expect(read.map(({ what, readBy }) => `${what} ${readBy.join()}`)).toContain("Rate_waste C3,D3");
  });

  test("holds as its value, with the reason, what reads more than single cells elsewhere, or what no other workbook has", () => {
    const { leftAsValues, carried } = toFile({
      A1: "=SUM(Rates!B2:B9)",
      B1: "=INDEX(Rate_stone_prices,2)",
      C1: "=Twice+1",
      D1: "=[Other.xlsx]Jobs!A1",
      E1: '=INDIRECT("Rates!B2")',
      F1: "=OTHER.PRICE(A1)",
      G1: "=SUM(Jobs[Length])",
      H1: "=BED.FEET(Rates!B3)",
      I1: "=SUM(A1#)",
      J1: "=SUM(Rates!A:A)",
      K1: "=LET(x,Twice,x)",
    });
    expect(leftAsValues.map(({ from, reason }) => `${from}: ${reason}`)).toEqual([
      "A1: it reads Rates!B2:B9, which isn't in the copy; only single cells are brought along",
      "B1: it reads Rates!$C$2:$C$9, which isn't in the copy; only single cells are brought along",
      "C1: Twice is a name of the original workbook",
      "D1: it reads [Other.xlsx]Jobs!A1, which isn't in the copy",
      "E1: INDIRECT builds its address from text, which may point elsewhere in the copy",
      "F1: OTHER.PRICE belongs to another add-in",
      "G1: Jobs[Length] belongs to a table that isn't there",
      "H1: B3 on Rates is not copied, and holds “18'” as text",
      "I1: it reads a spilled list, which not every program can",
      "J1: it reads Rates!A:A, which isn't in the copy; only single cells are brought along",
      "K1: Twice is a name of the original workbook",
    ]);
    expect(carried.map(({ what }) => what)).not.toContain("Twice");
  });

  test("brings no more than 500 values along", () => {
    const cells = Object.fromEntries(Array.from({ length: 501 }, (_, row) => [`A${row + 1}`, `=Rates!D${row + 1}*2`]));
    const { carried, leftAsValues } = toFile(cells);
    expect(carried).toHaveLength(500);
    expect(leftAsValues.map(({ from }) => from)).toEqual(["A501"]);
  });

  test("keeps names that a formula defines for itself, and names of copied cells as their cells", () => {
    const { plan } = toPlain(
      regionOf({ B3: 2, C3: "=LET(x,B3,x*x)", D3: "=Depth*2" }),
      { ...around, names: { Depth: "'Front yard'!$B$3" } },
      { at: { row: 0, column: 0 }, sameSheet: false, isElsewhere: true },
    );
    expect(plan.formulas[0]).toEqual([2, "=LET(x,A1,x*x)", "=$A$1*2"]);
  });

  test("in the same workbook everything outside stays linked, and is named", () => {
    const {
      plan,
      outside: read,
      carried,
    } = toPlain(regionOf({ A1: "=Rate_waste+Rates!B3+SUM(Rate_stone_prices)" }), around);
    expect(plan.formulas[0]).toEqual(["=Rate_waste+Rates!B3+SUM(Rate_stone_prices)"]);
    expect(read.map(({ what }) => what)).toEqual(["Rate_waste", "Rates!B3", "Rate_stone_prices"]);
    expect(carried).toEqual([]);
  });
});

describe("looks that are copied along", () => {
  const region = {
    ...regionOf({ A1: `5' 3"`, B1: "=BED.FEET(A1)", C1: "=BED.CUT_COUNT(A1,A1:A1)" }),
    widths: [8, 9, 10],
  };
  const dress = [
    [{ fill: "#FBF0D9" }, { bold: true }, { bold: true, italic: false, color: "#000000", fill: "#EEEEEE" }],
  ];

  test("stay, but the ink of a value that was a formula marks it", () => {
    const { plan } = toPlain({ ...region, dress }, {});
    expect(plan.dress?.[0]).toEqual([{ fill: "#FBF0D9" }, { bold: true }, { bold: true, fill: "#EEEEEE" }]);
    expect(plan.looks[0]).toEqual({ area: { row: 0, column: 2, rows: 1, columns: 1 }, look: "note" });
    expect(plan.dress).toHaveLength(plan.rows);
    expect(plan.widths).toEqual([8, 9, 10]);
  });

  test("a number in place of taped text shows no more decimals than it needs", () => {
    const formatOf = (text: string) => toPlain(regionOf({ A1: text, B1: "=BED.FEET(A1)" })).plan.formats[0]![0];
    // 6 1/2 in is 0.541666… ft; 3 in is 0.25 ft.
    expect([`32' 6 1/2"`, `5' 3"`, `18' 6"`, "18'"].map(formatOf)).toEqual(["0.000", "0.00", "0.00", "General"]);
    expect(
      toPlain({ ...regionOf({ A1: `5' 3"`, B1: "=BED.FEET(A1)" }), formats: [["0.0", "0"]] }).plan.formats[0]![0],
    ).toBe("0.0");
  });
});
