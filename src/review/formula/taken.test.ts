import { expect, test } from "vitest";
import { evaluate } from "./evaluate";
import { PatternReader } from "./pattern";
import { takenParts } from "./taken";
import { textOf } from "./tree";
import type { Value } from "./values";

const cells: Readonly<Record<string, Value>> = { A1: 6, A2: -1, A3: null, A4: "tons", B1: [[1], [2]] };

/** The parts of a formula that decide what it shows. */
function taken(formula: string): string[] {
  const tree = new PatternReader().read(formula, 9, 9).tree ?? null;
  const around = { reach: (text: string) => cells[text.replace(":B2", "")] ?? null, call: () => undefined };
  return takenParts(tree, (part) => evaluate(part, around)).map((part) => textOf(formula, part));
}

test.each([
  ["=A1", ["A1"]],
  ['=IFERROR(IF(A1>0,A1,"none"),"none")', ["A1"]],
  ['=IF(A2>0,A2,"none")', ["A2"]],
  ['=IF(A1>0,IF(A2>0,A2,"none"),A4)', ["A2"]],
  ["=IFERROR(1/0,A4)", ["A4"]],
  ["=IF(LEN(INDEX(B1:B2,2))>0,INDEX(B1:B2,2),A1)", ["INDEX(B1:B2,2)"]],
  ["=IF(LEN(A3)>0,A3,A1)", ["A1"]],
  // What it shows comes from more than one cell, or no one knows.
  ["=A1+A2", []],
  ["=IF(UNHEARD(A1),A1,A2)", []],
])("%s: %j", (formula, parts) => {
  expect(taken(formula)).toEqual(parts);
});
