import { readFileSync } from "node:fs";
import ExcelJS from "exceljs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { handMadeFile } from "../handMadeFile";
import { unzip } from "../unzip";
import { readCells } from "./cells";
import { heavyFile } from "./heavyFile";
import { launch, openPractice, type Practice, picture, ready } from "./openPractice";

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const DOT = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mP8/x8AAwMCAO+ip1sAAAAASUVORK5CYII=";

/** The grid and an ordinary workbook take about 60 MB. */
const MOST_HEAP_BYTES = 600e6;

let browser: Browser;
let practice: Practice;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  practice = await openPractice(browser);
  page = practice.page;
});
afterAll(() => browser.close());

const note = () => page.locator("#practice-note");
const asking = () => page.locator("#practice-open-ask");
const said = () => page.locator("#practice-said");
const press = (name: string) => page.getByRole("button", { name, exact: true }).click();

async function choose(name: string, bytes: Uint8Array): Promise<void> {
  const choosing = page.waitForEvent("filechooser");
  await press("Open .xlsx…");
  await (await choosing).setFiles({ name, mimeType: XLSX, buffer: Buffer.from(bytes) });
}

async function saved(button: string): Promise<{ name: string; bytes: Uint8Array; book: ExcelJS.Workbook }> {
  const downloading = page.waitForEvent("download");
  await press(button);
  const download = await downloading;
  const bytes = new Uint8Array(readFileSync(await download.path()));
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(bytes.slice().buffer);
  return { name: download.suggestedFilename(), bytes, book };
}

const read = (sheet: string, cells: string) => readCells(page, sheet, cells);

/** A workbook of an invented office, with two things that the practice workbook doesn't show. */
async function spring(): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  const sheet = book.addWorksheet("Spring jobs");
  sheet.addRow(["Bed", "Length", "Width", "Area", "Tons"]);
  sheet.getRow(1).font = { bold: true, color: { argb: "FFFFFFFF" } };
  for (const cell of ["A1", "B1", "C1", "D1", "E1"])
    sheet.getCell(cell).fill = { type: "pattern", pattern: "solid", fgColor: { argb: "FF24413A" } };
  sheet.addRow(["Lark walk", 18, 6]);
  // 108 sq ft 3 in deep is a cubic yard: 1.35 short tons of stone at 2,700 lb.
  sheet.getCell("D2").value = { formula: "B2*C2", result: 108 };
  sheet.getCell("E2").value = { formula: "_xldudf_BED_STONE_TONS(D2,3,1.35)", result: 1.35 };
  sheet.getCell("A3").value = { text: "the plan", hyperlink: "https://plans.example" };
  sheet.getCell("A4").note = "ask again";
  sheet.getCell("E2").numFmt = "0.00";
  sheet.getCell("A6").value = { formula: "_xldudf_BED_FABRIC_CUTS(20,20,6,100,6)", result: "Strip" };
  sheet.getColumn(1).width = 24;
  sheet.addImage(book.addImage({ base64: DOT, extension: "png" }), "G2:I6");
  book.definedNames.add("'Spring jobs'!$B$2", "Bed_length");
  return new Uint8Array(await book.xlsx.writeBuffer());
}

test("the practice workbook is saved as a new file, with the results of its formulas", async () => {
  const formulas = (await read("Jobs", "A1:N40")).formulas.flat().filter((one) => String(one).startsWith("="));
  const { name, book } = await saved("Save as .xlsx");
  expect(name).toMatch(/^Practice \d{4}-\d\d-\d\d\.xlsx$/);
  await note().getByText("a new file in your downloads").waitFor();
  const cells = book.worksheets[0]!.getSheetValues().flatMap((row) => (Array.isArray(row) ? row : []));
  const made = cells.filter((cell): cell is ExcelJS.CellFormulaValue => {
    return typeof cell === "object" && cell !== null && "formula" in cell;
  });
  expect(made.length).toBe(formulas.length);
  expect(made.filter(({ result }) => result === undefined)).toEqual([]);
});

test("before a file is opened, the page says what it won't show; kept, the workbook is as it was", async () => {
  const before = await read("Jobs", "A1:N40");
  await choose("spring.xlsx", await spring());
  await asking().waitFor();
  expect(await asking().locator("li").allTextContents()).toEqual(["1 comment", "1 link"]);
  await picture(page, "files-ask");
  const { name } = await saved("Save it first");
  expect(name).toMatch(/^Practice /);
  await page.locator("#practice-open-said").getByText("Saved as").waitFor();
  await press("Keep this workbook");
  expect(await read("Jobs", "A1:N40")).toEqual(before);
});

test("a file takes the place of the workbook, and a copy of it is saved, byte for byte", async () => {
  const opened = await spring();
  await choose("spring.xlsx", opened);
  await asking().waitFor();
  await Promise.all([page.waitForEvent("load"), press("Open the file")]);
  await ready(page);
  await note().getByText("“spring.xlsx” is open: 1 sheet").waitFor();
  expect((await read("Spring jobs", "A1:E2")).values).toEqual([
    ["Bed", "Length", "Width", "Area", "Tons"],
    ["Lark walk", 18, 6, 108, 1.35],
  ]);
  expect((await read("Spring jobs", "E2")).formulas).toEqual([["=BED.STONE_TONS(D2,3,1.35)"]]);
  // The list of cuts has room to spill again.
  expect((await read("Spring jobs", "A6:B6")).values).toEqual([["Strip", "Piece"]]);
  await picture(page, "files-opened");
  const { name, bytes, book } = await saved("Save as .xlsx");
  expect(name).toMatch(/^spring \d{4}-\d\d-\d\d\.xlsx$/);
  const sheet = book.worksheets[0]!;
  expect(sheet.getCell("E2").value).toEqual({ formula: "_xldudf_BED_STONE_TONS(D2,3,1.35)", result: 1.35 });
  expect(sheet.getCell("A1").fill).toMatchObject({ fgColor: { argb: "FF24413A" } });
  expect(sheet.getColumn(1).width).toBeCloseTo(24, 1);
  expect(sheet.getImages()).toHaveLength(1);
  // No one changed anything, so it is the file that was opened.
  expect(Buffer.compare(bytes, opened)).toBe(0);
});

test("where a formula shows something else here, that is said, cell by cell", async () => {
  const book = new ExcelJS.Workbook();
  const sheet = book.addWorksheet("Odd");
  sheet.getCell("A1").value = { formula: "UNHEARDOF(1)", result: 12 };
  sheet.getCell("A2").value = { formula: "1+1", result: 2 };
  await choose("odd.xlsx", new Uint8Array(await book.xlsx.writeBuffer()));
  await asking().waitFor();
  await Promise.all([page.waitForEvent("load"), press("Open the file")]);
  await said().waitFor();
  expect(await said().locator("li").allTextContents()).toEqual(["Odd!A1: 12 in the file, #NAME? here"]);
  await picture(page, "files-differs");
  await said().getByRole("button", { name: "Close" }).click();
});

test("before a file is saved, the page says which formulas keep what they show in the file", async () => {
  await page.reload();
  await ready(page);
  await press("Save as .xlsx");
  const ask = page.locator("#practice-save-ask");
  await ask.waitFor();
  const line = "Keeps the value from the file: Odd!A1: 12 in the file, #NAME? here";
  expect(await ask.locator("li").allTextContents()).toEqual([line]);
  await picture(page, "files-save-ask");
  await ask.getByRole("button", { name: "Don't save" }).click();
  await note().getByText("No file was saved.").waitFor();
  await press("Save as .xlsx");
  const { book } = await saved("Save the file");
  expect(book.worksheets[0]?.getCell("A1").value).toEqual({ formula: "UNHEARDOF(1)", result: 12 });
});

test("what is no workbook is refused in words, and the workbook is as it was", async () => {
  await choose("notes.xlsx", new TextEncoder().encode("Lark walk, 18 ft by 6 ft"));
  await said().waitFor();
  expect(await said().textContent()).toContain("The file isn't an .xlsx workbook");
  await picture(page, "files-refused");
  await said().getByRole("button", { name: "Close" }).click();
  const broken = (await spring()).slice(0, 2000);
  await choose("spring.xlsx", broken);
  await said().waitFor();
  expect(await said().textContent()).toContain("The file is damaged");
  await said().getByRole("button", { name: "Close" }).click();
  expect((await read("Odd", "A2")).values).toEqual([[2]]);
});

test("a file made to keep a page busy opens, takes what is typed, and is saved, in bounded processor time and memory", async () => {
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable");
  const processorSeconds = async () =>
    (await session.send("Performance.getMetrics")).metrics.find(({ name }) => name === "ProcessTime")!.value;
  const before = await processorSeconds();
  await choose("heavy.xlsx", heavyFile());
  await asking().waitFor();
  await Promise.all([page.waitForEvent("load"), press("Open the file")]);
  await said().waitFor();
  await said().getByRole("button", { name: "Close" }).click();
  expect((await read("Jobs", "A1")).values).toEqual([[7]]);
  // By hand: 400 ones are 400. Where there are 5,000 of them, it is the value from the file.
  expect((await read("Terms", "A1:A2")).values).toEqual([[400], [1]]);
  await page.evaluate(() =>
    Excel.run(async ({ workbook }) => {
      workbook.worksheets.getItem("Jobs").getRange("B2").formulas = [["=A1*6"]];
    }),
  );
  await expect.poll(async () => (await read("Jobs", "B2")).values).toEqual([[42]]);
  await page.reload();
  await ready(page);
  expect((await read("Jobs", "B2")).values).toEqual([[42]]);
  await press("Save as .xlsx");
  const [download] = await Promise.all([page.waitForEvent("download"), press("Save the file")]);
  const parts = unzip(new Uint8Array(readFileSync(await download.path())));
  expect(parts.get("xl/worksheets/sheet1.xml")).toContain("<f>A1*6</f><v>42</v>");
  expect(parts.get("xl/worksheets/sheet2.xml")).toContain('ref="A1:XFD1048576">ROW(A1:XFD1048576)</f>');
  const { usedSize } = (await session.send("Runtime.getHeapUsage")) as { usedSize: number };
  expect(usedSize).toBeLessThan(MOST_HEAP_BYTES);
  // It takes some 30 seconds of processor time: nothing that grows with the cells of a sheet comes near this.
  expect((await processorSeconds()) - before).toBeLessThan(120);
});

test("a large file shows how far it is while it is read, and can be canceled", async () => {
  const row = Array.from({ length: 20 }, (_, column) => `<c t="inlineStr"><is><t>Lark walk ${column}</t></is></c>`);
  const rows = Array.from({ length: 9_000 }, () => `<row>${row.join("")}</row>`).join("");
  const large = handMadeFile({
    "xl/worksheets/sheet2.xml": `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${rows}</sheetData></worksheet>`,
  });
  await choose("large.xlsx", large);
  const busy = page.getByRole("dialog", { name: "Reading “large.xlsx”…" });
  await busy.waitFor();
  await expect
    .poll(() => busy.getByRole("progressbar").evaluate((bar: HTMLProgressElement) => bar.value))
    .toBeGreaterThan(0);
  await busy.getByRole("button", { name: "Cancel" }).click();
  await note().getByText("“large.xlsx” wasn't opened.").waitFor();
  expect(await asking().isVisible()).toBe(false);
});

test("in the dark and in a narrow window, the buttons and the question are there", async () => {
  const { page: other, errors } = await openPractice(browser, { colorScheme: "dark" });
  await other.setViewportSize({ width: 480, height: 800 });
  const choosing = other.waitForEvent("filechooser");
  await other.getByRole("button", { name: "Open .xlsx…" }).click();
  await (await choosing).setFiles({ name: "spring.xlsx", mimeType: XLSX, buffer: Buffer.from(await spring()) });
  await other.locator("#practice-open-ask").waitFor();
  await picture(other, "files-ask-dark-narrow");
  expect(errors).toEqual([]);
  await other.context().close();
});

test("nothing outside was asked for, and no error came up on the way", () => {
  expect([practice.outside, practice.errors]).toEqual([[], []]);
});
