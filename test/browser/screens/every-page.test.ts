import ExcelJS from "exceljs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { installGuide } from "../../../src/packaging/installGuide.mjs";
import { launch, openPractice, picture } from "../openPractice";
import { inEveryLook, paneWidth, pictures } from "./looks";
import { misfitsEverywhere } from "./measures";

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** A page of a width that a phone has, without what keeps the checker out. */
async function blankPage(): Promise<Page> {
  const context = await browser.newContext({ bypassCSP: true, viewport: paneWidth });
  return context.newPage();
}

const everything = async (page: Page, at: string) => [
  ...(await inEveryLook(page, at)),
  ...(await misfitsEverywhere(page, at)),
];

/** What the help lists, read from the build as the pane reads it. */
async function helpPages(): Promise<string[]> {
  const listed: unknown = await (await fetch(`${inject("origin")}/help/contents.json`)).json();
  return [...new Set(JSON.stringify(listed).match(/[\w-]+\.html/g))];
}

/** Pages of functions are made by one rule: the longest names, a list, a drawing's lists and a date stand for all. */
const SOME_FUNCTIONS = ["LAYOUT_RECTANGLE", "CUT_LIST", "PIN_MAP", "MARKUP_FOR_MARGIN", "DIG_DATE", "FEET"];

describe("the pages of the help are without findings in each look, and fit", () => {
  test("the index, the guide, what the numbers rest on, and pages of functions", async () => {
    const page = await blankPage();
    const listed = await helpPages();
    const guide = listed.filter((name) => /^[a-z]/.test(name));
    const functions = listed.filter((name) => SOME_FUNCTIONS.includes(name.replace(".html", "")));
    expect(guide.length).toBeGreaterThan(5);
    expect(functions).toHaveLength(SOME_FUNCTIONS.length);
    const found: Record<string, string[]> = {};
    for (const name of new Set(["index.html", ...guide, ...functions])) {
      await page.goto(`${inject("origin")}/help/${name}`);
      const faults = await everything(page, "body");
      if (faults.length > 0) found[name] = faults;
      if (/^[a-z]/.test(name)) await pictures(page, `help ${name}`);
    }
    expect(found).toEqual({});
    await page.context().close();
  });

  test("the page for whoever installs the add-in", async () => {
    const page = await blankPage();
    const html = installGuide({ origin: "https://tools.example", version: "1.2.3" });
    await page.route("**/install.html", (route) => route.fulfill({ contentType: "text/html", body: html }));
    await page.goto(`${inject("origin")}/install.html`);
    expect(await everything(page, "body")).toEqual([]);
    await pictures(page, "install");
    await page.context().close();
  });
});

describe("the practice page round the pane is without findings in each look", () => {
  test("its bar and its questions, wide and narrow, and the way by keyboard between sheet and pane", async () => {
    const { page } = await openPractice(browser, { bypassCSP: true });
    const bar = "header.bar";
    expect(await inEveryLook(page, bar)).toEqual([]);
    await page.getByRole("button", { name: "Start over…" }).click();
    expect(await inEveryLook(page, "#practice-afresh-ask")).toEqual([]);
    await page.keyboard.press("Escape");
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Start over…");

    const noWorkbook = { name: "notes.xlsx", mimeType: "application/octet-stream", buffer: Buffer.from("no workbook") };
    await page.locator("#practice-file").setInputFiles(noWorkbook);
    await page.locator("#practice-said[open]").waitFor();
    expect(await inEveryLook(page, "#practice-said")).toEqual([]);
    await page.keyboard.press("Escape");

    const book = new ExcelJS.Workbook();
    book.addWorksheet("Spring jobs").getCell("A1").value = { text: "the plan", hyperlink: "https://plans.example" };
    await page
      .locator("#practice-file")
      .setInputFiles({ name: "spring.xlsx", mimeType: XLSX, buffer: Buffer.from(await book.xlsx.writeBuffer()) });
    await page.locator("#practice-open-ask[open]").waitFor();
    expect(await inEveryLook(page, "#practice-open-ask")).toEqual([]);
    await page.keyboard.press("Escape");

    for (const dialog of ["#practice-busy", "#practice-save-ask"]) {
      await page.locator(dialog).evaluate((one: HTMLDialogElement) => one.showModal());
      expect(await inEveryLook(page, dialog)).toEqual([]);
      await page.keyboard.press("Escape");
    }

    // The pane comes along with F6, the sheet with F6 once more.
    await page.keyboard.press("F6");
    expect(await page.evaluate(() => document.activeElement?.closest("#practice-pane") !== null)).toBe(true);
    await page.keyboard.press("F6");
    expect(await page.evaluate(() => document.activeElement?.closest("#practice-grid") !== null)).toBe(true);

    await page.setViewportSize(paneWidth);
    expect(await everything(page, bar)).toEqual([]);
    await picture(page, "practice-narrow");
    await page.context().close();
  });
});
