import { frontWalk } from "./bedScenes.mjs";
import { heading, LETTERS_HIGH, NAME_BOX_HIGH, SHARP, TALL, WIDE } from "./camera.mjs";
import { fillBed, insertBed, insertRates, press, putSheet, select, show } from "./desk.mjs";

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
  await show(page, "Job documents", "Job documents");
  await page.getByRole("checkbox", { name: /^Front strip Bed/ }).waitFor();
  await page.getByLabel("Job", { exact: true }).fill("Alder Court 4");
  await page.getByLabel("Job site").fill("4 Alder Court, an invented place");
  await page.getByLabel("Start date", { exact: true }).fill("2031-03-06");
  await page.getByText("Monday, March 3, 2031").waitFor();
  // Leaving the field moves what is below it, and a click would miss it.
  await page.keyboard.press("Tab");
}

/** What five invented jobs took against ten hours estimated. */
const TOOK = [12, 13, 12.2, 12.8, 12.4];

export async function papers(open, camera) {
  const page = await open(SHARP);
  await insertRates(page);
  await show(page, "Estimate", "Stone bed estimate");
  await threeBeds(page);
  await camera.between(
    page,
    "papers-together",
    heading(page, "Ordered together"),
    page.getByText(/^Ordering together/),
  );
  await camera.between(page, "papers-notice", heading(page, "Start and dig notice"), page.getByText(/^Give notice by/));
  await page.getByText("Type what was actually used").click();
  await page.getByLabel("Set edging, actual").fill("7");
  await press(page, "Add to past jobs");
  await page.getByText(/lines? added to past jobs/).waitFor();
  await page.evaluate(
    (took) =>
      Excel.run(async (context) => {
        const list = context.workbook.worksheets.getItem("Past jobs");
        list.getRange("A6:G10").values = took.map((hours, index) => [
          `Invented job ${index + 1}`,
          46_000 + index,
          "Set edging",
          "labor hours",
          10,
          hours,
          14,
        ]);
        await context.sync();
      }),
    TOOK,
  );
  await press(page, "Refresh");
  await page.waitForTimeout(800);
  const change = page.getByRole("button", { name: /^Change “Set edging”/ });
  await change.waitFor();
  await camera.between(page, "papers-lessons", heading(page, "What past jobs say"), change);
  await page.context().close();
}

export async function sheetsOfPaper(open, camera) {
  const page = await open({ ...TALL, width: 1500 });
  await threeBeds(page);
  await press(page, "All three");
  await page.getByText("Print them from the spreadsheet program").waitFor();
  await select(page, "Order Alder Court 4", "A1");
  await camera.cells(page, "papers-order", 1120, 300);
  await select(page, "Crew Alder Court 4", "A1");
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
  await camera.cells(page, "papers-crew", 1000, 340, steps + LETTERS_HIGH);
  await page.context().close();
}

export async function templates(open, camera) {
  const page = await open(SHARP);
  await fillBed(page, frontWalk);
  await select(page, "Estimate", "A4");
  await insertBed(page);
  await show(page, "Templates");
  await page.getByText("Front bed with sleeves").waitFor();
  await press(page, "Save the estimate");
  await page.getByLabel("Name", { exact: true }).fill("Front bed, our markups");
  await page.getByLabel("Note for the person who opens it").fill("Pins at a higher markup");
  await camera.between(
    page,
    "templates-save",
    heading(page, "Save as template"),
    page.getByRole("button", { name: "Save in this workbook" }),
  );
  await press(page, "Save in this workbook");
  await page.getByText("in this workbook.").waitFor();
  await camera.between(page, "templates-list", heading(page, "Templates"), page.getByText("Front bed with sleeves"));
  await press(page, "Preview Front bed, our markups");
  const held = heading(page, "Front bed, our markups");
  await held.waitFor();
  await camera.between(page, "templates-look", held, page.getByLabel("The first cells of the template"));
  await page.context().close();
}

export async function withoutTheAddIn(open, camera) {
  const page = await open(SHARP);
  await show(page, "Copy for others", "Copy for others");
  await press(page, "Preview copy");
  await page.getByText(/^Taped lengths that become numbers/).waitFor();
  await camera.between(
    page,
    "copy-look",
    page.getByText("What to copy", { exact: true }),
    page.getByRole("button", { name: "Make the copy" }),
  );
  await page.context().close();

  const list = await open(WIDE);
  await show(list, "Copy for others", "Copy for others");
  await press(list, "Preview copy");
  await press(list, "Make the copy");
  await list.getByText(/^Copied to/).waitFor();
  await select(list, "Jobs plain", "J5");
  await camera.cells(list, "copy-made", 1010, 190, -NAME_BOX_HIGH);
  await list.context().close();
}
