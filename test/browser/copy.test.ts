import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launch, openPractice, picture } from "./openPractice";

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  ({ page } = await openPractice(browser));
});
afterAll(() => browser.close());

function read(sheet: string, address: string): Promise<{ values: unknown[][]; formulas: unknown[][] }> {
  return page.evaluate(
    ([name, at]) =>
      Excel.run(async (context) => {
        const range = context.workbook.worksheets.getItem(name!).getRange(at);
        range.load("values,formulas");
        await context.sync();
        return { values: range.values, formulas: range.formulas };
      }),
    [sheet, address],
  );
}

const ROWS = "J5:N17";

test("a copy in ordinary formulas shows the same numbers without one function of ours, and follows a change", async () => {
  const original = await read("Jobs", ROWS);
  await page.getByRole("button", { name: "Copy for others" }).click();
  await page.getByRole("button", { name: "Copy this sheet" }).click();
  await page.getByText("The copy stands on Jobs plain.").waitFor();
  const copy = await read("Jobs plain", "A1:N17");
  const numbers = (await read("Jobs plain", ROWS)).values;
  for (const [at, row] of numbers.entries()) {
    for (const [column, value] of row.entries()) {
      expect(value).toBeCloseTo(Number(original.values[at]?.[column]), 9);
    }
  }
  expect(copy.formulas.flat().filter((content) => /BED\./.test(String(content)))).toEqual([]);
  // 18' 6" is 18.5 ft.
  expect(copy.formulas[4]?.[2]).toBe(18.5);
  await picture(page, "copy-plain");

  await page.evaluate(() =>
    Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Jobs plain").getRange("C5").values = [[20]];
      context.workbook.worksheets.getItem("Jobs").getRange("C5").values = [[20]];
      await context.sync();
    }),
  );
  const [changed, followed] = [await read("Jobs", ROWS), await read("Jobs plain", ROWS)];
  expect(followed.values[0]?.[0]).toBeCloseTo(Number(changed.values[0]?.[0]), 9);
});

test("a copy of values holds no formula", async () => {
  await page.evaluate(() =>
    Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Jobs").activate();
      await context.sync();
    }),
  );
  await page.getByLabel("What to make").selectOption("values only");
  await page.getByRole("button", { name: "Copy this sheet" }).click();
  await page.getByText("The copy stands on Jobs values.").waitFor();
  const { formulas } = await read("Jobs values", "A1:N17");
  expect(formulas.flat().filter((content) => String(content).startsWith("="))).toEqual([]);
});
