import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, test } from "vitest";
import { marksOf, openPane } from "./openPane";
import { launch, picture, ready } from "./openPractice";

/*
 * The order in which things come, whatever the machine: how long each takes is the benchmark's business
 * (`npm run bench -- pages`).
 */
let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
});
beforeEach(async () => {
  page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
});
afterEach(() => page.close());
afterAll(() => browser.close());

describe("the pane", () => {
  const isUsable = () => page.waitForFunction(() => performance.getEntriesByName("Bedrow pane usable").length > 0);

  test("has all functions registered before it shows", async () => {
    await openPane(page, inject("origin"));
    await isUsable();
    const marks = await marksOf(page);
    expect(marks["Bedrow functions ready"]).toBeLessThan(marks["Bedrow pane usable"]!);
    const associated = await page.evaluate(() => (globalThis as unknown as { associated: string[] }).associated);
    const functions = await (await page.request.get(`${inject("origin")}/functions.json`)).json();
    expect(associated.sort()).toEqual(functions.functions.map(({ id }: { id: string }) => id).sort());
  });

  test("works a bed out before the host has answered anything and without a part that is fetched later", async () => {
    await page.route("**/chunks/**", (route) => route.abort());
    await openPane(page, inject("origin"));
    await isUsable();
    await page.getByLabel("Length", { exact: true }).fill("18' 6\"");
    await page.getByLabel("Width", { exact: true }).fill("5");
    // 18.5 ft × 5 ft, worked out by hand.
    await page.getByText("92.5").first().waitFor();
  });
});

describe("the practice page", () => {
  const isUsable = () =>
    page.waitForFunction(() => performance.getEntriesByName("Bedrow first cell usable").length > 0);

  test("takes what is typed as soon as it says so, and says how long that took", async () => {
    await page.goto(`${inject("origin")}/practice.html`);
    await isUsable();
    const grid = (await page.locator("#practice-grid").boundingBox())!;
    await page.mouse.click(grid.x + 200, grid.y + grid.height - 150);
    await page.keyboard.type("=BED.FEET(C5)");
    await page.keyboard.press("Enter");
    await ready(page);
    const typed = () =>
      page.evaluate(() =>
        Excel.run(async (context) => {
          const used = context.workbook.worksheets.getActiveWorksheet().getUsedRange(true);
          used.load("formulas,values");
          await context.sync();
          const values: unknown[] = used.values.flat();
          return values[used.formulas.flat().indexOf("=BED.FEET(C5)")];
        }),
      );
    // C5 holds 18' 6", which is 18 + 6/12 ft. On a busy machine the cell may still be open for a moment, and nothing reads it.
    await expect.poll(typed).toBe(18.5);
    expect(await page.locator("#practice-measured").textContent()).toMatch(
      /^First cell usable after \d+\.\d s on this machine\.$/,
    );
    await picture(page, "practice-first-cell");
  });

  test("knows the functions before the first formula is worked out: no cell ever shows an unknown name", async () => {
    await page.addInitScript(() => {
      // The grid writes its text with the canvas, so what it ever shows passes here.
      const shown: string[] = [];
      Object.assign(globalThis, { shown });
      const write = CanvasRenderingContext2D.prototype.fillText;
      CanvasRenderingContext2D.prototype.fillText = function (text, ...place) {
        shown.push(text);
        return write.call(this, text, ...place);
      };
    });
    await page.goto(`${inject("origin")}/practice.html`);
    await ready(page);
    const shown = await page.evaluate(() => (globalThis as unknown as { shown: string[] }).shown.join(""));
    expect(shown).toContain("river rock");
    expect(shown).not.toContain("#NAME?");
  });

  test("runs the pane only when the first cell is there", async () => {
    await page.goto(`${inject("origin")}/practice.html`);
    await ready(page);
    await page.waitForFunction(() => performance.getEntriesByName("Bedrow pane usable").length > 0);
    const marks = await marksOf(page);
    const order = ["Bedrow functions ready", "Bedrow first cell usable", "Bedrow pane usable"];
    expect(Object.keys(marks).filter((mark) => order.includes(mark))).toEqual(order);
  });

  test("keeps nothing that no one has typed", async () => {
    await page.goto(`${inject("origin")}/practice.html`);
    await ready(page);
    // Work is kept within half a second of a change.
    await page.waitForTimeout(1500);
    const kept = await page.evaluate(
      () =>
        new Promise((resolve, reject) => {
          const request = indexedDB.open("practice-workbook");
          request.onerror = () => reject(request.error);
          request.onsuccess = () => {
            const all = request.result.transaction("work").objectStore("work").count();
            all.onsuccess = () => resolve(all.result);
          };
        }),
    );
    expect(kept).toBe(0);
  });
});
