import { appendFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { Browser, Page } from "playwright-core";
import { marksOf } from "../../browser/openPane";
import { type Copy, copyRepository, type Running, readmeCommand, runIn, until } from "../../start/newcomer";
import { median, short, type Table } from "../table";

const MOST_COLD_S = 15;
const MOST_SECOND_S = 3;
const MOST_SERVED_S = 2;
const MOST_TIMES_THE_GRID = 1.2;
const SECOND_STARTS = 5;
const RELOADS = 11;

/** What is changed in turn, from what loads least with it to what loads most, and where it is served. */
const CHANGES = [
  { source: "src/pane/pane.css", change: "/* changed */", served: "pane.css" },
  { source: "src/pane/index.tsx", change: 'Object.assign(globalThis, { changed: "it" });', served: "pane.js" },
  { source: "src/functions/entry.ts", change: 'Object.assign(globalThis, { changed: "it" });', served: "functions.js" },
  {
    source: "src/quantities/area.ts",
    change: 'Object.assign(globalThis, { changed: "it" });',
    served: "functions.js",
  },
] as const;

const secondsSince = (start: number) => short((performance.now() - start) / 1000);

async function firstCell(page: Page, address: string): Promise<number> {
  await page.goto(address);
  await page.waitForFunction(() => performance.getEntriesByName("Bedrow first cell usable").length > 0, undefined, {
    timeout: 180_000,
  });
  return (await marksOf(page))["Bedrow first cell usable"]!;
}

/** From the README's command in a fresh copy to an address, and to a cell that can be typed into; then once more. */
export async function startTable(browser: Browser): Promise<Table> {
  const copy = copyRepository(resolve("."));
  const command = readmeCommand(copy.read("README.md"));
  let running: Running | undefined;
  try {
    const start = performance.now();
    running = runIn(copy, command, "start.log");
    const address = await running.address;
    const coldAddress = secondsSince(start);
    const page = await browser.newPage();
    await firstCell(page, address);
    const coldCell = secondsSince(start);
    const cpu = running.cpuSeconds();
    await page.close();
    await running.stop();
    const again: number[] = [];
    for (let run = 0; run < SECOND_STARTS; run++) {
      const from = performance.now();
      running = runIn(copy, command, `again-${run}.log`);
      await running.address;
      again.push(secondsSince(from));
      await running.stop();
    }
    const second = median(again);
    return {
      title: "From the command in the README, in a fresh copy of the repository",
      rows: [
        {
          start: "first, nothing built",
          "address, s": coldAddress,
          "first cell, s": coldCell,
          "may be": MOST_COLD_S,
          "processor, s": short(cpu),
        },
        {
          start: `again, middle of ${SECOND_STARTS}`,
          "address, s": second,
          "first cell, s": "",
          "may be": MOST_SECOND_S,
          "processor, s": "",
        },
      ],
      claims: [
        {
          what: "First start, to the first usable cell",
          measured: coldCell,
          most: MOST_COLD_S,
          unit: "s",
          how: "the README’s command in a fresh copy with the packages installed, the build included; once",
        },
        {
          what: "Another start, to the address",
          measured: second,
          most: MOST_SECOND_S,
          unit: "s",
          how: `with nothing changed; middle of ${SECOND_STARTS}`,
        },
      ],
    };
  } finally {
    await running?.stop();
    copy.remove();
  }
}

/** How soon `npm run dev` serves what was changed. */
export async function changeTable(): Promise<Table> {
  const copy = copyRepository(resolve("."));
  const running = runIn(copy, "npm run dev", "dev.log");
  try {
    const address = await running.address;
    const rows: { changed: string; "served, s": number; "may be": number }[] = [];
    for (const one of CHANGES) {
      rows.push({ changed: one.source, "served, s": await timeToServe(copy, address, one), "may be": MOST_SERVED_S });
    }
    const slowest = Math.max(...rows.map((row) => row["served, s"]));
    return {
      title: "From a change to what is served, with npm run dev",
      rows,
      claims: [
        {
          what: "A changed file is served",
          measured: slowest,
          most: MOST_SERVED_S,
          unit: "s",
          how: `the slowest of ${rows.length} files, each changed once`,
        },
      ],
    };
  } finally {
    await running.stop();
    copy.remove();
  }
}

async function timeToServe(copy: Copy, address: string, { source, change, served }: (typeof CHANGES)[number]) {
  const fetched = async () => (await fetch(new URL(served, address))).text();
  const before = await fetched();
  const start = performance.now();
  appendFileSync(join(copy.folder, source), `\n${change}\n`);
  await until(async () => (await fetched()) !== before || undefined);
  return secondsSince(start);
}

/** The practice page and the bare grid, each loaded again in a browser that has them already; in turns. */
export async function reloadTable(browser: Browser, pages: Readonly<Record<"ours" | "whole", string>>): Promise<Table> {
  const times: Record<keyof typeof pages, number[]> = { ours: [], whole: [] };
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  try {
    const page = await context.newPage();
    for (let run = -1; run < RELOADS; run++)
      for (const which of ["ours", "whole"] as const) {
        const ms = await firstCell(page, pages[which]);
        // The first fills the browser's cache.
        if (run >= 0) times[which].push(ms);
      }
  } finally {
    await context.close();
  }
  const ratio = short(median(times.ours.map((ms, run) => ms / times.whole[run]!)));
  return {
    title: "First cell usable, loaded again",
    rows: [
      {
        runs: RELOADS,
        "practice page, ms": Math.round(median(times.ours)),
        "grid alone, same packages, ms": Math.round(median(times.whole)),
        "ours ÷ it": ratio,
        "may be": MOST_TIMES_THE_GRID,
      },
    ],
    claims: [
      {
        what: "Practice page loaded again, to its first cell",
        measured: ratio,
        most: MOST_TIMES_THE_GRID,
        unit: "times",
        how: `against a bare page with the same grid packages, both in the browser’s cache, in turns; middle of ${RELOADS} ratios`,
      },
    ],
  };
}
