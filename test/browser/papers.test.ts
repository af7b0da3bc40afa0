import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import ExcelJS from "exceljs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { unzip } from "../unzip";
import { findings } from "./accessibility";
import { chooseCell } from "./cells";
import { launch, openPractice, picture } from "./openPractice";
import { openScreen } from "./openScreen";
import { slowEdging, typePastJobs } from "./pastJobs";

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** What a proposal's file must not hold: formulas, names but those of printing, notes, and words of our calculating. */
const TELLTALE = /<f[ >]|<definedName name="(?!_xlnm\.Print)|hidden="1"|<comment|markup|overhead|Rate_|unit cost/i;

/** Three invented beds of one job. */
const BEDS = [
  { name: "Front strip", length: `18' 6"`, width: "5" },
  { name: "Side strip", length: "22", width: "3" },
  { name: "Back strip", length: "13' 4\"", width: "4" },
];

async function insertBed(page: Page, { name, length, width }: (typeof BEDS)[number], sheet: string): Promise<void> {
  await page.evaluate(
    (wanted) =>
      Excel.run(async (context) => {
        const worksheet = context.workbook.worksheets.add(wanted);
        worksheet.activate();
        worksheet.getRange("A1").select();
        await context.sync();
      }),
    sheet,
  );
  await page.getByRole("button", { name: "New bed" }).click();
  await page.getByLabel("Bed name").fill(name);
  await page.getByLabel("Length", { exact: true }).fill(length);
  await page.getByLabel("Width", { exact: true }).fill(width);
  await chooseCell(page);
  await page.getByRole("button", { name: /^Insert/ }).click();
  await page.getByText(`Added to ${sheet}`).waitFor();
}

function values(page: Page, sheet: string): Promise<unknown[][]> {
  return page.evaluate(
    (name) =>
      Excel.run(async (context) => {
        const used = context.workbook.worksheets.getItem(name).getUsedRange(true);
        used.load("values");
        await context.sync();
        return used.values;
      }),
    sheet,
  );
}

const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: true }).click();
const labelled = (rows: unknown[][], column: number, label: string) => rows.find((row) => row[column] === label);

describe("a job of three beds", () => {
  test("is handed over as four pieces of paper, comes back with what was used, and fixes a rate", async () => {
    const { page, errors } = await openPractice(browser, { bypassCSP: true });
    await openScreen(page, "Rates");
    await press(page, "Add the Rates sheet");
    await page
      .getByText(/Added the Rates sheet/i)
      .first()
      .waitFor();
    await openScreen(page, "Estimate");
    for (const [index, bed] of BEDS.entries()) await insertBed(page, bed, `Bed ${index + 1}`);

    await openScreen(page, "Job documents");
    for (const { name } of BEDS) await page.getByRole("checkbox", { name: new RegExp(`^${name} Bed`) }).waitFor();
    await page.getByLabel("Job", { exact: true }).fill("Alder Court 4");
    await page.getByLabel("Job site").fill("4 Alder Court, an invented place");
    const start = page.getByLabel("Start date", { exact: true });
    await start.fill("3/6/2031");
    await page.getByText("= 3/6/2031 (Thu)").waitFor();
    await press(page, "Pick a date: Start date");
    expect(await start.inputValue()).toBe("3/6/2031 (Thu)");
    await page.keyboard.press("Escape");
    // Two full working days before Thursday 2031-03-06: notice by Monday 2031-03-03.
    await page.getByText("Monday, March 3, 2031").waitFor();
    expect(await findings(page)).toEqual([]);
    await picture(page, "papers-chosen");

    await press(page, "All three");
    await page.getByText("Print them from the spreadsheet program").waitFor();
    const order = await values(page, "Order Alder Court 4");
    const crew = await values(page, "Crew Alder Court 4");
    const notice = await values(page, "Dig notice Alder Court 4");
    expect(notice.flat().join(" ")).toContain("Monday, March 3, 2031");

    // What is in the blocks, added up, is what is on paper.
    const blocks = await Promise.all(BEDS.map((_, index) => values(page, `Bed ${index + 1}`)));
    const added = (label: string) =>
      blocks.reduce((sum, rows) => sum + Number(rows.findLast((row) => row[0] === label)?.[1]), 0);
    const pins = labelled(order, 0, "Pins");
    expect(pins?.[4]).toBe(added("Pins"));
    const stone = labelled(order, 0, "river rock");
    expect(stone?.[4]).toBeCloseTo(
      blocks.reduce(
        (sum, rows) => sum + Number(rows.find((row) => row[0] === "Stone needed" && row[2] === "tons")?.[1]),
        0,
      ),
      9,
    );
    expect(crew.flat().join(" ")).toContain(`${added("Pins")} pins set`);
    await picture(page, "papers-notice");
    // Each bed is drawn as large as its page allows: as wide as the sheet, or as high as the page.
    const drawings = await page.evaluate(() =>
      Excel.run(async (context) => {
        const worksheet = context.workbook.worksheets.getItem("Crew Alder Court 4");
        worksheet.activate();
        const sheetWide = worksheet.getRange("A1:F1").load("width");
        const breaks = worksheet.horizontalPageBreaks.load("items");
        worksheet.shapes.load("items/width,items/height");
        await context.sync();
        const sizes = worksheet.shapes.items.map(({ width, height }) => [width / sheetWide.width, height]);
        return { sizes, pages: breaks.items.length + 1 };
      }),
    );
    expect(drawings.sizes).toHaveLength(3);
    // 9.9 in of 72 points are printed at about 78%.
    for (const [wide, high] of drawings.sizes) expect(Math.max(wide!, high! / 830)).toBeGreaterThan(0.95);
    expect(drawings.pages).toBe(5);
    await picture(page, "papers-crew");

    // These blocks still rest on sample prices.
    const open = page.getByRole("button", { name: "Open the proposal" });
    expect(await open.isDisabled()).toBe(true);
    await page.getByText(/^Sample prices: Front strip, Side strip, Back strip \(/).waitFor();
    await page.getByLabel("License number").fill("OH 12345");
    await page.getByLabel("Proposal number").fill("26-014");
    await page.getByLabel("Deposit").fill("30");
    await page.getByRole("checkbox", { name: "These are sample prices; make it anyway" }).check();
    expect(await findings(page)).toEqual([]);
    await picture(page, "papers-proposal");
    const [file] = await Promise.all([page.waitForEvent("download"), open.click()]);
    const folder = resolve(import.meta.dirname, "../../test-output");
    mkdirSync(folder, { recursive: true });
    const path = resolve(folder, "proposal.xlsx");
    await file.saveAs(path);
    // The beds are priced as one job, which costs less than their own prices together.
    const [, said = ""] = /\$([\d,.]+) before tax for 3 beds/.exec(await page.locator("#pane").innerText()) ?? [];
    const price = Number(said.replaceAll(",", ""));
    expect(price).toBeGreaterThan(1000);
    expect(price).toBeLessThan(blocks.reduce((sum, rows) => sum + Number(rows[1]?.[1]), 0));
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(path);
    const cells: unknown[] = [];
    book.worksheets[0]!.eachRow((row) => row.eachCell((cell) => cells.push(cell.value)));
    expect(book.worksheets).toHaveLength(1);
    // Total due, deposit, balance: 30% to the cent.
    const deposit = Math.round(price * 30) / 100;
    const [total, first, rest] = cells.filter((cell) => typeof cell === "number").slice(-3);
    expect([total, first, rest]).toEqual([price, deposit, price - deposit].map((amount) => Number(amount.toFixed(2))));
    expect(cells).toEqual(expect.arrayContaining(["OH 12345", "26-014"]));
    for (const [part, text] of unzip(readFileSync(path))) {
      // The namespace of the file format itself has "markup" in its name.
      const told = text.replaceAll("markup-compatibility", "");
      expect(told.match(TELLTALE)?.[0], part).toBeUndefined();
    }

    await page.getByText("Type what was actually used").click();
    // The crew took a quarter longer to set the edging than planned.
    const planned = Number(
      (
        (await page
          .getByText(/^planned /)
          .nth(1)
          .textContent()) ?? ""
      ).replace("planned ", ""),
    );
    await page.getByLabel("Set edging, actual").fill(String(planned * 1.25));
    await press(page, "Add to past jobs");
    await page.getByText(/lines? added to past jobs/).waitFor();
    await page.getByText(/It takes 5 to suggest a rate/).waitFor();
    // Five more invented jobs.
    await typePastJobs(page, slowEdging);
    await press(page, "Refresh");
    const change = page.getByRole("button", { name: /Change “Set edging”/ });
    await change.waitFor();
    expect(await findings(page)).toEqual([]);
    await change.scrollIntoViewIfNeeded();
    await picture(page, "papers-lessons");
    await change.click();
    await page.getByText("changed with it").waitFor();
    const rates = await values(page, "Rates");
    // 14 lin ft/hr and a median of 1.245: 11.2, which an office writes as 11.
    expect(rates.flat()).toContain(11);
    await press(page, "Undo the rate change");
    await page.getByText("The rate is back to what it was.").waitFor();
    expect((await values(page, "Rates")).flat()).toContain(14);
    expect(errors).toEqual([]);
    writeFileSync(resolve(folder, "papers-order.json"), JSON.stringify(order));
  });
});
