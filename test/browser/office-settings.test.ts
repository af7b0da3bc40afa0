import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { findings } from "./accessibility";
import { shownPrice } from "./bedForm";
import { chooseCell, readCells, selectCells } from "./cells";
import { launch, openPractice, type Practice, picture } from "./openPractice";
import { openScreen } from "./openScreen";

/*
 * An office sets its rates up in one practice workbook, saves them, and loads them in the next one: the price of a bed
 * there follows.
 */
let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const open = () => openPractice(browser, { bypassCSP: true });
const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: true }).click();

async function typeBed(page: Page): Promise<void> {
  await openScreen(page, "Estimate");
  await page.getByLabel("Bed name").fill("Front walk");
  await page.getByLabel("Length", { exact: true }).fill("41");
  await page.getByLabel("Width", { exact: true }).fill("9");
}

/** The price that the pane shows for the bed. */
async function price(page: Page): Promise<number> {
  await openScreen(page, "Estimate");
  return shownPrice(page);
}

function writeNamed(page: Page, name: string, content: string | number): Promise<void> {
  return page.evaluate(
    ([wanted, text]) =>
      Excel.run(async (context) => {
        context.workbook.names.getItem(String(wanted)).getRange().values = [[text]];
        await context.sync();
      }),
    [name, content] as const,
  );
}

/** Opens the documents of a job, which ask for a bed of it. */
async function openDocuments(page: Page): Promise<void> {
  await openScreen(page, "Job documents");
  const beds = page.getByRole("group", { name: "Beds of this job" });
  await beds.waitFor();
  const bed = beds.getByRole("checkbox").first();
  if (!(await bed.isChecked())) await bed.check();
}

async function typeTerms(page: Page, terms: string): Promise<void> {
  await openDocuments(page);
  await page.getByLabel("Terms", { exact: true }).fill(terms);
}

const chooseFile = (page: Page, text: string) =>
  page
    .getByLabel("Office settings file (.json)")
    .setInputFiles({ name: "ours.json", mimeType: "application/json", buffer: Buffer.from(text) });

let saved: string;
let savedPrice: number;
let next: Practice;

test("settings are saved from the workbook that has them, with their version", async () => {
  const { page, errors } = await open();
  await typeBed(page);
  const samplePrice = await price(page);
  await openScreen(page, "Rates");
  await press(page, "Add the Rates sheet");
  await page.getByText(/Added the Rates sheet: Rates!A1/).waitFor();
  await writeNamed(page, "Rate_fabric_roll", 195);
  await writeNamed(page, "Rate_crew_hour", 61);
  await expect.poll(() => price(page)).toBeGreaterThan(samplePrice);
  savedPrice = await price(page);

  await typeTerms(page, "Half on signing");
  await openScreen(page, "Rates");
  await press(page, "Save office settings…");
  await page.getByRole("heading", { name: "Save office settings" }).waitFor();
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Save office settings");
  await press(page, "Save to a file");
  await page.getByText("Type the office's name first. Nothing was saved.").waitFor();
  await page.getByLabel("Office", { exact: true }).fill("Fernlea Stone");
  await picture(page, "office-save");
  expect(await findings(page)).toEqual([]);
  const downloading = page.waitForEvent("download");
  await press(page, "Save to a file");
  const download = await downloading;
  expect(download.suggestedFilename()).toBe("Fernlea Stone office settings 1.json");
  saved = readFileSync((await download.path())!, "utf8");
  expect(JSON.parse(saved)).toMatchObject({
    office: "Fernlea Stone",
    number: 1,
    rates: { values: { Rate_fabric_roll: 195, Rate_crew_hour: 61 } },
    texts: { noticeDays: "2", terms: "Half on signing" },
  });
  expect(saved).not.toContain("pastJobs");
  await page.getByText(/This workbook uses Fernlea Stone, version \d{4}-\d\d-\d\d, no\. 1\./).waitFor();
  await writeNamed(page, "Rate_crew_hour", 62);
  await page.getByText(/no\. 1\. Changed since: /).waitFor();
  // The next one is no. 2.
  await press(page, "Save office settings…");
  await page.getByText(/This will be version \d{4}-\d\d-\d\d, no\. 2\./).waitFor();
  await page.keyboard.press("Escape");
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("Save office settings…");
  expect(errors).toEqual([]);
  await page.context().close();
});

test("the next workbook shows what would change, then has the same price for a bed", async () => {
  next = await open();
  const { page } = next;
  await typeBed(page);
  const before = await price(page);
  expect(before).not.toBeCloseTo(savedPrice, 2);
  await openScreen(page, "Rates");
  await press(page, "Load office settings…");
  await chooseFile(page, saved);
  await page.getByRole("heading", { name: "Fernlea Stone" }).waitFor();
  await page.getByText(/^Rates for a new Rates sheet \(\d+\)$/).waitFor();
  await page.locator("li:visible", { hasText: "Terms: (blank) → Half on signing" }).waitFor();
  await page.getByText("Nothing is written yet").waitFor();
  await picture(page, "office-preview-new");
  expect(await findings(page)).toEqual([]);
  await press(page, "Load these settings");
  await page.getByText(/^Loaded Fernlea Stone, version \d{4}-\d\d-\d\d, no\. 1: a Rates sheet/).waitFor();
  expect((await readCells(page, "Rates", "A2")).values[0]?.[0]).toMatch(/^Office settings: Fernlea Stone, version/);
  await expect.poll(() => price(page)).toBeCloseTo(savedPrice, 2);
  await openDocuments(page);
  expect(await page.getByLabel("Terms", { exact: true }).inputValue()).toBe("Half on signing");
  await openScreen(page, "Rates");
  await picture(page, "office-loaded");
});

test("an estimate on the sheet follows the next version, and undo puts its price back", async () => {
  const { page } = next;
  await openScreen(page, "Estimate");
  await selectCells(page, "Estimate", "A4");
  await chooseCell(page);
  await press(page, "Insert at Estimate!A4");
  await page.getByText("Added to Estimate!A4").waitFor();
  const inSheet = async () => Number((await readCells(page, "Estimate", "B5")).values[0]?.[0]);
  await expect.poll(inSheet).toBeCloseTo(savedPrice, 2);
  await openScreen(page, "Rates");
  await press(page, "Load office settings…");
  const second = JSON.parse(saved) as { number: number; rates: { values: Record<string, number> } };
  second.number = 2;
  second.rates.values.Rate_fabric_roll = 295;
  await chooseFile(page, JSON.stringify(second));
  await page.getByText("Your own rates this replaces (1)").waitFor();
  // What someone types meanwhile isn't replaced unseen: the preview starts over with it.
  await writeNamed(page, "Rate_fabric_roll", 199);
  await press(page, "Load these settings");
  await page.getByText(/was just changed, so nothing was written/).waitFor();
  await page.locator("li:visible", { hasText: ": $199.00 → $295.00" }).waitFor();
  await writeNamed(page, "Rate_fabric_roll", 195);
  await press(page, "Load these settings");
  await page.getByText(/was just changed, so nothing was written/).waitFor();
  await page.locator("li:visible", { hasText: ": $195.00 → $295.00" }).waitFor();
  await picture(page, "office-preview");
  expect(await findings(page)).toEqual([]);
  await press(page, "Load these settings");
  await page.getByText(/^Loaded Fernlea Stone, version .*, no\. 2: 1 rate\.$/).waitFor();
  await expect.poll(inSheet).toBeGreaterThan(savedPrice);
  await press(page, "Undo loading");
  await page.getByText("Everything is as it was before.").waitFor();
  await expect.poll(inSheet).toBeCloseTo(savedPrice, 2);
  await page.getByText(/This workbook uses Fernlea Stone, version .*, no\. 1\./).waitFor();
});

test("a file that is damaged, or has a rate outside its limits, is refused in words", async () => {
  const { page } = next;
  const before = (await readCells(page, "Rates", "A1:G60")).values;
  await press(page, "Load office settings…");
  for (const [text, words] of [
    [saved.slice(0, 200), /ours\.json can't be loaded, so nothing was changed\. The file is damaged/],
    [saved.replace('"version": 2', '"version": 4'), /A newer version of the add-in saved this file/],
    [saved.replace('"Rate_fabric_roll": 195', '"Rate_fabric_roll": -5'), /ours\.json can't be loaded.*-5/],
  ] as const) {
    await chooseFile(page, text);
    await page.locator("[role=alert]", { hasText: words }).first().waitFor();
  }
  await picture(page, "office-refused");
  expect(await findings(page)).toEqual([]);
  await press(page, "Cancel");
  expect((await readCells(page, "Rates", "A1:G60")).values).toEqual(before);
});

test("the office's folder offers a version that the workbook doesn't use yet", async () => {
  const { page } = next;
  await page.route("**/templates/index.json", (route) =>
    route.fulfill({
      json: { format: "bedrow-template-index", version: 1, templates: [], officeSettings: "ours.json" },
    }),
  );
  await page.route("**/templates/ours.json", (route) =>
    route.fulfill({ contentType: "application/json", body: saved.replace('"number": 1', '"number": 3') }),
  );
  await openScreen(page, "Estimate");
  await openScreen(page, "Rates");
  await page.getByText(/Your office's settings: version .*, no\. 3\. This workbook uses no\. 1\./).waitFor();
  await picture(page, "office-offer");
  expect(await findings(page)).toEqual([]);
  await press(page, "Preview your office's settings");
  await page.getByText("This workbook already has all of it.").waitFor();
  await press(page, "Load these settings");
  await page.getByText(/This workbook uses Fernlea Stone, version .*, no\. 3\./).waitFor();
  expect(await page.getByText("Your office's settings:").count()).toBe(0);
  expect(next.errors).toEqual([]);
  expect(next.outside).toEqual([]);
  await page.context().close();
});
