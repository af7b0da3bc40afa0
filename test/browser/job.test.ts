import { mkdirSync } from "node:fs";
import { resolve } from "node:path";
import ExcelJS from "exceljs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { findings } from "./accessibility";
import { launch, openPractice, picture } from "./openPractice";
import { openScreen } from "./openScreen";

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** A person at the pane, who counts what they click, choose, and type into. */
function person(page: Page) {
  let count = 0;
  return {
    count: () => count,
    press: async (name: string | RegExp) => {
      count++;
      await page.getByRole("button", { name }).click();
    },
    type: async (label: string, text: string) => {
      count++;
      await page.getByLabel(label, { exact: true }).and(page.locator(":visible")).fill(text);
    },
    tick: async (name: string) => {
      count++;
      await page.getByRole("checkbox", { name }).check();
    },
    pick: async (name: string) => {
      count++;
      await page.getByRole("radio", { name }).check();
    },
    show: async (screen: string) => {
      count++;
      await openScreen(page, screen);
    },
    open: async (group: string) => {
      count++;
      await page.locator("summary:visible", { hasText: group }).click();
    },
  };
}

/** The second cells of a sheet's rows by their labels, the last row of a label where it has several. */
function shown(page: Page, sheet: string): Promise<Record<string, unknown>> {
  return page.evaluate(
    (name) =>
      Excel.run(async (context) => {
        const used = context.workbook.worksheets.getItem(name).getUsedRange(true);
        used.load("values");
        await context.sync();
        return Object.fromEntries(used.values.map((row) => [row[0], row[1]]));
      }),
    sheet,
  );
}

const dollars = (amount: number) => amount.toLocaleString("en-US", { style: "currency", currency: "USD" });

test("four beds become one price with two options and a proposal, in at most 60 clicks and fields", async () => {
  const { page, errors } = await openPractice(browser, { bypassCSP: true });
  const { press, type, tick, pick, show, open, count } = person(page);

  await type("Bed name", "Wall strip");
  await type("Length", `32' 6 1/2"`);
  await type("Width", "3");
  await press(/^Insert/);
  await page
    .getByText(/Wall strip/)
    .last()
    .waitFor();

  await press("New bed");
  await type("Bed name", "Walk");
  await type("Length", `18' 6"`);
  await type("Width", "5");
  await open("Rounded corners");
  await type("Corner radius", "2");
  await tick("Front left corner");
  await tick("Front right corner");
  await press(/^Insert/);

  await press("New bed");
  await type("Bed name", "Tree ring");
  await pick("Round or ring");
  await type("Diameter", "8");
  await type("Inner diameter", "2");
  await press(/^Insert/);

  await press("New bed");
  await type("Bed name", "Kidney");
  await pick("Widths from a base line");
  await type("Spacing between widths", "4");
  const widths = ["0", "3", `4' 6"`, "5", "4", "2.5", "0"];
  await press("Add a width");
  await press("Add a width");
  for (const [index, width] of widths.entries()) await type(`Width ${index + 1}`, width);
  await open("Cut-outs");
  await press("Add a cut-out");
  for (const [part, text] of [
    ["along, to center", "12"],
    ["out, to center", "1.5"],
    ["across", "2"],
    ["deep", "3"],
  ] as const)
    await type(`Cut-out 1, ${part}`, text);
  await press(/^Insert/);
  await page
    .getByText(/Kidney/)
    .last()
    .waitFor();

  await show("Job documents");
  await type("Job", "Alder Court 4");
  for (const name of ["Estimate"]) {
    const other = page.getByRole("checkbox", { name: new RegExp(`${name}!`) });
    if ((await other.count()) > 0 && (await other.first().isChecked())) await other.first().uncheck();
  }
  await page.getByText(/before tax for 4 beds/).waitFor();
  expect(await findings(page)).toEqual([]);
  await picture(page, "job-price");
  await press("Add job estimate");
  await page.getByText("Added the job estimate on the sheet Alder Court 4").waitFor();
  await picture(page, "job-added");
  const price = Number((await shown(page, "Alder Court 4")).Price);
  const apart = await Promise.all(["Wall strip", "Walk", "Tree ring", "Kidney"].map((name) => shown(page, name)));
  expect(price).toBeLessThan(apart.reduce((sum, bed) => sum + Number(bed.Price), 0));
  expect(price).toBeGreaterThan(Math.max(...apart.map((bed) => Number(bed.Price))));

  // Its working can be collapsed: the rows below its two last headings.
  const hiddenRows = () =>
    page.evaluate(() =>
      Excel.run(async (context) => {
        const used = context.workbook.worksheets.getItem("Alder Court 4").getUsedRange(true);
        used.load("values");
        const rows = used.getRowProperties({ rowHidden: true });
        await context.sync();
        const labels = used.values.map(([label]) => String(label));
        return labels.filter((_, row) => rows.value[row]?.rowHidden);
      }),
    );
  await page.getByRole("button", { name: "Collapse rows" }).click();
  await page.getByText(/^Rows .* are collapsed\.$/).waitFor();
  expect(await hiddenRows()).toContain("Which kind of stone");
  expect(await hiddenRows()).not.toContain("From each bed");
  await picture(page, "job-collapsed");
  await page.getByRole("button", { name: "Expand rows" }).click();
  expect(await hiddenRows()).toEqual([]);

  await open("Add an option");
  await type("Stone", "crushed granite");
  await press("Add option");
  await page.getByText("Added Option 2 on the sheet Alder Court 4 Option 2").waitFor();
  await picture(page, "job-options");
  expect(await findings(page)).toEqual([]);
  const option = Number((await shown(page, "Alder Court 4 Option 2"))["Total due"]);
  // The first version's sheet has both side by side.
  expect((await shown(page, "Alder Court 4"))["Option 2"]).toBe(option);

  await tick("These are sample prices; make it anyway");
  const [file] = await Promise.all([page.waitForEvent("download"), press("Open the proposal")]);
  expect(count()).toBeLessThanOrEqual(60);

  const path = resolve(import.meta.dirname, "../../test-output/job-proposal.xlsx");
  mkdirSync(resolve(path, ".."), { recursive: true });
  await file.saveAs(path);
  const book = new ExcelJS.Workbook();
  await book.xlsx.readFile(path);
  const cells: unknown[] = [];
  book.worksheets[0]!.eachRow((row) => row.eachCell((cell) => cells.push(cell.value)));
  for (const amount of [price, option]) expect(cells).toContainEqual(expect.closeTo(amount, 6));
  expect(cells.map(String).join(" ")).toContain("crushed granite");

  // A bed that is taped again changes the job, and the pane says so once it reads again.
  await page.evaluate(() =>
    Excel.run(async (context) => {
      const used = context.workbook.worksheets.getItem("Walk").getUsedRange(true);
      used.load("values");
      await context.sync();
      const row = used.values.findIndex(([label]) => label === "Length");
      context.workbook.worksheets.getItem("Walk").getRange(`B${row + 1}`).values = [[25]];
      await context.sync();
    }),
  );
  await expect.poll(async () => Number((await shown(page, "Alder Court 4")).Price)).toBeGreaterThan(price);
  const now = Number((await shown(page, "Alder Court 4")).Price);
  await press("Refresh");
  await page.getByText(dollars(now)).first().waitFor();

  // A stone that the job has no line for: the pane says so, shows what an update changes, and writes it in place.
  await page.evaluate(() =>
    Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Walk");
      const used = sheet.getUsedRange(true);
      used.load("values");
      await context.sync();
      const row = used.values.findIndex(([label, value]) => label === "Stone" && value === "river rock");
      sheet.getRange(`B${row + 1}`).values = [["pea gravel"]];
      await context.sync();
    }),
  );
  await press("Refresh");
  await page.getByText("lines for another stone: pea gravel, to 1.25 in").waitFor();
  await picture(page, "job-outdated");
  await press("Update job estimate");
  const dialog = page.getByRole("dialog");
  await dialog.getByText(/rows added/).waitFor();
  expect(await findings(page)).toEqual([]);
  await picture(page, "job-update");
  await dialog.getByRole("button", { name: "Update", exact: true }).click();
  await page.getByText("Updated the job estimate at 'Alder Court 4'!A1").waitFor();
  await expect.poll(async () => Number((await shown(page, "Alder Court 4")).Price)).toBeGreaterThan(0);
  await picture(page, "job-updated");
  await press("Undo");
  await page.getByText("The update is undone.").waitFor();
  expect(errors).toEqual([]);
  await page.context().close();
});
