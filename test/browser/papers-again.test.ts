import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launch, openPractice, type Practice } from "./openPractice";
import { openScreen } from "./openScreen";
import { press, writeCells } from "./screens/visit";

let browser: Browser;
let practice: Practice;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  practice = await openPractice(browser);
  page = practice.page;
  await page.getByLabel("Bed name").fill("Front walk");
  await page.getByLabel("Length", { exact: true }).fill(`18' 6"`);
  await page.getByLabel("Width", { exact: true }).fill("5");
  await press(page, "Insert on a new sheet");
  await page.getByText("Added to Front walk").waitFor();
  await openScreen(page, "Job documents");
  await page.getByLabel("Job", { exact: true }).fill("Alder Court");
});
afterAll(() => browser.close());

const orders = () =>
  page.evaluate(() =>
    Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name");
      await context.sync();
      return worksheets.items.map(({ name }) => name).filter((name) => name.startsWith("Order"));
    }),
  );
const hidden = () =>
  page.evaluate(() =>
    Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name,items/visibility");
      await context.sync();
      return worksheets.items.filter(({ visibility }) => visibility === "Hidden").map(({ name }) => name);
    }),
  );
const makeOrder = () => page.getByRole("button", { name: "Order", exact: true }).click();
const said = (text: string | RegExp) => page.getByRole("status").filter({ hasText: text }).waitFor();
const question = () => page.getByRole("alertdialog");

test("an order that is made again asks, replaces the earlier one, and undo brings that back", async () => {
  await makeOrder();
  await said("Added Order Alder Court.");
  await makeOrder();
  await question().waitFor();
  expect(await question().textContent()).toContain("Order Alder Court is already in this workbook.");
  await page.getByLabel("Job site", { exact: true }).fill("12 Quarry Lane");
  await question().getByRole("button", { name: "Replace" }).click();
  await said("Added Order Alder Court.");
  expect(await orders()).toEqual(["Order Alder Court"]);
  await press(page, "Undo");
  await said("The earlier ones are back.");
  expect(await orders()).toEqual(["Order Alder Court"]);
});

test("both are kept where that is wanted, and nothing happens on Cancel", async () => {
  await makeOrder();
  await question().getByRole("button", { name: "Cancel" }).click();
  expect(await orders()).toEqual(["Order Alder Court"]);
  await makeOrder();
  await question().getByRole("button", { name: "Keep both" }).click();
  await said("Added Order Alder Court 2.");
  expect(await orders()).toEqual(["Order Alder Court", "Order Alder Court 2"]);
});

test("what was not made last is hidden under another name, and undo shows it again", async () => {
  await makeOrder();
  await question().waitFor();
  expect(await question().textContent()).toContain(
    "Replace keeps what's there as a hidden sheet: Old Order Alder Court.",
  );
  await question().getByRole("button", { name: "Replace" }).click();
  await said("Added Order Alder Court.");
  expect(await orders()).toEqual(["Order Alder Court 2", "Order Alder Court"]);
  expect(await hidden()).toEqual(["Old Order Alder Court"]);
  await press(page, "Undo");
  await said("The earlier ones are back.");
  expect(await orders()).toEqual(["Order Alder Court", "Order Alder Court 2"]);
  expect(await hidden()).toEqual([]);
});

test("what was changed since it was made stays", async () => {
  await page.getByLabel("Job", { exact: true }).fill("Birch Lane");
  await makeOrder();
  await said("Added Order Birch Lane.");
  await writeCells(page, "Order Birch Lane", { A1: "Order, second truck" });
  await makeOrder();
  await question().getByRole("button", { name: "Replace" }).click();
  await page
    .getByRole("alert")
    .filter({ hasText: /were changed or moved since \(A1\)/ })
    .waitFor();
  expect(await orders()).toContain("Order Birch Lane");
  expect(await orders()).not.toContain("Order Birch Lane 2");
});

test("nothing outside is asked, and no error is met", () => {
  expect(practice.outside).toEqual([]);
  expect(practice.errors).toEqual([]);
});
