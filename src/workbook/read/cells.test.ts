import { expect, test } from "vitest";
import { contentsOf, isMarked } from "./cells";

test("text that begins like a formula is told from a formula, and keeps marks of its own", () => {
  const formulas = [["=A1*2", "=cmd", "'=cmd", "Front walk", 7, true, "", "=A2"]];
  const values = [[8, "=cmd", "'=cmd", "Front walk", 7, true, "", "=cmd"]];
  // The last is a formula that shows text from elsewhere which begins like one.
  expect(contentsOf({ formulas, values })).toEqual([["=A1*2", "'=cmd", "''=cmd", "Front walk", 7, true, "", "=A2"]]);
  expect([isMarked("'=cmd"), isMarked("=cmd"), isMarked("'tis"), isMarked(7)]).toEqual([true, false, false, false]);
});

test("text that reads as an error is told from one by its type", () => {
  const formulas = [["#DIV/0!", "#N/A", "'#N/A", "#2 stone", "=1/0"]];
  const values = [["#DIV/0!", "#N/A", "'#N/A", "#2 stone", "#DIV/0!"]];
  const valueTypes = [["Error", "String", "String", "String", "Error"]];
  expect(contentsOf({ formulas, values, valueTypes })).toEqual([["#DIV/0!", "'#N/A", "''#N/A", "#2 stone", "=1/0"]]);
  expect([isMarked("'#N/A"), isMarked("#N/A")]).toEqual([true, false]);
});
