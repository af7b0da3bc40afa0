import type { Browser, Page } from "playwright-core";
import { marksOf, openPane } from "../../browser/openPane";

/** How much slower the processor is made, in the words of the table. */
export interface Pace {
  readonly words: string;
  readonly rate: number;
  readonly runs: number;
}

async function slowed(page: Page, { rate }: Pace): Promise<void> {
  if (rate === 1) return;
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate });
}

/** A page in a browser context of its own, so that nothing is kept from the run before. */
async function withPage<T>(browser: Browser, pace: Pace, action: (page: Page) => Promise<T>): Promise<T> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  try {
    const page = await context.newPage();
    await slowed(page, pace);
    return await action(page);
  } finally {
    await context.close();
  }
}

const isMarked = (page: Page, mark: string) =>
  page.waitForFunction((name) => performance.getEntriesByName(name).length > 0, mark, { timeout: 180_000 });

/** Milliseconds from when the last of the pane's scripts has arrived until the pane can be used. */
export function paneTime(browser: Browser, pace: Pace, origin: string): Promise<number> {
  return withPage(browser, pace, async (page) => {
    await openPane(page, origin);
    await isMarked(page, "Bedrow pane usable");
    const marks = await marksOf(page);
    const ready = marks["Bedrow functions ready"]!;
    const usable = marks["Bedrow pane usable"]!;
    if (!(ready < usable)) throw new Error("The pane showed before the functions were registered.");
    const arrived = await page.evaluate(() =>
      performance
        .getEntriesByType("resource")
        .filter(({ name }) => /\.js$/.test(name) && !name.includes("/chunks/"))
        .map((entry) => (entry as PerformanceResourceTiming).responseEnd),
    );
    return usable - Math.max(...arrived);
  });
}

/** Milliseconds from when a page is asked for until its first cell can be typed into. */
export function firstCellTime(browser: Browser, pace: Pace, address: string): Promise<number> {
  return withPage(browser, pace, async (page) => {
    await page.goto(address);
    await isMarked(page, "Bedrow first cell usable");
    return (await marksOf(page))["Bedrow first cell usable"]!;
  });
}
