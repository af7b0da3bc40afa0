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
  practice = await openPractice(browser, { viewport: { width: 1280, height: 1000 } });
  page = practice.page;
  await page.getByLabel("Length", { exact: true }).fill(`18' 6"`);
  await page.getByLabel("Width", { exact: true }).fill("5");
  await select("Estimate!A4");
  await chooseCell(page);
  await page.getByRole("button", { name: "Insert at Estimate!A4" }).click();
  await page.getByText("Added to Estimate!A4").waitFor();
  await openScreen(page, "Explain a cell");
});
afterAll(() => browser.close());

function select(address: string, content?: string): Promise<void> {
  return page.evaluate(
    ([at, given]) =>
      Excel.run(async (context) => {
        const [sheet = "", cells] = at!.split("!");
        const worksheet = context.workbook.worksheets.getItem(sheet);
        worksheet.activate();
        const range = worksheet.getRange(cells);
        if (given !== undefined) range.formulas = [[given]];
        range.select();
        await context.sync();
      }),
    [address, content] as const,
  );
}

/** What the pane says of a cell. */
async function explained(address: string, content?: string): Promise<string> {
  await select(address, content);
  await page.getByRole("button", { name: "Explain the selected cell" }).click();
  await page.getByRole("status").filter({ hasText: address }).waitFor();
  return page.locator("#pane").innerText();
}

describe("explaining a cell", () => {
  test("shows arguments with units, the rule, the working with its numbers, and the source of a table value", async () => {
    const text = await explained("Jobs!L5");
    expect(text).toContain("BED.STONE_TONS(J5,G5,H5,I5)");
    expect(text).toMatch(/90\.7832 sq ft/);
    expect(text).toMatch(/river rock: 1\.35 tons\/cu yd/);
    expect(text).toMatch(/CalRecycle/);
    // 90.7832 × 2 ÷ 324 = 0.56039; and 8 %: 0.605221; × 1.35 = 0.817049 (the block's contract test works it by hand).
    expect(text).toMatch(/90\.7832 × 2 ÷ 324 = 0\.56039 cu yd[\s\S]*0\.605221 × 1\.35 tons\/cu yd = 0\.817049 tons/);
    expect(text).toMatch(/Gives\s+0\.817049 tons/);
    await picture(page, "explain-function");
  });

  test("says why a cell is an error, and how to fix it", async () => {
    await select("Jobs!H9", "pea gravle");
    const text = await explained("Jobs!L9");
    expect(text).toMatch(/Gives\s+#N\/A/);
    expect(text).toMatch(/“pea gravle” isn't in the list/);
    expect(text).toMatch(/Did you mean “pea gravel”\?/);
    await picture(page, "explain-error");
  });

  test("steps into functions inside a function", async () => {
    await select("Jobs!P5", "=BED.EDGE_LENGTH(BED.FEET(C5)+2*BED.FEET(D5),E5,2)");
    expect(await explained("Jobs!P5")).toMatch(/BED\.EDGE_LENGTH/);
    const inside = page.getByText("Inside: BED.FEET(C5)");
    await inside.click();
    expect(await page.locator("article details[open]").innerText()).toMatch(/18' 6"/);
  });

  test("goes from quantity to price in a block", async () => {
    const text = await explained("Estimate!B5");
    expect(text).toMatch(/From quantity to price/);
    expect(text).toMatch(/Scrape and load\s+[\d.]+ labor hours × 48\.00 = [\d.]+; \+ 35% = [\d.]+/);
    expect(text).toMatch(/Overhead/);
    await picture(page, "explain-price");
  });

  test("tells what was typed from what was worked out", async () => {
    expect(await explained("Jobs!C5")).toMatch(/This was typed in\. There's no formula behind it/);
  });

  test("meets no error, and asks no one outside", () => {
    expect(practice.errors).toEqual([]);
    expect(practice.outside).toEqual([]);
  });
});
