import { expect, test } from "vitest";
import { intersecting } from "./intersecting";

const isSeveral = (name: string) => name === "Qty";

// What spreadsheet programs show for ordinary formulas of files from before lists; from memory.
test.each([
  ["=$A$1:$A$5*2", "=@$A$1:$A$5*2"],
  ["=Qty*Rate", "=@(Qty)*Rate"],
  ["=A:A", "=@A:A"],
  ["=ABS(B1:B3)+SUM(B1:B3)", "=ABS(@B1:B3)+SUM(B1:B3)"],
  ["=SUM(A1:A3*B1:B3)", "=SUM(@A1:A3*@B1:B3)"],
  ["=IF(A1:A3>0,B1:B3,C1)", "=IF(@A1:A3>0,@B1:B3,C1)"],
  ["=SUM(IF(D1=1,A1:A3,B1:B3))", "=SUM(IF(D1=1,A1:A3,B1:B3))"],
  ["=SUMPRODUCT(A1:A3*(B1:B3>0))", "=SUMPRODUCT(A1:A3*(B1:B3>0))"],
  ["=VLOOKUP(Jobs!A:A,Rates!A:C,2,0)", "=VLOOKUP(@Jobs!A:A,Rates!A:C,2,0)"],
  ["=SUMIF(A:A,B:B,C:C)", "=SUMIF(A:A,@B:B,C:C)"],
  ['=INDEX(A1:B9,2,1)&"A1:A3"', '=INDEX(A1:B9,2,1)&"A1:A3"'],
  ["=1+(", "=1+("],
])("an ordinary formula %s means %s", (formula, meant) => {
  expect(intersecting(formula, isSeveral)).toBe(meant);
});
