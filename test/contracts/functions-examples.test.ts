import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import files from "../../src/functions/files.json";
import { iso } from "../dates";
import { EVERY_FUNCTION } from "../functionCases";

/** `=BED.NAME(arguments) gives answer`, and for a range: `for 1, 2; 3, 4` with a row up to each semicolon. */
const EXAMPLE = /@example =BED\.(\w+)\((.*)\) gives ([\d.-]+)(?: for (?:widths |sides )?(.*))?$/gm;

const source = files.map((file) => readFileSync(resolve("src/functions", file), "utf8")).join("\n");
const examples = [...source.matchAll(EXAMPLE)].map(([, id, given, answer, cells]) => ({ id, given, answer, cells }));

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
  expect(examples.map(({ id }) => id).sort()).toEqual(EVERY_FUNCTION.map(({ id }) => id).sort());
});

describe("an example in the help gives what it says", () => {
  test.each(examples)("$id($given)", ({ id, given, answer, cells }) => {
    const called = EVERY_FUNCTION.find((one) => one.id === id);
    const value = called!.call(...argumentsOf(given!, cells));
    if (answer!.split("-").length === 3) return expect(iso(value)).toBe(answer);
    const places = answer!.split(".")[1]?.length ?? 0;
    expect(value).toBeCloseTo(Number(answer), places);
  });
});
