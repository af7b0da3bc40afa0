import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { fragments } from "../guide/fragments";
import { launch, openPractice, picture } from "./openPractice";
import { openScreen, screenNames } from "./openScreen";

const GUIDE = [...fragments.map(([name]) => name.replace(/^\d+-/, "")), "numbers.html", "faults.html", "speed.html"];
/** A width of the pane, and one of a window. */
const WIDTHS = [350, 1200];
const DIST = resolve(process.env.DIST ?? resolve(import.meta.dirname, "../../dist"));

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const widthOf = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth);

/** Addresses of pictures that did not come. */
const missingPictures = (page: Page) =>
  page.evaluate(async () => {
    const images = [...document.images];
    await Promise.all(images.map((image) => image.decode().catch(() => undefined)));
    return images.filter(({ naturalWidth }) => naturalWidth === 0).map(({ src }) => src);
  });

// What an accessibility checker finds of them in each look is in every-page.test.ts.
describe("the guide", () => {
  test.each(GUIDE)("%s can be read at a pane's width and at a window's", async (address) => {
    const page = await browser.newPage();
    await page.goto(`${inject("origin")}/help/${address}`);
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 800 });
      expect(await widthOf(page), `at ${width} px`).toBeLessThanOrEqual(width);
      await picture(page, `guide-${address.replace(".html", "")}-${width}`);
    }
    expect(await missingPictures(page)).toEqual([]);
    await page.close();
  });
});

test("the guide is read from page to page with the keyboard, from a folder on the disk, too", async () => {
  const page = await browser.newPage();
  await page.goto(pathToFileURL(resolve(DIST, "help", GUIDE[0]!)).href);
  for (const next of GUIDE.slice(1)) {
    await page.locator("a[rel=next]").press("Enter");
    await page.waitForURL((url) => url.pathname.endsWith(`/${next}`));
    expect(await missingPictures(page), next).toEqual([]);
  }
  expect(await page.locator("a[rel=next]").count()).toBe(0);
  await page.getByRole("link", { name: "Bedrow help" }).press("Enter");
  await page.getByRole("heading", { name: "Guide and functions" }).waitFor();
  await page.close();
});

test("on paper the guide is without the ways to other pages", async () => {
  const page = await browser.newPage();
  await page.goto(`${inject("origin")}/help/${GUIDE[0]}`);
  await page.emulateMedia({ media: "print" });
  expect(await page.getByRole("navigation").count()).toBe(0);
  expect(await page.getByRole("img").count()).toBeGreaterThan(3);
  await page.close();
});

test("every screen of the pane leads to its page, and the help lists the guide first", async () => {
  const { page } = await openPractice(browser);
  const screens = await screenNames(page);
  expect(screens.at(-1)).toBe("Help");
  for (const screen of screens.slice(0, -1)) {
    await openScreen(page, screen);
    const opened = page.waitForEvent("popup");
    await page.getByRole("link", { name: "How this works" }).click();
    const help = await opened;
    await help.getByRole("navigation", { name: "Guide" }).waitFor();
    const place = new URL(help.url()).hash;
    if (place) expect(await help.locator(place).count(), screen).toBe(1);
    await help.close();
  }
  await openScreen(page, "Help");
  const first = page.getByRole("region", { name: "Guide", exact: true });
  await first.getByRole("link", { name: "A first estimate" }).waitFor();
  expect(await first.getByRole("link").count()).toBe(GUIDE.length);
  await page.context().close();
});
