import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launch, openPractice, type Practice, picture, ready } from "./openPractice";

let browser: Browser;
let practice: Practice;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  practice = await openPractice(browser);
  page = practice.page;
});
afterAll(() => browser.close());

/** Formulas of a range on the sheet in front, read as an add-in reads them, once no one types into a cell. */
function formulas(address: string, on: Page = page): Promise<unknown[][]> {
  return on.evaluate(
    (at) =>
      Excel.run({ delayForCellEdit: true }, async (context) => {
        const range = context.workbook.worksheets.getActiveWorksheet().getRange(at).load("formulas");
        await context.sync();
        return range.formulas;
      }),
    address,
  );
}

let clicks = 0;

/** Selects a cell and gives the keyboard to the grid. */
async function select(address: string): Promise<void> {
  const box = await gridBox();
  // Twice in the same place would be a double click, which opens the cell.
  clicks += 1;
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2 + (clicks % 4) * 30);
  await page.evaluate(
    (at) =>
      Excel.run(async (context) => {
        context.workbook.worksheets.getActiveWorksheet().getRange(at).select();
        await context.sync();
      }),
    address,
  );
}

async function gridBox() {
  const box = await page.locator("#practice-grid").boundingBox();
  if (!box) throw new Error("The grid is not on the screen.");
  return box;
}

function sheetNames(): Promise<string[]> {
  return page.evaluate(() =>
    Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name");
      await context.sync();
      return worksheets.items.map(({ name }) => name);
    }),
  );
}

/** Types as fast as a good typist does. */
const type = (text: string) => page.keyboard.type(text, { delay: 40 });

const reason = () => page.locator("#practice-reason");

describe("a formula", () => {
  test("is met with help on the function and on the argument that is being typed", async () => {
    await select("A30");
    await type("=BED.STONE_TO");
    await page.getByText("BED.STONE_TONS").first().waitFor();
    await type("NS(C40,");
    await page.getByText("Stone depth: inches").waitFor();
    await picture(page, "practice-argument-help");
    await type('2,"pea gravel")');
    await page.keyboard.press("Enter");
    expect(await formulas("A30")).toEqual([['=BED.STONE_TONS(C40,2,"pea gravel")']]);
  });

  test("is the one that was typed, and not one that the list of functions still offers", async () => {
    await select("B30");
    await type("=SU");
    await page.getByText("SUBTOTAL").first().waitFor();
    await type("M(1,2)");
    await page.keyboard.press("Enter");
    expect(await formulas("B30")).toEqual([["=SUM(1,2)"]]);
  });

  test("takes a function from the list with Tab", async () => {
    await select("C30");
    await type("=BED.FEE");
    await page.getByText("BED.FEET").first().waitFor();
    await page.keyboard.press("Tab");
    await page.getByText("BED.FEET(").first().waitFor();
    await type("C5)");
    await page.keyboard.press("Enter");
    expect(await formulas("C30")).toEqual([["=BED.FEET(C5)"]]);
  });

  test("that gives an error tells the reason where its cell is selected, and only there", async () => {
    await select("A30");
    await expect.poll(() => reason().textContent()).toMatch(/^A30: area is blank/);
    await picture(page, "practice-error-reason");
    await select("A31");
    await expect.poll(() => reason().isVisible()).toBe(false);
  });

  test("keeps its references and its reason where a row is inserted above it by hand", async () => {
    await select("A12");
    await page.keyboard.press("Control+Home");
    const { x } = await gridBox();
    const cells = await page.locator('canvas[id*="sheet-main-canvas"]').boundingBox();
    if (!cells) throw new Error("There are no cells on the screen.");
    // Below the row of column headings, each row is 20 pixels high: this is the heading of the twelfth.
    await page.mouse.click(x + 20, cells.y + 20 + 11.5 * 20, { button: "right" });
    await page.getByText("rows above").waitFor();
    const item = await page.getByText("rows above").boundingBox();
    if (!item) throw new Error("The menu has no such item.");
    await page.mouse.click(x + 60, item.y + item.height / 2);
    await expect.poll(() => formulas("A31")).toEqual([['=BED.STONE_TONS(C41,2,"pea gravel")']]);
    await select("A31");
    await expect.poll(() => reason().textContent()).toMatch(/^A31: area is blank/);
  });
});

describe("a cell with a list", () => {
  test("also takes what is typed, where the list does not insist", async () => {
    await page.evaluate(() =>
      Excel.run(async (context) => {
        const { dataValidation } = context.workbook.worksheets.getActiveWorksheet().getRange("F30");
        dataValidation.rule = { list: { inCellDropDown: true, source: "loam,clay" } };
        dataValidation.errorAlert = { showAlert: false, style: "Information", title: "", message: "" };
      }),
    );
    await select("F30");
    await type("1.4");
    await page.keyboard.press("Enter");
    expect(await formulas("F30")).toEqual([[1.4]]);
  });
});

describe("a person's work", () => {
  test("survives a reload, with the sheets that were added", async () => {
    await page.evaluate(() =>
      Excel.run(async (context) => {
        context.workbook.worksheets.add("Autumn").getRange("B2").values = [["kept"]];
      }),
    );
    await select("D40");
    await type("also kept");
    await page.keyboard.press("Enter");
    expect(await formulas("D40")).toEqual([["also kept"]]);
    await page.reload();
    await ready(page);
    expect(await formulas("D40")).toEqual([["also kept"]]);
    await page.getByText("Autumn").first().click();
    await expect.poll(() => formulas("B2")).toEqual([["kept"]]);
  });

  test("is thrown away only after a question, which Escape answers with no", async () => {
    const ask = page.getByRole("dialog", { name: "Start over?" });
    await page.getByRole("button", { name: "Start over…" }).click();
    await ask.waitFor();
    await picture(page, "practice-start-afresh");
    await page.keyboard.press("Escape");
    await ask.waitFor({ state: "hidden" });
    expect(await sheetNames()).toContain("Autumn");

    await page.getByRole("button", { name: "Start over…" }).click();
    await Promise.all([page.waitForEvent("load"), ask.getByRole("button", { name: "Start over" }).click()]);
    await ready(page);
    expect(await sheetNames()).toEqual(["Jobs", "Estimate"]);
    expect(await formulas("D40")).toEqual([[""]]);
  });

  test("that the browser cannot keep is met with words", async () => {
    const context = await browser.newContext();
    await context.addInitScript(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
    });
    const full = await context.newPage();
    await full.goto(page.url());
    await ready(full);
    await full.evaluate(() =>
      Excel.run(async (inside) => {
        inside.workbook.worksheets.getActiveWorksheet().getRange("A30").values = [["x"]];
      }),
    );
    await full.getByText("This browser can't save your work").waitFor();
    await context.close();
  });
});

test("the page has no alert, confirm, or prompt, and can't rewrite its history, as in the office", async () => {
  const found = await page.evaluate(() => {
    const saysNo = (ask: () => unknown) => {
      try {
        ask();
        return false;
      } catch {
        return true;
      }
    };
    const { pushState, replaceState } = window.history as { pushState: unknown; replaceState: unknown };
    const dialogs = [() => alert("Saved"), () => confirm("Remove it?"), () => prompt("Depth?")];
    return { dialogs: dialogs.map(saysNo), history: [pushState, replaceState] };
  });
  expect(found).toEqual({ dialogs: [true, true, true], history: [null, null] });
});

test("the page says that it is loading, and why it does not come up where the grid cannot be fetched", async () => {
  const context = await browser.newContext();
  const cut = await context.newPage();
  let release: () => void = () => undefined;
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  await cut.route("**/chunks/**", async (route) => {
    await held;
    await route.abort();
  });
  await cut.goto(page.url(), { waitUntil: "domcontentloaded" });
  await cut.getByText("The practice workbook is loading.").waitFor();
  await picture(cut, "practice-loading");
  release();
  await cut.getByText("The practice workbook didn't start.").waitFor();
  await cut.getByText("The grid couldn't be loaded.").waitFor();
  await context.close();
});

test("on a narrow window the pane folds away and comes back", async () => {
  const context = await browser.newContext({ viewport: { width: 640, height: 800 } });
  const narrow = await context.newPage();
  await narrow.goto(page.url());
  await narrow.locator("#practice-loading").waitFor({ state: "hidden" });
  expect(await narrow.locator("#practice-pane").isVisible()).toBe(false);
  await narrow.getByRole("button", { name: "Show pane" }).click();
  expect(await narrow.locator("#practice-pane").isVisible()).toBe(true);
  await narrow.getByRole("button", { name: "Hide pane" }).click();
  expect(await narrow.locator("#practice-pane").isVisible()).toBe(false);
  await context.close();
});

test("nothing outside was asked for, and no error came up on the way", () => {
  expect([practice.outside, practice.errors]).toEqual([[], []]);
});
