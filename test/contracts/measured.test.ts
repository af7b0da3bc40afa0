import { readdirSync } from "node:fs";
import { resolve } from "node:path";
import { expect, test } from "vitest";
import * as functions from "../../src/functions/index";
import { BENCHES, type Measured, readMeasured, speedPage } from "../../src/help/speedPage";
import { BARE } from "../bench/calls/bare";

const ROOT = resolve(import.meta.dirname, "../..");
const measured = readMeasured(ROOT);

/** The limits of the issue of speed; each has to be promised by some benchmark, and no higher. */
const LIMITS: readonly (readonly [what: RegExp, most: number])[] = [
  [/^A function call: the middle one$/, 3],
  [/^A function call: the slowest one$/, 8],
  [/^A million lengths read from tape text$/, 3],
  [/^10,000 rows of 5 functions$/, 1.1],
  [/^An estimate block is inserted at a cell$/, 3],
  [/^The workbook is read for a check$/, 2],
  [/^A block is drawn anew$/, 3],
  [/^functions\.js/, 25],
  [/^pane\.js/, 60],
  [/^The pane can be used$/, 500],
  [/^First cell of the practice page$/, 1.1],
  [/^Check of a job list: growth exponent$/, 1.2],
  [/^A bed laid out: growth exponent$/, 1.2],
  [/^Heading row found, columns fitted: growth exponent$/, 1.2],
  [/^Results proposed for a list: growth exponent$/, 1.2],
  [/^Faults in/, 0],
];

const claims = Object.values(measured.benches).flatMap(({ tables }) => tables.flatMap((table) => table.claims ?? []));
const rowsOf = (bench: string, table: number) => measured.benches[bench]?.tables[table]?.rows ?? [];

test("what was measured holds every benchmark, and every function", () => {
  const benches = readdirSync(resolve(ROOT, "test/bench"))
    .filter((file) => file.endsWith(".bench.ts"))
    .map((file) => file.replace(".bench.ts", ""));
  expect(Object.keys(measured.benches).sort()).toEqual(benches.sort());
  expect(Object.keys(BENCHES).sort()).toEqual(benches.sort());
  expect(rowsOf("functions", 0).map((row) => row.function)).toEqual(Object.keys(BARE));
  expect(
    rowsOf("fuzz", 0)
      .map((row) => row.function)
      .sort(),
  ).toEqual(Object.keys(functions).sort());
  for (const { on, machine } of Object.values(measured.benches)) {
    expect(on).toMatch(/^\d{4}-\d\d-\d\d$/);
    expect(machine).toMatch(/cores of a server, Node \d+$/);
  }
});

test("what is promised is no more than the limits, and what was measured is within it", () => {
  for (const [what, most] of LIMITS) {
    const [claim] = claims.filter((one) => what.test(one.what));
    expect(claim?.most, String(what)).toBeLessThanOrEqual(most);
  }
  expect(claims.filter(({ measured: found, most }) => !(found <= most))).toEqual([]);
});

test("the page says what is over its promise", () => {
  const [bench, kept] = Object.entries(measured.benches)[0]!;
  const over = { what: "Something slow", measured: 9, most: 3, unit: "times", how: "planted" };
  const planted: Measured = {
    benches: { ...measured.benches, [bench]: { ...kept, tables: [{ title: "Slow", rows: [], claims: [over] }] } },
  };
  expect(speedPage(measured).content).not.toContain(": over it</strong>");
  expect(speedPage(planted).content).toContain("<strong>9 times: over it</strong>");
});
