import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findings, tooWide } from "./accessibility";
import { launch, openPractice, picture } from "./openPractice";

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const openGroups = (page: Page) =>
  page.evaluate(() => {
    for (const group of document.querySelectorAll("#pane details")) group.setAttribute("open", "");
  });

async function fill(page: Page): Promise<void> {
  await page.getByLabel("Bed name").fill("Front walk");
  await page.getByLabel("Length", { exact: true }).fill(`18' 6"`);
  await page.getByLabel("Width", { exact: true }).fill("5");
}

const looks: readonly (readonly [string, BrowserContextOptions])[] = [
  ["light", { colorScheme: "light" }],
  ["dark", { colorScheme: "dark" }],
  ["forced-colours", { forcedColors: "active" }],
];

describe.each(looks)("the pane in %s", (name, options) => {
  test("has no accessibility findings: filled, with problems, and with everything open", async () => {
    // The checker itself comes in past the page's content security policy.
    const { page } = await openPractice(browser, {
      ...options,
      bypassCSP: true,
      viewport: { width: 1280, height: 1400 },
    });
    expect(await findings(page)).toEqual([]);
    await fill(page);
    await picture(page, `pane-${name}-filled`);
    expect(await findings(page)).toEqual([]);
    for (const way of ["round", "widths", "points", "area"]) {
      await page.getByLabel("How it was measured").selectOption(way);
      await picture(page, `pane-${name}-${way}`);
      expect(await findings(page)).toEqual([]);
    }
    await openGroups(page);
    await page.getByLabel("Waste and low spots").fill("8 percent");
    await page.getByRole("button", { name: /^Insert/ }).click();
    await page.getByRole("alert").filter({ hasText: "Before this can be inserted" }).waitFor();
    await picture(page, `pane-${name}-problems`);
    expect(await findings(page)).toEqual([]);
    await page.getByRole("button", { name: "Check the sheets" }).click();
    await page.evaluate(() =>
      Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Jobs").getRange("L8").values = [[0.6]];
        await context.sync();
      }),
    );
    await page.getByRole("button", { name: "Check", exact: true }).click();
    const card = page.locator("article.finding").first();
    await card.getByText("A safe fix").click();
    await card.getByRole("button", { name: "Let it be…" }).click();
    await picture(page, `pane-${name}-check`);
    expect(await findings(page)).toEqual([]);
    await page.getByRole("button", { name: "Explain a cell" }).click();
    await page.getByRole("status").filter({ hasText: "Jobs!" }).waitFor();
    expect(await findings(page)).toEqual([]);
    await page.getByRole("button", { name: "Copy for others" }).click();
    await page.getByRole("button", { name: "Look before copying" }).click();
    await page.getByRole("button", { name: "Make the copy" }).click();
    await page.getByText("The copy stands on").waitFor();
    expect(await findings(page)).toEqual([]);
    await page.context().close();
  });
});

describe("the pane at 350 px", () => {
  test("keeps everything inside its width, at twice the text size, too", async () => {
    const { page } = await openPractice(browser);
    await fill(page);
    await openGroups(page);
    for (const zoom of ["1", "2"]) {
      const wide = await tooWide(page, zoom, ["INPUT"]);
      await picture(page, `pane-350px-zoom-${zoom}`);
      expect(wide, `zoom ${zoom}`).toEqual([]);
    }
    await page.context().close();
  });
});

test("the main job goes by keyboard alone", async () => {
  const { page } = await openPractice(browser);
  const focused = () =>
    page.evaluate(
      () =>
        (document.activeElement as HTMLInputElement | null)?.labels?.[0]?.textContent ??
        document.activeElement?.textContent ??
        "",
    );
  const tabTo = async (label: RegExp) => {
    for (let presses = 0; presses < 60; presses += 1) {
      if (label.test(await focused())) return;
      await page.keyboard.press("Tab");
    }
    throw new Error(`Tab never reached ${label}.`);
  };
  await page.evaluate(() =>
    Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Estimate");
      sheet.activate();
      sheet.getRange("A4").select();
      await context.sync();
    }),
  );
  await page.getByLabel("Bed name").focus();
  await page.keyboard.type("Side bed");
  await tabTo(/^Length$/);
  await page.keyboard.type(`32' 6 1/2"`);
  await tabTo(/^Width$/);
  await page.keyboard.type("3");
  await tabTo(/^Insert/);
  await page.keyboard.press("Enter");
  await page.getByText("The estimate stands on Estimate at A4").waitFor();
  await tabTo(/^Take back/);
  await page.keyboard.press("Space");
  await page.getByText("was taken back from Estimate A4").waitFor();
  await page.context().close();
});
