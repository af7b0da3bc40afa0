import ExcelJS from "exceljs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import office from "../../assets/practice-office.json";
import type { PracticeOffice } from "../../src/practice/grid/practiceOffice";
import { nameOf, savedName } from "../../src/practice/xlsx/fileName";
import { differences } from "../../src/practice/xlsx/openedMessage";
import { argb } from "../../src/practice/xlsx/styles";
import { blankForm } from "../../src/quantities/bed/form";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { insertPlan } from "../../src/workbook/change/insert";
import { DOT, openFile, readFile, savedFile, withParts } from "../files";
import { createHost, type HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { hasLibreOffice, recalculated } from "../recalculate";
import { unzip } from "../unzip";

let reader: HeadlessHost;
beforeAll(async () => {
  reader = await createHost();
});
afterAll(() => reader.dispose());

/** Everything that a person can see of a sheet, and what its cells hold. */
function seen(host: HeadlessHost) {
  const { cells, looks } = host.grid;
  return host.grid.sheets.list().map(({ id, name, hidden }) => {
    const used = cells.used(id, false)!;
    const each = <T>(tell: (row: number, column: number) => T) =>
      Array.from({ length: used.rowCount }, (_, down) =>
        Array.from({ length: used.columnCount }, (_, across) => tell(used.row + down, used.column + across)),
      );
    return {
      name,
      hidden,
      used: { ...used, sheetId: "" },
      cells: cells.read(used),
      texts: cells.text(used),
      looks: each((row, column) => {
        const look = looks.read(id, row, column);
        // Indented text is at the left by itself, and is told to in a file.
        return look.horizontal === "General" && look.indent > 0 ? { ...look, horizontal: "Left" } : look;
      }),
      borders: each((row, column) =>
        (["top", "bottom", "left", "right"] as const).map((edge) => looks.border(id, row, column, edge)),
      ),
      widths: Array.from({ length: used.columnCount + 2 }, (_, column) => Math.round(looks.columnWidth(id, column))),
      merged: cells.merged(id).map((area) => ({ ...area, sheetId: "" })),
      pictures: host.grid.pictures.list(id).map((picture) => ({ ...picture, id: "" })),
      page: host.grid.pages.get(id),
      groups: host.grid.groups.list(id),
      hiddenRows: Array.from({ length: 20 }, (_, row) => row).filter((row) => looks.rowHidden(id, row)),
    };
  });
}

/** The practice office with an estimate in it, and one of everything that the office lacks. */
async function fullOffice(): Promise<HeadlessHost> {
  const host = await createProductHost(office as PracticeOffice);
  const { cells, groups, looks, names, pictures, rules, sheets, tables, pages, kept } = host.grid;
  await insertPlan((at) => estimateBlock(blankForm(), at), { kind: "new sheet", name: "Bed" });
  const id = sheets.add("Odds & ends");
  const area = (row: number, column: number, rowCount: number, columnCount: number) => ({
    sheetId: id,
    row,
    column,
    rowCount,
    columnCount,
  });
  cells.write(area(0, 0, 8, 4), [
    ["Länge, ft", "Depth <in>", "'0012", "line\nbreak"],
    [3, 2, "'=no formula", true],
    [1, 4, "8%", "'#N/A"],
    ["=SORT(A2:A3)", "=SUM(A2:A3*2)", '="a ""b"""&A2', "=1/0"],
    ["", "=Rate_tons*2", "=IFNA(A2,0)", "=BED.STONE_TONS(108,3,1.35)"],
    ["=BED.FABRIC_CUTS(20,20,6,100,6)", "", "", ""],
    ["", "", "", ""],
    ["", "", "", ""],
  ]);
  names.add("Rate_tons", "='Odds & ends'!$B$2");
  names.add("Rate_tax", "=0.08");
  looks.set(area(0, 0, 1, 4), { bold: true, fill: "#24413A", fontColor: "#FFFFFF", horizontal: "Center", wrap: true });
  looks.set(area(1, 0, 2, 2), { numberFormat: "#,##0.00", italic: true, fontName: "Georgia", fontSize: 14 });
  looks.setBorder(area(3, 0, 1, 4), "top", { style: "Double", weight: "Thick", color: "#445566" });
  looks.setColumnWidth(area(0, 0, 1, 1), 120);
  looks.setRowHeight(area(0, 0, 1, 1), 40);
  cells.merge(area(20, 0, 2, 3));
  rules.putShading({
    id: "one",
    area: area(1, 0, 2, 1),
    rule: { formula: "=A2>2", fill: "#FF0000", fontColor: "#00FF00", bold: true },
  });
  rules.putList(area(1, 3, 3, 1), { source: '2" rock,gravel', dropDown: true, ignoreBlanks: true, strict: true });
  rules.putList(area(1, 2, 3, 1), {
    source: "='Odds & ends'!$A$2:$A$3",
    dropDown: true,
    ignoreBlanks: true,
    strict: false,
  });
  const picture = await pictures.add(id, DOT, { width: 30, height: 20 });
  await pictures.update(id, picture, { name: "plan", altText: `the "bed" & its pins`, left: 51, top: 33 });
  sheets.freezeRows(id, 1);
  tables.add({ name: "Beds", area: area(0, 0, 3, 2), style: "TableStyleMedium2" });
  pages.set(id, {
    ...pages.get(id),
    orientation: "Landscape",
    paperSize: "A4",
    zoom: { horizontalFitToPages: 1 },
    texts: { ...pages.get(id).texts, leftHeader: "Beds & pins", centerFooter: "Page &P of &N" },
    printArea: area(0, 0, 12, 6),
    titleRows: { row: 0, rowCount: 2 },
    breaksAbove: [5],
  });
  groups.add(id, { row: 9, rowCount: 6 });
  groups.add(id, { row: 16, rowCount: 3 });
  // Inside the first one; a file has no order but outer ones first.
  groups.add(id, { row: 11, rowCount: 2 });
  looks.setRowsHidden(area(16, 0, 3, 1), true);
  kept.set("templates", { one: `<a "b">` });
  await host.grid.settled();
  return host;
}

describe("a workbook that is saved and opened again", () => {
  let before: HeadlessHost;
  let after: HeadlessHost;
  let file: Uint8Array;
  let lost: readonly string[];
  let opened: Awaited<ReturnType<typeof openFile>>["opened"];
  beforeAll(async () => {
    before = await fullOffice();
    const saved = await savedFile(before);
    [file, lost] = [saved.bytes, saved.lost];
    ({ host: after, opened } = await openFile(before, file));
  });
  afterAll(() => {
    after.dispose();
    before.dispose();
  });

  test("loses nothing, and says so", () => {
    expect([lost, opened.lost, opened.unseen, opened.notes]).toEqual([[], [], [], []]);
  });

  test("holds and shows the same: values, formulas, texts, looks, borders, widths, merged cells, pictures, pages", () => {
    const [one, other] = [seen(before), seen(after)];
    expect(other.map(({ name }) => name)).toEqual(["Jobs", "Estimate", "Bed", "Odds & ends"]);
    other.forEach((sheet, place) => {
      const { page, ...rest } = sheet;
      const { page: pageBefore, ...restBefore } = one[place]!;
      expect(rest).toEqual(restBefore);
      // The ids of sheets are the grid's own affair.
      const withoutIds = (setup: unknown): unknown =>
        JSON.parse((JSON.stringify(setup) ?? "null").replace(/"sheetId":"[^"]*"/, '"sheetId":""'));
      expect(withoutIds(page)).toEqual(withoutIds(pageBefore));
    });
  });

  test("has its names, rules, lists, tables and what the add-in keeps", () => {
    expect(after.grid.names.list()).toEqual(before.grid.names.list());
    const all = (host: HeadlessHost) => ({
      sheetId: host.grid.sheets.list()[3]!.id,
      row: 0,
      column: 0,
      rowCount: 30,
      columnCount: 10,
    });
    const shadings = (host: HeadlessHost) =>
      host.grid.rules.shadings(all(host)).map(({ rule: { fill = "", fontColor = "", ...rest } }) => {
        return { ...rest, fill: argb(fill), fontColor: argb(fontColor) };
      });
    expect(shadings(after)).toEqual(shadings(before));
    const kept = (host: HeadlessHost) =>
      host.save().resources?.find(({ name }) => /DATA_VALIDATION/.test(name))?.data ?? "";
    const lists = (host: HeadlessHost) =>
      (Object.values(JSON.parse(kept(host))) as { formula1: string; errorStyle: number; ranges: object }[][])
        .flat()
        // The grid may name itself before a sheet.
        .map(({ formula1, errorStyle }) => [formula1.replace(/\[practice-\d+\]|\$/g, ""), errorStyle])
        .sort();
    expect(lists(after)).toEqual(lists(before));
    expect(lists(after).length).toBeGreaterThan(3);
    const tables = (host: HeadlessHost) =>
      host.grid.tables.list().map(({ name, area, style }) => ({ name, style, area: { ...area, sheetId: "" } }));
    expect(tables(after)).toEqual(tables(before));
    expect(after.grid.kept.get("templates")).toEqual({ one: `<a "b">` });
  });

  test("shows what the file said that its formulas show", () => {
    expect(differences(after.grid.cells, opened.shown)).toEqual([]);
    expect(opened.shown.length).toBeGreaterThan(100);
  });

  test("gives the same file once more", async () => {
    const again = unzip((await savedFile(after)).bytes);
    const first = unzip(file);
    expect([...again.keys()].sort()).toEqual([...first.keys()].sort());
    for (const [name, text] of first) {
      if (name !== "docProps/core.xml" && name !== "xl/styles.xml" && !name.startsWith("xl/worksheets/sheet"))
        expect(again.get(name), name).toBe(text);
    }
  });

  test("is a file whose parts all are in its list of contents, and that tells no one's name", () => {
    const parts = unzip(file);
    const types = parts.get("[Content_Types].xml") ?? "";
    for (const name of parts.keys()) {
      const isKnown =
        types.includes(`"/${name}"`) || /\.(?:rels|png|xml)$/.test(name) || name === "[Content_Types].xml";
      expect(isKnown, name).toBe(true);
    }
    expect(parts.get("docProps/core.xml")).toMatch(/<dc:creator>Practice workbook</);
    expect([...parts.values()].join()).not.toMatch(/\/(?:home|work|tmp|Users)\//);
  });

  test("the formulas of add-ins and newer ones have their names of the file", () => {
    const xml = unzip(file).get("xl/worksheets/sheet4.xml")!;
    expect(xml).toContain("<f>_xldudf_BED_STONE_TONS(108,3,1.35)</f><v>1.35</v>");
    expect(xml).toContain("<f>_xlfn.IFNA(A2,0)</f><v>3</v>");
    expect(xml).toMatch(/cm="1"><f t="array" ref="A4:A5">_xlfn\._xlws\.SORT\(A2:A3\)<\/f><v>1<\/v>/);
    expect(xml).toMatch(/cm="1"><f t="array" ref="B4">SUM\(A2:A3\*2\)<\/f><v>8<\/v>/);
    expect(xml).toMatch(/t="str" cm="1"><f t="array" ref="A6:E10">_xldudf_BED_FABRIC_CUTS/);
  });

  test.skipIf(!hasLibreOffice())(
    "a second spreadsheet program shows the same numbers, ordinary formulas worked out anew",
    async () => {
      const book = new ExcelJS.Workbook();
      await book.xlsx.load(recalculated([file])[0]!.slice().buffer);
      const list = before.grid.sheets.list();
      let compared = 0;
      for (const { sheetId, row, column, value } of opened.shown) {
        const place = opened.book.sheetOrder.indexOf(sheetId);
        const formula = before.grid.cells.read({
          sheetId: list[place]!.id,
          row,
          column,
          rowCount: 1,
          columnCount: 1,
        })[0]![0]!.formula!;
        // Functions of an add-in are unknown there; where one is asked, or what hangs on it, the program has no number.
        const { result } = book.worksheets[place]!.getCell(row + 1, column + 1);
        if (typeof value !== "number" || typeof result !== "number") continue;
        expect(result, formula).toBeCloseTo(value, 9);
        compared += 1;
      }
      expect(compared).toBeGreaterThan(3);
    },
  );
});

async function made(fill: (sheet: ExcelJS.Worksheet, book: ExcelJS.Workbook) => void): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  fill(book.addWorksheet("Jobs"), book);
  return new Uint8Array(await book.xlsx.writeBuffer());
}

describe("a file of another program", () => {
  test("has shared and array formulas, texts, truths and errors as cells have them", async () => {
    const file = await made((sheet) => {
      sheet.getCell("A1").value = "0012";
      sheet.getCell("A2").value = "=no formula";
      sheet.getCell("A3").value = { error: "#N/A" };
      sheet.getCell("A4").value = true;
      sheet.getCell("A5").value = { richText: [{ text: "two " }, { text: "fonts", font: { bold: true } }] };
      sheet.getCell("A6").value = { text: "the plan", hyperlink: "https://plans.example" };
      for (const [address, value] of [
        ["B1", 1],
        ["B2", 2],
        ["B3", 3],
      ] as const)
        sheet.getCell(address).value = value;
      sheet.fillFormula("C1:C3", "B1*$B$3+SUM(B:B)", [9, 12, 15]);
      // Its published types leave array formulas out.
      sheet.getCell("D1").value = {
        formula: "TRANSPOSE({3,2,1})",
        result: 3,
        shareType: "array",
        ref: "D1:D3",
      } as ExcelJS.CellValue;
      for (const [address, value] of [
        ["D2", 2],
        ["D3", 1],
      ] as const)
        sheet.getCell(address).value = value;
    });
    const { host, opened } = await openFile(reader, file);
    // By hand: 1×3+6, 2×3+6, 3×3+6.
    expect(host.values("A1:D6")).toEqual([
      ["0012", 1, 9, 3],
      ["=no formula", 2, 12, 2],
      ["#N/A", 3, 15, 1],
      [true, "", "", ""],
      ["two fonts", "", "", ""],
      ["the plan", "", "", ""],
    ]);
    expect([host.formula("A2"), host.formula("C3"), host.formula("D1"), host.formula("D2")]).toEqual([
      undefined,
      "=B3*$B$3+SUM(B:B)",
      "=TRANSPOSE({3,2,1})",
      undefined,
    ]);
    expect(opened.unseen).toEqual(["1 link", "1 cell with several fonts in its text, shown in one"]);
    host.dispose();
  });

  test("shows the same days, counted from 1900 or from 1904", async () => {
    for (const date1904 of [false, true]) {
      const file = await made((sheet, book) => {
        book.properties.date1904 = date1904;
        sheet.getCell("A1").value = new Date(Date.UTC(2025, 2, 9, 12));
        sheet.getCell("A1").numFmt = "d-mmm-yy";
        sheet.getCell("A2").value = 45_000;
        sheet.getCell("A3").value = 1.5;
        sheet.getCell("A3").numFmt = "[h]:mm";
      });
      const { host, opened } = await openFile(reader, file);
      // 2025-03-09 is day 45,725 after 1899-12-30, worked by hand from 45,658 for 2025-01-01; 12:00 is half a day.
      // How long something took is no day.
      expect(host.values("A1:A3")).toEqual([[45_725.5], [45_000], [1.5]]);
      expect(opened.notes.length).toBe(date1904 ? 1 : 0);
      host.dispose();
    }
  });

  test("keeps a date to its last digit, and a text in a cell of dates", async () => {
    const file = await made((sheet) => {
      sheet.getCell("A1").value = 45_725.123456789;
      sheet.getCell("A2").value = "to be told";
      sheet.getCell("A3").value = { formula: 'IF(A1>0,"soon",1)', result: "soon" };
      for (const cell of ["A1", "A2", "A3"]) sheet.getCell(cell).numFmt = "m/d/yyyy";
    });
    const { host, opened } = await openFile(reader, file);
    expect(host.values("A1:A3")).toEqual([[45_725.123456789], ["to be told"], ["soon"]]);
    expect(opened.shown.map(({ value }) => value)).toEqual(["soon"]);
    host.dispose();
  });

  test("says what it doesn't show: charts, other workbooks, rules, sheets without cells; and that macros stay behind", async () => {
    const plain = await made((sheet) => {
      sheet.getCell("A1").value = { formula: "[1]Old!A1*2", result: 4 };
      sheet.getCell("A2").value = { formula: "_xldudf_OTHER_SUM(1)", result: 5 };
      sheet.getCell("A3").value = { formula: "cmd|'/C calc'!A0", result: 0 };
      sheet.getCell("A4").note = "ask again";
      sheet.getCell("A5").dataValidation = { type: "whole", operator: "greaterThan", formulae: [1], allowBlank: true };
      sheet.addConditionalFormatting({
        ref: "A1:A9",
        rules: [
          { type: "cellIs", operator: "between", priority: 1, formulae: [2, 6], style: { font: { bold: true } } },
          { type: "top10", priority: 2, rank: 3, percent: false, bottom: false, style: { font: { bold: true } } },
        ],
      });
      void sheet.protect("", {});
    });
    const file = await withParts(plain, {
      "xl/charts/chart1.xml": () => "<c/>",
      "xl/worksheets/_rels/sheet1.xml.rels": (xml) =>
        xml.replace(
          "</Relationships>",
          '<Relationship Id="d" Type="x/drawing" Target="../drawings/drawing1.xml"/><Relationship Id="p" Type="x/pivotTable" Target="../pivotTables/pivotTable1.xml"/></Relationships>',
        ),
      "xl/drawings/drawing1.xml": () => "<wsDr/>",
      "xl/drawings/_rels/drawing1.xml.rels": () =>
        '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="c" Type="x/chart" Target="../charts/chart1.xml"/></Relationships>',
      "xl/vbaProject.bin": () => "macro",
      "xl/externalLinks/externalLink1.xml": () => "<externalLink/>",
      "xl/pivotTables/pivotTable1.xml": () => "<pivotTableDefinition/>",
      "xl/_rels/workbook.xml.rels": (xml) =>
        xml.replace(
          "</Relationships>",
          '<Relationship Id="c" Type="x/chartsheet" Target="chartsheets/sheet1.xml"/></Relationships>',
        ),
      "xl/workbook.xml": (xml) => xml.replace("</sheets>", '<sheet name="Diagram" sheetId="9" r:id="c"/></sheets>'),
    });
    const { host, opened } = await openFile(reader, file);
    expect(opened.lost).toEqual(["macros"]);
    expect(opened.unseen).toEqual([
      "1 link to another workbook",
      "the sheet “Diagram”, which has no cells",
      "1 comment",
      "1 chart",
      "1 pivot table",
      "the protection of the sheet “Jobs”",
      "1 conditional format that isn't supported here",
      "1 data validation rule",
      "2 formulas that read another workbook or program, shown as the value in the file: Jobs!A1 and Jobs!A3",
      "1 formula of an add-in that isn't here, such as _xldudf_OTHER_SUM, which will show #NAME?: Jobs!A2",
    ]);
    expect([host.formula("A1"), host.value("A1"), host.formula("A3"), host.value("A2")]).toEqual([
      undefined,
      4,
      undefined,
      "#NAME?",
    ]);
    expect(
      host.grid.rules.shadings({ sheetId: "sheet-1", row: 0, column: 0, rowCount: 9, columnCount: 1 })[0]?.rule.formula,
    ).toBe("=AND(A1>=(2),A1<=(6))");
    expect(differences(host.grid.cells, opened.shown)).toEqual([
      { sheetId: "sheet-1", row: 1, column: 0, inFile: "5", here: "#NAME?" },
    ]);
    host.dispose();
  });

  test("has formulas with tables as formulas with cells, and its table still is one", async () => {
    const file = await made((sheet) => {
      sheet.addTable({
        name: "Beds",
        ref: "A1",
        headerRow: true,
        totalsRow: false,
        columns: [{ name: "Length" }, { name: "Width" }, { name: "Area" }],
        rows: [
          [3, 2, 6],
          [4, 5, 20],
        ],
      });
      sheet.getCell("C2").value = { formula: "Beds[[#This Row],[Length]]*Beds[[#This Row],[Width]]", result: 6 };
      sheet.getCell("E1").value = { formula: "SUM(Beds[Area])", result: 26 };
    });
    const { host } = await openFile(reader, file);
    expect([host.formula("C2"), host.value("C2")]).toEqual(["=$A2*$B2", 6]);
    expect([host.formula("E1"), host.value("E1")]).toEqual(["=SUM($C$2:$C$3)", 26]);
    expect(host.grid.tables.list()).toMatchObject([
      { name: "Beds", area: { row: 0, column: 0, rowCount: 3, columnCount: 3 } },
    ]);
    host.dispose();
  });

  test("is read where its parts have prefixes and other names, and a hidden sheet stays hidden", async () => {
    const file = await withParts(
      await made((sheet, book) => {
        sheet.getCell("A1").value = 7;
        book.addWorksheet("Rates", { state: "veryHidden" }).getCell("B2").value = { formula: "Jobs!A1*2", result: 14 };
      }),
      {
        "xl/worksheets/sheet1.xml": (xml) => xml.replaceAll(/<(\/?)(worksheet|sheetData|row|c|v)\b/g, "<$1x:$2"),
        "xl/worksheets/front.xml": () => "",
      },
    );
    const renamed = await withParts(file, {
      "xl/worksheets/front.xml": () => unzip(file).get("xl/worksheets/sheet1.xml")!,
      "xl/_rels/workbook.xml.rels": (xml) => xml.replace("worksheets/sheet1.xml", "/xl/worksheets/front.xml"),
    });
    const { host, opened } = await openFile(reader, renamed);
    expect([host.value("Jobs!A1"), host.value("Rates!B2")]).toEqual([7, 14]);
    expect(host.grid.sheets.list().map(({ hidden }) => hidden)).toEqual([false, true]);
    expect(opened.notes).toEqual(["Hidden in the file, and hidden here: “Rates”"]);
    host.dispose();
  });

  test("has the looks of its columns, its frozen rows and columns, and the color of its tab", async () => {
    const file = await made((sheet) => {
      sheet.getColumn(2).width = 30;
      sheet.getColumn(2).font = { italic: true };
      sheet.getColumn(3).hidden = true;
      sheet.getCell("A4").value = 4;
      sheet.getRow(4).hidden = true;
      sheet.getCell("A1").value = 1;
      sheet.views = [{ state: "frozen", xSplit: 1, ySplit: 2, showGridLines: false }];
      sheet.properties.tabColor = { argb: "FF24413A" };
    });
    const { host } = await openFile(reader, file);
    const { looks } = host.grid;
    // 30 digits of 7 pixels are 210 pixels, of 0.75 points each.
    expect(looks.columnWidth("sheet-1", 1)).toBe(157.5);
    expect(looks.read("sheet-1", 50, 1).italic).toBe(true);
    expect([looks.columnHidden("sheet-1", 2), looks.rowHidden("sheet-1", 3)]).toEqual([true, true]);
    expect(host.save().sheets["sheet-1"]).toMatchObject({
      freeze: { xSplit: 1, ySplit: 2 },
      showGridlines: 0,
      tabColor: "#24413A",
    });
    host.dispose();
  });
});

describe("a file is refused in words, and nothing is opened,", () => {
  const small = () => made((sheet) => (sheet.getCell("A1").value = 1));

  test.each([
    ["without a workbook in it", { "_rels/.rels": () => "<Relationships/>" }, "it has no workbook in it"],
    [
      "whose sheet is missing",
      { "xl/_rels/workbook.xml.rels": () => "<Relationships/>" },
      "the sheet “Jobs” is missing",
    ],
    [
      "with two sheets of one name",
      { "xl/workbook.xml": (xml: string) => xml.replace(/<sheet [^>]*>/, (tag) => tag + tag.replace("Jobs", "JOBS")) },
      "two sheets named “JOBS”",
    ],
    [
      "that is a strict workbook",
      {
        "xl/workbook.xml": (xml: string) =>
          xml.replace(
            "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
            "http://purl.oclc.org/ooxml/spreadsheetml/main",
          ),
      },
      "a “strict” workbook",
    ],
    ["that is a binary workbook", { "xl/workbook.bin": () => "x" }, ".xlsb"],
    ["that is an OpenDocument file", { mimetype: () => "x", "content.xml": () => "<x/>" }, "OpenDocument"],
    [
      "with names of its own in a part",
      { "xl/workbook.xml": (xml: string) => xml.replace("<workbook", '<!DOCTYPE a [<!ENTITY b "c">]><workbook') },
      "defines XML entities",
    ],
    [
      "whose texts are missing",
      { "xl/worksheets/sheet1.xml": (xml: string) => xml.replace(/<c r="A1"[^>]*><v>1/, '<c r="A1" t="s"><v>99') },
      "its texts are missing",
    ],
    [
      "whose cells point to texts that are not there",
      {
        "xl/worksheets/sheet1.xml": (xml: string) => xml.replace(/<c r="A1"[^>]*><v>1/, '<c r="A1" t="s"><v>99'),
        "xl/sharedStrings.xml": () => "<sst><si><t>one</t></si></sst>",
        "xl/_rels/workbook.xml.rels": (xml: string) =>
          xml.replace(
            "</Relationships>",
            '<Relationship Id="t" Type="x/sharedStrings" Target="sharedStrings.xml"/></Relationships>',
          ),
      },
      "don't fit together",
    ],
    [
      "with more cells than there is room for",
      {
        "xl/worksheets/sheet1.xml": (xml: string) =>
          xml.replace("<sheetData>", `<sheetData>${'<row><c r="A1"/></row>'.repeat(200_001)}`),
      },
      "at most 200,000",
    ],
  ] as const)("%s", async (_, changes, words) => {
    const file = await withParts(await small(), changes);
    await expect(readFile(reader, file)).rejects.toThrow(words);
  });
});

test("merges, names, and rules across a whole sheet are shown for the cells that it shows, and that is said", async () => {
  const everything = "A1:XFD1048576";
  const file = await withParts(
    await made((sheet) => {
      sheet.getCell("A1").value = 1;
      sheet.getCell("B1").dataValidation = { type: "list", allowBlank: true, formulae: ['"a,b"'] };
    }),
    {
      "xl/workbook.xml": (xml) =>
        xml.replace(
          "</sheets>",
          `</sheets><definedNames><definedName name="All_cells">Jobs!$A$1:$XFD$1048576</definedName></definedNames>`,
        ),
      "xl/worksheets/sheet1.xml": (xml) =>
        xml
          .replace('sqref="B1"', `sqref="${everything}"`)
          .replace(
            "</sheetData>",
            `</sheetData><mergeCells count="2"><mergeCell ref="A2:B3"/><mergeCell ref="C5:XFD1048576"/></mergeCells>`,
          ),
    },
  );
  const { host, opened } = await openFile(reader, file);
  expect(opened.unseen).toEqual(["2 merged areas or rules across the whole sheet, shown for the cells here"]);
  expect(opened.book.sheets["sheet-1"]?.mergeData).toEqual([
    { startRow: 1, startColumn: 0, endRow: 2, endColumn: 1 },
    { startRow: 4, startColumn: 2, endRow: 199, endColumn: 25 },
  ]);
  const [list] = host.grid.rules.lists({ sheetId: "sheet-1", row: 0, column: 0, rowCount: 1, columnCount: 1 });
  expect(list?.rule).toMatchObject({ source: "a,b" });
  host.dispose();
});

describe("a file made to keep a program busy", () => {
  /** A workbook whose first sheet has these formulas from A1 down, each showing 1. */
  const withFormulas = async (formulas: readonly string[], attributes = "") =>
    withParts(await made((sheet) => (sheet.getCell("A1").value = 1)), {
      "xl/worksheets/sheet1.xml": (xml) =>
        xml.replace(
          /<sheetData>.*<\/sheetData>/s,
          `<sheetData>${formulas
            .map((text, row) => {
              const formula = `<f ${attributes}>${text.replaceAll("&", "&amp;")}</f>`;
              return `<row r="${row + 1}"><c r="A${row + 1}">${formula}<v>1</v></c></row>`;
            })
            .join("")}</sheetData>`,
        ),
    });

  test.each([
    ["fills a whole sheet", ["ROW(A1:XFD1048576)"], 't="array" ref="A1:XFD1048576"'],
    ["reads a whole column cell by cell", ["SUMPRODUCT(ROW(B1:B1048576))"], ""],
    ["has 4,000 terms", [Array(4_000).fill("1").join("+")], ""],
  ])("keeps the value of a formula that %s, and says so", async (_, formulas, attributes) => {
    const { host, opened } = await openFile(reader, await withFormulas(formulas, attributes));
    expect(opened.unseen).toEqual(["1 formula too large to work out here, shown as the value in the file: Jobs!A1"]);
    expect([host.value("Jobs!A1"), host.formula("Jobs!A1")]).toEqual([1, undefined]);
    host.dispose();
  });

  test("works out formulas until they have read ten million cells together, and keeps the values of the rest", async () => {
    // Each reads 150,000 cells.
    const opened = await readFile(reader, await withFormulas(Array(80).fill("COUNT(B1:C75000)")));
    expect(opened.formulas).toBe(66);
    expect(opened.unseen).toEqual([expect.stringMatching(/^14 formulas too large .*: Jobs!A67, /)]);
  });

  test("shows #VALUE! for a text that no cell holds, as a spreadsheet program does", async () => {
    const doubled = Array.from({ length: 28 }, (_, row) => `A${row + 1}&A${row + 1}`);
    const { host } = await openFile(reader, await withFormulas(['REPT("A",32767)', ...doubled]));
    expect([String(host.value("Jobs!A1")).length, host.value("Jobs!A2"), host.value("Jobs!A29")]).toEqual([
      32_767,
      "#VALUE!",
      "#VALUE!",
    ]);
    host.dispose();
  });

  test("shows #NUM! for more cells than are worked out here, however a formula comes by them", async () => {
    const tooMany = [
      'SUM(INDIRECT("A1:XFD1048576"))',
      "SUM(OFFSET(B1,0,0,1048576,16000))",
      "SUM(SEQUENCE(1048576,16384))",
      "SUM(RANDARRAY(1048576,16384))",
      "SUM(MUNIT(20000))",
      "SUM(EXPAND(1,1048576,16384,0))",
      "SUM(MAKEARRAY(1048576,16384,LAMBDA(r,c,r+c)))",
    ];
    // By hand: 1 + 2 + … + 100 is 5,050, twice that 10,100, and 1 + … + 6 is 21.
    const fine = ["SUM(SEQUENCE(100))", 'SUM(INDIRECT("A8"),OFFSET(A8,0,0))', "SUM(SEQUENCE(2,3))"];
    const { host } = await openFile(reader, await withFormulas([...tooMany, ...fine]));
    expect(tooMany.map((_, row) => host.value(`Jobs!A${row + 1}`))).toEqual(tooMany.map(() => "#NUM!"));
    expect(fine.map((_, row) => host.value(`Jobs!A${row + 8}`))).toEqual([5050, 10_100, 21]);
    host.dispose();
  });

  test("has room for what stands in the last row and column of a sheet", async () => {
    const file = await made((sheet) => (sheet.getCell("XFD1048576").value = 1));
    const { book } = await readFile(reader, file);
    expect(book.sheets["sheet-1"]).toMatchObject({ rowCount: 1_048_576, columnCount: 16_384 });
  });
});

test("a list over a whole column is saved by its first and last cell, and comes back", async () => {
  const file = await withParts(
    await made((sheet) => {
      sheet.getCell("B1").dataValidation = { type: "list", allowBlank: true, formulae: ['"a,b"'] };
    }),
    { "xl/worksheets/sheet1.xml": (xml) => xml.replace('sqref="B1"', 'sqref="B1:B1048576"') },
  );
  const { host } = await openFile(reader, file);
  const { bytes } = await savedFile(host);
  host.dispose();
  expect(unzip(bytes).get("xl/worksheets/sheet1.xml")).toContain('sqref="B1:B1048576"');
  expect((await readFile(reader, bytes)).lost).toEqual([]);
});

test("what add-ins keep comes along, or is told among what does not where it is damaged", async () => {
  const host = await createHost();
  host.grid.kept.set("Bedrow.templates", "kept");
  const { bytes } = await savedFile(host);
  host.dispose();
  const whole = await readFile(reader, bytes);
  expect([whole.book.custom?.settings, whole.lost]).toEqual([{ "Bedrow.templates": "kept" }, []]);
  const file = await withParts(bytes, {
    "customXml/item1.xml": (xml) => xml.replace(/>[^<]*<\/settings>/, ">{half</settings>"),
  });
  const opened = await readFile(reader, file);
  expect(opened.book.custom?.settings).toEqual({});
  expect(opened.unseen).toEqual([expect.stringMatching(/add-in data, which is damaged/i)]);
});

test("a sheet whose name no file may hold is named before anything is made", async () => {
  const host = await createHost({ office: { sheets: [{ name: "Beds [old]", cells: {} }] } });
  await expect(savedFile(host)).rejects.toThrow("A file can't have a sheet named “Beds [old]”");
  host.dispose();
});

test("a file is named by the workbook and its day, once", () => {
  const day = new Date(2025, 2, 9);
  expect(savedName("Spring jobs", day)).toBe("Spring jobs 2025-03-09.xlsx");
  expect(savedName("Spring jobs 2024-12-31", day)).toBe("Spring jobs 2025-03-09.xlsx");
  expect(savedName('a/b:"c"', day)).toBe("a b  c 2025-03-09.xlsx");
  expect([nameOf("Spring jobs.xlsx"), nameOf(".xlsx")]).toEqual(["Spring jobs", "Practice"]);
});
