import { describe, expect, test } from "vitest";
import { areaAddress, columnLetters } from "../spreadsheet/areas";
import { compose, TYPED_OVER } from "./compose";
import { typed } from "./typed";

describe("composing a plan", () => {
  const rows = [
    { cells: [{ content: "Tons" }, { content: 3, key: "tons" }] },
    { cells: [undefined, { content: "={tons}*2", key: "double", warnWhen: TYPED_OVER }] },
    { cells: [undefined, { content: "={double}+{tons}", warnWhen: TYPED_OVER }] },
  ];

  test("resolves keys to relative addresses for where it will stand", () => {
    expect(compose("x", rows, [10, 10], { row: 4, column: 26 }).formulas).toEqual([
      ["Tons", 3],
      ["", "=AB5*2"],
      ["", "=AB6+AB5"],
    ]);
  });

  test("joins what is alike and is below one another", () => {
    expect(compose("x", rows, [10, 10], { row: 0, column: 0 }).warnings).toEqual([
      { area: { row: 1, column: 1, rows: 2, columns: 1 }, when: "=NOT(ISFORMULA(B2))" },
    ]);
  });

  test("joins looks that are alike, side by side and then below one another, and no others", () => {
    const row = (...looks: ("input" | "note" | undefined)[]) => ({
      cells: looks.map((look) => (look ? { content: "", look } : undefined)),
    });
    const alike = [row("input", "input", "note"), row("input", "input", "note"), row("input", undefined, "input")];
    const steps = [row("input", undefined), row(undefined, "input")];
    expect(compose("x", steps, [10, 10], { row: 0, column: 0 }).looks).toHaveLength(2);
    expect(compose("x", alike, [10, 10, 10], { row: 0, column: 0 }).looks).toEqual([
      { area: { row: 0, column: 0, rows: 2, columns: 2 }, look: "input" },
      { area: { row: 0, column: 2, rows: 2, columns: 1 }, look: "note" },
      { area: { row: 2, column: 0, rows: 1, columns: 1 }, look: "input" },
      { area: { row: 2, column: 2, rows: 1, columns: 1 }, look: "input" },
    ]);
  });

  test("leaves text alone, braces and all", () => {
    expect(compose("x", [{ cells: [{ content: "{tons}" }] }], [10], { row: 0, column: 0 }).formulas).toEqual([
      ["{tons}"],
    ]);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses to write %d into a cell", (content) => {
    expect(() => compose("x", [{ cells: [{ content }] }], [1], { row: 0, column: 0 })).toThrow(/can't hold/);
  });

  test("does not stand for a key that is missing or twice there", () => {
    expect(() => compose("x", [{ cells: [{ content: "={gone}" }] }], [1], { row: 0, column: 0 })).toThrow(/"gone"/);
    const twice = [
      {
        cells: [
          { content: 1, key: "a" },
          { content: 2, key: "a" },
        ],
      },
    ];
    expect(() => compose("x", twice, [1, 1], { row: 0, column: 0 })).toThrow(/Two cells/);
  });
});

test.each([
  ["18.5", 18.5],
  ["8%", 0.08],
  ["8.5 %", 0.085],
  ["", ""],
  ["  ", ""],
  [`18' 6"`, `18' 6"`],
  ["9.8 m", "9.8 m"],
  ["Mar 5", "'Mar 5"],
  ["5 a", "'5 a"],
  [`=1'`, `'=1'`],
  // Left to itself the host would read these as a date, a formula, a formula, a formula.
  ["1/2", "'1/2"],
  ["=1+1", "'=1+1"],
  ["+A1", "'+A1"],
  ["@SUM", "'@SUM"],
  ["1e999", "'1e999"],
])("typed %j is written as %j", (text, content) => {
  expect(typed(text)).toBe(content);
});

test("columns have the sheet's letters", () => {
  expect([0, 25, 26, 701, 702, 16383].map(columnLetters)).toEqual(["A", "Z", "AA", "ZZ", "AAA", "XFD"]);
  expect(areaAddress({ row: 1, column: 1, rows: 1, columns: 1 })).toBe("B2");
  expect(areaAddress({ row: 1, column: 1, rows: 2, columns: 3 })).toBe("B2:D3");
});
