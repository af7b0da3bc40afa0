import type { Page } from "playwright-core";

const CELL = "J40";

/**
 * Types into an empty cell of the practice workbook with mouse and keyboard, once the first cell can be used.
 *
 * @returns the value that the cell shows once it is worked out.
 */
export async function typeIntoCell(page: Page, text: string): Promise<unknown> {
  await page.waitForFunction(() => performance.getEntriesByName("Bedrow first cell usable").length > 0, undefined, {
    timeout: 300_000,
  });
  // A click gives the grid the keyboard.
  const box = await page.locator("#practice-grid").boundingBox();
  if (!box) throw new Error("The grid isn't on the screen.");
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  await page.evaluate(
    (at) =>
      Excel.run(async (context) => {
        context.workbook.worksheets.getActiveWorksheet().getRange(at).select();
        await context.sync();
      }),
    CELL,
  );
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
  const value = await page.waitForFunction(
    (at) =>
      Excel.run({ delayForCellEdit: true }, async (context) => {
        const range = context.workbook.worksheets.getActiveWorksheet().getRange(at).load("values");
        await context.sync();
        const [[shown]] = range.values as [[unknown]];
        return shown === "" ? undefined : { shown };
      }),
    CELL,
    { timeout: 120_000 },
  );
  return (await value.jsonValue())?.shown;
}
