import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { chooseCell, selectCells } from "./cells";
import { launch, openPractice, type Practice } from "./openPractice";
import { openScreen, pressScreen } from "./openScreen";
import { holdWorkbook } from "./screens/visit";

let browser: Browser;
let practice: Practice;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  // The context that all files share would keep the clock that this one sets.
  await browser.newContext();
  practice = await openPractice(browser, {}, (one) => one.clock.install());
  page = practice.page;
});
afterAll(() => browser.close());

/** Hears, as a screen reader does: what comes into places that were there before, in their order. */
async function listen(): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const heard: string[] = [];
    (globalThis as unknown as { heard: string[] }).heard = heard;
    const textOf = (place: Element) => (place.checkVisibility() ? (place.textContent ?? "").trim() : "");
    const all = [...document.querySelectorAll("#pane :is([role=status], [role=alert])")];
    const places = new Map(all.map((place) => [place, textOf(place)]));
    new MutationObserver(() => {
      for (const [place, before] of places) {
        const text = textOf(place);
        if (text === before) continue;
        places.set(place, text);
        if (text !== "") heard.push(`${place.getAttribute("role")}: ${text}`);
      }
    }).observe(document.querySelector("#pane")!, { childList: true, subtree: true, characterData: true });
  });
  return () => page.evaluate(() => (globalThis as unknown as { heard: string[] }).heard);
}

/** Types a text in place of another, a key every 60 ms by the page's own clock: a busy machine makes no pause between them. */
async function typeSteadily(field: Locator, text: string): Promise<void> {
  await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 1000);
  await field.fill("");
  for (const key of text) {
    await field.pressSequentially(key);
    await page.clock.runFor(60);
  }
  await page.clock.resume();
}

const price = async () => (await page.locator(".answer strong:visible").textContent()) ?? "";

describe("what changes is heard", () => {
  test("the price once typing pauses, not with every key", async () => {
    await page.getByLabel("Width", { exact: true }).fill("5");
    const heard = await listen();
    await typeSteadily(page.getByLabel("Length", { exact: true }), `18' 6 1/2"`);
    await expect.poll(async () => (await heard()).length).toBeGreaterThan(0);
    // Long enough for anything else that would still be said.
    await page.waitForTimeout(1000);
    expect(await heard()).toEqual([
      expect.stringMatching(/^status: Price \$[\d,.]+; stone .* tons, area .* sq ft, edging .* lin ft\.$/),
    ]);
    expect((await heard())[0]).toContain(`Price ${await price()};`);
  });

  test("what is in the way once typing pauses, at its field and together", async () => {
    const heard = await listen();
    const length = page.getByLabel("Length", { exact: true });
    await typeSteadily(length, "about twelve");
    await expect.poll(async () => (await heard()).some((one) => one.startsWith("alert: Before this"))).toBe(true);
    await page.waitForTimeout(1000);
    const alerts = (await heard()).filter((one) => one.startsWith("alert"));
    expect(alerts).toEqual([expect.stringContaining("about twelve")]);
    expect(await length.getAttribute("aria-invalid")).toBe("true");
    const below = page.locator(`[id="${await length.getAttribute("aria-describedby")}"]`);
    expect(await below.textContent()).toContain("about twelve");
    await length.fill("18");
    expect(await length.getAttribute("aria-invalid")).toBe(null);
  });

  test("that something is being written, and that it is", async () => {
    await selectCells(page, "Estimate", "A4");
    await chooseCell(page);
    // The price of the bed that was typed last is said first.
    await page
      .getByRole("status")
      .filter({ hasText: `Price ${await price()};` })
      .waitFor({ state: "attached" });
    const heard = await listen();
    const letGo = await holdWorkbook(page);
    await page.getByRole("button", { name: /^Insert/ }).click();
    await expect.poll(heard).toEqual(["status: Writing the estimate…"]);
    await letGo();
    await expect.poll(async () => (await heard()).at(-1)).toMatch(/^status: Added to Estimate!A4/);
  });

  test("a refusal at once", async () => {
    await openScreen(page, "Templates");
    await selectCells(page, "Jobs", "P30");
    const heard = await listen();
    await page.getByRole("button", { name: "Save the estimate" }).click();
    await expect.poll(async () => (await heard()).at(-1)).toMatch(/^alert: /);
  });

  test("how many pages the help has, once for all the keys", async () => {
    await openScreen(page, "Help");
    await page
      .getByRole("status")
      .filter({ hasText: /^\d+ pages\. Each/ })
      .waitFor({ state: "attached" });
    const heard = await listen();
    await typeSteadily(page.getByLabel("Search"), "stone weight");
    await expect.poll(async () => (await heard()).length).toBeGreaterThan(0);
    await page.waitForTimeout(1000);
    expect(await heard()).toEqual([
      expect.stringMatching(/^status: \d+ (pages?|answers?)\. Each opens in its own window\.$/),
    ]);
  });
});

test("a part that cannot be fetched is said, and is there once it can be", async () => {
  const { page: cut } = await openPractice(browser);
  await cut.route("**/chunks/copy.js", (route) => route.abort());
  await pressScreen(cut, "Copy for others");
  await cut.getByRole("alert").filter({ hasText: "This part couldn't be loaded. Nothing was changed." }).waitFor();
  await cut.unroute("**/chunks/copy.js");
  await cut.getByRole("button", { name: "Try again" }).click();
  await cut.getByRole("heading", { name: "Copy for others" }).waitFor();
  await cut.context().close();
});

test("a drawing that cannot be fetched is said, and an estimate that stands is not denied", async () => {
  const { page: cut } = await openPractice(browser);
  await cut.route("**/chunks/drawings.js", (route) => route.abort());
  await cut.getByLabel("Length", { exact: true }).fill("20");
  await cut.getByLabel("Width", { exact: true }).fill("8");
  await cut.getByRole("alert").filter({ hasText: "The drawing couldn't be loaded." }).waitFor();
  await selectCells(cut, "Jobs", "R40");
  await chooseCell(cut);
  await cut.getByRole("button", { name: "Insert at Jobs!R40" }).click();
  await cut
    .getByRole("alert")
    .filter({ hasText: /^Added to Jobs!R40.*It isn't drawn\. A part of the add-in couldn't be/ })
    .waitFor();
  expect(await cut.getByRole("alert").filter({ hasText: "Nothing was written" }).count()).toBe(0);
  await cut.unroute("**/chunks/drawings.js");
  await cut.getByRole("button", { name: "Draw it again" }).click();
  await cut.locator("#pane-plan").waitFor();
  await cut.context().close();
});

test("meets no error on the way", () => {
  expect(practice.errors).toEqual([]);
});
