import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findings } from "./accessibility";
import { launch, openPractice, picture } from "./openPractice";
import { openScreen } from "./openScreen";

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

describe("the help", () => {
  test("is found from the pane, and its pages are readable, at a pane's width too", async () => {
    const { page } = await openPractice(browser, { bypassCSP: true });
    await openScreen(page, "Help");
    await page
      .getByRole("status")
      .filter({ hasText: /^\d+ pages/ })
      .waitFor();
    await picture(page, `help`);
    expect(await findings(page, "#pane")).toEqual([]);

    await page.getByLabel("Search").fill("stone tons");
    await page
      .getByRole("status")
      .filter({ hasText: /^\d+ answers/ })
      .waitFor();
    await page.getByLabel("Search").fill("retaining wall financing");
    await page.getByRole("status").filter({ hasText: "Here are the closest" }).waitFor();
    expect(await page.locator("dl.cautions").last().locator("dt").count()).toBe(3);
    await page.getByLabel("Search").fill("stone tons");
    const opened = page.waitForEvent("popup");
    await page.getByRole("link", { name: "BED.STONE_TONS", exact: true }).click();
    const help = await opened;
    await help.getByRole("heading", { name: "BED.STONE_TONS" }).waitFor();
    expect(await findings(help, "main")).toEqual([]);
    await help.setViewportSize({ width: 350, height: 700 });
    await picture(help, `help-page`);
    const width = await help.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(350);
    await help.getByRole("link", { name: "Where the numbers come from" }).first().click();
    await help.getByRole("heading", { name: "Where the numbers come from" }).waitFor();
    expect(await findings(help, "main")).toEqual([]);
  });
});

test("a list that cannot be fetched is said in words", async () => {
  const { page } = await openPractice(browser);
  await page.route("**/help/contents.json", (route) => route.abort());
  await openScreen(page, "Help");
  await page.getByText("Help couldn't be loaded. Check your connection, then try again.").waitFor();
});
