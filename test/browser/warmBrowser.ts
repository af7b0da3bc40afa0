import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { inject } from "vitest";

/*
 * The practice page is some megabytes of program, and compiling it is a quarter of what opening it costs. A browser keeps
 * what it compiled on disk, but only for its one context that isn't private. So the test files of a worker share a
 * browser and that context, which is emptied after each use; a test that needs a second one meanwhile gets a private one.
 */

/**
 * Flags that keep the browser from asking anyone outside, and from optimizing what it runs: pages are opened and closed
 * so soon that compiling them twice more takes a quarter of the time and saves less.
 */
const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--js-flags=--no-maglev --no-turbofan",
];

/** Whatever a test waits for, a busy machine gets this long. */
const PATIENCE_MS = 90_000;

/** Where a page keeps anything; what was compiled isn't among it. */
const STORAGE = "cookies,indexeddb,local_storage,cache_storage,service_workers,file_systems";

const howToStart = () => ({ executablePath: inject("browserPath"), args: FLAGS, timeout: PATIENCE_MS });

/** The worker's context whose compiled programs are kept, and whether a test has it. */
let kept: Promise<BrowserContext> | undefined;
let isTaken = false;
/** The worker's browser for private contexts. */
let other: Promise<Browser> | undefined;

/** A browser for one test file: closing it closes what the file has opened. */
export async function launch(): Promise<Browser> {
  other ??= chromium.launch(howToStart());
  const browser = await other;
  const opened = new Set<BrowserContext>();
  const newContext = async (options: BrowserContextOptions = {}) => {
    const context = isTaken ? await privateContext(browser, options) : await keptContext(options);
    opened.add(context);
    return context;
  };
  return Object.assign(Object.create(browser) as Browser, {
    newContext,
    newPage: async (options?: BrowserContextOptions) => (await newContext(options)).newPage(),
    close: async () => {
      for (const context of opened) await context.close();
    },
  });
}

async function privateContext(browser: Browser, options: BrowserContextOptions): Promise<BrowserContext> {
  const context = await browser.newContext(options);
  context.setDefaultTimeout(PATIENCE_MS);
  return context;
}

/** The context that stays; what a test asks of it is given to each page, and its `close` empties it for the next test. */
async function keptContext({ permissions = [], ...options }: BrowserContextOptions): Promise<BrowserContext> {
  isTaken = true;
  kept ??= chromium.launchPersistentContext("", howToStart());
  const context = await kept;
  context.setDefaultTimeout(PATIENCE_MS);
  await context.grantPermissions(permissions);
  const { newPage } = Object.getPrototypeOf(context) as BrowserContext;
  const scripts: Parameters<Page["addInitScript"]>[] = [];
  let isOpen = true;
  return Object.assign(context, {
    newPage: async () => {
      const page = await newPage.call(context);
      await arrange(page, options);
      for (const script of scripts) await page.addInitScript(...script);
      return page;
    },
    addInitScript: async (...script: Parameters<Page["addInitScript"]>) => void scripts.push(script),
    close: async () => {
      if (!isOpen) return;
      isOpen = false;
      await clear(context, await newPage.call(context));
      isTaken = false;
    },
  });
}

async function arrange(page: Page, { viewport, colorScheme, bypassCSP, ...rest }: BrowserContextOptions) {
  if (Object.keys(rest).length > 0) throw new Error(`A page of the shared context can't have ${Object.keys(rest)}.`);
  if (viewport) await page.setViewportSize(viewport);
  if (colorScheme) await page.emulateMedia({ colorScheme });
  if (bypassCSP) await (await page.context().newCDPSession(page)).send("Page.setBypassCSP", { enabled: true });
}

/** @param page a page of it with nothing in it. */
async function clear(context: BrowserContext, page: Page): Promise<void> {
  await Promise.all(context.pages().map((one) => one !== page && one.close()));
  await context.unrouteAll();
  await context.clearPermissions();
  const session = await context.newCDPSession(page);
  await session.send("Storage.clearDataForOrigin", { origin: inject("origin"), storageTypes: STORAGE });
}
