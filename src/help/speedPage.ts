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
    how: "We write five of our functions per row on a new sheet of the practice workbook’s engine and calculate them, then five of the grid’s own formulas with the same arithmetic, four times each in turn. Both must come to the same sum.",
  },
  syncs: {
    title: "Requests to the spreadsheet program",
    how: "A round trip costs far more than what it asks for, so we count the requests the add-in waits for. The practice workbook’s host counts them for each operation, in an almost empty workbook and in a large one.",
  },
  pages: {
    title: "Time until the pane and the practice page are ready",
    how: "In Chromium without a window, with an empty cache each time, from a server on the same machine; then again with the processor slowed to a quarter. The bare pages have the grid alone, built with the same settings, and we open them in turns with ours. The one with the core only shows what pictures, color rules, and drop-down lists cost. They load along with the grid, because a row inserted before they have loaded would leave them behind. Each ratio is the median over pairs opened in turn, not the ratio of the two medians next to it. The promise is for full speed.",
  },
  functions: {
    title: "One call of a function",
    how: "A million calls with plain numbers, in turns with the bare arithmetic: no reading, no checks, no messages. Each is the fastest of seven rounds. “Without the loop” leaves out the time of the loop itself, and is shown only if the bare arithmetic takes long enough to tell apart from it.",
  },
  growth: {
    title: "As the work grows",
    how: "The same work at 1, 10, and 100 times the size. The exponent says how time grows with size: 1 is in step, 2 is a hundred times the time for ten times the size. Each is the median of five runs. We promise nothing for a job’s documents: the best way to cut its edging gets harder to find with every different length, up to a limit of steps.",
  },
  layout: {
    title: "Laying out a bed",
    how: "A bed of one size and shape, with more and more corners. The fastest of five runs.",
  },
  cutting: {
    title: "Cutting pieces from stock",
    how: "Random lists of lengths. If a list is short enough, a general solver (HiGHS) cuts the same list. The limit is in steps, not time, so the same list gives the same answer on every machine. “Proven” says how many of the plans are known to be the best possible.",
  },
  fuzz: {
    title: "Anything anyone types",
    how: "We call every function with random and hostile values of every type. A fault is any answer that is neither a right number nor an error that gives its reason.",
  },
  "fuzz-stores": {
    title: "Anything found in storage",
    how: "We fill every place where the add-in stores something, in the workbook and in the browser, with texts that are nearly right. A fault is anything except the stored data, read in full, or a message that it can't be read.",
  },
  sizes: {
    title: "What gets downloaded",
    how: "The files of the build, packed the way a server sends them. The first two have a budget, and the build fails if they go over it.",
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
<dt>request</dt><dd>one round trip to the host that the add-in waits for</dd>
<dt>exponent</dt><dd>how time grows with size: 1 is in step; at 1.2, ten times the size takes 16 times as long</dd>
<dt>Node 20, Chromium</dt><dd>what the code ran in: JavaScript without a browser, and a browser</dd>
<dt>gzip</dt><dd>how a server packs files before sending them</dd>
<dt>HiGHS</dt><dd>an open-source solver for problems like this, for comparison</dd>
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
    ["What", "Promised, max", "Measured", "How"],
    claims.map(({ what, measured: found, most, unit, how }) => [
      escaped(what),
      withUnit(most, unit),
      found > most ? `<strong>${withUnit(found, unit)}: over it</strong>` : withUnit(found, unit),
      escaped(how),
    ]),
  );
}

const hardLists = (measured: Measured) =>
  `Fit pieces into stock: for ordinary lists. Hard ones grow faster, with exponents up to ${hardestExponent(measured)} in the cutting table, and stop at a limit of steps.`;

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
