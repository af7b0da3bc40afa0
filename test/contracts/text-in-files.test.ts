import ExcelJS from "exceljs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { checkReport } from "../../src/sheets/checkReport";
import { workbookFile } from "../../src/sheets/file/workbookFile";
import { insertPlan, newSheetName } from "../../src/workbook/change/insert";
import { readFile, savedFile } from "../files";
import type { HeadlessHost } from "../headlessHost";
import { hostileTexts } from "../hostileTexts";
import { createProductHost } from "../productHost";
import { unzip } from "../unzip";

/*
 * Text in the files that are made: a string and nothing else, in a package that reads as XML, whatever it says.
 */
let host: HeadlessHost;
beforeAll(async () => {
  host = await createProductHost();
});
afterAll(() => host.dispose());

/** What XML 1.0 (section 2.2) has no place for: control signs, two marks, and halves of letters. */
const FORBIDDEN = /[^\P{Cc}\t\n\r\u007f-\u009f]|[\ufffe\uffff]|\p{Cs}/gu;
/** Half a letter is written as the sign for what is none. */
const inFile = (text: string) =>
  text
    .replace(/\p{Cs}/gu, "\ufffd")
    .replace(FORBIDDEN, "")
    .replace(/\r\n?/g, "\n");

/** The first column of a file's first sheet, as another program reads it. */
async function firstColumn(file: Uint8Array) {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(new Uint8Array(file).buffer);
  const [sheet] = workbook.worksheets;
  return hostileTexts.map((_, index) => {
    const { type, value } = sheet!.getCell(index + 1, 1);
    return { isText: type === ExcelJS.ValueType.String || type === ExcelJS.ValueType.Null, value };
  });
}

const expected = hostileTexts.map((text) => ({ isText: true, value: inFile(text) }));

/** Parts of a package that XML would refuse. */
function brokenParts(file: Uint8Array): string[] {
  return [...unzip(file)]
    .filter(
      ([path, text]) => /\.(?:xml|rels)$/.test(path) && (FORBIDDEN.test(text) || /&(?!(?:#x?\w+|\w+);)/.test(text)),
    )
    .map(([path]) => path);
}

describe("in the file of a plan", () => {
  test("every text is a string, and no cell has a formula", async () => {
    const plan = checkReport(
      hostileTexts.map((text) => ({ kind: "note", cells: [text] })),
      { row: 0, column: 0 },
    );
    for (const valuesOnly of [true, false]) {
      const file = await workbookFile([{ sheetName: "Texts", plan }], { valuesOnly, title: hostileTexts.join(" ") });
      expect(await firstColumn(file)).toEqual(expected);
      expect(brokenParts(file)).toEqual([]);
      expect([...unzip(file).values()].join("")).not.toMatch(/<f[ >]/);
    }
  });

  test.each(hostileTexts)("%j can be wished for as the name of a sheet and of the file", async (text) => {
    const plan = checkReport([{ kind: "note", cells: ["words"] }], { row: 0, column: 0 });
    const file = await workbookFile([{ sheetName: text, plan }], { valuesOnly: true, title: text });
    expect(brokenParts(file)).toEqual([]);
    const workbook = new ExcelJS.Workbook();
    await workbook.xlsx.load(new Uint8Array(file).buffer);
    expect(workbook.worksheets).toHaveLength(1);
  });
});

describe("in a file that the practice workbook saves", () => {
  test("every text is a string, also when it is opened again", async () => {
    const sheetId = host.grid.sheets.list()[0]!.id;
    const area = { sheetId, row: 0, column: 0, rowCount: hostileTexts.length, columnCount: 1 };
    host.grid.cells.write(
      area,
      hostileTexts.map((text) => [`'${text}`]),
    );
    const { bytes } = await savedFile(host);
    expect(brokenParts(bytes)).toEqual([]);
    expect(await firstColumn(bytes)).toEqual(expected);
    const { book } = await readFile(host, bytes);
    const cells = Object.values(book.sheets["sheet-1"]?.cellData ?? {}).map((row) => row?.[0]);
    expect(cells.filter((cell) => cell?.f || cell?.si)).toEqual([]);
    host.grid.cells.clear(area, "all");
  });
});

describe("as the name of a new sheet in the workbook", () => {
  test.each(hostileTexts)("%j is one that the host takes", async (text) => {
    const plan = checkReport([{ kind: "note", cells: ["words"] }], { row: 0, column: 0 });
    const inserted = await insertPlan(() => plan, { kind: "new sheet", name: text });
    expect(inserted).toMatchObject({ done: true });
    const name = newSheetName(text, []);
    // What the host allows (its documentation): up to 31 characters, not blank, none of : \ / ? * [ ], no ' at an end.
    expect(name).toMatch(/^(?!')[^:\\/?*[\]]{1,31}(?<!')$/);
    expect(name).not.toMatch(FORBIDDEN);
    expect(name.trim()).not.toBe("");
  });
});
