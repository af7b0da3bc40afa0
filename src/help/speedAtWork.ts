import { escaped } from "./html";
import { many } from "./numbers/stated";
import type { Measured, MeasuredClaim, MeasuredTable } from "./speedPage";

type Row = MeasuredTable["rows"][number];

const rowsOf = (measured: Measured, bench: string, table = 0): readonly Row[] =>
  measured.benches[bench]?.tables[table]?.rows ?? [];

function claimOf(measured: Measured, bench: string, what: string): MeasuredClaim | undefined {
  const claims = measured.benches[bench]?.tables.flatMap((table) => table.claims ?? []) ?? [];
  return claims.find((claim) => claim.what === what);
}

/**
 * What the figures mean at work, for people who estimate. A sentence says that something is quick
 * enough only if its promise was kept when it was measured; otherwise the page says it wasn't.
 */
export function atWork(measured: Measured): string {
  const measuredHere = [paneSentence(measured), gridSentence(measured), growthSentence(measured), requests(measured)];
  const items = [...measuredHere, IN_EXCEL].filter((one) => one !== undefined);
  return `<ul>\n${items.map((one) => `<li>${escaped(one)}</li>`).join("\n")}\n</ul>`;
}

const IN_EXCEL =
  "We measured all of this in the practice workbook, on one of our computers, and none of it in a licensed Excel. Excel adds its own time. There, functions of an add-in are slower than ordinary formulas, because they run in a script engine instead of in Excel itself. We haven't measured by how much. A copy for others has ordinary formulas only.";

const seconds = (milliseconds: unknown) => `${(Number(milliseconds) / 1000).toFixed(1)} s`;

function paneSentence(measured: Measured): string | undefined {
  const [now, slowed] = rowsOf(measured, "pages");
  const claim = claimOf(measured, "pages", "The pane is ready");
  if (!now || !slowed || !claim) return;
  const found = `The pane is ready ${seconds(now["middle, ms"])} after its files have loaded, or ${seconds(slowed["middle, ms"])} on a processor ${slowed.processor}.`;
  return `${found} ${kept(claim) ? "We promise, at full speed" : "That is over the promise"}: ${seconds(claim.most)}.`;
}

function gridSentence(measured: Measured): string | undefined {
  const [row] = rowsOf(measured, "grid");
  const claim = claimOf(measured, "grid", "10,000 rows of 5 functions");
  if (!row || !claim) return;
  const found = `In the practice workbook, a sheet of 10,000 rows with five of our functions in each (${many(Number(row.formulas))} formulas) calculates in ${row["ours, s"]} s. The same arithmetic in the practice workbook’s own formulas takes ${row["native, s"]} s.`;
  const promise = kept(claim)
    ? `We promise no more than ${claim.most} times as long.`
    : `That is ${claim.measured} times as long, and over the promise of ${claim.most} times.`;
  return `${found} ${promise} The browser calculates both; for Excel, see below.`;
}

/** The most times that a row took for ten times the size. */
const mostForTen = (row: Row): number =>
  Math.max(Number(row["10×, ms"]) / Number(row["1×, ms"]), Number(row["100×, ms"]) / Number(row["10×, ms"]));

/** How much longer ten times as much takes: where it is promised, and a job's papers, of which nothing is. */
export function timesForTen(measured: Measured): { readonly promised: number; readonly papers: number } {
  const rows = rowsOf(measured, "growth");
  const isPromised = ({ what }: Row) => claimOf(measured, "growth", `${what}: growth exponent`) !== undefined;
  const worst = (some: readonly Row[]) => Math.ceil(Math.max(...some.map(mostForTen)));
  return { promised: worst(rows.filter(isPromised)), papers: worst(rows.filter((row) => !isPromised(row))) };
}

function growthSentence(measured: Measured): string | undefined {
  if (rowsOf(measured, "growth").length === 0) return;
  const { promised, papers } = timesForTen(measured);
  return `Ten times as many rows, beds, or corners take up to ${promised} times as long, and a job's documents up to ${papers} times. Fitting edging into stock pieces can take longer still if many lengths only just fit. Then the search stops after a set number of steps, and the order says there may be a better plan.`;
}

const ASKED = ["Insert an estimate at a cell", "Read the workbook for a check", "Redraw a bed"] as const;

function requests(measured: Measured): string | undefined {
  const rows = rowsOf(measured, "syncs").filter(({ what }) => ASKED.some((asked) => asked === what));
  if (rows.length === 0) return;
  const grown = rows.filter((row) => {
    const [small, large] = Object.entries(row).flatMap(([heading, count]) => (/sheets?,/.test(heading) ? [count] : []));
    return small !== large;
  });
  if (grown.length > 0)
    return `More requests to the spreadsheet program in a large workbook than in a small one: ${grown.map(({ what }) => what).join("; ")}.`;
  return "Inserting an estimate, checking the workbook, and drawing a bed call the spreadsheet program as often in a workbook of 100 sheets as in an almost empty one.";
}

const kept = ({ measured, most }: MeasuredClaim) => measured <= most;

/** How much faster than the size the hardest lists of pieces grew, in the table of cutting. */
export function hardestExponent(measured: Measured): number {
  return Math.max(0, ...rowsOf(measured, "cutting").map((row) => Number(row["growth exponent"])));
}
