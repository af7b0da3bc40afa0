import { describe, expect, test } from "vitest";
import { evaluate } from "./evaluate";
import { PatternReader } from "./pattern";
import type { Value } from "./values";

const cells: Readonly<Record<string, Value>> = {
  A1: 6,
  A2: null,
  A3: "8%",
  A4: "tons",
  A5: { error: "#DIV/0!" },
  "B1:B4": [[1], [null], ["x"], [4]],
  // More numbers than a call takes arguments.
  "B1:B300000": Array.from({ length: 300_000 }, (_, place) => [place - 7]),
  "C1:C4": [["labor"], ["hauling"], ["Labor"], ["labor"]],
};
const workedOut = (formula: string) =>
  evaluate(new PatternReader().read(formula, 9, 9).tree ?? null, {
    reach: (text) => cells[text],
    call: (name, given) => (name === "BED.FEET" ? given[0] : undefined),
  });

describe("a formula is worked out as the host does it", () => {
  test.each<[string, Value | undefined]>([
    ["=A1*2+1", 13],
    ["=-A1^2", 36],
    ["=2^-1", 0.5],
    ["=10%*A1", 0.6000000000000001],
    ["=A2+1", 1],
    ['=A2=""', true],
    ["=A2=0", true],
    ['=A4&" "&A1', "tons 6"],
    ['=A4="TONS"', true],
    ["=A1/A2", { error: "#DIV/0!" }],
    ["=A4+1", { error: "#VALUE!" }],
    ["=IFERROR(A5,7)", 7],
    ['=IF(A1>5,"much",1/0)', "much"],
    ["=SUM(B1:B4,A1)", 11],
    ["=AVERAGE(B1:B4)", 2.5],
    ["=MAX(B1:B300000)", 299_992],
    ["=MIN(B1:B300000)", -7],
    ['=SUMIF(C1:C4,"labor",B1:B4)', 5],
    ["=ROUNDUP(2.1,0)", 3],
    ["=ROUNDDOWN(-2.7,0)", -2],
    ["=INT(-2.7)", -3],
    // 1.1 × 10 is 11.000000000000002 in binary, and yet eleven.
    ["=CEILING(1.1*10,1)", 11],
    ["=ROUND(2.345,2)", 2.35],
    ["=BED.FEET(A1)", 6],
    ["=INDEX(B1:B4,4)", 4],
    [`=MID(REPT("; "&A4,2),3,99)`, "tons; tons"],
  ])("%s", (formula, value) => expect(workedOut(formula)).toEqual(value));

  test.each(["=XLOOKUP(A1,B1:B4,C1:C4)", "=BED.UNHEARD_OF(A1)", "=D9", "=LET(x,1,x)"])(
    "%s is not known here",
    (formula) => {
      expect(workedOut(formula)).toBeUndefined();
    },
  );
});
