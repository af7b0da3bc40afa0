import ExcelJS from "exceljs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findings } from "./accessibility";
import { chooseCell, readCells as read, selectCells as select } from "./cells";
import { launch, openPractice, picture } from "./openPractice";
import { openScreen } from "./openScreen";

const ROWS = "J5:N17";

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

async function open(): Promise<Page> {
  // The checker itself comes in past the page's content security policy.
  const { page } = await openPractice(browser, { bypassCSP: true });
  return page;
}

const press = (page: Page, name: string) => page.getByRole("button", { name }).click();
const look = (page: Page) => press(page, "Preview copy");

describe("a copy", () => {
  test("shows what it will be, shows the same numbers without one function of ours, and follows a change", async () => {
    const page = await open();
    const original = await read(page, "Jobs", "A1:N17");
    const rows = await read(page, "Jobs", ROWS);
    await openScreen(page, "Copy for others");
    expect(await findings(page)).toEqual([]);
    await look(page);
    await page.getByText("on a new sheet, Jobs plain").waitFor();
    await page.getByText("Taped lengths that become numbers (20)").click();
    await page.getByText(`C5: 18' 6" becomes 18.5 ft`).waitFor();
    expect(await findings(page)).toEqual([]);
    await picture(page, `copy-preview`);
    // Nothing was written yet.
    expect(await page.getByText("Jobs plain", { exact: true }).count()).toBe(0);
    await press(page, "Make the copy");
    await page.getByText("Copied to Jobs plain").waitFor();
    expect(await findings(page)).toEqual([]);
    await picture(page, `copy-plain`);

    const copy = await read(page, "Jobs plain", "A1:N17");
    const numbers = (await read(page, "Jobs plain", ROWS)).values;
    numbers.forEach((row, at) => {
      row.forEach((value, column) => {
        expect(value).toBeCloseTo(Number(rows.values[at]?.[column]), 9);
      });
    });
    expect(copy.formulas.flat().filter((content) => /BED\./.test(String(content)))).toEqual([]);
    // 18' 6" is 18.5 ft.
    expect(copy.formulas[4]?.[2]).toBe(18.5);
    expect(await read(page, "Jobs", "A1:N17")).toEqual(original);

    await page.evaluate(() =>
      Excel.run(async (context) => {
        for (const name of ["Jobs plain", "Jobs"])
          context.workbook.worksheets.getItem(name).getRange("C5").values = [[20]];
        await context.sync();
      }),
    );
    const [changed, followed] = [await read(page, "Jobs", ROWS), await read(page, "Jobs plain", ROWS)];
    expect(followed.values[0]?.[0]).toBeCloseTo(Number(changed.values[0]?.[0]), 9);
    await page.context().close();
  });
});

test("a copy of values holds no formula, and can be undone", async () => {
  const page = await open();
  await openScreen(page, "Copy for others");
  await page.getByLabel("What to keep").selectOption("values only");
  await look(page);
  await page.getByText("No formulas are left").waitFor();
  await press(page, "Make the copy");
  await page.getByText("Copied to Jobs values").waitFor();
  const { formulas } = await read(page, "Jobs values", "A1:N17");
  expect(formulas.flat().filter((content) => String(content).startsWith("="))).toEqual([]);
  await press(page, "Undo");
  await page.getByText("Removed the copy of Jobs from Jobs values").waitFor();
  await page.context().close();
});

test("selected cells go to a cell that is selected next, and never over anything", async () => {
  const page = await open();
  await openScreen(page, "Copy for others");
  await page.getByLabel("What to copy").selectOption("cells");
  await page.getByLabel("Copy to").selectOption("cell");
  await select(page, "Jobs", "A4:N6");
  await look(page);
  await page.getByText("starting at the cell you select").waitFor();
  await select(page, "Jobs", "B7");
  await press(page, "Put it at Jobs!B7");
  await page.getByText("Nothing was written. The copy needs B7:").waitFor();
  expect(await findings(page)).toEqual([]);
  await picture(page, "copy-in-the-way");
  const free = page.getByRole("button", { name: /^Put it at / });
  const address = (await free.textContent())!.replace("Put it at ", "");
  await free.click();
  await page.getByText(`Copied to Jobs!${address}:`).waitFor();
  await page.context().close();
});

test("an estimate block becomes a workbook of its own, with the same price, which opens elsewhere", async () => {
  const page = await open();
  await page.getByLabel("Bed name").fill("Front walk");
  await page.getByLabel("Length", { exact: true }).fill(`18' 6"`);
  await page.getByLabel("Width", { exact: true }).fill("5");
  await select(page, "Estimate", "A4");
  await chooseCell(page);
  await page.getByRole("button", { name: /^Insert/ }).click();
  await page.getByText("Added to Estimate!A4").waitFor();
  const live = await read(page, "Estimate", "A4:B6");

  await openScreen(page, "Copy for others");
  await page.getByLabel("What to copy").selectOption("block");
  await page.getByLabel("Copy to").selectOption("workbook");
  await look(page);
  await page.getByText("as a separate workbook.").waitFor();
  expect(await findings(page)).toEqual([]);
  await picture(page, "copy-workbook-preview");
  const downloading = page.waitForEvent("download");
  await press(page, "Open the copy");
  const download = await downloading;
  await page.getByText("The copy is open as a separate workbook").waitFor();
  await picture(page, "copy-workbook");
  const book = new ExcelJS.Workbook();
  await book.xlsx.readFile((await download.path())!);
  const sheet = book.worksheets[0]!;
  expect(sheet.name).toBe("Front walk");
  expect(sheet.getCell("B2").result).toBeCloseTo(Number(live.values[1]?.[1]), 9);
  expect(sheet.getCell("B2").formula).toBeTruthy();
  // The dark heading of the block.
  expect(sheet.getCell("A1").fill).toMatchObject({ fgColor: { argb: "FF24413A" } });
  await page.context().close();
});
