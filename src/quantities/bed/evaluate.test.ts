import { describe, expect, test } from "vitest";
import { amounts } from "./amounts";
import { evaluate, quoted, type Scope } from "./evaluate";
import { ways } from "./form";
import type { Outline } from "./inPlan";

const scope: Scope = {
  value: (key) => ({ a: 5, "a.decimal": 5.5, kind: "labor", list: [1, 2, 3] })[key] ?? "",
  functions: {
    MAX: (...given: number[]) => Math.max(...given),
    COUNT: (list: readonly number[]) => list.length,
    LAST: (...given: string[]) => given.at(-1)!,
    FAIL: () => {
      throw new Error("called");
    },
  },
};

describe("an expression", () => {
  // By the order of operations that every spreadsheet program documents: powers, then × and ÷, then + and −, then
  // comparisons; from left to right on one level.
  test.each([
    ["1+2*3", 7],
    ["(1+2)*3", 9],
    ["10-4-3", 3],
    ["24/4/2", 3],
    ["2*3^2", 18],
    ["2^3^2", 64],
    ["-{a}+1", -4],
    ["1-2*{a}<0", true],
    ["{a}>=5", true],
    ["{a}<>5", false],
    ["{a.decimal}", 5.5],
    ["MAX({a},2)*3", 15],
    ["COUNT({list})", 3],
    ['{kind}="labor"', true],
    ['"say ""when"""', 'say "when"'],
    ["TRUE", true],
  ])("%s is %s", (expression, value) => {
    expect(evaluate(expression, scope)).toBe(value);
  });

  test("works out only the branch that IF takes", () => {
    expect(evaluate("IF({a}=5,1,FAIL())", scope)).toBe(1);
    expect(evaluate("IF({a}=4,FAIL(),2)", scope)).toBe(2);
  });

  test("passes a blank place between commas on as nothing", () => {
    expect(evaluate("LAST(1,,3)", scope)).toBe(3);
    expect(evaluate("LAST(1,)", scope)).toBe(1);
    expect(evaluate("LAST(3,,{none})", scope)).toBe("");
  });

  test("holds a text as typed", () => {
    expect(evaluate(quoted('6" border'), scope)).toBe('6" border');
  });

  test.each(["1+", "(1", "MAX(1", "1 2", "{a", "MOST(1)", "#"])("%s is refused", (expression) => {
    expect(() => evaluate(expression, scope)).toThrow();
  });
});

test("every amount of the estimate names only what the estimate knows", () => {
  for (const way of Object.keys(ways) as Outline["way"][]) {
    for (const cutOuts of [0, 2]) {
      const outline: Outline = { way, widths: 3, points: 4, cutOuts, inPlan: way !== "area" };
      for (const [key, { is }] of Object.entries(amounts)) {
        const expression = typeof is === "string" ? is : is(outline);
        expect(expression, `${key} of ${way}`).not.toContain("undefined");
      }
    }
  }
});
