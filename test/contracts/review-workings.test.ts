import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { declarations } from "../../src/functions/declarations";
import type { DeclaredArgument } from "../../src/functions/declare";
import { dayShown, shown } from "../../src/functions/working";
import { explain } from "../../src/review/explain/explain";
import type { Evaluate } from "../../src/review/explain/explanation";
import type { Value } from "../../src/review/formula/values";
import { callFunction } from "../callFunction";
import { knowledge } from "../reviewWorkbook";

/*
 * An explanation shows how a function comes to its answer. For any values, each line has to be true, and the answer
 * has to be among them.
 */
const number = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => Math.round(value * 100) / 100);
const tape = fc
  .tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 11 }))
  .map(([feet, inches]) => `${feet}' ${inches}"`);
const listOf = (one: fc.Arbitrary<Value>, least: number) =>
  fc.array(one, { minLength: least, maxLength: 9 }).map((list): Value => list.map((value) => [value as number]));

function arbitrary(owner: string, { name, kind, many, fallback, zero }: DeclaredArgument): fc.Arbitrary<Value> {
  const blank = fallback === undefined ? [] : [fc.constant(null)];
  const from = zero ? 0 : 0.01;
  const plain = (): fc.Arbitrary<Value> => {
    if (name === "points")
      return fc.constantFrom<Value>(
        [
          [0, 0],
          [12, 0],
          [14, 6.5],
          [-2, 4],
        ],
        [
          [0, 0],
          [4, 0],
          [0, 3],
          [0, 0],
        ],
        [
          [1, 1],
          [9, 2],
          [5, 7],
          [null, null],
        ],
      );
    if (name === "widths") return listOf(fc.oneof(number(0, 20), tape), 2);
    if (many && kind === "date") return listOf(fc.integer({ min: 46000, max: 46060 }), 1);
    if (many && kind === "count") return fc.constant<Value>([[1], [3]]);
    if (name === "lengths") return fc.constant<Value>([[2.5], ["6' 6\""]]);
    if (many) return listOf(number(0.1, 6), 1);
    switch (kind) {
      case "ft":
        return owner === "AREA_TRIANGLE" ? number(8, 14) : fc.oneof(number(Math.max(from, 0.5), 90), tape);
      case "in":
        return fc.oneof(number(from, 14), fc.constantFrom('4 1/2"', '6"', "75 mm"));
      case "share":
        return number(0, 0.9);
      case "stone":
        return fc.oneof(number(0.4, 1.7), fc.constantFrom("river rock", "Crushed-Limestone", "lava rock"));
      case "soil":
        return fc.oneof(number(0.05, 0.6), fc.constantFrom("clay", "Blasted Rock"));
      case "yes or no":
        return fc.constantFrom<Value>(true, false, "yes", 0);
      case "width rule":
        return fc.constantFrom("simpson", "Trapezoid");
      case "count":
        return fc.integer({ min: 1, max: 4 });
      case "date":
        return fc.integer({ min: 46000, max: 46050 });
      default:
        return number(Math.max(from, 0.1), 400);
    }
  };
  return fc.oneof(...blank, plain());
}

/** Arguments by made-up names of cells, so that the working asks for them as it asks for real ones. */
function evaluateWith(given: readonly Value[]): Evaluate {
  return (text) => {
    const cell = /^CELL(\d+)$/.exec(text)?.[1];
    if (cell !== undefined) return given[Number(cell)];
    const taped = /^(BED\.\w+)\("(.*)"\)$/s.exec(text);
    if (taped) return callFunction(taped[1]!, [taped[2]!.replaceAll('""', '"')]);
    return undefined;
  };
}

/** What a line's arithmetic comes to, and what it says it comes to; undefined for a line that is words alone. */
function sumOf(line: string): { readonly comesTo: number; readonly says: number } | undefined {
  const [, left, right] = /^(?:.*?(?:: |, ))?([^:a-z]*?) = (?:√\()?([\d.,]+)/.exec(line) ?? [];
  if (left === undefined || right === undefined) return undefined;
  const arithmetic = left
    .replaceAll(",", "")
    .replaceAll("×", "*")
    .replaceAll("÷", "/")
    .replaceAll("−", "-")
    .replaceAll("π", String(Math.PI))
    .replaceAll("²", "**2")
    .replaceAll("√", "Math.sqrt");
  if (!/^(?:[\d.+*/() -]|Math\.sqrt|e-)+$/.test(arithmetic)) return undefined;
  return { comesTo: new Function(`return ${arithmetic}`)() as number, says: Number(right.replaceAll(",", "")) };
}

const explainedFor = (name: string, given: readonly Value[]) => {
  const formula = `BED.${name}(${given.map((_, place) => `CELL${place}`).join(",")})`;
  const cells = evaluateWith(given);
  const evaluate: Evaluate = (text) => (text === formula ? callFunction(`BED.${name}`, given) : cells(text));
  return explain(`=${formula}`, { evaluate, knowledge });
};

const single = declarations.filter(({ kind }) => kind !== "list");

/** Functions whose working has no sum in it. */
const WORDS_ALONE = new Set(["CUT_COUNT", "ORDER_UP", "FEET", "INCHES", "STONE_DENSITY", "DIG_DATE", "STONE_DEPTH"]);

describe.each(single.map((declared) => [declared.name, declared] as const))("the working of %s", (name, declared) => {
  test("is true line by line, and comes to what the function gives", () => {
    let compared = 0;
    let sums = 0;
    fc.assert(
      fc.property(fc.tuple(...declared.arguments.map((argument) => arbitrary(name, argument))), (given) => {
        const gives = callFunction(`BED.${name}`, given);
        if (typeof gives !== "number") return;
        const lines = explainedFor(name, given)?.working ?? [];
        expect(lines.length).toBeGreaterThan(0);
        compared++;
        const answer = declared.kind === "date" ? dayShown(gives) : shown(gives);
        if (gives !== 0) expect(lines.join(" ")).toContain(answer);
        for (const line of lines) {
          expect(line).not.toMatch(/NaN|undefined|Infinity/);
          const sum = sumOf(line);
          if (!sum) continue;
          sums++;
          // Each figure is shown to six digits; a small difference of large figures keeps fewer of them.
          expect(Math.abs(sum.comesTo - sum.says), line).toBeLessThan(1e-3 * Math.max(1, Math.abs(sum.says)));
        }
      }),
      { numRuns: 150, seed: 7 },
    );
    expect(compared).toBeGreaterThan(40);
    if (!WORDS_ALONE.has(name)) expect(sums).toBeGreaterThan(20);
  });
});

test("a list has no working, and its arguments and rule are told all the same", () => {
  const evaluate: Evaluate = (text) =>
    text.startsWith("BED.") ? [["stock no."], [1]] : text === "A1:A2" ? [[4], [5]] : 16;
  const explained = explain("=BED.CUT_LIST(B1,A1:A2)", { evaluate, knowledge });
  expect(explained).toMatchObject({ result: "a list", working: [], title: "BED.CUT_LIST: a cut list" });
  expect(explained?.arguments.map(({ value }) => value)).toEqual(["16 ft", "4; 5 ft", "left out", "left out: 0 in"]);
});
