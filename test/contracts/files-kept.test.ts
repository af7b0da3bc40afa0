import ExcelJS from "exceljs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { DOT, openFile, savedFile } from "../files";
import { handMadeFile, jobsXml, notesXml } from "../handMadeFile";
import { createHost, type HeadlessHost } from "../headlessHost";
import { unzip } from "../unzip";

const JOBS = "xl/worksheets/sheet1.xml";
const NOTES = "xl/worksheets/sheet2.xml";
let reader: HeadlessHost;
beforeAll(async () => {
  reader = await createHost();
});
afterAll(() => reader.dispose());

const at = (row: number, column: number, rowCount = 1, columnCount = 1, sheetId = "sheet-1") => ({
  sheetId,
  row,
  column,
  rowCount,
  columnCount,
});

/** Opens a file, does something to the workbook, and saves it; gives the parts before and after. */
async function done(action: (host: HeadlessHost) => unknown, file = handMadeFile()) {
  const { host } = await openFile(reader, file);
  try {
    await action(host);
    const { bytes, lost, kept } = await savedFile(host);
    const [before, parts] = [unzip(file), unzip(bytes)];
    const other = [...new Set([...before.keys(), ...parts.keys()])].filter(
      (name) => before.get(name) !== parts.get(name),
    );
    return { bytes, parts, other: other.sort(), lost, kept };
  } finally {
    host.dispose();
  }
}

describe("a file that was opened", () => {
  test("comes back byte for byte where no one changed anything", async () => {
    const file = handMadeFile();
    const { host } = await openFile(reader, file);
    const { bytes, lost, kept } = await savedFile(host);
    expect(Buffer.compare(bytes, file)).toBe(0);
    expect(lost).toEqual([]);
    // The grid has no such function; the second one hangs on it.
    expect(kept.map(({ row, column, inFile }) => [row, column, inFile])).toEqual([
      [1, 5, "12.5"],
      [4, 2, "13.5"],
    ]);
    host.dispose();
  });

  test("has nothing other than one cell and what hangs on it where one cell was changed", async () => {
    const { parts, other, lost } = await done((host) => host.type({ B2: 20 }));
    expect(lost).toEqual([]);
    // Some results can't be worked out here, so the programs that open the file are told to work it out.
    expect(other).toEqual(["xl/workbook.xml", JOBS, NOTES]);
    expect(parts.get(JOBS)).toBe(
      jobsXml
        .replace('<c r="B2" s="2"><v>18</v></c>', '<c r="B2" s="2"><v>20</v></c>')
        .replace("<f>B2*2</f><v>36</v>", "<f>B2*2</f><v>40</v>"),
    );
    expect(parts.get(NOTES)).toContain("<c><f>Rate*2+Jobs!B2</f><v>34</v></c>");
    expect(parts.get("xl/workbook.xml")).toContain('<calcPr calcId="191029" fullCalcOnLoad="1"/>');
  });

  test("gets texts, blanks, truths, and new cells in their places", async () => {
    const { parts, other } = await done((host) =>
      host.type({ A2: "Wren & co", B4: "", B5: true, E1: "new", B9: 4, H2: 1 }),
    );
    expect(other).toEqual(["xl/workbook.xml", JOBS]);
    const xml = parts.get(JOBS) ?? "";
    expect(xml).toContain('<c r="A2" t="inlineStr"><is><t>Wren &amp; co</t></is></c>');
    expect(xml).toContain('<c r="B4"/>');
    expect(xml).toContain('<c r="B5" t="b"><v>1</v></c>');
    expect(xml).toContain('<c r="C1" t="s"><v>2</v></c><c r="E1" t="inlineStr"><is><t>new</t></is></c></row>');
    expect(xml).toContain('<c r="H2"><v>1</v></c></row>');
    expect(xml).toContain('<row r="9"><c r="B9"><v>4</v></c></row></sheetData>');
    expect(xml).toContain('<dimension ref="A1:H9"/>');
  });

  test("gives each of the cells that shared a formula its own where the first one has another", async () => {
    const { parts, other } = await done((host) => host.type({ A3: "=B3*11" }));
    const xml = parts.get(JOBS) ?? "";
    expect(xml).toContain('<c r="A3"><f>B3*11</f><v>22</v></c>');
    expect(xml).toContain('<c r="A4"><f>B4*10</f><v>30</v></c>');
    expect(xml).toContain('<c r="A5"><f>B5*10</f><v>40</v></c>');
    // The order in which programs work formulas out is theirs to make again.
    expect(other).toEqual([
      "[Content_Types].xml",
      "xl/_rels/workbook.xml.rels",
      "xl/calcChain.xml",
      "xl/workbook.xml",
      JOBS,
    ]);
    expect(parts.has("xl/calcChain.xml")).toBe(false);
  });

  test("gets new looks behind its own, each with what else the cell had", async () => {
    const { parts, other } = await done((host) => host.grid.looks.set(at(1, 1), { bold: true, numberFormat: "0.000" }));
    expect(other).toEqual(["xl/styles.xml", JOBS]);
    expect(parts.get(JOBS)).toBe(jobsXml.replace('<c r="B2" s="2">', '<c r="B2" s="3">'));
    const styles = parts.get("xl/styles.xml") ?? "";
    expect(styles).toContain('<numFmts count="1"><numFmt numFmtId="164" formatCode="0.000"/></numFmts>');
    expect(styles).toContain(
      '<font><b/><sz val="11"/><color theme="1"/><name val="Calibri"/><family val="2"/><scheme val="minor"/></font></fonts>',
    );
    expect(styles).toContain(
      '<xf numFmtId="164" fontId="1" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" applyProtection="1" applyFont="1"><protection locked="0"/></xf></cellXfs>',
    );
  });

  test("gets widths, heights, merged cells, rules, lists, names, and pictures among its own", async () => {
    const { parts, lost } = await done(async ({ grid }) => {
      grid.looks.setColumnWidth(at(0, 1), 70);
      grid.looks.setRowHeight(at(1, 0), 30);
      grid.cells.merge(at(6, 0, 1, 2));
      grid.cells.unmerge(at(2, 4, 2, 2));
      const rule = { formula: "=B2>5", fill: "#FF0000", fontColor: undefined, bold: undefined };
      grid.rules.putShading({ id: "one", area: at(1, 1, 2), rule });
      grid.rules.putList(at(3, 0), { source: "a,b", dropDown: true, ignoreBlanks: true, strict: true });
      grid.names.add("Tons", "=Jobs!$B$2");
      await grid.pictures.add("sheet-1", DOT, { width: 30, height: 20 });
      grid.kept.set("templates", { one: 1 });
    });
    expect(lost).toEqual([]);
    const xml = parts.get(JOBS) ?? "";
    expect(xml).toMatch(
      /<col min="1" max="1" width="20" customWidth="1"\/><col min="2" max="2" width="[\d.]+" customWidth="1"\/>/,
    );
    expect(xml).toContain('<row r="2" spans="1:6" x14ac:dyDescent="0.25" ht="30" customHeight="1">');
    expect(xml).toContain('<mergeCells count="1"><mergeCell ref="A7:B7"/></mergeCells>');
    expect(xml).toContain('<cfRule type="top10" dxfId="0" priority="1" rank="1"/>');
    expect(xml).toContain('<cfRule type="expression" dxfId="1" priority="3">');
    expect(xml).toContain('<dataValidations count="3"><dataValidation type="whole"');
    expect(xml).toContain('<x:own xmlns:x="urn:other">kept</x:own>');
    expect(parts.get("xl/workbook.xml")).toContain('<definedName name="Tons">Jobs!$B$2</definedName></definedNames>');
    const drawing = parts.get("xl/drawings/drawing1.xml") ?? "";
    expect(drawing).toContain("<xdr:twoCellAnchor><xdr:graphicFrame/></xdr:twoCellAnchor><xdr:oneCellAnchor");
    expect(parts.get("customXml/item1.xml")).toContain("of another add-in");
    expect(parts.get("customXml/item2.xml")).toContain("templates");
  });

  test("gets sheets that were added, renamed, hidden, and moved, and loses those that were deleted", async () => {
    const { parts, lost, bytes } = await done(
      async (host) => {
        const id = host.grid.sheets.add("Bed");
        host.grid.cells.write(at(0, 0, 1, 2, id), [["Stone", "=Jobs!B2*2"]]);
        host.grid.sheets.move(id, 0);
        host.grid.sheets.rename("sheet-2", "Old notes");
        host.grid.sheets.hide("sheet-2", true);
        await host.grid.settled();
      },
      handMadeFile({ [NOTES]: notesXml }),
    );
    const workbook = parts.get("xl/workbook.xml") ?? "";
    expect(workbook).toMatch(
      /<sheets><sheet name="Bed" sheetId="8" [^>]*\/><sheet name="Jobs" sheetId="3" r:id="rId1"\/><sheet name="Old notes" sheetId="7" r:id="rId2" state="hidden"\/><\/sheets>/,
    );
    expect(workbook).toContain('<definedName name="_xlnm._FilterDatabase" localSheetId="1" hidden="1">');
    expect(workbook).toContain(`<definedName name="Rate" hidden="1">'Old notes'!$A$1</definedName>`);
    expect(lost.join()).toMatch(/reads cells of “Notes” as they were \(1 chart/);
    const book = new ExcelJS.Workbook();
    await book.xlsx.load(new Uint8Array(bytes).buffer);
    expect(book.worksheets.map(({ name }) => name)).toEqual(["Bed", "Jobs", "Old notes"]);
    expect(book.worksheets[0]?.getCell("B1").value).toEqual({ formula: "Jobs!B2*2", result: 36 });

    const gone = await done((host) => host.grid.sheets.remove("sheet-1"));
    for (const name of [JOBS, "xl/charts/chart1.xml", "xl/comments1.xml", "xl/tables/table1.xml"])
      expect(gone.parts.has(name), name).toBe(false);
    expect(gone.parts.has("xl/pivotCache/pivotCacheDefinition1.xml")).toBe(true);
    expect(gone.parts.get("[Content_Types].xml")).not.toContain("chart1.xml");
  });

  test("has no text any more that was deleted, where no other cell has it", async () => {
    const { parts, other } = await done((host) => host.type({ C1: "Double" }));
    expect(parts.get("xl/sharedStrings.xml")).toMatch(/<si><t>Length<\/t><\/si><si><t\/><\/si><\/sst>$/);
    expect(other).toEqual(["xl/sharedStrings.xml", "xl/tables/table1.xml", JOBS, "xl/workbook.xml"].sort());
    const twice = jobsXml.replace('</row><row r="2"', '<c r="F1" t="s"><v>2</v></c></row><row r="2"');
    const still = await done((host) => host.type({ C1: "Double" }), handMadeFile({ [JOBS]: twice }));
    expect(still.parts.get("xl/sharedStrings.xml")).toContain("<si><t>Twice</t></si>");
  });

  test("keeps the headings of a table as they are in their cells", async () => {
    const { parts } = await done((host) => host.type({ B1: "Run" }));
    expect(parts.get("xl/tables/table1.xml")).toContain('<tableColumn id="2" name="Run"/>');
    const { lost, parts: without } = await done((host) => host.type({ B1: "" }));
    expect(lost).toEqual(["the table Beds, saved as ordinary cells"]);
    expect(without.has("xl/tables/table1.xml")).toBe(false);
    expect(without.get(JOBS)).not.toContain("tablePart");
  });

  test("is written anew on the one sheet where rows moved, and all that this loses is said", async () => {
    const { parts, lost } = await done(async (host) => {
      host.grid.sheets.insertRows("sheet-1", 1, 1);
      await host.grid.settled();
    });
    expect(parts.get(JOBS)).toContain('<c r="B3" s=');
    expect(parts.get(JOBS)).not.toContain("legacyDrawing");
    expect(parts.has("xl/charts/chart1.xml")).toBe(false);
    expect(parts.get(NOTES)).toContain("Rate*2+Jobs!B3");
    expect(lost.filter((line) => line.startsWith("on “Jobs”, where rows or columns moved: "))).toEqual(
      [
        "1 chart",
        "1 comment",
        "1 link",
        "the protection of the sheet “Jobs”",
        "the filter buttons on “Jobs”",
        "1 conditional format that isn't supported here",
        "1 data validation rule",
        "1 cell with several fonts in its text, shown in one",
      ].map((line) => `on “Jobs”, where rows or columns moved: ${line}`),
    );
  });

  test("shows a cell by its own look, not its column's, and an ordinary formula by the one cell beside it", async () => {
    const formula = "<f>$B$2:$B$5*2</f>";
    const file = handMadeFile({ [JOBS]: jobsXml.replace('<f>B3&amp;" ft"</f>', formula) });
    const { parts, kept } = await done(async (host) => {
      expect(host.grid.cells.text(at(1, 3))).toEqual([["5"]]);
      expect(host.grid.looks.read("sheet-1", 7, 3).numberFormat).toBe("0%");
      expect([host.formula("C3"), host.value("C3")]).toEqual(["=@$B$2:$B$5*2", 4]);
      await host.type({ B4: 7 });
      expect(host.value("C3")).toBe(4);
    }, file);
    // The file has a text there, which is not what the formula comes to.
    expect(kept.map(({ inFile, here }) => [inFile, here])).toContainEqual(["2 ft", "4"]);
    expect(parts.get(JOBS)).toContain(`<c r="C3" t="str">${formula}<v>2 ft</v></c>`);
  });

  test("gets days as it counts them where it counts from 1904", async () => {
    const file = handMadeFile({
      [JOBS]: jobsXml.replace('<c r="D2"><v>5</v></c>', '<c r="D2" s="1"><v>40000</v></c>'),
      "xl/workbook.xml": (unzip(handMadeFile()).get("xl/workbook.xml") ?? "").replace(
        "<workbookPr ",
        '<workbookPr date1904="1" ',
      ),
      "xl/styles.xml": (unzip(handMadeFile()).get("xl/styles.xml") ?? "").replace('numFmtId="9"', 'numFmtId="14"'),
    });
    const { parts } = await done(async (host) => {
      // 1,462 days from the first day of one calendar to that of the other; from memory of the published format.
      expect(host.value("D2")).toBe(41_462);
      await host.type({ D2: 41_463 });
    }, file);
    expect(parts.get(JOBS)).toContain('<c r="D2" s="1"><v>40001</v></c>');
  });

  test("is the file that it was where a change was undone", async () => {
    // The grid gives TODAY's cell a date's format once it was moved.
    const file = handMadeFile({ [JOBS]: jobsXml.replace("TODAY()", "B4+1") });
    const { bytes } = await done(async (host) => {
      await host.type({ B2: 20 });
      await host.type({ B2: 18 });
      host.grid.sheets.insertRows("sheet-1", 1, 1);
      host.grid.sheets.deleteRows("sheet-1", 1, 1);
      await host.grid.settled();
    }, file);
    expect(Buffer.compare(bytes, file)).toBe(0);
  });
});
