import ExcelJS from "exceljs";
import { expect, test } from "vitest";
import { blankForm } from "../../src/quantities/bed/form";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { BLOCK_TITLE } from "../../src/sheets/estimate/headings";
import { type FileSheet, workbookFile } from "../../src/sheets/file/workbookFile";
import type { Plan } from "../../src/sheets/plan";
import { unzip } from "../unzip";

/** A white dot. */
const DOT = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mP8/x8AAwMCAO+ip1sAAAAASUVORK5CYII=";

/** One of everything that a plan can ask for. */
const everything: Plan = {
  title: "price for Front walk",
  rows: 4,
  columns: 3,
  formulas: [
    ["Price", "'1/2", ""],
    ["Stone", 1.25, "=B2*100"],
    ["Sum", "=IFNA(SUM(C2:C2),0)", "=1/0"],
    ["TRUE", "'=HYPERLINK(1)", "#N/A"],
  ],
  formats: [
    ["General", "@", "General"],
    ["General", "0.00", "#,##0.00"],
    ["General", "#,##0.00", "General"],
    ["General", "General", "General"],
  ],
  looks: [
    { area: { row: 0, column: 0, rows: 1, columns: 3 }, look: "title" },
    { area: { row: 2, column: 1, rows: 1, columns: 1 }, look: "total" },
  ],
  widths: [20, 9, 12],
  warnings: [{ area: { row: 1, column: 2, rows: 1, columns: 1 }, when: "=NOT(ISFORMULA(C2))" }],
  choices: [{ area: { row: 1, column: 1, rows: 1, columns: 1 }, names: ["gravel", `2" rock`] }],
  names: [{ name: "Rate_stone_per_ton", area: { row: 1, column: 1, rows: 1, columns: 1 } }],
  dress: [[{ fill: "#112233", italic: true, align: "Center", rules: { bottom: "#445566" } }], [], [], []],
  merged: [{ row: 0, column: 1, rows: 1, columns: 2 }],
  pictures: [{ area: { row: 3, column: 0, rows: 1, columns: 1 }, png: DOT, altText: "a dot" }],
  page: {
    paper: "a4",
    landscape: true,
    pagesWide: 1,
    headingRows: 1,
    breaksAbove: [2],
    marginsIn: { top: 0.75, bottom: 0.75, left: 0.5, right: 0.5 },
    footer: "Page &P of &N",
  },
};
const results = [
  ["Price", "1/2", ""],
  ["Stone", 1.25, 125],
  ["Sum", 125, "#DIV/0!"],
  [true, "=HYPERLINK(1)", "#N/A"],
];
const sheet: FileSheet = { sheetName: "Bob's bed", plan: everything, results };

async function read(file: Uint8Array) {
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(file.slice().buffer);
  return book;
}

test("cells come back with their formulas, results, text, truths and errors", async () => {
  const book = await read(await workbookFile([sheet]));
  const [only] = book.worksheets;
  const value = (address: string) => only!.getCell(address).value;
  expect([value("A1"), value("B1"), value("B2"), value("C2")]).toEqual([
    "Price",
    "1/2",
    1.25,
    { formula: "B2*100", result: 125 },
  ]);
  expect(value("B3")).toEqual({ formula: "_xlfn.IFNA(SUM(C2:C2),0)", result: 125 });
  expect(value("C3")).toEqual({ formula: "1/0", result: { error: "#DIV/0!" } });
  expect([value("A4"), value("B4"), value("C4")]).toEqual([true, "=HYPERLINK(1)", { error: "#N/A" }]);
});

test("looks, widths, merged cells, rules, lists, names, pictures and the page come back", async () => {
  const book = await read(await workbookFile([sheet]));
  const only = book.worksheets[0]!;
  expect(only.getCell("C1").fill).toMatchObject({ fgColor: { argb: "FF24413A" } });
  expect(only.getCell("C1").font).toMatchObject({ bold: true, size: 13, color: { argb: "FFFFFFFF" } });
  // The exact look stands over the named one, and leaves what it does not say.
  expect(only.getCell("A1").fill).toMatchObject({ fgColor: { argb: "FF112233" } });
  expect(only.getCell("A1").font).toMatchObject({ bold: true, italic: true });
  expect(only.getCell("A1").border.bottom).toMatchObject({ style: "thin", color: { argb: "FF445566" } });
  expect(only.getCell("B3").border.top).toMatchObject({ color: { argb: "FF24413A" } });
  expect(only.getCell("C2").numFmt).toBe("#,##0.00");
  expect(only.getColumn(1).width).toBeCloseTo(20 + 5 / 7, 2);
  expect(only.getCell("C1").master.address).toBe("B1");
  expect(only.getCell("B2").dataValidation).toMatchObject({ type: "list", formulae: [`"gravel,2"" rock"`] });
  expect(only.getImages().map(({ range }) => [range.tl.nativeRow, range.tl.nativeCol])).toEqual([[3, 0]]);
  expect(only.pageSetup).toMatchObject({
    paperSize: 9,
    orientation: "landscape",
    fitToWidth: 1,
    fitToHeight: 0,
    printArea: "A1:C4",
    printTitlesRow: "1:1",
  });
  expect(only.headerFooter.oddFooter).toBe("&CPage &P of &N");
  const parts = unzip(await workbookFile([sheet]));
  const xml = parts.get("xl/worksheets/sheet1.xml")!;
  expect(xml).toContain('<rowBreaks count="1" manualBreakCount="1"><brk id="2"');
  expect(xml).toContain("<formula>NOT(_xlfn.ISFORMULA(C2))</formula>");
  expect(parts.get("xl/workbook.xml")?.replaceAll("&apos;", "'")).toContain(
    `<definedName name="Rate_stone_per_ton">'Bob’s bed'!$B$2</definedName>`,
  );
});

test("a plan that is elsewhere on its sheet keeps its place", async () => {
  const at = { row: 2, column: 1 };
  const book = await read(await workbookFile([{ sheetName: "Bed", plan: estimateBlock(blankForm(), at), at }]));
  expect(book.worksheets[0]!.getCell("B3").value).toBe(BLOCK_TITLE);
});

test("references between sheets follow a name that had to be changed", async () => {
  const one: Plan = { ...everything, rows: 1, columns: 1, formulas: [["='Bob''s bed'!B2+Bed!B2"]], formats: [["0"]] };
  const plain = { ...one, looks: [], warnings: [], choices: [], names: [], merged: [], pictures: [] };
  const book = await read(await workbookFile([sheet, { sheetName: "bob’s bed", plan: plain }]));
  expect(book.worksheets.map(({ name }) => name)).toEqual(["Bob’s bed", "bob’s bed 2"]);
  expect(book.worksheets[1]!.getCell("A1").formula).toBe("'Bob’s bed'!B2+Bed!B2");
});

test("a list is an array formula with all its values", async () => {
  const list: Plan = {
    ...everything,
    formulas: [["=SORT(C1:C2)", "", 2] as const, ["", "", 1] as const, ["", "", ""] as const, ["", "", ""] as const],
    merged: [],
  };
  const shown = [
    [1, "", 2],
    [2, "", 1],
  ];
  const parts = unzip(await workbookFile([{ sheetName: "List", plan: list, results: shown, arrays: ["A1:A2"] }]));
  const xml = parts.get("xl/worksheets/sheet1.xml")!;
  expect(xml).toContain('<f t="array" ref="A1:A2">_xlfn._xlws.SORT(C1:C2)</f><v>1</v>');
  expect(xml).toMatch(/<c r="A2"[^>]*><v>2<\/v>/);
});

test("programs work out what has no result yet, and nothing else", async () => {
  const without = unzip(await workbookFile([{ sheetName: "Bed", plan: everything }]));
  expect(without.get("xl/workbook.xml")).toContain('fullCalcOnLoad="1"');
  expect(unzip(await workbookFile([sheet])).get("xl/workbook.xml")).not.toContain("fullCalcOnLoad");
});

test("nothing in a file tells who made it, and nothing in it is hidden", async () => {
  for (const valuesOnly of [false, true]) {
    const parts = unzip(await workbookFile([sheet], { valuesOnly, title: "Price" }));
    const core = parts.get("docProps/core.xml")!;
    expect([...core.matchAll(/<(dc:creator|cp:lastModifiedBy)>(.*?)</g)].map(([, , who]) => who)).toEqual([
      "Bedrow",
      "Bedrow",
    ]);
    expect(parts.get("docProps/app.xml")).toContain("<Company></Company>");
    for (const [path, text] of parts) {
      expect(text, path).not.toMatch(/\bhidden="1"|state="(?:very)?hidden"/i);
      expect(path).not.toMatch(/comment|externalLink|customXml|connections|vba|printerSettings/i);
    }
  }
});

test("a file of values holds no formula, name, rule or list: only what is seen, and how it is printed", async () => {
  const parts = unzip(await workbookFile([sheet], { valuesOnly: true }));
  for (const [path, text] of parts)
    expect(text, path).not.toMatch(
      /<f[ >]|<formula|conditionalFormatting|dataValidation|Rate_stone|HYPERLINK\(C|B2\*100/,
    );
  const names = [...parts.get("xl/workbook.xml")!.matchAll(/<definedName name="(.*?)"/g)].map(([, name]) => name);
  expect(names.sort()).toEqual(["_xlnm.Print_Area", "_xlnm.Print_Titles"]);
  const only = (await read(await workbookFile([sheet], { valuesOnly: true }))).worksheets[0]!;
  expect([only.getCell("C2").value, only.getCell("B3").value, only.getCell("C3").value]).toEqual([
    125,
    125,
    { error: "#DIV/0!" },
  ]);
});

test("a file of values is refused where a formula has no result to stand for it", async () => {
  await expect(workbookFile([{ sheetName: "Bed", plan: everything }], { valuesOnly: true })).rejects.toThrow(
    "The formula in C2 has no result",
  );
  await expect(workbookFile([])).rejects.toThrow("A file needs a sheet.");
});
