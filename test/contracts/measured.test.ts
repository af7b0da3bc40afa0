import { readdirSync } from "node:fs";
import { resolve } from "node:path";
import { expect, test } from "vitest";
import * as functions from "../../src/functions/index";
import { timesForTen } from "../../src/help/speedAtWork";
import { BENCHES, type Measured, type MeasuredTable, readMeasured, speedPage } from "../../src/help/speedPage";
import { BARE } from "../bench/calls/bare";
import { textOf } from "../guide/fragments";

const ROOT = resolve(import.meta.dirname, "../..");
const measured = readMeasured(ROOT);

/** The limits that the add-in keeps to; each has to be promised by some benchmark, and no higher. */
const LIMITS: readonly (readonly [what: RegExp, most: number])[] = [
  [/^A function call: the median$/, 3],
  [/^A function call: the slowest$/, 8],
  [/^A million lengths read from tape text$/, 3],
  [/^10,000 rows of 5 functions$/, 1.1],
  [/^Insert an estimate at a cell$/, 3],
  [/^Read the workbook for a check$/, 2],
  [/^Redraw a bed$/, 3],
  [/^functions\.js/, 26],
  [/^pane\.js/, 60],
  [/^The pane is ready$/, 500],
  [/^First cell of the practice page$/, 1.1],
  [/^Check a job list: growth exponent$/, 1.2],
  [/^Lay out a bed: growth exponent$/, 1.2],
  [/^Find the headings and read the columns: growth exponent$/, 1.2],
  [/^Suggest results for a list: growth exponent$/, 1.2],
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

/** The page with other tables of a benchmark in the place of those that were kept. */
function pageWith(bench: string, change: (table: MeasuredTable) => MeasuredTable): string {
  const kept = measured.benches[bench]!;
  const changed = { ...kept, tables: kept.tables.map(change) };
  return speedPage({ benches: { ...measured.benches, [bench]: changed } }).content;
}

const atWorkOf = (content: string) => textOf(content.split("<details>")[0]!);

test("what stands for the office is in its words; the rest is folded away, with its words explained", () => {
  const { content } = speedPage(measured);
  const office = atWorkOf(content);
  expect(office.length).toBeGreaterThan(400);
  expect(office).not.toMatch(/\bNode\b|gzip|HiGHS|fuzz|exponent|\bhost\b|\bgrid\b|Chromium|median/i);
  for (const word of ["host, grid", "Node 20", "gzip", "HiGHS", "fuzz", "exponent"])
    expect(content, word).toMatch(new RegExp(`<dt>[^<]*${word}[^<]*</dt>`));
});

test("does not say of Excel what was measured in the practice workbook", () => {
  const office = atWorkOf(speedPage(measured).content);
  expect(office).toContain("functions of an add-in are slower than ordinary formulas");
  expect(office).not.toContain("does not get slower");
});

test("a sentence that a promise holds stands only where it was kept", () => {
  const over = (content: string) => atWorkOf(content).includes("over the promise");
  expect(over(speedPage(measured).content)).toBe(false);
  for (const bench of ["grid", "pages"]) {
    const slow = pageWith(bench, (table) => ({
      ...table,
      claims: table.claims?.map((claim) => ({ ...claim, measured: claim.most * 2 })) ?? [],
    }));
    expect(over(slow), bench).toBe(true);
  }
  const asked = pageWith("syncs", (table) => ({
    ...table,
    rows: table.rows.map((row) => ({ ...row, "1 sheet, 3 rows": 1 })),
  }));
  expect(atWorkOf(speedPage(measured).content)).toContain("as often in a workbook of 100 sheets");
  expect(atWorkOf(asked)).toContain("More requests");
});

test("how much longer ten times as much takes is what the table of growth shows", () => {
  const times = (row: Readonly<Record<string, string | number>>) => [
    Number(row["10×, ms"]) / Number(row["1×, ms"]),
    Number(row["100×, ms"]) / Number(row["10×, ms"]),
  ];
  const isPapers = ({ what }: Readonly<Record<string, string | number>>) => String(what).startsWith("Order, crew");
  const { promised, papers } = timesForTen(measured);
  for (const row of rowsOf("growth", 0))
    for (const found of times(row))
      expect(found, String(row.what)).toBeLessThanOrEqual(isPapers(row) ? papers : promised);
  expect(atWorkOf(speedPage(measured).content)).toContain(`up to ${promised} times as long`);
  expect(atWorkOf(speedPage(measured).content)).toContain(`a job's documents up to ${papers} times`);
});

test("no row shows a limit that it is over", () => {
  const limited = rowsOf("pages", 0).filter((row) => row["may be"] !== "");
  expect(limited.length).toBeGreaterThan(0);
  for (const row of limited) expect(row["middle, ms"]).toBeLessThanOrEqual(Number(row["may be"]));
});
