import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findings } from "./accessibility";
import { readCells as read } from "./cells";
import { launch, openPractice, picture } from "./openPractice";
import { openScreen } from "./openScreen";

/** An invented list in other words, order and units than ours, with a blank row, a note and a row of totals. */
const LIST: readonly (readonly (string | number)[])[] = [
  ["Beds for the week", "", "", "", "", "", ""],
  ["", "", "", "", "", "", ""],
  ["Client", "Where", "L m", "Width", "Depth – cm", "Rock (tons)", "Size"],
  ["Elm Row 3", "front", 6.096, "4'", 6.35, "", "big"],
  ["Elm Row 3", "back", "20 ft", 4, 6.35, 0.7, "big"],
  ["", "", "", "", "", "", ""],
  ["gate code is with the office", "", "", "", "", "", ""],
  ["Total", "", "", "", "", "=SUM(F4:F5)", ""],
];

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

async function open(): Promise<Page> {
  // The checker itself comes in past the page's content security policy.
  const { page } = await openPractice(browser, {
    bypassCSP: true,
    viewport: { width: 1280, height: 1100 },
  });
  await openScreen(page, "Job rows");
  await page.getByRole("heading", { name: "Job rows" }).waitFor();
  return page;
}

/** Puts a list on a new sheet, and selects a cell in it. */
function putList(page: Page): Promise<void> {
  return page.evaluate(
    (rows) =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.add("Week");
        const range = sheet.getRangeByIndexes(0, 0, rows.length, rows[0]!.length);
        range.formulas = rows.map((row) =>
          row.map((cell) => (/^\d/.test(String(cell)) && typeof cell === "string" ? `'${cell}` : cell)),
        );
        sheet.activate();
        sheet.getRange("C5").select();
        await context.sync();
      }),
    LIST,
  );
}

const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).click();
const readList = (page: Page) => press(page, "Read the list at the selection");

/** A picture of the whole pane, however long it is. */
async function panePicture(page: Page, name: string): Promise<void> {
  const height = await page.evaluate(() => document.querySelector("#pane")!.scrollHeight);
  await page.setViewportSize({ width: 1280, height: Math.min(4000, Math.max(1100, height + 80)) });
  await picture(page, name);
  await page.setViewportSize({ width: 1280, height: 1100 });
}

describe("a list of the office's own", () => {
  test("is read, asked about, shown, written and undone", async () => {
    const page = await open();
    await putList(page);
    const before = await read(page, "Week", "A1:L8");
    expect(await findings(page)).toEqual([]);
    await readList(page);
    await page.getByText("One heading can be read more than one way").waitFor();
    await page.getByText(/of 6 columns besides are used/).click();
    await page.getByLabel("D “Width”").waitFor();
    // Left alone at first: someone typed a number into F5.
    await page.getByText("Kept as they are (1)").waitFor();
    await page.getByLabel("Add a result").selectOption("area");
    await press(page, "Move Area earlier");
    expect(await findings(page)).toEqual([]);
    await panePicture(page, `job-rows-fit`);
    expect(await read(page, "Week", "A1:L8")).toEqual(before);

    await page.getByLabel(/Replace 1 filled cell in/).check();
    await page.getByRole("cell", { name: "0.7", exact: true }).waitFor();
    expect(await findings(page)).toEqual([]);
    await panePicture(page, `job-rows-write-over`);
    await press(page, /^Write 5 cells/);
    await page.getByText("Wrote 5 cells on Week, for 2 beds").waitFor();
    await picture(page, `job-rows-written`);
    const { values, formulas } = await read(page, "Week", "F3:H8");
    // By hand: 20 ft × 4 ft = 80 sq ft; 80 × 2.5 in × 1.35 ÷ 324 × 1.08 = 0.9 tons of river rock (6.096 m, 6.35 cm).
    expect(values[1]?.[0]).toBeCloseTo(0.9, 6);
    expect(values[2]?.[0]).toBeCloseTo(0.9, 6);
    expect(values[5]?.[0]).toBeCloseTo(1.8, 6);
    expect(values.map((row) => row[2]).slice(0, 3)).toEqual(["Area, sq ft", 80, 80]);
    expect([formulas[3], formulas[4]]).toEqual([
      ["", "", ""],
      ["", "", ""],
    ]);
    await press(page, "Undo");
    await page.getByText("Undone: job rows on Week").waitFor();
    expect(await read(page, "Week", "A1:L8")).toEqual(before);
    await page.context().close();
  });
});

test("the practice list is fitted whole, and there is nothing to write", async () => {
  const page = await open();
  await readList(page);
  await page.getByText("14 of 14 columns are used").waitFor();
  await page.getByText("all 12 cells already say this").first().waitFor();
  expect(await page.getByRole("button", { name: "Nothing to write" }).isDisabled()).toBe(true);
  await page.context().close();
});

test("a list is started by keyboard alone, refuses to be on anything, reads back, and is undone", async () => {
  const page = await open();
  await page.getByLabel("What you have").selectOption("start");
  expect(await findings(page)).toEqual([]);
  const first = page.getByRole("group", { name: "The first bed" });
  await first.getByLabel("Bed").fill("Front walk");
  await first.getByLabel("Length").fill(`18' 6"`);
  await first.getByLabel("Width").fill("5");
  // How deep the beds are is asked, not assumed.
  await page.getByText("and the stone depth, to insert the list").waitFor();
  await page.getByLabel("Stone depth").fill("2");
  await page.getByText("Preview (16 columns, 2 rows)").click();
  await panePicture(page, "job-rows-light-start");
  const focused = () => page.evaluate(() => document.activeElement?.textContent ?? "");
  for (let presses = 0; presses < 60 && (await focused()) !== "Insert at the selected cell"; presses += 1) {
    await page.keyboard.press("Tab");
  }
  await page.keyboard.press("Enter");
  await page.getByRole("alertdialog").getByText("Nothing was written").waitFor();
  expect(await findings(page)).toEqual([]);
  await page.getByRole("alertdialog").getByRole("button", { name: "On a new sheet" }).click();
  await page.getByText("Added the list to Beds!A1:P2").waitFor();
  const { values } = await read(page, "Beds", "A1:P2");
  // 18.5 × 5 = 92.5 sq ft; 18.5 + 2 × 5 = 28.5 ft; 92.5 × 2 × 1.35 ÷ 324 × 1.08 = 0.8325 tons; the yard's least is 1.
  expect(values[0]).toEqual(
    "Job|Bed|Length, ft|Width, ft|Corner radius, ft|Rounded corners|Depth, in|Stone|Waste|Area, sq ft|Edging, lin ft|Edging pieces|Tons|Order, tons|Fabric rolls|Pins".split(
      "|",
    ),
  );
  expect(values[1]?.slice(9, 11)).toEqual([92.5, 28.5]);
  expect(values[1]?.[12]).toBeCloseTo(0.8325, 6);
  expect(values[1]?.[13]).toBe(1);
  await picture(page, "job-rows-light-started");

  await page.getByLabel("What you have").selectOption("fit");
  await readList(page);
  await page.getByText("16 of 16 columns are used").waitFor();
  await page.getByLabel("What you have").selectOption("start");
  await press(page, "Undo");
  await page.getByText("Removed the list of beds from Beds").waitFor();
  await page.context().close();
});
