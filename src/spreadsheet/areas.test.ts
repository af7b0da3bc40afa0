import { expect, test } from "vitest";
import { areaIn, areasOfAddresses, columnLetters } from "./areas";

test.each([
  [0, "A"],
  [25, "Z"],
  [26, "AA"],
  [51, "AZ"],
  [52, "BA"],
  [701, "ZZ"],
  [702, "AAA"],
  [16_383, "XFD"],
])("column %d, counted from 0, is %s", (column, letters) => {
  expect(columnLetters(column)).toBe(letters);
});

const A1_B1 = { row: 0, column: 0, rows: 1, columns: 2 };
const D4 = { row: 3, column: 3, rows: 1, columns: 1 };

test.each([
  ["Jobs!A1:B1,Jobs!D4"],
  ["A1:B1,D4"],
  ["'Smith, front walk'!A1:B1,'Smith, front walk'!D4"],
  ["'Smith''s, 3!'!A1:B1,'Smith''s, 3!'!D4"],
  ["'A1, B2'!$A$1:$B$1,'A1, B2'!$D$4"],
])("%s has two areas", (address) => {
  expect(areasOfAddresses(address)).toEqual([A1_B1, D4]);
});

test("whole columns, numbers and formulas are no area of cells", () => {
  expect(["Rates!$B:$B", "0.5", "Rates!$B$2*2", "#REF!", "Rates!$B$2,Rates!$B$3"].map(areaIn)).toEqual(
    Array(5).fill(undefined),
  );
});
