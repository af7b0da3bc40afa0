import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import { launch } from "./openPractice";

/** The host's library as it is published, in place of its address on the web. */
const OFFICE_JS = dirname(createRequire(import.meta.url).resolve("@microsoft/office-js/dist/office.js"));
const HOSTED = "https://appsforoffice.microsoft.com/lib/1/hosted/";

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

test("the pane's own page, with the host's library and no spreadsheet program around it, says where it belongs", async () => {
  const page = await browser.newPage();
  const asked: string[] = [];
  await page.route(/^https:/, async (route) => {
    const url = route.request().url().split("?")[0]!;
    asked.push(url);
    const file = url.startsWith(HOSTED) ? join(OFFICE_JS, url.slice(HOSTED.length)) : "";
    if (existsSync(file)) await route.fulfill({ path: file });
    else await route.abort();
  });
  const refused: string[] = [];
  page.on("console", (message) => {
    if (/Content Security Policy/.test(message.text())) refused.push(message.text());
  });
  await page.goto(`${inject("origin")}/pane.html`);
  await page.getByRole("alert").filter({ hasText: "open the practice workbook" }).waitFor();
  expect(asked).toContain(`${HOSTED}office.js`);
  expect(refused).toEqual([]);
});
