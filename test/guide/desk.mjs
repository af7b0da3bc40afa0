import { join, resolve } from "node:path";
import { chromium } from "playwright-core";
import { serve } from "../../src/serve.mjs";
import { withTypeScript } from "../../src/withTypeScript.mjs";

const ROOT = resolve(import.meta.dirname, "../..");
const WAIT_MS = 90_000;
/** A day that pictures are made on, so that they are the same on every day. */
const TODAY = new Date(2031, 1, 24, 9);

/**
 * Serves a build, opens browsers on its practice workbook, and closes all of it in the end.
 *
 * @param {string} dist the folder of the build.
 * @param {(open: (size?: { width?: number, height?: number, scale?: number }) => Promise<import("playwright-core").Page>) => Promise<void>} action
 */
export async function atTheDesk(dist, action) {
  const finder = join(ROOT, "test/browser/findBrowser.ts");
  const browserPath = await withTypeScript(ROOT, finder, async ({ findBrowser }) => findBrowser());
  const server = await serve(dist);
  const browser = await chromium.launch({ executablePath: browserPath, args: ["--no-sandbox", "--disable-gpu"] });
  try {
    await action(async ({ width = 1280, height = 800, scale = 1 } = {}) => {
      const context = await browser.newContext({
        viewport: { width, height },
        deviceScaleFactor: scale,
        colorScheme: "light",
        locale: "en-US",
      });
      const page = await context.newPage();
      await page.goto(`${server.origin}/practice.html`);
      await page.getByRole("button", { name: /^Insert/ }).waitFor({ timeout: WAIT_MS });
      await page.clock.setFixedTime(TODAY);
      // A bar that stays in sight would lie over what is pictured.
      await page.addStyleTag({ content: ".insert-bar { position: static !important }" });
      return page;
    });
  } finally {
    await browser.close();
    await server.close();
  }
}

/** Brings a sheet to the front and selects cells of it. */
export function select(page, sheet, cells) {
  return page.evaluate(
    ([name, at]) =>
      Excel.run(async (context) => {
        const worksheet = context.workbook.worksheets.getItem(name);
        worksheet.activate();
        worksheet.getRange(at).select();
        await context.sync();
      }),
    [sheet, cells],
  );
}

/** Writes values and formulas from A1 of a new sheet on, and selects a cell there. */
export function putSheet(page, sheet, rows, selected = "A1", widths = []) {
  return page.evaluate(
    ([name, cells, at, characters]) =>
      Excel.run(async (context) => {
        const worksheet = context.workbook.worksheets.add(name);
        const range = worksheet.getRangeByIndexes(0, 0, cells.length, cells[0].length);
        range.formulas = cells.map((row) =>
          row.map((cell) => (typeof cell === "string" && /^\d/.test(cell) ? `'${cell}` : cell)),
        );
        characters.forEach((points, column) => {
          worksheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = points;
        });
        worksheet.activate();
        worksheet.getRange(at).select();
        await context.sync();
      }),
    [sheet, rows, selected, widths],
  );
}

export const press = (page, name) =>
  page
    .getByRole("button", { name, exact: typeof name === "string" })
    .first()
    .click();

/** Opens a screen of the pane. */
export async function show(page, screen, heading = screen) {
  const menu = page.getByRole("navigation", { name: "What to do" });
  const button = menu.getByRole("button", { name: screen, exact: true });
  if (!(await button.isVisible())) await menu.getByRole("button", { name: "Tools" }).click();
  await button.click();
  await page.getByRole("heading", { name: heading, level: 1 }).last().waitFor();
}

/** Chooses how the bed was measured. */
export const measureBy = (page, way) => page.locator(`#pane input[name=way][value=${way}]`).check();

/** Types a bed into the form of the pane, as the guide tells it. */
export async function fillBed(page, { name, length, width, radius, corners }) {
  await page.getByLabel("Bed name").fill(name);
  await page.getByLabel("Length", { exact: true }).fill(length);
  await page.getByLabel("Width", { exact: true }).fill(width);
  if (!radius) return;
  await page.getByText("Rounded corners, areas to deduct").click();
  await page.getByLabel("Corner radius").fill(radius);
  for (const corner of ["Front left corner", "Front right corner"].slice(0, Number(corners)))
    await page.getByLabel(corner).check();
}

/** Inserts what the form holds at the selected cell. */
export async function insertBed(page) {
  await page.getByLabel("Where it goes").selectOption("cell");
  await press(page, /^Insert/);
  await page.getByText(/^Added to/).waitFor();
}

/** Gives the workbook its sheet of rates. */
export async function insertRates(page) {
  await show(page, "Rates");
  await press(page, "Add the Rates sheet");
  await page.getByRole("status").filter({ hasText: "Added the Rates sheet" }).waitFor();
}
