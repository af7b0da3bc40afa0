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
 * What the figures mean at work, for people who estimate. A sentence that says that something is quick enough stands
 * only where its promise was kept when it was measured; otherwise the page says that it was not.
 */
export function atWork(measured: Measured): string {
  const measuredHere = [paneSentence(measured), gridSentence(measured), growthSentence(measured), requests(measured)];
  const items = [...measuredHere, IN_EXCEL].filter((one) => one !== undefined);
  return `<ul>\n${items.map((one) => `<li>${escaped(one)}</li>`).join("\n")}\n</ul>`;
}

const IN_EXCEL =
  "All of this was measured with the practice workbook, on a computer of ours, and none of it in a licensed Excel. There its own speed comes on top, and functions of an add-in are slower than ordinary formulas: these are part of Excel, and functions of an add-in go through its script engine. By how much was not measured. A copy without the add-in holds ordinary formulas and does without it.";

const seconds = (milliseconds: unknown) => `${(Number(milliseconds) / 1000).toFixed(1)} s`;

function paneSentence(measured: Measured): string | undefined {
  const [now, slowed] = rowsOf(measured, "pages");
  const claim = claimOf(measured, "pages", "The pane can be used");
  if (!now || !slowed || !claim) return;
  const found = `The pane can be used ${seconds(now["middle, ms"])} after its files have arrived, and after ${seconds(slowed["middle, ms"])} where the processor is ${slowed.processor}.`;
  return `${found} ${kept(claim) ? "Promised, without the slowing" : "That is over the promise"}: ${seconds(claim.most)}.`;
}

function gridSentence(measured: Measured): string | undefined {
  const [row] = rowsOf(measured, "grid");
  const claim = claimOf(measured, "grid", "10,000 rows of 5 functions");
  if (!row || !claim) return;
  const found = `In the practice workbook a sheet of 10,000 rows with five of our functions in each, ${many(Number(row.formulas))} formulas, is worked out in ${row["ours, s"]} s, and the same arithmetic in the practice workbook’s own formulas in ${row["native, s"]} s.`;
  const promise = kept(claim)
    ? `Promised there: no more than ${claim.most} times.`
    : `That is ${claim.measured} times as long, and over the promise of ${claim.most} times.`;
  return `${found} ${promise} Both are worked out by the browser there; see below for Excel.`;
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
  return `Ten times as many rows, beds or corners take up to ${promised} times as long; the papers of a job take up to ${papers} times. Cutting border pieces from stocks can grow faster than either, where many lengths only just fit: then the search stops after a set number of steps, and the order says that a better plan may exist.`;
}

const ASKED = [
  "An estimate block is inserted at a cell",
  "The workbook is read for a check",
  "A block is drawn anew",
] as const;

function requests(measured: Measured): string | undefined {
  const rows = rowsOf(measured, "syncs").filter(({ what }) => ASKED.some((asked) => asked === what));
  if (rows.length === 0) return;
  const grown = rows.filter((row) => {
    const [small, large] = Object.entries(row).flatMap(([heading, count]) => (/sheets?,/.test(heading) ? [count] : []));
    return small !== large;
  });
  if (grown.length > 0)
    return `More requests to the spreadsheet program in a large workbook than in a small one: ${grown.map(({ what }) => what).join("; ")}.`;
  return "Inserting an estimate, checking the workbook and drawing a bed ask the spreadsheet program as often in a workbook of 100 sheets as in an almost empty one.";
}

const kept = ({ measured, most }: MeasuredClaim) => measured <= most;

/** How much faster than the size the hardest lists of pieces grew, in the table of cutting. */
export function hardestExponent(measured: Measured): number {
  return Math.max(0, ...rowsOf(measured, "cutting").map((row) => Number(row["growth exponent"])));
}
