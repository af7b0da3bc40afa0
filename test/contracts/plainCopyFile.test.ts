import ExcelJS from "exceljs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { surroundingsOf } from "../../src/pane/copy/surroundings";
import type { CellValue } from "../../src/practice/grid/port";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock, estimateRows } from "../../src/sheets/estimate/block";
import { workbookFile } from "../../src/sheets/file/workbookFile";
import type { Region } from "../../src/sheets/plain/region";
import type { PlainCopy } from "../../src/sheets/plain/result";
import { toPlain } from "../../src/sheets/plain/toPlain";
import { insertPlan } from "../../src/workbook/change/insert";
import { readWorkbook } from "../../src/workbook/read/workbook";
import { bedsOfEachWay } from "../bedsOfEachWay";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { hasLibreOffice, recalculated } from "../recalculate";
import { unzip } from "../unzip";

const ways = Object.keys(bedsOfEachWay);

interface Copied {
  readonly live: string;
  readonly copy: PlainCopy;
  readonly file: Uint8Array;
  readonly values: Uint8Array;
}

let host: HeadlessHost;
const copies = new Map<string, Copied>();
let reopened: Map<string, ExcelJS.Worksheet>;

/** The cells of a sheet, as a person sees them. */
function regionOf(sheetName: string, rows: number, columns: number): Region {
  const { id: sheetId } = host.grid.sheets.list().find(({ name }) => name === sheetName)!;
  const cells = host.grid.cells.read({ sheetId, row: 0, column: 0, rowCount: rows, columnCount: columns });
  return {
    sheetName,
    row: 0,
    column: 0,
    formulas: cells.map((row) => row.map((cell) => cell.formula ?? cell.value)),
    values: cells.map((row) => row.map((cell) => cell.value)),
    formats: cells.map((row) => row.map(() => "General")),
  };
}

beforeAll(async () => {
  host = await createProductHost();
  const to = { at: { row: 0, column: 0 }, sameSheet: false, isElsewhere: true };
  for (const [way, bed] of Object.entries(bedsOfEachWay)) {
    const live = await insertPlan((at) => estimateBlock(bed, at), { kind: "new sheet", name: way });
    if (!live.done) throw new Error("a new sheet is free");
    const plan = estimateBlock(bed, { row: 0, column: 0 });
    const region = regionOf(live.sheetName, plan.rows, plan.columns);
    const around = surroundingsOf((await readWorkbook()).facts);
    const copy = toPlain(region, around, to);
    const sheet = { sheetName: way, plan: copy.plan, results: copy.results, arrays: copy.arrays };
    const values = toPlain(region, around, to, "values only");
    copies.set(way, {
      live: live.sheetName,
      copy,
      file: await workbookFile([sheet]),
      values: await workbookFile([{ ...sheet, plan: values.plan, arrays: [] }], { valuesOnly: true }),
    });
  }
  const files = [...copies.values()].map(({ file }) => file);
  const found = hasLibreOffice();
  if (!found)
    console.warn("LibreOffice is not on this machine: the files are recalculated in the grid's engine alone.");
  const opened = await Promise.all((found ? recalculated(files) : []).map(open));
  reopened = new Map(opened.map((sheet, index) => [ways[index]!, sheet]));
}, 180_000);
afterAll(() => host.dispose());

async function open(file: Uint8Array): Promise<ExcelJS.Worksheet> {
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(new Uint8Array(file).buffer);
  return book.worksheets[0]!;
}

function shown({ value }: ExcelJS.Cell): CellValue {
  const result = value !== null && typeof value === "object" && "formula" in value ? value.result : value;
  if (result !== null && typeof result === "object" && "error" in result) return result.error;
  return (result ?? "") as CellValue;
}

/** Every result of the live block against the one in the copy. */
function compare(way: string, shownAt: (row: number, column: number) => CellValue): number {
  const { live, copy } = copies.get(way)!;
  const { rows, columns } = estimateBlock(bedsOfEachWay[way]!, { row: 0, column: 0 });
  const region = regionOf(live, rows, columns);
  let formulas = 0;
  region.values.forEach((cells, row) => {
    cells.forEach((value, column) => {
      if (!String(region.formulas[row]![column]).startsWith("=")) return;
      formulas += 1;
      const other = shownAt(row, column);
      const where = `${way}, row ${row + 1}, column ${column + 1}: ${copy.plan.formulas[row]![column]}`;
      if (typeof value === "number") expect(other, where).toBeCloseTo(value, 9);
      else expect(other, where).toBe(value);
    });
  });
  return formulas;
}

describe.each(ways)("the file of a bed measured as %s", (way) => {
  test("comes to the same results when another spreadsheet program works it out", () => {
    const sheet = reopened.get(way);
    if (!sheet) return expect(hasLibreOffice()).toBe(false);
    expect(compare(way, (row, column) => shown(sheet.getCell(row + 1, column + 1)))).toBeGreaterThan(25);
  });

  test("comes to the same results when its formulas are read back and worked out in the grid's engine", async () => {
    const { file } = copies.get(way)!;
    const sheet = await open(file);
    const { plan } = copies.get(way)!.copy;
    const sheetId = host.grid.sheets.add(`${way} again`);
    const contents = plan.formulas.map((cells, row) =>
      cells.map((_, column) => {
        const cell = sheet.getCell(row + 1, column + 1);
        if (cell.formula) return `=${cell.formula.replaceAll("_xlfn.", "")}`;
        const value = shown(cell);
        return typeof value === "string" && value !== "" ? `'${value}` : value;
      }),
    );
    const area = { sheetId, row: 0, column: 0, rowCount: plan.rows, columnCount: plan.columns };
    host.grid.cells.write(area, contents);
    await host.grid.settled();
    const cells = host.grid.cells.read(area);
    compare(way, (row, column) => cells[row]![column]!.value);
  });

  test("holds each result beside its formula, and no call of ours", async () => {
    const { file } = copies.get(way)!;
    const sheet = await open(file);
    compare(way, (row, column) => shown(sheet.getCell(row + 1, column + 1)));
    for (const [path, text] of unzip(file)) expect(text, path).not.toMatch(/BED[._]|_xldudf|externalLink/);
  });

  test("shows the same as values, with nothing behind them", async () => {
    const { values } = copies.get(way)!;
    const sheet = await open(values);
    compare(way, (row, column) => shown(sheet.getCell(row + 1, column + 1)));
    for (const [path, text] of unzip(values))
      expect(text, path).not.toMatch(/<f[ >]|<formula|definedName |dataValidation|conditionalFormatting|hidden="1"/);
  });
});

test("the file follows changes as the block does, in another spreadsheet program", async () => {
  if (!hasLibreOffice()) return expect(reopened.size).toBe(0);
  const way = "area from a plan";
  const { file, live } = copies.get(way)!;
  const keys = keyAddresses(estimateRows(bedsOfEachWay[way]!), { row: 0, column: 0 });
  const changes: Readonly<Record<string, number | string>> = { waste: 0.15, stone: "lava rock", borderHeight: 5 };
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(file.slice().buffer);
  for (const [key, value] of Object.entries(changes)) {
    book.worksheets[0]!.getCell(keys.get(key)!).value = value;
    await host.type({ [`'${live}'!${keys.get(key)}`]: value });
  }
  const [changed] = recalculated([new Uint8Array(await book.xlsx.writeBuffer())]);
  const price = shown((await open(changed!)).getCell(keys.get("price")!));
  expect(price).toBeCloseTo(Number(host.value(`'${live}'!${keys.get("price")}`)), 9);
}, 60_000);
