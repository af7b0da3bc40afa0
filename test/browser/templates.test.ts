import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findings } from "./accessibility";
import { chooseCell, readCells, selectCells as select } from "./cells";
import { untilKept } from "./kept";
import { launch, openPractice, picture, ready } from "./openPractice";
import { openScreen } from "./openScreen";

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

async function open() {
  // The checker itself comes in past the page's content security policy.
  return openPractice(browser, { bypassCSP: true });
}

/** What cells show. */
const values = async (page: Page, sheet: string, cells: string) => (await readCells(page, sheet, cells)).values;

function write(page: Page, sheet: string, address: string, content: string | number): Promise<void> {
  return page.evaluate(
    ([name, at, value]) =>
      Excel.run(async (context) => {
        context.workbook.worksheets.getItem(String(name)).getRange(String(at)).values = [[value]];
        await context.sync();
      }),
    [sheet, address, content],
  );
}

const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).click();

/** A block with a markup of the office's own. */
async function insertBlock(page: Page): Promise<void> {
  await page.getByLabel("Bed name").fill("Front walk");
  await page.getByLabel("Length", { exact: true }).fill(`18' 6"`);
  await page.getByLabel("Width", { exact: true }).fill("5");
  await select(page, "Estimate", "A4");
  await chooseCell(page);
  await press(page, /^Insert/);
  await page.getByText("Added to Estimate!A4").waitFor();
  const labels = (await values(page, "Estimate", "A1:A60")).flat();
  await write(page, "Estimate", `F${labels.indexOf("Pins") + 1}`, 0.62);
}

describe("a template", () => {
  test("keeps the office's block in the workbook, shows what it holds, and gives the same price elsewhere", async () => {
    const { page, errors, outside } = await open();
    await insertBlock(page);
    const price = (await values(page, "Estimate", "B5"))[0]![0];
    expect(Number(price)).toBeGreaterThan(100);

    await openScreen(page, "Templates");
    await page.getByText("No templates yet.").waitFor();
    await page.getByText("Front bed with sleeves").waitFor();
    expect(await findings(page)).toEqual([]);
    await picture(page, `templates-start`);
    await press(page, "Save the estimate");
    await page.getByText("Its formulas read nothing outside it").waitFor();
    await page.getByLabel("Name", { exact: true }).fill("Front bed, our markups");
    await page.getByLabel("Note for the person who opens it").fill("Pins at 62 percent");
    expect(await findings(page)).toEqual([]);
    await picture(page, `templates-save`);
    await press(page, "Save in this workbook");
    await page.getByText("in this workbook.").waitFor();
    expect(await findings(page)).toEqual([]);

    // It is there after a reload, too.
    await untilKept(page, "Front bed, our markups");
    await page.reload();
    await ready(page);
    await openScreen(page, "Templates");
    await select(page, "Estimate", "M4");
    await press(page, "Preview Front bed, our markups");
    await page.getByRole("heading", { name: "Front bed, our markups" }).waitFor();
    await page.getByText(/: 62%$/).waitFor();
    expect(await findings(page)).toEqual([]);
    await picture(page, `templates-look`);
    // Nothing was written yet.
    expect(await values(page, "Estimate", "M4")).toEqual([[""]]);
    await press(page, "Put it at Estimate!M4");
    await page.getByText("Added “Front bed, our markups” to Estimate!M4").waitFor();
    expect((await values(page, "Estimate", "N5"))[0]![0]).toBeCloseTo(Number(price), 9);
    await picture(page, `templates-opened`);
    await press(page, "Undo");
    await page.getByText("Removed the template Front bed, our markups").waitFor();
    expect(await values(page, "Estimate", "M4")).toEqual([[""]]);

    await press(page, "Delete Front bed, our markups");
    await page.getByText("Delete the template “Front bed, our markups” from this workbook?").waitFor();
    expect(await findings(page)).toEqual([]);
    await press(page, "Keep");
    await press(page, "Rename Front bed, our markups");
    await page.getByLabel("New name for Front bed, our markups").fill("Front bed 62");
    await press(page, "Save name");
    await page.getByText("to “Front bed 62”.").waitFor();
    await press(page, "Delete Front bed 62");
    await press(page, "Delete template");
    await page.getByText("No templates yet.").waitFor();
    expect(outside).toEqual([]);
    expect(errors).toEqual([]);
    await page.context().close();
  });
});

test("cells that read outside are asked about, go to a file, and come back from it with questions", async () => {
  const { page } = await open();
  await openScreen(page, "Templates");
  await select(page, "Jobs", "D4:N6");
  await press(page, "Save the selected cells");
  await page.getByText("It reads cells outside itself (2)").waitFor();
  await page.getByLabel("Name", { exact: true }).fill("Rows without lengths");
  await press(page, "Save to a file");
  await page.getByText("Choose what to do with Jobs!$C$5 first. Nothing was saved.").waitFor();
  await page.getByLabel("Jobs!$C$5", { exact: true }).selectOption("ask");
  await page.getByLabel("Jobs!$C$6", { exact: true }).selectOption("value");
  expect(await findings(page)).toEqual([]);
  await picture(page, "templates-outside");
  const downloading = page.waitForEvent("download");
  await press(page, "Save to a file");
  const download = await downloading;
  expect(download.suggestedFilename()).toBe("Rows without lengths.bedrow.json");
  const text = readFileSync((await download.path())!, "utf8");
  // The second row's length was put as it is taped; the first is asked about.
  expect(text).toContain(`{"reads":"Jobs!$C$5","opened":"ask","value":"18' 6\\""}`);
  expect(text).not.toContain("Jobs!$C$6");

  const file = (content: string) => ({ name: "rows.json", mimeType: "application/json", buffer: Buffer.from(content) });
  const chooser = page.getByLabel("Template file (.json)");
  await chooser.setInputFiles(file(text));
  await page.getByRole("heading", { name: "Rows without lengths" }).waitFor();
  await select(page, "Estimate", "A4");
  await press(page, "Put it at Estimate!A4");
  await page.getByText("Choose what to read for Jobs!$C$5 first. Nothing was written.").waitFor();
  await write(page, "Estimate", "P1", 20);
  await select(page, "Estimate", "P1");
  await page.getByLabel(/What to read for Jobs!\$C\$5/).selectOption("cells");
  await page.getByRole("option", { name: "Estimate!$P$1" }).waitFor({ state: "attached" });
  expect(await findings(page)).toEqual([]);
  await picture(page, "templates-asked");
  await select(page, "Estimate", "A4");
  await press(page, "Put it at Estimate!A4");
  await page.getByText("Added “Rows without lengths” to Estimate!A4:K6.").waitFor();
  // 20 ft by 5 ft with two rounded corners of 2 ft: 100 − 2 × (1 − π/4) × 4.
  expect((await values(page, "Estimate", "G5"))[0]![0]).toBeCloseTo(100 - 8 * (1 - Math.PI / 4), 9);

  // In the way of itself now.
  await chooser.setInputFiles(file(text));
  await page.getByLabel(/What to read for Jobs!\$C\$5/).selectOption("value");
  await press(page, "Put it at Estimate!A4");
  await page.getByText("Nothing was written. The block needs A4:K6 on Estimate").waitFor();
  expect(await findings(page)).toEqual([]);
  await page.keyboard.press("Escape");

  for (const [content, words] of [
    [
      text.replace(`"=BED.AREA_RECTANGLE`, `"=WEBSERVICE(A1)+BED.AREA_RECTANGLE`),
      /calls WEBSERVICE, which reaches out to the web/,
    ],
    [text.replace(`"version": 1`, `"version": 3`), /A newer version of this add-in wrote it/],
    [text.slice(0, 200), /The file is damaged/],
  ] as const) {
    const before = await values(page, "Estimate", "A1:Z60");
    await chooser.setInputFiles(file(content));
    await page.getByText(/rows\.json wasn't opened, and nothing was changed/).waitFor();
    await page.getByText(words).waitFor();
    expect(await values(page, "Estimate", "A1:Z60")).toEqual(before);
  }
  expect(await findings(page)).toEqual([]);
  await picture(page, "templates-refused");
  await page.context().close();
});

test("the office's templates come from its folder, a bad one is named, and a missing folder is nothing", async () => {
  const { page } = await open();
  const right = readFileSync(new URL("../../assets/templates/crew-day-sheet.json", import.meta.url), "utf8");
  await page.route("**/templates/index.json", (route) =>
    route.fulfill({
      json: { format: "bedrow-template-index", version: 1, templates: ["good.json", "bad.json", "gone.json"] },
    }),
  );
  await page.route("**/templates/good.json", (route) =>
    route.fulfill({ contentType: "application/json", body: right }),
  );
  await page.route("**/templates/bad.json", (route) =>
    route.fulfill({ contentType: "application/json", body: right.replace("=SUM(D5:D6)", "=INDIRECT(A1)") }),
  );
  await page.route("**/templates/gone.json", (route) => route.fulfill({ status: 404 }));
  await openScreen(page, "Templates");
  await page.getByText("bad.json can't be opened. D7 calls INDIRECT, which hides what it reads.").waitFor();
  await page.getByText("gone.json can't be opened. The list names it, but the folder has no such file").waitFor();
  expect(await findings(page)).toEqual([]);
  await picture(page, "templates-office");
  await press(page, "Preview Crew day sheet");
  await press(page, "On a new sheet");
  await page.getByText("Added “Crew day sheet” to Crew day sheet!A1:F12.").waitFor();
  // 18.5 × 5 + 12 × 3.5 sq ft.
  expect((await values(page, "Crew day sheet", "D7"))[0]![0]).toBeCloseTo(18.5 * 5 + 12 * 3.5, 9);

  await page.route("**/templates/index.json", (route) => route.fulfill({ status: 404 }));
  await openScreen(page, "Estimate");
  await openScreen(page, "Templates");
  await page.getByRole("heading", { name: "From a file" }).waitFor();
  expect(await page.getByRole("heading", { name: "From the office" }).count()).toBe(0);
  await page.context().close();
});
