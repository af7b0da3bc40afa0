import type { Page } from "playwright-core";

/** `Jobs!C5` as its sheet and its cells. */
export function placeOf(address: string): [sheet: string, cells: string] {
  const [sheet = "", cells = ""] = address.split("!");
  return [sheet, cells];
}

/** Values and formulas of cells, read as the product itself reads them. */
export function readCells(
  page: Page,
  sheet: string,
  cells: string,
): Promise<{ values: unknown[][]; formulas: unknown[][] }> {
  return page.evaluate(
    ([name, at]) =>
      Excel.run(async (context) => {
        const range = context.workbook.worksheets.getItem(name!).getRange(at);
        range.load("values,formulas");
        await context.sync();
        return { values: range.values, formulas: range.formulas };
      }),
    [sheet, cells],
  );
}

/** Has the pane's estimates go to the selected cell from here on; a new sheet is the default. */
export async function chooseCell(page: Page): Promise<void> {
  await page.getByLabel("Where it goes").selectOption("cell");
}

/** Brings a sheet to the front and selects cells of it. */
export function selectCells(page: Page, sheet: string, cells: string): Promise<void> {
  return page.evaluate(
    ([name, at]) =>
      Excel.run(async (context) => {
        const worksheet = context.workbook.worksheets.getItem(name!);
        worksheet.activate();
        worksheet.getRange(at).select();
        await context.sync();
      }),
    [sheet, cells],
  );
}
