// Makes the guide's pictures again from a build: `npm run build && node test/guide/pictures.mjs [folder of the build]`.
import { cp, mkdtemp, readdir, readFile, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { atTheDesk, fillBed, insertBed, insertRates, press, putSheet, select, show } from "./desk.mjs";

const ROOT = resolve(import.meta.dirname, "../..");
const PICTURES = join(ROOT, "src/help/guide/pictures");
/** The pictures of before stay until all new ones are made. */
const scratch = await mkdtemp(join(tmpdir(), "pictures-"));
const FRONT_WALK = JSON.parse(await readFile(join(ROOT, "src/help/guide/example.json"), "utf8"));

const frontWalk = {
  name: FRONT_WALK.name,
  length: FRONT_WALK.typed.length,
  width: FRONT_WALK.typed.width,
  radius: FRONT_WALK.typed.cornerRadius,
  corners: FRONT_WALK.typed.roundedCorners,
};

/** High enough that the longest screen of the pane stands in it whole. */
const TALL = { height: 6000 };
/** The pane's small letters are drawn larger than they stand there. */
const SHARP = { ...TALL, scale: 1.25 };
/** Wide enough for all columns of the practice list beside the pane. */
const WIDE = { height: 900, width: 1480 };
/** Where the cells of the sheet begin: below the toolbars of the practice grid. */
const CELLS_TOP = 108;
const LETTERS_HIGH = 20;
/** Where the bar with the formula of the selected cell begins. */
const NAME_BOX_TOP = 79;

const file = (name) => join(scratch, `${name}.png`);
const pane = (page) => page.locator("#pane");

/** Part of the pane, from the top of one element to the foot of another. */
async function between(page, name, from, to) {
  await to.waitFor();
  // What was said last may still push the rest about.
  await page.waitForTimeout(400);
  const first = await from.boundingBox();
  const last = await to.boundingBox();
  const [x, width] = [(await pane(page).boundingBox()).x, (await pane(page).boundingBox()).width];
  const y = first.y - 8;
  await page.screenshot({ path: file(name), clip: { x, y, width, height: last.y + last.height + 8 - y } });
}

/** Cells of the sheet in front, below the letters of the columns. */
async function cells(page, name, width, height, y = CELLS_TOP) {
  // The grid draws a moment after the cells have changed.
  await page.waitForTimeout(800);
  await page.screenshot({ path: file(name), clip: { x: 0, y, width, height } });
}

const heading = (page, name) => page.getByRole("heading", { name, exact: true }).last();

async function firstEstimate(open) {
  const page = await open({ width: 1100, height: 660 });
  await select(page, "Estimate", "A4");
  await fillBed(page, frontWalk);
  // Without the line at the foot that says how long the page took to load, here.
  await page.screenshot({ path: file("first-whole"), clip: { x: 0, y: 0, width: 1100, height: 628 } });
  await insertBed(page);
  await page.setViewportSize({ width: 1280, height: 800 });
  await cells(page, "first-block", 925, 420);
  await select(page, "Jobs", "A5");
  await press(page, /^Insert/);
  await page.getByRole("alertdialog").waitFor();
  await page.getByRole("alertdialog").screenshot({ path: file("first-in-the-way") });
  await page.context().close();

  const sharp = await open(SHARP);
  await fillBed(sharp, frontWalk);
  await between(
    sharp,
    "first-measured",
    heading(sharp, "The bed"),
    sharp.getByText("1 where the other long side", { exact: false }).last(),
  );
  await sharp.locator(".drawing svg").nth(1).waitFor();
  await between(sharp, "first-price", heading(sharp, "As it will be"), sharp.locator("dl.amounts"));
  await between(sharp, "first-drawing", sharp.locator(".drawing svg").first(), sharp.locator(".drawing svg").nth(1));
  await sharp.context().close();

  const rated = await open();
  await insertRates(rated);
  await cells(rated, "first-rates", 860, 240);
  await rated.context().close();
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

async function jobRows(open) {
  const list = await open(WIDE);
  await cells(list, "rows-practice", 1004, 366);
  await list.context().close();

  const page = await open(SHARP);
  await putSheet(page, "Week", LIST, "C5");
  await show(page, "Job rows");
  await press(page, "Read the list at the selection");
  const asked = page.getByLabel("G “Size”");
  await asked.waitFor();
  await page.getByText(/columns besides are used/).click();
  await between(
    page,
    "rows-columns",
    heading(page, "What the columns hold"),
    page.getByText(/^sure: says stone, tons/),
  );
  await page.getByLabel("Add a result").selectOption("area");
  await between(page, "rows-shown", heading(page, "What would be written"), page.getByText(/^reads C4 L m/));
  await press(page, /^Write \d+ cells/);
  await page.getByText(/^Written: /).waitFor();
  await cells(page, "rows-written", 760, 150);
  await page.context().close();
}

/** Three invented beds of one job. */
const BEDS = [
  { name: "Front strip", length: `18' 6"`, width: "5" },
  { name: "Side strip", length: "22", width: "3" },
  { name: "Back strip", length: `13' 4"`, width: "4" },
];
async function threeBeds(page) {
  for (const [index, bed] of BEDS.entries()) {
    await putSheet(page, `Bed ${index + 1}`, [[""]]);
    await press(page, "New bed");
    await fillBed(page, bed);
    await insertBed(page);
  }
  await show(page, "Job papers", "Papers of a job");
  await page.getByRole("checkbox", { name: /^Front strip Bed/ }).waitFor();
  await page.getByLabel("Job", { exact: true }).fill("Alder Court 4");
  await page.getByLabel("Place").fill("4 Alder Court, an invented place");
  await page.getByLabel("Wished start").fill("2031-03-06");
  await page.getByText("Monday, March 3, 2031").waitFor();
}

/** What five invented jobs took against ten hours estimated. */
const TOOK = [12, 13, 12.2, 12.8, 12.4];

async function papers(open) {
  const page = await open(SHARP);
  await insertRates(page);
  await show(page, "Estimate a bed", "Stone bed estimate");
  await threeBeds(page);
  await between(page, "papers-together", heading(page, "Ordered together"), page.getByText(/^Ordering together/));
  await between(page, "papers-notice", heading(page, "Start and dig notice"), page.getByText(/^Give notice by/));
  await page.getByText("Type what was really used").click();
  await page.getByLabel("Set edging, really").fill("7");
  await press(page, "Add to the past jobs");
  await page.getByText(/lines? (was|were) added/).waitFor();
  await page.evaluate(
    (took) =>
      Excel.run(async (context) => {
        const list = context.workbook.worksheets.getItem("Past jobs");
        list.getRange("A6:G10").values = took.map((hours, index) => [
          `Invented job ${index + 1}`,
          46_000 + index,
          "Set edging",
          "person-h",
          10,
          hours,
          14,
        ]);
        await context.sync();
      }),
    TOOK,
  );
  await press(page, "Read again");
  await page.waitForTimeout(800);
  const change = page.getByRole("button", { name: /^Change “Set edging”/ });
  await change.waitFor();
  await between(page, "papers-lessons", heading(page, "What past jobs say"), change);
  await page.context().close();
}

async function sheetsOfPaper(open) {
  const page = await open({ ...TALL, width: 1500 });
  await threeBeds(page);
  await press(page, "All three");
  await page.getByText("On new sheets:").waitFor();
  await select(page, "Order Alder Court 4", "A1");
  await cells(page, "papers-order", 1120, 300);
  await select(page, "Crew Alder Court 4", "A1");
  await cells(page, "papers-drawings", 1000, 340);
  const steps = await page.evaluate(() =>
    Excel.run(async (context) => {
      const used = context.workbook.worksheets.getItem("Crew Alder Court 4").getUsedRange();
      used.load("values");
      await context.sync();
      const row = used.getRow(used.values.findIndex(([first]) => first === "Done"));
      row.load("top");
      await context.sync();
      return (row.top * 96) / 72;
    }),
  );
  await cells(page, "papers-crew", 1000, 306, CELLS_TOP + steps + LETTERS_HIGH);
  await page.context().close();
}

async function templates(open) {
  const page = await open(SHARP);
  await fillBed(page, frontWalk);
  await select(page, "Estimate", "A4");
  await insertBed(page);
  await show(page, "Templates");
  await page.getByText("Front bed with sleeves").waitFor();
  await press(page, "Save the estimate block");
  await page.getByLabel("Name", { exact: true }).fill("Front bed, our markups");
  await page.getByLabel("Note for whoever opens it").fill("Pins at a higher markup");
  await between(
    page,
    "templates-save",
    heading(page, "Save as template"),
    page.getByRole("button", { name: "Keep in this workbook" }),
  );
  await press(page, "Keep in this workbook");
  await page.getByText("is kept in this workbook").waitFor();
  await between(page, "templates-list", heading(page, "Templates"), page.getByText("Front bed with sleeves"));
  await press(page, "Look at Front bed, our markups");
  const held = heading(page, "Front bed, our markups");
  await held.waitFor();
  await between(page, "templates-look", held, page.getByLabel("The first cells of the template"));
  await page.context().close();
}

async function looksWrong(open) {
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
  await card.getByText("A safe fix").click();
  await card.screenshot({ path: file("wrong-finding") });
  await select(page, "Jobs", "L5");
  await show(page, "Explain a cell");
  await press(page, "Explain the selected cell");
  await page.locator("ol.steps").first().waitFor();
  await between(page, "wrong-explained", page.locator("article h2").first(), page.locator("ol.steps").first());
  await page.context().close();
}

async function withoutTheAddIn(open) {
  const page = await open(SHARP);
  await show(page, "Copy for others", "A copy for others");
  await press(page, "Look before copying");
  await page.getByText(/^Taped text that becomes a number/).waitFor();
  await between(
    page,
    "copy-look",
    page.getByText("What to copy", { exact: true }),
    page.getByRole("button", { name: "Make the copy" }),
  );
  await page.context().close();

  const list = await open(WIDE);
  await show(list, "Copy for others", "A copy for others");
  await press(list, "Look before copying");
  await press(list, "Make the copy");
  await list.getByText(/^The copy stands on/).waitFor();
  await select(list, "Jobs plain", "J5");
  await cells(list, "copy-made", 1010, 190, NAME_BOX_TOP);
  await list.context().close();
}

/** A curved bed, taped by widths: invented measures. */
const CURVED = ["0", "4", "6", "4", "0"];

async function limits(open) {
  const page = await open(TALL);
  await page.getByLabel("Bed name").fill("Crescent");
  await page.getByLabel("How it was measured").selectOption("widths");
  await page.getByLabel("Spacing of the widths").fill("5");
  for (const [index, width] of CURVED.entries()) await page.getByLabel(`Width ${index + 1}`).fill(width);
  await page.locator(".drawing svg").nth(1).waitFor();
  await page.waitForTimeout(500);
  await page
    .locator(".drawing svg")
    .first()
    .screenshot({ path: file("limits-curved") });
  await page.context().close();
}

const build = resolve(process.argv[2] ?? process.env.DIST ?? join(ROOT, "dist"));
try {
  await atTheDesk(build, async (open) => {
    for (const scene of [firstEstimate, jobRows, papers, sheetsOfPaper, templates, looksWrong, withoutTheAddIn, limits])
      await scene(open);
  });
  await rm(PICTURES, { recursive: true, force: true });
  await cp(scratch, PICTURES, { recursive: true });
} finally {
  await rm(scratch, { recursive: true, force: true });
}
const sizes = await Promise.all((await readdir(PICTURES)).map(async (name) => (await stat(join(PICTURES, name))).size));
console.log(`${sizes.length} pictures, ${Math.round(sizes.reduce((sum, size) => sum + size, 0) / 1000)} kB together.`);
