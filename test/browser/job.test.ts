import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { findings } from "./accessibility";
import { chooseCell } from "./cells";
import { launch, openPractice, picture } from "./openPractice";

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).click();

/** The first cells of a sheet's rows by their labels, the last row of a label where it has several. */
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

/** Three invented beds of one customer. */
const BEDS = [
  { name: "Wall strip", length: `32' 6 1/2"`, width: "3" },
  { name: "Walk", length: `18' 6"`, width: "5" },
  { name: "Back strip", length: `13' 4"`, width: "4" },
];

async function insertBed(page: Page, { name, length, width }: (typeof BEDS)[number]): Promise<void> {
  await page.evaluate(
    (wanted) =>
      Excel.run(async (context) => {
        const worksheet = context.workbook.worksheets.add(wanted);
        worksheet.activate();
        worksheet.getRange("A1").select();
        await context.sync();
      }),
    name,
  );
  await press(page, "New bed");
  await page.getByLabel("Bed name").fill(name);
  await page.getByLabel("Length", { exact: true }).fill(length);
  await page.getByLabel("Width", { exact: true }).fill(width);
  await chooseCell(page);
  await press(page, /^Insert/);
  await page.getByText(`The estimate stands on ${name}`).waitFor();
}

test("three beds are priced as one job, in a live sheet that the proposal follows", async () => {
  const { page, errors } = await openPractice(browser, { bypassCSP: true, acceptDownloads: true });
  for (const bed of BEDS) await insertBed(page, bed);
  await press(page, "Job papers");
  await page.getByLabel("Job", { exact: true }).fill("Alder Court 4");
  await page.getByText(/before tax for 3 beds/).waitFor();
  expect(await findings(page)).toEqual([]);
  await picture(page, "job-price");
  const [, apart = ""] = /they come to \$([\d,.]+)/.exec(await page.locator("#pane, body").first().innerText()) ?? [];
  await press(page, /^Add job estimate/);
  await page.getByText("Added the job estimate on the sheet Alder Court 4").waitFor();
  await picture(page, "job-added");
  const job = await shown(page, "Alder Court 4");
  const price = Number(job.Price);
  expect(price).toBeGreaterThan(500);
  if (apart) expect(price).toBeLessThan(Number(apart.replaceAll(",", "")));

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
  await press(page, "Read again");
  await page
    .getByText(`$${now.toLocaleString("en-US", { minimumFractionDigits: 2 })}`)
    .first()
    .waitFor();
  await picture(page, "job-changed");
  expect(errors).toEqual([]);
  await page.context().close();
});
