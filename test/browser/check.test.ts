import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { chooseCell } from "./cells";
import { launch, openPractice, type Practice, picture } from "./openPractice";
import { openScreen } from "./openScreen";

let browser: Browser;
let practice: Practice;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  practice = await openPractice(browser);
  page = practice.page;
});
afterAll(() => browser.close());

function write(cells: Record<string, string | number>): Promise<void> {
  return page.evaluate(
    (given) =>
      Excel.run(async (context) => {
        for (const [address, content] of Object.entries(given)) {
          context.workbook.worksheets.getItem("Jobs").getRange(address).formulas = [[content]];
        }
        await context.sync();
      }),
    cells,
  );
}

function formula(address: string): Promise<unknown> {
  return page.evaluate(
    (at) =>
      Excel.run(async (context) => {
        const range = context.workbook.worksheets.getItem("Jobs").getRange(at);
        range.load("formulas");
        await context.sync();
        return range.formulas[0]?.[0];
      }),
    address,
  );
}

async function check(): Promise<void> {
  await page.getByRole("button", { name: "Check", exact: true }).click();
  await expect.poll(() => page.getByRole("heading", { name: "Not checked" }).count()).toBe(1);
  await expect.poll(() => page.getByRole("progressbar", { name: "Check progress" }).count()).toBe(0);
}

const findings = () => page.locator("article.finding");

describe("checking the sheets", () => {
  test("tells the invented office, and a fresh estimate in it, that they are clean", async () => {
    await page.getByLabel("Length", { exact: true }).fill(`18' 6"`);
    await page.getByLabel("Width", { exact: true }).fill("5");
    await page.evaluate(() =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Estimate");
        sheet.activate();
        sheet.getRange("A4").select();
        await context.sync();
      }),
    );
    await chooseCell(page);
    await page.getByRole("button", { name: "Insert at Estimate!A4" }).click();
    await page.getByText("Added to Estimate!A4").waitFor();
    await openScreen(page, "Check the sheets");
    await check();
    const texts = await findings().allTextContents();
    expect(texts.filter((text) => !text.startsWith("Question"))).toEqual([]);
    await picture(page, "check-clean");
  });

  test("finds what was planted, goes there, writes a safe fix, and undoes it", async () => {
    const right = await formula("L8");
    await write({ L8: 0.6, I9: 10, M17: "=SUM(M5:M14)", G11: 0.25 });
    await check();
    await picture(page, "check-found");
    const card = findings().filter({ hasText: "A number where the cells next to it have a formula" });
    await card.getByRole("button", { name: "Go to Jobs!L8" }).click();
    expect(await card.getByRole("row").last().textContent()).toContain("=BED.STONE_TONS(J8,G8,H8,I8)");
    await card.getByRole("button", { name: "Fix" }).click();
    await expect.poll(() => formula("L8")).toBe(right);
    await expect.poll(() => card.count()).toBe(0);
    await page.getByRole("button", { name: "Undo the fix" }).click();
    await expect.poll(() => formula("L8")).toBe(0.6);
    await expect.poll(() => card.count()).toBe(1);
  });

  test("lets a finding be, with its reason, and shows it again when asked", async () => {
    const card = findings().filter({ hasText: "looks like feet" });
    await card.getByRole("button", { name: "Ignore…" }).click();
    await card.getByLabel("Reason").fill("a thin strip, agreed");
    await card.getByRole("button", { name: "Ignore", exact: true }).click();
    await expect.poll(() => card.count()).toBe(0);
    await page.getByText("Ignored (1)").click();
    expect(await page.getByText("a thin strip, agreed").count()).toBe(1);
    await page.getByRole("button", { name: "Show again" }).click();
    await expect.poll(() => card.count()).toBe(1);
  });

  test("puts the report on a sheet", async () => {
    await page.getByRole("button", { name: "Add the report as a sheet" }).click();
    await page.getByText("Added the report as Sheet check.").waitFor();
    await picture(page, "check-report");
  });

  test("asks no one outside, and meets no error", () => {
    expect(practice.outside).toEqual([]);
    expect(practice.errors).toEqual([]);
  });
});
