import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { listKeys, listNames } from "../../src/quantities/bed/officeLists";
import { findings } from "./accessibility";
import { shownPrice } from "./bedForm";
import { chooseCell, placeOf, readCells, selectCells } from "./cells";
import { launch, openPractice, type Practice, picture } from "./openPractice";
import { openScreen } from "./openScreen";

let browser: Browser;
let practice: Practice;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  practice = await openPractice(browser);
  page = practice.page;
});
afterAll(() => browser.close());

/** What a cell shows. */
const value = async (address: string) => (await readCells(page, ...placeOf(address))).values[0]?.[0];

const select = (address: string) => selectCells(page, ...placeOf(address));

/** The cell of a name, as `Rates!B27`. */
function cellOf(name: string): Promise<string> {
  return page.evaluate(
    (wanted) =>
      Excel.run(async (context) => {
        const range = context.workbook.names.getItem(wanted).getRange();
        range.load("address");
        await context.sync();
        return range.address;
      }),
    name,
  );
}

/** Types into a cell with the keyboard, as a person does. */
async function typeInto(address: string, text: string): Promise<void> {
  await select(address);
  const grid = await page.locator("#practice-grid").boundingBox();
  if (!grid) throw new Error("The grid is not on the screen.");
  await page.mouse.click(grid.x + 90, grid.y + grid.height / 2);
  await page.keyboard.press("Escape");
  await select(address);
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}

/** Where in the first column of the sheet Estimate a label stands. */
async function rowOf(label: string): Promise<number> {
  for (let row = 1; row < 140; row++) if ((await value(`Estimate!A${row}`)) === label) return row;
  throw new Error(`No row is labelled ${label}.`);
}

describe("the office's rates, in the practice workbook", () => {
  test("are shown before they are written, and go on a sheet of their own", async () => {
    await page.getByText("Sample prices: add a sheet of your own rates.").waitFor();
    // An estimate from before there are rates.
    await page.getByLabel("Bed name").fill("Old walk");
    await page.getByLabel("Length", { exact: true }).fill("12");
    await page.getByLabel("Width", { exact: true }).fill("4");
    await select("Estimate!L4");
    await chooseCell(page);
    await page.getByRole("button", { name: "Insert at Estimate!L4" }).click();
    await page.getByText("Added to Estimate!L4").waitFor();
    await openScreen(page, "Rates");
    await page.getByText("Hauling and dump fees").click();
    await page.getByRole("row", { name: /Dump fee.*30 per load/ }).waitFor();
    await picture(page, "rates-before");
    await page.getByRole("button", { name: "Add the Rates sheet" }).click();
    await page.getByText(/Added the Rates sheet: Rates!A1/).waitFor();
    expect(await value(await cellOf("Rate_fabric_roll"))).toBe(64);
    await page.getByRole("heading", { name: "Still samples" }).waitFor();
    expect(await page.getByRole("button", { name: "Add the Rates sheet" }).count()).toBe(0);
    await picture(page, "rates-inserted");
  });

  test("an estimate follows them, and says that they are examples", async () => {
    await openScreen(page, "Estimate");
    await page.getByText(/Prices from Rates; \d+ are still samples/).waitFor();
    await page.getByLabel("Bed name").fill("Front walk");
    await page.getByLabel("Length", { exact: true }).fill("41");
    await page.getByLabel("Width", { exact: true }).fill("9");
    await select("Estimate!A4");
    await page.getByRole("button", { name: "Insert at Estimate!A4" }).click();
    await page.getByText("Added to Estimate!A4").waitFor();
    expect(await value("Estimate!E5")).toBe("sample prices: set your own in Rates");
    await select("Estimate!A4");
    await picture(page, "rates-block");
  });

  test("a price that is changed there changes the estimate and the pane, and is no example any more", async () => {
    const row = await rowOf("Fabric rolls");
    const before = Number(await value("Estimate!B5"));
    await typeInto(await cellOf("Rate_fabric_roll"), "95");
    await expect.poll(() => value(`Estimate!D${row}`)).toBe(95);
    expect(await value(`Estimate!I${row}`)).toBe("");
    const after = Number(await value("Estimate!B5"));
    expect(after).toBeGreaterThan(before);
    await expect.poll(() => shownPrice(page)).toBeCloseTo(after, 2);
  });

  test("a price that is damaged there leaves no price, and words in its place", async () => {
    const row = await rowOf("Fabric rolls");
    await typeInto(await cellOf("Rate_fabric_roll"), "ask Dale");
    await expect.poll(() => value(`Estimate!D${row}`)).toBe("no rate");
    expect(await value(`Estimate!I${row}`)).toBe("rate is text, not a number");
    expect(await value("Estimate!B5")).toBe("#VALUE!");
    expect(await value("Estimate!E5")).toBe("No price: a rate is missing or damaged. See its row.");
    await select(`Estimate!A4`);
    await page.getByText(/1 rate is missing or damaged/).waitFor();
    await picture(page, "rates-damaged");
    await page.getByRole("button", { name: "Show the rates" }).click();
    await page.locator("li:visible", { hasText: "Fabric roll, price (Rates): can't read “ask Dale”" }).waitFor();
    await page.getByRole("button", { name: "Go to Rates" }).click();
    await picture(page, "rates-trouble");
    await typeInto(await cellOf("Rate_fabric_roll"), "95");
    await expect.poll(() => value("Estimate!B5")).toBeTypeOf("number");
  });

  test("an estimate from before them follows once it is let, as listed", async () => {
    await page.getByRole("button", { name: "Find them" }).click();
    await page.getByText(/^Old walk on Estimate: \d+ cells$/).click();
    await page.locator("li:visible", { hasText: "Fabric roll, price, 64" }).waitFor();
    await picture(page, "rates-older");
    await page.getByRole("button", { name: /^Let these \d+ follow$/ }).click();
    await page.getByText(/cells now follow your rates/).waitFor();
    await expect.poll(async () => value(`Estimate!O${await rowOf("Fabric rolls")}`)).toBe(95);
  });

  test("what is typed for one bed can be given back to its rate", async () => {
    await openScreen(page, "Estimate");
    // The damaged rate opened "Prices and markups", and it stays open once the rate is fixed.
    const price = page.getByLabel("Fabric roll", { exact: true }).last();
    await price.fill("70");
    await page.getByRole("button", { name: "Use the rate: Fabric roll" }).click();
    await expect.poll(() => price.inputValue()).toBe("95");
    await price.scrollIntoViewIfNeeded();
    await picture(page, "rates-fields");
  });

  test("a yard's name for a stone is asked about once, and understood from then on", async () => {
    const before = await shownPrice(page);
    await page.getByText("Depth, stone, and digging").click();
    const stone = page.getByRole("combobox", { name: "Stone", exact: true }).last();
    await stone.fill("Ohio blue");
    await page
      .getByText(/“Ohio blue” isn't in the list/)
      .first()
      .waitFor();
    await page.getByLabel("“Ohio blue” is").fill("river rock");
    await picture(page, "estimate-unknown-stone");
    await page.getByRole("button", { name: "Remember this name" }).click();
    await page.getByText("The name is in Rates, in the list of stone.").waitFor();
    await expect.poll(() => shownPrice(page)).toBe(before);
    expect(await page.getByLabel("“Ohio blue” is").count()).toBe(0);
    await page.getByRole("button", { name: "Undo the name" }).click();
    await page.getByLabel("“Ohio blue” is").waitFor();
    await stone.fill("river rock");
  });

  test("a sheet from before there were lists gets them as previewed, and undo takes them off again", async () => {
    const older = await openPractice(browser, { bypassCSP: true });
    await openScreen(older.page, "Rates");
    await older.page.getByRole("button", { name: "Add the Rates sheet" }).click();
    await older.page.getByText(/Added the Rates sheet: Rates!A1/).waitFor();
    await openScreen(older.page, "Estimate");
    // The rows themselves are plain cells then, and stay.
    await older.page.evaluate(
      (names) =>
        Excel.run(async (context) => {
          for (const name of names) context.workbook.names.getItem(name).delete();
          await context.sync();
        }),
      listKeys.flatMap(listNames),
    );
    await openScreen(older.page, "Rates");
    const missing = older.page.getByRole("region", { name: "Missing from the sheet" });
    await missing.getByText(/^No list of edging, fabric, pins, haul-off trucks, delivery trucks, or crews\./).waitFor();
    await missing.getByRole("button", { name: "Preview" }).click();
    await missing.getByText(/^Crews by name, A\d+:L\d+: Two people; Foreman and two$/).waitFor();
    expect(await missing.getByRole("listitem").count()).toBe(listKeys.length);
    expect(await findings(older.page)).toEqual([]);
    await picture(older.page, "rates-missing");
    await missing.getByRole("button", { name: "Add these 6" }).click();
    await older.page.getByText(/^Added the 6 missing parts: Rates!A\d+:L\d+\./).waitFor();
    await expect.poll(() => missing.count()).toBe(0);
    await older.page.getByRole("button", { name: "Undo adding" }).click();
    await older.page.getByText(/^Removed the sheet of rates from/).waitFor();
    await missing.getByRole("button", { name: "Preview" }).waitFor();
    expect(older.errors).toEqual([]);
    await older.page.context().close();
  });

  test("have a screen without accessibility findings, in the dark and at its narrowest, too", async () => {
    const dark = await openPractice(browser, { colorScheme: "dark", bypassCSP: true });
    await openScreen(dark.page, "Rates");
    await dark.page.getByText("Hauling and dump fees").click();
    expect(await findings(dark.page)).toEqual([]);
    await dark.page.getByRole("button", { name: "Add the Rates sheet" }).click();
    await dark.page.getByRole("heading", { name: "Still samples" }).waitFor();
    expect(await findings(dark.page)).toEqual([]);
    await picture(dark.page, "rates-dark");
    expect(dark.errors).toEqual([]);
    await dark.page.context().close();
  });

  test("asks no one outside, and meets no error", () => {
    expect(practice.outside).toEqual([]);
    expect(practice.errors).toEqual([]);
  });
});
