import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readCells, selectCells } from "./cells";
import { focusFault, type Keyboard, keyboardOf } from "./keyboard";
import { launch, openPractice } from "./openPractice";
import { openScreen } from "./openScreen";
import { holdWorkbook } from "./screens/visit";

let browser: Browser;
let page: Page;
let keys: Keyboard;
beforeAll(async () => {
  browser = await launch();
  ({ page } = await openPractice(browser));
  keys = keyboardOf(page);
});
afterAll(() => browser.close());

const said = (words: string | RegExp) => page.getByText(words).first().waitFor();

/** Puts contents into cells of the invented office's rows. */
function plant(cells: Readonly<Record<string, string | number>>): Promise<void> {
  return page.evaluate(
    (given) =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Jobs");
        for (const [address, content] of Object.entries(given)) sheet.getRange(address).formulas = [[content]];
        await context.sync();
      }),
    cells,
  );
}

describe("by keyboard alone, with its place kept throughout,", () => {
  test("an estimate is refused, fixed, put elsewhere and undone", async () => {
    await keys.press(/^Tools/);
    for (const key of ["ArrowDown", "ArrowDown", "ArrowUp"]) await page.keyboard.press(key);
    await keys.arrives(/^Rates$/);
    await page.keyboard.press("ArrowUp");
    await keys.arrives(/^Help$/);
    await page.keyboard.press("Escape");
    await keys.arrives(/^Tools/);
    await page.getByRole("button", { name: "Tools", expanded: false }).waitFor();
    await keys.open("Job rows", "Job rows");
    await keys.open("Estimate", "Stone bed estimate");
    await keys.type(/^Bed name$/, "Side bed");
    await keys.type(/^Length$/, "wide");
    await keys.type(/^Width$/, "3");
    await selectCells(page, "Jobs", "A5");
    await keys.tabTo(/^Where it goes$/);
    await page.keyboard.press("ArrowDown");
    await keys.press(/^Insert/);
    // The first field that is in the way has the keyboard, and says why.
    await keys.arrives(/^Length$/);
    const length = page.getByLabel("Length", { exact: true });
    expect(await length.getAttribute("aria-invalid")).toBe("true");
    const told = await length.getAttribute("aria-describedby");
    expect(await page.locator(`[id="${told}"]`).textContent()).toMatch(/wide/);
    await keys.type(/^Length$/, `32' 6 1/2"`);
    await keys.press(/^Insert/);
    await keys.arrives(/^Put it at/);
    await page.keyboard.press("Escape");
    await keys.arrives(/^Insert/);
    await page.keyboard.press("Enter");
    await keys.arrives(/^Put it at/);
    await keys.press(/^On a new sheet$/);
    await said(/^Added to Side bed/);
    await keys.arrives(/^(Insert|Undo)/);
    await keys.press(/^Undo/, "Space");
    await said(/^Removed the .* from Side bed/);
    // Nothing is left to undo, and still the button keeps the keyboard.
    await keys.arrives(/^Undo/);
  });

  test("a cut-out comes, is typed and goes", async () => {
    await keys.press(/^Cut-outs/);
    await keys.press(/^Add a cut-out$/);
    await keys.arrives(/^Add a cut-out$/);
    await page.keyboard.press("Shift+Tab");
    await keys.arrives(/^Remove cut-out 1$/);
    await page.keyboard.press("Enter");
    await keys.arrives(/^(Cut-outs|Add a cut-out)/);
  });

  test("the sheet of rates is made", async () => {
    await keys.open("Rates", "Rates");
    await keys.press(/^Add the Rates sheet$/);
    await said(/^Added the Rates sheet: Rates!/);
    // The button has gone with its work; what was said has the keyboard.
    await keys.arrives(/^Added the Rates sheet: Rates!/);
  });

  test("job rows are filled and undone", async () => {
    await page.evaluate(() =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.add("Week");
        sheet.getRange("A1:D2").values = [
          ["Client", "Length", "Width", "Area"],
          ["Elm Row 3", 20, 4, ""],
        ];
        sheet.activate();
        sheet.getRange("B2").select();
        await context.sync();
      }),
    );
    await keys.open("Job rows", "Job rows");
    await keys.press(/^Read the list at the selection$/);
    await said("What the columns hold");
    await keys.arrives(/^Read it again$/);
    await page.keyboard.press("Escape");
    await keys.arrives(/^Read the list at the selection$/);
    await page.keyboard.press("Enter");
    await said("What the columns hold");
    await keys.press(/^Write \d+ cells?$/);
    await said(/^Wrote \d+ cells? on Week/);
    await keys.arrives(/^Read the list at the selection$/);
    // By hand: 20 ft by 4 ft.
    expect((await readCells(page, "Week", "D2")).values).toEqual([[80]]);
    await keys.press(/^Undo$/);
    await said(/^Undone: job rows on Week/);
    await keys.arrives(/^Undo$/);
  });

  test("papers are made and undone", async () => {
    await selectCells(page, "Estimate", "A4");
    await keys.open("Estimate", "Stone bed estimate");
    await keys.press(/^Insert/);
    await said(/^Added to Estimate!A4/);
    await keys.open("Job documents", "Job documents");
    await page.getByRole("group", { name: "Beds of this job" }).waitFor();
    await keys.press(/^Side bed/, "Space");
    await keys.press(/^Side bed/, "Space");
    await keys.type(/^Job$/, "Alder Court 4");
    await keys.type(/^Start date$/, "2031-03-06");
    await said("Monday, March 3, 2031");
    await keys.press(/^All three$/);
    await page.getByText("Print them from the spreadsheet program").waitFor();
    await keys.arrives(/^All three$/);
    await keys.press(/^Undo$/);
    await said(/^Removed the /);
    await keys.arrives(/./);
  });

  test("a finding is reached card by card, fixed, and the fix is undone", async () => {
    await plant({ L8: 0.6, G11: 0.25 });
    await keys.open("Check the sheets", "Check the sheets");
    await keys.press(/^Check$/);
    await page.getByRole("heading", { name: "Not checked" }).waitFor();
    await keys.arrives(/^Check$/);
    await keys.press(/^Ignore…$/);
    await keys.arrives(/^Reason$/);
    await page.keyboard.press("Escape");
    await keys.arrives(/^(Go to|Ignore|Suggested fix)/);
    await keys.open("Check the sheets", "Check the sheets");
    await keys.press(/^Check$/);
    await page.getByRole("heading", { name: "Not checked" }).waitFor();
    const card = (place: number) => page.locator(`article:focus[aria-posinset="${place}"]`);
    await page.locator("article").first().focus();
    await page.keyboard.press("PageDown");
    await card(2).waitFor();
    await page.keyboard.press("PageUp");
    await card(1).waitFor();
    const [first] = await page.locator("article h2").allTextContents();
    await keys.press(/^Fix$/);
    await said(/^Fixed: /);
    // The finding is gone, and the next one has the keyboard.
    await card(1).waitFor();
    expect(await page.locator("article h2").first().textContent()).not.toBe(first);
    await page.locator("#pane nav button").first().focus();
    await keys.press(/^Undo the fix$/);
    await said(/^Undone: /);
    await keys.arrives(/^Undo the fix$/);
  });

  test("a cell is explained, and its price leads to its cells", async () => {
    await selectCells(page, "Estimate", "B5");
    await keys.open("Explain a cell", "Explain a cell");
    await said("From quantity to price");
    await keys.press(/^Explain the selected cell$/);
    await keys.arrives(/^Explain the selected cell$/);
  });

  test("a template is saved, asked about, renamed, opened and undone", async () => {
    await selectCells(page, "Estimate", "A4");
    await keys.open("Templates", "Templates");
    await keys.press(/^Save the estimate$/);
    await keys.arrives(/^Save as template$/);
    await page.keyboard.press("Escape");
    await keys.arrives(/^Save the estimate$/);
    await page.keyboard.press("Enter");
    await keys.arrives(/^Save as template$/);
    await keys.type(/^Name$/, "Side bed, ours");
    await keys.press(/^Save in this workbook$/);
    await said(/in this workbook\./);
    await keys.arrives(/^Save the estimate$/);

    await keys.press(/^Rename Side bed, ours$/);
    await keys.arrives(/^New name for/);
    await page.keyboard.press("Escape");
    await keys.arrives(/Side bed, ours$/);
    await keys.press(/^Delete Side bed, ours$/);
    await keys.arrives(/^Keep$/);
    await page.keyboard.press("Escape");
    await keys.arrives(/Side bed, ours$/);

    await page.locator("#pane nav button").first().focus();
    await keys.press(/^Preview Side bed, ours$/);
    await keys.arrives(/^Side bed, ours$/);
    await keys.press(/^On a new sheet$/);
    await said(/Added “Side bed, ours” to/);
    await keys.arrives(/^Save the estimate$/);
    await keys.press(/^Undo$/);
    await said(/^Removed the /);
    await keys.arrives(/./);
  });

  test("a copy is looked at, let go, made and undone", async () => {
    await selectCells(page, "Jobs", "A5");
    await keys.open("Copy for others", "Copy for others");
    await keys.press(/^Preview copy$/);
    await keys.arrives(/^Preview$/);
    await page.keyboard.press("Escape");
    await keys.arrives(/^Preview copy$/);
    await page.keyboard.press("Enter");
    await keys.press(/^Make the copy$/);
    await said("Copied to Jobs plain");
    await keys.arrives(/^Preview copy$/);
    await keys.press(/^Undo$/);
    await said(/^Removed the .* from Jobs plain/);
    await keys.arrives(/^Undo$/);
    // Choosing leaves the keyboard where it chooses.
    await keys.press(/^Preview copy$/);
    await keys.arrives(/^Preview$/);
    await page.getByLabel("What to keep").focus();
    await page.keyboard.press("ArrowDown");
    await page.getByRole("button", { name: "Preview copy" }).waitFor();
    await keys.arrives(/^What to keep$/);
  });

  test("help is looked up, read, and left", async () => {
    await keys.open("Help", "Help");
    await keys.type(/^Search$/, "stone tons");
    const opened = page.waitForEvent("popup");
    await keys.press(/^BED\.STONE_TONS$/);
    const help = await opened;
    await help.getByRole("heading", { name: "BED.STONE_TONS", level: 1 }).waitFor();
    await help.close();
    await keys.arrives(/^BED\.STONE_TONS$/);
  });
});

describe.each(["light", "dark", "forced colors"] as const)("in %s", (look) => {
  test("each stop of the estimate shows that it has the keyboard, and nothing lies over it", async () => {
    await page.emulateMedia({
      colorScheme: look === "dark" ? "dark" : "light",
      forcedColors: look === "forced colors" ? "active" : "none",
    });
    await keys.open("Estimate", "Stone bed estimate");
    await page.evaluate(() => {
      for (const group of document.querySelectorAll("#pane details")) group.setAttribute("open", "");
    });
    const faults: string[] = [];
    let stops = 0;
    for (; stops < 120; stops += 1) {
      await page.keyboard.press("Tab");
      if ((await keys.focused()) === "") break;
      const fault = await focusFault(page);
      if (fault) faults.push(fault);
    }
    expect(stops).toBeGreaterThan(60);
    expect(faults).toEqual([]);
  });
});

test.each([
  {
    what: "copy",
    look: async (at: Page) => {
      await selectCells(at, "Jobs", "A5");
      await openScreen(at, "Copy for others");
      await at.getByRole("button", { name: "Preview copy" }).click();
    },
    write: "Make the copy",
    working: "Making the copy…",
    done: /^Copied to/,
  },
  {
    what: "list",
    look: async (at: Page) => {
      await selectCells(at, "Jobs", "A5");
      await openScreen(at, "Job rows");
      await at.getByRole("button", { name: "Read the list at the selection" }).click();
      await at.getByLabel("Add a result").selectOption("spoilLoads");
    },
    write: /^Write [\d,]+ cells?$/,
    working: "Writing…",
    done: /^Wrote /,
  },
  {
    what: "template",
    look: async (at: Page) => {
      await openScreen(at, "Templates");
      await at
        .getByRole("button", { name: /^Preview / })
        .first()
        .click();
    },
    write: "On a new sheet",
    working: "Writing the template…",
    done: /^Added “/,
  },
])("Escape does not deny a $what that is being written", async ({ look, write, working, done }) => {
  const { page: at } = await openPractice(browser);
  await look(at);
  const letGo = await holdWorkbook(at);
  await at.getByRole("button", { name: write }).click();
  await at.getByText(working).waitFor();
  await at.keyboard.press("Escape");
  await at.waitForTimeout(300);
  expect(await at.getByText("Nothing was written.", { exact: true }).count()).toBe(0);
  await letGo();
  await at.getByRole("status").filter({ hasText: done }).waitFor();
  await at.context().close();
});
