import type { BinaryOperator } from "@borgar/fx";

/** How tightly operators bind, the weakest first, so that parentheses stand where they are needed. */
export const STRENGTH: Readonly<Record<BinaryOperator, number>> = {
  "=": 1,
  "<": 1,
  ">": 1,
  "<=": 1,
  ">=": 1,
  "<>": 1,
  "&": 2,
  "+": 3,
  "-": 3,
  "*": 4,
  "/": 4,
  "^": 5,
  ",": 8,
  " ": 9,
  ":": 10,
};
export const PERCENT = 6;
export const UNARY = 7;
