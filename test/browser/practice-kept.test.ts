import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { untilKept } from "./kept";
import { launch, openPractice, picture, ready } from "./openPractice";

/*
 * What the grid itself has no room for, or reads only once, in the browser's own build of it: names, tables, pages.
 */
let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

test("names, tables and pages survive a reload, and formulas follow the names", async () => {
  const { page, errors } = await openPractice(browser);
  const calls = await page.evaluate(() =>
    Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.add("Kept");
      sheet.getRange("A1:C3").formulas = [
        ["Item", "Price", "Twice"],
        ["Stone", 38, "=Rate_kept*2"],
        ["", "", '=IFERROR(Rate_other,"no rate")'],
      ];
      await context.sync();
      context.workbook.names.add("Rate_kept", sheet.getRange("B2"));
      const table = sheet.tables.add("A1:C3", true);
      table.name = "Kept_list";
      sheet.pageLayout.orientation = "Landscape";
      sheet.horizontalPageBreaks.add("A3");
      sheet.getRange("A2:C2").setCellProperties([
        [
          {
            format: { borders: { bottom: { style: "Continuous", color: "#24413A" } }, font: { underline: "Single" } },
          },
          {},
          {},
        ],
      ]);
      sheet.activate();
      const read = sheet.getRange("C2:C3").load("values");
      await context.sync();
      return read.values;
    }),
  );
  expect(calls).toEqual([[76], ["no rate"]]);
  await picture(page, "practice-kept");
  await untilKept(page, "Kept_list");
  await page.reload();
  await ready(page);
  const kept = await page.evaluate(() =>
    Excel.run(async (context) => {
      const { names, tables, worksheets } = context.workbook;
      const sheet = worksheets.getItem("Kept");
      sheet.getRange("B2").values = [[40]];
      names.add("Rate_other", sheet.getRange("B2"));
      const range = sheet.getRange("C2:C3").load("values");
      const area = tables.getItem("Kept_list").getRange().load("address");
      sheet.pageLayout.load("orientation");
      const breaks = sheet.horizontalPageBreaks.getCount();
      await context.sync();
      return [range.values, area.address, sheet.pageLayout.orientation, breaks.value];
    }),
  );
  expect(kept).toEqual([[[80], [40]], "Kept!A1:C3", "Landscape", 1]);
  expect(errors).toEqual([]);
});
