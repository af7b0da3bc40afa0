import { mkdirSync } from "node:fs";
import { resolve } from "node:path";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { inject } from "vitest";

export { launch } from "./warmBrowser";

export interface Practice {
  readonly page: Page;
  /** Addresses outside the practice page's own origin that it asked for. */
  readonly outside: string[];
  /** Errors that the page met. */
  readonly errors: string[];
}

/**
 * Opens the practice workbook in a browser context of its own, and waits until the grid and the pane are there.
 *
 * @param prepare what is done to the page before anything of it is loaded.
 */
export async function openPractice(
  browser: Browser,
  options: BrowserContextOptions = {},
  prepare?: (page: Page) => Promise<void>,
): Promise<Practice> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...options });
  const page = await context.newPage();
  const outside: string[] = [];
  const errors: string[] = [];
  page.on("request", (request) => {
    const url = request.url();
    if (/^https?:/.test(url) && !url.startsWith(inject("origin"))) outside.push(url);
  });
  page.on("pageerror", (error) => errors.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  await prepare?.(page);
  await page.goto(`${inject("origin")}/practice.html`);
  await ready(page);
  return { page, outside, errors };
}

/** Waits until the pane has its buttons, which it has only once the host is up. */
export async function ready(page: Page): Promise<void> {
  await page.getByRole("button", { name: /^Insert/ }).waitFor();
}

/** Whether pictures are asked for. */
export const TAKES_PICTURES = process.env.PICTURES !== undefined;

/** Keeps a picture for people to look at, where they are asked for or something failed. */
export async function picture(page: Page, name: string, always = TAKES_PICTURES): Promise<void> {
  if (!always) return;
  const folder = resolve(import.meta.dirname, "../../test-output");
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: resolve(folder, `${name}.png`) });
}
