import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { sliding } from "./neighbors";

/** Labor of four beds, and a sheet of rates whose first is the crew's. */
const labor = (rates: readonly CellText[], formula: (row: number) => CellText = (row) => `=B${row}*Rates!B${row}`) => ({
  sheets: [
    { name: "Jobs", rows: [["Bed", "Hours", "Labor"], ...rates.map((_, at) => ["Bed", 5, formula(at + 2)])] },
    { name: "Rates", rows: [["Rate", "Amount"], ...rates.map((rate, at) => [at === 0 ? "Crew" : "", rate])] },
  ],
});

describe("a rate that was read without a $", () => {
  test("is found where the lines below read blanks, and all of them are fixed", () => {
    expect(findWith(sliding, labor([46, "", "", ""]))).toMatchObject([
      {
        level: "error",
        rank: 80,
        cells: ["C3", "C4", "C5"],
        related: ["Rates!B2", "Rates!B2", "Rates!B2"],
        seen:
          "“Bed”, “Labor” reads Rates!B3, which has no number; C2 reads Rates!B2 (“Crew”, “Amount”, 46). " +
          "The same in 2 more cells: C4 and C5.",
        todo: "Make every line read the same cell, and lock it with $.",
        fix: {
          C2: "=B2*Rates!$B$2",
          C3: "=B3*Rates!$B$2",
          C4: "=B4*Rates!$B$2",
          C5: "=B5*Rates!$B$2",
        },
      },
    ]);
  });

  // Half of the lines below have to read no number.
  test.each([
    [[46, "", "", ""], true],
    [[46, 5, "", "text"], true],
    [[46, 5, 5, ""], false],
    [[46, 5, "", 5, ""], true],
    [[46, 5, 5, 5], false],
  ])("with rates %j", (rates, isFound) => {
    expect(cellsFound(sliding, labor(rates)).length > 0).toBe(isFound);
  });

  test.each([
    ["a rate that a formula works out", ["=40+6", "", "", ""]],
    ["text", ["crew", "", "", ""]],
    ["a blank", ["", "", "", ""]],
  ])("is not %s", (_, rates) => {
    expect(
      cellsFound(
        sliding,
        labor(rates, (row) => ({ f: `=B${row}*Rates!B${row}`, v: 1 })),
      ),
    ).toEqual([]);
  });

  test.each([
    ["fixed by a $", (row: number) => `=B${row}*Rates!B$2`],
    ["in a range", (row: number) => `=B${row}*SUM(Rates!B${row}:B${row + 1})`],
  ])("is not found where it is %s", (_, formula) => {
    expect(cellsFound(sliding, labor([46, "", "", ""], formula))).toEqual([]);
  });

  test("on the same sheet has to be outside the line", () => {
    const inside = [
      ["Bed", "Hours", "Rate", "Labor"],
      ...[2, 3, 4, 5].map((row) => ["Bed", 5, row === 2 ? 46 : "", `=B${row}*C${row}`]),
    ];
    expect(cellsFound(sliding, inside)).toEqual([]);
    const outside = [
      ["Crew rate", 46, ""],
      ["", "", ""],
      ["Bed", "Hours", "Labor"],
      ...[4, 5, 6, 7].map((row) => ["Bed", "", `=A${row}*B${row - 3}`].map((cell, at) => (at === 0 ? 5 : cell))),
    ];
    expect(cellsFound(sliding, outside)).toEqual(["C5", "C6", "C7"]);
  });

  test("is found across, too", () => {
    const rows = [
      ["Crew rate", 46, "", "", "", ""],
      ["", "", "", "", "", ""],
      ["", "Walk", "Yard", "Patio", "Gate", "Fence"],
      ["Hours", 5, 6, 7, 8, 9],
      ["Labor", "", "=C4*B1", "=D4*C1", "=E4*D1", "=F4*E1"],
    ];
    expect(findWith(sliding, rows)).toMatchObject([
      {
        cells: ["D5", "E5", "F5"],
        fix: { C5: "=C4*$B$1", D5: "=D4*$B$1", E5: "=E4*$B$1", F5: "=F4*$B$1" },
      },
    ]);
  });

  test("has no fix where the formula can't be rewritten", () => {
    const formula = (row: number) => ({ f: `=LET(h,B${row},h*Rates!B${row})`, v: 1 });
    expect(findWith(sliding, labor([46, "", "", ""], formula))).toMatchObject([
      { cells: ["C3", "C4", "C5"], fix: undefined },
    ]);
  });

  test("on a protected sheet is left alone", () => {
    const { sheets } = labor([46, "", "", ""]);
    expect(cellsFound(sliding, { sheets: [{ ...sheets[0]!, protected: true }, sheets[1]!] })).toEqual([]);
  });

  test("is one finding for each reference that slid", () => {
    const input = labor([46, "", "", ""], (row) => `=B${row}*Rates!B${row}+Rates!C${row}`);
    const rates = input.sheets[1]!.rows.map((row, at) => [...row, at === 0 ? "Fee" : at === 1 ? 9 : ""]);
    const found = findWith(sliding, { sheets: [input.sheets[0]!, { name: "Rates", rows: rates }] });
    expect(found.map(({ cells, related }) => [cells, related[0]])).toEqual([
      [["C3", "C4", "C5"], "Rates!B2"],
      [["C3", "C4", "C5"], "Rates!C2"],
    ]);
  });
});
