import ExcelJS from "exceljs";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from "vitest";
import { keptWork, untilKept } from "./kept";
import { launch, picture, ready } from "./openPractice";
import { openScreen } from "./openScreen";

/*
 * Storage that is full, missing, damaged or from a later version is met with words, and nothing is lost.
 */
let browser: Browser;
const contexts: BrowserContext[] = [];
beforeAll(async () => {
  browser = await launch();
});
afterEach(async () => {
  await Promise.all(contexts.splice(0).map((context) => context.close()));
});
afterAll(() => browser.close());

async function newContext(): Promise<BrowserContext> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  contexts.push(context);
  return context;
}

/** Opens the practice page in a tab of its own, where a button is pressed first if it asks. */
async function open(
  context: BrowserContext,
  answer?: "Work here" | "Open a copy" | "Try again",
): Promise<{ readonly page: Page; readonly errors: string[] }> {
  const page = await context.newPage();
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(String(error)));
  await page.goto(`${inject("origin")}/practice.html`);
  if (answer) await page.getByRole("button", { name: answer }).click();
  await ready(page);
  return { page, errors };
}

/** A light page of the same origin, from which its storage can be written before the practice page opens. */
async function lightPage(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${inject("origin")}/help/index.html`);
  return page;
}

const write = (page: Page, address: string, value: string) =>
  page.evaluate(
    ([at, text]) =>
      Excel.run(async (inside) => {
        inside.workbook.worksheets.getActiveWorksheet().getRange(at).values = [[text]];
      }),
    [address, value] as const,
  );

const read = (page: Page, address: string) =>
  page.evaluate(
    (at) =>
      Excel.run(async (inside) => {
        const range = inside.workbook.worksheets.getActiveWorksheet().getRange(at).load("values");
        await inside.sync();
        return range.values[0]?.[0];
      }),
    address,
  );

/** The page keeps the work a moment after the last change: long enough to see that it does not. */
const KEPT_MS = 1500;

/** Puts something in the place of the kept work, in a database of a version. */
const putWork = (page: Page, work: unknown, version: number) =>
  page.evaluate(
    ([value, number]) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open("practice-workbook", number as number);
        request.onupgradeneeded = () => {
          if (!request.result.objectStoreNames.contains("work")) request.result.createObjectStore("work");
        };
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const transaction = request.result.transaction("work", "readwrite");
          transaction.objectStore("work").put(value, "workbook");
          transaction.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
    [work, version] as const,
  );

describe("the practice workbook", () => {
  test("that is open in a second tab keeps the first one's work, and opens a copy in the second", async () => {
    const context = await newContext();
    const first = await open(context);
    await write(first.page, "B40", "first");
    await untilKept(first.page, `"first"`);
    const second = await open(context, "Open a copy");
    await second.page.getByText("is also open in another tab, and that one saves its work").waitFor();
    expect(await read(second.page, "B40")).toBe("first");
    await write(second.page, "B40", "second");
    await second.page.waitForTimeout(KEPT_MS);
    await picture(second.page, "storage-second-tab");
    await second.page.getByRole("button", { name: "Start over…" }).click();
    const ask = second.page.getByRole("dialog", { name: "Start over?" });
    await ask.getByRole("button", { name: "Start over" }).click();
    await second.page.getByText("Nothing was changed: the practice workbook is also open in another tab").waitFor();
    await first.page.reload();
    await ready(first.page);
    expect(await read(first.page, "B40")).toBe("first");
    // Loaded again, the first tab is still the one that keeps.
    await write(first.page, "B40", "again");
    await untilKept(first.page, `"again"`);
    await first.page.close();
    await second.page.reload();
    await ready(second.page);
    expect(await read(second.page, "B40")).toBe("again");
    expect(await second.page.locator("#practice-work-trouble").isVisible()).toBe(false);
    expect([...first.errors, ...second.errors]).toEqual([]);
  });

  test("is taken over by a second tab with the first one's last change, also where the first one hangs", async () => {
    const context = await newContext();
    const first = await open(context);
    const second = await context.newPage();
    await second.goto(`${inject("origin")}/practice.html`);
    await second.getByText("The practice workbook is already open in another tab.").waitFor();
    await write(first.page, "B40", "typed at the last moment");
    await second.getByRole("button", { name: "Work here" }).click();
    await ready(second);
    expect(await read(second, "B40")).toBe("typed at the last moment");
    await first.page.getByText("is also open in another tab, and that one saves its work").waitFor();
    await write(first.page, "B40", "too late");
    await write(second, "B41", "second");
    await untilKept(second, `"second"`);
    expect(JSON.stringify(await keptWork(second))).not.toContain("too late");
    // It answers no one, as if its thread were busy.
    const session = await context.newCDPSession(second);
    await session.send("Debugger.enable");
    await session.send("Debugger.pause");
    const third = await open(context, "Work here");
    expect(await read(third.page, "B41")).toBe("second");
    await session.send("Debugger.resume");
    await second.getByText("is also open in another tab, and that one saves its work").waitFor();
    expect([...first.errors, ...third.errors]).toEqual([]);
  });

  test("that didn't finish opening is not opened again before the person says so", async () => {
    const context = await newContext();
    await context.addInitScript(() => {
      const marks: string[] = [];
      Object.assign(globalThis, { marks });
      for (const act of ["setItem", "removeItem"] as const) {
        const usual = Storage.prototype[act] as (...given: string[]) => void;
        Storage.prototype[act] = function (this: Storage, ...given: string[]) {
          if (given[0] === "practice-workbook-opening") marks.push(act);
          return usual.apply(this, given);
        };
      }
    });
    const first = await open(context);
    await write(first.page, "B40", "=6*7");
    await untilKept(first.page, "6*7");
    await first.page.reload();
    await ready(first.page);
    const marks = () => first.page.evaluate(() => (globalThis as unknown as { marks: string[] }).marks);
    await expect.poll(marks).toEqual(["setItem", "removeItem"]);
    await first.page.close();

    // As a page leaves it that the browser closed while it hung.
    const writer = await lightPage(context);
    await writer.evaluate(() => localStorage.setItem("practice-workbook-opening", "1"));
    const page = await context.newPage();
    await page.goto(`${inject("origin")}/practice.html`);
    await page.getByText("The saved workbook didn't finish opening the last time.").waitFor();
    await picture(page, "storage-left-opening");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Download the cells" }).click(),
    ]);
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(await download.path());
    const jobs = book.worksheets[0]!;
    expect(jobs.getCell("B40").value).toMatchObject({ formula: "6*7", result: 42 });
    await page.getByRole("button", { name: "Try again" }).click();
    await ready(page);
    expect(await read(page, "B40")).toBe(42);
    await page.close();

    await writer.evaluate(() => localStorage.setItem("practice-workbook-opening", "1"));
    const last = await context.newPage();
    await last.goto(`${inject("origin")}/practice.html`);
    await last.getByText("didn't finish opening").waitFor();
    await last.getByRole("main").getByRole("button", { name: "Start over" }).click();
    await ready(last);
    expect(await read(last, "B40")).toBe("");
    expect(await keptWork(writer)).toBeUndefined();
    expect(first.errors).toEqual([]);
  });

  test("says of the pane and of the work what is wrong with each, and neither takes the other's words", async () => {
    const context = await newContext();
    await context.route("**/pane.js", (route) => route.abort());
    const withoutPane = async (answer?: string) => {
      const page = await context.newPage();
      await page.goto(`${inject("origin")}/practice.html`);
      if (answer) await page.getByRole("button", { name: answer }).click();
      await page.getByText("The pane couldn't be loaded.").waitFor();
      return page;
    };
    const first = await withoutPane();
    await write(first, "B40", "first");
    await untilKept(first, `"first"`);
    // The work was kept, which is nothing that brings the pane.
    expect(await first.locator("#practice-pane-trouble").textContent()).toMatch(/^The pane couldn't be loaded/);
    const second = await withoutPane("Open a copy");
    expect(await second.locator("#practice-work-trouble").textContent()).toMatch(/is also open in another tab/);
  });

  test("leaves alone what a later version has kept", async () => {
    const context = await newContext();
    const writer = await lightPage(context);
    await putWork(writer, { from: "later" }, 2);
    const { page, errors } = await open(context);
    await page.getByText("A newer version of this page saved work in this browser.").waitFor();
    await write(page, "B40", "now");
    await page.waitForTimeout(KEPT_MS);
    expect(await keptWork(writer)).toEqual({ from: "later" });
    await page.getByRole("button", { name: "Start over…" }).click();
    await page.getByRole("dialog", { name: "Start over?" }).getByRole("button", { name: "Start over" }).click();
    await page.getByText("Nothing was changed: a newer version of this page").waitFor();
    expect(await keptWork(writer)).toEqual({ from: "later" });
    expect(errors).toEqual([]);
  });

  test.each([
    ["a text", "nonsense"],
    ["a sheet whose cells are none", { sheetOrder: ["x"], sheets: { x: { name: "X", cellData: { 0: "no row" } } } }],
  ])("leaves alone what cannot be read: %s; until the person starts afresh", async (_what, work) => {
    const context = await newContext();
    const writer = await lightPage(context);
    await putWork(writer, work, 1);
    const { page, errors } = await open(context);
    await page.getByText("The work saved in this browser can't be read.").waitFor();
    await write(page, "B40", "now");
    await page.waitForTimeout(KEPT_MS);
    expect(await keptWork(writer)).toEqual(work);
    await page.getByRole("button", { name: "Start over…" }).click();
    const ask = page.getByRole("dialog", { name: "Start over?" });
    await Promise.all([page.waitForEvent("load"), ask.getByRole("button", { name: "Start over" }).click()]);
    await ready(page);
    await write(page, "B40", "kept again");
    await untilKept(page, "kept again");
    await page.reload();
    await ready(page);
    expect(await read(page, "B40")).toBe("kept again");
    expect(errors).toEqual([]);
  });

  test("works without any storage, and says that it keeps nothing", async () => {
    const context = await newContext();
    await context.addInitScript(() => {
      const refuse = () => {
        throw new DOMException("The operation is insecure.", "SecurityError");
      };
      Object.defineProperty(window, "indexedDB", { get: () => undefined });
      Object.defineProperty(window, "localStorage", { get: refuse });
      Object.defineProperty(navigator, "locks", { get: () => undefined });
    });
    const { page, errors } = await open(context);
    await page.getByText("This browser can't save your work").waitFor();
    await page.getByText("This browser can't save what you type").waitFor();
    await page.getByLabel("Bed name").fill("Front walk");
    await picture(page, "storage-none");
    await openScreen(page, "Job documents");
    await page.getByRole("heading", { name: "Job documents" }).waitFor();
    expect(errors).toEqual([]);
  });
});

const FORM = { name: "Front walk", way: "rectangle", typed: {}, widths: [], points: [], cutOuts: [] };

describe("the pane", () => {
  test.each([
    ["half a text", "{half"],
    [
      "a way of measuring that there is only by its name",
      JSON.stringify({ version: 1, kept: { ...FORM, way: "constructor" } }),
    ],
  ])(
    "comes up with a blank form where the bed that was kept is %s, and asks before it is thrown away",
    async (_, text) => {
      const context = await newContext();
      const writer = await lightPage(context);
      await writer.evaluate((kept) => localStorage.setItem("Bedrow.form", kept), text);
      const { page, errors } = await open(context);
      await page.getByText("What was typed here before is damaged and can't be read. It wasn't changed.").waitFor();
      await page.getByLabel("Bed name").fill("Back border");
      const now = () => writer.evaluate(() => localStorage.getItem("Bedrow.form"));
      expect(await now()).toBe(text);
      await picture(page, "storage-damaged-form");
      await page.getByRole("button", { name: "Discard the old one and save this" }).click();
      await page.getByText("What was typed here before is damaged").waitFor({ state: "detached" });
      // Another tab's storage catches up in its own time.
      await expect.poll(async () => JSON.parse((await now())!)).toMatchObject({ kept: { name: "Back border" } });
      await page.reload();
      await ready(page);
      expect(await page.getByLabel("Bed name").inputValue()).toBe("Back border");
      expect(errors).toEqual([]);
    },
  );

  test("leaves alone the bed and the details that a later version has kept, and says so", async () => {
    const context = await newContext();
    const writer = await lightPage(context);
    const later = JSON.stringify({ version: 2, kept: { anything: true } });
    await writer.evaluate((text) => {
      localStorage.setItem("Bedrow.form", text);
      localStorage.setItem("Bedrow.papers", text);
    }, later);
    const { page, errors } = await open(context);
    const words = page.getByText("A newer version of this add-in saved what was typed here before.");
    await words.waitFor();
    await page.getByLabel("Bed name").fill("Back border");
    await picture(page, "storage-later-form");
    const kept = await writer.evaluate(() => [
      localStorage.getItem("Bedrow.form"),
      localStorage.getItem("Bedrow.papers"),
    ]);
    expect(kept).toEqual([later, later]);
    expect(await page.getByRole("button", { name: "Discard the old" }).count()).toBe(0);
    expect(errors).toEqual([]);
  });

  test("keeps a bed of its own for each of two panes", async () => {
    const context = await newContext();
    const first = await open(context);
    await first.page.getByLabel("Bed name").fill("Front walk");
    const second = await open(context, "Open a copy");
    expect(await second.page.getByLabel("Bed name").inputValue()).toBe("");
    await second.page.getByLabel("Bed name").fill("Back border");
    for (const { page } of [first, second]) {
      await page.reload();
      if (page === second.page) await page.getByRole("button", { name: "Open a copy" }).click();
      await ready(page);
    }
    expect(await first.page.getByLabel("Bed name").inputValue()).toBe("Front walk");
    expect(await second.page.getByLabel("Bed name").inputValue()).toBe("Back border");
    expect([...first.errors, ...second.errors]).toEqual([]);
  });
});
