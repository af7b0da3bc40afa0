import { existsSync } from "node:fs";
import { rm } from "node:fs/promises";
import { join, resolve } from "node:path";
import { type Browser, chromium } from "playwright-core";
import { serve } from "../../src/serve.mjs";
import { findBrowser } from "../browser/findBrowser";
import { buildBare } from "./pages/buildBare";
import { changeTable, reloadTable, startTable } from "./pages/startUp";
import { firstCellTime, type Pace, paneTime } from "./pages/timed";
import { type Claim, median, short, type Table } from "./table";

const DIST = resolve(process.env.DIST ?? "dist");
const PACES: readonly Pace[] = [
  { words: "full speed", rate: 1, runs: 11 },
  { words: "4 times slower", rate: 4, runs: 5 },
];
const MOST_PANE_MS = 500;
/** "As fast as the grid allows": what a run differs from the next is about a tenth. */
const MOST_TIMES_THE_GRID = 1.1;

/** Promises hold for the machine as it is; nothing is promised of a slowed one. */
const promisedAt = ({ rate }: Pace, most: number) => (rate === 1 ? most : "");

const whole = (ms: number) => Math.round(ms);

async function paneRow(browser: Browser, pace: Pace, origin: string) {
  const times: number[] = [];
  for (let run = 0; run < pace.runs; run++) times.push(await paneTime(browser, pace, origin));
  return {
    processor: pace.words,
    runs: pace.runs,
    "middle, ms": whole(median(times)),
    "slowest, ms": whole(Math.max(...times)),
    "may be": promisedAt(pace, MOST_PANE_MS),
  };
}

async function firstCellRow(browser: Browser, pace: Pace, pages: Readonly<Record<"ours" | "whole" | "core", string>>) {
  const times: Record<keyof typeof pages, number[]> = { ours: [], whole: [], core: [] };
  // In turns, since the machine is not equally quick all the time.
  for (let run = 0; run < pace.runs; run++)
    for (const which of ["ours", "whole", "core"] as const)
      times[which].push(await firstCellTime(browser, pace, pages[which]));
  const ratios = (peer: "whole" | "core") => median(times.ours.map((ms, run) => ms / times[peer][run]!));
  return {
    processor: pace.words,
    runs: pace.runs,
    "practice page, ms": whole(median(times.ours)),
    "slowest, ms": whole(Math.max(...times.ours)),
    "grid alone, same packages, ms": whole(median(times.whole)),
    "ours ÷ it": short(ratios("whole")),
    "may be": promisedAt(pace, MOST_TIMES_THE_GRID),
    "grid alone, core only, ms": whole(median(times.core)),
    "ours ÷ core": short(ratios("core")),
  };
}

/** How soon the pane and the practice page can be used in a real browser, nothing kept from before. */
export async function bench(): Promise<Table[]> {
  if (!existsSync(join(DIST, "practice.html"))) throw new Error(`${DIST} holds no build. Run: npm run build`);
  const bare = await buildBare(DIST);
  const [own, peers] = [await serve(DIST), await serve(bare)];
  const browser = await chromium.launch({ executablePath: findBrowser(), args: ["--no-sandbox", "--disable-gpu"] });
  try {
    const pages = {
      ours: `${own.origin}/practice.html`,
      whole: `${peers.origin}/bareWhole.html`,
      core: `${peers.origin}/bareCore.html`,
    };
    // Once over, so that no run pays for the browser's own start.
    await paneTime(browser, PACES[0]!, own.origin);
    for (const page of Object.values(pages)) await firstCellTime(browser, PACES[0]!, page);
    const pane: Awaited<ReturnType<typeof paneRow>>[] = [];
    const cell: Awaited<ReturnType<typeof firstCellRow>>[] = [];
    for (const pace of PACES) pane.push(await paneRow(browser, pace, own.origin));
    for (const pace of PACES) cell.push(await firstCellRow(browser, pace, pages));
    const [paneNow, cellNow] = [pane[0]!, cell[0]!];
    const paneClaim: Claim = {
      what: "The pane is ready",
      measured: paneNow["middle, ms"],
      most: MOST_PANE_MS,
      unit: "ms",
      how: `from when its scripts have loaded, with functions registered before; median of ${paneNow.runs} runs in Chromium`,
    };
    const cellClaim: Claim = {
      what: "First cell of the practice page",
      measured: cellNow["ours ÷ it"],
      most: MOST_TIMES_THE_GRID,
      unit: "times",
      how: `against a bare page with the same grid packages, in turns; median of ${cellNow.runs} ratios in Chromium`,
    };
    return [
      { title: "The pane ready after its scripts have loaded", rows: pane, claims: [paneClaim] },
      { title: "First cell ready, from opening the page", rows: cell, claims: [cellClaim] },
      await reloadTable(browser, pages),
      await startTable(browser),
      await changeTable(),
    ];
  } finally {
    await browser.close();
    await Promise.all([own.close(), peers.close()]);
    await rm(bare, { recursive: true, force: true });
  }
}
