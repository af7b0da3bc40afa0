import { expect, test } from "vitest";
import { needsArray } from "./needsArray";

test.each([
  "=SUM(IF(A1:A3>0,A1:A3))",
  "=SUM(A1:A3*B1:B3)",
  "=MAX(ABS(A1:A3))",
  "=SUMPRODUCT(A1:A3-TRANSPOSE(C1:E1))",
  "=SUMPRODUCT(IF(A1:A3>0,A1:A3,0))",
  "=SUM(LEN(A:A))",
  "=SUM(FILTER(A1:A3,B1:B3>0))",
  "=SUM({1,2}*A1)",
])("%s works through several cells where one is the rule", (formula) => expect(needsArray(formula)).toBe(true));

test.each([
  "=A1*B1",
  "=SUM(A1:A3)",
  "=IF(SUM(A1:A3)>0,1,2)",
  "=SUMPRODUCT(A1:A3,B1:B3*(C1:C3>0))",
  "=SUMPRODUCT(ABS(A1:A3))",
  "=INDEX(A1:A3,MATCH(C1,B1:B3,0))",
  "=@A1:A3*2",
  '=COUNTIF(A1:A3,">0")',
  "=AND(A1:A3)",
])("%s does not", (formula) => expect(needsArray(formula)).toBe(false));
