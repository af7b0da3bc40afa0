import { describe, expect, test } from "vitest";
import { declarations } from "../../src/functions/declarations";
import * as functions from "../../src/functions/index";
import { iso } from "../dates";

/**
 * `=BED.NAME(arguments) gives answer`, and for a range: `for 1, 2; 3, 4` with a row up to each semicolon. A list shows
 * one of its cells: `=INDEX(BED.NAME(arguments), row, column) gives answer`.
 */
const EXAMPLE =
  /^=(?:INDEX\()?BED\.(\w+)\((.*?)\)(?:, (\d+), (\d+)\))? gives ([\d.-]+)(?: for (?:widths |sides )?(.*))?$/;

const examples = declarations.map(({ example }) => {
  const [, id, given, row, column, answer, cells] = EXAMPLE.exec(example) ?? [];
  return { id, given, row: Number(row), column: Number(column), answer, cells };
});

/** The arguments of a formula, as the host would send them. */
function argumentsOf(given: string, cells: string | undefined): unknown[] {
  const parts = given.match(/"(?:[^"]|"")*"|[^,\s]+/g) ?? [];
  return parts.map((part) => {
    if (part.startsWith('"')) return part.slice(1, -1).replaceAll('""', '"');
    if (/^[A-Z]\d+:[A-Z]\d+$/.test(part)) return rangeOf(part, cells ?? "");
    return part.endsWith("%") ? Number(part.slice(0, -1)) / 100 : Number(part);
  });
}

function rangeOf(address: string, cells: string): number[][] {
  const rows = cells.split("; ").map((row) => row.split(", ").map(Number));
  const range = rows.length > 1 ? rows : (rows[0] ?? []).map((value) => [value]);
  const [, first, last] = /^[A-Z](\d+):[A-Z](\d+)$/.exec(address) ?? [];
  expect(range.length).toBe(Number(last) - Number(first) + 1);
  return range;
}

test("every function has an example in its help", () => {
  expect(examples.map(({ id }) => id).sort()).toEqual(Object.keys(functions).sort());
});

describe("an example in the help gives what it says", () => {
  test.each(examples)("$id($given)", ({ id, given, row, column, answer, cells }) => {
    const called = functions[id as keyof typeof functions];
    const result: unknown = Reflect.apply(called, undefined, argumentsOf(given!, cells));
    const value = (Array.isArray(result) ? result[row - 1][column - 1] : result) as number;
    if (answer!.split("-").length === 3) return expect(iso(value)).toBe(answer);
    const places = answer!.split(".")[1]?.length ?? 0;
    expect(value).toBeCloseTo(Number(answer), places);
  });
});
