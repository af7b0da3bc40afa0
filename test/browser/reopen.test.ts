import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { measureBy } from "./bedForm";
import { placeOf, readCells, selectCells } from "./cells";
import { launch, openPractice, type Practice, picture } from "./openPractice";
import { writeCells } from "./screens/visit";

let browser: Browser;
let practice: Practice;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  practice = await openPractice(browser);
  page = practice.page;
});
afterAll(() => browser.close());

const SHEET = "Front walk";
const value = async (cell: string) => (await readCells(page, ...placeOf(`${SHEET}!${cell}`))).values[0]?.[0];
const formulas = async () => (await readCells(page, SHEET, "A1:I150")).formulas;
const button = (name: string | RegExp) => page.getByRole("button", { name });
const said = (text: string | RegExp) => page.getByRole("status").filter({ hasText: text }).waitFor();

/** The row of a line of the estimate. */
async function lineRow(label: string): Promise<number> {
  const column = (await formulas()).map(([cell]) => cell);
  return column.indexOf(label, column.indexOf("Lines")) + 1;
}

test("an estimate goes on a new sheet named after the bed", async () => {
  await page.getByLabel("Bed name").fill(SHEET);
  await page.getByLabel("Length", { exact: true }).fill(`18' 6"`);
  await page.getByLabel("Width", { exact: true }).fill("5");
  expect(await page.getByLabel("Where it goes").locator("option:checked").textContent()).toBe("New sheet “Front walk”");
  await button("Insert on a new sheet").click();
  await page.getByText("Added to Front walk!A1").waitFor();
  expect(await value("B1")).toBe(SHEET);
});

test("a bed is opened with what was changed on the sheet, updated, and undone cell by cell", async () => {
  const stone = await lineRow("Stone");
  const spare = (await lineRow("Clean up")) + 1;
  const waste = (await formulas()).findIndex(([cell]) => cell === "Waste and low spots") + 1;
  await writeCells(page, SHEET, {
    [`B${waste}`]: 0.12,
    [`B${stone}`]: 2.5,
    [`A${spare}`]: "Remove old shrubs",
    [`B${spare}`]: 3,
    [`D${spare}`]: 48,
    [`H${spare}`]: "labor",
  });
  const before = await formulas();
  const priceBefore = Number(await value("B2"));

  // Something else is being typed when the bed is opened; it can be brought back.
  await button("New bed").click();
  await page.getByLabel("Bed name").fill("Half typed");
  await selectCells(page, SHEET, "C40");
  await page.getByText(/^Front walk, 'Front walk'!A1: drawing/).waitFor();
  await button("Open this bed").click();
  await said("Front walk is open.");
  expect(await page.getByLabel("Bed name").inputValue()).toBe(SHEET);
  expect(await page.getByLabel("Waste and low spots").inputValue()).toBe("12%");
  await page
    .getByText("2 changes made on the sheet are kept: Stone, quantity: 2.5; line “Remove old shrubs” added")
    .waitFor();
  await button("Undo: back to my last bed").click();
  expect(await page.getByLabel("Bed name").inputValue()).toBe("Half typed");
  await button("Open this bed").click();
  await said("Front walk is open.");

  await page.getByLabel("Width", { exact: true }).fill("6");
  await button(/^Update /).click();
  const preview = page.getByRole("dialog", { name: /^1 change in/ });
  await preview.waitFor();
  expect(await preview.getByRole("listitem").allTextContents()).toEqual(["B8 Width: 5 → 6"]);
  await picture(page, "update-preview");
  await preview.getByRole("button", { name: "Update" }).click();
  await said(/^Updated Front walk at .*: 1 change\.$/);
  expect([await value("B8"), await value(`B${stone}`), await value(`A${spare}`)]).toEqual([
    6,
    2.5,
    "Remove old shrubs",
  ]);
  expect(await value(`E${spare}`)).toBe(144);
  await expect.poll(async () => Number(await value("B2"))).toBeGreaterThan(priceBefore);
  await page.getByText(": drawing out of date").waitFor();
  await picture(page, "updated");

  await button("Undo the update").click();
  await said("The update is undone.");
  expect(await formulas()).toEqual(before);
  expect(await page.getByLabel("Width", { exact: true }).inputValue()).toBe("5");
});

test("what was changed on the sheet is replaced where it is checked", async () => {
  const stone = await lineRow("Stone");
  await button(/^Update /).click();
  await page.getByLabel("Stone, quantity: 2.5").check();
  await page.getByRole("dialog").getByRole("button", { name: "Update" }).click();
  await said(/^Updated Front walk/);
  expect((await formulas())[stone - 1]?.[1]).toMatch(/^=/);
});

test("a bed that is measured in another way gets other rows where it is, and they go again", async () => {
  const before = await formulas();
  await writeCells(page, "Jobs", { P1: `='${SHEET}'!B2`, P2: `='${SHEET}'!B3` });
  await measureBy(page, "round");
  await page.getByLabel("Diameter", { exact: true }).fill("8");
  await button(/^Update /).click();
  const preview = page.getByRole("dialog", { name: /changes in/ });
  await preview.waitFor();
  expect((await preview.getByRole("listitem").allTextContents())[0]).toMatch(/^row \d+ Length: removed$/);
  await preview.getByRole("button", { name: "Update" }).click();
  await said(/^Updated Front walk/);
  expect((await formulas())[5]?.[0]).toBe("Measured: round");
  const read = await readCells(page, "Jobs", "P1:P2");
  expect(read.values.flat()).toEqual([await value("B2"), await value("B3")]);
  expect(read.values[0]?.[0]).toBeTypeOf("number");
  await picture(page, "reshaped");
  await button("Undo the update").click();
  await said("The update is undone.");
  expect(await formulas()).toEqual(before);
});

test("where something is below the estimate, other rows are refused, and a new estimate is offered", async () => {
  await writeCells(page, SHEET, { A200: "Call the owner" });
  await measureBy(page, "round");
  await page.getByLabel("Diameter", { exact: true }).fill("8");
  await button(/^Update /).click();
  await page
    .getByRole("alert")
    .filter({ hasText: /cells below or beside them would move \(A200\)\. Nothing was changed/ })
    .waitFor();
  await button("Insert on a new sheet").click();
  await said("Added to Front walk 2");
});

test("nothing outside is asked, and no error is met", () => {
  expect(practice.outside).toEqual([]);
  expect(practice.errors).toEqual([]);
});
