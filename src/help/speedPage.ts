import { readFileSync } from "node:fs";
import { join } from "node:path";
import { must } from "../quantities/must";
import { escaped, section, table } from "./html";
import { many } from "./numbers/stated";
import type { Page } from "./page";
import { atWork, hardestExponent } from "./speedAtWork";

/** What is promised of a measure, and what was measured. */
export interface MeasuredClaim {
  readonly what: string;
  readonly measured: number;
  readonly most: number;
  readonly unit: string;
  readonly how: string;
}

/** A table as it was printed. */
export interface MeasuredTable {
  readonly title: string;
  readonly rows: readonly Readonly<Record<string, string | number>>[];
  readonly claims?: readonly MeasuredClaim[];
}

/** What the benchmarks found, by their names. */
export interface Measured {
  readonly benches: Readonly<
    Record<string, { readonly on: string; readonly machine: string; readonly tables: readonly MeasuredTable[] }>
  >;
}

/** Every benchmark, in the order in which a reader wants to know: what it is about, and how it is measured. */
export const BENCHES: Readonly<Record<string, { readonly title: string; readonly how: string }>> = {
  grid: {
    title: "A sheet of 10,000 rows",
    how: "Five of our functions a row are written on a fresh sheet of the practice workbook’s engine and worked out, then five of the grid’s own formulas of the same arithmetic, four times in turn. Both must come to the same sum.",
  },
  syncs: {
    title: "Requests to the spreadsheet program",
    how: "Each way there and back costs far more than what is asked for on it, so the requests that the add-in waits for are what is counted: by the practice workbook’s own host, from one operation to the next, in a workbook with almost nothing in it and in a large one.",
  },
  pages: {
    title: "Until the pane and the practice page can be used",
    how: "In Chromium without a window, each time with nothing kept from before, from a server on the same machine; a second time with the processor made four times slower. The bare pages hold the grid alone, built with the same settings, and are opened in turns with ours. The one with the core only shows what pictures, color rules and lists of choices take: they are fetched with the grid all the same, since a row that is inserted before they are there would leave them behind. A ratio is the middle of the ratios of the pairs that were opened in turn, which is not the ratio of the two middles beside it. Promised is what holds without the slowing.",
  },
  functions: {
    title: "One call of a function",
    how: "A million calls with plain numbers, in turns with the same arithmetic written bare: no reading, no checks, no words. The least of seven rounds each. “Without the loop” leaves out what the loop itself takes, and stands only where the bare arithmetic takes long enough to be told from it.",
  },
  growth: {
    title: "When there is more of it",
    how: "The same work at 1, 10 and 100 times the size. The exponent says how time follows size: 1 is in step with it, 2 would be a hundred times the time for ten times the size. The middle of five times. Nothing is promised of a job’s papers: how its border is best cut from stocks is a puzzle that gets harder with every other length, up to a limit of steps.",
  },
  layout: {
    title: "Laying a bed out",
    how: "A bed of one size and shape, given by more and more corners. The least of five runs.",
  },
  cutting: {
    title: "Cutting pieces from stocks",
    how: "Random lists of lengths. Where a list is short enough for it, a general solver (HiGHS) cuts the same list. Work is limited by steps, not by time, so that the same list gives the same answer on every machine; “proven” says how many of the plans are known to be the best there are.",
  },
  fuzz: {
    title: "Whatever is typed",
    how: "Every function is called with random and hostile values of every type. A fault is any answer that is neither a right number nor an error with its reason in words.",
  },
  "fuzz-stores": {
    title: "Whatever stands where something is kept",
    how: "Every place in which the add-in keeps something, in the workbook and in the browser, is given texts that are nearly right. A fault is anything but what was kept, read whole, or the word that it cannot be read.",
  },
  sizes: {
    title: "What is fetched",
    how: "The files of the build, packed as a server sends them. The first two have a budget, over which the build fails.",
  },
};

/** What the benchmarks found last, from the file that they write. */
export function readMeasured(root: string): Measured {
  return JSON.parse(readFileSync(join(root, "test/generated/measured.json"), "utf8")) as Measured;
}

/** How fast it is: what that means at work, what is promised, and every figure that was measured. */
export function speedPage(measured: Measured): Page {
  const known = Object.keys(BENCHES).filter((name) => measured.benches[name]);
  return {
    address: "speed.html",
    title: "How fast it is",
    about: "What it means at work; for engineers, what is promised and what was measured.",
    content: [
      atWork(measured),
      `<details>
<summary>For engineers: every promise and every figure</summary>
${GLOSSARY}`,
      section("What is promised", PROMISE_NOTE, promises(measured, known)),
      ...known.map((name) => benchSection(name, measured)),
      "</details>",
    ].join("\n"),
  };
}

const GLOSSARY = `<dl>
<dt>host, grid</dt><dd>the host is the spreadsheet program; in the practice workbook an open-source grid stands in for it</dd>
<dt>request</dt><dd>one way to the host and back that the add-in waits for</dd>
<dt>exponent</dt><dd>how time follows size: 1 is in step with it; at 1.2, ten times the size takes 16 times as long</dd>
<dt>Node 20, Chromium</dt><dd>what the code ran in: a runtime for JavaScript without a browser, and a browser</dd>
<dt>gzip</dt><dd>how a server packs files before it sends them</dd>
<dt>HiGHS</dt><dd>an open-source solver for problems of this kind, to compare with</dd>
<dt>fuzz</dt><dd>calls with random and hostile values</dd>
</dl>`;

const PROMISE_NOTE =
  "<p>Times differ from machine to machine, so most promises are ratios: ours against something else, measured in the same run on the same machine.</p>";

const withUnit = (value: number, unit: string) => escaped(`${many(value)} ${unit}`.trim());

function promises(measured: Measured, known: readonly string[]): string {
  const claims = known.flatMap((name) => {
    const all = must(measured.benches[name]).tables.flatMap((one) => one.claims ?? []);
    return name === "growth" ? worstOf(all, hardLists(measured)) : all;
  });
  return table(
    ["What", "Promised at most", "Measured", "How"],
    claims.map(({ what, measured: found, most, unit, how }) => [
      escaped(what),
      withUnit(most, unit),
      found > most ? `<strong>${withUnit(found, unit)}: over it</strong>` : withUnit(found, unit),
      escaped(how),
    ]),
  );
}

const hardLists = (measured: Measured) =>
  `Pieces fitted into stocks: of ordinary lists. Hard ones grow faster, with exponents up to ${hardestExponent(measured)} in the table of cutting, and are cut off by a limit of steps.`;

/**
 * Of many promises of one kind, the one that comes nearest to its limit, and all that are over theirs.
 *
 * @param but what they do not hold for.
 */
function worstOf(claims: readonly MeasuredClaim[], but: string): MeasuredClaim[] {
  const over = claims.filter(({ measured, most }) => measured > most);
  const [first, ...others] = claims;
  if (over.length > 0 || !first) return over;
  const worst = others.reduce((found, one) => (one.measured > found.measured ? one : found), first);
  return [{ ...worst, how: `the worst of ${claims.length}: ${worst.how}. ${but}` }];
}

function benchSection(name: string, measured: Measured): string {
  const { on, machine, tables } = must(measured.benches[name]);
  const { title, how } = must(BENCHES[name]);
  const shown = tables.map((one) => (one.title === title ? "" : `<h3>${escaped(one.title)}</h3>\n`) + rowsTable(one));
  const said = [how, ...(name === "growth" ? [hardLists(measured)] : []), `Measured on ${on}: ${machine}.`];
  return section(title, `<p>${escaped(said.join(" "))}</p>`, ...shown);
}

function rowsTable({ rows }: MeasuredTable): string {
  const headings = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const cell = (value: string | number | undefined) => (typeof value === "number" ? many(value) : escaped(value ?? ""));
  return table(
    headings.map((heading) => heading.trim()),
    rows.map((row) => headings.map((heading) => cell(row[heading]))),
  );
}
