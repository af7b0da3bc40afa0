import { readFileSync } from "node:fs";
import { heading, SHARP, TALL, WIDE } from "./camera.mjs";
import { fillBed, insertBed, insertRates, measureBy, press, putSheet, select, show } from "./desk.mjs";

const FRONT_WALK = JSON.parse(readFileSync(new URL("../../src/help/guide/example.json", import.meta.url), "utf8"));

export const frontWalk = {
  name: FRONT_WALK.name,
  length: FRONT_WALK.typed.length,
  width: FRONT_WALK.typed.width,
  radius: FRONT_WALK.typed.cornerRadius,
  corners: FRONT_WALK.typed.roundedCorners,
};

export async function firstEstimate(open, camera) {
  const page = await open({ width: 1100, height: 660 });
  await select(page, "Estimate", "A4");
  await fillBed(page, frontWalk);
  await page.locator(".drawing svg").first().waitFor();
  await page.getByRole("navigation", { name: "What to do" }).scrollIntoViewIfNeeded();
  // Without the line at the foot that says how long the page took to load, here.
  await page.screenshot({ path: camera.file("first-whole"), clip: { x: 0, y: 0, width: 1100, height: 628 } });
  await insertBed(page);
  await page.setViewportSize({ width: 1280, height: 800 });
  await camera.cells(page, "first-block", 925, 420);
  await select(page, "Jobs", "A5");
  await press(page, /^Insert/);
  await page.getByRole("alertdialog").waitFor();
  await page.getByRole("alertdialog").screenshot({ path: camera.file("first-in-the-way") });
  await page.context().close();

  const sharp = await open(SHARP);
  await fillBed(sharp, frontWalk);
  await camera.between(
    sharp,
    "first-measured",
    sharp.getByText("Bed name"),
    sharp.getByRole("group", { name: "Edging along" }),
  );
  await sharp.locator(".drawing svg").nth(1).waitFor();
  const amounts = sharp.getByText("Quantities and prices");
  await amounts.click();
  await camera.between(sharp, "first-price", amounts, sharp.locator("dl.amounts"));
  await camera.between(
    sharp,
    "first-drawing",
    sharp.locator(".drawing svg").first(),
    sharp.locator(".drawing svg").nth(1),
  );
  await sharp.context().close();

  const rated = await open();
  await insertRates(rated);
  await camera.cells(rated, "first-rates", 860, 240);
  await rated.context().close();
}

/** The picture at the top of the README: an estimate in the workbook, and the pane beside it. */
export async function practice(open, file) {
  const page = await open();
  await page.addStyleTag({ content: ".insert-bar { position: sticky !important }" });
  await fillBed(page, frontWalk);
  await select(page, "Estimate", "A4");
  await insertBed(page);
  await page.locator("#practice-pane").evaluate((pane) => {
    pane.scrollTop = 0;
  });
  // The grid draws a moment after the cells have changed.
  await page.waitForTimeout(1500);
  await page.screenshot({ path: file });
  await page.context().close();
}

/** An invented list in the words, order and units of an office of its own. */
const LIST = [
  ["Beds for the week, invented", "", "", "", "", "", ""],
  ["", "", "", "", "", "", ""],
  ["Client", "Where", "L m", "Width", "Depth, in", "Rock (tons)", "Size"],
  ["Elm Row 3", "front", 6.1, "4'", 2.5, "", "big"],
  ["Elm Row 3", "back", "20 ft", 4, 2.5, 0.7, "big"],
  ["Birch Walk 8", "gate", "12' 6\"", "3' 4\"", 2, "", "small"],
];

export async function jobRows(open, camera) {
  const list = await open(WIDE);
  await camera.cells(list, "rows-practice", 1004, 366);
  await list.context().close();

  const page = await open(SHARP);
  await putSheet(page, "Week", LIST, "C5");
  await show(page, "Job rows");
  await press(page, "Read the list at the selection");
  const asked = page.getByLabel("G “Size”");
  await asked.waitFor();
  await page.getByText(/columns besides are used/).click();
  await camera.between(
    page,
    "rows-columns",
    heading(page, "What the columns hold"),
    page.getByText(/^sure: says stone, tons/),
  );
  await page.getByLabel("Add a result").selectOption("area");
  const reads = page.getByText(/^reads C4 L m/).first();
  await reads.locator("xpath=ancestor::details[1]/summary").click();
  await camera.between(page, "rows-shown", heading(page, "Preview"), reads);
  await press(page, /^Write \d+ cells/);
  await page.getByText(/^Wrote /).waitFor();
  await camera.cells(page, "rows-written", 760, 150);
  await page.context().close();
}

export async function looksWrong(open, camera) {
  const page = await open(TALL);
  await page.evaluate(() =>
    Excel.run(async (context) => {
      const jobs = context.workbook.worksheets.getItem("Jobs");
      jobs.getRange("I9").values = [[10]];
      jobs.getRange("L7").values = [[0.5]];
      await context.sync();
    }),
  );
  await show(page, "Check the sheets");
  await press(page, "Check");
  const card = page.locator("article.finding").first();
  await card.waitFor();
  await card.screenshot({ path: camera.file("wrong-finding") });
  await select(page, "Jobs", "L5");
  await show(page, "Explain a cell");
  await press(page, "Explain the selected cell");
  await page.locator("ol.steps").first().waitFor();
  await camera.between(page, "wrong-explained", page.locator("article h2").first(), page.locator("ol.steps").first());
  await page.context().close();
}

/** A curved bed, taped by widths: invented measures. */
const CURVED = ["0", "4", "6", "4", "0"];

export async function limits(open, camera) {
  const page = await open(TALL);
  await page.getByLabel("Bed name").fill("Crescent");
  await measureBy(page, "widths");
  await page.getByLabel("Spacing between widths").fill("5");
  for (const [index, width] of CURVED.entries()) await page.getByLabel(`Width ${index + 1}`).fill(width);
  await camera.plan(page, "limits-curved");
  await page.context().close();
}
