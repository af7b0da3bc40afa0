import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { chooseCell, readCells, selectCells } from "./cells";
import { launch, openPractice, picture } from "./openPractice";
import { openScreen } from "./openScreen";

/*
 * Text that would be markup, script or formula somewhere else goes through the screens and into the workbook: it shows as
 * it was typed, no element and no script comes of it, and the page's own policy has nothing to stop.
 */
let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const NAME = `<img src=x onerror=alert(1)><script>alert(2)</script>`;
const FORMULA = `=HYPERLINK("https://tools.example","a")`;

const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: true }).click();

/** What came of text as markup: elements that it names, and addresses that it would lead to. */
const made = (page: Page) =>
  page.evaluate(() => ({
    images: document.querySelectorAll('img[src="x"], [onerror]').length,
    inline: [...document.scripts].filter((script) => !script.src).length,
    links: document.querySelectorAll('[href^="javascript:" i]').length,
  }));

test("hostile words show as words on every screen, and stand as words in every cell", async () => {
  const dialogs: string[] = [];
  const { page, errors, outside } = await openPractice(browser);
  page.on("dialog", (dialog) => {
    dialogs.push(dialog.message());
    void dialog.dismiss();
  });
  await page.evaluate(() => {
    document.addEventListener("securitypolicyviolation", (event) =>
      console.error(`policy: ${event.violatedDirective}`),
    );
  });

  // A bed by that name: preview, drawing, block and picture.
  await page.getByLabel("Bed name").fill(NAME);
  await page.getByLabel("Length", { exact: true }).fill(`18' 6"`);
  await page.getByLabel("Width", { exact: true }).fill("5");
  await selectCells(page, "Estimate", "A4");
  await chooseCell(page);
  await press(page, /^Insert/);
  await page.getByText("Added to Estimate!A4").waitFor();
  expect((await readCells(page, "Estimate", "B4")).values).toEqual([[NAME]]);
  expect(await made(page)).toEqual({ images: 0, inline: 0, links: 0 });
  await picture(page, "text-only-estimate");

  // A sheet by such a name, a cell with a formula as text, and one with markup; checked, reported and explained.
  await page.evaluate(
    ([name, formula]) =>
      Excel.run(async (context) => {
        const jobs = context.workbook.worksheets.getItem("Jobs");
        jobs.name = "<b>Jobs</b>".replaceAll("/", "");
        jobs.getRange("B5:B6").values = [[`'${name}`], [`'${formula}`]];
        jobs.getRange("C5").values = [["'<i>7</i>"]];
        await context.sync();
      }),
    [NAME, FORMULA] as const,
  );
  await openScreen(page, "Check the sheets");
  await press(page, "Check");
  await page.getByRole("heading", { name: "Not checked" }).waitFor();
  await press(page, "Add the report as a sheet");
  await page.getByText("Added the report as").waitFor();
  expect(await made(page)).toEqual({ images: 0, inline: 0, links: 0 });
  await selectCells(page, "<b>Jobs<b>", "C5");
  await openScreen(page, "Explain a cell");
  await page.getByRole("heading", { name: "Explain a cell" }).waitFor();
  expect(await made(page)).toEqual({ images: 0, inline: 0, links: 0 });

  // A template by that name, with that text in it.
  await openScreen(page, "Templates");
  await selectCells(page, "<b>Jobs<b>", "B5:B6");
  await press(page, "Save the selected cells");
  await page.getByLabel("Name", { exact: true }).fill(NAME);
  await page.getByLabel("Note for the person who opens it").fill(FORMULA);
  await press(page, "Save in this workbook");
  await page.getByText("in this workbook.").waitFor();
  await press(page, `Preview ${NAME}`);
  await page.getByRole("heading", { name: NAME }).waitFor();
  expect(await made(page)).toEqual({ images: 0, inline: 0, links: 0 });
  await picture(page, "text-only-template");

  // The papers of a job by that name.
  await openScreen(page, "Job documents");
  await page.getByLabel("Job", { exact: true }).fill(NAME);
  await page.getByLabel("Your company", { exact: true }).fill(FORMULA);
  await press(page, "Order");
  await page.getByText("Print them from the spreadsheet program").waitFor();
  const order = await page.evaluate(() =>
    Excel.run(async (context) => {
      const used = context.workbook.worksheets.getActiveWorksheet().getUsedRange().load("values,formulas");
      await context.sync();
      return { values: used.values.flat(), formulas: used.formulas.flat() };
    }),
  );
  expect(order.values.join("\n")).toContain(NAME);
  expect(order.values).toContain(FORMULA);
  // The host gives such text as it gives a formula; a formula would show something else.
  const woken = order.formulas.filter(
    (formula, index) => String(formula).startsWith("=H") && formula !== order.values[index],
  );
  expect(woken).toEqual([]);
  expect(await made(page)).toEqual({ images: 0, inline: 0, links: 0 });
  await picture(page, "text-only-papers");
  expect({ dialogs, errors, outside }).toEqual({ dialogs: [], errors: [], outside: [] });
});
